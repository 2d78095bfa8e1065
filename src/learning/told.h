#pragma once

#include "learning/figures.h"

#include <map>
#include <optional>
#include <vector>

namespace brimwright::learning {

/// What the batches tell, one after the other, and what they cannot. They outlive it.
struct Told {
  struct Of {
    std::vector<BatchValue> values = {};
    std::optional<Value> used = {};      // by the plan of the last batch
    const FilledMould* mould = nullptr;  // the last batch's, of a volume error
  };
  struct Why {
    std::vector<MissingNote> needed = {}, any_one_of = {};
    std::vector<FigureId> mixed_with = {};
  };

  /// A value of `batch`. Without one that is finite, nothing is told.
  void tells(const BatchFacts& batch, FigureId id, Value value, const std::optional<Value>& used,
             const FilledMould* mould = nullptr);
  void cannot(const BatchFacts& batch, FigureId id, Why why);
  void contradicts(const BatchFacts& batch, Contradiction::In in, Mass unaccounted);
  /// True, and said, where more was made than was put on the scales for it.
  bool exceeds_scales(const BatchFacts& batch, Contradiction::In in,
                      const std::optional<Mass>& made, const std::optional<Mass>& weighed);

  std::map<FigureId, Of> told;
  std::map<FigureId, Untold> untold;
  std::vector<Contradiction> contradictions;
};

/// What stretches of batches tell, one after the other.
Told joined(std::vector<Told>&& stretches);

// What one batch tells, part by part.
void tell_base(const BatchFacts& batch, Told& told);
void tell_toppings(const BatchFacts& batch, Told& told);
void tell_decorations(const BatchFacts& batch, Told& told);
void tell_times(const BatchFacts& batch, Told& told);
void tell_cure(const BatchFacts& batch, Told& told);

/// The measured volume of one cavity, and its surface, at the line that was reached.
struct AtLine {
  Volume volume_each;
  Area surface;
};
AtLine at_line(const FilledMould& mould, const LineReached& line);

}  // namespace brimwright::learning
