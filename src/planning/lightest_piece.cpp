#include "planning/lightest_piece.h"

#include "units/printing.h"
#include "units/share_of.h"
#include "units/wording.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace brimwright::planning {
namespace {

constexpr auto half_a_step = "half the scale's step";

void refuse_no_piece(const LightestPiece& lightest, const Place& where) {
  // A spread of more than half is a slip, not a spread: common practice, no source.
  if (lightest.mass > lightest.mean / 2) return;
  throw UserError(
      where,
      "takes pieces of " + in_grams(lightest.mean, 2) + " down to " + in_grams(lightest.mass, 2),
      "check the numbers and their units; pieces that differ so much cannot share a "
      "label");
}

Mass standard_deviation(const std::vector<Mass>& weighed, Mass mean) {
  double squares = 0;
  for (const Mass mass : weighed) squares += std::pow((mass - mean) / gram, 2);
  return std::sqrt(squares / static_cast<double>(weighed.size() - 1)) * gram;
}

}  // namespace

LightestPiece lightest_of(const std::vector<Mass>& weighed, Mass scale_step, const Place& where) {
  if (weighed.size() < 3)
    throw UserError(where, "holds " + std::to_string(weighed.size()) + " of the 3 pieces needed",
                    "weigh at least three finished pieces, better ten");
  LightestPiece lightest;
  lightest.mean =
      std::accumulate(weighed.begin(), weighed.end(), Mass()) / static_cast<double>(weighed.size());
  const Mass deviation = standard_deviation(weighed, lightest.mean);
  const Mass least = *std::min_element(weighed.begin(), weighed.end());
  if (least < lightest.mean - 3 * deviation) {
    lightest.from_what = "the lightest weighed";
    lightest.from = least;
  } else {
    lightest.from_what = "mean of those weighed";
    lightest.from = lightest.mean;
    lightest.less.push_back({"three standard deviations", 3 * deviation});
  }
  lightest.less.push_back({half_a_step, scale_step / 2});
  lightest.mass = lightest.from;
  for (const auto& less : lightest.less) lightest.mass -= less.mass;
  lightest.because = std::to_string(weighed.size()) + " pieces weighed, mean " +
                     in_grams(lightest.mean, 2) + ", standard deviation " + in_grams(deviation, 2) +
                     ", the lightest " + in_grams(least, 2) +
                     "; the mean less three deviations, or the lightest if that is less, less half "
                     "the scale's step of " +
                     in_grams(scale_step, 2);
  refuse_no_piece(lightest, where);
  return lightest;
}

namespace {

/// What the maker's spread and the scale take off.
void take_off_the_spread(LightestPiece& lightest, Quantity<-1, 1> per_depth,
                         const PieceSpread& spread, Mass scale_step, const Place& where) {
  const Mass cured = lightest.mass;
  lightest.from = cured;
  const auto take = [&](Mass off, const std::string& for_what) {
    lightest.mass -= off;
    lightest.less.push_back({for_what, off});
    lightest.because += ", less " + in_grams(off, 2) + " for " + for_what;
  };
  if (spread.either_way) take(*spread.either_way, "the spread you give");
  if (spread.share) take(*spread.share * cured, "the spread you give");
  if (spread.pour_line_off_by)
    take(*spread.pour_line_off_by * per_depth,
         "a pour line " + trimmed(*spread.pour_line_off_by / millimetre, 2) + " mm low");
  if (!(lightest.mass < cured))
    throw UserError(where, "does not say how much the pieces differ",
                    "weigh three finished pieces, or give a spread or how far off the pour line "
                    "may be, above zero: no two pieces weigh the same");
  take(scale_step / 2, half_a_step);
  refuse_no_piece(lightest, where);
}

}  // namespace

LightestPiece lightest_of(Mass cured, Quantity<-1, 1> per_depth, const PieceSpread& spread,
                          Mass scale_step, const Place& where) {
  LightestPiece lightest{cured, cured, "the cured weight of " + in_grams(cured, 2), "cured weight"};
  take_off_the_spread(lightest, per_depth, spread, scale_step, where);
  return lightest;
}

LightestPiece lightest_of(Mass lightest_bar, Mass mean, Quantity<-1, 1> per_depth,
                          const PieceSpread& spread, Mass scale_step, const Place& where) {
  LightestPiece lightest{lightest_bar, mean,
                         "the cured weight of the lightest bar, " + in_grams(lightest_bar, 2) +
                             " where the mean is " + in_grams(mean, 2),
                         "cured weight of the lightest bar"};
  take_off_the_spread(lightest, per_depth, spread, scale_step, where);
  return lightest;
}

}  // namespace brimwright::planning
