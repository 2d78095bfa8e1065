#pragma once

#include <string>

namespace brimwright::chemistry {

enum class Alkali { sodium_hydroxide, potassium_hydroxide };

std::string formula_of(Alkali alkali);  // "NaOH", "KOH"

/// Milligrams of KOH that saponify one gram of fat (ISO 3657). The only kind of value stored; the
/// NaOH need follows from molar masses.
class SaponificationValue {
 public:
  static constexpr SaponificationValue mg_koh_per_g(double value) {
    SaponificationValue v;
    v.mg_koh_per_g_ = value;
    return v;
  }
  constexpr double mg_koh_per_g() const { return mg_koh_per_g_; }
  constexpr auto operator<=>(const SaponificationValue&) const = default;

 private:
  double mg_koh_per_g_ = 0;
};

/// Where a fat's value may lie by lot and origin, and the value reckoned with.
struct SaponificationRange {
  SaponificationValue low, typical, high;
};

}  // namespace brimwright::chemistry
