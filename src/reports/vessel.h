#pragma once

#include "planning/tally.h"
#include "units/quantity.h"
#include "units/rounded_text.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::reports {

// What is put on the scales for one batch, vessel by vessel in the order of the work: what the
// bench sheet prints and the page ticks off is made from it.

/// One thing to weigh. Its key tells it from all others of the batch and stays the same whatever it
/// weighs: it is made of what it is, not of its place.
struct WeighOutRow {
  enum class Role {
    fat,
    alkali,
    water,
    ice,
    liquid,
    additive,
    fragrance,
    colour,
    batter,
    lye_solution,
    melt,
    powder
  };
  std::string key, name;
  std::string material = {};  // as prices and lots call it; empty where it was mixed before
  Role role;
  Mass mass, step;                      // of the scale it is weighed on
  Rounded towards;                      // where a unit cannot show it whole
  std::string shown = {}, beside = {};  // in the unit that the scale shows, and in the other
  std::string note = {};                // may be empty
  std::string adding = {};           // what it goes into, where the vessel's title does not say it
  Mass set_aside = {};               // of `mass`: in a cup of its own
  std::optional<Mass> running = {};  // in the vessel then, where it is weighed into one
  std::string running_shown = {};    // on the scale that the vessel stands on
  std::optional<std::size_t> ingredient = {};  // of the batter's weighing: its place there
};

/// A jug, a pot or a row of cups that is weighed out in one go.
struct Vessel {
  enum class Kind { fats, lye, lye_pot, share, batter, layers, melt, dust };
  struct Words {
    std::string text;
    bool is_order = false;     // what the hands do
    bool comes_first = false;  // before anything is weighed into it
  };
  std::string key;
  Kind kind;
  std::string title;
  std::optional<planning::BatterRole> batter = {};  // absent: of no batter, or of all of them
  std::int64_t times = 1;                           // so often is it weighed in this batch
  bool is_day_before = false;
  std::vector<WeighOutRow> rows = {};
  std::vector<Words> words = {};
  Mass total = {};  // of the rows, without what is set aside
  std::string total_shown = {};
};

std::string name_of(Vessel::Kind kind);  // "fats", "lye_pot"

/// The vessel of that key, or nullptr.
const Vessel* find_vessel(const std::vector<Vessel>& vessels, const std::string& key);

}  // namespace brimwright::reports
