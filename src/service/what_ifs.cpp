#include "service/what_ifs.h"

#include "days/schedule.h"
#include "planning/plan.h"
#include "service/day_batches.h"
#include "service/day_lyes.h"
#include "service/ordered.h"
#include "units/user_error.h"
#include "units/wording.h"

#include <algorithm>
#include <array>
#include <optional>
#include <utility>

namespace brimwright::service {
namespace {

using reports::DaysReport;
using std::chrono::hours;
using std::chrono::seconds;

constexpr std::array weekdays = {"Sunday",   "Monday", "Tuesday", "Wednesday",
                                 "Thursday", "Friday", "Saturday"};

class Trying {
 public:
  Trying(const DaysReport& report, const std::vector<DayFile>& files, const DayWork& work,
         const runs::StudioDays& studio, std::int64_t most_looks)
      : report_(report), files_(files), work_(work), studio_(studio), most_looks_(most_looks) {}

  std::vector<DaysReport::WhatIf> all() {
    moulds();
    vessels();
    making_days();
    hours_more();
    other_limits();
    std::stable_sort(helpful_.begin(), helpful_.end(), is_better);
    return std::move(helpful_);
  }

 private:
  static bool is_better(const DaysReport::WhatIf& a, const DaysReport::WhatIf& b) {
    if (a.keeps != b.keeps) return a.keeps;
    if (a.keeps) return a.start > b.start;
    return a.promise < b.promise;
  }

  /// Nothing where it does not help.
  std::optional<DaysReport::WhatIf> tried(const std::string& limit, const std::string& text,
                                          const days::Studio& studio,
                                          const std::vector<days::Delivery>& deliveries) const {
    DaysReport::WhatIf tried{.limit = limit, .text = text};
    if (report_.is_due) {
      const auto latest = days::latest_start(studio, deliveries, report_.from, most_looks_);
      if (latest.schedule) {
        tried.keeps = true;
        tried.start = latest.schedule->begin;
        tried.is_proved = latest.schedule->is_proved;
        if (!report_.is_kept || *tried.start > report_.schedule.begin) return tried;
      }
      if (report_.is_kept) return std::nullopt;
    }
    auto open = deliveries;
    for (auto& one : open) one.due.reset();
    const auto promise = days::earliest_promise(studio, open, report_.from, most_looks_);
    if (!promise || promise->due.front() >= report_.promise) return std::nullopt;
    tried.promise = promise->due.front();
    tried.is_proved = promise->is_proved;
    return tried;
  }

  bool add(const std::string& limit, const std::string& text, const days::Studio& studio,
           const std::vector<days::Delivery>& deliveries) {
    auto one = tried(limit, text, studio, deliveries);
    if (one) helpful_.push_back(std::move(*one));
    return one.has_value();
  }

  /// With one mould more the runs are planned anew: their batches may be larger. Those of runs that
  /// are poured together stay as they are.
  void moulds() {
    for (const auto& [file, at] : work_.moulds) {
      days::Studio studio = work_.studio;
      ++studio.moulds[at].owned;
      std::vector<days::Delivery> deliveries = work_.deliveries;
      try {
        for (auto& delivery : deliveries)
          for (std::size_t l = 0; l < delivery.lines.size(); ++l) {
            const DayLine& line = files_[delivery.asked].lines[l];
            if (!line.together && delivery.lines[l].batches.front().filled.front().mould == at)
              delivery.lines[l].batches =
                  with_one_mould_more(line.parts.front(), at, delivery.lines[l].lye, studio);
          }
      } catch (const UserError&) {
        continue;  // it cannot be planned so
      }
      add("moulds", "One more mould of " + studio.moulds[at].name, studio, deliveries);
    }
  }

  std::vector<days::Batch> with_one_mould_more(const DayPart& part, std::size_t mould,
                                               std::optional<std::size_t> lye,
                                               days::Studio& studio) const {
    planning::Run run = *part.run;
    ++run.pour.mould.owned;
    planning::BatchTrials trials(run, *part.measured);
    const auto plan = planning::amounts_for(part.plan->pieces.sell, run, *part.measured, trials);
    Trays trays = work_.trays;
    auto batches = day_batches(run, plan, mould, studio_, trays);
    studio.trays = trays.all;
    if (lye && studio_.one_lye) {  // larger batches take more of a pot
      int& in_pot = studio.lyes[*lye].batches_in_pot;
      in_pot = std::min(in_pot, batches_in_pot(run, plan, *studio_.one_lye));
    }
    return batches;
  }

  void vessels() {
    if (work_.studio.batches_a_day) {
      days::Studio studio = work_.studio;
      ++*studio.batches_a_day;
      add("pots", "One more batch a day, by another pot or washing up", studio, work_.deliveries);
    }
    if (work_.studio.whippings_a_day) {
      days::Studio studio = work_.studio;
      ++*studio.whippings_a_day;
      add("bowls", "One more whipping a day, by another bowl or washing up", studio,
          work_.deliveries);
    }
  }

  /// The shortest of the making days, on the weekday where it helps most.
  void making_days() {
    seconds shortest = hours(24);
    for (const seconds time : work_.studio.calendar.making)
      if (time.count() > 0) shortest = std::min(shortest, time);
    std::optional<DaysReport::WhatIf> best;
    for (std::size_t day = 0; day < weekdays.size(); ++day) {
      days::Studio studio = work_.studio;
      if (studio.calendar.making[day].count() > 0) continue;
      studio.calendar.making[day] = shortest;
      auto one = tried("making days",
                       std::string("One more making day, ") + weekdays[day] + " with " +
                           in_hours(std::chrono::floor<std::chrono::minutes>(shortest)),
                       studio, work_.deliveries);
      if (one && (!best || is_better(*one, *best))) best = std::move(one);
    }
    if (best) helpful_.push_back(std::move(*best));
  }

  void hours_more() {
    days::Studio studio = work_.studio;
    for (seconds& time : studio.calendar.making)
      if (time.count() > 0) time = std::min<seconds>(time + hours(1), hours(24));
    add("hours", "An hour more on each making day", studio, work_.deliveries);
  }

  void other_limits() {
    if (work_.studio.rack_places) {
      days::Studio studio = work_.studio;
      std::int64_t largest = 0;
      for (const auto& delivery : work_.deliveries)
        for (const auto& line : delivery.lines)
          for (const auto& batch : line.batches) largest = std::max(largest, batch.pieces);
      *studio.rack_places += largest;
      add("rack", counted(largest, "more place", "more places") + " on the curing rack", studio,
          work_.deliveries);
    }
    if (work_.studio.cast_ahead_at_most) {
      days::Studio studio = work_.studio;
      studio.cast_ahead_at_most.reset();
      add("casting", "Casting decorations as early as need be", studio, work_.deliveries);
    }
    std::vector<days::Delivery> bought = work_.deliveries;
    for (auto& delivery : bought) {
      delivery.pack_lead.reset();
      for (auto& line : delivery.lines) line.make_lead = line.cast_lead = std::nullopt;
    }
    add("lead times", "Everything bought already", work_.studio, bought);
    days::Studio trays = work_.studio;
    for (auto& tray : trays.trays) {
      if (!tray.is_counted) continue;
      tray.sets_in = tray.sets_in ? *tray.sets_in / 2 : seconds(hours(1));
    }
    if (!trays.trays.empty())
      add("trays", "Filling each tray twice as often", trays, work_.deliveries);
  }

  const DaysReport& report_;
  const std::vector<DayFile>& files_;
  const DayWork& work_;
  const runs::StudioDays& studio_;
  std::int64_t most_looks_;
  std::vector<DaysReport::WhatIf> helpful_;
};

}  // namespace

std::vector<DaysReport::WhatIf> what_ifs(const DaysReport& report,
                                         const std::vector<DayFile>& files, const DayWork& work,
                                         const runs::StudioDays& studio, std::int64_t most_looks) {
  return Trying(report, files, work, studio, most_looks).all();
}

}  // namespace brimwright::service
