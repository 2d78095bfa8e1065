#include "service/day_work.h"

#include "moulds/mould_file.h"
#include "planning/hours_in_mould.h"
#include "reports/bench_sheet.h"
#include "runs/studio_file.h"
#include "service/ordered.h"
#include "units/rounding.h"
#include "units/wording.h"
#include "units/written_number.h"

#include <algorithm>
#include <cmath>
#include <utility>
#include <variant>

namespace brimwright::service {
namespace {

using std::chrono::ceil;
using std::chrono::floor;
using std::chrono::hours;
using std::chrono::minutes;
using std::chrono::seconds;

Place place_in(const chemistry::Formula& formula, const char* pointer) {
  return {formula.file, formula.spelling.pointer(pointer)};
}

std::vector<const chemistry::Formula*> formulas_of(const planning::Run& run) {
  std::vector<const chemistry::Formula*> formulas = {&run.pour.formula};
  if (run.pipe) formulas.push_back(&run.pipe->formula);
  return formulas;
}

/// The longest of the parts, in whole days.
int cure_days(const planning::Run& run) {
  int longest = 0;
  for (const auto* formula : formulas_of(run)) {
    if (!formula->cure)
      throw UserError(place_in(*formula, "/cure"), "is missing, so nothing made of it gets a day",
                      "give how long it cures, such as \"35 days\"");
    longest = std::max(longest, static_cast<int>(ceil<std::chrono::days>(*formula->cure).count()));
  }
  return longest;
}

minutes unmould_after(const planning::Run& run) {
  const auto given = planning::hours_in_mould(run);
  if (!given)
    throw UserError(place_in(run.pour.formula, "/unmould_after"),
                    "is missing, and " + run.pour.mould.file + " does not give it either",
                    "give how long the soap stays in the mould, such as \"24 h\", in one of them");
  return *given;
}

std::optional<minutes> cut_within(const planning::Run& run, minutes unmould) {
  if (!run.cut) return std::nullopt;
  std::optional<minutes> shortest;
  const chemistry::Formula* of = nullptr;
  for (const auto* formula : formulas_of(run))
    if (formula->cut_within && (!shortest || *formula->cut_within < *shortest)) {
      shortest = formula->cut_within;
      of = formula;
    }
  if (!shortest) return std::nullopt;
  const auto refuse = [&](const std::string& problem) {
    throw UserError(place_in(*of, "/cut_within"), problem,
                    "give a longer time, or a shorter \"unmould_after\"");
  };
  const std::string then = in_hours(unmould) + " in the mould";
  if (*shortest < unmould) refuse("is over before it has been " + then);
  const bool is_same_day = *shortest < hours(24);
  if (!is_same_day && ceil<std::chrono::days>(unmould) > floor<std::chrono::days>(*shortest))
    refuse("leaves no whole day after " + then);
  return shortest;
}

/// Beside what each batch takes: for the pieces, and for what is melted and run over them.
seconds work_on(const planning::Batch& batch, const planning::Run& run,
                const runs::StudioDays& studio) {
  seconds work = batch.pieces * studio.each_piece_made;
  for (const auto& decoration : run.decorations)
    if (std::holds_alternative<planning::Drizzle>(decoration.made)) work += studio.each_tray_fill;
  return work;
}

int whippings_of(const planning::Batch& batch) {
  std::int64_t count = 0;
  for (const auto& whipping : batch.whippings) count += whipping.count;
  return static_cast<int>(count);
}

std::size_t tray_of(const planning::Decoration& decoration, Trays& trays, const Place& where) {
  const auto* cast = std::get_if<planning::InMould>(&decoration.made);
  const std::string file = cast ? one_name_of(cast->mould.file) : "rods of " + decoration.name;
  const auto known = std::find(trays.files.begin(), trays.files.end(), file);
  const auto at = static_cast<std::size_t>(known - trays.files.begin());
  if (known == trays.files.end()) {
    trays.files.push_back(file);
    trays.all.push_back(
        {.name = cast ? cast->mould.name : decoration.name, .is_counted = cast != nullptr});
  }
  const auto& time = decoration.time_per_tray_fill;
  if (time && *time > hours(24))
    throw UserError(where, "is more than a day, and a tray is filled at least once a day here",
                    "give the time until the tray can be filled again");
  auto& sets_in = trays.all[at].sets_in;
  if (time) sets_in = std::max(sets_in.value_or(seconds{}), *time);
  return at;
}

/// The share of the run's casts that a batch needs, in fillings of its own.
int fills_for(const planning::DecorationTally& tally, const planning::Decoration& decoration,
              std::int64_t pieces, std::int64_t of) {
  const double share = static_cast<double>(pieces) / static_cast<double>(of);
  const auto* cast = std::get_if<planning::InMould>(&decoration.made);
  if (!cast) return static_cast<int>(whole_up(share * static_cast<double>(tally.tray_fills)));
  const auto halves = tally.casts == 0 ? 1 : tally.cavity_fills / tally.casts;
  const std::int64_t casts = whole_up(share * static_cast<double>(tally.casts));
  const double in_trays = static_cast<double>(cast->mould.cavities) * cast->mould.owned;
  return static_cast<int>(whole_up(static_cast<double>(casts * halves) / in_trays));
}

std::int64_t pieces_of(const planning::Plan& plan) {
  std::int64_t all = 0;
  for (const auto& batch : plan.batches) all += batch.count() * batch.pieces;
  return all;
}

void add_fills(days::Batch& to, const planning::Run& run, const planning::Plan& plan,
               std::int64_t pieces, Trays& trays) {
  for (std::size_t i = 0; i < run.decorations.size(); ++i) {
    const auto& decoration = run.decorations[i];
    if (std::holds_alternative<planning::Drizzle>(decoration.made)) continue;
    if (planning::is_bought(decoration)) continue;
    const Place where = run.place("/decorations/" + std::to_string(i) + "/time_per_tray_fill");
    const int count = fills_for(plan.decorations[i], decoration, pieces, pieces_of(plan));
    if (count > 0) to.fills.push_back({tray_of(decoration, trays, where), count});
  }
}

/// Runs that are poured together share moulds of one kind.
void fill(days::Batch& to, std::size_t mould, std::int64_t casts) {
  const auto known =
      std::find_if(to.filled.begin(), to.filled.end(),
                   [&](const days::Filled& filled) { return filled.mould == mould; });
  if (known == to.filled.end())
    to.filled.push_back({mould, casts});
  else
    known->casts += casts;
}

/// A batch of a plan's, on top of what `to` has already.
void add(days::Batch& to, const planning::Run& run, const planning::Plan& plan,
         const planning::Batch& batch, std::size_t mould, const runs::StudioDays& studio,
         Trays& trays) {
  fill(to, mould, batch.casts);
  to.pieces += batch.pieces;
  to.work += work_on(batch, run, studio);
  to.whippings += whippings_of(batch);
  add_fills(to, run, plan, batch.pieces, trays);
}

void in_order_of_making(std::vector<days::Batch>& batches) {
  std::sort(batches.begin(), batches.end(),
            [](const auto& a, const auto& b) { return a.number < b.number; });
}

/// What is sold of each batch: of all pieces, as they come.
void share_sold(std::vector<days::Batch>& batches, std::int64_t sell) {
  std::int64_t all = 0, made = 0, sold = 0;
  for (const auto& batch : batches) all += batch.pieces;
  for (auto& batch : batches) {
    made += batch.pieces;
    batch.sold = sell * made / all - sold;
    sold += batch.sold;
  }
}

std::int64_t sell_of(const DayLine& line) {
  std::int64_t sell = 0;
  for (const DayPart& part : line.parts) sell += part.plan->pieces.sell;
  return sell;
}

/// The batches of a base that is poured for several runs.
std::vector<days::Batch> together_batches(const DayLine& line,
                                          const std::vector<std::size_t>& moulds,
                                          const runs::StudioDays& studio, Trays& trays) {
  const planning::Together& together = *line.together;
  std::vector<days::Batch> batches;
  for (std::size_t b = 0; b < together.batches.size(); ++b) {
    days::Batch one{.filled = {}, .work = studio.each_batch};
    std::size_t part = 0;
    for (std::size_t l = 0; l < line.parts.size(); ++l) {
      const auto& parts = together.batches[b].parts;
      if (part < parts.size() && parts[part].line == l)
        add(one, *line.parts[l].run, *line.parts[l].plan,
            line.parts[l].plan->batches[parts[part++].batch], moulds[l], studio, trays);
      else
        fill(one, moulds[l], 0);  // this batch has nothing of it
    }
    for (const std::int64_t number : together.plan.batches[b].numbers) {
      batches.push_back(one);
      batches.back().number = number;
    }
  }
  in_order_of_making(batches);
  share_sold(batches, sell_of(line));
  return batches;
}

bool are_like(const moulds::Mould& one, const moulds::Mould& other) {
  constexpr double apart = 0.01;
  const auto within = [](double a, double b) { return std::abs(a - b) <= apart * std::max(a, b); };
  if (one.cavities != other.cavities) return false;
  const Length high = one.curve.height();
  if (!within(high / millimetre, other.curve.height() / millimetre)) return false;
  for (const double share : {0.25, 0.5, 0.75, 1.0})
    if (!within(one.curve.volume_below(share * high) / millilitre,
                other.curve.volume_below(share * high) / millilitre))
      return false;
  return true;
}

/// Counts the studio's like moulds with those that runs use.
class Likes {
 public:
  Likes(DayWork& work, const moulds::Library& library) : work_(work), library_(library) {}

  void count(const std::map<std::string, const moulds::Mould*>& used, const runs::Studio& studio) {
    const auto owned = studio.section("moulds_owned");
    if (!owned) return;
    for (const std::string& name : owned->keys()) {
      const auto mould = mould_named(name, owned->place(name));
      if (!mould || used.contains(one_name_of(mould->file))) continue;
      for (const auto& [file, own] : used)
        if (are_like(*own, *mould)) {
          add(work_.studio.moulds[work_.moulds.at(file)], *mould,
              static_cast<int>(owned->whole_number(name, 1, 1000)));
          break;  // no mould counts with two
        }
    }
  }

 private:
  std::optional<moulds::Mould> mould_named(const std::string& name, const Place& where) const {
    try {
      return moulds::read_mould(library_.resolve(name, where), library_);
    } catch (const UserError&) {
      return std::nullopt;  // none of the runs needs it
    }
  }

  void add(days::Mould& to, const moulds::Mould& like, int count) {
    to.owned += count;
    work_.notes.push_back({Severity::note, "\"" + like.name + "\" counts with \"" + to.name +
                                               "\": a cavity holds the same within 1 %. " +
                                               counted(to.owned, "mould") + " in all."});
  }

  DayWork& work_;
  const moulds::Library& library_;
};

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
      for (const DayLine& line : files[i].lines) delivery.lines.push_back(line_of(line));
      work_.deliveries.push_back(std::move(delivery));
    }
    work_.studio.trays = work_.trays.all;
    Likes(work_, library_)
        .count(used_, runs::studio_for(files.front().lines.front().parts.front().file, library_));
    note_what_is_missing(files);
    return std::move(work_);
  }

 private:
  /// Of several that are poured together, each waits as long as the one that takes longest.
  days::Line line_of(const DayLine& line) {
    days::Line days{.name = line.name(), .batches = {}};
    std::vector<std::size_t> moulds;
    for (const DayPart& part : line.parts) {
      const planning::Run& run = *part.run;
      moulds.push_back(mould_of(run));
      const minutes unmould = unmould_after(run);
      days.unmould_after = std::max(days.unmould_after, unmould);
      if (const auto within = cut_within(run, unmould))
        days.cut_within = std::min(days.cut_within.value_or(*within), *within);
      days.is_cut |= run.cut.has_value();
      days.cure_days = std::max(days.cure_days, cure_days(run));
      days.is_chilled |= reports::is_begun_the_day_before(run, *part.plan);
    }
    if (line.together)
      days.is_chilled |= reports::is_begun_the_day_before(line.together->run, line.together->plan);
    days.batches = line.together ? together_batches(line, moulds, studio_, work_.trays)
                                 : day_batches(*line.parts.front().run, *line.parts.front().plan,
                                               moulds.front(), studio_, work_.trays);
    days.make_lead = line.make_lead;
    days.cast_lead = line.cast_lead;
    refuse_no_day_to_cut(line, days);
    return days;
  }

  /// The knife comes in time for each by itself; here for all of them at once.
  void refuse_no_day_to_cut(const DayLine& line, const days::Line& days) const {
    if (!days.cut_within) return;
    const bool is_same_day = *days.cut_within < hours(24);
    if (*days.cut_within >= days.unmould_after &&
        (is_same_day ||
         ceil<std::chrono::days>(days.unmould_after) <= floor<std::chrono::days>(*days.cut_within)))
      return;
    throw UserError(line.parts.front().run->place("/pour/formula"),
                    "is poured together with what stays longer in its mould than it may wait to "
                    "be cut",
                    "pour it by itself");
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
                      "say it once, under \"moulds_owned\" of the studio");
    }
    return known->second;
  }

  void note(const std::string& text) { work_.notes.push_back({Severity::note, text}); }
  void caution(const std::string& text) { work_.notes.push_back({Severity::caution, text}); }

  void note_what_is_missing(const std::vector<DayFile>& files) {
    if (studio_.each_piece_packed.count() == 0)
      caution(
          "The studio gives no time for packing (\"work\", \"each_piece_packed\"): packing is put "
          "on the last making day and takes none of its hours.");
    if (!work_.studio.trays.empty() && studio_.each_tray_fill.count() == 0)
      caution(
          "The studio gives no time for filling a tray (\"work\", \"each_tray_fill\"): casting "
          "takes none of a day's hours.");
    for (const auto& tray : work_.studio.trays) {
      if (!tray.is_counted)
        note("How many tubes you have for \"" + tray.name +
             "\" is not known: only your time limits how many are cast on a day.");
      else if (!tray.sets_in)
        note("How long \"" + tray.name +
             "\" sets is not given (\"time_per_tray_fill\"): it is filled once a day.");
    }
    if (!studio_.batches_a_day)
      note(
          "The studio does not say how many pots it owns (\"days\", \"pots_owned\"): only the "
          "hours "
          "limit the batches of a day.");
    const auto pipes = [](const DayPart& part) { return part.run->pipe.has_value(); };
    bool is_piped = false;
    for (const DayFile& file : files)
      for (const DayLine& line : file.lines)
        is_piped |= std::any_of(line.parts.begin(), line.parts.end(), pipes);
    if (is_piped && !studio_.whippings_a_day)
      note(
          "The studio does not say how many bowls it owns (\"days\", \"bowls_owned\"): only the "
          "hours limit the whippings of a day.");
    if (!studio_.rack_places)
      note(
          "The studio does not say how many pieces its rack holds (\"days\", \"rack_places\"): the "
          "room to cure is not checked.");
  }

  const runs::StudioDays& studio_;
  const moulds::Library& library_;
  DayWork work_;
  std::map<std::string, const moulds::Mould*> used_;
};

}  // namespace

std::string DayLine::name() const {
  std::string name;
  for (const DayPart& part : parts) name += (name.empty() ? "" : " + ") + part.run->name;
  return name;
}

Materials DayFile::materials() const {
  return order ? materials_in(runs, *order) : materials_in(alone->run, alone->plan);
}

std::vector<days::Batch> day_batches(const planning::Run& run, const planning::Plan& plan,
                                     std::size_t mould, const runs::StudioDays& studio,
                                     Trays& trays) {
  std::vector<days::Batch> batches;
  for (const auto& batch : plan.batches) {
    days::Batch one{.filled = {}, .work = studio.each_batch};
    add(one, run, plan, batch, mould, studio, trays);
    for (const std::int64_t number : batch.numbers) {
      batches.push_back(one);
      batches.back().number = number;
    }
  }
  in_order_of_making(batches);
  share_sold(batches, plan.pieces.sell);
  return batches;
}

DayWork day_work(const std::vector<DayFile>& files, const runs::StudioDays& studio,
                 const moulds::Library& library) {
  return Gathering(studio, library).work(files);
}

}  // namespace brimwright::service
