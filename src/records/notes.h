#pragma once

#include "units/quantity.h"
#include "units/temperature.h"
#include "units/user_error.h"

#include <chrono>
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::records {

class Records;
struct Batch;

/// A value as it was typed, and when.
struct Noted {
  std::string value, noted_at;
};

/// What was noted of a batch, by the keys of its blanks ("base.made"). Each getter gives nothing
/// where nothing is noted; what is there was checked when it was noted.
class Notes {
 public:
  std::optional<std::string> text(const std::string& key) const;
  std::optional<Mass> mass(const std::string& key) const;
  std::optional<Volume> volume(const std::string& key) const;
  std::optional<Temperature> temperature(const std::string& key) const;
  std::optional<std::chrono::seconds> minutes(const std::string& key) const;
  std::optional<std::int64_t> count(const std::string& key) const;
  std::optional<Length> length(const std::string& key) const;  // below 0 too
  std::optional<std::chrono::year_month_day> date(const std::string& key) const;

  std::map<std::string, Noted> all = {};
};

/// Pieces of a batch put on a scale together on a day of their cure.
struct Weighing {
  std::string day;  // ISO 8601
  std::int64_t pieces = 0;
  std::string written = {};
  Mass together = {};
};

Notes notes_of(const Records& records, const Batch& batch);
/// Of every batch that has any, by its id.
std::map<std::string, Notes> all_notes(const Records& records);

/// By day.
std::vector<Weighing> weighings_of(const Records& records, const Batch& batch);
std::map<std::string, std::vector<Weighing>> all_weighings(const Records& records);

/// Whether pieces of a batch may be sold on a day, and why not.
struct ForSale {
  bool is = false;
  std::string why_not = {};  // "has no test result"; empty where it is
};
/// For sale is what was tested and passed, is held back by nothing and ready on `today` at the
/// latest. No other way leads there.
ForSale for_sale(const Notes& notes, const std::string& today);

/// What is noted, or taken back with an empty value. A key "cured.2026-12-29" is a weighing:
/// "12 pieces, 1040 g".
struct Note {
  std::string key, value;
  Place where;  // of the value, for complaints
};
/// What a note is held against.
struct Noting {
  std::string today;                        // ISO 8601 day
  std::string noted_at;                     // moment with offset
  std::vector<std::string> confirmed = {};  // values that were asked about, as they are written
  Place confirmed_at = {};
};

/// Notes all of `changes`, or with a UserError none of them: values that cannot be read or be so, a
/// key that the batch does not have, ready without a test that was passed. A Question
/// (units/question.h) that asks "confirmed" where one is far from usual or does not fit another.
/// Within an act.
void note(Records& records, const Batch& batch, const std::vector<Note>& changes,
          const Noting& noting);

}  // namespace brimwright::records
