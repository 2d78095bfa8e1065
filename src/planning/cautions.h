#pragma once

#include "planning/run.h"
#include "units/remark.h"

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

struct Caution : Remark {
  Topic topic = Topic::plan;
  bool is_general = false;  // of the work, whatever is made; those about this very batch go first
};

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
