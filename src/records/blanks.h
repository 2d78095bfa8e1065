#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace brimwright::records {

/// Something that may be noted of a batch, as its frozen plan has it ("blanks" of the plan's
/// answer; planning/blanks.h makes them).
struct Blank {
  std::string key = {}, of = {}, words = {};
  std::string kind = {};  // "mass", "temperature", "minutes", "date", "count", "length", "volume",
                          // "choice", "text", "weighing"
  std::string when = {}, unit = {}, planned = {};
  std::string least = {}, most = {}, not_above = {}, cup_holds = {}, cup_holds_key = {};
  std::vector<std::string> choices = {};
  std::string role = {};  // of what is weighed: "fat", "alkali", "lye_solution"
};

/// Those of batch `number` in the plan's answer; none where it has no such batch.
std::vector<Blank> blanks_in(const std::string& plan, std::int64_t number);

/// What the keys of weights begin with, before the row's own.
inline constexpr std::string_view weighed_prefix = "weighed.";

/// What stands behind a batter's key in that of its share of a lye solution, and of what it has out
/// of a pot that is mixed for several batches of a day.
inline constexpr std::string_view share_row = ".share.lye-solution", day_pot_row = ".day-pot";
/// The row of what a pot weighed when it was topped up, before it was shared.
inline constexpr std::string_view topped_up_row = "lye-pot.topped-up";

/// All that batch `number` weighs by the plan's answer, so that another weight can be noted: of a
/// row that is weighed several times, all of them together. Besides the rows of "weigh_out" what a
/// shared pot of lye was topped up to, and what may come out of a day's pot.
std::vector<Blank> rows_in(const std::string& plan, std::int64_t number);

/// "decoration-2.bought", the row of what was counted of a bought decoration, for the key of its
/// blank "decoration-2.used"; empty for any other key.
std::string counted_row(std::string_view key);

const Blank* find_blank(const std::vector<Blank>& blanks, const std::string& key);

}  // namespace brimwright::records
