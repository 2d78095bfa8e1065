#pragma once

#include "records/lots.h"
#include "units/remark.h"

#include <cstdint>
#include <map>
#include <set>
#include <string>
#include <vector>

namespace brimwright::records {

/// What a batch weighs of one material in one row of its plan, as often as that is weighed.
struct Weighed {
  std::string row = {};       // its key in the plan
  std::string material = {};  // as lots call it
  std::string shown = {};     // to people
  trade::Amount amount = trade::Amount::pieces(0);
  std::vector<std::string> served_by = {};     // what lots may be of instead, by her word
  std::vector<std::string> unfit = {};         // makes of it that were not planned with
  std::vector<std::string> taken_before = {};  // ids of lots: they are taken first, past or not
};

/// What she said of the lots to take.
struct FromLots {
  /// By a row's key, a material or what people call it: the codes of its lots, the first first;
  /// `unknown_lot` for none.
  std::map<std::string, std::vector<std::string>> chosen = {};
  /// Codes of lots of which more may be taken than is left by the records.
  std::set<std::string> beyond = {};
};
inline constexpr auto unknown_lot = "unknown";

/// So much of a lot for a row.
struct Take {
  std::size_t weighed, lot;  // by their places in what was given
  std::int64_t whole;
};

struct Taking {
  std::vector<Take> takes;
  std::vector<Remark> remarks;  // of lots that were passed over
};

/// Which of `lots` each row is taken from on `day`: of the chosen ones, or else of all that serve,
/// in their order; a row of what there is no lot of, or none yet on that day, is from none. A lot
/// past its best-before day, one that came later, or one whose make is unfit for the row, is never
/// taken unless chosen. Together the takes of a row come to all of it, or it has none.
///
/// Question of `file`, with all that is short, where less is left and no lot to take more from was
/// named; where a code is of no lot of the material; where something chosen is for nothing that is
/// weighed.
Taking taken_from(const std::vector<StandingLot>& lots, const std::vector<Weighed>& rows,
                  const FromLots& wishes, const std::string& day, const std::string& file);

}  // namespace brimwright::records
