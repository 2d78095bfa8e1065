#pragma once

#include "chemistry/formula.h"
#include "chemistry/heat_findings.h"
#include "geometry/beads/bead.h"
#include "geometry/levels/tilted_pour.h"
#include "geometry/packing/packing.h"
#include "moulds/mould.h"
#include "planning/cut.h"
#include "planning/lightest_piece.h"
#include "planning/net_quantity.h"
#include "planning/tips.h"
#include "units/money.h"
#include "units/quantity.h"
#include "units/rate.h"
#include "units/remark.h"
#include "units/share.h"
#include "units/spelling.h"
#include "units/user_error.h"

#include <chrono>
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
  /// Poured while the mould is tilted; its depth is then how far up the low wall it stands.
  std::optional<geometry::Tilt> tilted = {};
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
  std::optional<chemistry::HeatQuestion> temperatures = {};
};

/// A cup of known volume, filled level and weighed: today's density of a whipped batter.
struct WeighCup {
  Volume holds;
  Mass net;
  Density density() const { return net / holds; }
};

// Three ways to the visible volume of one piped topping. Weighed trials outrank beads, and beads
// an envelope; what is given beside the one that counts is compared with it.
struct PipedTrials {
  std::vector<Mass> weighed;  // what single trials weighed
  WeighCup cup;               // the whip they were piped from
  /// Of one topping above its foot, as batches tell it, say: it counts in place of the trials.
  std::optional<Volume> volume_each = {};
};
struct Beads {
  Tip tip;
  double bead_to_opening = 1;  // section of the bead / opening of the tip
  std::vector<geometry::Move> moves;
};
enum class EnvelopeForm { cone, dome };
struct Envelope {
  EnvelopeForm form;
  Length diameter, height;
  Share soap_share;  // of the envelope that is topping, not air between the ridges
};

struct PipeLosses {
  Mass bag, bowl_and_whisk;
  Mass tip = {};
  Mass each_bag_change = {};  // besides what the last bag keeps
};

// What sets limits to one whipping.
struct Bowl {
  Volume holds;
  std::optional<Volume> whisk_needs = {};  // the least plain batter that the whisk catches
};
struct Pace {
  std::chrono::seconds open_time;       // how long the whipped batter can be piped
  std::chrono::seconds time_per_piece;  // to pipe one piece
  std::chrono::seconds time_per_bag_change = std::chrono::seconds(0);
};
/// Lye that is whipped in by the spoonful, and how long each is given.
struct LyeSpoon {
  Volume holds;
  std::chrono::seconds time_between;
};

struct Pipe {
  chemistry::Formula formula;
  std::optional<PipedTrials> trials = {};  // at least one of these three
  std::optional<Beads> beads = {};
  std::optional<Envelope> envelope = {};
  Share fills_headspace;  // of the headspace between pour line and brim; asked, never assumed
  WeighCup whip;          // the whip planned for
  std::optional<WeighCup> whip_now;  // the bowl's reading today
  std::optional<Volume> bag_holds;   // whipped topping in one bag load
  PipeLosses losses;
  std::optional<Bowl> bowl = {};
  std::optional<Pace> pace = {};
  std::optional<LyeSpoon> lye_spoon = {};
  std::optional<chemistry::HeatQuestion> temperatures = {};
};

/// What a maker says of a pot of lye that her batters share.
struct PotQuestion {
  Place where;                   // for complaints
  std::optional<Mass> pot_tare;  // the empty pot, where the full one is weighed with it
};

/// What the base is mixed and a lye is made in: brimful volumes.
struct Pots {
  std::optional<Volume> holds, lye_jug;
};

/// What she wants of a batch.
struct BatchWish {
  std::optional<std::int64_t> pieces, casts;  // at most; one of the two
  bool fills_moulds = false;                  // every filling takes all cavities
  std::int64_t whippings = 1;                 // of a batch's topping
};

enum class CastForm { one_cast, two_halves };

// What a decoration is made in or of.
struct InMould {
  moulds::Mould mould;
  FillLevel fill;
  CastForm form = CastForm::one_cast;
};
/// A round rod, cut to length.
struct Rod {
  Length diameter, length;
};
/// Run over the piece in a thin coat.
struct Drizzle {
  Area area;
  Length thickness;
};

// Where a decoration goes. Turns are about the x, y and z axes through its middle, in that order.
struct Turned {
  Angle x, y, z;
};
/// On the top of the piece, pressed in by `pressed_in`.
struct OnTop {
  Length pressed_in;
  std::optional<Length> peak_flat = {};  // how wide the flat of the peak is
  Turned turned = {};
};
/// The lowest point of one embed, above the cavity's, and its middle beside the cavity's.
struct BuriedAt {
  Length x, y, height;
  Turned turned = {};
};
/// "Find me places": the packing search.
struct FindPlaces {
  geometry::Lying lying;
};
struct Buried {
  std::variant<std::vector<BuriedAt>, FindPlaces> places;
  Length cover;             // wanted to wall, floor, pour line and each other
  bool pressed_in = false;  // after the pour; otherwise the batter is poured round it
};
using Where = std::variant<std::monostate, OnTop, Buried>;

/// Bought as it is, and only counted.
struct Bought {
  std::optional<Mass> weighs;  // one of them
};

/// A melt-and-pour decoration cast ahead, or one that is bought.
struct Decoration {
  std::string name;
  std::string material;  // what is melted, or bought; prices go by this name
  std::variant<InMould, Rod, Drizzle, Bought> made;
  std::int64_t per_cast = 1;   // in what one cavity yields
  std::int64_t per_piece = 0;  // instead, on each bar of a loaf that is cut; 0: per cast
  Density density;             // of the set material
  Share spares;                // cast beyond what the pieces need
  Share melt_loss;             // of what is melted: film, skin, steam
  Mass left_in_jug;            // left in the jug at each fill
  std::optional<std::chrono::seconds> time_per_tray_fill =
      {};  // to fill all trays once, setting included
  Where where = {};
  chemistry::LabelData label = {};
};

inline bool is_bought(const Decoration& decoration) {
  return std::holds_alternative<Bought>(decoration.made);
}

/// A powder dusted over each piece: by what is used up, or by the surface it goes over.
struct DustByArea {
  AreaDensity on_covered_surface;  // what lies on it where it is covered
  Share coverage;                  // of the exposed surface
  Share share_that_sticks;         // of what is dusted; the rest is lost
};
struct Dusting {
  std::string name;
  std::variant<Mass, DustByArea> per_piece;
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
  PieceSpread weight_spread;
  bool e_mark = false;
  std::optional<Mass> printed_weight;  // what her labels already say
};

struct Scale {
  Mass step;  // the step of its display
  Mass most;  // the most it weighs
};
/// Fats, lye water and melt go on the large scale; alkali, additives and powders on the fine one
/// as long as it holds them.
struct Scales {
  Scale large, fine;
};

struct Price {
  Money paid;
  Mass pack;
  std::int64_t pieces = 0;  // in a pack of what is counted; then it has no mass
};
struct Purse {
  Currency currency;
  std::map<std::string, Price>
      prices;  // by ingredient name: fat id, "NaOH", "water", additive name
};

/// What goes round each piece that is sold.
struct Packaging {
  std::string material;
  double each = 0;  // grams, or pieces of what is counted
  bool is_counted = false;
};

/// What a run was completed with.
struct FromStudio {
  std::string file;                   // empty: there is no studio
  std::vector<std::string> sections;  // as its file calls them
};

/// The making of N saleable pieces of one kind.
struct Run {
  std::string file;
  Spelling spelling = {};  // of the file's keys
  std::string name;
  std::string id = {};  // a UUID, kept by a rename and new in a copy; empty where it has none yet
  std::optional<std::chrono::year_month_day> made_on = {}, due = {};
  std::string whom_for = {};  // the customer, or what for; may be empty
  std::int64_t sell = 0;
  Share spoilage;
  Pour pour;
  std::optional<Pipe> pipe;
  std::vector<Decoration> decorations;
  std::optional<Cut> cut;
  std::vector<Dusting> dust;
  Scales scales;
  std::optional<Purse> money;
  std::optional<std::vector<Packaging>> packaging = {};  // of its own, in place of the studio's
  std::optional<LabelOrder> label = {};
  std::vector<Bottle> bottles = {};
  std::optional<PotQuestion> lye_pot = {};
  Pots pots = {};
  BatchWish batch = {};
  FromStudio from_studio = {};
  std::vector<Remark> remarks = {};  // of its reading

  /// Where the run says what today's `pointer` names ("/pour/line").
  Place place(std::string_view pointer) const { return {file, spelling.pointer(pointer)}; }
};

}  // namespace brimwright::planning
