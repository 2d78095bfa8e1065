#include "chemistry/fragrance_allergens.h"

#include "chemistry/inci_data.h"
#include "chemistry/name_words.h"
#include "units/fields.h"

#include <algorithm>
#include <map>
#include <set>
#include <stdexcept>

namespace brimwright::embedded {
std::string_view fragrance_allergens_json();
}

namespace brimwright::chemistry {
namespace {

struct Book {
  FragranceAllergens law;
  std::map<std::string, std::size_t> entries;  // by the keys of all their names
  // Names as the file has them, by their keys: those of entries, and what they cover.
  std::map<std::string, std::string> names, covered;
  std::vector<ProhibitedFragrance> prohibited;
  std::map<std::string, std::size_t> prohibited_by_key;
  std::set<std::string> others;  // keys
  PhraseBook common;             // what makers call an extract
};

/// Its own name and all that it covers.
std::vector<std::string> names_of(const Fields& entry) {
  std::vector<std::string> names = entry.texts("covers");
  names.insert(names.begin(), entry.text("name"));
  return names;
}

void read_entry(const Fields& entry, Book& book) {
  const std::size_t at = book.law.entries.size();
  ListedAllergen listed{.name = entry.text("name"),
                        .entry = static_cast<int>(entry.whole_number("entry", 1, 1000)),
                        .is_new = entry.truth("new"),
                        .is_extract = entry.has("extract") && entry.truth("extract"),
                        .most = {}};
  if (entry.has("most_percent")) listed.most = entry.number("most_percent") * percent;
  for (const std::string& name : names_of(entry)) {
    if (!book.entries.emplace(inci_key(name), at).second)
      throw std::logic_error("data/fragrance_allergens.json: twice " + name);
    (name == listed.name ? book.names : book.covered).emplace(inci_key(name), name);
  }
  for (const std::string& common : entry.texts("common")) book.common.add(common, at);
  book.law.entries.push_back(std::move(listed));
}

Book read_book() {
  const Fields file =
      Fields::parse(embedded::fragrance_allergens_json(), "data/fragrance_allergens.json");
  Book book;
  const Fields above = file.object("named_above_percent");
  book.law.named_above_rinsed_off = above.number("rinsed_off") * percent;
  book.law.named_above_left_on = above.number("left_on") * percent;
  const Fields dates = file.object("dates");
  book.law.placed_until = dates.text("placed_on_the_market_until");
  book.law.available_until = dates.text("made_available_until");
  for (const Fields& entry : file.objects("entries")) read_entry(entry, book);
  for (const Fields& entry : file.objects("prohibited")) {
    for (const std::string& name : names_of(entry))
      book.prohibited_by_key.emplace(inci_key(name), book.prohibited.size());
    book.prohibited.push_back({entry.text("name"), entry.text("since")});
  }
  for (const std::string& name : file.object("other_substances").texts("names"))
    book.others.insert(inci_key(name));
  return book;
}

const Book& book() {
  static const Book read = read_book();
  return read;
}

/// Whether `a` becomes `b` by at most so many slips: a letter put in, left out, wrong, or two in
/// the wrong order.
bool is_within(std::string_view a, std::string_view b, int edits) {
  while (!a.empty() && !b.empty() && a.front() == b.front()) {
    a.remove_prefix(1);
    b.remove_prefix(1);
  }
  if (a.empty() || b.empty()) return a.size() + b.size() <= static_cast<std::size_t>(edits);
  if (edits == 0) return false;
  const bool are_swapped = a.size() > 1 && b.size() > 1 && a[0] == b[1] && a[1] == b[0];
  if (are_swapped && is_within(a.substr(2), b.substr(2), edits - 1)) return true;
  return is_within(a.substr(1), b.substr(1), edits - 1) || is_within(a.substr(1), b, edits - 1) ||
         is_within(a, b.substr(1), edits - 1);
}

/// A fragrance oil or a blend is made to smell of something, and holds what it likes.
bool is_made_to_smell(const std::vector<std::string>& words) {
  static const std::set<std::string> made = {
      "fragrance", "parfum", "perfume", "perfum", "scent",  "type",     "blend",
      "synthetic", "duft",   "duftol",  "aroma",  "accord", "parfumol", "duftmischung"};
  return std::any_of(words.begin(), words.end(),
                     [](const std::string& word) { return made.contains(word); });
}

}  // namespace

const FragranceAllergens& fragrance_allergens() { return book().law; }

const ListedAllergen* listed_allergen(std::string_view name) {
  const auto at = book().entries.find(inci_key(name));
  return at == book().entries.end() ? nullptr : &book().law.entries[at->second];
}

const ProhibitedFragrance* prohibited_fragrance(std::string_view name) {
  const auto at = book().prohibited_by_key.find(inci_key(name));
  return at == book().prohibited_by_key.end() ? nullptr : &book().prohibited[at->second];
}

bool is_other_fragrance(std::string_view name) { return book().others.contains(inci_key(name)); }

std::optional<std::string> meant_allergen(std::string_view name) {
  const std::string key = inci_key(name);
  if (key.size() < 4 || book().entries.contains(key) || book().prohibited_by_key.contains(key) ||
      book().others.contains(key))
    return std::nullopt;
  for (const int slips : {1, 2}) {
    if (slips == 2 && key.size() < 7) break;
    for (const auto* names : {&book().names, &book().covered})  // the label's own names first
      for (const auto& [known, read] : *names)
        if (known.size() >= 5 && is_within(key, known, slips)) return read;
  }
  return std::nullopt;
}

const ListedAllergen* listed_extract_called(std::string_view name) {
  const auto words = words_of(name);
  const auto hits = book().common.hits(words);
  if (hits.empty() || is_made_to_smell(words) || is_denied(words, hits.front())) return nullptr;
  return &book().law.entries[hits.front().entry];
}

}  // namespace brimwright::chemistry
