#include "chemistry/formula_file.h"
#include "planning/weighing.h"
#include "weighed.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <string>
#include <utility>
#include <vector>

using namespace brimwright;
using namespace brimwright::planning;

namespace {

const Scales bench = {.large = {1 * gram, 5 * kilogram}, .fine = {0.1 * gram, 500 * gram}};

struct Blend {
  std::string expected;                           // "quiet", "caution" or "danger"
  std::vector<std::pair<std::string, int>> fats;  // per cent
};

/// Plain blends of the kinds that makers pour every day, made up for this test.
const std::vector<Blend>& everyday_blends() {
  static const std::vector<Blend> blends = {
      {"quiet", {{"olive", 100}}},
      {"quiet", {{"olive", 72}, {"coconut", 28}}},
      {"quiet", {{"olive", 50}, {"coconut", 30}, {"palm", 20}}},
      {"caution", {{"olive", 40}, {"coconut", 25}, {"palm", 25}, {"shea", 10}}},
      {"quiet", {{"olive", 85}, {"coconut", 10}, {"castor", 5}}},
      {"quiet", {{"lard", 50}, {"olive", 30}, {"coconut", 20}}},
      {"quiet", {{"tallow", 60}, {"coconut", 20}, {"olive", 20}}},
      {"quiet", {{"lard", 100}}},
      {"quiet", {{"tallow", 80}, {"coconut", 20}}},
      {"caution", {{"olive", 45}, {"coconut", 25}, {"shea", 20}, {"castor", 10}}},
      {"quiet", {{"olive", 60}, {"coconut", 20}, {"cocoa_butter", 15}, {"castor", 5}}},
      {"quiet", {{"rapeseed_low_erucic", 40}, {"coconut", 30}, {"palm", 30}}},
      {"quiet", {{"sunflower_high_oleic", 45}, {"coconut", 25}, {"palm", 25}, {"castor", 5}}},
      {"caution", {{"olive", 35}, {"rice_bran", 20}, {"coconut", 25}, {"shea", 15}, {"castor", 5}}},
      {"quiet", {{"coconut", 100}}},
      {"quiet", {{"coconut", 80}, {"olive", 20}}},
      {"quiet", {{"palm", 40}, {"olive", 40}, {"coconut", 20}}},
      {"caution", {{"olive", 50}, {"babassu", 30}, {"shea", 15}, {"castor", 5}}},
      {"caution", {{"olive", 40}, {"palm_kernel", 25}, {"palm", 30}, {"castor", 5}}},
      {"caution", {{"avocado", 30}, {"olive", 40}, {"coconut", 25}, {"castor", 5}}},
      {"quiet", {{"sweet_almond", 25}, {"olive", 40}, {"coconut", 25}, {"cocoa_butter", 10}}},
      {"quiet", {{"olive", 55}, {"coconut", 25}, {"mango_butter", 15}, {"castor", 5}}},
      {"quiet", {{"soybean", 40}, {"coconut", 30}, {"palm", 30}}},
      {"quiet", {{"lard", 40}, {"olive", 25}, {"coconut", 25}, {"sunflower", 10}}},
      {"quiet", {{"olive", 70}, {"coconut", 20}, {"castor", 10}}},
      {"quiet", {{"olive", 50}, {"coconut", 30}, {"hemp", 15}, {"shea", 5}}},
      {"quiet", {{"safflower_high_oleic", 40}, {"lard", 30}, {"coconut", 25}, {"castor", 5}}},
      {"quiet",
       {{"olive", 30}, {"rapeseed_low_erucic", 30}, {"coconut", 25}, {"cocoa_butter", 15}}},
      {"quiet", {{"olive", 50}, {"coconut", 25}, {"grapeseed", 15}, {"palm", 10}}},
      {"quiet", {{"olive", 40}, {"coconut", 20}, {"kokum", 20}, {"sunflower_high_oleic", 20}}}};
  return blends;
}

chemistry::Formula formula_of(const Blend& blend) {
  std::string fats;
  for (const auto& [fat, share] : blend.fats)
    fats += (fats.empty() ? "" : ", ") + std::string("{ \"fat\": \"") + fat + "\", \"share\": \"" +
            std::to_string(share) + " %\" }";
  return chemistry::read_formula(
      Fields::parse(R"({ "schema": "brimwright.formula/2", "name": "Blend", "fats": [ )" + fats +
                        R"( ], "superfat": "5 %",
      "alkali": [ { "alkali": "NaOH", "share": "100 %", "purity": "99 %",
                    "purity_range": ["98 %", "100 %"] } ],
      "water": { "lye_strength": "33 %" }, "pour_temperature": "38 °C" })",
                    "blend.formula.json"));
}

std::string loudness(const Weighing& weighing) {
  return weighing.alarms.empty() ? "quiet" : name_of(weighing.alarms.front().severity);
}

/// Worst case and likely low end from the weights, by the plain rules of JCGM 100:2008 (4.3.7 and
/// 5.1.2) with partial derivatives taken on paper, in per cent.
struct LowEnds {
  double worst, likely;
};
LowEnds low_ends(const Weighing& weighing, const chemistry::Formula& formula) {
  const double koh_per_naoh = 56.105 / 39.997;  // IUPAC 2021 abridged weights
  double need = 0, most = 0, middle = 0, of_values = 0, given = 0, typical = 0;
  for (const Ingredient& i : weighing.ingredients) {
    const double g = i.weighed / gram, half_step = i.step / gram / 2;
    if (i.role == Role::alkali) {
      given = g;
      const double purity_most = 1.00, purity_middle = 0.99;
      most = (g + half_step) * purity_most * koh_per_naoh;
      middle = g * purity_middle * koh_per_naoh;
      of_values += std::pow(0.01 / 0.99, 2) / 3 + std::pow(half_step / g, 2) / 3;
    }
    if (i.role != Role::fat) continue;
    const auto& sv = formula.fats[i.index].saponification;
    need += (g - half_step) * sv.low.mg_koh_per_g() / 1000;
    typical += g * (sv.low.mg_koh_per_g() + sv.high.mg_koh_per_g()) / 2000;
  }
  REQUIRE(given > 0);
  double variance = of_values;
  for (const Ingredient& i : weighing.ingredients) {
    if (i.role != Role::fat) continue;
    const double g = i.weighed / gram, half_step = i.step / gram / 2;
    const auto& sv = formula.fats[i.index].saponification;
    const double half = (sv.high.mg_koh_per_g() - sv.low.mg_koh_per_g()) / 2000;
    const double mean = (sv.high.mg_koh_per_g() + sv.low.mg_koh_per_g()) / 2000;
    variance += (std::pow(g * half, 2) + std::pow(half_step * mean, 2)) / 3 / typical / typical;
  }
  const double centre = 1 - middle / typical;
  return {100 * (1 - most / need), 100 * (centre - 1.96 * std::sqrt(variance) * (1 - centre))};
}

}  // namespace

TEST_CASE("thirty everyday blends at 5 % draw what their ranges deserve, and no more",
          "[planning]") {
  for (const Blend& blend : everyday_blends()) {
    const auto formula = formula_of(blend);
    const Weighing weighing = weighing_of(formula, 1500 * gram, bench);
    std::string name;
    for (const auto& [fat, share] : blend.fats) name += fat + " " + std::to_string(share) + ", ";
    const LowEnds own = low_ends(weighing, formula);
    CAPTURE(name, own.worst, own.likely, weighing.superfat.low.in_percent(),
            weighing.superfat.likely_low.in_percent());
    CHECK(loudness(weighing) == blend.expected);
    CHECK(weighing.superfat.low.in_percent() == Approx(own.worst).margin(0.02));
    // The band is widened to hold the typical values, and cut off at the worst case.
    if (own.likely > own.worst + 0.1 && own.likely < weighing.superfat.nominal.in_percent())
      CHECK(weighing.superfat.likely_low.in_percent() == Approx(own.likely).margin(0.1));
  }
}
