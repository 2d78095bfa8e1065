#include "chemistry/acid_names.h"

#include "chemistry/acids.h"
#include "chemistry/name_words.h"
#include "units/fields.h"
#include "units/number_text.h"

#include <algorithm>
#include <stdexcept>
#include <vector>

namespace brimwright::embedded {
std::string_view acid_names_json();
}

namespace brimwright::chemistry {
namespace {

struct HintEntry {
  AcidHint hint;
  Share most_by_figure;  // zero: figures in the name say nothing
};

struct AcidNameData {
  std::vector<HintEntry> hints;
  std::vector<AcidBound> bounds;
  PhraseBook hint_names, bound_names, acid_words, no_acid, neutral_salts, concentrated,
      not_concentrated, dry, scent;
};

HintEntry read_hint(const Fields& entry) {
  HintEntry read;
  read.hint.acid = entry.text("acid");
  if (find_acid(read.hint.acid) == nullptr)
    throw std::logic_error("data/acid_names.json: no such acid: " + read.hint.acid);
  read.hint.share = entry.number("percent") * percent;
  read.hint.is_chemical = entry.truth("chemical");
  read.hint.confirmed = entry.has("confirmed") && entry.truth("confirmed");
  read.hint.note = entry.optional_text("note").value_or("");
  if (entry.has("by_figure")) read.most_by_figure = entry.number("most_percent") * percent;
  return read;
}

AcidBound read_bound(const Fields& entry) {
  const Share most = entry.number("most_percent") * percent;
  const double koh_g_per_g = find_acid(entry.text("as"))->koh_g_per_g;
  return {entry.text("kind"), most, most.of_one() * koh_g_per_g * 1000};
}

AcidNameData read_data() {
  const Fields file = Fields::parse(embedded::acid_names_json(), "data/acid_names.json");
  AcidNameData data;
  for (const Fields& entry : file.objects("names")) {
    for (const std::string& name : entry.texts("names"))
      data.hint_names.add(name, data.hints.size());
    data.hints.push_back(read_hint(entry));
  }
  for (const Fields& entry : file.objects("kinds")) {
    for (const std::string& name : entry.texts("names"))
      data.bound_names.add(name, data.bounds.size());
    data.bounds.push_back(read_bound(entry));
  }
  const auto fill = [&](std::string_view key, PhraseBook& book) {
    for (const std::string& phrase : file.texts(key)) book.add(phrase, 0);
  };
  fill("acid_words", data.acid_words);
  fill("no_acid", data.no_acid);
  fill("neutral_salts", data.neutral_salts);
  fill("concentrated", data.concentrated);
  fill("not_concentrated", data.not_concentrated);
  fill("dry", data.dry);
  fill("scent", data.scent);
  return data;
}

const AcidNameData& data() {
  static const AcidNameData read = read_data();
  return read;
}

using Words = std::vector<std::string>;
using Hits = std::vector<PhraseBook::Hit>;

std::size_t letters_of(const Words& words, const PhraseBook::Hit& hit) {
  std::size_t letters = 0;
  for (std::size_t i = hit.first; i < hit.end; ++i) letters += words[i].size();
  return letters;
}

/// Finds of `book` that are not denied ("acid-free"), the longest first.
Hits said(const PhraseBook& book, const Words& words) {
  Hits hits = book.hits(words);
  std::erase_if(hits, [&](const auto& hit) { return is_denied(words, hit); });
  std::stable_sort(hits.begin(), hits.end(), [&](const auto& a, const auto& b) {
    return letters_of(words, a) > letters_of(words, b);
  });
  return hits;
}

/// True if one of `hits` is not part of one of `others`: "acid" in "amino acid".
bool has_outside(const Hits& hits, const Hits& others, const Words& words) {
  const Cover cover(others, words.size());
  return std::any_of(hits.begin(), hits.end(), [&](const auto& hit) { return !cover.holds(hit); });
}

bool has_any(const PhraseBook& book, std::string_view name) {
  return !book.hits(words_of(name)).empty();
}

bool is_figure(char c) { return c >= '0' && c <= '9'; }

/// The one percentage in `name`, "5,5 %"; nothing where there is none or more than one.
std::optional<Share> percentage_in(std::string_view name) {
  const auto sign = name.find('%');
  if (sign == std::string_view::npos || name.find('%', sign + 1) != std::string_view::npos)
    return std::nullopt;
  std::size_t end = sign;
  while (end > 0 && name[end - 1] == ' ') --end;
  std::size_t begin = end;
  while (begin > 0 &&
         (is_figure(name[begin - 1]) || name[begin - 1] == '.' || name[begin - 1] == ','))
    --begin;
  std::string figures(name.substr(begin, end - begin));
  std::replace(figures.begin(), figures.end(), ',', '.');
  const auto value = number_of(figures);
  if (!value || !(*value > 0)) return std::nullopt;
  return *value * percent;
}

}  // namespace

std::optional<AcidHint> acid_hint(std::string_view name) {
  const Words words = words_of(name);
  const Hits hits = said(data().hint_names, words);
  if (hits.empty()) return std::nullopt;
  const HintEntry& entry = data().hints[hits.front().entry];
  AcidHint hint = entry.hint;
  const auto figure = percentage_in(name);
  if (figure && *figure <= entry.most_by_figure) hint.by_figure = hint.share = *figure;
  return hint;
}

std::optional<AcidBound> acid_bound(std::string_view name) {
  std::optional<AcidBound> widest;
  for (const auto& hit : data().bound_names.hits(words_of(name)))
    if (const AcidBound& bound = data().bounds[hit.entry]; !widest || bound.most > widest->most)
      widest = bound;
  return widest;
}

bool names_an_acid(std::string_view name) {
  const Words words = words_of(name);
  if (!said(data().hint_names, words).empty()) return true;
  return has_outside(said(data().acid_words, words), data().no_acid.hits(words), words);
}

bool names_a_neutral_salt(std::string_view name) {
  return has_any(data().neutral_salts, name) && !names_an_acid(name);
}

bool says_concentrated(std::string_view name) {
  const Words words = words_of(name);
  return has_outside(data().concentrated.hits(words), data().not_concentrated.hits(words), words);
}
bool says_dry(std::string_view name) { return has_any(data().dry, name); }
bool says_scent(std::string_view name) { return has_any(data().scent, name); }

}  // namespace brimwright::chemistry
