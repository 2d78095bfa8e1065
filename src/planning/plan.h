#pragma once

#include "planning/cautions.h"
#include "planning/cure.h"
#include "planning/label.h"
#include "planning/run.h"
#include "planning/weighing.h"
#include "units/money.h"
#include "units/quantity.h"
#include "units/remark.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::planning {

struct Pieces {
  std::int64_t sell = 0;      // wanted saleable
  std::int64_t make = 0;      // cast, spoilage included
  std::int64_t fillings = 0;  // times all moulds owned are filled
  std::int64_t cavities = 0;  // in all moulds owned
};

/// The masses of one batter: in_pieces + lost = weighing.batter.
struct BatterTally {
  Volume volume_each;
  Mass mass_each;
  Density density;           // what turned the one into the other
  Density density_computed;  // of the plain batter, from its ingredients
  Mass in_pieces, lost;
  Weighing weighing;
  std::optional<PartCure> cure = {};  // of the part in one piece; when its formula tells
};

struct LayerTally {
  std::string name;
  Length from, to;  // depths above the cavity's lowest point
  Volume volume_each;
  Mass mass_each;
  Mass mass;  // of the whole batter, losses shared out
  std::vector<Ingredient> colours;
};

struct PourTally {
  BatterTally batter;
  Length line;       // depth of the pour line above the lowest point
  Length headspace;  // from the line to the brim
  Volume brimful, headspace_volume;
  Area surface;  // free surface at the line: what one millimetre is worth
  std::vector<LayerTally> layers;
};

struct PipeTally {
  BatterTally batter;  // density is the whipped one
  Volume visible_each, in_headspace_each;
  double overrun = 0;                      // plain density / whipped density - 1
  std::optional<std::int64_t> loads;       // of the bag, when its size is given
  std::optional<std::int64_t> pieces_now;  // from the weigh-cup's reading today
};

struct PerchTally {
  std::string name, material, mould;
  std::int64_t casts = 0;  // decorations, spares included
  std::int64_t cavity_fills = 0;
  std::int64_t tray_fills = 0;  // times all trays owned are filled
  Volume volume_each;           // of one decoration
  Mass mass_each;
  Mass make;  // to melt, losses included, on the large scale
  std::int64_t per_piece = 1;
};

struct DustTally {
  std::string name;
  Mass each, make;
};

/// Material used, in money. `per_piece` and `total` leave out what is unpriced, and say so.
struct CostLine {
  std::string name;
  Mass used;
  std::optional<Money> cost;
};
struct Cost {
  std::vector<CostLine> lines;
  Money total, per_piece;  // per saleable piece
  std::vector<std::string> unpriced;
};

struct PieceTally {
  Mass fresh;
  std::optional<Mass> cured;  // when each formula says how its water is lost
};

/// A bottle of fragrance over the batters.
struct BottleTally {
  struct Part {
    std::string name;  // "Base", "Topping"
    Mass gives, step;
    Share of_batter;
  };
  std::string name;
  Mass holds;
  std::vector<Part> parts;
  std::vector<Remark> remarks;
};

/// Everything a run needs, computed. A value: reports are pure functions of it.
struct Plan {
  std::string file, name;
  Pieces pieces;
  PourTally pour;
  std::optional<PipeTally> pipe;
  std::vector<PerchTally> perch;
  std::vector<DustTally> dust;
  PieceTally piece;
  std::optional<Cost> cost;
  std::optional<LabelDraft> label;  // when the run asks for one
  std::vector<BottleTally> bottles;
  std::vector<Caution> cautions;  // worst first
};

/// Plans `run`: pieces, volume to mass by each batter's own density, losses, batter to make,
/// weighed ingredients, effective superfat, cost. UserError where the run contradicts itself.
Plan plan(const Run& run);

}  // namespace brimwright::planning
