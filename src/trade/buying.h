#pragma once

#include "trade/pack.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::trade {

/// How much of a material must be bought: less stock, with waste.
struct Need {
  std::string material;
  Amount amount;
};

/// So many of the pack of that place in the list that was given.
struct Bought {
  std::size_t pack;
  std::int64_t count;
};

/// All that is bought of one seller, in the order in which the packs were given.
struct Delivery {
  std::string seller;  ///< empty: packs without one
  std::vector<Bought> packs;
  Money goods;
  std::optional<Money> postage =
      {};                        ///< nothing where a seller is named whose postage is not known
  bool is_postage_free = false;  ///< because of the sum of goods
};

/// A material whose need is covered.
struct Covered {
  std::string material;
  Amount needed, bought;
};

/// What to buy.
struct Purchase {
  std::vector<Delivery> deliveries;  ///< in the order in which the packs were given
  std::vector<Covered> covered;      ///< in the order of the needs
  std::vector<Need> unpriced;        ///< of what no pack was given
  /// Packs and all postage that is known; nothing where nothing is bought.
  std::optional<Money> total;
  /// Where it was too much work to prove `total` the least that is possible: what it cannot be
  /// below. Absent where it is proved.
  std::optional<Money> at_least;
};

/// Whole packs that cover each need, at least cost: the packs and the postage of each seller bought
/// of, which falls away from his free sum on. More than is needed is bought of a needed material
/// where that saves postage. Of equal cost: fewest packs; of these, least left over, each material
/// counted in thousandths of its need (a pack to the nearest, at most a thousand needs); of what is
/// then equal too, one of them, the same at each time. Needs of nothing buy nothing.
///
/// Exact: what comes back covers each need to the microgram and is summed up in whole coins. It is
/// the least cost unless it says `at_least`. The work is bounded.
///
/// UserError where a material is needed by mass and sold by the piece or the other way round; for
/// packs in two currencies; for more than a million packs of one material or sums beyond 10^15
/// coins. std::runtime_error where the solver fails.
///
/// For each material the covers worth a thought are listed; one cover a material, and of which
/// sellers to buy, is chosen by an integer program (GLPK 5.0, branch and bound).
Purchase cheapest(const std::vector<Need>& needs, const std::vector<Pack>& packs,
                  const std::vector<Seller>& sellers);

/// Whole packs of one material that cover a need.
struct CoveredAlone {
  Money paid;
  Amount holds;
};

/// The packs of one material that cover `need` at least cost, whoever sells them, without postage;
/// nothing where that would be more packs or coins than are thought of, or too much work to prove.
/// UserError as above.
std::optional<CoveredAlone> cheapest_alone(const Need& need, const std::vector<Pack>& packs);

}  // namespace brimwright::trade
