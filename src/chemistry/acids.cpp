#include "chemistry/acids.h"

#include "chemistry/alkali.h"
#include "chemistry/alkali_data.h"
#include "chemistry/fats.h"
#include "units/fields.h"

#include <algorithm>
#include <stdexcept>

namespace brimwright::embedded {
std::string_view neutralisation_json();
}

namespace brimwright::chemistry {
namespace {

bool is_a_fatty_acid(std::string name) {
  std::replace(name.begin(), name.end(), ' ', '_');
  return find_fat(name) != nullptr;
}

constexpr double water_g_per_mol = 18.015;  // IUPAC 2021: 2 x 1.008 + 15.999

Acid from_molar_mass(const std::string& name, const Fields& entry) {
  const double molar_mass = entry.number("molar_mass_g_mol");
  const double protons = entry.number("acid_protons_neutralised");
  const double waters =
      entry.has("waters_of_crystallisation") ? entry.number("waters_of_crystallisation") : 0;
  return {name, protons * molar_mass_g_per_mol(Alkali::potassium_hydroxide) / molar_mass,
          1 - waters * water_g_per_mol / molar_mass, ""};
}

Acid as_solution(const std::string& name, const Acid& pure, double share) {
  return {name, pure.koh_g_per_g * share, share, pure.name};
}

std::vector<Acid> read_acids() {
  const Fields file = Fields::parse(embedded::neutralisation_json(), "data/neutralisation.json");
  std::vector<Acid> acids;
  for (const Fields& entry : file.objects("acids")) {
    const std::string name = entry.text("acid");
    if (is_a_fatty_acid(name)) continue;
    if (!entry.has("solution_of")) {
      acids.push_back(from_molar_mass(name, entry));
      continue;
    }
    const std::string pure = entry.text("solution_of");
    const auto at =
        std::find_if(acids.begin(), acids.end(), [&](const Acid& a) { return a.name == pure; });
    if (at == acids.end())
      throw std::logic_error("data/neutralisation.json: " + pure + " must stand before another");
    acids.push_back(as_solution(name, *at, entry.number("mass_percent") / 100));
  }
  return acids;
}

}  // namespace

const std::vector<Acid>& shipped_acids() {
  static const std::vector<Acid> acids = read_acids();
  return acids;
}

const Acid* find_acid(std::string_view name) {
  const auto& acids = shipped_acids();
  const auto at =
      std::find_if(acids.begin(), acids.end(), [&](const Acid& a) { return a.name == name; });
  return at == acids.end() ? nullptr : &*at;
}

}  // namespace brimwright::chemistry
