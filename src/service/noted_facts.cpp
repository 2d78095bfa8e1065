#include "service/noted_facts.h"

#include "service/on_scales.h"
#include "units/reading.h"

#include <algorithm>
#include <chrono>
#include <cstdint>
#include <optional>
#include <utility>

namespace brimwright::service {

using namespace learning;

namespace {

/// Between the levels on both sides, by a straight line: at most 1 mm apart, where a wall that
/// leans makes the difference small.
LineReached line_at(const std::vector<PlannedLevel>& levels, Length off) {
  LineReached line{off};
  const double off_mm = off / millimetre;
  for (std::size_t i = 1; i < levels.size(); ++i) {
    const PlannedLevel &low = levels[i - 1], &high = levels[i];
    if (off_mm < low.off_mm || off_mm > high.off_mm) continue;
    const double part = (off_mm - low.off_mm) / (high.off_mm - low.off_mm);
    line.volume_each = low.volume_each + part * (high.volume_each - low.volume_each);
    line.surface = low.surface + part * (high.surface - low.surface);
  }
  return line;
}

/// A full cup's density: what it holds stands in its blank, or is noted itself.
std::optional<Density> cup_of(const PlannedBatch& planned, const records::NotedValues& notes,
                              const std::string& key) {
  const auto net = notes.mass(key);
  if (!net) return std::nullopt;
  std::optional<Volume> holds;
  for (const PlannedCup& cup : planned.cups)
    if (cup.key == key) holds = cup.holds_key.empty() ? cup.holds : notes.volume(cup.holds_key);
  if (!holds || !(*holds > Volume{})) return std::nullopt;
  return *net / *holds;
}

void note_base(BaseFacts& base, const PlannedFacts& plan, const PlannedBatch& planned,
               const records::NotedValues& notes) {
  base.made = notes.mass("base.made");
  base.left_over = notes.mass("base.left_over");
  base.lost_altogether = notes.mass("base.on_tools");
  base.in_pot = notes.mass("base.in_pot");
  base.in_jugs = notes.mass("base.in_jugs");
  base.cup = cup_of(planned, notes, "base.cup");
  for (FilledMould& mould : base.moulds) {
    mould.casts = notes.count("pour.filled");
    if (const auto off = notes.length("pour.line_off")) mould.line = line_at(plan.levels, *off);
  }
}

void note_toppings(std::vector<ToppingFacts>& toppings, const PlannedBatch& planned,
                   const records::NotedValues& notes) {
  for (std::size_t i = 0; i < toppings.size(); ++i) {
    const std::string key =
        toppings.size() == 1 ? "topping." : "topping-" + std::to_string(i + 1) + ".";
    ToppingFacts& topping = toppings[i];
    topping.made = notes.mass(key + "made");
    topping.left_over = notes.mass(key + "left_over");
    topping.lost_altogether = notes.mass(key + "on_tools");
    topping.in_bowl_and_whisk = notes.mass(key + "in_bowl");
    topping.in_bag = notes.mass(key + "in_bag");
    topping.in_tip = notes.mass(key + "in_tip");
    topping.at_bag_changes = notes.mass(key + "at_bag_changes");
    if (const auto changes = notes.count(key + "bag_changes")) topping.bag_changes = changes;
    topping.cup = cup_of(planned, notes, key + "cup");
    topping.piped = notes.count(key + "piped");
  }
}

void note_decorations(std::vector<DecorationFacts>& decorations,
                      const records::NotedValues& notes) {
  for (DecorationFacts& decoration : decorations) {
    const std::string key = decoration_key(decoration.place);
    decoration.melted = notes.mass(key + "melted");
    decoration.left_over = notes.mass(key + "left_over");
    decoration.in_jug = notes.mass(key + "in_jug");
    decoration.casts = notes.count(key + "cast");
    decoration.cast_each = notes.mass(key + "cast_each");
    if (const auto fills = notes.count(key + "fills")) decoration.tray_fills = fills;
  }
}

std::optional<Minutes> shared_by(const std::optional<std::chrono::seconds>& time,
                                 const std::optional<std::int64_t>& pieces) {
  if (!time || !pieces || *pieces < 1) return std::nullopt;
  return Minutes(*time) / static_cast<double>(*pieces);
}

/// Work on a batch whose base was mixed for several tells nothing of one that is made alone.
void note_times(BatchFacts& facts, const PlannedBatch& planned, const records::NotedValues& notes) {
  std::optional<Minutes> making;
  const auto time = notes.minutes("minutes.making");
  if (time && !planned.is_beside_base) making = Minutes(*time);
  std::optional<std::int64_t> packed = facts.pieces_made;
  if (packed) *packed -= facts.rejects.value_or(0);
  facts.times = {
      {TimeOf::batch, {}, making},
      {TimeOf::piece_made, {}, shared_by(notes.minutes("minutes.pieces"), facts.pieces_made)},
      {TimeOf::piece_packed, {}, shared_by(notes.minutes("minutes.packing"), packed)}};
}

void note_cure(CureFacts& cure, const std::vector<records::Weighing>& weighings,
               const std::chrono::sys_days& poured) {
  for (const records::Weighing& weighing : weighings) {
    const std::chrono::sys_days day = read_date(weighing.day, {});
    cure.weighings.push_back({static_cast<double>((day - poured).count()),
                              weighing.together / static_cast<double>(weighing.pieces)});
  }
}

/// What came of weighing otherwise than planned.
void note_scales(BatchFacts& facts, const PlannedScales& planned, const BatchOnScales& scales) {
  if (scales.base) facts.base->on_scales = scales.base->on_scales;
  std::size_t topping = 0;
  for (std::size_t i = 0; i < scales.whippings.size(); ++i) {
    for (std::int64_t n = 0; n < planned.whippings[i].count && topping < facts.toppings.size();
         ++n, ++topping)
      if (scales.whippings[i]) facts.toppings[topping].on_scales = scales.whippings[i]->on_scales;
  }
  for (std::size_t i = 0; i < std::min(scales.melts.size(), facts.decorations.size()); ++i)
    facts.decorations[i].on_scales = scales.melts[i];
  if (!scales.base || !facts.cure) return;
  const Mass make = planned.base.make.value();
  auto& water = facts.cure->water;
  if (const auto& more_water = scales.base->more_water; more_water && water)
    water = Share::of_one((water->of_one() * make + *more_water) / (make + scales.base->more));
  else
    water.reset();
}

}  // namespace

void note_facts(BatchFacts& facts, const PlannedFacts& plan, const PlannedBatch& planned,
                const records::NotedValues& notes,
                const std::vector<records::Weighing>& weighings) {
  facts.pieces_made = notes.count("pieces.made");
  facts.rejects = notes.count("pieces.rejected");
  note_base(*facts.base, plan, planned, notes);
  note_toppings(facts.toppings, planned, notes);
  note_decorations(facts.decorations, notes);
  note_times(facts, planned, notes);
  if (is_any_weighed(notes)) note_scales(facts, planned.scales, on_scales(planned.scales, notes));
  if (!facts.cure) return;
  note_cure(*facts.cure, weighings, notes.date("base.made_on").value_or(facts.date));
  if (facts.cure->weighings.empty()) facts.cure.reset();
}

}  // namespace brimwright::service
