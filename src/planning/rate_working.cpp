#include "planning/rate_working.h"

#include "units/printing.h"

namespace brimwright::planning {
namespace {

std::string factor_of(const Rate& rate, const std::optional<Density>& bulk_density) {
  if (const auto* share = std::get_if<Share>(&rate.amount)) return in_figures(*share);
  const double ml_per_kg = std::get<SpecificVolume>(rate.amount) * kilogram / millilitre;
  return trimmed(ml_per_kg, 5) + " ml/kg × " + in_figures(*bulk_density);
}

}  // namespace

RateWorking rate_working(const Rate& rate, const std::optional<Density>& bulk_density,
                         const std::string& from) {
  RateWorking working{.factor = factor_of(rate, bulk_density), .given = {}};
  working.given.push_back({"rate", working.factor, from});
  if (!rate.written.empty() && !rate.written.starts_with(working.factor))
    working.given.push_back({"rate as typed", rate.written, from});
  return working;
}

}  // namespace brimwright::planning
