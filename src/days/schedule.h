#pragma once

#include "days/work.h"

#include <chrono>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

namespace brimwright::days {

/// A batch on its days.
struct ScheduledBatch {
  std::size_t delivery = 0, line = 0, batch = 0;
  std::optional<Day> chilled = {};  // fats and lye set cold, or one lye made for several batches
  Day poured, unmoulded, cured;
  bool takes_lye_of_another = false;  // of the pot that another's work counts
};
/// One lye for several batches, by their places in the schedule.
struct ScheduledLye {
  std::vector<std::size_t> batches;  // in the order of their lines and numbers
  Day made;
};
/// Fillings of a tray on one day, for a batch by its place in the schedule.
struct ScheduledCasts {
  std::size_t batch = 0, tray = 0;
  Day day;
  int count = 0;
};
struct ScheduledPacking {
  std::size_t delivery = 0;
  Day day;
  std::chrono::seconds time;
};

/// All that is to be made, on days from `begin` on, each delivery ready for its due day.
struct Schedule {
  Day begin;
  std::vector<Day> due;
  bool is_proved =
      false;  // that it can neither begin later nor be due earlier, whichever was asked
  std::vector<ScheduledBatch> batches = {};  // by day
  std::vector<ScheduledCasts> casts = {};    // by day
  std::vector<ScheduledPacking> packing = {};
  std::vector<ScheduledLye> lyes = {};  // by day

  /// The last day on which a batch of a line may be poured, were there nothing else to do.
  struct LastDay {
    std::size_t delivery = 0, line = 0;
    Day day;
  };
  std::vector<LastDay> last_days = {};

  /// The days of ordering: the last that is early enough for what is used first.
  struct Ordering {
    std::size_t delivery = 0, line = 0;
    enum class For : std::uint8_t { casts, batch, packing } what = For::batch;
    Day ordered, needed;
  };
  std::vector<Ordering> ordering = {};  // as the leads of lines and deliveries ask for
};

/// How far a search goes before it is given up: of 1,500 studios that chance made, up to four
/// moulds and eight batches, none needed as much.
inline constexpr std::int64_t usual_looks = 200'000;

/// The latest day, `from` or later, on which the work can begin so that each delivery keeps its
/// due day; nothing where none is found. `is_impossible` then tells whether that is proved.
struct LatestStart {
  std::optional<Schedule> schedule;
  bool is_impossible = false;
};
LatestStart latest_start(const Studio& studio, const std::vector<Delivery>& deliveries, Day from,
                         std::int64_t most_looks = usual_looks);

/// A batch that no day takes, were it the only one: nothing is ever ready with it.
struct NeverMade {
  std::size_t delivery = 0, line = 0, batch = 0;
};
std::optional<NeverMade> never_made(const Studio& studio, const std::vector<Delivery>& deliveries,
                                    Day from);

/// The earliest day, at most five years on, for which what has no due day can be promised if the
/// work begins on `from`, while what has one keeps it.
std::optional<Schedule> earliest_promise(const Studio& studio,
                                         const std::vector<Delivery>& deliveries, Day from,
                                         std::int64_t most_looks = usual_looks);

/// As much as there are pieces by the due day of `late`, of its batches whole ones alone, while all
/// others keep theirs; and the earliest day for the rest.
struct Parted {
  std::vector<std::vector<std::size_t>> kept;  // batches of each line of `late` that are in time
  std::int64_t pieces_kept = 0, pieces = 0;    // sold
  bool keeps_ready = false;                    // what is made already is in time
  std::optional<Schedule> schedule;  // `late` is parted in two deliveries there, the rest last
  bool is_proved = false;
};
Parted parted(const Studio& studio, const std::vector<Delivery>& deliveries, std::size_t late,
              Day from, std::int64_t most_looks = usual_looks);

/// The deliveries that `Parted::schedule` is of: those given, and the rest of `late`.
std::vector<Delivery> parted_deliveries(const std::vector<Delivery>& deliveries, std::size_t late,
                                        const std::vector<std::vector<std::size_t>>& kept,
                                        bool keeps_ready);

}  // namespace brimwright::days
