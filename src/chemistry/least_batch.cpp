#include "chemistry/least_batch.h"

#include "units/printing.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace brimwright::chemistry {
namespace {

// Far outside any studio: from a milligram's batch to a thousand times a thousand of this one.
constexpr double smallest = 1e-6, largest = 1e6;

struct Batch {
  std::vector<WeighedFat> fats;
  std::vector<WeighedAlkali> alkalis;
  std::vector<WeighedAcid> acids;
  std::vector<WeighedBlend> blends;

  EffectiveSuperfat superfat() const { return effective_superfat(fats, alkalis, acids, blends); }
};

template <class Change>
Batch changed(Batch batch, Change change) {
  for (auto& fat : batch.fats) change(fat);
  for (auto& alkali : batch.alkalis) change(alkali);
  for (auto& acid : batch.acids) change(acid);
  for (auto& blend : batch.blends) change(blend);
  return batch;
}

Share half_width_of(const EffectiveSuperfat& superfat, CertaintyOf of) {
  if (of == CertaintyOf::scales_alone) return superfat.likely_by_scales;
  return std::max(superfat.nominal - superfat.likely_low, superfat.likely_high - superfat.nominal);
}

Share half_width_at(const Batch& batch, double times, CertaintyOf of) {
  return half_width_of(changed(batch, [&](auto& item) { item.mass *= times; }).superfat(), of);
}

/// The least whole number of grams that is enough; the search ends a little above it.
Mass in_whole_grams(const Batch& batch, Mass enough, Mass now, Share half_width, CertaintyOf of) {
  double grams = std::ceil(enough / gram);
  while (grams > 1 && half_width_at(batch, (grams - 1) * gram / now, of) <= half_width) --grams;
  return grams * gram;
}

/// The least factor at which the half-width is within; it never grows with the batch.
double least_factor(const Batch& batch, Share half_width, CertaintyOf of) {
  double too_small = smallest, enough = largest;
  while (enough / too_small > 1 + 1e-4) {
    const double middle = std::sqrt(too_small * enough);
    (half_width_at(batch, middle, of) <= half_width ? enough : too_small) = middle;
  }
  return enough;
}

std::string points(Share share) { return "±" + trimmed(share.in_percent(), 2) + " points"; }

std::string what_keeps(CertaintyOf of) {
  return of == CertaintyOf::scales_alone ? "the scales keep" : "the superfat keeps";
}

std::string why_none(const Batch& batch, Share half_width, CertaintyOf of) {
  const std::string no = "No batch size keeps the superfat within " + points(half_width);
  const auto unweighed = changed(batch, [](auto& item) { item.step = Mass(); }).superfat();
  if (of == CertaintyOf::scales_alone || unweighed.uncertainties.empty())
    return no + " on these scales.";
  return no + ": the ranges alone leave " + points(half_width_of(unweighed, of)) + ", mostly by " +
         unweighed.uncertainties.front().cause +
         ". To fix it: " + unweighed.uncertainties.front().remedy + ".";
}

}  // namespace

std::string least_batch_in_words(Mass fats, Share half_width, CertaintyOf of) {
  return "From " + trimmed(fats / gram, 0) + " g of fats on " + what_keeps(of) + " within " +
         points(half_width) + ", 19 times in 20.";
}

LeastBatch least_batch_for(Share half_width, CertaintyOf of, Mass fats_now,
                           const std::vector<WeighedFat>& fats,
                           const std::vector<WeighedAlkali>& alkalis,
                           const std::vector<WeighedAcid>& acids,
                           const std::vector<WeighedBlend>& blends) {
  assert(half_width >= Share());
  const Batch batch{fats, alkalis, acids, blends};
  if (half_width_at(batch, smallest, of) <= half_width)
    return {Mass(), "In any batch " + what_keeps(of) + " within " + points(half_width) + "."};
  if (half_width_at(batch, largest, of) > half_width)
    return {std::nullopt, why_none(batch, half_width, of)};
  const Mass enough = least_factor(batch, half_width, of) * fats_now;
  const Mass least = in_whole_grams(batch, enough, fats_now, half_width, of);
  return {least, least_batch_in_words(least, half_width, of)};
}

}  // namespace brimwright::chemistry
