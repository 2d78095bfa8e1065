#pragma once

#include "planning/usual_bench.h"
#include "runs/named_material.h"
#include "runs/studio_file.h"
#include "runs/substitutes.h"
#include "trade/amount.h"
#include "trade/pack.h"
#include "units/share.h"

#include <map>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace brimwright::runs {

/// A pack as a studio lists it, and where. Its material is called as it is there.
struct ListedPack {
  trade::Pack pack;
  Place where;
};
struct OnShelf {
  trade::Amount amount;
  Place where;
};

/// What a studio buys and has: its "packs" and "prices", each of these a pack without a seller,
/// "sellers", "have" and "waste"; by the names that stand there. Packs of goods that serve as
/// another material come last.
struct Supplies {
  Currency currency;  // without a code where nothing has a price
  std::vector<ListedPack> packs;
  std::vector<trade::Seller> sellers;
  std::map<std::string, OnShelf> have;
  std::map<std::string, Share> waste;
  std::map<std::string, Place> waste_at;
  Substitutes serves_as;
  std::set<std::string> made_ahead;         // what stands ready is a material under its own name
  std::map<std::string, Meaning> meanings;  // of the names that are listed, read once
};

/// What stands ready, by the names of its "lye_solutions" and "blends".
std::set<std::string> made_ahead_in(const Studio& studio);

/// The one that all prices of a run's "money" or of a studio are in. UserError where none is named.
Currency currency_of(const Fields& fields);

/// "50 pieces" or "1 piece"; nothing for what is no count. UserError for a count that is none.
std::optional<trade::Amount> pieces_in(const std::string& text, const Place& where);

/// So much of `material` as `text` says: by weight, by the piece, or by the volume of what weighs
/// `density`, or else what the built-in fat of that name weighs at the least. UserError at `where`.
trade::Amount amount_in(const std::string& text, const std::string& material,
                        std::optional<Density> density, const Place& where);
/// What a price for it is held against.
planning::Priced priced_as(const std::string& material);

/// UserError for a material in both "packs" and "prices", for a pack of no content, for a price
/// that is none or far from usual.
Supplies read_supplies(const Studio& studio);
/// The same of a studio's file, once for an answer.
std::shared_ptr<const Supplies> supplies_of(const Studio& studio, const moulds::Library& library);

/// What weighings call the material that `name` stands for (needed_by_name). What is made ahead, or
/// should stand under "lye_solutions", is none but itself.
std::string own_material_of(const std::string& name, const Needed& needed, const Supplies& supplies,
                            const Place& where);

/// Alkali whose name states another purity than is planned, so that it stands for nothing needed.
struct OtherPurity {
  std::string dry;   // the alkali that is needed
  std::string text;  // for people
};
/// Nothing where what is listed under that name is no such alkali.
std::optional<OtherPurity> other_purity_words(const std::string& listed, const Supplies& supplies,
                                              const Needed& needed);

/// The same as own_material_of, and where that is not needed, the material that what is called
/// `name` serves as.
std::string material_of(const std::string& name, const Needed& needed, const Supplies& supplies,
                        const Place& where);

}  // namespace brimwright::runs
