#include "chemistry/label_data.h"

#include "chemistry/fragrance_allergens.h"
#include "chemistry/inci_data.h"
#include "units/reading.h"
#include "units/wording.h"
#include "units/written_number.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <string_view>

namespace brimwright::chemistry {
namespace {

/// Of a list of { "name", "share" }: no share of zero, no name twice, however it is written.
template <class Item>
Item read_share(const Fields& fields, std::set<std::string>& keys) {
  Item item;
  item.name = fields.name("name");
  item.share = fields.share("share", Share(), whole, "20 %");
  if (!(item.share > Share()))
    throw UserError(fields.place("share"), "is 0 %", "leave out what is not in it");
  if (!keys.insert(inci_key(item.name)).second)
    throw UserError(fields.place("name"), "\"" + item.name + "\" appears twice",
                    "add its shares together in one entry");
  return item;
}

std::vector<InciShare> read_composition(const Fields& entry) {
  std::vector<InciShare> items;
  std::set<std::string> keys;
  for (const Fields& fields : entry.objects("inci")) {
    items.push_back(read_share<InciShare>(fields, keys));
    fields.refuse_unknown();
  }
  return items;
}

/// A slip of the pen would leave an allergen off the label.
void challenge_name(const Fields& fields, const std::string& name) {
  const auto meant = meant_allergen(name);
  if (!meant) return;
  throw UserError(fields.place("name"),
                  "\"" + name + "\" is not on the list of fragrance allergens",
                  "did you mean \"" + *meant +
                      "\"? If it is another substance, put \"listed\": false beside it");
}

/// Under the names of the list, what one entry covers put together.
std::vector<Allergen> read_allergens(const Fields& entry) {
  std::vector<Allergen> allergens;
  std::set<std::string> keys;
  for (const Fields& fields : entry.objects("allergens")) {
    auto allergen = read_share<Allergen>(fields, keys);
    const bool says_other = fields.has("listed") && !fields.truth("listed");
    if (!says_other) challenge_name(fields, allergen.name);
    allergen.is_other = says_other || is_other_fragrance(allergen.name);
    fields.refuse_unknown();
    if (const auto* listed = listed_allergen(allergen.name)) allergen.name = listed->name;
    const auto same = std::find_if(allergens.begin(), allergens.end(),
                                   [&](const Allergen& a) { return a.name == allergen.name; });
    if (same == allergens.end())
      allergens.push_back(allergen);
    else
      same->share = same->share + allergen.share;
  }
  return allergens;
}

template <class Item>
Share sum_of(const std::vector<Item>& items) {
  Share sum;
  for (const Item& item : items) sum = sum + item.share;
  return sum;
}

std::vector<InciShare> read_inci(const Fields& entry) {
  if (!entry.has("inci")) return {};
  if (entry.is_text("inci")) return {{entry.name("inci"), whole}};
  auto inci = read_composition(entry);
  const Share sum = sum_of(inci);
  // 0.1 %: suppliers round their percentages.
  if (std::abs(sum.of_one() - 1) > 1e-3 + 1e-9)
    throw UserError(entry.place("inci"), "the shares add to " + in_percent(sum, 3),
                    "list all that is in it, water too, until the shares add to 100 %");
  return inci;
}

}  // namespace

LabelData read_label_data(const Fields& entry) {
  LabelData data;
  data.inci = read_inci(entry);
  data.allergens = read_allergens(entry);
  data.document = entry.optional_text("document").value_or("");
  const Share allergens = sum_of(data.allergens);
  if (allergens.of_one() > 1 + 1e-9)
    throw UserError(entry.place("allergens"), "the shares add to " + in_percent(allergens, 3),
                    "copy them again from the supplier's document");
  if (!data.allergens.empty() && data.document.empty())
    throw UserError(entry.place("document"), "is missing beside \"allergens\"",
                    "name the supplier's document that they are from, with its date");
  return data;
}

std::optional<Share> read_limit_of_finished_soap(const Fields& entry) {
  constexpr std::string_view basis = " of finished soap";
  if (!entry.is_text("limit")) return std::nullopt;
  const std::string given = plain(entry.text("limit"));
  if (!given.ends_with(basis)) return std::nullopt;
  const Place where = entry.place("limit");
  const Rate rate = read_rate(given.substr(0, given.size() - basis.size()) + " of batter", where);
  const auto* share = std::get_if<Share>(&rate.amount);
  if (share == nullptr || !(*share > Share()))
    throw UserError(where, "\"" + given + "\" is not a share of a mass above zero",
                    "write it as the supplier's document does, such as \"1.5 % of finished soap\"");
  return *share;
}

}  // namespace brimwright::chemistry
