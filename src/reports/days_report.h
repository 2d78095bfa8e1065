#pragma once

#include "chemistry/heat_findings.h"
#include "days/schedule.h"
#include "planning/day_lye.h"
#include "reports/csv_table.h"
#include "reports/day_lack.h"
#include "reports/drawing.h"
#include "reports/ready_report.h"
#include "reports/sheet_blocks.h"
#include "units/remark.h"
#include "units/temperature.h"

#include <chrono>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::reports {

/// When runs and orders are made.
struct DaysReport {
  /// A run of what is to be handed over, or several that are poured together.
  struct Line {
    std::vector<std::string> files;
    std::string name;
    std::vector<std::string> moulds;  // of each run
    std::int64_t sell = 0, make = 0;
    std::int64_t batches = 0;
    std::vector<std::string> batch_limits = {};  // that keep them from being larger, in words
  };
  /// An order or a run by itself, as it was asked about.
  struct Asked {
    std::string file, id, name;
    bool is_order = false;
    std::optional<days::Day> due;
    std::vector<Line> lines;  // of what is to make
    ReadyOrder ready = {};    // of an order: what is made already
    std::int64_t pieces = 0;  // sold, made already or not
    // Of one that cannot keep its due day: what is in time, and when the rest is ready.
    bool is_late = false;
    std::int64_t in_time = 0;
    std::optional<days::Day> rest = {};
    /// The last day on which a batch of it may be poured; with a due day.
    std::optional<days::Day> last_making_day = {};
  };
  /// What is ordered of one seller.
  struct Ordering {
    std::string seller;        // may be empty
    bool is_unlisted = false;  // of what no pack is listed
    std::vector<std::string> materials;
    std::size_t asked = 0;  // the first that needs it
    days::Day ordered, needed;
  };
  /// What another studio, or another run, would do; found by planning it.
  struct WhatIf {
    std::string limit;                                  // "moulds", "making days", "hours", ...
    std::string text;                                   // "One more Plain bar mould"
    bool keeps = false;                                 // all due days
    std::optional<days::Day> start = {}, promise = {};  // latest start; earliest promise
    bool is_proved = false;
  };
  /// Cavities of a mould that what is left of a batch's base would fill whole; of several for one
  /// batch, one or the other.
  struct Extra {
    std::string run, mould;
    std::int64_t batch = 0, cavities = 0;
  };

  /// One pot of lye for several batches of a day.
  struct Lye {
    days::Day made;  // on the evening of that day
    planning::PotOfBatch::For of = planning::PotOfBatch::For::base;
    planning::LyePot pot;
    std::optional<chemistry::HeatFindings> heat = {};
    std::optional<Temperature> used_at = {};
    Share ice_share = {};  // of its water, the least that one of the benches says
    /// Beside each of the pot's shares: for which batch of the schedule, and what is stirred into
    /// it.
    struct ForBatch {
      std::size_t batch = 0;
      std::vector<planning::Ingredient> additives = {};
    };
    std::vector<ForBatch> shares = {};

    /// Those of the schedule that it is for, in their order.
    std::vector<std::size_t> batches() const;
  };

  std::string studio_file;
  days::Day from;
  bool is_due = false;  // all have due days
  bool is_kept = false;
  std::vector<Asked> asked;
  days::Studio studio;
  std::vector<days::Delivery> deliveries;  // as scheduled: what is late is parted
  days::Schedule schedule;
  /// Beginning today, the day for which all can be promised.
  days::Day promise = {};
  bool is_promise_proved = false;
  bool is_parting_proved = false;
  std::vector<Ordering> ordering = {};
  std::vector<WhatIf> what_ifs = {};  // the most helpful first
  std::vector<Lye> lyes = {};
  std::vector<Extra> extras = {};
  std::vector<Remark> notes = {};
  std::vector<DayLack> lacks = {};
};

/// "Plain bars, batches 1 and 2 of 3": what that pot of lye is for.
std::string whom_for(const DaysReport::Lye& lye, const DaysReport& report);
/// What holds of that pot and is told beside its weights: dangers first.
std::vector<Remark> remarks_of(const DaysReport::Lye& lye);

/// Whether a batch of that run's file shares a lye.
bool shares_lye(const DaysReport& report, const std::string& file);

/// What is done on a day, ready to be told.
struct DayEntry {
  /// In the order of a day; what is cut the day it is poured comes after it is made.
  enum class Act : std::uint8_t {
    due,
    order,
    unmould,
    cured,
    pack,
    make,
    unmould_fresh,
    cast,
    chill
  };
  days::Day day;
  Act act;
  std::size_t asked = 0;
  std::string key;                      // stays the same when the day changes: "make-1-2"
  std::string text;                     // one line
  std::vector<std::string> files = {};  // of the runs; none of what is done for all of it
  std::vector<std::int64_t> batches = {};
  std::int64_t pieces = 0;
  std::chrono::seconds time{};  // of the day's hours
  std::string caution = {};
  std::optional<std::size_t> lye = {};  // of the report's, where that is what is made
};
std::string name_of(DayEntry::Act act);  // "order", "cast"

/// All that is done, day by day in the order of the work.
std::vector<DayEntry> entries_of(const DaysReport& report);

/// "Fri 2026-11-20".
std::string weekday_and_date(days::Day day);

std::string days_text(const DaysReport& report);
std::string days_json(const DaysReport& report);
std::string days_csv(const DaysReport& report, DecimalMark mark);
/// A strip of the days from the first to the last, to scale: a column for each day, hours used and
/// free, moulds that are locked, what cures.
Drawing days_drawing(const DaysReport& report);
std::string days_picture(const DaysReport& report);
/// The days to tick off, with that strip.
Sheet days_sheet(const DaysReport& report, const std::string& printed_at);

}  // namespace brimwright::reports
