#include "service/day_files.h"

namespace brimwright::service {

std::string DayLine::name() const {
  std::string name;
  for (const DayPart& part : parts) name += (name.empty() ? "" : " + ") + part.run->name;
  return name;
}

Materials DayFile::materials() const {
  return order ? materials_in(runs, *order) : materials_in(alone->run, alone->plan);
}

}  // namespace brimwright::service
