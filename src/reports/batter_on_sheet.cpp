#include "reports/batter_on_sheet.h"

namespace brimwright::reports {

bool BatterOnSheet::is_lye_chilled() const {
  return temperatures && temperatures->is_lye_chilled();
}

BatterOnSheet base_of(const planning::Run& run, const planning::Batch& batch) {
  return {batch.pipe ? "base" : "batter", batch.pour.batter, run.pour.formula,
          run.pour.temperatures, run.scales.large.step};
}

BatterOnSheet topping_of(const planning::Run& run, const planning::Whipping& whipping) {
  const bool is_one_go = run.batch.whippings == 1;
  return {is_one_go ? "topping"
          : whipping.count == 1
              ? "topping, one whipping"
              : "topping, each of " + std::to_string(whipping.count) + " whippings",
          whipping.pipe.batter, run.pipe->formula, run.pipe->temperatures, run.scales.large.step};
}

}  // namespace brimwright::reports
