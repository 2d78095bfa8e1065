#include "planning/workings.h"

#include "chemistry/heat_workings.h"
#include "planning/decoration_workings.h"
#include "planning/lye_pot_workings.h"
#include "planning/piece_workings.h"
#include "planning/pour_workings.h"
#include "planning/shared_pot.h"
#include "planning/sum_workings.h"
#include "planning/topping_workings.h"
#include "units/printing.h"

#include <string>

namespace brimwright::planning {
namespace {

std::string place(const std::string& name, std::size_t number) {
  return name + "." + std::to_string(number);
}

std::vector<Working> pot_workings(const Run& run, const Batch& batch) {
  if (!batch.lye_pot) return {};
  auto all = lye_pot_workings(batters_of_pot(run, batch), *batch.lye_pot, *run.lye_pot);
  append_at(
      all, "heat",
      chemistry::heat_workings(*batch.pot_heat, temperatures_of_pot(run), batch.lye_pot->strength));
  return all;
}

Mass all_batter(const Plan& plan) {
  Mass sum = plan.pour.batter.weighing.batter;
  if (plan.pipe) sum += plan.pipe->batter.weighing.batter;
  return sum;
}

/// The batter that each part of a batch's bottle goes into: the base, then each whipping.
Mass batter_of(const Batch& batch, std::size_t part) {
  if (part == 0) return batch.pour.batter.weighing.batter;
  return batch.whippings[part - 1].pipe.batter.weighing.batter;
}

std::vector<Working> bottle_workings(const Plan& plan, const Batch& batch) {
  std::vector<Working> all;
  for (std::size_t i = 0; i < batch.bottles.size(); ++i) {
    const BottleTally& bottle = batch.bottles[i];
    for (std::size_t k = 0; k < bottle.parts.size(); ++k)
      append_at(all, place(place("bottles", i) + ".parts", k),
                bottle_part_workings(bottle.parts[k], bottle.holds, batter_of(batch, k),
                                     all_batter(plan)));
  }
  return all;
}

std::vector<Working> batch_workings(const Run& run, const Plan& plan, const Batch& batch) {
  std::vector<Working> all;
  append_at(all, "pour", pour_workings(run, batch.pour, batch.casts));
  for (std::size_t w = 0; w < batch.whippings.size(); ++w)
    append_at(all, place("pipe.whippings", w),
              whipping_workings(run, batch.whippings[w], batch.pour.headspace_volume,
                                plan.pieces.per_cast));
  append_at(all, "lye_pot", pot_workings(run, batch));
  append_at(all, "", bottle_workings(plan, batch));
  for (std::size_t i = 0; i < batch.dust.size(); ++i)
    append_at(all, place("dust", i),
              {dust_working(run.dust[i], batch.dust[i]),
               dust_to_weigh(batch.dust[i], batch.pieces, run.scales)});
  return all;
}

}  // namespace

std::vector<Working> workings_of(const Run& run, const Plan& plan) {
  std::vector<Working> all;
  append_at(all, "pieces", pieces_workings(run, plan));
  for (std::size_t b = 0; b < plan.batches.size(); ++b)
    append_at(all, place("batches", b), batch_workings(run, plan, plan.batches[b]));
  append_at(all, "", sum_workings(run, plan, all));
  for (std::size_t i = 0; i < plan.decorations.size(); ++i)
    append_at(all, place("decorations", i), decoration_workings(run, plan, i));
  if (plan.cut) append_at(all, "cut", cut_workings(run, *plan.cut, plan.piece));
  append_at(all, "piece", piece_workings(run, plan));
  if (plan.label) append_at(all, "label", label_workings(*plan.label));
  return all;
}

}  // namespace brimwright::planning
