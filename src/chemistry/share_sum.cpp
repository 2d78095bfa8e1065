#include "chemistry/share_sum.h"

#include "units/wording.h"

#include <cmath>

namespace brimwright::chemistry {

void refuse_wrong_sum(Share sum, const std::string& of_what, const Place& where) {
  // 0.01 %: three fats at 33.33 % are a whole. The 1e-9 is for binary fractions.
  if (std::abs(sum.of_one() - 1) <= 1e-4 + 1e-9) return;
  throw UserError(where, of_what + " add to " + in_percent(sum, 3),
                  "change the shares until they add to 100 %; they are never rescaled for you");
}

}  // namespace brimwright::chemistry
