#include "units/working.h"

#include "units/printing.h"

#include <cmath>
#include <utility>

namespace brimwright {
namespace {

std::string in_words(Rounded towards) {
  if (towards == Rounded::nearest) return "to the nearest ";
  return towards == Rounded::up ? "up to " : "down to ";
}

}  // namespace

std::string in_figures(Mass mass, Rounded towards) {
  double grams = mass / gram;
  if (towards == Rounded::down) grams = std::floor(grams * 1000 + 1e-6) / 1000;
  if (towards == Rounded::up) grams = std::ceil(grams * 1000 - 1e-6) / 1000;
  return trimmed(grams, 3) + " g";
}
std::string in_figures(Volume volume) { return trimmed(volume / millilitre, 3) + " ml"; }
std::string in_figures(Length length) { return trimmed(length / millimetre, 3) + " mm"; }
std::string in_figures(Area area) { return trimmed(area / square_centimetre, 4) + " cm²"; }
std::string in_figures(Density density) {
  return trimmed(density / gram_per_millilitre, 5) + " g/ml";
}
std::string in_figures(Share share) { return trimmed(share.in_percent(), 4) + " %"; }
std::string in_figures(Temperature at) { return trimmed(at.celsius(), 1) + " °C"; }
std::string in_figures(std::int64_t count) { return std::to_string(count); }
std::string in_figures(double ratio) { return trimmed(ratio, 5); }

std::string to_step(Rounded towards, Mass step) {
  return in_words(towards) + trimmed(step / gram, 6) + " g";
}

std::string to_whole(Rounded towards) {
  return towards == Rounded::nearest ? "to the nearest whole number"
                                     : in_words(towards) + "a whole number";
}

std::string added(const std::vector<std::string>& terms) {
  std::string sum;
  for (const std::string& term : terms) sum += (sum.empty() ? "" : " + ") + term;
  return sum.empty() ? "0" : sum;
}

std::string in_brackets(const std::vector<std::string>& terms) { return "(" + added(terms) + ")"; }

void append_at(std::vector<Working>& all, const std::string& place, std::vector<Working> more) {
  for (Working& one : more) {
    one.of = one.of.empty() || place.empty() ? place + one.of : place + "." + one.of;
    all.push_back(std::move(one));
  }
}

}  // namespace brimwright
