#pragma once

#include "chemistry/heat_findings.h"
#include "chemistry/proportions.h"
#include "geometry/beads/bead.h"
#include "geometry/distance/placement.h"
#include "geometry/levels/tilted_pour.h"
#include "planning/cautions.h"
#include "planning/cure.h"
#include "planning/cut.h"
#include "planning/label.h"
#include "planning/lye_pot.h"
#include "planning/piece_size.h"
#include "planning/run.h"
#include "planning/weighing.h"
#include "units/money.h"
#include "units/quantity.h"
#include "units/remark.h"

#include <chrono>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::planning {

struct Pieces {
  std::int64_t sell = 0;      // wanted saleable
  std::int64_t make = 0;      // spoilage included, and what fills the moulds where she wants that
  std::int64_t fillings = 0;  // times that moulds are locked
  std::int64_t cavities = 0;  // in all moulds owned
  std::int64_t per_cast = 1;  // pieces that one filled cavity yields: bars of a loaf
  std::int64_t casts = 0;     // cavities filled
  std::int64_t to_stock = 0;  // pieces that come out beyond sell and spoilage
  std::int64_t batches = 0;
};

/// The masses of one batter: in_pieces + lost = weighing.batter.
struct BatterTally {
  Volume volume_each;
  Mass mass_each;
  Density density;           // what turned the one into the other
  Density density_computed;  // of the plain batter, from its ingredients
  chemistry::Proportions per_fat;
  Mass in_pieces, lost;
  Weighing weighing;
  std::optional<PartCure> cure = {};  // of the part in one piece; when its formula tells
  chemistry::HeatFindings heat = {};  // none yet in a trial
};

/// A surface that set while the mould was tilted, in the frame of moulds::solid_of.
struct SlopingSurface {
  Length over_origin;     // its depth there, above the cavity's lowest point
  double rise_x, rise_y;  // along +x and +y, millimetres a millimetre
};

struct LayerTally {
  std::string name;
  Length from, to;  // lowest and highest depth it reaches above the cavity's lowest point
  Volume volume_each;
  Mass mass_each;
  Mass mass;  // in its jug: for the pieces, what is poured over, and what stays in the jug
  Mass step;  // of the scale it is weighed on
  std::vector<Ingredient> colours;
  std::optional<geometry::Tilt> tilted = {};   // while it is poured
  std::optional<SlopingSurface> surface = {};  // where it was tilted
};

struct PourTally {
  BatterTally batter;
  Volume displaced;  // by embeds below the line: not poured
  Length line;       // depth of the pour line above the lowest point
  Length poured_to;  // the same, or lower where embeds pressed in afterwards raise it to the line
  Length headspace;  // from the line to the brim
  Volume brimful, headspace_volume;
  Area surface;  // free surface at the line: what one millimetre is worth
  std::vector<LayerTally> layers;
};

/// The part of one topping above its foot, by each way that the run gives; `volume` is that of the
/// weightiest of them.
struct VisibleTopping {
  Volume volume;
  std::optional<Volume> as_given = {};  // in place of the trials
  std::optional<Volume> by_trials, by_beads, by_envelope;
  Share trials_spread;                                 // greatest less least trial / their mean
  std::vector<geometry::Laid> moves;                   // what each move lays down by geometry alone
  std::optional<HandCorrection> correction_used;       // on the beads
  std::optional<HandCorrection> suggested_correction;  // weighed / computed, where both are given
  std::optional<Share> soap_share_found;  // volume / hull of the envelope, where both are given
};

/// What a weigh-cup reading means for the bowl.
struct WhipReading {
  Mass net;
  Density density;
  double overrun = 0;
  std::int64_t casts = 0;
  bool is_planned = false;
};

/// One limit to what is made in one go, a batch or a whipping.
struct Limit {
  std::string what;        // "cavities", "wish", "pot", "lye jug", "bowl", "open time", "whisk"
  bool is_least = false;   // so many casts at least, otherwise at most
  std::int64_t casts = 0;  // the limit
  bool sets = false;       // it keeps the batches from being larger
  std::string text = {};   // in words, with its number
};

struct SpoonedLye {
  std::int64_t spoonfuls = 0;
  std::chrono::seconds each, altogether;
};

/// The topping of one whipping; or the sum of several, and then what belongs to one bowl (from
/// `casts_now` on) is the largest one's.
struct PipeTally {
  BatterTally batter;  // density is the whipped one
  VisibleTopping visible;
  Volume visible_each, in_headspace_each;
  double overrun = 0;                 // plain density / whipped density - 1
  std::optional<std::int64_t> loads;  // of the bag, when its size is given
  std::int64_t whippings = 1;
  Mass left_behind;                       // planned to stay in bag, tip, bowl and at bag changes
  std::optional<std::int64_t> casts_now;  // from the weigh-cup's reading today
  std::vector<WhipReading> readings;
  std::vector<Limit> limits;                   // to one whipping
  std::int64_t least_casts = 1;                // the smallest whipping
  std::optional<std::chrono::seconds> piping;  // time to pipe it, bag changes included
  std::optional<SpoonedLye> lye;
};

/// How a decoration lies in, on or over the piece.
struct PlacedEmbed {
  geometry::Placement place;       // of the embed's solid, in the cavity's frame
  Length floor_cover, wall_cover;  // least gap to what lies below, and to the sides
  Length line_cover;               // from its top to the pour line; negative: it stands proud
  std::optional<Length> apart;     // least gap to another embed of the piece
  Volume displaced;                // below the pour line
  Volume in_headspace;             // between it and the brim
};
struct DecorationFit {
  // On top: does it sit?
  std::optional<Length> contact;       // circle as wide as where it meets the topping
  std::optional<Length> peak_flat;     // how wide the flat is, as said or as the moves end
  std::optional<Length> stands_proud;  // of what it was pressed into
  Volume sunk;                         // below that surface
  // Buried.
  std::vector<PlacedEmbed> embeds;
  Volume displaced;     // by all of them, below the pour line
  Volume in_headspace;  // and between it and the brim: not piped
};

struct DecorationTally {
  std::string name, material, mould;  // no mould for a rod, a drizzle or what is bought
  bool is_bought = false;             // only counted: no melt, no trays
  std::int64_t casts = 0;             // decorations, spares included
  std::int64_t cavity_fills = 0;
  std::int64_t tray_fills = 0;  // times all trays owned are filled
  Volume volume_each;           // of one decoration
  Mass mass_each;
  Mass make;                                 // to melt, losses included, on the large scale
  double per_piece = 1;                      // fewer than one where a loaf's are shared by its bars
  std::string count_text;                    // "2 a piece", "2 a loaf"
  std::optional<std::chrono::seconds> time;  // to cast all of them, tray fill by tray fill
  DecorationFit fit;
};

struct DustTally {
  std::string name;
  Mass each, make;              // used up for a piece, what misses it included; for all of them
  Mass on_piece;                // of each, what lands
  std::optional<Area> exposed;  // surface of a piece's topping and decoration, where reckoned by it
};

/// Material used, in money. `per_piece` and `total` leave out what is unpriced, and say so.
struct CostLine {
  std::string name;
  Mass used;
  std::optional<Money> cost;
  std::vector<MadeOf> made_of = {};  // where she makes it ahead herself
  std::int64_t pieces = 0;           // of what is counted, and then not weighed
  bool is_from_tap = false;          // water without a price: its cost is nothing
};
struct Cost {
  std::vector<CostLine> lines;
  Money total, per_piece;  // per saleable piece
  std::vector<std::string> unpriced;
};
/// Whether anything in `cost` has a price: without one there is no cost, and it is not 0.
bool is_any_priced(const Cost& cost);

/// One part of a piece.
struct PartMass {
  std::string name;
  Mass fresh;
  std::optional<Mass> cured;
};
/// One bar of a loaf by what is sure to be in it, part by part as PieceTally::parts.
struct BarMass {
  std::vector<Mass> parts;  // fresh
  Mass fresh;
  std::optional<Mass> cured;
};
/// What is cut off each loaf, of all its materials, fresh.
struct CutOff {
  Mass offcuts, kerf, planing;
};
struct PieceTally {
  std::vector<PartMass> parts;    // of a loaf that is cut those of its bars on average
  std::optional<PieceSize> size;  // finished, where the shape of every part is known
  Mass fresh;
  std::optional<Mass> cured;       // when each formula says how its water is lost
  std::vector<BarMass> bars = {};  // as CutTally::bars; none where nothing is cut
  std::size_t lightest_bar = 0;    // of these, cured where that is known
  CutOff cut_off = {};
};

/// A bottle of fragrance over the batters.
struct BottleTally {
  struct Part {
    std::string name;  // "Base", "Topping"
    Mass gives, step;
    Share of_batter;
    std::int64_t count = 1;  // of these in a batch, each of which gets it
  };
  std::string name;
  Mass holds;
  std::vector<Part> parts;
  std::vector<Remark> remarks;
};

/// One whipping of a batch's topping: with a bowl, a bag, a lye and a weighing of its own.
struct Whipping {
  std::int64_t count = 1;  // of these in the batch
  std::int64_t casts = 0;  // that each of them is piped on
  PipeTally pipe;
};

/// What is mixed, poured, whipped and piped in one go; with its own losses, weights, alkali and
/// superfat.
struct Batch {
  std::int64_t casts = 0, pieces = 0;
  std::vector<std::int64_t> numbers;  // which of the run's batches are this, in the order of making
  PourTally pour;
  std::vector<Whipping> whippings;  // largest first; none without a topping
  std::optional<PipeTally> pipe;    // their sum
  std::optional<LyePot> lye_pot;    // when the batters share one: of base, then each whipping
  std::optional<chemistry::HeatFindings> pot_heat;  // of that pot
  std::vector<BottleTally> bottles;
  std::vector<DustTally> dust;

  std::int64_t count() const { return static_cast<std::int64_t>(numbers.size()); }
};

/// What another number of pieces would do.
struct Around {
  std::int64_t sell = 0, fillings = 0, batches = 0;
  std::string text;
};

/// Everything a run needs, computed. A value: reports are pure functions of it.
///
/// `pour` and `pipe` are the sums over the batches; their superfat is the worst batch's, and what
/// belongs to one pot or bowl (heat, readings, limits, piping time) the largest batch's.
struct Plan {
  std::string file, name;
  Pieces pieces;
  std::vector<Batch> batches;  // the different ones, largest first
  std::vector<Limit> batch_limits;
  std::vector<Around> around;
  PourTally pour;
  std::optional<PipeTally> pipe;
  std::vector<DecorationTally> decorations;
  std::vector<DustTally> dust;
  std::optional<CutTally> cut;
  PieceTally piece;
  std::optional<Cost> cost;
  std::optional<LabelDraft> label;   // when the run asks for one
  std::vector<BottleTally> bottles;  // for the whole run
  std::vector<Caution> cautions;     // worst first
};

}  // namespace brimwright::planning
