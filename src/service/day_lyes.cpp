#include "service/day_lyes.h"

#include "planning/day_lye.h"
#include "planning/lye_pot.h"
#include "service/lye_gate.h"
#include "units/printing.h"
#include "units/wording.h"

#include <algorithm>
#include <iterator>
#include <stdexcept>
#include <string>
#include <utility>

namespace brimwright::service {
namespace {

using planning::PotOfBatch;

/// The run and plan whose batches a line is made in.
struct Mixing {
  const planning::Run& run;
  const planning::Plan& plan;
};
Mixing mixing_of(const DayLine& line) {
  if (line.together) return {line.together->run, line.together->plan};
  return {*line.parts.front().run, *line.parts.front().plan};
}

/// The pot of its base, or of all.
PotOfBatch first_pot(const Mixing& mixing, const planning::Batch& batch) {
  return planning::pots_of(mixing.run, batch).front();
}

std::string why_its_own(const Mixing& mixing) {
  for (const auto& batch : mixing.plan.batches)
    if (std::string why = planning::keeps_its_own(first_pot(mixing, batch)); !why.empty())
      return why;
  return "";
}

std::string why_its_own(const planning::Run& run, const planning::Plan& plan,
                        const runs::OneLye& one_lye) {
  if (std::string why = why_its_own({run, plan}); !why.empty()) return why;
  if (service::batches_in_pot(run, plan, one_lye) > 1) return "";
  return "a pot of " + trimmed(one_lye.holds / litre, 2) +
         " l, half full, does not hold that of two";
}

bool are_the_same(const planning::Scale& one, const planning::Scale& other) {
  return one.step == other.step && one.most == other.most;
}
bool are_the_same(const planning::Scales& one, const planning::Scales& other) {
  return are_the_same(one.large, other.large) && are_the_same(one.fine, other.fine);
}

bool take_the_same_lye(const DayLine& one, const DayLine& other) {
  const Mixing ours = mixing_of(one), its = mixing_of(other);
  return are_the_same(ours.run.scales, its.run.scales) &&
         planning::take_the_same_lye(first_pot(ours, ours.plan.batches.front()),
                                     first_pot(its, its.plan.batches.front()));
}

/// Gives each line the kind of its lye.
class Kinds {
 public:
  Kinds(DayWork& work, const runs::OneLye& one_lye) : work_(work), one_lye_(one_lye) {}

  void tell(days::Line& line, const DayLine& of) {
    const auto [run, plan] = mixing_of(of);
    if (const std::string why = why_its_own(run, plan, one_lye_); !why.empty())
      return note(line.name + ": each batch has a lye solution of its own, as " + why + ".");
    const int in_pot = service::batches_in_pot(run, plan, one_lye_);
    auto& lyes = work_.studio.lyes;
    const auto known = std::find_if(kinds_.begin(), kinds_.end(), [&](const DayLine* other) {
      return take_the_same_lye(*other, of);
    });
    line.lye = static_cast<std::size_t>(known - kinds_.begin());
    if (known == kinds_.end()) {
      kinds_.push_back(&of);
      lyes.push_back({in_pot});
    }
    lyes[*line.lye].batches_in_pot = std::min(lyes[*line.lye].batches_in_pot, in_pot);
  }

 private:
  void note(const std::string& text) { work_.notes.push_back({Severity::note, text}); }

  DayWork& work_;
  const runs::OneLye& one_lye_;
  std::vector<const DayLine*> kinds_;  // the first line of each
};

const planning::Batch& batch_of(const planning::Plan& plan, std::int64_t number) {
  for (const auto& batch : plan.batches)
    if (std::find(batch.numbers.begin(), batch.numbers.end(), number) != batch.numbers.end())
      return batch;
  throw std::logic_error("a batch is scheduled that is not planned");
}

std::int64_t batches_in(const planning::Plan& plan) {
  std::int64_t count = 0;
  for (const auto& batch : plan.batches) count += batch.count();
  return count;
}

std::vector<planning::Ingredient> into_lye(const planning::Weighing& weighing) {
  std::vector<planning::Ingredient> all;
  std::copy_if(weighing.ingredients.begin(), weighing.ingredients.end(), std::back_inserter(all),
               [](const planning::Ingredient& i) {
                 return i.role == planning::Role::additive && i.goes_into == "lye";
               });
  return all;
}

/// The lyes of batches that share that of their bases.
class Sharing {
 public:
  Sharing(const reports::DaysReport& report, const std::vector<DayFile>& files,
          const days::ScheduledLye& lye, const runs::OneLye& one_lye)
      : made_(lye.made), one_lye_(one_lye) {
    for (const std::size_t b : lye.batches) {
      const auto& one = report.schedule.batches[b];
      const auto& delivery = report.deliveries[one.delivery];
      const std::int64_t number = delivery.lines[one.line].batches[one.batch].number;
      const DayLine& line = files[delivery.asked].lines[one.line];
      const auto [run, plan] = mixing_of(line);
      scales_ = run.scales;
      const std::string name =
          line.name() + (batches_in(plan) == 1 ? "" : ", batch " + std::to_string(number));
      for (PotOfBatch& pot : planning::pots_of(run, batch_of(plan, number)))
        put({b, name, std::move(pot)});
    }
  }

  std::vector<reports::DaysReport::Lye> weighed() const {
    std::vector<reports::DaysReport::Lye> lyes;
    for (const auto& pot : pots_)
      if (pot.size() > 1) lyes.push_back(weighed(pot));
    return lyes;
  }

 private:
  struct OfBatch {
    std::size_t scheduled;
    std::string name;
    PotOfBatch pot;
  };

  /// With those that take the same lye.
  void put(OfBatch one) {
    if (!planning::keeps_its_own(one.pot).empty()) return;
    for (auto& pot : pots_)
      if (planning::take_the_same_lye(pot.front().pot, one.pot)) {
        pot.push_back(std::move(one));
        return;
      }
    pots_.emplace_back();
    pots_.back().push_back(std::move(one));
  }

  reports::DaysReport::Lye weighed(const std::vector<OfBatch>& all) const {
    const PotOfBatch& first = all.front().pot;
    std::vector<planning::PotBatter> batters;
    std::vector<chemistry::HeatQuestion> benches;
    reports::DaysReport::Lye lye{.made = made_, .of = first.what, .pot = {}};
    for (const OfBatch& one : all)
      for (const auto& [formula, weighing, called] : one.pot.batters) {
        const std::string batter = called.empty() ? formula.name : called;
        batters.push_back({formula, weighing, one.name + ": " + batter});
        lye.shares.push_back({one.scheduled, into_lye(weighing)});
        benches.push_back(one.pot.temperatures);
      }
    lye.pot = planning::lye_pot(batters, scales_, {one_lye_.where, one_lye_.pot_tare});
    pass_pot_gate(batters, lye.pot, one_lye_.where);
    for (const auto& share : lye.pot.shares)
      if (share.superfat.low < Share{} && share.alarms.empty())
        throw std::logic_error("a superfat that may come out below zero is not told");
    lye.heat = planning::heat_of_day_pot(benches, first.batters.front().formula, lye.pot);
    lye.used_at = first.temperatures.lye_used_at;
    lye.ice_share =
        std::min_element(benches.begin(), benches.end(), [](const auto& a, const auto& b) {
          return a.ice_share < b.ice_share;
        })->ice_share;
    return lye;
  }

  days::Day made_;
  const runs::OneLye& one_lye_;
  planning::Scales scales_ = {};
  std::vector<std::vector<OfBatch>> pots_;
};

}  // namespace

void share_lyes(DayWork& work, const std::vector<DayFile>& files, const runs::StudioDays& studio) {
  if (!studio.one_lye) return;
  work.studio.each_lye = studio.one_lye->saves;
  Kinds kinds(work, *studio.one_lye);
  for (std::size_t d = 0; d < work.deliveries.size(); ++d)
    for (std::size_t l = 0; l < work.deliveries[d].lines.size(); ++l)
      kinds.tell(work.deliveries[d].lines[l], files[d].lines[l]);
}

std::optional<reports::LyeOfDay> lye_of_day(const planning::Run& run, const planning::Plan& plan,
                                            const runs::Studio& studio) {
  const auto days = studio.section("days");
  if (!days || days->is_empty("one_lye_a_day")) return std::nullopt;
  try {
    if (const auto one_lye = runs::one_lye_of(studio))
      return reports::LyeOfDay{why_its_own(run, plan, *one_lye)};
  } catch (const UserError&) {
    // What is wrong there is told with the days; until then nobody knows that it is not shared.
  }
  return reports::LyeOfDay{why_its_own({run, plan})};
}

int batches_in_pot(const planning::Run& run, const planning::Plan& plan,
                   const runs::OneLye& one_lye) {
  constexpr std::int64_t most = 1000;  // beyond any day
  std::int64_t least = most;
  for (const auto& batch : plan.batches)
    least = std::min(least, planning::batches_in_pot(one_lye.holds, planning::pots_of(run, batch)));
  return static_cast<int>(std::max<std::int64_t>(1, least));
}

std::vector<reports::DaysReport::Lye> day_lyes(const reports::DaysReport& report,
                                               const std::vector<DayFile>& files,
                                               const runs::OneLye& one_lye) {
  std::vector<reports::DaysReport::Lye> all;
  for (const days::ScheduledLye& lye : report.schedule.lyes)
    for (auto& one : Sharing(report, files, lye, one_lye).weighed()) all.push_back(std::move(one));
  return all;
}

}  // namespace brimwright::service
