#pragma once

#include "units/quantity.h"

#include <cstdint>
#include <memory>
#include <mutex>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace brimwright::service {

/// What is put on the scales, by a plan's answer: of all times that it is weighed together, as the
/// scale shows it.
struct PlannedRow {
  std::string note, role;  // `note`: the key under which she notes what it weighed
  Mass planned;
};
struct PlannedVessel {
  std::string key, vessel;
  std::int64_t times = 1;
  std::vector<PlannedRow> rows = {};
};

/// The vessels of one batch, which are not read before they are asked for: most batches are weighed
/// as planned. May be asked by several threads at once.
class WeighOut {
 public:
  /// The list as it stands in the answer, JSON.
  explicit WeighOut(std::string text) : text_(std::move(text)) {}

  const std::vector<PlannedVessel>& vessels() const;

 private:
  std::string text_;
  mutable std::once_flag is_read_;
  mutable std::vector<PlannedVessel> vessels_;
};

/// One batter, or whippings of it that are alike.
struct PlannedTally {
  std::int64_t count = 1;
  std::optional<Mass> make = {};
  bool has_solutions = false;  // of alkalis
};

/// One batch's, and the others' that are like it.
struct PlannedScales {
  std::shared_ptr<const WeighOut> weigh_out = {};  // nothing of a program that kept none yet
  std::optional<Mass> lye_pot = {};
  PlannedTally base = {};
  std::vector<PlannedTally> whippings = {};
};

}  // namespace brimwright::service
