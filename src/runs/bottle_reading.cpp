#include "runs/bottle_reading.h"

#include "planning/usual_bench.h"

namespace brimwright::runs {

std::vector<planning::Bottle> read_bottles(const Fields& run) {
  std::vector<planning::Bottle> bottles;
  for (const Fields& fields : run.objects("bottles")) {
    const bool by_rate = !fields.spelling().is_earlier() ||
                         fields.choice("shared", {"by rate", "half and half"}) == "by rate";
    bottles.push_back(
        {fields.name("name"), fields.positive_mass("holds", "30 g"),
         by_rate ? planning::SharingWay::by_rate : planning::SharingWay::half_in_each});
    planning::usual_bench().ask(fields, "holds", "bottle", bottles.back().holds);
    fields.refuse_unknown();
  }
  return bottles;
}

}  // namespace brimwright::runs
