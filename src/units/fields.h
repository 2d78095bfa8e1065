#pragma once

#include "units/angle.h"
#include "units/nearest_name.h"
#include "units/quantity.h"
#include "units/rate.h"
#include "units/remark.h"
#include "units/share.h"
#include "units/spelling.h"
#include "units/temperature.h"
#include "units/user_error.h"

#include <chrono>
#include <cstddef>
#include <cstdint>
#include <initializer_list>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace brimwright {

/// One JSON object of a file, which knows its file and its JSON pointer and words the complaints.
///
/// Every getter marks its key as known; `refuse_unknown` then complains of the first key that
/// nobody asked for, with the nearest known name. Getters throw UserError when a key is missing or
/// wrong; those that begin with `optional_` give nothing when the key is absent. Copies share the
/// marks.
class Fields {
 public:
  /// Parses a whole file's `text`. Refuses more than 4 MiB, 64 levels or 200,000 values, duplicate
  /// keys, and anything but one JSON object, telling line and column.
  static Fields parse(std::string_view text, std::string file);
  /// Reads and parses a regular file of at most 4 MiB.
  static Fields read(const std::string& path);

  const std::string& file() const;
  /// Where `key` stands, for complaints of the caller's own.
  Place place(std::string_view key) const;
  /// Where this object stands.
  Place place() const;

  /// All keys that may stand here, so that a missing one and misspelt others are told together.
  /// Marks none of them as asked for.
  const Fields& may_hold(std::initializer_list<std::string_view> keys) const;

  /// Reads "schema": today's version of `schema`, or the one before it. Comes first: a file of the
  /// earlier version is asked by today's keys from then on, and complaints name its own.
  void of(const Schema& schema) const;
  /// How the whole document spells its keys.
  const Spelling& spelling() const;
  /// `key` as this object spells it, in quotes: for complaints that name another key than theirs.
  std::string quoted(std::string_view key) const;

  /// From now on the value of a key that this object lacks is `other`'s, under the same name or, in
  /// `renamed`, as {here, there}; an object that both have is completed key by key. Complaints name
  /// the file and place that the value is from.
  void complete_from(const Fields& other, std::initializer_list<std::string_view> keys) const;
  void complete_from(const Fields& other, std::string_view here, std::string_view there) const;
  /// For a document all of whose keys were looked at: whoever reads a part of it refuses none.
  void have_none_unknown() const;
  /// Where what was asked for here and taken from another document stands there, as pointers.
  const std::set<std::string>& taken() const;

  bool has(std::string_view key) const;
  /// All keys in the file's order, each marked as known: for maps whose keys are names. At most
  /// 2,000, each as long as a name may be.
  std::vector<std::string> keys() const;

  Fields object(std::string_view key) const;
  std::optional<Fields> optional_object(std::string_view key) const;
  /// The objects of an array; an absent key gives none. An element that is no object is refused,
  /// and so are more than `most`: what looks at each pair of them must not take minutes.
  std::vector<Fields> objects(std::string_view key, std::size_t most = usual_list) const;
  /// What no list of things on a bench comes near: fats, additives, layers, bottles.
  static constexpr std::size_t usual_list = 200;

  std::string text(std::string_view key) const;  ///< a non-empty string
  std::optional<std::string> optional_text(std::string_view key) const;
  /// What is printed as a name: one line of at most 200 characters.
  std::string name(std::string_view key) const;
  std::optional<std::string> optional_name(std::string_view key) const;
  /// At most 1,000; an absent key gives none.
  std::vector<std::string> texts(std::string_view key) const;
  /// One of `allowed`; the complaint lists them.
  std::string choice(std::string_view key, const std::vector<std::string>& allowed) const;
  double number(std::string_view key) const;
  /// At most 1,000; an absent key gives none.
  std::vector<double> numbers(std::string_view key) const;
  std::int64_t whole_number(std::string_view key, std::int64_t least, std::int64_t most) const;
  bool truth(std::string_view key) const;
  bool is_text(std::string_view key) const;    ///< present and a string
  bool is_object(std::string_view key) const;  ///< present and an object
  bool is_null(std::string_view key) const;
  bool is_empty(std::string_view key) const;  ///< absent, null, a text of blanks, {} or []
  std::string json() const;  ///< this object again as JSON, its keys in the same order

  /// Whether "confirmed" here stands for `figure`: it names it as it was written ("400 ml"), or is
  /// a list with it, or is `true`, which stands for whatever is here.
  bool confirms(std::string_view figure) const;
  /// The same of the value of `key`, be it a text, a number or an object; here a "confirmed" that
  /// names another value is refused.
  bool confirms_value_of(std::string_view key) const;
  /// Whether "confirmed" is `true`, whatever the values are.
  bool confirms_all() const;

  /// Keeps what a reader wants told of what it read, for whoever reads the whole document.
  void say(Remark remark) const;
  /// All that was said so far of this document, in the order it was read.
  const std::vector<Remark>& said() const;

  // Quantities are strings with a unit (field_quantities.cpp). `positive_` refuses zero. A
  // complaint gives `example`: what could stand in that very field.
  Length length(std::string_view key, std::string_view example = "5 mm") const;
  Length positive_length(std::string_view key, std::string_view example = "5 mm") const;
  Length signed_length(std::string_view key) const;  ///< a place along an axis: "-12 mm" too
  Area positive_area(std::string_view key) const;
  AreaDensity positive_area_density(std::string_view key) const;
  Volume positive_volume(std::string_view key, std::string_view example = "450 ml") const;
  Mass mass(std::string_view key, std::string_view example = "450 g") const;
  Mass positive_mass(std::string_view key, std::string_view example = "450 g") const;
  Density density(std::string_view key) const;  ///< 0.3 to 3 g/ml, what a maker handles
  Temperature temperature(std::string_view key) const;
  Angle angle(std::string_view key) const;  ///< 0 to below 90 degrees
  Angle turn(std::string_view key) const;   ///< 0 to 360 degrees
  Share share(std::string_view key, Share least, Share most,
              std::string_view example = "5 %") const;
  std::chrono::minutes duration(std::string_view key, std::string_view example = "36 h") const;
  std::chrono::seconds positive_short_time(std::string_view key,
                                           std::string_view example = "20 s") const;
  Rate rate(std::string_view key) const;
  std::chrono::year_month_day date(std::string_view key) const;  ///< "2026-11-14" (ISO 8601)
  std::string uuid(std::string_view key) const;                  ///< in lower case

  /// Complains of the keys of this object that no getter asked for, all in one.
  void refuse_unknown() const;

  struct Node;  // implementation
  explicit Fields(std::shared_ptr<const Node> node);

 private:
  /// The text of a quantity; a bare number gets its own complaint, the commonest slip.
  std::string quantity(std::string_view key, std::string_view written) const;

  std::shared_ptr<const Node> node_;
};

/// The text of the regular file `path`, at most 4 MiB. UserError where it cannot be read.
std::string text_of_file(const std::string& path);

}  // namespace brimwright
