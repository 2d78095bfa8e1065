#include "units/advice_text.h"

#include "units/printing.h"
#include "units/rounding.h"

#include <cmath>

namespace brimwright {
namespace {

enum class Towards { less, more };

double rounded(double value, int decimals, Towards towards) {
  const double scale = std::pow(10, decimals);
  const auto whole = towards == Towards::less ? whole_down(value * scale) : whole_up(value * scale);
  return static_cast<double>(whole) / scale;
}

std::string text(double value, int decimals, Towards towards) {
  // Finer than a millionth nobody measures.
  while (value > 0 && rounded(value, decimals, towards) == 0 && decimals < 6) ++decimals;
  return trimmed(rounded(value, decimals, towards), decimals);
}

std::string text(Length length, Towards towards) {
  return text(length / millimetre, 1, towards) + " mm (" + text(length / inch, 2, towards) + " in)";
}

std::string text(Mass mass, Towards towards) {
  return text(mass / gram, 1, towards) + " g (" + text(mass / ounce, 2, towards) + " oz)";
}

}  // namespace

std::string most_text(Length length) { return text(length, Towards::less); }
std::string least_text(Length length) { return text(length, Towards::more); }
std::string most_text(Volume volume) { return text(volume / millilitre, 1, Towards::less) + " ml"; }
std::string least_text(Volume volume) {
  return text(volume / millilitre, 1, Towards::more) + " ml";
}
std::string most_text(Mass mass) { return text(mass, Towards::less); }
std::string least_text(Mass mass) { return text(mass, Towards::more); }
std::string most_text(Share share, int decimals) {
  return text(share.in_percent(), decimals, Towards::less) + " %";
}

Length most_in_millimetres(Length length, int decimals) {
  return rounded(length / millimetre, decimals, Towards::less) * millimetre;
}

Length most_in_inches(Length length, int decimals) {
  return rounded(length / inch, decimals, Towards::less) * inch;
}

}  // namespace brimwright
