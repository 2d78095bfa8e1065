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

std::vector<std::string> DayFile::run_files() const {
  if (!is_order) return {file};
  std::vector<std::string> files;
  for (const reports::ReadyLine& line : ready.lines) files.push_back(line.run);
  return files;
}

std::vector<std::pair<const planning::Run*, std::int64_t>> DayFile::packed() const {
  if (!is_order) return {{&alone->run, alone->plan.pieces.sell}};
  std::vector<std::pair<const planning::Run*, std::int64_t>> all;
  std::size_t made = 0, of_stock_at = 0;
  for (const reports::ReadyLine& line : ready.lines) {
    if (line.to_make() > 0)
      all.emplace_back(&runs[made++]->run, line.to_pack());
    else
      all.emplace_back(of_stock[of_stock_at++].get(), line.to_pack());
  }
  return all;
}

}  // namespace brimwright::service
