#pragma once

#include "planning/run.h"
#include "planning/tally.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::planning {

/// Something to fill in when a batch is made: by hand on the bench sheet, by its key elsewhere.
struct Blank {
  enum class Kind {
    mass,
    temperature,
    minutes,
    date,
    count,
    length,  // above 0 or below
    volume,
    choice,
    text,
    weighing,  // cured pieces on a day: any number of them
  };
  /// Where in the order of the hands.
  enum class When { day_before, base_mixed, poured, topping_mixed, whipped, piped, afterwards };

  std::string key;    // "base.made", of small letters, digits and . _ -
  std::string of;     // "base", "topping", a decoration's name; empty: of the batch
  std::string words;  // as the sheet has them: "base: made in all"
  Kind kind;
  When when;
  std::size_t part = 0;      // of batch.whippings or plan.decorations
  std::string unit = {};     // as it is filled in on paper; may be empty
  std::string planned = {};  // may be empty

  // What is asked once more where it is outside; each empty where nothing is.
  std::string least = {}, most = {};               // with their units
  std::string not_above = {};                      // the key of another
  std::string cup_holds = {}, cup_holds_key = {};  // of a full cup, whose density is then limited
  std::vector<std::string> choices = {};
  std::optional<std::int64_t> batch = {};  // asked of this batch of the run alone
};

/// All blanks of `batch` in the order of the hands. What is usual is common practice, no source.
std::vector<Blank> blanks_of(const Run& run, const Plan& plan, const Batch& batch);

/// Whether it is filled in where the base is mixed, for whatever is poured from that.
bool is_of_base(const Blank& blank);

/// "base.made" of those, or nullptr.
const Blank* find_blank(const std::vector<Blank>& blanks, const std::string& key);

std::string name_of(Blank::Kind kind);

}  // namespace brimwright::planning
