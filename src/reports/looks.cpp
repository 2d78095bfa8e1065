#include "reports/looks.h"

namespace brimwright::reports {
namespace {

using Fill = LookDrawn::Fill;

std::vector<Hatching> hatchings() {
  return {
      {.tile_mm = 2.4,
       .lines = {{{-0.6, 0.6}, {0.6, -0.6}}, {{0, 2.4}, {2.4, 0}}, {{1.8, 3}, {3, 1.8}}}},
      {.tile_mm = 1.8, .dots = {{0.5, 0.5}, {1.4, 1.4}}},
      {.tile_mm = 1.5, .lines = {{{0, 0.75}, {1.5, 0.75}}}},
      {.tile_mm = 3.2, .lines = {{{0, 3.2}, {3.2, 0}}, {{0, 0}, {3.2, 3.2}}}},
      {.tile_mm = 2.4,
       .lines = {{{-0.6, 1.8}, {0.6, 3}}, {{0, 0}, {2.4, 2.4}}, {{1.8, -0.6}, {3, 0.6}}}},
      {.tile_mm = 1.5, .lines = {{{0.75, 0}, {0.75, 1.5}}}},
      {.tile_mm = 3,
       .lines = {{{0.4, 0.75}, {1.8, 0.75}}, {{1.9, 2.25}, {3, 2.25}}, {{0, 2.25}, {0.3, 2.25}}}},
      {.tile_mm = 2.2, .lines = {{{0, 1.1}, {2.2, 1.1}}, {{1.1, 0}, {1.1, 2.2}}}}};
}

std::vector<LookDrawn> made_looks() {
  std::vector<LookDrawn> looks = {{.name = "paper", .fill = Fill::white},
                                  {.name = "wall", .line_mm = 0.6, .joins_are_round = true},
                                  {.name = "pour", .line_mm = 0.45, .dashes_mm = {3, 1.2}},
                                  {.name = "crease", .line_mm = 0.35, .joins_are_round = true},
                                  {.name = "hidden", .line_mm = 0.3, .dashes_mm = {1.6, 1}},
                                  {.name = "fine", .line_mm = 0.18},
                                  {.name = "mark", .line_mm = 0.25, .dashes_mm = {0.5, 0.9}},
                                  {.name = "chain", .line_mm = 0.25, .dashes_mm = {6, 1.2, 1, 1.2}},
                                  {.name = "black", .fill = Fill::black, .line_mm = 0.18},
                                  {.name = "white", .fill = Fill::white, .line_mm = 0.18}};
  for (Hatching& hatching : hatchings()) {
    const std::size_t index = looks.size() - static_cast<std::size_t>(Look::first_hatching);
    looks.push_back({.name = "hatch" + std::to_string(index),
                     .fill = Fill::hatching,
                     .line_mm = 0.18,
                     .hatching = hatching});
  }
  return looks;
}

}  // namespace

Look hatching(std::size_t index) {
  const std::size_t first = static_cast<std::size_t>(Look::first_hatching);
  return static_cast<Look>(first + index % (looks().size() - first));
}

const std::vector<LookDrawn>& looks() {
  static const std::vector<LookDrawn> all = made_looks();
  return all;
}

const LookDrawn& drawn(Look look) { return looks().at(static_cast<std::size_t>(look)); }

}  // namespace brimwright::reports
