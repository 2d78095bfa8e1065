#include "planning/cutting.h"

#include "geometry/sections/filled_part.h"
#include "geometry/surface/enclosed_volume.h"
#include "planning/loaf_cutter.h"
#include "units/advice_text.h"
#include "units/printing.h"
#include "units/wording.h"

#include <algorithm>
#include <utility>

namespace brimwright::planning {
namespace {

using geometry::TriangleMesh;

// More pieces than this out of one slab is a slip of a unit: common practice, no source.
constexpr std::int64_t most_pieces = 5000;

Axis third(Axis a, Axis b) { return Axis(3 - index(a) - index(b)); }

Place inside(const Place& where, const std::string& field) {
  return {where.file, where.field + "/" + field};
}

constexpr Length thinnest_bar = 1 * millimetre;  // our own bound
constexpr Length hair = 1e-6 * millimetre;       // what rounding may leave

std::string plane_off_at_most(Length most) {
  return most > Length{} ? "plane off at most " + most_text(most) : "leave it out";
}

Loaf loaf_to_cut(const Cut& cut, const std::vector<TriangleMesh>& layers, const Place& where) {
  const Length height = planed_loaf(layers, Length{}).reach(Axis::z);
  if (cut.top_planing > Length{} && cut.top_planing > height - thinnest_bar + hair)
    throw UserError(
        inside(where, "top_planing"),
        "is " + in_mm(cut.top_planing, 2) + ", and all of it is " + in_mm(height, 2) + " high",
        plane_off_at_most(height - thinnest_bar));
  return planed_loaf(layers, cut.top_planing);
}

Volume greatest_of(const std::vector<Piece>& pieces) {
  Volume greatest;
  for (const Piece& piece : pieces) greatest = std::max(greatest, piece.volume);
  return greatest;
}

bool is_bar(const Piece& piece, Volume greatest) {
  // Less than half a bar is sold as none: common practice, no source.
  return piece.volume > Volume{} && piece.volume >= 0.5 * greatest;
}

std::int64_t bars_from(const Loaf& loaf, const Pattern& pattern) {
  const LoafCutter cutter(loaf, pattern);
  const Volume greatest = greatest_of(cutter.pieces());
  return std::count_if(cutter.pieces().begin(), cutter.pieces().end(),
                       [&](const Piece& piece) { return is_bar(piece, greatest); });
}

Bar bar_of(const Piece& piece, std::size_t number, const Pattern& pattern, double holding) {
  const auto reach = [&](Axis axis) {
    return (piece.box.high_mm[index(axis)] - piece.box.low_mm[index(axis)]) * millimetre;
  };
  const auto columns = pattern.columns.bars();
  return {.row = static_cast<std::int64_t>(number) / columns,
          .column = static_cast<std::int64_t>(number) % columns,
          .along = reach(pattern.along),
          .across = reach(pattern.across),
          .height = reach(third(pattern.along, pattern.across)),
          .layers = {},
          .volume = holding * piece.volume};
}

void add_remarks(CutTally& tally, std::size_t pieces) {
  const std::size_t small = pieces - tally.bars.size();
  if (small > 0)
    tally.remarks.push_back({Severity::note, std::to_string(small) + " of " +
                                                 std::to_string(pieces) +
                                                 " pieces are less than half the size of the "
                                                 "largest; they count as offcuts, not as bars."});
  // What a buyer would see on the shelf: common practice, no source.
  if (tally.least < 0.9 * tally.greatest)
    tally.remarks.push_back(
        {Severity::note, "The bars are not alike: the smallest is " + fixed_ml(tally.least) +
                             ", the largest " + fixed_ml(tally.greatest) +
                             ", as the mould's walls lean or its ends are round. Trimming more "
                             "off the ends and sides makes them more alike."});
}

/// Of what a solid leaves to the pieces, that in bars is told bar by bar; the others are offcuts.
Parted parted(const SolidParts& parts, const std::vector<Bar>& bars, std::int64_t columns,
              double holding) {
  Parted result;
  Volume in_pieces, in_bars;
  for (const Volume piece : parts.pieces) in_pieces += piece;
  for (const Bar& bar : bars) {
    const Volume in_bar = parts.pieces[static_cast<std::size_t>(bar.row * columns + bar.column)];
    result.bars.push_back(holding * in_bar);
    in_bars += in_bar;
  }
  result.offcuts = holding * (parts.volume(Destination::offcuts) + (in_pieces - in_bars));
  result.kerf = holding * parts.volume(Destination::kerf);
  result.planing = holding * parts.volume(Destination::planing);
  return result;
}

Parted nothing_of(const CutTally& cut) {
  return {.bars = std::vector<Volume>(cut.bars.size()), .offcuts = {}, .kerf = {}, .planing = {}};
}

Parted all_parted(const CutTally& cut, const std::vector<TriangleMesh>& solids, double holding) {
  Parted all = nothing_of(cut);
  for (const auto& solid : solids) all += parted_by(cut, solid, holding);
  return all;
}

/// Tells the layers' batter from what lies in it.
void tell_apart(CutTally& tally, const std::vector<Inclusion>& inclusions) {
  for (const auto& inclusion : inclusions) {
    Parted whole = all_parted(tally, inclusion.proud, inclusion.holding);
    for (std::size_t k = 0; k < inclusion.in_layers.size(); ++k) {
      const Parted there = all_parted(tally, inclusion.in_layers[k], inclusion.holding);
      whole += there;
      tally.layers[k] -= there;
    }
    tally.inclusions.push_back(std::move(whole));
  }
  for (std::size_t i = 0; i < tally.bars.size(); ++i)
    for (std::size_t k = 0; k < tally.layers.size(); ++k) {
      // A bar that is all rod has no batter, whatever rounding says.
      tally.layers[k].bars[i] = std::max(Volume{}, tally.layers[k].bars[i]);
      tally.bars[i].layers.push_back(tally.layers[k].bars[i]);
    }
}

CutTally tally_of(const Loaf& loaf, const Pattern& pattern, double holding) {
  const LoafCutter cutter(loaf, pattern);
  CutTally tally;
  tally.along = pattern.along;
  tally.across = pattern.across;
  tally.columns = pattern.columns.bars();
  tally.rows = pattern.rows.bars();
  tally.knife.pattern = pattern;
  tally.usable_along = pattern.columns.usable();
  tally.usable_across = pattern.rows.usable();
  tally.loaf = holding * loaf.whole;
  tally.kerf = holding * cutter.volume(Destination::kerf);
  tally.offcuts = holding * cutter.volume(Destination::offcuts);
  tally.planing = holding * cutter.volume(Destination::planing);
  const Volume greatest = greatest_of(cutter.pieces());
  Volume in_bars;
  tally.least = tally.greatest = holding * greatest;
  for (std::size_t i = 0; i < cutter.pieces().size(); ++i) {
    const Bar bar = bar_of(cutter.pieces()[i], i, pattern, holding);
    if (!is_bar(cutter.pieces()[i], greatest)) {
      tally.offcuts += bar.volume;
      continue;
    }
    tally.least = std::min(tally.least, bar.volume);
    in_bars += bar.volume;
    tally.bars.push_back(bar);
  }
  if (!tally.bars.empty()) tally.mean = in_bars / static_cast<double>(tally.bars.size());
  for (std::size_t k = 0; k < loaf.layers.size(); ++k) {
    tally.layers.push_back(parted(cutter.layers()[k], tally.bars, tally.columns, holding));
    tally.layers.back().planing += holding * loaf.planed[k];
    tally.planing += holding * loaf.planed[k];
  }
  add_remarks(tally, cutter.pieces().size());
  return tally;
}

/// `size` rounded down in one unit to as few decimals as still give `count` bars.
std::pair<Length, int> shown_size(Division division, Length size, std::int64_t count, int decimals,
                                  Length (*rounded)(Length, int)) {
  for (; decimals < 5; ++decimals) {
    division.size = rounded(size, decimals);
    if (division.size > Length{} && division.bars() == count) break;
  }
  return {rounded(size, decimals), decimals};
}

void add_one_more(CutTally& tally, const Loaf& loaf, const Pattern& pattern, Axis direction) {
  Pattern finer = pattern;
  Division& division = direction == pattern.along ? finer.columns : finer.rows;
  const std::int64_t count = division.bars() + 1;
  const Length most = division.largest(count);
  if (!(most > Length{})) return;
  const auto [size, decimals] = shown_size(division, most, count, 1, most_in_millimetres);
  const auto [in_inches, inch_decimals] = shown_size(division, most, count, 2, most_in_inches);
  division.size = size;
  if (!(size > Length{}) || finer.pieces() > most_pieces) return;
  const std::int64_t bars = bars_from(loaf, finer);
  // Where end pieces are too small to be bars, one more cut need not give one more bar.
  if (bars <= static_cast<std::int64_t>(tally.bars.size())) return;
  tally.one_more.push_back({.direction = direction,
                            .size = size,
                            .bars = bars,
                            .text = trimmed(size / millimetre, decimals) + " mm (" +
                                    trimmed(in_inches / inch, inch_decimals) + " in)"});
}

void refuse_empty(const Division& division, const Place& trim, const std::string& what) {
  if (division.usable() >= thinnest_bar) return;
  const Length whole = division.to - division.from;
  const std::string takes =
      "takes " + in_mm(2 * division.trim, 2) + " off " + what + " of " + in_mm(whole, 2);
  if (whole < thinnest_bar) throw UserError(trim, takes, "nothing of it is left to cut");
  throw UserError(trim, takes,
                  "trim at most " + most_text((whole - thinnest_bar) / 2) + " off each");
}

/// What may be planed off each face of a bar: all that the bar asked for leaves, or else a bar of
/// the thinnest.
Length most_planing(const Division& division) {
  Division unplaned = division;
  unplaned.planing = Length{};
  const Length room = unplaned.largest(1) - division.size;
  return (room > Length{} ? room : division.usable() - thinnest_bar) / 2;
}

void refuse_too_many(const Pattern& pattern, const Place& where) {
  if (pattern.columns.bars() <= most_pieces && pattern.rows.bars() <= most_pieces &&
      pattern.pieces() <= most_pieces)
    return;
  throw UserError(inside(where, "bar"),
                  "makes more than " + std::to_string(most_pieces) + " pieces of one pour",
                  "check the size and its unit");
}

Axis longer_side(const Loaf& loaf) {
  return loaf.reach(Axis::y) > loaf.reach(Axis::x) ? Axis::y : Axis::x;
}

Axis other_side(Axis axis) { return axis == Axis::x ? Axis::y : Axis::x; }

Axis slicing_direction(const Cut& cut, const Loaf& loaf, const Place& where) {
  const Axis longer = longer_side(loaf);
  if (!cut.along && loaf.reach(Axis::z) > loaf.reach(longer))
    throw UserError(where, "does not say which way to slice what stands higher than it is long",
                    R"(give "along": "z" for rounds off a column, or "x" or "y")");
  return cut.along.value_or(longer);
}

Pattern slices_of(const Cut& cut, const Loaf& loaf, const Place& where) {
  const Axis along = slicing_direction(cut, loaf, where), across = other_side(along);
  if (along == Axis::z && cut.side_trim > Length{})
    throw UserError(inside(where, "side_trim"), "does nothing when rounds are cut off a column",
                    "leave it out, or slice along x or y");
  const Length thickness = std::get<Slices>(cut.bar).thickness;
  Pattern pattern{along,
                  across,
                  {.from = loaf.low(along),
                   .to = loaf.high(along),
                   .trim = cut.end_trim,
                   .size = thickness,
                   .kerf = cut.kerf,
                   .planing = cut.face_planing},
                  {.from = loaf.low(across),
                   .to = loaf.high(across),
                   .trim = cut.side_trim,
                   .size = {},
                   .kerf = cut.kerf}};
  pattern.rows.size = pattern.rows.usable();
  refuse_empty(pattern.columns, inside(where, "end_trim"), "a loaf");
  refuse_empty(pattern.rows, inside(where, "side_trim"), "a loaf's width");
  if (pattern.columns.bars() > 0) return pattern;
  const std::string left = in_mm(pattern.columns.usable(), 2);
  const Length most = pattern.columns.largest(1);
  if (!(most >= thinnest_bar))
    throw UserError(inside(where, "face_planing"),
                    "leaves nothing of a bar: the loaf is " + left + " long after trimming",
                    plane_off_at_most(most_planing(pattern.columns)));
  throw UserError(inside(where, "bar/thickness"),
                  "is " + in_mm(thickness, 2) + ", and the loaf is " + left +
                      " long after trimming" +
                      (cut.face_planing > Length{} ? " and before planing" : ""),
                  "give at most " + most_text(most));
}

/// The slab's longer side is divided in columns whichever way the bars lie.
Pattern grid_of(const Cut& cut, const Loaf& loaf, Axis length_lies) {
  const Axis along = longer_side(loaf), across = other_side(along);
  const Grid& bar = std::get<Grid>(cut.bar);
  const auto division = [&](Axis axis, Length trim) {
    return Division{.from = loaf.low(axis),
                    .to = loaf.high(axis),
                    .trim = trim,
                    .size = axis == length_lies ? bar.length : bar.width,
                    .kerf = cut.kerf,
                    .planing = cut.face_planing};
  };
  return {along, across, division(along, cut.end_trim), division(across, cut.side_trim)};
}

[[noreturn]] void refuse_grid(const Cut& cut, const Pattern& pattern, bool other_fits,
                              const Place& where) {
  const Grid& bar = std::get<Grid>(cut.bar);
  const Length length = pattern.columns.largest(1), width = pattern.rows.largest(1);
  if (!(length >= thinnest_bar && width >= thinnest_bar))
    throw UserError(
        inside(where, "face_planing"), "leaves nothing of a bar",
        plane_off_at_most(std::min(most_planing(pattern.columns), most_planing(pattern.rows))));
  const std::string size = in_mm(bar.length, 2) + " x " + in_mm(bar.width, 2);
  const std::string slab =
      in_mm(pattern.columns.usable(), 2) + " x " + in_mm(pattern.rows.usable(), 2);
  throw UserError(inside(where, "bar"),
                  "is " + size + ", and the slab is " + slab + " after trimming" +
                      (cut.face_planing > Length{} ? " and before planing" : ""),
                  other_fits ? R"(leave out "along": it fits the other way)"
                             : "give at most " + most_text(length) + " x " + most_text(width));
}

CutTally grid_cut(const Cut& cut, const Loaf& loaf, double holding, const Place& where) {
  if (cut.along == Axis::z)
    throw UserError(inside(where, "along"), "is z, and a grid is cut on the plan",
                    R"(give "x" or "y", or leave it out for the one that gives more bars)");
  const Axis first = cut.along.value_or(longer_side(loaf));
  Pattern pattern = grid_of(cut, loaf, first), other = grid_of(cut, loaf, other_side(first));
  refuse_empty(pattern.columns, inside(where, "end_trim"), "a slab");
  refuse_empty(pattern.rows, inside(where, "side_trim"), "a slab's width");
  refuse_too_many(pattern, where);
  refuse_too_many(other, where);
  const bool other_fits = other.pieces() > 0;
  if (pattern.pieces() == 0 && (cut.along || !other_fits))
    refuse_grid(cut, pattern, other_fits, where);
  CutTally tally = tally_of(loaf, pattern, holding);
  CutTally turned = tally_of(loaf, other, holding);
  tally.length_lies = first;
  turned.length_lies = other_side(first);
  if (!cut.along && turned.bars.size() > tally.bars.size()) {
    std::swap(tally, turned);
    std::swap(pattern, other);
  }
  tally.other_way = static_cast<std::int64_t>(turned.bars.size());
  add_one_more(tally, loaf, pattern, pattern.along);
  add_one_more(tally, loaf, pattern, pattern.across);
  return tally;
}

CutTally sliced(const Cut& cut, const Loaf& loaf, double holding, const Place& where) {
  const Pattern pattern = slices_of(cut, loaf, where);
  refuse_too_many(pattern, where);
  CutTally tally = tally_of(loaf, pattern, holding);
  add_one_more(tally, loaf, pattern, pattern.along);
  return tally;
}

}  // namespace

Parted parted_by(const CutTally& cut, const TriangleMesh& solid, double holding) {
  TriangleMesh rest = solid;
  Volume planed;
  if (cut.knife.planed_to && !solid.triangles.empty()) {
    const auto top = geometry::Plane::level(*cut.knife.planed_to / millimetre);
    planed = holding * enclosed_volume(part_above(solid, top));
    rest = part_below(solid, top);
  }
  Parted result = nothing_of(cut);
  if (!rest.triangles.empty())
    result = parted(cut_to(cut.knife.pattern, rest), cut.bars, cut.columns, holding);
  result.planing += planed;
  return result;
}

CutTally cut_of(const Cut& cut, const std::vector<TriangleMesh>& layers, double holding,
                const Place& where, const std::vector<Inclusion>& inclusions) {
  const Loaf loaf = loaf_to_cut(cut, layers, where);
  CutTally tally = std::holds_alternative<Grid>(cut.bar) ? grid_cut(cut, loaf, holding, where)
                                                         : sliced(cut, loaf, holding, where);
  if (cut.top_planing > Length{}) tally.knife.planed_to = loaf.high(Axis::z);
  tell_apart(tally, inclusions);
  return tally;
}

}  // namespace brimwright::planning
