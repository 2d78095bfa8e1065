#include "service/day_work.h"

#include "reports/bench_sheet.h"
#include "runs/studio_file.h"
#include "service/day_batches.h"
#include "service/day_lyes.h"
#include "service/day_notes.h"
#include "service/like_moulds.h"
#include "service/line_times.h"
#include "service/ordered.h"
#include "units/reading.h"
#include "units/wording.h"

#include <algorithm>
#include <utility>

namespace brimwright::service {
namespace {

class Gathering {
 public:
  Gathering(const runs::StudioDays& studio, const moulds::Library& library)
      : studio_(studio), library_(library) {
    days::Studio& of = work_.studio;
    of.calendar = studio.calendar;
    of.batches_a_day = studio.batches_a_day;
    of.whippings_a_day = studio.whippings_a_day;
    of.rack_places = studio.rack_places;
    of.cast_ahead_at_most = studio.cast_ahead_at_most;
    of.each_tray_fill = studio.each_tray_fill;
    of.each_piece_packed = studio.each_piece_packed;
  }

  DayWork work(const std::vector<DayFile>& files) {
    for (std::size_t i = 0; i < files.size(); ++i) {
      days::Delivery delivery{.asked = i, .name = files[i].name, .lines = {}};
      delivery.due = files[i].due;
      delivery.pack_lead = files[i].pack_lead;
      take_ready(delivery, files[i].ready);
      for (const DayLine& line : files[i].lines) delivery.lines.push_back(line_of(line));
      work_.deliveries.push_back(std::move(delivery));
    }
    work_.studio.trays = work_.trays.all;
    const std::string first = files.front().run_files().front();
    count_like_moulds(work_, used_, runs::studio_for(first, library_), library_);
    share_lyes(work_, files, studio_);
    note_what_is_missing(work_, studio_, files);
    return std::move(work_);
  }

 private:
  static void take_ready(days::Delivery& delivery, const reports::ReadyOrder& ready) {
    delivery.ready = ready.taken();
    for (const reports::ReadyLine& line : ready.lines)
      for (const reports::ReadyBatch& batch : line.batches)
        if (batch.ready_on) {
          const days::Day day = read_date(*batch.ready_on, {});
          delivery.ready_on = std::max(delivery.ready_on.value_or(day), day);
        }
  }

  days::Line line_of(const DayLine& line) {
    days::Line days{.name = line.name(), .batches = {}};
    set_times(days, line);
    std::vector<std::size_t> moulds;
    for (const DayPart& part : line.parts) {
      moulds.push_back(mould_of(*part.run));
      days.is_chilled |= reports::is_begun_the_day_before(*part.run, *part.plan);
    }
    if (line.together)
      days.is_chilled |= reports::is_begun_the_day_before(line.together->run, line.together->plan);
    days.batches = day_batches(line, moulds, studio_, work_.trays);
    days.make_lead = line.make_lead;
    days.cast_lead = line.cast_lead;
    return days;
  }

  std::size_t mould_of(const planning::Run& run) {
    const moulds::Mould& mould = run.pour.mould;
    const std::string file = one_name_of(mould.file);
    const auto [known, is_new] = work_.moulds.emplace(file, work_.studio.moulds.size());
    if (is_new) {
      work_.studio.moulds.push_back(
          {.name = mould.name, .owned = mould.owned, .cavities = mould.cavities});
      used_[file] = &mould;
    } else if (work_.studio.moulds[known->second].owned != mould.owned) {
      throw UserError(run.place("/pour/moulds_owned"),
                      "counts " + counted(mould.owned, "mould") + " of \"" + mould.name +
                          "\", and another run " +
                          std::to_string(work_.studio.moulds[known->second].owned),
                      "say it once, in the studio, for all runs");
    }
    return known->second;
  }

  const runs::StudioDays& studio_;
  const moulds::Library& library_;
  DayWork work_;
  std::map<std::string, const moulds::Mould*> used_;
};

}  // namespace

DayWork day_work(const std::vector<DayFile>& files, const runs::StudioDays& studio,
                 const moulds::Library& library) {
  return Gathering(studio, library).work(files);
}

}  // namespace brimwright::service
