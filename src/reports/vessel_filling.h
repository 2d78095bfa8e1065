#pragma once

#include "reports/vessel.h"

#include <algorithm>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::reports {

/// What the hands do with dry alkali.
inline constexpr auto alkali_into_water =
    "Goggles and gloves on. Alkali into water, never water into alkali: a little at a time, "
    "stirring.";

/// What a scale with that step shows: a multiple of it, with its unit.
std::string on_display(Mass mass, Mass step, Rounded towards = Rounded::nearest);

/// "White kaolin, fine" as "white-kaolin-fine". What a key cannot hold of a name is told by a mark
/// of the whole.
std::string key_part(const std::string& name);

/// `wish`, or with the next number where one of `taken` has that key.
template <class Keyed>
std::string free_key(const std::string& wish, const std::vector<Keyed>& taken) {
  const auto is_taken = [&](const std::string& key) {
    return std::any_of(taken.begin(), taken.end(),
                       [&](const Keyed& its) { return its.key == key; });
  };
  std::string key = wish;
  for (int i = 2; is_taken(key); ++i) key = wish + "-" + std::to_string(i);
  return key;
}

/// Adds to what stands beside a row.
void note(WeighOutRow& row, const std::string& words);
void note_weighings(WeighOutRow& row, std::int64_t weighings);

/// A vessel while it is weighed into.
class Filling {
 public:
  /// `on_scale_of` is the step of the scale that the vessel stands on; without it each thing is
  /// weighed in a cup of its own.
  Filling(Vessel vessel, std::optional<Mass> on_scale_of);

  /// Its key is put behind the vessel's, and made its own.
  void put(WeighOutRow row);
  void say(const std::string& text);
  void order(const std::string& text);
  void order_first(const std::string& text);

  bool is_empty() const { return vessel_.rows.empty(); }
  Vessel filled();

 private:
  Vessel vessel_;
  std::optional<Mass> step_;
  Mass finest_ = kilogram;
};

}  // namespace brimwright::reports
