#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

namespace brimwright::trade {

/// What a seller asks for sending, in coins.
struct Postage {
  std::int64_t coins = 0;
  std::optional<std::int64_t> free_from = {};
};

/// A pack of the material in question.
struct Offer {
  std::int64_t holds;                      // micrograms or pieces, above 0
  std::int64_t coins;                      // 0 or more
  std::int64_t weight = 0;                 // what of it is counted as left over, if all is
  std::optional<std::size_t> seller = {};  // one who asks for postage
};

/// Packs that cover the need together.
struct Cover {
  std::vector<std::int64_t> counts;  // of each offer
  std::int64_t coins = 0, packs = 0, weight = 0;
  std::vector<std::size_t> sellers = {};  // who ask for postage and are bought of, ascending
  std::vector<std::int64_t> spent = {};   // with each of these
};

struct Covers {
  std::vector<Cover> worth_a_thought;
  std::int64_t at_least = 0;  // no cover costs less
  bool are_all = true;        // an end was reached before the work was too much
};

/// The best cover of each set of sellers, and those that buy of all of a set and cost at most
/// `most_more` than its best. A cover is left out where another of the same sellers, or fewer, is
/// better and spends as much with each who sends free from a sum on. `work` is what may still be
/// done, in steps of the search; it is used up.
///
/// One of them is in a cheapest purchase, whatever else is bought, if `most_more` is the postage
/// that all who send free from a sum on may waive. Were the cover there dearer than the best of its
/// sellers by more, that one would take its place at less cost.
Covers covers(std::int64_t need, const std::vector<Offer>& offers,
              const std::vector<Postage>& sellers, std::int64_t most_more, std::int64_t& work);

/// More packs of a kind are not thought of.
inline constexpr std::int64_t most_of_a_pack = 1'000'000;
/// Nor are greater sums; a thousand of them still fit.
inline constexpr std::int64_t most_coins = 1'000'000'000'000'000;

}  // namespace brimwright::trade
