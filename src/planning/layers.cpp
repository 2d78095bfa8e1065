#include "planning/layers.h"

#include "moulds/mould_solid.h"
#include "planning/layer_solids.h"
#include "planning/scales.h"
#include "units/printing.h"
#include "units/rounding.h"
#include "units/share_of.h"

#include <algorithm>
#include <cmath>

namespace brimwright::planning {
namespace {

Place layers_place(const Run& run) { return run.place("/pour/layers"); }
Place layer_place(const Run& run, std::size_t layer, const std::string& field) {
  return run.place("/pour/layers/" + std::to_string(layer) + "/" + field);
}

bool is_rest(const Layer& layer) { return std::holds_alternative<LayerRest>(layer.amount); }

void require_one_way(const Run& run) {
  const auto& layers = run.pour.layers;
  const auto rests = std::count_if(layers.begin(), layers.end(), is_rest);
  if (rests > 1)
    throw UserError(layers_place(run), "two layers take the rest", "let one layer take the rest");
  std::size_t way = std::variant_npos;
  for (const auto& layer : layers) {
    if (is_rest(layer)) continue;
    if (way != std::variant_npos && way != layer.amount.index())
      throw UserError(layers_place(run), "layers are given in different ways",
                      "give all of them as depth, or all as mass, or all as parts");
    way = layer.amount.index();
  }
  const bool by_parts =
      way != std::variant_npos && std::any_of(layers.begin(), layers.end(), [](const Layer& layer) {
        return std::holds_alternative<LayerParts>(layer.amount);
      });
  if (by_parts && rests > 0)
    throw UserError(layers_place(run), "parts leave no rest", "give that layer its parts too");
}

bool is_tilted(const Layer& layer) { return layer.tilted && layer.tilted->angle > Angle(); }

bool any_tilted(const Run& run) {
  return std::any_of(run.pour.layers.begin(), run.pour.layers.end(), is_tilted);
}

bool is_by_depth(const Run& run) {
  return std::any_of(run.pour.layers.begin(), run.pour.layers.end(), [](const Layer& layer) {
    return std::holds_alternative<LayerDepth>(layer.amount);
  });
}

void require_sound_props(const Run& run) {
  const auto& layers = run.pour.layers;
  for (std::size_t i = 0; i < layers.size(); ++i) {
    if (layers[i].tilted) check(*layers[i].tilted, layer_place(run, i, "tilted/angle"));
    if (is_tilted(layers[i]) && i > 0 && is_by_depth(run))
      throw UserError(layer_place(run, i, "tilted"),
                      "does not work with a depth, where a tilted layer lies over another",
                      "give the layers as mass or as parts");
  }
  if (is_tilted(layers.back()))
    throw UserError(layer_place(run, layers.size() - 1, "tilted"),
                    "cannot be used for the last layer, which is poured level to the pour line",
                    "pour another, level layer over it");
}

/// What a layer takes in the measure it is said in: mm, g or parts.
double amount_of(const Layer& layer) {
  if (const auto* depth = std::get_if<LayerDepth>(&layer.amount))
    return depth->thickness / millimetre;
  if (const auto* mass = std::get_if<LayerMass>(&layer.amount)) return mass->each / gram;
  if (const auto* parts = std::get_if<LayerParts>(&layer.amount)) return parts->parts;
  return 0;
}

/// The key under which a layer says what it takes.
std::string amount_key(const Layer& layer) {
  if (std::holds_alternative<LayerDepth>(layer.amount)) return "depth";
  if (std::holds_alternative<LayerMass>(layer.amount)) return "mass";
  return std::holds_alternative<LayerParts>(layer.amount) ? "parts" : "rest";
}

/// Beside parts of 1e13 a layer of one part has no thickness, and beside endless ones no figure.
void refuse_films(const std::vector<LayerTally>& tallies, const Run& run) {
  constexpr Length thinnest = 0.1 * millimetre;  // our own bound: batter levels no thinner
  for (std::size_t i = 0; i < tallies.size(); ++i) {
    const Length thickness = tallies[i].to - tallies[i].from;
    if (thickness >= thinnest) continue;
    throw UserError(layer_place(run, i, amount_key(run.pour.layers[i])),
                    "leaves this layer thinner than " + trimmed(thinnest / millimetre, 1) +
                        " mm, which cannot be poured",
                    "leave the layer out, or give it more beside the others");
  }
}

/// Amounts in one measure that add up to `whole`: the rest filled in, or a refusal with the figure.
std::vector<double> amounts_up_to(const Run& run, double whole, const std::string& unit) {
  std::vector<double> amounts;
  double said = 0;
  bool has_rest = false;
  for (const auto& layer : run.pour.layers) {
    amounts.push_back(amount_of(layer));
    said += amounts.back();
    has_rest = has_rest || is_rest(layer);
  }
  const double left = whole - said;
  const std::string figures =
      "the layers take " + trimmed(said, 1) + " " + unit + " of " + trimmed(whole, 1) + " " + unit;
  if (has_rest && left <= 0)
    throw UserError(layers_place(run), figures + ", which leaves nothing for the rest",
                    "make a layer smaller or raise the pour line");
  // A fifth of a per cent is less than anyone pours to: common practice, no source.
  if (!has_rest && std::abs(left) > 0.002 * whole)
    throw UserError(layers_place(run), figures,
                    "let one of them take the rest with \"rest\": true");
  for (std::size_t i = 0; i < amounts.size(); ++i)
    if (is_rest(run.pour.layers[i])) amounts[i] = left;
  return amounts;
}

/// What the first layer holds where it stands `mark` up the low wall of the tilted mould.
Volume filled_to_mark(const Run& run, const geometry::TriangleMesh& cavity, Length mark) {
  const geometry::TiltedPour pour(cavity, *run.pour.layers.front().tilted);
  return moulds::holding_of(run.pour.mould, cavity) *
         pour.volume_at(reachable(pour, mark, layer_place(run, 0, "depth")));
}

/// Volumes below the layers' upper faces in one cavity; the last is the volume to the pour line.
std::vector<Volume> upper_faces(const Run& run, const Cavity& cavity, const FreeCurve& curve,
                                Length line, Density batter) {
  const auto& layers = run.pour.layers;
  const Volume poured = curve.volume_below(line);
  const bool by_depth = is_by_depth(run);
  const bool by_mass = std::any_of(layers.begin(), layers.end(), [](const Layer& layer) {
    return std::holds_alternative<LayerMass>(layer.amount);
  });
  std::vector<double> amounts;
  if (by_depth) {
    amounts = amounts_up_to(run, line / millimetre, "mm");
  } else if (by_mass) {
    amounts = amounts_up_to(run, poured * batter / gram, "g");
  } else {
    for (const auto& layer : layers) amounts.push_back(is_rest(layer) ? 1 : amount_of(layer));
  }
  double whole = 0;
  for (const double amount : amounts) whole += amount;
  std::vector<Volume> faces;
  double so_far = 0;
  for (const double amount : amounts) {
    so_far += amount;
    const double reached = so_far / whole;
    faces.push_back(by_depth ? curve.volume_below(reached * line) : reached * poured);
  }
  if (by_depth && is_tilted(layers.front()))
    faces.front() = filled_to_mark(run, *cavity.fine, amounts.front() / whole * line);
  faces.back() = poured;
  return faces;
}

/// A sloping layer reaches from one depth to another, and so do those next to it.
void tell_reaches(std::vector<LayerTally>& tallies, const Run& run,
                  const geometry::TriangleMesh& cavity, Length line) {
  const PouredCavity poured = poured_cavity(run, cavity, line, tallies);
  for (std::size_t i = 0; i < tallies.size(); ++i) {
    tallies[i].from = poured.layers[i].from;
    tallies[i].to = poured.layers[i].to;
    tallies[i].surface = poured.layers[i].surface;
  }
  tallies.back().to = line;
}

Ingredient dosed(const LayerColour& colour, Mass layer, Mass fats, const Scales& scales) {
  const Mass basis = colour.rate.of == RateBasis::fats ? fats : layer;
  Mass exact;
  if (const auto* share = std::get_if<Share>(&colour.rate.amount))
    exact = *share * basis;
  else
    exact = std::get<SpecificVolume>(colour.rate.amount) * basis * *colour.bulk_density;
  const auto [step, weighings] = on_fine_scale(scales, exact);
  std::optional<Volume> spoonful;
  if (colour.bulk_density) spoonful = exact / *colour.bulk_density;
  return {.name = colour.name,
          .price_name = colour.name,
          .role = Role::additive,
          .goes_into = "batter",
          .exact = exact,
          .weighed = rounded_nearest(exact, step),
          .step = step,
          .weighings = weighings,
          .spoonful = spoonful,
          .set_aside = {}};
}

}  // namespace

std::vector<LayerTally> layers_of(const Run& run, const Cavity& cavity, const FreeCurve& curve,
                                  Length line, Density batter) {
  std::vector<LayerTally> tallies;
  if (run.pour.layers.empty()) return tallies;
  require_one_way(run);
  require_sound_props(run);
  if (any_tilted(run) && curve.displaced_below(line) > Volume{})
    throw UserError(layers_place(run), "tilts the mould while embeds already lie in it",
                    "pour level round them, or press them in after");
  const auto faces = upper_faces(run, cavity, curve, line, batter);
  Volume below;
  for (std::size_t i = 0; i < faces.size(); ++i) {
    const Volume each = faces[i] - below;
    tallies.push_back({.name = run.pour.layers[i].name,
                       .from = curve.depth_at(below),
                       .to = curve.depth_at(faces[i]),
                       .volume_each = each,
                       .mass_each = each * batter,
                       .mass = {},
                       .step = run.scales.large.step,
                       .colours = {},
                       .tilted = run.pour.layers[i].tilted,
                       .surface = {}});
    below = faces[i];
  }
  refuse_films(tallies, run);
  if (any_tilted(run)) tell_reaches(tallies, run, *cavity.fine, line);
  return tallies;
}

void fill_jugs(std::vector<LayerTally>& tallies, const Run& run, std::int64_t casts,
               Share fats_of_batter) {
  const PourLosses& losses = run.pour.losses;
  const Mass stays = losses.jugs / std::max(1.0, static_cast<double>(tallies.size()));
  Mass exact, filled;
  for (std::size_t i = 0; i < tallies.size(); ++i) {
    auto& layer = tallies[i];
    exact += static_cast<double>(casts) * layer.mass_each * (1 + losses.overpour.of_one()) + stays;
    layer.mass = rounded_down(exact, layer.step) - filled;
    filled += layer.mass;
    if (layer.mass == Mass{})
      throw UserError(layer_place(run, i, amount_key(run.pour.layers[i])),
                      "leaves this layer less than the large scale's step of " +
                          trimmed(layer.step / gram, 3) + " g in a batch",
                      "give it more beside the others, or make larger batches");
    for (const auto& colour : run.pour.layers[i].colours)
      layer.colours.push_back(dosed(colour, layer.mass, fats_of_batter * layer.mass, run.scales));
  }
}

}  // namespace brimwright::planning
