#include "reports/lye_of_day.h"

namespace brimwright::reports {

std::string words_of(const LyeOfDay& lye) {
  if (!lye.own_because.empty())
    return "Each batch has a lye solution of its own, though this studio mixes one for several "
           "batches of a day: " +
           lye.own_because + ".";
  return "This studio mixes one pot of lye solution for several batches of a day. A batch that is "
         "named at such a pot, in the days of its run or order, gets its share out of it by "
         "weight: then no water and no alkali is weighed here. Any other batch is mixed by itself. "
         "One or the other, never both.";
}

std::string lye_of_day_brief(const std::optional<LyeOfDay>& lye) {
  if (!lye || !lye->own_because.empty()) return "";
  return "MIND  A batch whose lye comes out of a day's pot weighs no alkali below.\n";
}

}  // namespace brimwright::reports
