#include "chemistry/water_names.h"

#include "chemistry/name_words.h"

#include <algorithm>
#include <string>
#include <unordered_set>

namespace brimwright::chemistry {
namespace {

// Common practice, no source: what stands on bottles, as `words_of` spells it.
const std::unordered_set<std::string>& waters() {
  static const std::unordered_set<std::string> words = {"water", "wasser", "eau",
                                                        "agua",  "acqua",  "aqua"};
  return words;
}

const std::unordered_set<std::string>& kinds_of_it() {
  static const std::unordered_set<std::string> words = {"distilled",
                                                        "destilliert",
                                                        "destilliertes",
                                                        "distillee",
                                                        "destilada",
                                                        "distillata",
                                                        "deionised",
                                                        "deionized",
                                                        "deionisiert",
                                                        "deionisiertes",
                                                        "deionisee",
                                                        "desionisee",
                                                        "desionizada",
                                                        "deionizzata",
                                                        "demineralised",
                                                        "demineralized",
                                                        "demineralisiert",
                                                        "demineralisiertes",
                                                        "entmineralisiert",
                                                        "entmineralisiertes",
                                                        "demineralisee",
                                                        "desmineralizada",
                                                        "demineralizzata",
                                                        "vollentsalzt",
                                                        "vollentsalztes",
                                                        "purified",
                                                        "pure",
                                                        "purifiee",
                                                        "tap",
                                                        "plain",
                                                        "soft",
                                                        "filtered",
                                                        "de",
                                                        "del",
                                                        "di",
                                                        "ionised",
                                                        "ionized",
                                                        "mineralised",
                                                        "mineralized"};
  return words;
}

}  // namespace

bool names_water(std::string_view name) {
  const auto words = words_of(name);
  return std::any_of(words.begin(), words.end(),
                     [](const std::string& word) { return waters().contains(word); }) &&
         std::all_of(words.begin(), words.end(), [](const std::string& word) {
           return waters().contains(word) || kinds_of_it().contains(word);
         });
}

}  // namespace brimwright::chemistry
