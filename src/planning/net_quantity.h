#pragma once

#include "units/quantity.h"
#include "units/remark.h"
#include "units/user_error.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::planning {

/// Where the piece is sold: whose rules its net quantity follows.
enum class Market { EU, US };
std::string name_of(Market market);  // "EU", "US"

/// The most that a pack may fall short of its nominal quantity: Directive 76/211/EEC, Annex I,
/// 2.4; percentages rounded up to 0.1 g. Nothing outside the directive's 5 g to 10 kg.
std::optional<Mass> tolerable_negative_error(Mass nominal);

/// The most that a single pack may fall short of its label: NIST Handbook 133, Table 2-5 (rows from
/// memory). Nothing from 1.26 lb on, where the rows kept here end.
std::optional<Mass> maximum_allowable_variation(Mass labelled);

/// What a label states, checked against what the pieces weigh.
struct NetQuantity {
  Market market = Market::EU;
  Mass stated;                    // what the words promise; of two units, the larger
  std::string statement;          // "94 g", "NET WT 3.3 OZ (94 g)"
  std::optional<Mass> tolerance;  // tolerable negative error, or maximum allowable variation
  std::optional<Length> figures;  // least height of its figures, where a rule says one
  std::vector<Remark> remarks;
};

/// The statement for a piece that weighs at least `lightest`, rounded down: EU in whole grams; US
/// in tenths of an ounce, pounds and ounces from one pound up, with grams beside it in at most
/// three digits (16 CFR 500; two below 100 g), neither above `lightest`.
///
/// UserError at `where` when the piece is too light or too heavy for a statement: below 5 g or
/// above 10 kg in the EU, below 0.1 oz in the US.
NetQuantity net_quantity(Market market, Mass lightest, bool e_mark, const Place& where);

/// Packs weighed, held against a stated quantity.
struct PacksHeld {
  Mass stated;
  std::int64_t packs = 0;
  Mass mean;
  bool mean_reaches = false;     // averaged over the packs, at least what is stated
  std::int64_t short_once = 0;   // short by more than the tolerance
  std::int64_t short_twice = 0;  // short by more than twice the tolerance
  bool passes = false;
};
/// EU, the three packers' rules of 76/211/EEC: the mean not below the nominal quantity; at most
/// 2.5 % short by more than the tolerable error; none by more than twice that. US, the two of
/// Handbook 133: the mean not below the label; none short by more than the allowance. Expects at
/// least one pack and a stated quantity that has a tolerance.
PacksHeld held_against(Market market, Mass stated, const std::vector<Mass>& packs);

}  // namespace brimwright::planning
