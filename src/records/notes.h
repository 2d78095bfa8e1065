#pragma once

#include "records/weighing.h"
#include "units/quantity.h"
#include "units/temperature.h"

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

Notes notes_of(const Records& records, const Batch& batch);
/// Of every batch that has any, by its id; without the moments they were noted at.
std::map<std::string, Notes> all_notes(const Records& records);
/// Of the batches of one run no more than how many pieces there are and whether they are for sale.
std::map<std::string, Notes> piece_notes(const Records& records, const std::string& run);

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

}  // namespace brimwright::records
