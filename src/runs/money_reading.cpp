#include "runs/money_reading.h"

#include "planning/usual_bench.h"
#include "runs/supplies.h"
#include "units/reading.h"
#include "units/written_number.h"

#include <algorithm>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::runs {
namespace {

/// A price that is not filled in: "", null, {} or one without a sum paid.
bool is_unpriced(const Fields& prices, const std::string& name) {
  if (prices.is_empty(name)) return true;
  return prices.is_object(name) && prices.object(name).is_empty("paid");
}

planning::Priced kind_of(const std::string& name, const planning::Run& run) {
  if (name == "water") return planning::Priced::water;
  if (name == "NaOH" || name == "KOH") return planning::Priced::alkali;
  const auto holds = [&](const chemistry::Formula& formula) {
    return std::any_of(formula.fats.begin(), formula.fats.end(),
                       [&](const auto& fat) { return fat.fat.id == name; });
  };
  const bool is_fat = holds(run.pour.formula) || (run.pipe && holds(run.pipe->formula));
  return is_fat ? planning::Priced::fat : planning::Priced::other;
}

/// A decoration that is bought is counted, all else is weighed.
bool is_counted(const std::string& name, const planning::Run& run) {
  return std::any_of(run.decorations.begin(), run.decorations.end(), [&](const auto& decoration) {
    return is_bought(decoration) && decoration.material == name;
  });
}

/// What is of this run is weighed or counted; what is not may be either.
void refuse_other_kind(bool is_pieces, const std::string& name, const planning::Run& run,
                       const Place& where) {
  if (is_pieces == is_counted(name, run)) return;
  if (!is_pieces)
    throw UserError(where, "is a weight of what is bought by the piece",
                    "give the pieces in a pack, such as \"50 pieces\"");
  const auto names = materials_of(run);
  if (std::find(names.begin(), names.end(), name) != names.end())
    throw UserError(where, "counts pieces of what is used by weight",
                    "give the weight of a pack, such as \"5 kg\"");
}

planning::Price price_of(const Fields& fields, const Currency& currency, const std::string& name,
                         const planning::Run& run) {
  planning::Price price{read_money(fields.text("paid"), currency, fields.place("paid")), {}};
  const auto pieces = pieces_in(fields.text("for"), fields.place("for"));
  refuse_other_kind(pieces.has_value(), name, run, fields.place("for"));
  if (pieces)
    price.pieces = pieces->whole();
  else
    price.pack = fields.positive_mass("for", "5 kg");
  if (pieces && price.pieces == 0)
    throw UserError(fields.place("for"), "holds nothing",
                    "give the pieces in a pack, such as \"50 pieces\"");
  fields.has("confirmed");
  fields.refuse_unknown();
  return price;
}

/// Adds the first pack by mass of each material of the run that has no price yet; whether there was
/// any. The studio's other packs are for other runs.
bool add_first_packs(planning::Purse& purse, const Supplies& supplies, const planning::Run& run) {
  refuse_other_goods(supplies.serves_as, {&run});
  const Needed needed = needed_by(run);
  bool has_added = false;
  for (const ListedPack& one : supplies.packs) {
    const std::string name = material_of(one.pack.material, needed, supplies, one.where);
    const bool is_pieces = one.pack.holds.is_pieces();
    if (is_pieces != is_counted(name, run) || !needed.has(name)) continue;
    planning::Price price{one.pack.paid, {}};
    if (is_pieces)
      price.pieces = one.pack.holds.whole();
    else
      price.pack = one.pack.holds.mass();
    has_added |= purse.prices.try_emplace(name, price).second;
  }
  return has_added;
}

/// Adds those of "prices" in `money` of which the purse has none yet; whether there were any.
bool add_prices(planning::Purse& purse, const Fields& money, const planning::Run& run,
                const Supplies& standing) {
  const bool has_prices = !money.is_empty("prices");
  const auto prices = has_prices ? money.optional_object("prices") : std::nullopt;
  if (!prices) return false;
  const Needed needed = needed_by(run);
  std::map<std::string, std::string> added;
  for (const auto& listed : prices->keys()) {
    if (is_unpriced(*prices, listed)) continue;
    const std::string name = own_material_of(listed, needed, standing, prices->place(listed));
    if (const auto twice = added.find(name); twice != added.end())
      throw UserError(prices->place(listed), "is a price of what " + quoted(twice->second) + " is",
                      "say it once");
    if (purse.prices.contains(name)) continue;
    const Fields fields = prices->object(listed);
    const planning::Price price = price_of(fields, purse.currency, name, run);
    ask_for_price(fields, price, price.pieces > 0 ? planning::Priced::piece : kind_of(name, run));
    purse.prices[name] = price;
    added[name] = listed;
  }
  return !added.empty();
}

/// What the studio's prices and packs have that the purse, or a run without one, has not.
void add_studios_prices(std::optional<planning::Purse>& purse, const planning::Run& run,
                        const Studio& studio, const moulds::Library& library) {
  const Fields& lent = *studio.fields();
  if (lent.is_empty("prices") && lent.is_empty("packs")) return;
  // Prices in two currencies are not added up.
  const Currency currency = currency_of(lent);
  if (purse && purse->currency.code != currency.code) return;
  if (!purse) purse = {currency, {}};
  Supplies standing;
  standing.made_ahead = made_ahead_in(studio);
  if (add_prices(*purse, lent, run, standing)) studio.lend("prices");
  if (!lent.is_empty("packs") && add_first_packs(*purse, *supplies_of(studio, library), run))
    studio.lend("packs");
}

/// That an alkali has no price because what is priced is of another purity.
void tell_other_purities(const Fields& fields, const planning::Purse& purse,
                         const std::vector<std::string>& listed, const Supplies& standing,
                         const planning::Run& run) {
  const Needed needed = needed_by(run);
  if (std::all_of(needed.purities.begin(), needed.purities.end(),
                  [&](const PlannedPurity& one) { return purse.prices.contains(one.dry); }))
    return;
  for (const std::string& name : listed) {
    const auto words = other_purity_words(name, standing, needed);
    if (words && !purse.prices.contains(words->dry)) fields.say({Severity::caution, words->text});
  }
}

std::vector<std::string> names_in(const Fields& fields, const char* key) {
  const auto section = fields.is_empty(key) ? std::nullopt : fields.optional_object(key);
  return section ? section->keys() : std::vector<std::string>();
}

}  // namespace

Needed needed_by(const planning::Run& run) { return {materials_of(run), purities_planned({&run})}; }

std::vector<std::string> materials_of(const planning::Run& run) {
  std::vector<std::string> names = {"NaOH", "KOH", "water"};
  const auto add = [&](const chemistry::Formula& formula) {
    for (const auto& fat : formula.fats) names.push_back(fat.fat.id);
    for (const auto& alkali : formula.alkalis)
      if (alkali.solution) names.push_back(alkali.solution->name);
    if (formula.blend) names.push_back(formula.blend->name);
    for (const auto& additive : formula.additives) {
      names.push_back(additive.name);
      if (additive.dispersal) names.push_back(additive.dispersal->oil.id);
    }
  };
  add(run.pour.formula);
  if (run.pipe) add(run.pipe->formula);
  for (const auto& layer : run.pour.layers)
    for (const auto& colour : layer.colours) names.push_back(colour.name);
  for (const auto& decoration : run.decorations) names.push_back(decoration.material);
  for (const auto& dust : run.dust) names.push_back(dust.name);
  return names;
}

std::optional<planning::Purse> read_purse(const Fields& fields, const planning::Run& run,
                                          const Studio& studio, const moulds::Library& library) {
  Supplies standing;
  standing.made_ahead = made_ahead_in(studio);
  std::optional<planning::Purse> purse;
  std::vector<std::string> listed;
  if (!fields.is_empty("money")) {
    const Fields money = fields.object("money");
    purse = {currency_of(money), {}};
    add_prices(*purse, money, run, standing);
    listed = names_in(money, "prices");
    money.refuse_unknown();
  }
  if (studio.fields()) {
    add_studios_prices(purse, run, studio, library);
    for (const char* key : {"prices", "packs"})
      for (std::string& name : names_in(*studio.fields(), key)) listed.push_back(std::move(name));
  }
  if (purse) tell_other_purities(fields, *purse, listed, standing, run);
  return purse;
}

}  // namespace brimwright::runs
