#include "chemistry/alkali_names.h"

#include "chemistry/name_words.h"
#include "units/fields.h"

#include <algorithm>
#include <unordered_set>
#include <vector>

namespace brimwright::embedded {
std::string_view alkali_names_json();
}

namespace brimwright::chemistry {
namespace {

struct AlkaliData {
  std::vector<AlkaliName> alkalis;
  PhraseBook names, alone, innocent;
  std::unordered_set<std::string> fillers;
};

void read_list(const Fields& file, std::string_view key, PhraseBook& book,
               std::vector<AlkaliName>& alkalis) {
  for (const Fields& entry : file.objects(key)) {
    for (const std::string& name : entry.texts("names")) book.add(name, alkalis.size());
    alkalis.push_back({entry.text("is"), entry.truth("belongs_under_alkali")});
  }
}

AlkaliData read_data() {
  const Fields file = Fields::parse(embedded::alkali_names_json(), "data/alkali_names.json");
  AlkaliData data;
  read_list(file, "alkalis", data.names, data.alkalis);
  read_list(file, "alone", data.alone, data.alkalis);
  for (const std::string& phrase : file.texts("innocent")) data.innocent.add(phrase, 0);
  for (const std::string& filler : file.texts("fillers"))
    for (const std::string& word : words_of(filler)) data.fillers.insert(word);
  return data;
}

const AlkaliData& data() {
  static const AlkaliData read = read_data();
  return read;
}

/// Neither a figure nor "powder", "pure" and the like.
bool says_something(const std::string& word) {
  return !(word[0] >= '0' && word[0] <= '9') && !data().fillers.contains(word);
}

/// Nothing that says something stands beside it, where `said` words of the name do.
bool stands_alone(const std::vector<std::string>& words, const PhraseBook::Hit& hit,
                  std::ptrdiff_t said) {
  const auto at = words.begin();
  return std::count_if(at + static_cast<std::ptrdiff_t>(hit.first),
                       at + static_cast<std::ptrdiff_t>(hit.end), says_something) == said;
}

}  // namespace

std::optional<AlkaliName> names_an_alkali(std::string_view name) {
  const auto words = words_of(name);
  const Cover innocent(data().innocent.hits(words), words.size());
  for (const auto& hit : data().names.hits(words))
    if (!innocent.holds(hit) && !is_denied(words, hit)) return data().alkalis[hit.entry];
  const auto said = std::count_if(words.begin(), words.end(), says_something);
  for (const auto& hit : data().alone.hits(words))
    if (stands_alone(words, hit, said)) return data().alkalis[hit.entry];
  return std::nullopt;
}

void refuse_alkali(std::string_view name, const Place& where) {
  const auto alkali = names_an_alkali(name);
  if (!alkali) return;
  throw UserError(
      where,
      "\"" + std::string(name) + "\" is an alkali (" + alkali->is + ") and would go in uncounted",
      alkali->belongs_under_alkali
          ? "list NaOH and KOH under the formula's \"alkali\" and nowhere else, with their purity; "
            "how much is then worked out"
          : "leave it out: only NaOH and KOH can be worked out, under the formula's \"alkali\"; if "
            "it is something else, call it by that name");
}

}  // namespace brimwright::chemistry
