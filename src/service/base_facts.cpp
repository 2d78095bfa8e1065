#include "service/base_facts.h"

#include "service/on_scales.h"
#include "units/reading.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <optional>

namespace brimwright::service {
namespace {

using Json = nlohmann::json;
using namespace learning;

Json batch_in(const Json& plan, std::int64_t number) {
  for (const Json& batch : plan.at("batches"))
    for (const Json& its : batch.at("numbers"))
      if (its == number) return batch;
  return {};
}

/// What belongs to each line is there as often as there are lines, what stays in the pot once.
BaseFacts planned(const std::vector<const BatchFacts*>& lines, const Json& batch) {
  BaseFacts base = *lines.front()->base;
  base.is_elsewhere = false;
  base.moulds.clear();
  base.test_piece_planned = Mass{};
  for (const BatchFacts* line : lines) {
    base.jugs_planned = std::max(base.jugs_planned, line->base->jugs_planned);
    base.overpour_planned = std::max(base.overpour_planned, line->base->overpour_planned);
    base.test_piece_planned += line->base->test_piece_planned;
    base.moulds.insert(base.moulds.end(), line->base->moulds.begin(), line->base->moulds.end());
  }
  base.lost_planned = batch.at("pour").at("lost_g").get<double>() * gram;
  return base;
}

std::optional<Density> cup_of(const records::Notes& notes) {
  const auto net = notes.mass("base.cup");
  const auto holds = notes.volume("base.cup_holds");
  if (!net || !holds || !(*holds > Volume{})) return std::nullopt;
  return *net / *holds;
}

}  // namespace

BatchFacts facts_of_base(const records::Records& records, const records::Batch& base,
                         const records::Notes& notes, const std::vector<const BatchFacts*>& lines) {
  const Json batch = batch_in(Json::parse(records::plan_of(records, base)), base.number);
  BatchFacts facts;
  facts.code = base.code;
  facts.date = read_date(base.begun_on, {});
  facts.run = base.run_name;
  BaseFacts& its = facts.base.emplace(planned(lines, batch));
  its.made = notes.mass("base.made");
  its.left_over = notes.mass("base.left_over");
  its.lost_altogether = notes.mass("base.on_tools");
  its.in_pot = notes.mass("base.in_pot");
  its.in_jugs = notes.mass("base.in_jugs");
  its.cup = cup_of(notes);
  if (is_any_weighed(notes))
    if (const auto weighed = on_scales(batch, notes).base) its.on_scales = weighed->on_scales;
  return facts;
}

}  // namespace brimwright::service
