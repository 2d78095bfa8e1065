#include "planning/cut.h"

namespace brimwright::planning {

std::string name_of(Axis axis) {
  if (axis == Axis::z) return "z";
  return axis == Axis::x ? "x" : "y";
}

Parted& Parted::operator+=(const Parted& other) {
  for (std::size_t i = 0; i < bars.size(); ++i) bars[i] += other.bars[i];
  offcuts += other.offcuts;
  kerf += other.kerf;
  planing += other.planing;
  return *this;
}

Parted& Parted::operator-=(const Parted& other) {
  for (std::size_t i = 0; i < bars.size(); ++i) bars[i] -= other.bars[i];
  offcuts -= other.offcuts;
  kerf -= other.kerf;
  planing -= other.planing;
  return *this;
}

Volume Parted::in_bars() const {
  Volume sum;
  for (const Volume bar : bars) sum += bar;
  return sum;
}

}  // namespace brimwright::planning
