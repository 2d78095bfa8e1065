#pragma once

#include "records/weighing.h"
#include "units/quantity.h"
#include "units/temperature.h"
#include "units/text_places.h"

#include <boost/container/flat_map.hpp>

#include <chrono>
#include <cstddef>
#include <cstdint>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <string_view>
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
class NotedValues {
 public:
  virtual ~NotedValues() = default;

  /// As it was typed.
  virtual std::optional<std::string_view> value(std::string_view key) const = 0;
  virtual bool has_any_from(std::string_view beginning) const = 0;

  std::optional<std::string> text(std::string_view key) const;
  std::optional<Mass> mass(std::string_view key) const;
  std::optional<Volume> volume(std::string_view key) const;
  std::optional<Temperature> temperature(std::string_view key) const;
  std::optional<std::chrono::seconds> minutes(std::string_view key) const;
  std::optional<std::int64_t> count(std::string_view key) const;
  std::optional<Length> length(std::string_view key) const;  // below 0 too
  std::optional<std::chrono::year_month_day> date(std::string_view key) const;

 protected:
  NotedValues() = default;
  NotedValues(const NotedValues&) = default;
  NotedValues(NotedValues&&) = default;
  NotedValues& operator=(const NotedValues&) = default;
  NotedValues& operator=(NotedValues&&) = default;
};

/// Those of one batch, with when each was noted.
class Notes final : public NotedValues {
 public:
  std::optional<std::string_view> value(std::string_view key) const override;
  bool has_any_from(std::string_view beginning) const override;

  boost::container::flat_map<std::string, Noted, std::less<>> all = {};
};

Notes notes_of(const Records& records, const Batch& batch);
/// Those of every batch that has any, packed, as all of them together are a lot: by places, from 0,
/// in the order of the batches' ids. May be looked into by several threads at once.
class PackedNotes {
 public:
  explicit PackedNotes(const Records& records);

  std::size_t size() const { return batches_.size(); }
  const std::string& batch(std::size_t place) const { return batches_[place].id; }
  /// Those of one batch, which looks into all of them, and is gone before they are.
  class Of;
  Of of(std::size_t place) const;
  Of of_none() const;

 private:
  struct Row {
    std::size_t begin;  // of the value in the text
    std::uint32_t length, key;
  };
  using At = std::vector<Row>::const_iterator;
  struct Batch {
    std::string id;
    std::size_t begin;  // its first row
  };

  std::size_t end_of(std::size_t place) const;
  std::string_view value(const Row& row) const;

  TextPlaces keys_;
  std::string text_;
  std::vector<Row> rows_;
  std::vector<Batch> batches_;
};

class PackedNotes::Of final : public NotedValues {
 public:
  std::optional<std::string_view> value(std::string_view key) const override;
  bool has_any_from(std::string_view beginning) const override;
  /// Without the moments they were noted at.
  Notes copy() const;

 private:
  friend class PackedNotes;
  Of(const PackedNotes& all, At begin, At end) : all_(all), begin_(begin), end_(end) {}

  const PackedNotes& all_;
  At begin_, end_;
};

/// Of the batches of one run, or of every batch, no more than how many pieces there are and whether
/// they are for sale.
std::map<std::string, Notes> piece_notes(const Records& records, const std::string& run);
std::map<std::string, Notes> all_piece_notes(const Records& records);

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
