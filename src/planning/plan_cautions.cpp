#include "planning/plan_cautions.h"

#include "planning/batch_remarks.h"
#include "planning/fit_remarks.h"
#include "planning/fragrance.h"
#include "planning/named_things.h"

#include <algorithm>
#include <array>

namespace brimwright::planning {
namespace {

void add(std::vector<Caution>& all, const std::vector<Remark>& more, const std::string& whose,
         Concern concern) {
  for (const auto& remark : more)
    all.push_back({{remark.severity, whose.empty() ? remark.text : whose + ": " + remark.text},
                   Topic::plan,
                   false,
                   concern});
}

void add(std::vector<Caution>& all, const std::vector<BatchRemark>& more, Concern concern,
         Topic topic = Topic::plan) {
  for (const auto& remark : more)
    all.push_back({remark, topic, false, concern, std::nullopt, remark.pieces});
}

/// Of one batter, which is named where there are two. What is doubtful in its figures is of the
/// data, but a danger among it is first of all one of the superfat.
void add_of_batter(Plan& plan, BatterRole batter, Saying saying) {
  const std::string whose = !plan.pipe ? "" : batter == BatterRole::base ? "Base: " : "Topping: ";
  for (const auto& remark : of_batter(plan, batter, saying)) {
    const Concern concern = saying == Saying::alarms              ? Concern::superfat
                            : saying == Saying::remarks           ? Concern::todays_batch
                            : remark.severity == Severity::danger ? Concern::superfat
                                                                  : Concern::data;
    plan.cautions.push_back({{remark.severity, whose + remark.text},
                             Topic::plan,
                             false,
                             concern,
                             batter,
                             remark.pieces});
  }
}

void add_of_pot_shares(Plan& plan, BatterRole batter) {
  for (const auto& remark : of_pot_shares(plan, batter))
    plan.cautions.push_back({remark, Topic::plan, false, Concern::superfat, batter, remark.pieces});
}

/// Of what is bought and only counted.
std::vector<Remark> unweighed_remarks(const Run& run) {
  std::vector<Remark> remarks;
  for (const auto& decoration : run.decorations) {
    const auto* bought = std::get_if<Bought>(&decoration.made);
    if (bought != nullptr && !bought->weighs)
      remarks.push_back({Severity::caution,
                         decoration.name + ": what one weighs is not given, so a piece's weight is "
                                           "calculated without it. Give it as \"weighs\"."});
  }
  return remarks;
}

void warn_of_unused_prices(Plan& plan, const Run& run) {
  if (!plan.cost) return;
  for (const auto& [name, price] : run.money->prices) {
    const auto& lines = plan.cost->lines;
    const bool is_used =
        std::any_of(lines.begin(), lines.end(), [&](const CostLine& l) { return l.name == name; });
    if (!is_used)
      plan.cautions.push_back({{Severity::note, "The price of \"" + name +
                                                    "\" is not used: nothing of that name goes "
                                                    "into this run."},
                               Topic::plan,
                               false,
                               Concern::label_and_cost});
  }
}

}  // namespace

void collect_cautions(Plan& plan, const Run& run, BaseIs base) {
  auto& all = plan.cautions;
  all.clear();
  constexpr std::array both = {BatterRole::base, BatterRole::topping};
  for (const auto batter : both) add_of_batter(plan, batter, Saying::alarms);
  for (const auto batter : both) add_of_pot_shares(plan, batter);
  // Of today's batch first what keeps it from being made as planned, then what may go wrong in it.
  add(all, whip_remarks(plan), "", Concern::todays_batch);
  add(all, decoration_remarks(run, plan), "", Concern::todays_batch);
  add(all, limit_cautions(run, plan, base), "", Concern::todays_batch);
  for (const auto& bottle : plan.bottles) add(all, bottle.remarks, "", Concern::todays_batch);
  add(all, of_counts(plan), "", Concern::todays_batch);
  add(all, of_heat(plan), Concern::todays_batch, Topic::heat);
  for (const auto batter : both) add_of_batter(plan, batter, Saying::remarks);
  add(all, of_lye_pots(plan), Concern::todays_batch, Topic::lye);
  for (const auto batter : both) add_of_batter(plan, batter, Saying::doubts);
  add(all, run.pour.mould.remarks, "", Concern::data);
  for (const auto& decoration : run.decorations)
    if (const auto* cast = std::get_if<InMould>(&decoration.made))
      add(all, cast->mould.remarks, decoration.name, Concern::data);
  add(all, run.remarks, "", Concern::data);
  add(all, hand_remarks(plan), "", Concern::data);
  if (run.pour.losses.overpour == Share{} && run.pour.losses.pot == Mass{} &&
      run.pour.losses.jugs == Mass{})
    all.push_back({{Severity::caution,
                    "No losses are allowed for in pot, jugs and overpour; most batches lose some."},
                   Topic::plan});
  add(all, missing_limit_cautions(run, plan, base), "", Concern::label_and_cost);
  add(all, unweighed_remarks(run), "", Concern::label_and_cost);
  add(all, named_thing_remarks(run), "", Concern::label_and_cost);
  warn_of_unused_prices(plan, run);
  const auto bench = bench_cautions(run);
  all.insert(all.end(), bench.begin(), bench.end());
  put_in_order(all);
}

}  // namespace brimwright::planning
