#pragma once

#include "planning/run.h"
#include "units/remark.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::planning {

/// What a caution is about, so that a sheet can put it beside the work it belongs to.
enum class Topic {
  plan,
  lye,
  heat,
  aluminium,  // and what else lye eats
  chilled_lye,
  melting,
  whipping,
  look_alike,
  small_parts,
  dust,
  allergens,
  test
};
std::string name_of(Topic topic);  // "look-alike", "small parts"

/// What a caution bears upon.
enum class Concern {
  superfat,      // lye-heavy by the likely band, or by the worst corner
  todays_batch,  // impossible or wrong at the bench today: whisk, open time, spill, limits, lye
  data,          // how well a measure, an analysis or a trial is known
  label_and_cost,
  any_work  // of the work, whatever is made
};

/// One of a run's batters.
enum class BatterRole { base, topping };

struct Caution : Remark {
  Topic topic = Topic::plan;
  bool is_general = false;  // of the work, whatever is made; those about this very batch go first
  Concern concern = Concern::data;
  std::optional<BatterRole> batter = {};          // the one it is about, if about one alone
  std::optional<std::int64_t> batch_pieces = {};  // the size of the batches it is about, if not all
};

/// Puts dangers first, then cautions, then notes; those of one severity by what they bear upon,
/// worst first, from one table; and what is alike in both as it stood.
void put_in_order(std::vector<Caution>& cautions);

/// Cautions of the work and of the piece that apply to `run`, from one table, in the order of the
/// hands: lye, heat, what it eats, lye that waits, melting, whipping, dust, allergens, then the
/// piece, then the test before sale. All of them are general.
std::vector<Caution> bench_cautions(const Run& run);

/// What to do when lye or raw batter went where it should not, most pressing first.
struct FirstAid {
  std::string what, to_do;  // "In the eyes", "Rinse at once ..."
};
const std::vector<FirstAid>& first_aid();
/// What it follows, and what comes before it.
std::string first_aid_source();

}  // namespace brimwright::planning
