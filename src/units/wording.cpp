#include "units/wording.h"

#include "units/printing.h"

#include <algorithm>
#include <cmath>

namespace brimwright {

namespace {

/// Below 1 ml three figures count, whatever is usual: a pearl of 0.042 ml is not one of 0.0 ml.
int decimals_of_ml(Volume volume, int usual) {
  constexpr int most = 6;  // a grain of salt
  const double ml = std::abs(volume / millilitre);
  if (!(ml > 0) || ml >= 1) return usual;
  const int figures = 2 - static_cast<int>(std::floor(std::log10(ml)));
  return std::max(usual, std::min(figures, most));
}

}  // namespace

std::string in_mm(Length length, int decimals) {
  return trimmed(length / millimetre, decimals) + " mm";
}
std::string in_ml(Volume volume, int decimals) {
  return trimmed(volume / millilitre, decimals_of_ml(volume, decimals)) + " ml";
}
std::string in_grams(Mass mass, int decimals) { return trimmed(mass / gram, decimals) + " g"; }
std::string in_percent(Share share, int decimals) {
  return trimmed(share.in_percent(), decimals) + " %";
}
std::string in_g_per_ml(Density density, int decimals) {
  return trimmed(density / gram_per_millilitre, decimals) + " g/ml";
}
std::string in_minutes(std::chrono::seconds time, int decimals) {
  return trimmed(static_cast<double>(time.count()) / 60, decimals) + " min";
}
std::string in_hours(std::chrono::minutes time, int decimals) {
  return trimmed(static_cast<double>(time.count()) / 60, decimals) + " h";
}

std::string fixed_mm(Length length, int decimals) {
  return fixed(length / millimetre, decimals) + " mm";
}
std::string fixed_ml(Volume volume, int decimals) {
  return fixed(volume / millilitre, decimals_of_ml(volume, decimals)) + " ml";
}
std::string fixed_grams(Mass mass, int decimals) { return fixed(mass / gram, decimals) + " g"; }
std::string fixed_percent(Share share, int decimals) {
  return fixed(share.in_percent(), decimals) + " %";
}
std::string fixed_g_per_ml(Density density, int decimals) {
  return fixed(density / gram_per_millilitre, decimals) + " g/ml";
}

std::string short_ml(Volume volume) {
  return fixed_ml(volume, volume < 10 * millilitre ? 2 : volume < 1000 * millilitre ? 1 : 0);
}

std::string counted(std::int64_t number, const std::string& one) {
  return counted(number, one, one + "s");
}

std::string counted(std::int64_t number, const std::string& one, const std::string& many) {
  return std::to_string(number) + " " + (number == 1 ? one : many);
}

}  // namespace brimwright
