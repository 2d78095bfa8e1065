#pragma once

#include "chemistry/fat.h"
#include "units/remark.h"

#include <optional>
#include <string>

namespace brimwright::chemistry {

/// The saponification value that a fat's own make-up asks for, by molar masses alone.
struct TheoreticalValue {
  /// Of the bare triglycerides, acids or esters; `typical` from the middle of the profile.
  SaponificationRange pure;
  Share unsaponifiable;                 // the most of the fat that takes no alkali
  bool unsaponifiable_assumed = false;  // not stated for this fat, but taken as usual
  SaponificationValue least;            // pure.low with the most unsaponifiable
};

/// From the fatty-acid profile, or of a wax ester from its mean molar mass (its alcohols take no
/// alkali and stay in the soap). Nothing where neither is known, as of beeswax and lanolin, whose
/// acids, alcohols and hydrocarbons no one chain stands for. Where a triglyceride's
/// unsaponifiable matter is not stated, up to 2 % is allowed for.
std::optional<TheoreticalValue> theoretical_value(const Fat& fat);

/// By how much of itself a measured value may leave the theoretical ones before they disagree: what
/// titration and gas chromatography are good for together.
double theory_tolerance();

/// True where `stated` lies outside what the fat's make-up allows, by more than 2 %, but fits it
/// once divided by M(NaOH) / M(KOH).
bool is_naoh_value_by_profile(const Fat& fat, const SaponificationRange& stated);

/// A caution where `stated` lies wholly outside what the fat's make-up allows, by more than
/// titration and chromatograph are good for (2 %): naming both, and the likely slip.
std::optional<Remark> profile_disagreement(const Fat& fat, const SaponificationRange& stated);

}  // namespace brimwright::chemistry
