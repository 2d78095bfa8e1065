#include "planning/plan.h"

#include "planning/batch_sums.h"
#include "planning/batches.h"
#include "planning/batching.h"
#include "planning/cost.h"
#include "planning/decoration.h"
#include "planning/dusting.h"
#include "planning/fragrance.h"
#include "planning/label_draft.h"
#include "planning/piece_tally.h"
#include "planning/plan_cautions.h"

#include <string>
#include <utility>

namespace brimwright::planning {
namespace {

void make_batches(Plan& plan, const Run& run, Batches batches) {
  plan.pieces.batches = batches.count;
  plan.batches = std::move(batches.different);
  plan.batch_limits = std::move(batches.limits);
  plan.around = std::move(batches.around);
  plan.pour = pour_of(run, plan.batches);
  if (run.pipe) plan.pipe = pipe_of(run, plan.batches);
}

void decorate(Plan& plan, const Run& run, const Measured& measured) {
  for (std::size_t i = 0; i < run.decorations.size(); ++i)
    plan.decorations.push_back(decoration_tally(run, i, plan.pieces, measured.fits[i]));
}

void dust(Plan& plan, const Run& run, const Measured& measured) {
  for (std::size_t i = 0; i < run.dust.size(); ++i) {
    DustTally all = dust_each(run, i, plan.pieces.per_cast, measured.exposed);
    for (Batch& batch : plan.batches) {
      batch.dust.push_back(dust_for(all, batch.pieces, run.scales));
      all.make += static_cast<double>(batch.count()) * batch.dust.back().make;
    }
    plan.dust.push_back(std::move(all));
  }
}

void share_bottles(Plan& plan, const Run& run) {
  for (std::size_t i = 0; i < run.bottles.size(); ++i)
    share_bottle(plan, run, run.bottles[i], run.place("/bottles/" + std::to_string(i) + "/shared"));
}

Plan weighed_out(Batches batches, const Pieces& pieces, const Run& run, const Measured& measured) {
  Plan plan;
  plan.file = run.file;
  plan.name = run.name;
  plan.cut = measured.cut;
  plan.pieces = pieces;
  make_batches(plan, run, std::move(batches));
  decorate(plan, run, measured);
  dust(plan, run, measured);
  return plan;
}

}  // namespace

Plan amounts_for(std::int64_t sell, const Run& run, const Measured& measured, BatchTrials& trials) {
  const Pieces pieces = pieces_of(run, sell, pieces_in_a_cast(measured));
  Plan plan = weighed_out(batches_of(run, measured, pieces, trials), pieces, run, measured);
  share_bottles(plan, run);
  return plan;
}

Plan plan_for(std::int64_t sell, const Run& run, const Measured& measured, BatchTrials& trials) {
  const Pieces pieces = pieces_of(run, sell, pieces_in_a_cast(measured));
  return plan_in(batches_of(run, measured, pieces, trials), pieces, run, measured, BaseIs::its_own);
}

Plan plan_in(Batches batches, const Pieces& pieces, const Run& run, const Measured& measured,
             BaseIs base) {
  Plan plan = weighed_out(std::move(batches), pieces, run, measured);
  plan.piece = piece_of(plan, run, measured.size);
  if (run.label) plan.label = label_draft(run, plan);
  share_bottles(plan, run);
  if (run.money) plan.cost = cost_of(plan, *run.money);
  collect_cautions(plan, run, base);
  return plan;
}

Plan plan_of(const Run& run, const Measured& measured) {
  BatchTrials trials(run, measured);
  return plan_for(run.sell, run, measured, trials);
}

Plan plan(const Run& run, const Measuring& help) { return plan_of(run, measured(run, help)); }

}  // namespace brimwright::planning
