#include "service/planned_scales.h"

#include "records/blanks.h"
#include "units/reading.h"

#include <nlohmann/json.hpp>

namespace brimwright::service {
namespace {

using Json = nlohmann::json;

Mass planned_of(const Json& row, std::int64_t times) {
  if (times == 1) return read_mass(row.at("shown").get<std::string>(), {});
  return static_cast<double>(times) * row.at("g").get<double>() * gram;
}

PlannedVessel vessel_of(const Json& json) {
  PlannedVessel vessel{.key = json.at("key").get<std::string>(),
                       .vessel = json.at("vessel").get<std::string>(),
                       .times = json.value("times", std::int64_t{1})};
  for (const Json& row : json.at("rows"))
    vessel.rows.push_back({std::string(records::weighed_prefix) + row.at("key").get<std::string>(),
                           row.at("role").get<std::string>(), planned_of(row, vessel.times)});
  return vessel;
}

}  // namespace

const std::vector<PlannedVessel>& WeighOut::vessels() const {
  std::call_once(is_read_, [&] {
    for (const Json& vessel : Json::parse(text_)) vessels_.push_back(vessel_of(vessel));
  });
  return vessels_;
}

}  // namespace brimwright::service
