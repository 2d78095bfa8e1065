#pragma once

#include "days/calendar.h"
#include "runs/studio_file.h"
#include "units/quantity.h"
#include "units/user_error.h"

#include <chrono>
#include <cstdint>
#include <optional>

namespace brimwright::runs {

/// One pot of lye for several batches of a day.
struct OneLye {
  Place where;                        // for complaints
  Volume holds;                       // the pot, to its rim
  std::optional<Mass> pot_tare = {};  // the empty pot, where the full one is weighed with it
  std::chrono::seconds saves{};       // of the time of each batch but the first
};

/// What a studio says of its days, and of the time that work takes.
struct StudioDays {
  days::Calendar calendar;
  std::optional<int> batches_a_day = {}, whippings_a_day = {};  // by pots and bowls
  std::optional<std::int64_t> rack_places = {};
  std::optional<int> cast_ahead_at_most = {};  // days
  std::optional<OneLye> one_lye = {};
  std::chrono::seconds each_batch{}, each_piece_made{}, each_tray_fill{}, each_piece_packed{};
};

/// What a studio says of one lye alone.
std::optional<OneLye> one_lye_of(const Studio& studio);

/// UserError where the studio has no making day, where no time of a batch is given, and for
/// anything wrong in its "days" and in the times of its "work". A studio's file must be there.
StudioDays read_days(const Studio& studio);

}  // namespace brimwright::runs
