#include "planning/piece_tally.h"

#include <algorithm>
#include <iterator>
#include <utility>

namespace brimwright::planning {
namespace {

/// One part of the piece, or of all bars of a loaf.
struct Part {
  std::string name;
  std::optional<double> keeps;  // of its mass in the cure, where that is known
  Mass mean;                    // in a piece
  std::vector<Mass> in_bars;    // what each is sure to have
  CutOff off;
};

std::optional<double> kept(const BatterTally& batter) {
  if (!batter.cure) return std::nullopt;
  return batter.cure->cured / batter.cure->fresh;
}

double count(const Plan& plan) { return static_cast<double>(plan.cut->bars.size()); }

/// Adds `density` of what is `parted` to a part.
void add(Part& part, const Plan& plan, const Parted& parted, Density density) {
  part.in_bars.resize(plan.cut->bars.size());
  for (std::size_t i = 0; i < parted.bars.size(); ++i) part.in_bars[i] += parted.bars[i] * density;
  part.mean += parted.in_bars() * density / count(plan);
  part.off.offcuts += parted.offcuts * density;
  part.off.kerf += parted.kerf * density;
  part.off.planing += parted.planing * density;
}

/// Something that lies over the whole top of a loaf.
Part over_the_top(const Plan& plan, const std::string& name, Mass of_loaf, bool is_sure) {
  Part part{.name = name, .keeps = 1, .mean = {}, .in_bars = {}, .off = {}};
  Mass in_bars;
  for (const double share : plan.cut->top) {
    part.in_bars.push_back(is_sure ? share * of_loaf : Mass{});
    in_bars += share * of_loaf;
  }
  part.mean = in_bars / count(plan);
  part.off.offcuts = of_loaf - in_bars;
  return part;
}

/// The same in every piece.
Part in_each(const Plan& plan, const std::string& name, Mass each) {
  const std::size_t bars = plan.cut ? plan.cut->bars.size() : 0;
  return {
      .name = name, .keeps = 1, .mean = each, .in_bars = std::vector<Mass>(bars, each), .off = {}};
}

Part base_part(const Plan& plan, const Run& run) {
  const auto& batter = plan.pour.batter;
  Part part{
      .name = run.pour.formula.name, .keeps = kept(batter), .mean = {}, .in_bars = {}, .off = {}};
  if (plan.cut)
    for (const auto& layer : plan.cut->layers) add(part, plan, layer, batter.density);
  else
    part.mean = batter.mass_each;
  return part;
}

Part topping_part(const Plan& plan, const Run& run) {
  const auto& batter = plan.pipe->batter;
  Part part{
      .name = run.pipe->formula.name, .keeps = kept(batter), .mean = {}, .in_bars = {}, .off = {}};
  if (plan.cut)
    add(part, plan, *plan.cut->topping, batter.density);
  else
    part.mean = batter.mass_each;
  return part;
}

Part colour_part(const Plan& plan, std::size_t layer, const Ingredient& colour) {
  const Mass in_cast = colour_in_a_cast(plan.pour.layers[layer], colour);
  if (!plan.cut) return in_each(plan, colour.name, in_cast);
  Part part{.name = colour.name, .keeps = 1, .mean = {}, .in_bars = {}, .off = {}};
  const Parted& where = plan.cut->layers[layer];
  add(part, plan, where, in_cast / where.whole());
  return part;
}

Part decoration_part(const Plan& plan, const Run& run, std::size_t i) {
  const DecorationTally& tally = plan.decorations[i];
  const Decoration& decoration = run.decorations[i];
  if (!plan.cut || decoration.per_piece > 0)
    return in_each(plan, tally.name, tally.per_piece * tally.mass_each);
  if (!tally.fit.embeds.empty()) {
    Part part{.name = tally.name, .keeps = 1, .mean = {}, .in_bars = {}, .off = {}};
    add(part, plan, plan.cut->inclusions[i], decoration.density);
    return part;
  }
  const bool is_coat = std::holds_alternative<Drizzle>(decoration.made);
  const auto of_loaf = static_cast<double>(decoration.per_cast) * tally.mass_each;
  return over_the_top(plan, tally.name, of_loaf, is_coat);
}

Part dust_part(const Plan& plan, const DustTally& dust) {
  if (!plan.cut || !dust.exposed) return in_each(plan, dust.name, dust.on_piece);
  return over_the_top(plan, dust.name, count(plan) * dust.on_piece, true);
}

/// What goes under one name is one part: a colour of two layers.
void put(std::vector<Part>& parts, Part part) {
  const auto same = std::find_if(parts.begin(), parts.end(),
                                 [&](const Part& other) { return other.name == part.name; });
  if (same == parts.end()) return parts.push_back(std::move(part));
  same->mean += part.mean;
  for (std::size_t i = 0; i < part.in_bars.size(); ++i) same->in_bars[i] += part.in_bars[i];
  same->off.offcuts += part.off.offcuts;
  same->off.kerf += part.off.kerf;
  same->off.planing += part.off.planing;
}

// Melt-and-pour and powders keep their mass.
std::vector<Part> parts_of(const Plan& plan, const Run& run) {
  std::vector<Part> parts{base_part(plan, run)};
  if (plan.pipe) parts.push_back(topping_part(plan, run));
  std::vector<Part> colours;
  for (std::size_t k = 0; k < plan.pour.layers.size(); ++k)
    for (const auto& colour : plan.pour.layers[k].colours)
      put(colours, colour_part(plan, k, colour));
  std::move(colours.begin(), colours.end(), std::back_inserter(parts));
  for (std::size_t i = 0; i < plan.decorations.size(); ++i)
    parts.push_back(decoration_part(plan, run, i));
  for (const auto& dust : plan.dust) parts.push_back(dust_part(plan, dust));
  return parts;
}

BarMass bar_of(const std::vector<Part>& parts, std::size_t number) {
  BarMass bar{.parts = {}, .fresh = {}, .cured = Mass{}};
  for (const Part& part : parts) {
    const Mass mass = part.in_bars[number];
    bar.parts.push_back(mass);
    bar.fresh += mass;
    bar.cured =
        bar.cured && part.keeps ? std::optional(*bar.cured + *part.keeps * mass) : std::nullopt;
  }
  return bar;
}

void tell_bars(PieceTally& piece, const std::vector<Part>& parts, std::size_t count) {
  for (std::size_t i = 0; i < count; ++i) piece.bars.push_back(bar_of(parts, i));
  const auto weight = [](const BarMass& bar) { return bar.cured.value_or(bar.fresh); };
  const auto lightest =
      std::min_element(piece.bars.begin(), piece.bars.end(),
                       [&](const auto& a, const auto& b) { return weight(a) < weight(b); });
  piece.lightest_bar = static_cast<std::size_t>(lightest - piece.bars.begin());
  for (const Part& part : parts) {
    piece.cut_off.offcuts += part.off.offcuts;
    piece.cut_off.kerf += part.off.kerf;
    piece.cut_off.planing += part.off.planing;
  }
}

}  // namespace

double base_in_a_piece(const std::optional<CutTally>& cut) {
  if (!cut) return 1;
  Volume in_bars, whole;
  for (const auto& layer : cut->layers) {
    in_bars += layer.in_bars();
    whole += layer.whole();
  }
  return in_bars / whole / static_cast<double>(cut->bars.size());
}

double topping_in_a_piece(const std::optional<CutTally>& cut) {
  if (!cut) return 1;
  return cut->topping->in_bars() / cut->topping->whole() / static_cast<double>(cut->bars.size());
}

double layer_in_a_piece(const std::optional<CutTally>& cut, std::size_t layer) {
  if (!cut) return 1;
  const Parted& parted = cut->layers[layer];
  return parted.in_bars() / parted.whole() / static_cast<double>(cut->bars.size());
}

Mass colour_in_a_cast(const LayerTally& layer, const Ingredient& colour) {
  return colour.weighed * (layer.mass_each / layer.mass);
}

PieceTally piece_of(const Plan& plan, const Run& run, const std::optional<PieceSize>& size) {
  const auto parts = parts_of(plan, run);
  PieceTally piece;
  piece.size = size;
  piece.cured = Mass{};
  for (const Part& part : parts) {
    std::optional<Mass> cured;
    if (part.keeps) cured = *part.keeps * part.mean;
    piece.parts.push_back({part.name, part.mean, cured});
    piece.fresh += part.mean;
    piece.cured = piece.cured && cured ? std::optional(*piece.cured + *cured) : std::nullopt;
  }
  if (plan.cut) tell_bars(piece, parts, plan.cut->bars.size());
  return piece;
}

Mass decoration_in_a_piece(const Plan& plan, std::size_t decoration) {
  const auto& parts = plan.piece.parts;  // decorations, then dusts, are the last of them
  return parts[parts.size() - plan.dust.size() - plan.decorations.size() + decoration].fresh;
}

}  // namespace brimwright::planning
