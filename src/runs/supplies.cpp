#include "runs/supplies.h"

#include "chemistry/alkali_names.h"
#include "chemistry/fat_search.h"
#include "chemistry/water_names.h"
#include "planning/usual_bench.h"
#include "units/printing.h"
#include "units/reading.h"
#include "units/water.h"
#include "units/written_number.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <set>

namespace brimwright::runs {
namespace {

using trade::Amount;

/// The text under `key`; what else stands there, or nothing, is answered with what could.
std::string text_at(const Fields& fields, const std::string& key, const std::string& example) {
  if (fields.is_text(key)) return fields.text(key);
  throw UserError(
      fields.place(key),
      fields.has(key) ? "is no text in quotes, with its unit if it has one" : "is missing",
      "give it as a text, such as " + quoted(example));
}

constexpr Share most_waste = 50 * percent;  // beyond any bench; a slip

std::optional<Volume> volume_in(const std::string& text, const Place& where) {
  try {
    return read_volume(text, where);
  } catch (const UserError&) {
    return std::nullopt;  // then it is to be a mass, whose complaint is told
  }
}

/// Of water in a warm room, or of the only built-in fat that has that name, by the least that is
/// published.
std::optional<Density> density_of(const std::string& material) {
  if (chemistry::names_water(material)) return water_density(Temperature::in_celsius(30));
  const auto fats = chemistry::fats_named(material);
  if (fats.size() != 1 || !fats.front()->density) return std::nullopt;
  return fats.front()->density->low;
}

Amount amount_of(const Fields& fields, const std::string& key, const std::string& material,
                 std::optional<Density> density) {
  return amount_in(text_at(fields, key, "5 kg"), material, density, fields.place(key));
}

void ask_for_price_of(const Fields& fields, const trade::Pack& pack, const Supplies& supplies) {
  if (pack.holds.is_pieces())
    return ask_for_price(fields, {pack.paid, {}, pack.holds.whole()}, planning::Priced::piece);
  const bool is_made_ahead = supplies.made_ahead.contains(pack.material);
  ask_for_price(fields, {pack.paid, pack.holds.mass()},
                is_made_ahead ? planning::Priced::other : priced_as(pack.material));
}

ListedPack listed(const Fields& fields, const std::string& material, const std::string& holds,
                  const Currency& currency) {
  std::optional<Density> density;
  if (holds == "holds" && fields.has("density")) density = fields.density("density");
  ListedPack one{.pack = {.material = material,
                          .holds = amount_of(fields, holds, material, density),
                          .paid = read_money(text_at(fields, "paid", "27.50"), currency,
                                             fields.place("paid"))},
                 .where = fields.place(holds)};
  if (one.pack.holds.whole() == 0)
    throw UserError(one.where, "holds nothing", "say what one pack holds, such as \"5 kg\"");
  fields.has("confirmed");
  return one;
}

bool has_no_price(const Fields& fields) { return fields.is_empty("paid"); }

void add_packs(Supplies& supplies, const Fields& packs) {
  for (const std::string& material : packs.keys())
    for (const Fields& fields : packs.objects(material)) {
      if (has_no_price(fields)) continue;
      ListedPack one = listed(fields, material, "holds", supplies.currency);
      one.pack.seller = fields.optional_name("from").value_or("");
      if (fields.has("as_of")) one.pack.as_of = fields.date("as_of");
      ask_for_price_of(fields, one.pack, supplies);
      supplies.packs.push_back(std::move(one));
    }
}

/// What two names of one material have in common.
std::string key_in(const Supplies& supplies, const std::string& name) {
  return supplies.made_ahead.contains(name) ? name : key_of(name, supplies.meanings.at(name));
}

void add_prices(Supplies& supplies, const Fields& prices) {
  std::set<std::string> in_packs;
  for (const ListedPack& one : supplies.packs) in_packs.insert(key_in(supplies, one.pack.material));
  for (const std::string& material : prices.keys()) {
    if (prices.is_empty(material)) continue;
    const Fields fields = prices.object(material);
    if (has_no_price(fields)) continue;
    if (in_packs.contains(key_in(supplies, material)))
      throw UserError(prices.place(material), "is a price of what \"packs\" has too",
                      "leave it in \"packs\" alone");
    ListedPack one = listed(fields, material, "for", supplies.currency);
    ask_for_price_of(fields, one.pack, supplies);
    supplies.packs.push_back(std::move(one));
  }
}

void add_sellers(Supplies& supplies, const Fields& sellers) {
  for (const std::string& name : sellers.keys()) {
    const Fields fields = sellers.object(name);
    trade::Seller seller{.name = name};
    const auto sum = [&](const char* key) -> std::optional<Money> {
      if (fields.is_empty(key)) return std::nullopt;
      return read_money(fields.text(key), supplies.currency, fields.place(key));
    };
    seller.postage = sum("postage");
    seller.postage_free_from = sum("postage_free_from");
    if (!fields.is_empty("lead_time")) {
      constexpr double minutes_a_day = 24 * 60;
      const auto time = fields.duration("lead_time", "5 days");
      seller.lead_days =
          static_cast<int>(std::ceil(static_cast<double>(time.count()) / minutes_a_day));
    }
    supplies.sellers.push_back(std::move(seller));
  }
}

void add_shelf(Supplies& supplies, const Fields& have) {
  for (const std::string& material : have.keys())
    if (!have.is_empty(material))
      supplies.have.insert(
          {material, {amount_of(have, material, material, {}), have.place(material)}});
}

void add_waste(Supplies& supplies, const Fields& waste) {
  for (const std::string& material : waste.keys()) {
    if (waste.is_empty(material)) continue;
    supplies.waste[material] = waste.share(material, Share{}, most_waste);
    supplies.waste_at[material] = waste.place(material);
  }
}

std::vector<std::string> listed_names(const Fields& studio) {
  std::vector<std::string> names;
  for (const char* key : {"packs", "prices", "have"})
    if (const auto section = studio.is_empty(key) ? std::nullopt : studio.optional_object(key))
      for (std::string& name : section->keys()) names.push_back(std::move(name));
  return names;
}

/// A solution is no alkali and a blend no fat: their weights are others.
void refuse_made_ahead_as_make(const Supplies& supplies) {
  for (const auto& [make, serves] : supplies.serves_as)
    for (const std::string& name : {make, serves.material})
      if (supplies.made_ahead.contains(name))
        throw UserError(serves.where, quoted(name) + " stands ready, and is no make of a material",
                        "leave it out here; a run takes it by \"lye_from\" or \"blend\"");
}

}  // namespace

Currency currency_of(const Fields& fields) {
  return currency(text_at(fields, "currency", "EUR"), fields.place("currency"));
}

std::optional<Amount> pieces_in(const std::string& text, const Place& where) {
  const auto blank = text.find_last_of(' ');
  const std::string unit = blank == std::string::npos ? "" : text.substr(blank + 1);
  if (unit != "pieces" && unit != "piece") return std::nullopt;
  const double count = read_number(text.substr(0, blank), where);
  if (count != std::floor(count) || count > 1e9)
    throw UserError(where, quoted(text) + " is no count of pieces",
                    "write a whole number, such as \"50 pieces\"");
  return Amount::pieces(static_cast<std::int64_t>(count));
}

Amount amount_in(const std::string& text, const std::string& material,
                 std::optional<Density> density, const Place& where) {
  if (const auto pieces = pieces_in(text, where)) return *pieces;
  const bool is_in_grams = text.ends_with('g');  // as most are; no volume is
  const auto volume = is_in_grams ? std::nullopt : volume_in(text, where);
  if (!volume) return Amount::at_most(read_mass(text, where, "5 kg"));
  if (!density) density = density_of(material);
  if (!density)
    throw UserError(where, quoted(text) + " is a volume, and what it weighs is not known",
                    "give the mass, or the pack's \"density\", such as \"0.92 g/ml\"");
  return Amount::at_most(*volume * *density);
}

planning::Priced priced_as(const std::string& material) {
  if (chemistry::names_water(material)) return planning::Priced::water;
  if (!chemistry::fats_named(material).empty()) return planning::Priced::fat;
  const auto alkali = chemistry::names_an_alkali(material);
  const bool is_for_lye = alkali && alkali->belongs_under_alkali;
  return is_for_lye ? planning::Priced::alkali : planning::Priced::other;
}

Supplies read_supplies(const Studio& studio) {
  Supplies supplies;
  const auto& fields = studio.fields();
  if (!fields) return supplies;
  const auto section = [&](const char* key) {
    return fields->is_empty(key) ? std::nullopt : fields->optional_object(key);
  };
  supplies.made_ahead = made_ahead_in(studio);
  const auto listed = listed_names(*fields);
  for (const std::string& name : listed) supplies.meanings.try_emplace(name, meaning_of(name));
  const auto packs = section("packs"), prices = section("prices"), sellers = section("sellers");
  if (packs || prices || sellers) supplies.currency = currency_of(*fields);
  if (packs) add_packs(supplies, *packs);
  if (prices) add_prices(supplies, *prices);
  if (const auto serves_as = section("serves_as"))
    supplies.serves_as = read_substitutes(*serves_as, listed);
  refuse_made_ahead_as_make(supplies);
  std::stable_partition(supplies.packs.begin(), supplies.packs.end(), [&](const ListedPack& one) {
    return !supplies.serves_as.contains(one.pack.material);
  });
  if (sellers) add_sellers(supplies, *sellers);
  if (const auto have = section("have")) add_shelf(supplies, *have);
  if (const auto waste = section("waste")) add_waste(supplies, *waste);
  return supplies;
}

std::shared_ptr<const Supplies> supplies_of(const Studio& studio, const moulds::Library& library) {
  const std::string file = studio.fields() ? studio.fields()->file() : "";
  return library.once<Supplies>(file, [&] { return read_supplies(studio); });
}

std::set<std::string> made_ahead_in(const Studio& studio) {
  std::set<std::string> names;
  if (!studio.fields()) return names;
  for (const char* key : {"lye_solutions", "blends"})
    if (!studio.fields()->is_empty(key))
      for (const std::string& name : studio.fields()->object(key).keys()) names.insert(name);
  return names;
}

namespace {

Meaning known_meaning(const std::string& name, const Supplies& supplies) {
  const auto known = supplies.meanings.find(name);
  return known == supplies.meanings.end() ? meaning_of(name) : known->second;
}

}  // namespace

std::optional<OtherPurity> other_purity_words(const std::string& listed, const Supplies& supplies,
                                              const Needed& needed) {
  if (supplies.made_ahead.contains(listed) || needed.has(listed)) return std::nullopt;
  const Meaning meaning = known_meaning(listed, supplies);
  const PlannedPurity* other = planned_otherwise(meaning, needed);
  if (other == nullptr || !needed.has(other->dry)) return std::nullopt;
  const std::string pure = trimmed(other->purity.in_percent(), 2) + " % pure";
  return OtherPurity{other->dry, quoted(listed) + " does not count as " + other->dry +
                                     " here: " + quoted(other->formula) + " is planned with " +
                                     other->dry + " that is " + pure +
                                     ", and of another purity other weights are needed. Plan it "
                                     "with the purity of what you buy."};
}

std::string own_material_of(const std::string& name, const Needed& needed, const Supplies& supplies,
                            const Place& where) {
  if (supplies.made_ahead.contains(name)) return name;
  const auto known = supplies.meanings.find(name);
  if (known != supplies.meanings.end()) return needed_by_name(name, known->second, needed, where);
  return needed_by_name(name, meaning_of(name), needed, where);
}

std::string material_of(const std::string& name, const Needed& needed, const Supplies& supplies,
                        const Place& where) {
  std::string own = own_material_of(name, needed, supplies, where);
  const auto serves = supplies.serves_as.find(name);
  if (serves == supplies.serves_as.end() || needed.has(own)) return own;
  return own_material_of(serves->second.material, needed, supplies, serves->second.where);
}

}  // namespace brimwright::runs
