#include "chemistry/cooling.h"

#include "chemistry/lye.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <numbers>

namespace brimwright::chemistry {
namespace {

struct Coefficients {
  double least, most;  // W/(m2 K)
};

/// Free convection: 2 to 25 W/(m2 K) in gases, from 50 up in liquids (Cengel, Heat Transfer, table
/// of ranges, as its publisher's page gives it). Liquid on both sides of a steel wall halves some
/// 600; 2 mm of plastic (0.2 W/(m K), from memory) holds it below 100, unstirred to 50. In air the
/// outer side alone counts; heat rays add about 5.
Coefficients coefficients_of(Surroundings where) {
  const bool in_water = where == Surroundings::ice_bath || where == Surroundings::cold_water;
  return in_water ? Coefficients{50, 300} : Coefficients{5, 20};
}

double volume_m3(const LyeCharge& lye, Temperature at) {
  double volume = lye.other / kilogram / 1000;  // about as dense as water
  const double lye_per_alkali = 1 / lye.strength().of_one();
  for (const ChargedAlkali& one : lye.alkalis)
    volume +=
        one.pure * lye_per_alkali / lye_density(one.alkali, lye.strength(), at) / litre / 1000;
  return volume;
}

/// Side and bottom of a cylinder as deep as wide: V = 2 pi r^3, A = 5 pi r^2.
double cooling_area_m2(double volume) {
  const double radius = std::cbrt(volume / (2 * std::numbers::pi));
  return 5 * std::numbers::pi * radius * radius;
}

std::chrono::minutes in_minutes(double seconds) {
  return std::chrono::minutes(static_cast<std::int64_t>(std::lround(seconds / 60)));
}

/// Where `to` is warmer than the surroundings, and `from` warmer still.
CoolingTime time_in(Surroundings where, const LyeCharge& lye, Temperature from, Temperature to) {
  const double around = temperature_of(where).celsius();
  const auto middle = Temperature::in_celsius((from.celsius() + to.celsius()) / 2);
  const double joules_per_k = lye.heat_capacity_kj_per_k(middle) * 1000;
  const double area = cooling_area_m2(volume_m3(lye, middle));
  const double folds = std::log((from.celsius() - around) / (to.celsius() - around));
  const auto seconds = [&](double coefficient) {
    return joules_per_k / (coefficient * area) * folds;
  };
  const auto [least, most] = coefficients_of(where);
  return CoolingTime{where, in_minutes(seconds(most)), in_minutes(seconds(least))};
}

}  // namespace

std::string name_of(Surroundings where) {
  switch (where) {
    case Surroundings::cold_water:
      return "cold water";
    case Surroundings::fridge:
      return "a fridge without food";
    case Surroundings::room:
      return "the room";
    case Surroundings::ice_bath:
      break;
  }
  return "an ice bath";
}

Temperature temperature_of(Surroundings where) {
  switch (where) {
    case Surroundings::cold_water:
      return Temperature::in_celsius(12);
    case Surroundings::fridge:
      return Temperature::in_celsius(4);
    case Surroundings::room:
      return Temperature::in_celsius(20);
    case Surroundings::ice_bath:
      break;
  }
  return Temperature::in_celsius(0);
}

Temperature cool_enough_to_close() {
  return temperature_of(Surroundings::room) + TemperatureDifference::in_kelvin(5);
}

std::optional<CoolingTime> cooling_time(const LyeCharge& lye, Temperature from, Temperature to,
                                        Surroundings where) {
  const double around = temperature_of(where).celsius();
  if (to.celsius() < around + 1) return std::nullopt;
  if (from <= to) return CoolingTime{where, {}, {}};
  if (where != Surroundings::fridge || from <= cool_enough_to_close())
    return time_in(where, lye, from, to);
  const Temperature between = std::max(to, cool_enough_to_close());
  CoolingTime time = time_in(Surroundings::room, lye, from, between);
  if (to < between) {
    const CoolingTime then = time_in(where, lye, between, to);
    time.shortest += then.shortest;
    time.longest += then.longest;
  }
  time.where = where;
  return time;
}

}  // namespace brimwright::chemistry
