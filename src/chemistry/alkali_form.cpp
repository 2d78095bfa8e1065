#include "chemistry/alkali_form.h"

#include "chemistry/alkali_names.h"
#include "chemistry/name_words.h"

#include <algorithm>
#include <charconv>
#include <optional>
#include <string>
#include <unordered_set>
#include <vector>

namespace brimwright::chemistry {
namespace {

using Words = std::vector<std::string>;
using WordSet = std::unordered_set<std::string>;

// NaOH and KOH saturate at 52 and 53 % at 20 °C (data/lye.json); a cask kept warm holds little
// more.
constexpr double strongest_solution = 55;
constexpr double least_pure = 80;  // as a formula's purity

// In five languages as `words_of` spells them; common practice, no source.
const WordSet& of_solutions() {
  static const WordSet words = {"solution", "losung",   "solucion", "soluzione", "lessive",
                                "lejia",    "liscivia", "lisciva",  "dissolved", "gelost",
                                "aquous",   "aqueous",  "premixed", "premix",    "masterbatch"};
  return words;
}
const WordSet& of_liquids() {
  static const WordSet words = {"liquid",    "liquide", "liquido", "liquida", "flussig", "flussige",
                                "flussiges", "jug",     "bottle",  "can",     "tank",    "stock"};
  return words;
}
const WordSet& of_dry_goods() {
  static const WordSet words = {
      "flake",      "flakes",      "bead",      "beads",     "pearl",       "pearls",
      "micropearl", "micropearls", "prill",     "prills",    "pellet",      "pellets",
      "granule",    "granules",    "powder",    "crystal",   "crystals",    "solid",
      "dry",        "anhydrous",   "flocken",   "perlen",    "mikroperlen", "plattchen",
      "schuppen",   "pulver",      "granulat",  "kristalle", "fest",        "trocken",
      "paillettes", "perles",      "pastilles", "poudre",    "ecailles",    "escamas",
      "perlas",     "polvo",       "scaglie",   "perle",     "polvere",     "gocce"};
  return words;
}
const WordSet& per_cent() {
  static const WordSet words = {"percent", "prozent", "pct", "pourcent", "porciento", "percento"};
  return words;
}

bool has_any(const Words& words, const WordSet& of) {
  return std::any_of(words.begin(), words.end(),
                     [&](const std::string& word) { return of.contains(word); });
}

/// "Natronlauge", but not "Laugenperlen".
bool has_lauge(const Words& words) {
  return std::any_of(words.begin(), words.end(),
                     [](const std::string& word) { return word.ends_with("lauge"); });
}

/// KOH is sold dry for liquid soap.
bool is_liquid(const Words& words) {
  for (std::size_t i = 0; i < words.size(); ++i) {
    const bool is_of_soap = i + 1 < words.size() &&
                            (words[i + 1].starts_with("soap") || words[i + 1].starts_with("seife"));
    if (of_liquids().contains(words[i]) && !is_of_soap) return true;
  }
  return false;
}

bool is_of_figure(char c) { return (c >= '0' && c <= '9') || c == '.' || c == ','; }

std::optional<double> number_in(std::string text) {
  std::replace(text.begin(), text.end(), ',', '.');
  double number = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
  if (text.empty() || error != std::errc() || end != text.data() + text.size()) return std::nullopt;
  return number;
}

std::string_view without_blanks_after(std::string_view text) {
  while (text.ends_with(' ')) text.remove_suffix(1);
  return text;
}

/// Takes the figure that `text` ends in off it, with the blanks after it.
std::optional<double> take_last_number(std::string_view& text) {
  text = without_blanks_after(text);
  std::size_t begin = text.size();
  while (begin > 0 && is_of_figure(text[begin - 1])) --begin;
  const auto number = number_in(std::string(text.substr(begin)));
  text = without_blanks_after(text.substr(0, begin));
  return number;
}

/// The figure that ends before `end`, blanks between them.
std::optional<double> number_before(std::string_view name, std::size_t end) {
  std::string_view before = name.substr(0, end);
  return take_last_number(before);
}

/// Of "85-90 %" or "85 to 90 %" both figures, of "90 %" the one, where the sign stands at `end`.
std::vector<double> numbers_before(std::string_view name, std::size_t end) {
  std::string_view before = name.substr(0, end);
  std::vector<double> numbers;
  if (const auto last = take_last_number(before)) numbers.push_back(*last);
  for (const std::string_view mark : {"-", "–", " to", " bis"})
    if (before.ends_with(mark)) {
      before.remove_suffix(mark.size());
      if (const auto first = take_last_number(before)) numbers.push_back(*first);
      break;
    }
  return numbers;
}

/// The least of all percentages in the name.
std::optional<double> least_percentage(std::string_view name, const Words& words) {
  std::optional<double> least;
  const auto see = [&](std::optional<double> one) {
    if (one && (!least || *one < *least)) least = one;
  };
  for (std::size_t i = 0; i < name.size(); ++i)
    if (name[i] == '%') see(number_before(name, i));
  for (std::size_t i = 1; i < words.size(); ++i) {
    const bool is_per_cent =
        per_cent().contains(words[i]) ||
        (words[i] == "per" && i + 1 < words.size() && words[i + 1].starts_with("cent"));
    if (is_per_cent) see(number_in(words[i - 1]));
  }
  return least;
}

/// "1:1", "50/50".
bool has_ratio(std::string_view name) {
  for (std::size_t i = 1; i + 1 < name.size(); ++i)
    if ((name[i] == ':' || name[i] == '/') && name[i - 1] >= '0' && name[i - 1] <= '9' &&
        name[i + 1] >= '0' && name[i + 1] <= '9')
      return true;
  return false;
}

/// "NaOH 50", where nothing says of what.
std::optional<double> last_figure(std::string_view name) {
  const std::size_t end = name.find_last_not_of(' ');
  if (end == std::string_view::npos) return std::nullopt;
  const std::size_t blank = name.find_last_of(' ', end);
  if (blank == std::string_view::npos) return std::nullopt;
  return number_in(std::string(name.substr(blank + 1, end - blank)));
}

/// Nothing for a figure that is neither.
std::optional<AlkaliForm> form_by(std::optional<double> percentage) {
  if (!percentage) return std::nullopt;
  if (*percentage <= strongest_solution) return AlkaliForm::solution;
  return *percentage < least_pure ? AlkaliForm::either : AlkaliForm::dry;
}

}  // namespace

AlkaliForm form_of_alkali(std::string_view name) {
  const Words words = words_of(name);
  const auto by_figure = form_by(least_percentage(name, words));
  if (has_any(words, of_solutions()) || has_lauge(words)) return AlkaliForm::solution;
  if (by_figure && *by_figure != AlkaliForm::dry) return *by_figure;
  if (has_ratio(name)) return AlkaliForm::solution;
  if (has_any(words, of_dry_goods())) return AlkaliForm::dry;
  if (is_liquid(words)) return AlkaliForm::solution;
  if (by_figure) return AlkaliForm::dry;
  if (has_any(words, {"lye"})) return AlkaliForm::either;
  const auto figure = last_figure(name);
  return figure && *figure >= 20 && *figure < least_pure ? AlkaliForm::either : AlkaliForm::dry;
}

std::optional<StatedPurity> stated_purity(std::string_view name) {
  const Words words = words_of(name);
  std::vector<double> figures;
  for (std::size_t i = 0; i < name.size(); ++i)
    if (name[i] == '%')
      for (const double one : numbers_before(name, i)) figures.push_back(one);
  if (figures.empty()) {
    const auto in_words = least_percentage(name, words), bare = last_figure(name);
    if (in_words) figures.push_back(*in_words);
    if (bare && *bare < 100) figures.push_back(*bare);  // "NaOH 100" may be grams
  }
  std::optional<StatedPurity> stated;
  for (const double one : figures) {
    if (one < least_pure || one > 100) continue;
    const Share share = one * percent;
    stated = stated ? StatedPurity{std::min(stated->low, share), std::max(stated->high, share)}
                    : StatedPurity{share, share};
  }
  return stated;
}

bool is_any_alkali(std::string_view name) {
  const auto alkali = names_an_alkali(name);
  if (!alkali || alkali->is != "lye") return false;
  static const WordSet words_for_it = {"lye",      "lauge",    "caustic",  "kaustisch", "alkali",
                                       "alkalis",  "caustico", "caustica", "caustique", "lejia",
                                       "liscivia", "lisciva",  "salt",     "water"};
  const Words words = words_of(name);
  return std::all_of(words.begin(), words.end(), [&](const std::string& word) {
    return (word[0] >= '0' && word[0] <= '9') || word.starts_with("lauge") ||
           words_for_it.contains(word) || of_solutions().contains(word) ||
           of_liquids().contains(word) || of_dry_goods().contains(word) ||
           per_cent().contains(word) || word == "pure" || word == "food" || word == "grade";
  });
}

}  // namespace brimwright::chemistry
