#include "chemistry/label_data.h"

#include "units/printing.h"
#include "units/reading.h"

#include <algorithm>
#include <cmath>
#include <string_view>

namespace brimwright::chemistry {
namespace {

/// A list of { "name", "share" } under `key`, no name twice, no share of zero.
template <class Item>
std::vector<Item> read_shares(const Fields& entry, std::string_view key) {
  std::vector<Item> items;
  for (const Fields& fields : entry.objects(key)) {
    const Item item{fields.name("name"), fields.share("share", Share(), whole)};
    if (!(item.share > Share()))
      throw UserError(fields.place("share"), "is 0 %", "leave out what is not in it");
    if (std::any_of(items.begin(), items.end(), [&](const Item& i) { return i.name == item.name; }))
      throw UserError(fields.place("name"), "\"" + item.name + "\" stands twice",
                      "put its shares together in one place");
    items.push_back(item);
    fields.refuse_unknown();
  }
  return items;
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
  const auto inci = read_shares<InciShare>(entry, "inci");
  const Share sum = sum_of(inci);
  // 0.1 %: suppliers round their percentages.
  if (std::abs(sum.of_one() - 1) > 1e-3 + 1e-9)
    throw UserError(entry.place("inci"), "the shares add to " + trimmed(sum.in_percent(), 3) + " %",
                    "list all that is in it, water too, until they add to 100 %");
  return inci;
}

}  // namespace

LabelData read_label_data(const Fields& entry) {
  LabelData data;
  data.inci = read_inci(entry);
  data.allergens = read_shares<Allergen>(entry, "allergens");
  data.document = entry.optional_text("document").value_or("");
  const Share allergens = sum_of(data.allergens);
  if (allergens.of_one() > 1 + 1e-9)
    throw UserError(entry.place("allergens"),
                    "the shares add to " + trimmed(allergens.in_percent(), 3) + " %",
                    "copy them again from the supplier's document");
  if (!data.allergens.empty() && data.document.empty())
    throw UserError(entry.place("document"), "is missing beside \"allergens\"",
                    "name the supplier's document they are from, with its date");
  return data;
}

std::optional<Share> read_limit_of_finished_soap(const Fields& entry) {
  constexpr std::string_view basis = " of finished soap";
  if (!entry.is_text("limit")) return std::nullopt;
  const std::string given = entry.text("limit");
  if (!given.ends_with(basis)) return std::nullopt;
  const Place where = entry.place("limit");
  const Rate rate = read_rate(given.substr(0, given.size() - basis.size()) + " of batter", where);
  const auto* share = std::get_if<Share>(&rate.amount);
  if (share == nullptr || !(*share > Share()))
    throw UserError(where, "\"" + given + "\" is no share of a mass above zero",
                    "write it as the supplier's document does, such as \"1.5 % of finished soap\"");
  return *share;
}

}  // namespace brimwright::chemistry
