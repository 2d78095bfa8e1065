#include "geometry/beads/bead_path.h"
#include "geometry/beads/bead_solids.h"
#include "units/printing.h"
#include "units/wording.h"

#include <cmath>
#include <cstdlib>
#include <string>

namespace brimwright::geometry {
namespace {

// No piece is larger; these limits only keep out what cannot have been meant.
constexpr Length least_size = 0.01 * millimetre, greatest_size = 2 * metre;
constexpr double least_turns = 0.01, most_turns = 100;
constexpr int most_dabs = 500;
constexpr std::size_t most_corners = 2'000'000;
constexpr int decimals = 3;  // of a size in a complaint

[[noreturn]] void refuse(const Place& where, const std::string& what, Length size, Length least) {
  throw UserError(where, "has " + what + " of " + in_mm(size, decimals),
                  "give from " + in_mm(least, decimals) + " to " + in_mm(greatest_size, decimals));
}

// The comparisons are false for what is not a number.
void check_size(const std::string& what, Length size, const Place& where) {
  if (!(size >= least_size && size <= greatest_size)) refuse(where, what, size, least_size);
}
void check_size_or_none(const std::string& what, Length size, const Place& where) {
  if (!(size >= Length() && size <= greatest_size)) refuse(where, what, size, Length());
}
void check_height(const std::optional<Length>& height, const Place& where) {
  if (height) check_size_or_none("a height above the floor", *height, where);
}

void check_count(const std::string& things, int count, const Place& where) {
  if (count >= 1 && count <= most_dabs) return;
  throw UserError(where, "has " + std::to_string(count) + " " + things,
                  "give from 1 to " + std::to_string(most_dabs));
}

void check_move(const Dollop& dollop, const Place& where) {
  check_size("a dollop's diameter", dollop.diameter, where);
  check_size("a dollop's height", dollop.height, where);
}

void check_move(const Ring& ring, const Place& where) {
  check_size("a ring's radius", ring.radius, where);
}

void check_move(const ConicalSpiral& spiral, const Place& where) {
  if (!(spiral.turns >= least_turns && spiral.turns <= most_turns))
    throw UserError(where, "has a spiral of " + trimmed(spiral.turns, 3) + " turns",
                    "give from " + trimmed(least_turns, 2) + " to " + trimmed(most_turns, 0));
  check_size_or_none("a spiral's start radius", spiral.start_radius, where);
  check_size_or_none("a spiral's end radius", spiral.end_radius, where);
  check_size_or_none("a spiral's rise", spiral.rise, where);
  if (arc_length(spiral) >= least_size) return;
  throw UserError(where, "has a spiral that goes nowhere, without radius and rise",
                  "give the radius of its centre line where it starts and where it ends");
}

void check_move(const Tail& tail, const Place& where) {
  check_size("a tail's length", tail.length, where);
}

void check_move(const Dots& dots, const Place& where) {
  check_count("dots", dots.count, where);
  check_size("a dot's height", dots.height, where);
  check_size_or_none("a circle's radius", dots.circle_radius, where);
  if (dots.count == 1 || dots.circle_radius >= least_size) return;
  throw UserError(where,
                  "has " + std::to_string(dots.count) + " dots on a circle of radius " +
                      in_mm(dots.circle_radius, decimals) + ", all in one place",
                  "give the radius of the circle they stand on, or one dot");
}

void check_move(const Shells& shells, const Place& where) {
  check_count("shells", shells.count, where);
  check_size("a shell's length", shells.length, where);
  check_size_or_none("a circle's radius", shells.circle_radius, where);
}

void check_move(const StraightBead& bead, const Place& where) {
  check_size("a bead's length", bead.length, where);
  check_size_or_none("a distance from the middle", abs(bead.aside), where);
}

}  // namespace

void check(const Move& move, const Place& where) {
  std::visit(
      [&](const auto& kind) {
        check_move(kind, where);
        check_height(kind.at_height, where);
      },
      move);
}

void check(const std::vector<Move>& moves, const Opening& opening, const Place& where) {
  constexpr double facet_mm = 1;
  const std::size_t section = polygon_of(opening).size();
  std::size_t corners = 0;
  for (std::size_t i = 0; i < moves.size(); ++i) {
    const Place here{.file = where.file, .field = where.field + "/" + std::to_string(i)};
    check(moves[i], here);
    corners += corners_of(moves[i], section, facet_mm);
    if (corners <= most_corners) continue;
    throw UserError(here, "makes the beads longer than can be worked out",
                    "give fewer or shorter moves, or an outline of fewer points");
  }
}

}  // namespace brimwright::geometry
