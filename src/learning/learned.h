#pragma once

#include "learning/batch_facts.h"
#include "learning/figures.h"

#include <map>
#include <span>
#include <vector>

namespace brimwright::learning {

struct Learned {
  std::vector<Figure> figures;  // of `fewest_to_show` batches and more, in the order of ids
  std::vector<Untold> untold;   // likewise
  std::vector<Contradiction> contradictions;  // in the order of batches; their masses tell nothing
};

/// What `batches` tell, given in the order of their making. `used_now` is what the plan would use
/// today; without an entry the last batch's plan counts.
Learned learned_from(std::span<const BatchFacts> batches,
                     const std::map<FigureId, Value>& used_now = {});

/// What single batches tell of a figure, from the first on and before anything is made of it.
struct BatchByBatch {
  FigureId id;
  std::vector<BatchValue> values;  // in the order of the batches
};
std::vector<BatchByBatch> batch_by_batch(std::span<const BatchFacts> batches);

}  // namespace brimwright::learning
