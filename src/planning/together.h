#pragma once

#include "planning/one_base.h"
#include "planning/run.h"
#include "planning/tally.h"
#include "units/quantity.h"

#include <cstddef>
#include <vector>

namespace brimwright::planning {

// Bases of one formula that are mixed as one, for several runs.

/// What a line takes of one batch of the shared base.
struct TogetherPart {
  std::size_t line;     // of the lines asked for
  std::size_t batch;    // of that line's plan, in Plan::batches
  Mass takes;           // in its pieces, poured over, in its test piece, and left in its own jugs
  double of_batch = 0;  // takes / what all lines of the batch take
};
struct TogetherBatch {
  std::vector<TogetherPart> parts;  // of the lines that take part, in their order
  Mass left_behind;  // planned to stay in pot, and in the jug that lines without layers share
};

/// A base mixed for several runs, and what each of these then is.
struct Together {
  /// The base as a run of its own: formula, scales and pots of the lines, and nothing that is
  /// poured, piped or set.
  Run run;
  /// Its batches, each weighed once for all lines: fats, alkali, water, superfat, heat.
  Plan plan;
  std::vector<TogetherBatch> batches;  // as plan.batches
  /// The lines, each with pieces, jugs, topping, decorations, dust, label and cautions of its own.
  /// Its base's weighing is its part of the shared ones: in proportion, and on no scale's step.
  std::vector<Plan> lines;
};

/// Plans the lines' bases as one. Once for a batch are weighed, and lost, what is the base's: fats,
/// alkali, water, additives, what stays in the pot. A line's own are what it takes: what is in its
/// pieces and poured over, a test piece for each batch that it takes part in, and what stays in the
/// jugs of its layers; lines without layers are poured from one jug.
///
/// Batches are within pot and lye jug, and have no more of a line than its cavities, bowl and open
/// time allow (see dealt_together); no more base is poured in one than the largest batch that a
/// line wishes for takes. No more base is needed than the lines would need apart.
///
/// Two lines at least. UserError at a line's `where` where its base is another one than the first
/// line's: another formula, losses in the pot, temperatures, pots, scales or studio; where it
/// shares lye or a bottle of fragrance with its topping; and where no dealing is within the limits.
Together plan_together(const std::vector<TogetherLine>& lines);

}  // namespace brimwright::planning
