#pragma once

#include <cstdint>
#include <string>
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
};

/// Those of batch `number` in the plan's answer; none where it has no such batch.
std::vector<Blank> blanks_in(const std::string& plan, std::int64_t number);

const Blank* find_blank(const std::vector<Blank>& blanks, const std::string& key);

}  // namespace brimwright::records
