#include "runs/made_ahead_reading.h"

#include "chemistry/alkali_names.h"
#include "chemistry/fat_blend.h"
#include "chemistry/fat_search.h"
#include "chemistry/lye_solution.h"
#include "chemistry/water_names.h"
#include "units/letters.h"
#include "units/wording.h"
#include "units/written_number.h"

#include <algorithm>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace brimwright::runs {
namespace {

/// "NaOH jug", "NaOH 50 %": no dry alkali is called so.
bool is_called_solution(const std::string& name) {
  if (name.find_first_of("0123456789") != std::string::npos) return true;
  const std::string small = in_small_letters(name);
  const std::vector<std::string> words = {"solution", "jug",   "bottle", "can",
                                          "tank",     "stock", "ready",  "liquid"};
  return std::any_of(words.begin(), words.end(),
                     [&](const std::string& word) { return has_words(small, word); });
}

/// Packs, prices and shelf go by it: it must not stand for something else there.
void refuse_taken_name(const std::string& name, const Place& where) {
  const bool is_alkali = chemistry::names_an_alkali(name) && !is_called_solution(name);
  if (!is_alkali && chemistry::fats_named(name).empty() && !chemistry::names_water(name)) return;
  throw UserError(where, quoted(name) + " is what prices call something else",
                  "give it a name of its own, such as \"NaOH solution 50 %\" or \"Hard fats\"");
}

/// "lye_from" as a name, or as a list of names.
std::vector<std::pair<std::string, Place>> names_in(const Fields& batter, const char* key) {
  const Place where = batter.place(key);
  if (batter.is_text(key)) return {{batter.text(key), where}};
  std::vector<std::pair<std::string, Place>> names;
  for (const std::string& name : batter.texts(key))
    names.emplace_back(name, Place{where.file, where.field + "/" + std::to_string(names.size())});
  if (names.empty())
    throw UserError(where, "names no solution", "name one of the studio's, or leave it out");
  return names;
}

/// What stands under `name` in the studio's `key`.
Fields standing(const std::string& name, const Place& where, const Studio& studio,
                const std::string& key, const std::string& what) {
  const auto section = studio.section(key);
  if (!section)
    throw UserError(where,
                    studio.fields()
                        ? "names " + quoted(name) + ", and the studio has no \"" + key + "\""
                        : "names " + quoted(name) + ", and there is no studio.json beside the run",
                    "tell of " + what + " under \"" + key + "\" in the studio's file");
  const auto names = section->keys();
  if (std::find(names.begin(), names.end(), name) != names.end()) {
    refuse_taken_name(name, section->place(name));
    studio.lend(key);
    return section->object(name);
  }
  const auto near = nearest_name(name, names);
  std::string listed;
  for (const auto& one : names) listed += (listed.empty() ? "" : ", ") + quoted(one);
  throw UserError(where, quoted(name) + " does not stand in the studio's \"" + key + "\"",
                  near            ? "did you mean " + quoted(*near) + "?"
                  : names.empty() ? "tell of " + what + " there"
                                  : "name one of " + listed);
}

void take_solutions(chemistry::Formula& formula, const Fields& batter, const Studio& studio) {
  for (const auto& [name, where] : names_in(batter, "lye_from")) {
    const Fields fields = standing(name, where, studio, "lye_solutions", "the solution");
    chemistry::take_solution(formula, chemistry::read_lye_solution(fields, name), where);
  }
  chemistry::refuse_flooded_lye(formula, batter.place("lye_from"));
}

void refuse_blend_in_blend(const Fields& blend, const Studio& studio) {
  const auto blends = studio.section("blends")->keys();
  for (const Fields& part : blend.objects("fats"))
    if (part.is_text("fat") && chemistry::fats_named(part.text("fat")).empty() &&
        std::find(blends.begin(), blends.end(), part.text("fat")) != blends.end())
      throw UserError(part.place("fat"), quoted(part.text("fat")) + " is a blend itself",
                      "list the fats that it is melted of, with their shares of the whole");
}

void take_blend(chemistry::Formula& formula, const Fields& batter, const Studio& studio) {
  std::string name;
  std::optional<Share> share;
  Place where = batter.place("blend");
  if (batter.is_text("blend")) {
    name = batter.text("blend");
  } else {
    const Fields blend = batter.object("blend");
    name = blend.name("name");
    if (blend.has("share")) {
      share = blend.share("share", 0.1 * percent, whole, "60 %");
      where = blend.place("share");
    }
    blend.refuse_unknown();
  }
  const Fields fields = standing(name, batter.place("blend"), studio, "blends", "the blend");
  refuse_blend_in_blend(fields, studio);
  chemistry::take_blend(formula, chemistry::read_fat_blend(fields, name), share, where);
}

}  // namespace

void take_what_stands_ready(chemistry::Formula& formula, const Fields& batter,
                            const Studio& studio) {
  if (batter.has("lye_from")) take_solutions(formula, batter, studio);
  if (batter.has("blend")) take_blend(formula, batter, studio);
}

}  // namespace brimwright::runs
