#include "chemistry/theoretical_value.h"

#include "chemistry/alkali_data.h"
#include "units/printing.h"

namespace brimwright::chemistry {
namespace {

// The most that CXS 210-1999, Table 2, allows common refined oils: 15 to 20 g/kg (from memory).
constexpr Share usual_unsaponifiable = 2 * percent;
// Titration and gas chromatography together: common practice, no source.
constexpr double agreement = 0.02;

struct Interval {
  double low, high;  // mg KOH/g
};

bool meet(Interval a, Interval b) { return a.low <= b.high && b.low <= a.high; }

Interval allowed_by(const TheoreticalValue& theory) {
  return {theory.least.mg_koh_per_g() * (1 - agreement),
          theory.pure.high.mg_koh_per_g() * (1 + agreement)};
}

Interval interval_of(const SaponificationRange& stated, double factor) {
  return {stated.low.mg_koh_per_g() * factor, stated.high.mg_koh_per_g() * factor};
}

std::string in_words(SaponificationValue low, SaponificationValue high) {
  const std::string from = trimmed(low.mg_koh_per_g(), 1);
  const std::string to = trimmed(high.mg_koh_per_g(), 1);
  return from == to ? from : from + " to " + to;
}

/// The range of the bare esters or acids, or nothing.
std::optional<SaponificationRange> of_bare(const Fat& fat) {
  if (fat.kind == "wax_ester") {
    if (!fat.mean_molar_mass_g_per_mol) return std::nullopt;
    const auto value = wax_ester_saponification(*fat.mean_molar_mass_g_per_mol);
    return SaponificationRange{value, value, value};
  }
  if (!fat.fatty_acids) return std::nullopt;
  return theoretical_saponification(
      *fat.fatty_acids, fat.kind == "free_fatty_acid" ? BoundAs::free_acid : BoundAs::triglyceride);
}

}  // namespace

double theory_tolerance() { return agreement; }

std::optional<TheoreticalValue> theoretical_value(const Fat& fat) {
  const auto bare = of_bare(fat);
  if (!bare) return std::nullopt;
  TheoreticalValue theory{.pure = *bare,
                          .unsaponifiable = Share(),
                          .unsaponifiable_assumed = false,
                          .least = bare->low};
  // What a wax's analysis calls unsaponifiable are its alcohols, which its molar mass counts.
  if (fat.kind != "triglyceride") return theory;
  theory.unsaponifiable_assumed = !fat.unsaponifiable_most;
  theory.unsaponifiable = fat.unsaponifiable_most.value_or(usual_unsaponifiable);
  theory.least = SaponificationValue::mg_koh_per_g(bare->low.mg_koh_per_g() *
                                                   (1 - theory.unsaponifiable.of_one()));
  return theory;
}

bool is_naoh_value_by_profile(const Fat& fat, const SaponificationRange& stated) {
  const auto theory = theoretical_value(fat);
  if (!theory) return false;
  const Interval allowed = allowed_by(*theory);
  return !meet(interval_of(stated, 1), allowed) &&
         meet(interval_of(stated, 1 / per_koh(Alkali::sodium_hydroxide)), allowed);
}

std::optional<Remark> profile_disagreement(const Fat& fat, const SaponificationRange& stated) {
  const auto theory = theoretical_value(fat);
  if (!theory || meet(interval_of(stated, 1), allowed_by(*theory))) return std::nullopt;
  return Remark{Severity::caution,
                fat.name + ": the saponification value of " + in_words(stated.low, stated.high) +
                    " mg KOH/g does not fit " +
                    (fat.kind == "wax_ester" ? "its mean molar mass" : "its fatty acids") +
                    ", which call for " + in_words(theory->least, theory->pure.high) +
                    " mg KOH/g. " +
                    (is_naoh_value_by_profile(fat, stated) ? "It looks like a NaOH value. " : "") +
                    "Check both in the supplier's document before weighing alkali."};
}

}  // namespace brimwright::chemistry
