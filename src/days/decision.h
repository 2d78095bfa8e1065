#pragma once

#include "days/casting.h"
#include "days/problem.h"
#include "days/verdict.h"

#include <cstddef>
#include <cstdint>
#include <vector>

namespace brimwright::days {

/// A batch on its day, by delivery, line and batch.
struct Made {
  std::size_t delivery = 0, line = 0, batch = 0;
  int day = 0;
};
/// Fillings of a tray for a batch of that place in `made`.
struct CastOn {
  std::size_t made = 0, tray = 0;
  int day = 0, count = 0;
};

/// What was decided of a problem; where it is possible, how.
struct Decision {
  Verdict verdict = Verdict::unknown;
  std::vector<Made> made = {};  // in the order of the days
  std::vector<CastOn> casts = {};
  std::vector<Packing> packing = {};
};

/// Whether a problem has a schedule.
///
/// Three ways, the quickest first: batches put on the earliest day that takes them, the most urgent
/// first, show that it has one; sums over days show that it has none (bounds.h); a search through
/// all ways to fill the days, which never looks at one state twice, decides the rest (search.h). It
/// is given up after `most_looks` states, and then nothing is known. Up to eight batches it has
/// been found to end well before (tests/days).
Decision decide(const Problem& problem, std::int64_t most_looks);

}  // namespace brimwright::days
