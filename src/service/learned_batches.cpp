#include "service/learned_batches.h"

#include "geometry/surface/parallel.h"
#include "records/as_of_now.h"
#include "records/batches_in_brief.h"
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
#include <unordered_map>
#include <utility>

namespace brimwright::service {

using namespace learning;

namespace {

BatchFacts facts_of_batch(const records::BatchInBrief& batch, const PlannedFacts& plan,
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
void call_as_today(BatchFacts& facts, const std::string& sources, RenamedFiles& renamed) {
  const auto rename = [&](std::string& name) {
    if (const auto now = renamed.called_now(sources, name)) name = *now;
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
    batches_ = records::batches_in_brief(records);
    const auto packed = records::packed_plans(records, batches_.plans);
    plans_.resize(packed.size());
    constexpr std::size_t stretch = 8;  // for which memory is asked for once
    geometry::in_parallel(1 + (packed.size() + stretch - 1) / stretch, [&](std::size_t part) {
      if (part == 0) return read_rows();
      std::string text;
      for (std::size_t i = (part - 1) * stretch; i < std::min(packed.size(), part * stretch); ++i) {
        records::unpack(packed[i], records, text);
        plans_[i] = read_plan(text);
      }
    });
  }

  KeptBatches kept() && {
    KeptBatches kept{records_};
    std::vector<std::size_t> places;  // of those that are kept
    for (const std::size_t place : records::by_day(batches_.all)) {
      const auto& batch = batches_.all[place];
      const auto& plan = plans_[batch.plan].run;
      if (!plan) continue;
      places.push_back(place);
      kept.plans.push_back(plan);
      kept.sources.push_back(batch.sources);
    }
    kept.hashes_of_sources = std::move(batches_.sources);
    kept.facts = facts_of(places);
    kept.bases = bases_of(places);
    return kept;
  }

 private:
  /// For one thread.
  void read_rows() {
    notes_.emplace(records_);
    weighings_ = records::all_weighings(records_);
    for (records::PouredFrom& poured : records::all_poured(records_)) {
      Base& base = bases_[poured.base];
      if (base.lines.empty()) base.batch = records::batch_of_id(records_, poured.base);
      base.lines.push_back(std::move(poured.batch));
    }
    find_notes();
  }

  /// Notes, weighings and batches are all in the order of the batches' ids.
  void find_notes() {
    std::size_t note = 0;
    auto weighed = weighings_.begin();
    for (const records::BatchInBrief& batch : batches_.all) {
      while (note < notes_->size() && notes_->batch(note) < batch.id) ++note;
      while (weighed != weighings_.end() && weighed->first < batch.id) ++weighed;
      const bool is_noted = note < notes_->size() && notes_->batch(note) == batch.id;
      const bool is_weighed = weighed != weighings_.end() && weighed->first == batch.id;
      noted_.push_back({is_noted ? notes_->of(note) : notes_->of_none(),
                        is_weighed ? &weighed->second : nullptr});
    }
  }

  /// Of those at `places` among the batches.
  std::vector<BatchFacts> facts_of(const std::vector<std::size_t>& places) const {
    static const std::vector<records::Weighing> none;
    std::vector<BatchFacts> facts(places.size());
    constexpr std::size_t stretch = 256;
    geometry::in_stretches(
        facts.size(),
        [&](std::size_t i) {
          const records::BatchInBrief& batch = batches_.all[places[i]];
          const Noted& noted = noted_[places[i]];
          facts[i] = facts_of_batch(batch, *plans_[batch.plan].run, noted.notes,
                                    noted.weighed == nullptr ? none : *noted.weighed);
        },
        stretch);
    return facts;
  }

  /// By their lines, of which each has one, and which are at `places` among the batches.
  std::vector<KeptBase> bases_of(const std::vector<std::size_t>& places) const {
    std::unordered_map<std::string_view, std::size_t> kept;  // by their ids
    if (!bases_.empty())
      for (std::size_t i = 0; i < places.size(); ++i) kept[batches_.all[places[i]].id] = i;
    std::vector<KeptBase> bases;
    for (const auto& [id, base] : bases_) {
      std::vector<std::size_t> lines;
      for (const std::string& line : base.lines)
        if (const auto at = kept.find(line); at != kept.end()) lines.push_back(at->second);
      if (lines.empty() || !base.batch) continue;
      std::sort(lines.begin(), lines.end());
      const std::size_t place = place_of(id);
      for (const PlannedBase& planned : plans_[batches_.all[place].plan].bases)
        if (std::find(planned.numbers.begin(), planned.numbers.end(), base.batch->number) !=
            planned.numbers.end())
          bases.push_back({*base.batch, planned, noted_[place].notes.copy(), lines});
    }
    return bases;
  }

  std::size_t place_of(const std::string& id) const {
    const auto at = std::lower_bound(
        batches_.all.begin(), batches_.all.end(), id,
        [](const records::BatchInBrief& batch, const std::string& its) { return batch.id < its; });
    return static_cast<std::size_t>(at - batches_.all.begin());
  }

  struct Base {
    std::optional<records::Batch> batch = {};
    std::vector<std::string> lines = {};  // the ids of what was poured from it
  };
  /// Of one batch.
  struct Noted {
    records::PackedNotes::Of notes;
    const std::vector<records::Weighing>* weighed = nullptr;
  };

  const records::Records& records_;
  records::BatchesInBrief batches_;
  std::vector<ReadPlan> plans_;
  std::optional<records::PackedNotes> notes_;
  std::map<std::string, std::vector<records::Weighing>> weighings_;
  std::map<std::string, Base> bases_;  // by their ids
  std::vector<Noted> noted_;           // as the batches
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
  for (std::size_t i = 0; i < kept.facts.size(); ++i) {
    if (renamed != nullptr)
      call_as_today(kept.facts[i], kept.hashes_of_sources[kept.sources[i]], *renamed);
    identify(identities, *kept.plans[i], kept.facts[i]);
  }
  if (today != nullptr) identify(identities, *today);
  std::size_t earlier = 0;
  for (std::size_t i = 0; i < kept.facts.size(); ++i)
    earlier += set_apart(kept.facts[i], *kept.plans[i], identities) ? 1 : 0;
  add_bases(kept);
  return {std::move(kept.facts), earlier};
}

}  // namespace brimwright::service
