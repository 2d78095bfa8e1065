#include "chemistry/fat_names.h"

#include "chemistry/name_words.h"
#include "units/complaint_facts.h"
#include "units/fields.h"
#include "units/printing.h"
#include "units/wording.h"

#include <algorithm>
#include <vector>

namespace brimwright::embedded {
std::string_view fat_names_json();
}

namespace brimwright::chemistry {
namespace {

struct FatNameData {
  std::vector<FatBound> bounds;
  PhraseBook names, dry, all_fat;
  Share most_dry;
};

FatNameData read_data() {
  const Fields file = Fields::parse(embedded::fat_names_json(), "data/fat_names.json");
  FatNameData data;
  for (const Fields& kind : file.objects("kinds")) {
    for (const std::string& name : kind.texts("names")) data.names.add(name, data.bounds.size());
    data.bounds.push_back({kind.text("kind"), kind.number("most_percent") * percent});
  }
  for (const std::string& phrase : file.texts("dry")) data.dry.add(phrase, 0);
  for (const std::string& phrase : file.texts("all_fat")) data.all_fat.add(phrase, 0);
  data.most_dry = file.number("dry_most_percent") * percent;
  return data;
}

const FatNameData& data() {
  static const FatNameData read = read_data();
  return read;
}

}  // namespace

std::optional<FatBound> fat_bound(std::string_view name) {
  const auto words = words_of(name);
  if (!data().all_fat.hits(words).empty()) return std::nullopt;
  std::optional<FatBound> widest;
  for (const auto& hit : data().names.hits(words))
    if (const FatBound& bound = data().bounds[hit.entry]; !widest || bound.most > widest->most)
      widest = bound;
  if (widest && !data().dry.hits(words).empty())
    widest = {"dried " + widest->kind, std::max(widest->most, data().most_dry)};
  return widest;
}

void refuse_too_much_fat(const std::string& name, Share said, const Place& where) {
  const auto bound = fat_bound(name);
  if (!bound || said.of_one() <= bound->most.of_one() + 1e-9) return;
  throw UserErrorWithFacts(
      where,
      "counts " + in_percent(said, 2) + " of \"" + name + "\" as fat, where " + bound->kind +
          " holds at most " + in_percent(bound->most, 2) +
          " (common practice, no source); too much here makes the soap lye-heavy",
      "give the fat in 100 g of it, as its label says; if it is dried, say so in its "
      "name (\"powder\")",
      {.is_lye_heavy = true});
}

}  // namespace brimwright::chemistry
