#include "chemistry/liquid_reading.h"

#include "chemistry/acid_reading.h"
#include "chemistry/additive_reading.h"
#include "chemistry/alkali_names.h"
#include "chemistry/fat_names.h"
#include "chemistry/fat_reading.h"
#include "chemistry/liquid_compositions.h"
#include "units/printing.h"
#include "units/reading.h"
#include "units/wording.h"
#include "units/written_number.h"

#include <utility>

namespace brimwright::chemistry {
namespace {

[[noreturn]] void refuse_unknown_composition(const std::string& name, const Place& where) {
  std::vector<std::string> names;
  std::string all;
  for (const auto& known : liquid_compositions()) {
    names.push_back(known.name);
    all += (all.empty() ? "\"" : ", \"") + known.name + "\"";
  }
  const auto meant = nearest_name(name, names);
  throw UserError(where, "\"" + name + "\" is not a composition known here",
                  meant ? "did you mean \"" + *meant + "\"?"
                        : "give { \"water\", \"fat\", \"sugar\", \"salt\" } from the label, or one "
                          "of " +
                              all);
}

std::optional<ContainedFat> read_fat(const Fields& composition, const FatTable& table) {
  if (composition.is_text("fat") && composition.choice("fat", {"none"}) == "none")
    return std::nullopt;
  const Fields fields = composition.object("fat");
  ContainedFat contained;
  contained.fat = fields.is_text("fat") && fields.text("fat") == milk_fat().id
                      ? milk_fat()
                      : read_fat_id(fields, "fat", table);
  contained.share = fields.share("share", Share(), whole, "4 %");
  fields.refuse_unknown();
  return contained;
}

/// The label's figures for 100 g. All four are asked for: what is left out is not nothing.
LiquidComposition read_label(const Fields& composition, const FatTable& table) {
  LiquidComposition read;
  read.liquid.water = composition.share("water", Share(), whole, "87 %");
  read.fat = read_fat(composition, table);
  read.liquid.sugar = composition.share("sugar", Share(), whole);
  read.liquid.salt = composition.share("salt", Share(), whole);
  read.liquid.source = composition.text("source");
  composition.refuse_unknown();
  return read;
}

LiquidComposition read_composition(const Fields& entry, const FatTable& table) {
  const std::string key = "composition";
  if (!entry.has(key))
    throw UserError(entry.place(key), "is missing",
                    "give { \"water\", \"fat\", \"sugar\", \"salt\", \"source\" } from the label, "
                    "for 100 g, or name a built-in one such as \"coconut milk, canned\"");
  if (!entry.is_text(key)) return read_label(entry.object(key), table);
  const std::string name = entry.text(key);
  const LiquidComposition* shipped = find_liquid_composition(name);
  if (shipped == nullptr) refuse_unknown_composition(name, entry.place(key));
  return *shipped;
}

void refuse_impossible(const Additive& additive, const Place& where) {
  const Liquid& liquid = *additive.liquid;
  Share sum = liquid.water + liquid.sugar + liquid.salt;
  if (additive.contains_fat) sum = sum + additive.contains_fat->share;
  // What is only known by what it takes up weighs something too, but how much nobody says.
  const auto& acid = additive.contains_acid;
  if (acid && !acid->name.empty()) sum = sum + acid->share;
  if (sum.of_one() > 1 + 1e-9)
    throw UserError(where, "what is in it adds to " + in_percent(sum, 2),
                    "read the label again, for 100 g of it");
  if (liquid.water < 25 * percent)
    throw UserError(where,
                    "has " + in_percent(liquid.water, 2) +
                        " of water, too little for a "
                        "liquid that stands in for water",
                    "list it under \"additives\"");
  const double brine = liquid.salt.of_one() / (liquid.salt + liquid.water).of_one();
  if (brine > saturated_brine().of_one() + 1e-9)
    throw UserError(
        where,
        "holds more salt than its water dissolves: " + in_percent(Share::of_one(brine), 2) +
            " of the brine, where " + in_percent(saturated_brine(), 2) +
            " is all that stays dissolved at "
            "20 °C",
        "count the undissolved salt as an additive");
}

/// "40 % of water": the share of the formula's water that the water in the liquid stands in for.
Share read_replaces(const Fields& entry) {
  const std::string text = plain(entry.text("replaces"));
  const Place where = entry.place("replaces");
  const std::string basis = " of water";
  if (!text.ends_with(basis))
    throw UserError(where, "\"" + text + "\" does not end in \"of water\"",
                    "write it as \"40 % of water\", or give a \"rate\" of fats or batter");
  const Share share = read_share(text.substr(0, text.size() - basis.size()), where, "40 %");
  if (!(share > Share()) || share.of_one() > 1 + 1e-9)
    throw UserError(where, "is " + in_percent(share, 2) + " of water",
                    "give a share above 0 and up to 100 %");
  return share;
}

void read_amount(const Fields& entry, Additive& additive) {
  if (entry.has("replaces") == entry.has("rate"))
    throw UserError(entry.place("replaces"),
                    entry.has("rate") ? "stands beside \"rate\"" : "is missing",
                    "give either \"replaces\": \"40 % of water\" or \"rate\": \"20 % of fats\"");
  if (entry.has("rate"))
    additive.rate = read_positive_rate(entry, "rate", additive);
  else
    additive.liquid->replaces = read_replaces(entry);
}

Additive read_liquid(const Fields& entry, const FatTable& table) {
  Additive additive;
  additive.name = entry.name("name");
  refuse_alkali(additive.name, entry.place("name"));
  auto composition = read_composition(entry, table);
  additive.liquid = composition.liquid;
  additive.contains_fat = std::move(composition.fat);
  if (additive.contains_fat)
    refuse_too_much_fat(additive.name, additive.contains_fat->share, entry.place("composition"));
  read_acid_into(additive, entry);
  additive.liquid->frozen = entry.has("frozen") && entry.truth("frozen");
  additive.goes_into =
      entry.choice("goes_into", {"lye", "batter"}) == "lye" ? GoesInto::lye : GoesInto::batter;
  additive.density = optional_powder_density(entry, "density");
  refuse_impossible(additive, entry.place("composition"));
  if (!additive.density)
    additive.density = density_from_contents(*additive.liquid, additive.contains_fat);
  share_density(additive);
  read_amount(entry, additive);
  additive.label = read_label_data(entry);
  for (const InciShare& part : additive.label.inci)
    if (part.share > 1 * percent) refuse_alkali(part.name, entry.place("inci"));
  entry.refuse_unknown();
  return additive;
}

}  // namespace

std::vector<Additive> read_liquids(const Fields& formula, const FatTable& table) {
  std::vector<Additive> liquids;
  for (const Fields& entry : formula.objects("liquids"))
    liquids.push_back(read_liquid(entry, table));
  return liquids;
}

}  // namespace brimwright::chemistry
