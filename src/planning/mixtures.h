#pragma once

#include "units/quantity.h"

#include <cstddef>
#include <cstdint>
#include <functional>
#include <optional>
#include <vector>

namespace brimwright::planning {

/// One of several runs that one base is mixed for, to be dealt over its batches in casts.
struct MixedLine {
  std::int64_t casts = 0;            // to be made of it
  std::size_t mould = 0;             // lines of one mould share its cavities
  std::int64_t cavities = 0;         // in all moulds owned of it
  std::int64_t least = 1, most = 0;  // casts of it in a batch that has any of it
  bool fills_moulds = false;         // each filling takes all of its cavities
  Mass each;                         // base poured for one cast
};

/// What is mixed in one go: casts of each line, in the lines' order.
using Mixture = std::vector<std::int64_t>;
/// The mixtures of each filling, in the order of making.
using MixedFillings = std::vector<std::vector<Mixture>>;

/// What is asked of a mixture.
struct MixtureTests {
  std::function<Mass(const Mixture&)> needs;      // base to make for it, losses included
  std::function<bool(const Mixture&)> is_within;  // all that sets a most; what is no use is within
  std::function<bool(const Mixture&)> is_sound;   // within, and it can be weighed
  Mass most;  // base poured of the largest mixture that is within, about
};

/// The batches that the lines' casts are dealt to. As few fillings of the moulds as can be, each
/// mould in no more of them than it needs; then as few batches as can be; then as little base as
/// can be, with the lines parted as little and the batches as even as that allows. A line that is
/// parted goes on in the next batch; a batch has as many of a line as the line's limits allow, or
/// none. `apart`, where the lines can be made so, is how each is dealt by itself: nothing is
/// answered that needs more base than that.
///
/// Nothing where no such dealing is found.
std::optional<MixedFillings> dealt_together(const std::vector<MixedLine>& lines,
                                            const MixtureTests& tests,
                                            const std::optional<MixedFillings>& apart);

/// Each line's own fillings, in casts of its batches, as mixtures of that line alone: lines of one
/// mould fill it one after the other.
MixedFillings one_by_one(const std::vector<MixedLine>& lines,
                         const std::vector<std::vector<std::vector<std::int64_t>>>& fillings);

}  // namespace brimwright::planning
