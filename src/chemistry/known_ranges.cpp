#include "chemistry/known_ranges.h"

#include "chemistry/fat_search.h"
#include "chemistry/fats.h"
#include "chemistry/name_words.h"
#include "chemistry/theoretical_value.h"
#include "units/letters.h"
#include "units/printing.h"

#include <algorithm>
#include <map>
#include <set>

namespace brimwright::chemistry {
namespace {

using Words = std::set<std::string>;

/// How far a lot may lie from what a maker's own file says of the fat: common practice, no source.
constexpr double lots_differ = 0.05;

/// Words that say how a fat was made, sold or numbered, but not which it is.
bool tells_not_which(const std::string& word) {
  static const Words such = {"butter", "fat", "seed", "studio", "lot"};
  const bool is_number =
      std::all_of(word.begin(), word.end(), [](char c) { return c >= '0' && c <= '9'; });
  return is_number || tells_how_made(word) || such.contains(word);
}

/// "Olive oil, extra virgin" -> {olive}; "olive_studio" too.
Words telling_words(const std::string& name) {
  Words words;
  for (const std::string& word : words_of(name))
    if (!tells_not_which(word)) words.insert(word);
  return words;
}

/// All names of all shipped fats, by id; made once.
const std::map<std::string, std::set<Words>>& shipped_names() {
  static const auto names = [] {
    std::map<std::string, std::set<Words>> all;
    for (const Fat& fat : shipped_fats()) {
      all[fat.id] = {telling_words(fat.id), telling_words(fat.name)};
      for (const std::string& other : fat.also_called) all[fat.id].insert(telling_words(other));
    }
    return all;
  }();
  return names;
}

/// Whether `name` is one of the names of `shipped`, but for what is added on how it was made.
bool is_called(const Fat& shipped, const std::string& name) {
  const Words words = telling_words(name);
  return !words.empty() && shipped_names().at(shipped.id).contains(words);
}

/// "Olea Europaea (Olive) Fruit Oil", as some countries print it, is "olea europaea fruit oil".
std::string plain_inci(const std::string& inci) {
  std::string plain;
  int depth = 0;
  for (const char c : in_small_letters(inci)) {
    if (c == '(') ++depth;
    const bool doubled = c == ' ' && (plain.empty() || plain.back() == ' ');
    if (depth == 0 && !doubled) plain += c;
    if (c == ')' && depth > 0) --depth;
  }
  while (plain.ends_with(' ')) plain.pop_back();
  return plain;
}

template <class Fits>
std::optional<KnownRange> range_of_shipped(const Fits& fits, const std::string& link) {
  std::optional<KnownRange> found;
  for (const Fat& shipped : shipped_fats()) {
    if (!fits(shipped)) continue;
    const auto [low, typical, high] = shipped.titrated();
    if (!found) {
      found = KnownRange{"known for " + shipped.name + link, low, high};
      continue;
    }
    found->low = std::min(found->low, low);
    found->high = std::max(found->high, high);
  }
  return found;
}

/// Of what is called so in a language or a word that several share ("Kokosfett").
std::optional<KnownRange> range_of_namesakes(const std::string& name) {
  const auto namesakes = fats_named(name);
  return range_of_shipped(
      [&](const Fat& f) {
        return std::any_of(namesakes.begin(), namesakes.end(),
                           [&](const Fat* other) { return other->id == f.id; });
      },
      ", which may have that name");
}

std::optional<KnownRange> range_by_make_up(const Fat& fat) {
  const auto theory = theoretical_value(fat);
  if (!theory) return std::nullopt;
  return KnownRange{fat.kind == "wax_ester" ? "that its mean molar mass calls for"
                                            : "that its fatty acids call for",
                    theory->least,
                    theory->pure.high,
                    theory_tolerance(),
                    true,
                    fat.is_users_own};
}

}  // namespace

bool KnownRange::contradicts(SaponificationValue stated) const {
  return stated.mg_koh_per_g() < low.mg_koh_per_g() * (1 - tolerance) ||
         stated.mg_koh_per_g() > high.mg_koh_per_g() * (1 + tolerance);
}

std::string KnownRange::in_words() const {
  const std::string from = trimmed(low.mg_koh_per_g(), 1), to = trimmed(high.mg_koh_per_g(), 1);
  return (from == to ? from : from + " to " + to) + " mg KOH/g " + whose;
}

const Fat* shipped_slow_wax(const Fat& own) {
  const auto& shipped = shipped_fats();
  const auto at = std::find_if(shipped.begin(), shipped.end(), [&](const Fat& f) {
    return f.slow && (is_called(f, own.name) || is_called(f, own.id) ||
                      plain_inci(f.inci) == plain_inci(own.inci));
  });
  return at == shipped.end() ? nullptr : &*at;
}

std::vector<KnownRange> known_ranges(const Fat& fat) {
  std::vector<KnownRange> known;
  const auto add = [&](const std::optional<KnownRange>& range) {
    if (range) known.push_back(*range);
  };
  if (fat.is_users_own) {
    const auto by_name = range_of_shipped([&](const Fat& f) { return is_called(f, fat.name); },
                                          ", whose name it has");
    add(by_name ? by_name : range_of_namesakes(fat.name));
    add(range_of_shipped([&](const Fat& f) { return f.id == fat.id || is_called(f, fat.id); },
                         ", whose id it has"));
    add(range_of_shipped([&](const Fat& f) { return plain_inci(f.inci) == plain_inci(fat.inci); },
                         ", whose INCI name it has"));
  } else {
    add(KnownRange{"known for " + fat.name, fat.titrated().low, fat.titrated().high});
  }
  add(range_by_make_up(fat));
  return known;
}

std::vector<KnownRange> known_ranges_of_lot(const Fat& fat) {
  auto known = known_ranges(fat);
  if (!fat.is_users_own) return known;
  const auto times = [](SaponificationValue value, double factor) {
    return SaponificationValue::mg_koh_per_g(value.mg_koh_per_g() * factor);
  };
  known.push_back({"within 5 % of what your file of fats gives",
                   times(fat.saponification.low, 1 - lots_differ),
                   times(fat.saponification.high, 1 + lots_differ)});
  return known;
}

SaponificationRange spanning(const SaponificationRange& stated,
                             const std::vector<KnownRange>& known) {
  SaponificationRange range = stated;
  for (const KnownRange& other : known) {
    if (!other.contradicts(stated.typical)) continue;
    range.low = std::min(range.low, other.low);
    range.high = std::max(range.high, other.high);
  }
  return range;
}

std::optional<KnownRange> known_below(SaponificationValue stated,
                                      const std::vector<KnownRange>& known) {
  std::optional<KnownRange> least;
  for (const KnownRange& range : known)
    if (range.tells_the_most && range.high < stated && (!least || range.high < least->high))
      least = range;
  return least;
}

}  // namespace brimwright::chemistry
