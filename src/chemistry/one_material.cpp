#include "chemistry/one_material.h"

#include "chemistry/acid_names.h"
#include "chemistry/alkali_names.h"
#include "chemistry/fat_search.h"
#include "chemistry/liquid_compositions.h"
#include "chemistry/name_words.h"
#include "chemistry/salts.h"
#include "chemistry/suspicious_names.h"
#include "units/letters.h"
#include "units/printing.h"
#include "units/written_number.h"

#include <algorithm>
#include <array>
#include <set>
#include <string_view>
#include <vector>

namespace brimwright::chemistry {
namespace {

using Words = std::vector<std::string>;
using Ids = std::set<std::string>;

struct Kind {
  std::string_view one, another;
  bool is_harmless;  // in place of what nothing is known of
};
enum WhichKind : std::size_t { fat, alkali, acid, liquid, water, substance };
constexpr std::array<Kind, 6> kinds = {
    {{"a fat", "another fat", false},
     {"an alkali", "another alkali", false},
     {"what uses up alkali", "another acid, or one of another strength", false},
     {"a liquid", "another liquid", false},
     {"water", "another liquid", false},
     {"a salt or powder", "another salt or powder", true}}};

/// What a name tells of a thing, by kind; of a scent nothing else, whatever it smells of.
struct Known {
  std::array<Ids, kinds.size()> as;
  bool is_scent = false;

  bool is_something() const {
    return std::any_of(as.begin(), as.end(), [](const Ids& ids) { return !ids.empty(); });
  }
};

std::string together(const Words& words, std::size_t first, std::size_t count) {
  std::string text;
  for (std::size_t i = first; i < first + count; ++i) text += (i == first ? "" : " ") + words[i];
  return text;
}

Ids ids_of(const std::vector<const Fat*>& fats) {
  Ids ids;
  for (const Fat* one : fats) ids.insert(one->id);
  return ids;
}

/// By the whole name, or else by the longest part of it that is a fat's: "Goldmill coconut oil".
Ids fats_in(const std::string& name) {
  constexpr std::size_t most_words = 8;  // beyond any brand's
  if (const auto whole = fats_named(name); !whole.empty()) return ids_of(whole);
  const Words words = words_of(name);
  for (std::size_t count = std::min(words.size(), most_words); count > 0; --count) {
    Ids found;
    for (std::size_t first = 0; first + count <= words.size(); ++first)
      found.merge(ids_of(fats_named(together(words, first, count))));
    if (!found.empty()) return found;
  }
  return {};
}

Ids acids_in(const std::string& name) {
  if (names_a_neutral_salt(name)) return {};
  if (const auto hint = acid_hint(name))
    return {hint->acid + ", " + trimmed(hint->share.in_percent(), 3) + " %"};
  if (names_an_acid(name) && !names_a_fatty_acid(name)) return {"acid"};
  return {};
}

/// By the longest of the liquids' names, less what is done to them: "goat milk", "cream".
Ids liquids_in(const std::string& name) {
  const std::string small = in_small_letters(name);
  std::string longest;
  for (const LiquidComposition& one : liquid_compositions()) {
    const std::string bare = one.name.substr(0, one.name.find(','));
    if (bare.size() > longest.size() && has_words(small, bare)) longest = bare;
  }
  return longest.empty() ? Ids() : Ids{longest};
}

bool has_word(const Words& words, std::string_view word) {
  return std::find(words.begin(), words.end(), word) != words.end();
}

bool smells(const Words& words) {
  constexpr std::array<std::string_view, 9> scents = {"fragrance", "scent",  "perfume",
                                                      "parfum",    "aroma",  "essential",
                                                      "duft",      "duftol", "atherisches"};
  return std::any_of(scents.begin(), scents.end(),
                     [&](std::string_view scent) { return has_word(words, scent); });
}

Known known(const std::string& name) {
  Known known;
  const Words words = words_of(name);
  known.is_scent = smells(words);
  if (known.is_scent) return known;
  known.as[fat] = fats_in(name);
  if (const auto named = names_an_alkali(name)) known.as[alkali] = {named->is};
  known.as[acid] = acids_in(name);
  known.as[liquid] = liquids_in(name);
  if (has_word(words, "water") || has_word(words, "wasser")) known.as[water] = {"water"};
  if (const Substance* salt = find_substance(name)) known.as[substance] = {salt->names.front()};
  return known;
}

bool share_one(const Ids& some, const Ids& others) {
  return std::any_of(some.begin(), some.end(),
                     [&](const std::string& id) { return others.contains(id); });
}

/// Words for what makes another fat of one, where the fat's own names do not have them.
std::optional<std::string> changed(const std::string& make, const std::string& material,
                                   const Ids& fats) {
  static const Ids such = {
      "fractionated", "hydrogenated", "hardened",  "mct",          "caprylic",   "ethoxylated",
      "sulfated",     "sulphated",    "olein",     "stearin",      "blend",      "blended",
      "mix",          "mixed",        "mixture",   "fraktioniert", "gehartet",   "gehartetes",
      "fractionne",   "fractionnee",  "hydrogene", "hydrogenee",   "frazionato", "fraccionado"};
  Words own = words_of(material);
  for (const std::string& id : fats) {
    const Fat* one = find_fat(id);
    std::vector<std::string> names = one->also_called;
    names.insert(names.end(), {one->id, one->name});
    for (const std::string& name : names)
      for (std::string& word : words_of(name)) own.push_back(std::move(word));
  }
  for (const std::string& word : words_of(make))
    if (such.contains(word) && !has_word(own, word)) return word;
  return std::nullopt;
}

/// Alkali of another purity, and lye, weigh something else for the same alkali.
bool tells_a_strength(const std::string& make) {
  const Words words = words_of(make);
  return make.find('%') != std::string::npos ||
         std::any_of(words.begin(), words.end(), [](const std::string& word) {
           return word == "solution" || word == "losung" || word == "liquid" ||
                  word.ends_with("lauge") || word == "lessive";
         });
}

}  // namespace

std::optional<std::string> other_material(const std::string& make, const std::string& material) {
  const Known is = known(make), wanted = known(material);
  const std::string both = ", and " + quoted(material);
  if (is.is_scent && wanted.is_something()) return quoted(make) + " is a scent" + both + " is none";
  for (std::size_t kind = 0; kind < kinds.size(); ++kind) {
    const Ids& ids = is.as[kind];
    if (ids.empty() || share_one(ids, wanted.as[kind])) continue;
    if (!wanted.as[kind].empty())
      return quoted(make) + " is " + std::string(kinds[kind].another) + " than " + quoted(material);
    if (kinds[kind].is_harmless && !wanted.is_something()) continue;
    return quoted(make) + " is " + std::string(kinds[kind].one) + " by its name" + both +
           " is not known as one";
  }
  if (!is.as[alkali].empty() && tells_a_strength(make))
    return quoted(make) + " tells of a strength of its own, which weighs something else";
  const Ids& fats = wanted.as[fat];
  if (!fats.empty())
    if (const auto word = changed(make, material, fats))
      return quoted(make) + " is another fat than " + quoted(material) + " (" + quoted(*word) + ")";
  if (fats.empty() && !is.is_scent && names_something_fatty(make) &&
      !names_something_fatty(material))
    return quoted(make) + " may hold fat by its name" + both + " does not";
  return std::nullopt;
}

}  // namespace brimwright::chemistry
