#include "service/base_facts.h"

#include "service/on_scales.h"
#include "units/reading.h"

#include <algorithm>
#include <optional>

namespace brimwright::service {
namespace {

using namespace learning;

/// What belongs to each line is there as often as there are lines, what stays in the pot once.
BaseFacts base_of(const std::vector<const BatchFacts*>& lines, Mass lost) {
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
  base.lost_planned = lost;
  return base;
}

std::optional<Density> cup_of(const records::NotedValues& notes) {
  const auto net = notes.mass("base.cup");
  const auto holds = notes.volume("base.cup_holds");
  if (!net || !holds || !(*holds > Volume{})) return std::nullopt;
  return *net / *holds;
}

}  // namespace

BatchFacts facts_of_base(const records::Batch& base, const PlannedBase& planned,
                         const records::NotedValues& notes,
                         const std::vector<const BatchFacts*>& lines) {
  BatchFacts facts;
  facts.code = base.code;
  facts.date = read_date(base.begun_on, {});
  facts.run = base.run_name;
  BaseFacts& its = facts.base.emplace(base_of(lines, planned.lost));
  its.made = notes.mass("base.made");
  its.left_over = notes.mass("base.left_over");
  its.lost_altogether = notes.mass("base.on_tools");
  its.in_pot = notes.mass("base.in_pot");
  its.in_jugs = notes.mass("base.in_jugs");
  its.cup = cup_of(notes);
  if (is_any_weighed(notes))
    if (const auto weighed = on_scales(planned.scales, notes).base)
      its.on_scales = weighed->on_scales;
  return facts;
}

}  // namespace brimwright::service
