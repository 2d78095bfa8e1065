#include "units/weight_text.h"

#include <cmath>

namespace brimwright {
namespace {

constexpr int most_decimals = 6;

bool is_whole(double value) { return std::abs(value - std::round(value)) < 1e-6; }

/// The fewest decimals whose last digit is no coarser than `step`.
int decimals_as_fine_as(double step) {
  int decimals = 0;
  double last_digit = 1;
  while (decimals < most_decimals && last_digit > step * (1 + 1e-9)) {
    last_digit /= 10;
    ++decimals;
  }
  return decimals;
}

std::string in_unit(Mass mass, Mass step, Mass unit, bool is_the_scales, Rounded towards) {
  const int decimals =
      is_the_scales ? decimals_of_step(step / unit) : decimals_as_fine_as(step / unit);
  return rounded_text(mass / unit, decimals, towards);
}

}  // namespace

int decimals_of_step(double step) {
  int decimals = 0;
  while (decimals < most_decimals && !is_whole(step)) {
    step *= 10;
    ++decimals;
  }
  return decimals;
}

bool reads_ounces(Mass step) {
  return !is_whole(step / milligram) && is_whole(step / (ounce / 100'000));
}

WeightText weight_text(Mass mass, Mass step, Rounded towards) {
  const bool by_ounces = reads_ounces(step);
  return {in_unit(mass, step, gram, !by_ounces, towards),
          in_unit(mass, step, ounce, by_ounces, towards)};
}

std::string on_scale(Mass mass, Mass step, Rounded towards) {
  const WeightText text = weight_text(mass, step, towards);
  return reads_ounces(step) ? text.ounces + " oz" : text.grams + " g";
}

std::string beside_scale(Mass mass, Mass step, Rounded towards) {
  const WeightText text = weight_text(mass, step, towards);
  return reads_ounces(step) ? text.grams + " g" : text.ounces + " oz";
}

}  // namespace brimwright
