#pragma once

#include "chemistry/fat.h"

#include <optional>
#include <string>
#include <vector>

namespace brimwright::chemistry {

/// What is known of a fat by other ways than the value that someone stated for it.
struct KnownRange {
  std::string whose;  // "known for Olive oil": follows "184 to 200 mg/g"
  SaponificationValue low, high;
  double tolerance = 0;     // beyond the ends, before a value contradicts the range
  bool by_make_up = false;  // from fatty acids or a molar mass, not from documents
  /// Whether the most that is known is its high end. Not of a shipped fat's make-up: there the
  /// documents may know more, and their range reaches over it.
  bool tells_the_most = true;

  bool contradicts(SaponificationValue stated) const;
  std::string in_words() const;  // "184 to 200 mg/g known for Olive oil"
};

/// What a value stated for `fat` can be held against. Of a shipped fat its own range. Of a maker's
/// own fat that of every shipped one whose name, id or INCI name it has, whatever their case and
/// whatever is added on how it was made ("Extra virgin olive oil"), each as a range of its own. And
/// what its fatty acids or its mean molar mass ask for. Nothing where none of these is known.
std::vector<KnownRange> known_ranges(const Fat& fat);
/// The shipped slow wax whose name, id or INCI name a maker's own fat has, or nullptr.
const Fat* shipped_slow_wax(const Fat& own);

/// What a formula's value for a lot of `fat` can be held against: the same, and of a maker's own
/// fat what the file of fats states, by as much more as lots differ.
std::vector<KnownRange> known_ranges_of_lot(const Fat& fat);

/// `stated`, widened over each of `known` that contradicts its typical value: which of the two is
/// wrong, nobody knows yet.
SaponificationRange spanning(const SaponificationRange& stated,
                             const std::vector<KnownRange>& known);

/// The range of `known` with the least high end among those that end below `stated`: the fat takes
/// no more alkali than that, if it is right.
std::optional<KnownRange> known_below(SaponificationValue stated,
                                      const std::vector<KnownRange>& known);

}  // namespace brimwright::chemistry
