#include "trade/printed.h"

#include <algorithm>
#include <cassert>
#include <numeric>

namespace brimwright::trade {

std::vector<Money> printed_parts(const std::vector<ExactMoney>& parts, const Money& total) {
  std::vector<Money> printed;
  std::vector<Fraction> cut;
  std::int64_t left = total.coins;
  for (const ExactMoney& part : parts) {
    assert(part.coins >= 0);
    const auto whole =
        static_cast<boost::multiprecision::cpp_int>(boost::multiprecision::numerator(part.coins) /
                                                    boost::multiprecision::denominator(part.coins));
    printed.push_back({whole.convert_to<std::int64_t>(), part.currency});
    cut.push_back(part.coins - Fraction(whole));
    left -= printed.back().coins;
  }
  assert(left >= 0 && left <= static_cast<std::int64_t>(parts.size()));
  std::vector<std::size_t> order(parts.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::stable_sort(order.begin(), order.end(),
                   [&](std::size_t a, std::size_t b) { return cut[a] > cut[b]; });
  for (std::size_t i = 0; left > 0; ++i, --left) ++printed[order[i]].coins;
  return printed;
}

}  // namespace brimwright::trade
