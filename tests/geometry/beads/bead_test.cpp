#include "geometry/beads/bead.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <array>
#include <cmath>
#include <limits>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::geometry {
namespace {

using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

const Place here = {.file = "run.json", .field = "/pipe/moves"};
const Opening eight_mm_round = RoundOpening{.radius = 4 * millimetre};

ConicalSpiral spiral(double turns, double start_mm, double end_mm, double rise_mm) {
  return {.turns = turns,
          .start_radius = start_mm * millimetre,
          .end_radius = end_mm * millimetre,
          .rise = rise_mm * millimetre};
}

double length_mm(const Move& move) {
  return laid_by({move}, eight_mm_round, 1).front().length / millimetre;
}
double volume_mm3(const Move& move, const Opening& opening = eight_mm_round,
                  double bead_to_opening = 1) {
  return laid_by({move}, opening, bead_to_opening).front().volume / cubic_millimetre;
}

/// Five-point Gauss-Legendre quadrature (nodes and weights: Abramowitz and Stegun, table 25.4) over
/// each of many equal stretches of the spiral, along the chord of its own parametrisation.
double length_by_quadrature(const ConicalSpiral& spiral) {
  constexpr std::array<double, 5> nodes = {-0.906179845938664, -0.538469310105683, 0,
                                           0.538469310105683, 0.906179845938664};
  constexpr std::array<double, 5> weights = {0.236926885056189, 0.478628670499366,
                                             0.568888888888889, 0.478628670499366,
                                             0.236926885056189};
  const double start = spiral.start_radius / millimetre, end = spiral.end_radius / millimetre;
  const double rise = spiral.rise / millimetre, angle = 2 * pi * spiral.turns;
  constexpr int stretches = 20'000;
  double sum = 0;
  for (int i = 0; i < stretches; ++i) {
    for (std::size_t node = 0; node < 5; ++node) {
      const double share = (i + (nodes[node] + 1) / 2) / stretches;
      // dx, dy, dz by the share of the way, from x = r cos, y = r sin.
      const double radius = start + (end - start) * share, turned = angle * share;
      const double dx = (end - start) * std::cos(turned) - radius * angle * std::sin(turned);
      const double dy = (end - start) * std::sin(turned) + radius * angle * std::cos(turned);
      sum += weights[node] * std::sqrt(dx * dx + dy * dy + rise * rise) / 2 / stretches;
    }
  }
  return sum;
}

double between(double low, double high) {
  return low + (high - low) * *rc::gen::inRange(0, 100'001) / 100'000;
}

Opening any_opening() {
  if (*rc::gen::arbitrary<bool>()) return RoundOpening{.radius = between(1, 20) * millimetre};
  const Length outer = between(2, 20) * millimetre;
  return StarOpening{*rc::gen::inRange(3, 12), outer, outer * between(0.2, 0.95)};
}

Move any_move() {
  const Length a = between(1, 60) * millimetre, b = between(1, 60) * millimetre;
  switch (*rc::gen::inRange(0, 7)) {
    case 0:
      return Dollop{.diameter = a, .height = b};
    case 1:
      return Ring{.radius = a};
    case 2:
      return Tail{.length = a};
    case 3:
      return Dots{.count = *rc::gen::inRange(1, 30), .circle_radius = a, .height = b};
    case 4:
      return Shells{.count = *rc::gen::inRange(1, 30), .circle_radius = a, .length = b};
    case 5:
      return StraightBead{.length = a, .aside = b};
    default:
      return spiral(between(0.1, 9), a / millimetre, between(0, 60), between(0, 60));
  }
}

/// The move in a world `k` times as large.
struct Larger {
  double k;
  Move operator()(Dollop m) const { return Dollop{k * m.diameter, k * m.height, high(m)}; }
  Move operator()(Ring m) const { return Ring{k * m.radius, high(m)}; }
  Move operator()(Tail m) const { return Tail{k * m.length, high(m)}; }
  Move operator()(Dots m) const {
    return Dots{m.count, k * m.circle_radius, k * m.height, high(m)};
  }
  Move operator()(Shells m) const {
    return Shells{m.count, k * m.circle_radius, k * m.length, high(m)};
  }
  Move operator()(StraightBead m) const { return StraightBead{k * m.length, k * m.aside, high(m)}; }
  Move operator()(ConicalSpiral m) const {
    return ConicalSpiral{m.turns, k * m.start_radius, k * m.end_radius, k * m.rise, high(m)};
  }
  template <class Kind>
  std::optional<Length> high(const Kind& move) const {
    return move.at_height ? std::optional(k * *move.at_height) : std::nullopt;
  }
};

TEST_CASE("a ring holds its section times the way of its middle", "[geometry][bead]") {
  // Pappus; for a round section it is the torus, 2 pi^2 R r^2.
  CHECK_THAT(length_mm(Ring{.radius = 20 * millimetre}), WithinRel(40 * pi, 1e-15));
  CHECK_THAT(volume_mm3(Ring{.radius = 20 * millimetre}), WithinRel(2 * pi * pi * 20 * 16, 1e-14));
}

TEST_CASE("a dollop is half an ellipsoid, whatever the nozzle", "[geometry][bead]") {
  const Dollop dollop{.diameter = 30 * millimetre, .height = 15 * millimetre};
  CHECK_THAT(volume_mm3(dollop), WithinRel(2.0 / 3 * pi * 15 * 15 * 15, 1e-14));  // half a ball
  CHECK(volume_mm3(dollop, RoundOpening{.radius = millimetre}, 2) == volume_mm3(dollop));
  CHECK(length_mm(dollop) == 0);
}

TEST_CASE("tails, dots, shells and straight beads hold what their shapes do", "[geometry][bead]") {
  const double section = 16 * pi;
  const Tail tail{.length = 12 * millimetre};
  CHECK_THAT(volume_mm3(tail), WithinRel(section * 12 / 3, 1e-14));  // a cone
  const Dots dots{.count = 6, .circle_radius = 20 * millimetre, .height = 4 * millimetre};
  CHECK_THAT(volume_mm3(dots), WithinRel(6 * 2.0 / 3 * pi * 64, 1e-14));  // half balls
  CHECK_THAT(length_mm(dots), WithinRel(24, 1e-14));
  // Sections that fall evenly from the whole to nothing have half of it in the mean.
  const Shells shells{.count = 5, .circle_radius = 9 * millimetre, .length = 14 * millimetre};
  CHECK_THAT(volume_mm3(shells), WithinRel(5 * section * 14 / 2, 1e-14));
  CHECK_THAT(length_mm(shells), WithinRel(70, 1e-14));
  CHECK_THAT(volume_mm3(StraightBead{.length = 250 * millimetre}), WithinRel(section * 250, 1e-14));
}

TEST_CASE("a spiral on a cylinder is a screw line", "[geometry][bead]") {
  // Unrolled, the hypotenuse over its way round and its rise.
  CHECK_THAT(length_mm(spiral(3.5, 18, 18, 21)),
             WithinRel(std::hypot(2 * pi * 18 * 3.5, 21), 1e-14));
  // A cone that narrows by a nanometre is as long but for that.
  CHECK_THAT(length_mm(spiral(3.5, 18, 18 - 1e-6, 21)),
             WithinRel(std::hypot(2 * pi * (18 - 0.5e-6) * 3.5, 21), 1e-12));
  CHECK_THAT(length_mm(spiral(2, 0, 0, 21)), WithinRel(21, 1e-14));  // straight up
}

TEST_CASE("a flat spiral from the middle is Archimedes'", "[geometry][bead]") {
  // r = a t has the length a/2 [t sqrt(1 + t^2) + ln(t + sqrt(1 + t^2))] up to the angle t
  // (Bronshtein, Semendyayev, Handbook of Mathematics, spirals; from memory).
  const double t = 2 * pi * 5, a = 20 / t;
  const double whole = a / 2 * (t * std::hypot(1, t) + std::log(t + std::hypot(1, t)));
  CHECK_THAT(length_mm(spiral(5, 0, 20, 0)), WithinRel(whole, 1e-14));
  CHECK_THAT(length_mm(spiral(5, 20, 0, 0)), WithinRel(whole, 1e-14));
}

TEST_CASE("any spiral is as long as adding up its small steps says", "[geometry][bead]") {
  const auto [turns, start, end, rise] = GENERATE(table<double, double, double, double>({
      {4, 18, 2, 25},
      {4.25, 18, 0, 25},
      {0.01, 5, 40, 0},
      {0.3, 0, 12, 3},
      {6, 3, 30, 0},
      {100, 400, 1, 1500},
      {2, 7, 7.001, 0.01},
      {1, 0.001, 0, 10},
  }));
  CAPTURE(turns, start, end, rise);
  // Where the spiral comes near the axis, its speed has a narrow dip that costs some digits.
  CHECK_THAT(length_mm(spiral(turns, start, end, rise)),
             WithinRel(length_by_quadrature(spiral(turns, start, end, rise)), 1e-11));
}

TEST_CASE("a spiral in two goes is one spiral", "[geometry][bead][law]") {
  rc::prop("length and volume add up, wherever it is parted", [] {
    const double turns = between(0.1, 9), start = between(0, 50), end = between(0, 50);
    const double rise = between(0, 60), part = between(0.05, 0.95);
    const double radius = start + part * (end - start);
    const auto laid =
        laid_by({spiral(turns, start, end, rise), spiral(part * turns, start, radius, part * rise),
                 spiral((1 - part) * turns, radius, end, (1 - part) * rise)},
                eight_mm_round, 1.2);
    const Length parts = laid[1].length + laid[2].length;
    const Volume held = laid[1].volume + laid[2].volume;
    RC_ASSERT(abs(parts - laid[0].length) <= 1e-12 * laid[0].length + 1e-12 * millimetre);
    RC_ASSERT(abs(held - laid[0].volume) <= 1e-12 * laid[0].volume + 1e-10 * cubic_millimetre);
  });
}

TEST_CASE("a straight bead in two goes is one bead", "[geometry][bead][law]") {
  rc::prop("length and volume add up", [] {
    const Length whole = between(1, 500) * millimetre, part = between(0.01, 0.99) * whole;
    const auto laid = laid_by({StraightBead{.length = whole}, StraightBead{.length = part},
                               StraightBead{.length = whole - part}},
                              any_opening(), 1.1);
    RC_ASSERT(abs(laid[1].length + laid[2].length - laid[0].length) <= 1e-12 * laid[0].length);
    RC_ASSERT(abs(laid[1].volume + laid[2].volume - laid[0].volume) <= 1e-12 * laid[0].volume);
  });
}

TEST_CASE("a wider nozzle lays down more by the square, a larger piece by the cube",
          "[geometry][bead][law]") {
  rc::prop("scaled nozzle, and scaled nozzle and moves", [] {
    const Opening opening = any_opening();
    const Move move = any_move();
    const double k = between(0.2, 4), volume = volume_mm3(move, opening);
    const bool needs_nozzle = !std::holds_alternative<Dollop>(move);
    const double wider = volume_mm3(move, scaled(opening, k));
    RC_ASSERT(std::abs(wider / (needs_nozzle ? k * k * volume : volume) - 1) < 1e-12);
    const Move larger = std::visit(Larger{k}, move);
    RC_ASSERT(std::abs(volume_mm3(larger, scaled(opening, k)) / (k * k * k * volume) - 1) < 1e-12);
    RC_ASSERT(std::abs(length_mm(larger) - k * length_mm(move)) <= 1e-12 * length_mm(larger));
  });
  rc::prop("a bead that swells to 1.3 of the opening holds 1.3 times as much", [] {
    const Move move = any_move();
    if (std::holds_alternative<Dollop>(move)) return;
    RC_ASSERT(std::abs(volume_mm3(move, eight_mm_round, 1.3) / volume_mm3(move) - 1.3) < 1e-12);
  });
}

TEST_CASE("a bead that leaves the cup is found, with how far it reaches", "[geometry][bead]") {
  // A nozzle of 8 mm whose bead swells to 1.21 of its opening: 4.4 mm to each side.
  const auto [move, reach_mm] = GENERATE(table<Move, double>({
      {Ring{.radius = 20 * millimetre}, 24.4},
      {spiral(3, 10, 22, 9), 26.4},
      {spiral(3, 22, 0, 9), 26.4},
      {Dollop{.diameter = 44 * millimetre, .height = 9 * millimetre}, 22},
      {Dots{.count = 8, .circle_radius = 19 * millimetre, .height = 9 * millimetre}, 23.4},
      {Shells{.count = 8, .circle_radius = 19 * millimetre, .length = 9 * millimetre}, 28},
      {Shells{.count = 8, .circle_radius = 19 * millimetre, .length = 0.1 * millimetre},
       std::hypot(19, 4.4)},
      {StraightBead{.length = 30 * millimetre, .aside = -10 * millimetre}, std::hypot(15, 14.4)},
      {Tail{.length = 9 * millimetre}, 4.4},
  }));
  const std::vector<Move> moves = {Tail{.length = millimetre}, move};
  const auto just_fits = (reach_mm + 1e-9) * millimetre;
  CHECK_FALSE(strays_beyond(just_fits, moves, eight_mm_round, 1.21));
  if (reach_mm < 4.5) return;
  const auto strayed = strays_beyond((reach_mm - 1e-9) * millimetre, moves, eight_mm_round, 1.21);
  REQUIRE(strayed);
  CHECK(strayed->move == 1);
  CHECK_THAT(strayed->reach / millimetre, WithinRel(reach_mm, 1e-12));
}

TEST_CASE("a tail reaches out from where the bead before it ended", "[geometry][bead]") {
  const std::vector<Move> moves = {spiral(1.5, 10, 10, 5), Tail{.length = 8 * millimetre}};
  CHECK(strays_beyond(13 * millimetre, moves, eight_mm_round, 1)->move == 0);
  const std::vector<Move> ring_first = {Ring{.radius = 3 * millimetre}, Tail{.length = millimetre}};
  CHECK(strays_beyond(6.9 * millimetre, ring_first, eight_mm_round, 1)->move == 0);
}

TEST_CASE("a move that cannot be is refused in plain words", "[geometry][bead][refusal]") {
  constexpr double nan = std::numeric_limits<double>::quiet_NaN();
  constexpr double infinite = std::numeric_limits<double>::infinity();
  const Length five = 5 * millimetre;
  const auto [move, words] = GENERATE_REF(table<Move, std::string>({
      {spiral(-1, 18, 2, 20), "a spiral of -1 turns; give from 0.01 to 100"},
      {spiral(0, 18, 2, 20), "a spiral of 0 turns"},
      {spiral(101, 18, 2, 20), "a spiral of 101 turns"},
      {spiral(nan, 18, 2, 20), "a spiral of not a number turns"},
      {spiral(3, -1, 2, 20), "a spiral's start radius of -1 mm; give from 0 mm to 2000 mm"},
      {spiral(3, 18, -2, 20), "a spiral's end radius of -2 mm"},
      {spiral(3, 18, 2, -20), "a spiral's rise of -20 mm"},
      {spiral(3, 0, 0, 0), "goes nowhere"},
      {Dollop{.diameter = Length(), .height = five}, "a dollop's diameter of 0 mm"},
      {Dollop{.diameter = five, .height = -five}, "a dollop's height of -5 mm"},
      {Ring{.radius = 2001 * millimetre}, "a ring's radius of 2001 mm"},
      {Ring{.radius = five, .at_height = -five}, "a height above the floor of -5 mm"},
      {Tail{.length = infinite * millimetre}, "a tail's length of inf mm"},
      {Dots{.count = 0, .circle_radius = five, .height = five}, "has 0 dots"},
      {Dots{.count = 501, .circle_radius = five, .height = five}, "has 501 dots"},
      {Dots{.count = 2, .circle_radius = Length(), .height = five}, "all in one place"},
      {Dots{.count = 2, .circle_radius = five, .height = Length()}, "a dot's height of 0 mm"},
      {Shells{.count = -3, .circle_radius = five, .length = five}, "has -3 shells"},
      {Shells{.count = 3, .circle_radius = -five, .length = five}, "a circle's radius of -5 mm"},
      {StraightBead{.length = Length()}, "a bead's length of 0 mm"},
      {StraightBead{.length = five, .aside = nan * millimetre}, "a distance from the middle"},
  }));
  try {
    check(move, here);
    FAIL("let pass: " << words);
  } catch (const UserError& error) {
    CHECK_THAT(std::string(error.what()), Contains(words));
    CHECK(error.parts().field == "/pipe/moves");
  }
}

TEST_CASE("moves are refused by their number, and when there are far too many",
          "[geometry][bead][refusal]") {
  const Move sound = spiral(4, 18, 0, 25);
  check({sound, Tail{.length = millimetre}, sound}, eight_mm_round, here);
  CHECK_THROWS_WITH(check({sound, Ring{.radius = Length()}}, eight_mm_round, here),
                    Contains("/pipe/moves/1") && Contains("a ring's radius of 0 mm"));
  // 1.3 km of bead.
  CHECK_THROWS_WITH(check({spiral(100, 2000, 2000, 0)}, eight_mm_round, here),
                    Contains("/pipe/moves/0") && Contains("longer than can be worked out"));
  CHECK_THROWS_WITH(check(std::vector<Move>(1000, sound), eight_mm_round, here),
                    Contains("longer than can be worked out"));
}

TEST_CASE("any move with sizes a hand can pipe is let pass", "[geometry][bead][law]") {
  rc::prop("no refusal", [] { check(any_move(), here); });
}

}  // namespace
}  // namespace brimwright::geometry
