#pragma once

#include "learning/figures.h"
#include "units/quantity.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace brimwright::learning {

/// Notes may be off by this share of what was made, as scales and steam are, before they contradict
/// each other (common practice, no source).
inline constexpr double notes_off_by = 0.02;

/// Masses of which some were noted, and sums that hold between them: which of the others follow?
///
/// Every sum settles the one mass that it lacks, and that may settle another. Nothing more follows:
/// the sums used here share one mass at most, so that where two of a sum are missing no combination
/// of sums tells them apart.
class MassBalance {
 public:
  using Index = std::size_t;

  MassBalance() { terms_.reserve(12); }

  /// A mass, and the note that would tell it, where one can.
  Index add(std::optional<Mass> noted, std::optional<MissingNote> note);
  /// whole = sum of the parts.
  void holds(Index whole, std::vector<Index> parts);
  /// Works out what follows. Afterwards `contradiction` is how far the notes are from their sums,
  /// or how far below 0 a mass would be, where that is more than `tolerance`.
  void settle(Mass tolerance);

  const std::optional<Mass>& operator[](Index mass) const { return terms_[mass].mass; }
  const std::optional<Mass>& contradiction() const { return contradiction_; }

  /// Notes of which each alone would tell a mass that is not known: its own first.
  std::vector<MissingNote> any_one_of(Index mass) const;
  /// Notes of all masses that are not known.
  std::vector<MissingNote> missing() const;

 private:
  struct Term {
    std::optional<Mass> mass;
    std::optional<MissingNote> note;
  };
  struct Sum {
    Index whole;
    std::vector<Index> parts;
    bool is_used = false;  // to work out a mass
  };

  template <class Each>
  static void each_of(const Sum& sum, const Each& each) {
    each(sum.whole, 1.0);
    for (const Index part : sum.parts) each(part, -1.0);
  }
  void check(Mass tolerance);
  bool would_tell(Index noted, Index wanted) const;

  std::vector<Term> terms_;
  std::vector<Sum> sums_;
  std::optional<Mass> contradiction_;
};

}  // namespace brimwright::learning
