#pragma once

#include "chemistry/formula.h"
#include "moulds/mould.h"
#include "planning/lightest_piece.h"
#include "planning/net_quantity.h"
#include "units/money.h"
#include "units/quantity.h"
#include "units/rate.h"
#include "units/share.h"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace brimwright::planning {

/// A level in a cavity, said from the brim down or from the lowest point up.
struct BelowBrim {
  Length headspace;
};
struct FromFloor {
  Length depth;
};
using FillLevel = std::variant<BelowBrim, FromFloor>;

/// A powder stirred into one layer's share of the base.
struct LayerColour {
  std::string name;
  Rate rate;
  std::optional<Density> bulk_density;
  chemistry::LabelData label = {};
};

/// How much of the base one layer takes. All layers of a pour are said in one way; one may take the
/// rest.
struct LayerDepth {
  Length thickness;
};
struct LayerMass {
  Mass each;
};
struct LayerParts {
  double parts;
};
struct LayerRest {};
struct Layer {
  std::string name;
  std::variant<LayerDepth, LayerMass, LayerParts, LayerRest> amount;
  std::vector<LayerColour> colours;
};

/// What of the base never reaches a piece.
struct PourLosses {
  Share overpour;  // of what is in the pieces: domes, drips, trimmed tops
  Mass pot, jugs, test_piece;
};

struct Pour {
  moulds::Mould mould;
  chemistry::Formula formula;
  FillLevel line;
  std::vector<Layer> layers;  // lowest first; empty: one plain pour
  PourLosses losses;
};

/// A cup of known volume, filled level and weighed: today's density of a whipped batter.
struct WeighCup {
  Volume holds;
  Mass net;
  Density density() const { return net / holds; }
};

// Two ways to the visible volume of one piped topping.
struct PipedTrials {
  std::vector<Mass> weighed;  // what single trials weighed
  WeighCup cup;               // the whip they were piped from
};
enum class EnvelopeForm { cone, dome };
struct Envelope {
  EnvelopeForm form;
  Length diameter, height;
  Share solidity;  // of the envelope that is topping, not air between the ridges
};

struct PipeLosses {
  Mass bag, bowl_and_whisk;
};

struct Pipe {
  chemistry::Formula formula;
  std::variant<PipedTrials, Envelope> visible;
  Share fills_headspace;  // of the recess between pour line and brim; asked, never assumed
  WeighCup whip;          // the whip planned for
  std::optional<WeighCup> whip_now;  // the bowl's reading today
  std::optional<Volume> bag_holds;   // whipped topping in one bag load
  PipeLosses losses;
};

enum class CastForm { one_cast, two_halves };

/// A melt-and-pour decoration cast ahead.
struct Decoration {
  std::string name;
  std::string material;  // what is melted; prices go by this name
  moulds::Mould mould;
  FillLevel fill;
  CastForm form = CastForm::one_cast;
  std::int64_t per_piece = 1;
  Density density;  // of the set material
  Share spares;     // cast beyond what the pieces need
  Share melt_loss;  // of what is melted: film, skin, steam
  Mass jug_film;    // left in the jug at each fill
  chemistry::LabelData label = {};
};

/// A powder dusted over each piece, by what is used up.
struct Dusting {
  std::string name;
  Mass per_piece;
  chemistry::LabelData label = {};
};

/// A bottle of fragrance to be used up over the batters of a run.
enum class SharingWay { by_rate, half_in_each };
struct Bottle {
  std::string name;
  Mass holds;
  SharingWay way = SharingWay::by_rate;
};

/// The label wanted: whose rules it follows, and how much the finished pieces differ.
struct LabelOrder {
  Market market = Market::EU;
  PieceSpread spread;
  bool e_mark = false;
  std::optional<Mass> states;  // what her labels already say
};

struct Scale {
  Mass reads;  // the step of its display
  Mass holds;  // the most it weighs
};
/// Fats, lye water and melt go on the large scale; alkali, additives and powders on the fine one
/// as long as it holds them.
struct Scales {
  Scale large, fine;
};

struct Price {
  Money paid;
  Mass pack;
};
struct Purse {
  Currency currency;
  std::map<std::string, Price>
      prices;  // by ingredient name: fat id, "NaOH", "water", additive name
};

/// One order or making: N saleable pieces of one kind.
struct Run {
  std::string file;
  std::string name;
  std::int64_t sell = 0;
  Share spoilage;
  Pour pour;
  std::optional<Pipe> pipe;
  std::vector<Decoration> perch;
  std::vector<Dusting> dust;
  Scales scales;
  std::optional<Purse> money;
  std::optional<LabelOrder> label = {};
  std::vector<Bottle> bottles = {};
};

}  // namespace brimwright::planning
