#include "service/learned_batches.h"

#include "geometry/surface/parallel.h"
#include "records/as_of_now.h"
#include "records/notes.h"
#include "records/plans.h"
#include "records/poured_from.h"
#include "records/weighing.h"
#include "service/base_facts.h"
#include "service/noted_facts.h"
#include "units/reading.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <map>
#include <optional>
#include <string_view>
#include <tuple>
#include <utility>

namespace brimwright::service {

using namespace learning;

namespace {

BatchFacts facts_of_batch(const records::Batch& batch, const PlannedFacts& plan,
                          const records::NotedValues& notes,
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

/// What one plan says, of a run or of a base that was mixed for several.
struct ReadPlan {
  std::shared_ptr<const PlannedFacts> run = {};
  std::vector<PlannedBase> bases = {};
};

ReadPlan read_plan(const std::string& answer) {
  ReadPlan plan{.run = planned_facts(answer)};
  if (!plan.run) plan.bases = planned_bases(answer);
  return plan;
}

/// What the records hold of batches. One thread reads it while others unpack plans.
class Reading {
 public:
  explicit Reading(const records::Records& records) : records_(records) {
    const records::AsOfNow one_moment(records);
    const auto packed = records::packed_plans(records);
    std::vector<ReadPlan> plans(packed.size());
    constexpr std::size_t stretch = 8;  // for which memory is asked for once
    geometry::in_parallel(1 + (packed.size() + stretch - 1) / stretch, [&](std::size_t part) {
      if (part == 0) return read_rows();
      std::string text;
      for (std::size_t i = (part - 1) * stretch; i < std::min(packed.size(), part * stretch); ++i) {
        records::unpack(packed[i], records, text);
        plans[i] = read_plan(text);
      }
    });
    for (std::size_t i = 0; i < packed.size(); ++i) plans_[packed[i].hash] = std::move(plans[i]);
  }

  KeptBatches kept() && {
    KeptBatches kept{records_};
    kept.plans.reserve(batches_.size());
    kept.batches.reserve(batches_.size());
    std::vector<records::Batch> others;
    for (records::Batch& batch : batches_) {
      const auto& plan = plan_of(batch).run;
      if (plan) kept.plans.push_back(plan);
      (plan ? kept.batches : others).push_back(std::move(batch));
    }
    batches_ = std::move(others);
    kept.facts = facts_of(kept);
    if (!poured_.empty()) kept.bases = bases_of(kept);
    return kept;
  }

 private:
  const ReadPlan& plan_of(const records::Batch& batch) const {
    const auto found = plans_.find(batch.plan);
    if (found == plans_.end()) (void)records::plan_of(records_, batch);  // which says so
    return plans_.at(batch.plan);
  }

  /// For one thread.
  void read_rows() {
    batches_ = records::batches(records_);
    notes_.emplace(records_);
    places_of_notes_.reserve(notes_->size());
    for (std::size_t i = 0; i < notes_->size(); ++i) places_of_notes_[notes_->batch(i)] = i;
    weighings_ = records::all_weighings(records_);
    poured_ = records::all_poured(records_);
  }

  records::PackedNotes::Of notes_of(const std::string& batch) const {
    const auto at = places_of_notes_.find(batch);
    return at == places_of_notes_.end() ? notes_->of_none() : notes_->of(at->second);
  }

  std::vector<BatchFacts> facts_of(const KeptBatches& kept) const {
    static const std::vector<records::Weighing> none;
    std::vector<BatchFacts> facts(kept.batches.size());
    constexpr std::size_t stretch = 256;
    geometry::in_stretches(
        facts.size(),
        [&](std::size_t i) {
          const records::Batch& batch = kept.batches[i];
          const auto weighed = weighings_.find(batch.id);
          facts[i] = facts_of_batch(batch, *kept.plans[i], notes_of(batch.id),
                                    weighed == weighings_.end() ? none : weighed->second);
        },
        stretch);
    return facts;
  }

  /// By their lines, of which each has one. They are among the batches that are not kept.
  std::vector<KeptBase> bases_of(const KeptBatches& kept) const {
    std::unordered_map<std::string_view, std::size_t> places;
    for (std::size_t i = 0; i < kept.batches.size(); ++i) places[kept.batches[i].id] = i;
    std::map<std::string_view, std::vector<std::size_t>> lines;
    for (const records::PouredFrom& poured : poured_)
      if (const auto at = places.find(poured.batch); at != places.end())
        lines[poured.base].push_back(at->second);
    std::vector<KeptBase> bases;
    for (const records::Batch& batch : batches_) {
      const auto its = lines.find(batch.id);
      if (its == lines.end()) continue;
      std::sort(its->second.begin(), its->second.end());
      for (const PlannedBase& planned : plan_of(batch).bases)
        if (std::find(planned.numbers.begin(), planned.numbers.end(), batch.number) !=
            planned.numbers.end())
          bases.push_back({batch, planned, notes_of(batch.id).copy(), its->second});
    }
    return bases;
  }

  const records::Records& records_;
  std::unordered_map<std::string, ReadPlan> plans_;  // by the hashes of their documents
  std::vector<records::Batch> batches_;
  std::optional<records::PackedNotes> notes_;
  std::unordered_map<std::string_view, std::size_t> places_of_notes_;
  std::map<std::string, std::vector<records::Weighing>> weighings_;
  std::vector<records::PouredFrom> poured_;
};

/// A base that was mixed for several is told of once, and not with what was poured from it.
void add_bases(KeptBatches& kept) {
  std::vector<BatchFacts> bases;
  for (const KeptBase& base : kept.bases) {
    std::vector<const BatchFacts*> lines;
    for (const std::size_t i : base.lines)
      if (kept.facts[i].base) lines.push_back(&kept.facts[i]);
    if (lines.empty()) continue;
    bases.push_back(facts_of_base(base.batch, base.planned, base.notes, lines));
    for (const std::size_t i : base.lines)
      if (kept.facts[i].base) kept.facts[i].base->is_elsewhere = true;
  }
  if (bases.empty()) return;
  std::move(bases.begin(), bases.end(), std::back_inserter(kept.facts));
  std::stable_sort(kept.facts.begin(), kept.facts.end(),
                   [](const BatchFacts& a, const BatchFacts& b) {
                     return std::tie(a.date, a.code) < std::tie(b.date, b.code);
                   });
}

}  // namespace

KeptBatches kept_batches(const records::Records& records) { return Reading(records).kept(); }

LearnedBatches learned_batches(KeptBatches kept, const PlannedFacts* today, RenamedFiles* renamed) {
  Identities identities;
  for (std::size_t i = 0; i < kept.batches.size(); ++i) {
    if (renamed != nullptr) call_as_today(kept.facts[i], kept.batches[i], *renamed);
    identify(identities, *kept.plans[i], kept.facts[i]);
  }
  if (today != nullptr) identify(identities, *today);
  std::size_t earlier = 0;
  for (std::size_t i = 0; i < kept.batches.size(); ++i)
    earlier += set_apart(kept.facts[i], *kept.plans[i], identities) ? 1 : 0;
  add_bases(kept);
  return {std::move(kept.facts), earlier};
}

}  // namespace brimwright::service
