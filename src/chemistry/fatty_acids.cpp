#include "chemistry/fatty_acids.h"

#include "chemistry/alkali_data.h"
#include "chemistry/atomic_weights.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <charconv>

namespace brimwright::chemistry {
namespace {

/// IUPAC-IUB lipid nomenclature (1976), appendix A, for all but the last's trade habit.
constexpr std::array<std::pair<std::string_view, std::string_view>, 18> common_names = {{
    {"C4:0", "butyric"},
    {"C6:0", "caproic"},
    {"C8:0", "caprylic"},
    {"C10:0", "capric"},
    {"C12:0", "lauric"},
    {"C14:0", "myristic"},
    {"C16:0", "palmitic"},
    {"C16:1", "palmitoleic"},
    {"C17:0", "margaric"},
    {"C18:0", "stearic"},
    {"C18:1", "oleic"},
    {"C18:2", "linoleic"},
    {"C18:3", "linolenic"},
    {"C20:0", "arachidic"},
    {"C20:1", "gondoic"},
    {"C22:0", "behenic"},
    {"C22:1", "erucic"},
    {"C24:0", "lignoceric"},
}};

std::optional<int> whole_number(std::string_view digits) {
  int number = 0;
  const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), number);
  if (error != std::errc() || end != digits.data() + digits.size()) return std::nullopt;
  return number;
}

/// "18:1" as a chain. Fats hold C4 (butter) to C30 (waxes), with at most six double bonds.
std::optional<FattyAcid> chain(std::string_view numbers, std::string name) {
  const auto colon = numbers.find(':');
  if (colon == std::string_view::npos) return std::nullopt;
  const auto carbons = whole_number(numbers.substr(0, colon));
  const auto double_bonds = whole_number(numbers.substr(colon + 1));
  if (!carbons || !double_bonds || *carbons < 4 || *carbons > 30 || *double_bonds < 0 ||
      *double_bonds > 6 || *double_bonds > (*carbons - 1) / 2)
    return std::nullopt;
  return FattyAcid{std::move(name), *carbons, *double_bonds, 0};
}

double moles_per_gram(const FattyAcidProfile& profile, const std::vector<double>& shares) {
  double moles = 0, whole_of_them = 0;
  for (std::size_t i = 0; i < shares.size(); ++i) {
    moles += shares[i] / molar_mass_g_per_mol(profile.acids[i].acid);
    whole_of_them += shares[i];
  }
  assert(whole_of_them > 0);
  return moles / whole_of_them;
}

std::vector<double> middles(const FattyAcidProfile& profile) {
  std::vector<double> shares;
  for (const auto& range : profile.acids)
    shares.push_back((range.low.of_one() + range.high.of_one()) / 2);
  return shares;
}

/// All at their lows, then filled up to a whole from the lightest or the heaviest acid on.
std::vector<double> filled_up(const FattyAcidProfile& profile, bool lightest_first) {
  std::vector<double> shares;
  std::vector<std::size_t> order;
  double left = 1;
  for (const auto& range : profile.acids) {
    order.push_back(order.size());
    shares.push_back(range.low.of_one());
    left -= range.low.of_one();
  }
  const auto mass = [&](std::size_t i) { return molar_mass_g_per_mol(profile.acids[i].acid); };
  std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    return lightest_first ? mass(a) < mass(b) : mass(b) < mass(a);
  });
  for (const std::size_t i : order) {
    const double more =
        std::clamp(profile.acids[i].high.of_one() - shares[i], 0.0, std::max(left, 0.0));
    shares[i] += more;
    left -= more;
  }
  return shares;
}

SaponificationValue value_of(double moles_of_acid_per_gram, BoundAs bound) {
  const auto& [h, c, o] = atomic_weights();
  const double koh = molar_mass_g_per_mol(Alkali::potassium_hydroxide);
  const double acid = 1 / moles_of_acid_per_gram;
  if (bound == BoundAs::free_acid) return SaponificationValue::mg_koh_per_g(1000 * koh / acid);
  const double glycerol = 3 * c + 8 * h + 3 * o;
  const double water = 2 * h + o;
  const double triglyceride = 3 * acid + glycerol - 3 * water;
  return SaponificationValue::mg_koh_per_g(3 * 1000 * koh / triglyceride);
}

}  // namespace

std::optional<FattyAcid> fatty_acid_called(std::string_view name) {
  const std::string given(name);
  // 12-hydroxy-9-octadecenoic acid.
  if (name == "ricinoleic") return FattyAcid{given, 18, 1, 1};
  for (const auto& [numbers, called] : common_names)
    if (name == called) return chain(numbers.substr(1), given);
  for (const std::string_view position : {"alpha-", "gamma-"})
    if (name.starts_with(position)) name.remove_prefix(position.size());
  if (name.starts_with("C")) name.remove_prefix(1);
  return chain(name, given);
}

std::string common_name(const FattyAcid& acid) {
  if (acid.hydroxyls > 0) return "";
  const std::string numbers =
      "C" + std::to_string(acid.carbons) + ":" + std::to_string(acid.double_bonds);
  for (const auto& [chain_numbers, called] : common_names)
    if (chain_numbers == numbers) return std::string(called);
  return "";
}

double molar_mass_g_per_mol(const FattyAcid& acid) {
  const auto& [h, c, o] = atomic_weights();
  return acid.carbons * c + (2 * acid.carbons - 2 * acid.double_bonds) * h +
         (2 + acid.hydroxyls) * o;
}

bool FattyAcidProfile::read() const {
  return std::all_of(acids.begin(), acids.end(), [](const auto& acid) { return acid.read; });
}

SaponificationRange theoretical_saponification(const FattyAcidProfile& profile, BoundAs bound) {
  assert(!profile.acids.empty());
  const auto value = [&](const std::vector<double>& shares) {
    return value_of(moles_per_gram(profile, shares), bound);
  };
  return {value(filled_up(profile, false)), value(middles(profile)),
          value(filled_up(profile, true))};
}

SaponificationValue wax_ester_saponification(double mean_molar_mass_g_per_mol) {
  assert(mean_molar_mass_g_per_mol > 0);
  return SaponificationValue::mg_koh_per_g(
      1000 * molar_mass_g_per_mol(Alkali::potassium_hydroxide) / mean_molar_mass_g_per_mol);
}

}  // namespace brimwright::chemistry
