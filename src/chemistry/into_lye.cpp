#include "chemistry/into_lye.h"

#include "chemistry/name_words.h"
#include "units/printing.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace brimwright::chemistry {
namespace {

enum class Kind : std::size_t { harmless, melt_and_pour, alcoholic, sugary };

PhraseBook book_of_names() {
  const std::pair<Kind, std::vector<std::string_view>> names[] = {
      // Soured wine has no alcohol left; cream of tartar only sounds alike.
      {Kind::harmless, {"vinegar", "*essig", "vinaigre", "vinagre", "aceto", "cream of tartar"}},
      {Kind::melt_and_pour, {"glycol", "*glycol", "melt and pour", "melt pour", "soap base"}},
      {Kind::alcoholic,
       {"beer",    "ale",       "stout",   "lager",     "porter",  "cider",     "mead",
        "wine",    "vodka",     "rum",     "gin",       "brandy",  "whisky",    "whiskey",
        "liquor",  "liqueur",   "sake",    "spirits",   "ethanol", "champagne", "*bier",
        "wein",    "weisswein", "rotwein", "apfelwein", "sekt",    "bière",     "vin",
        "cerveza", "vino",      "birra"}},
      {Kind::sugary,
       {"sugar",    "honey",   "syrup",   "molasses", "treacle", "agave",    "nectar",
        "dextrose", "glucose", "lactose", "maltose",  "sucrose", "fructose", "malt",
        "whey",     "milk",    "cream",   "yoghurt",  "yogurt",  "kefir",    "buttermilk",
        "juice",    "zucker",  "honig",   "*milch",   "sahne",   "sucre",    "miel",
        "lait",     "leche",   "azucar",  "zucchero", "miele",   "latte"}}};
  PhraseBook book;
  for (const auto& [kind, phrases] : names)
    for (const auto phrase : phrases) book.add(phrase, static_cast<std::size_t>(kind));
  return book;
}

/// What a name says that a thing is; of several the first in the order of `Kind`.
std::optional<Kind> kind_of(const std::string& name) {
  static const PhraseBook book = book_of_names();
  const auto words = words_of(name);
  std::optional<Kind> kind;
  for (const auto& hit : book.hits(words)) {
    const auto its = static_cast<Kind>(hit.entry);
    if (!is_denied(words, hit) && (!kind || its < *kind)) kind = its;
  }
  return kind;
}

Remark about_sugar(const Additive& additive) {
  const bool is_known = additive.liquid && additive.liquid->sugar > Share();
  const std::string brings =
      additive.name + " goes into the lye and " +
      (is_known ? "holds " + trimmed(additive.liquid->sugar.in_percent(), 1) + " % of sugar"
                : "brings sugar");
  // Reducing sugars give off carbon monoxide: a caustic soda producer's page as a tank seller
  // quotes it, read. The rest: common practice, no source.
  if (additive.liquid && additive.liquid->frozen)
    return {Severity::caution,
            brings +
                ": use an open vessel in fresh air, as sugar in lye foams and gives off carbon "
                "monoxide; add the alkali in small portions, so that it stays cold."};
  return {Severity::caution, brings +
                                 ": in hot lye it browns, foams, heats the pot further and gives "
                                 "off carbon monoxide. Use an open vessel in fresh air; freeze it "
                                 "first, or stir it into the batter (common practice)."};
}

Remark about_alcohol(const Additive& additive) {
  return {Severity::caution,
          additive.name +
              " goes into the lye: with its alcohol or its bubbles it foams over. Boil the alcohol "
              "off and let it go flat and cold first; use an open, tall vessel, in fresh air, away "
              "from flames (common practice)."};
}

/// Contact of caustic soda with glycol is to be avoided: as for sugar, read.
Remark about_melt_and_pour(const Additive& additive) {
  return {Severity::caution, additive.name +
                                 " goes into the lye: never put glycol there, nor melt-and-pour, "
                                 "which contains it. Leave it out, or stir it into the batter."};
}

}  // namespace

std::vector<Remark> cautions_into_lye(const Formula& formula) {
  std::vector<Remark> cautions;
  for (const Additive& additive : formula.additives) {
    if (additive.goes_into != GoesInto::lye) continue;
    const auto kind = kind_of(additive.name);
    const bool is_sweet =
        additive.liquid ? additive.liquid->sugar >= 1 * percent : kind == Kind::sugary;
    if (kind == Kind::melt_and_pour)
      cautions.push_back(about_melt_and_pour(additive));
    else if (kind == Kind::alcoholic)
      cautions.push_back(about_alcohol(additive));
    else if (is_sweet)
      cautions.push_back(about_sugar(additive));
  }
  return cautions;
}

}  // namespace brimwright::chemistry
