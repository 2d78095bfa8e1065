#include "service/learned_batches.h"

#include "geometry/surface/parallel.h"
#include "records/plans.h"
#include "records/poured_from.h"
#include "service/base_facts.h"
#include "service/noted_facts.h"
#include "units/reading.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <map>
#include <tuple>
#include <unordered_map>
#include <utility>

namespace brimwright::service {

using namespace learning;

namespace {

BatchFacts facts_of_batch(const records::Batch& batch, const PlannedFacts& plan,
                          const records::Notes& notes,
                          const std::vector<records::Weighing>& weighings) {
  BatchFacts facts = facts_of_plan(plan, batch.number);
  facts.code = batch.code;
  facts.date = read_date(batch.begun_on, {});
  if (const PlannedBatch* const planned = planned_batch(plan, batch.number))
    note_facts(facts, plan, *planned, notes, weighings);
  return facts;
}

/// A formula whose ingredients come to another density, a mould or a topping that was measured anew
/// is another: its density, or what it holds, by the names of files and of runs.
using Identities = std::map<std::string, double>;

std::string topping_of_run(const std::string& run) { return "topping of " + run; }

void identify_topping(Identities& identities, const PlannedFacts& plan) {
  if (plan.topping_sized_by_ml) identities[topping_of_run(plan.run)] = *plan.topping_sized_by_ml;
}

void identify(Identities& identities, const PlannedFacts& plan) {
  identities[plan.formula] = plan.computed_g_per_ml;
  identities[plan.mould] = plan.measured_brimful_ml;
  identify_topping(identities, plan);
}

/// By the names that its files have today.
void call_as_today(BatchFacts& facts, const records::Batch& batch, RenamedFiles& renamed) {
  const auto rename = [&](std::string& name) {
    if (const auto now = renamed.called_now(batch, name)) name = *now;
  };
  if (!facts.base) return;
  rename(facts.base->formula);
  for (FilledMould& mould : facts.base->moulds) rename(mould.mould);
  for (ToppingFacts& topping : facts.toppings) rename(topping.formula);
  if (facts.cure) facts.cure->formula = facts.base->formula;
}

/// The same of a batch, by what its files are called now.
void identify(Identities& identities, const PlannedFacts& plan, const BatchFacts& facts) {
  if (!facts.base) return;
  identify_topping(identities, plan);
  identities[facts.base->formula] = plan.computed_g_per_ml;
  for (const FilledMould& mould : facts.base->moulds)
    identities[mould.mould] = plan.measured_brimful_ml;
}

bool is_alike(double one, double other) { return std::abs(one - other) <= 0.005 * std::abs(other); }

/// Whether anything of the batch was another then, which is renamed.
bool set_apart(BatchFacts& facts, const PlannedFacts& plan, const Identities& identities) {
  if (!facts.base) return false;
  bool is_other = false;
  const auto rename = [&](std::string& name, double then, const std::string& identity) {
    if (is_alike(then, identities.at(identity))) return;
    name += " (earlier)";
    is_other = true;
  };
  for (FilledMould& mould : facts.base->moulds)
    rename(mould.mould, plan.measured_brimful_ml, mould.mould);
  rename(facts.base->formula, plan.computed_g_per_ml, facts.base->formula);
  if (plan.topping_sized_by_ml)
    for (ToppingFacts& topping : facts.toppings)
      rename(topping.topping, *plan.topping_sized_by_ml, topping_of_run(plan.run));
  if (facts.cure) facts.cure->formula = facts.base->formula;
  return is_other;
}

/// By their hashes.
using Plans = std::unordered_map<std::string, std::shared_ptr<const PlannedFacts>>;

Plans plans_in(const records::Records& records) {
  const auto packed = records::packed_plans(records);
  std::vector<std::shared_ptr<const PlannedFacts>> read(packed.size());
  geometry::in_parallel(packed.size(), [&](std::size_t i) {
    read[i] = planned_facts(records::unpacked(packed[i], records));
  });
  Plans plans;
  for (std::size_t i = 0; i < packed.size(); ++i) plans[packed[i].hash] = std::move(read[i]);
  return plans;
}

template <class Of>
const Of& of_batch(const std::map<std::string, Of>& all, const records::Batch& batch) {
  static const Of none;
  const auto found = all.find(batch.id);
  return found == all.end() ? none : found->second;
}

/// The lines of each base, by places in `facts`, whose ids are `ids`.
std::map<std::string, std::vector<std::size_t>> lines_by_base(
    const std::vector<const std::string*>& ids, const records::Records& records) {
  std::map<std::string, std::string> base_of;
  for (const std::string& base : records::all_bases(records))
    for (const auto& poured : records::poured_of(records, base)) base_of[poured.batch] = base;
  std::map<std::string, std::vector<std::size_t>> lines;
  if (base_of.empty()) return lines;
  for (std::size_t i = 0; i < ids.size(); ++i)
    if (const auto at = base_of.find(*ids[i]); at != base_of.end()) lines[at->second].push_back(i);
  return lines;
}

/// A base that was mixed for several is told of once, and not with what was poured from it.
void add_bases(std::vector<BatchFacts>& facts, const std::vector<const std::string*>& ids,
               const records::Records& records,
               const std::map<std::string, records::Notes>& notes) {
  std::vector<BatchFacts> bases;
  for (const auto& [id, places] : lines_by_base(ids, records)) {
    const auto base = records::batch_of_id(records, id);
    std::vector<const BatchFacts*> lines;
    for (const std::size_t i : places)
      if (facts[i].base) lines.push_back(&facts[i]);
    if (!base || lines.empty()) continue;
    bases.push_back(facts_of_base(records, *base, of_batch(notes, *base), lines));
    for (const std::size_t i : places)
      if (facts[i].base) facts[i].base->is_elsewhere = true;
  }
  if (bases.empty()) return;
  std::move(bases.begin(), bases.end(), std::back_inserter(facts));
  std::stable_sort(facts.begin(), facts.end(), [](const BatchFacts& a, const BatchFacts& b) {
    return std::tie(a.date, a.code) < std::tie(b.date, b.code);
  });
}

}  // namespace

LearnedBatches learned_batches(const records::Records& records, const PlannedFacts* today,
                               RenamedFiles* renamed) {
  const auto batches = records::batches(records);
  const auto notes = records::all_notes(records);
  const auto weighings = records::all_weighings(records);
  const Plans plans = plans_in(records);
  Identities identities;
  LearnedBatches learned;
  std::vector<const PlannedFacts*> plan_of;
  std::vector<const std::string*> ids;
  learned.facts.reserve(batches.size());
  for (const records::Batch& batch : batches) {
    const auto found = plans.find(batch.plan);
    if (found == plans.end()) (void)records::plan_of(records, batch);  // which says so
    const PlannedFacts* const plan = found->second.get();
    if (plan == nullptr) continue;
    learned.facts.push_back(
        facts_of_batch(batch, *plan, of_batch(notes, batch), of_batch(weighings, batch)));
    if (renamed != nullptr) call_as_today(learned.facts.back(), batch, *renamed);
    plan_of.push_back(plan);
    ids.push_back(&batch.id);
    identify(identities, *plan, learned.facts.back());
  }
  if (today != nullptr) identify(identities, *today);
  for (std::size_t i = 0; i < learned.facts.size(); ++i)
    learned.earlier += set_apart(learned.facts[i], *plan_of[i], identities) ? 1 : 0;
  add_bases(learned.facts, ids, records, notes);
  return learned;
}

}  // namespace brimwright::service
