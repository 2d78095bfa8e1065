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
  std::string role = {};  // of what is weighed: "fat", "alkali"
};

/// Those of batch `number` in the plan's answer; none where it has no such batch.
std::vector<Blank> blanks_in(const std::string& plan, std::int64_t number);

/// What the keys of weights begin with, before the row's own.
inline constexpr std::string_view weighed_prefix = "weighed.";

/// All that batch `number` weighs by the plan's answer, so that another weight can be noted: of a
/// row that is weighed several times, all of them together.
std::vector<Blank> rows_in(const std::string& plan, std::int64_t number);

const Blank* find_blank(const std::vector<Blank>& blanks, const std::string& key);

}  // namespace brimwright::records
