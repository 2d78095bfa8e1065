#include "runs/pipe_reading.h"

#include "planning/tips.h"
#include "planning/topping.h"
#include "planning/usual_bench.h"
#include "runs/made_ahead_reading.h"
#include "runs/named_files.h"
#include "units/learned_values.h"
#include "units/printing.h"
#include "units/reading.h"
#include "units/wording.h"

#include <algorithm>

namespace brimwright::runs {
namespace {

using namespace planning;

/// What the cup of a reading holds: as the reading says, or as the studio knows its cups.
Volume cup_volume(const Fields& reading, const Studio& studio) {
  const auto name = reading.optional_name("cup");
  if (name && reading.has("holds"))
    throw UserError(reading.place("cup"), "stands beside \"holds\"",
                    "keep one of the two: they both say what the cup holds");
  if (!reading.has("holds"))
    if (const auto volume = studio.cup(name, reading.place(name ? "cup" : "holds"))) return *volume;
  return reading.positive_volume("holds", "50 ml");
}

WeighCup weigh_cup(const Fields& fields, const Studio& studio) {
  const WeighCup cup{cup_volume(fields, studio), fields.positive_mass("net", "72 g")};
  const double density = cup.density() / gram_per_millilitre;
  // No batter whips below 0.3 g/ml nor weighs over 3: a slip of ounces, tare or cup size.
  if (density < 0.3 || density > 3)
    throw UserError(
        fields.place(), "makes a density of " + trimmed(density, 3) + " g/ml",
        "a whipped batter lies between 0.3 and 1.1; check the cup's volume and the tare");
  if (fields.has("holds")) usual_bench().ask(fields, "holds", "weigh-cup", cup.holds);
  fields.refuse_unknown();
  return cup;
}

PipedTrials piped_trials(const Fields& fields, const Studio& studio) {
  PipedTrials trials{{}, weigh_cup(fields.object("weigh_cup"), studio)};
  const auto texts = fields.texts("weighed");
  const Place where = fields.place("weighed");
  for (const auto& text : texts) {
    const Place place{where.file, where.field + "/" + std::to_string(trials.weighed.size())};
    trials.weighed.push_back(read_mass(text, place));
    if (!(trials.weighed.back() > Mass{}))
      throw UserError(place, "is zero", "give what one piped trial weighed");
  }
  if (trials.weighed.empty())
    throw UserError(where, "holds no trial", "weigh at least one piped trial, better five");
  if (fields.has("volume_each"))
    trials.volume_each = fields.positive_volume("volume_each", "24 ml");
  tell_learned(fields, "Topping");
  fields.refuse_unknown();
  return trials;
}

Envelope envelope(const Fields& fields) {
  const bool is_cone = fields.choice("form", {"cone", "dome"}) == "cone";
  const Envelope result{is_cone ? EnvelopeForm::cone : EnvelopeForm::dome,
                        fields.positive_length("diameter", "50 mm"),
                        fields.positive_length("height", "30 mm"),
                        fields.share("soap_share", 10 * percent, whole, "60 %")};
  fields.has("confirmed");  // ask_for_topping says of what
  tell_learned(fields, "Topping");
  fields.refuse_unknown();
  return result;
}

Tip tip_called(const std::string& name, const std::vector<Tip>& tips, const Place& where) {
  const auto found =
      std::find_if(tips.begin(), tips.end(), [&](const Tip& tip) { return tip.name == name; });
  if (found != tips.end()) return *found;
  std::vector<std::string> names;
  for (const auto& tip : tips) names.push_back(tip.name);
  const auto near = nearest_name(name, names);
  throw UserError(where, "\"" + name + "\" is not a tip known here",
                  near ? "did you mean \"" + *near + "\"?"
                       : "brimwright list tips shows the built-in ones; or describe your own");
}

/// A shipped tip or one of the maker's own file by name, or one described on the spot.
Tip tip_of(const Fields& beads, const moulds::Library& library) {
  if (beads.is_object("tip")) return read_tip(beads.object("tip"));
  const std::string name = beads.name("tip");
  if (!beads.has("own_tips")) return tip_called(name, shipped_tips(), beads.place("tip"));
  const Place own = beads.place("own_tips");
  std::vector<Tip> tips = read_tips(library.document(library.resolve(beads.text("own_tips"), own)));
  // The studio's tips are there besides those that ship; what a run names itself is in its stead.
  if (own.file != beads.file())
    tips.insert(tips.end(), shipped_tips().begin(), shipped_tips().end());
  return tip_called(name, tips, beads.place("tip"));
}

Beads beads_of(const Fields& fields, const moulds::Library& library, const Studio& studio) {
  if (studio.fields()) fields.complete_from(*studio.fields(), {"own_tips"});
  Beads beads{.tip = tip_of(fields, library),
              .bead_to_opening = fields.number("bead_to_opening"),
              .moves = {}};
  // Soft batter settles to less than the opening or swells to a little more; beyond this it is a
  // slip: common practice, no source.
  if (!(beads.bead_to_opening >= 0.5 && beads.bead_to_opening <= 3))
    throw UserError(fields.place("bead_to_opening"), "is not between 0.5 and 3",
                    "give the bead's section / the tip's opening, 1 if they are the same");
  for (const auto& move : fields.objects("moves")) beads.moves.push_back(read_move(move));
  if (beads.moves.empty())
    throw UserError(fields.place("moves"), "holds no move", "list what the tip does, step by step");
  if (!beads.tip.hand) beads.tip.hand = studio.hand(beads.tip.name);
  geometry::check(beads.moves, beads.tip.opening, fields.place("moves"));
  fields.refuse_unknown();
  return beads;
}

Bowl bowl_of(const Fields& fields) {
  Bowl bowl{.holds = fields.positive_volume("holds", "4 l")};
  usual_bench().ask(fields, "holds", "bowl", bowl.holds);
  if (fields.has("whisk_needs")) bowl.whisk_needs = fields.positive_volume("whisk_needs", "600 ml");
  if (bowl.whisk_needs) usual_bench().ask(fields, "whisk_needs", "whisk", *bowl.whisk_needs);
  if (bowl.whisk_needs && *bowl.whisk_needs >= bowl.holds)
    throw UserError(fields.place("whisk_needs"), "is as much as the bowl holds",
                    "give the least plain batter that the whisk reaches");
  fields.refuse_unknown();
  return bowl;
}

Pace pace_of(const Fields& fields) {
  Pace pace{fields.positive_short_time("open_time", "25 min"),
            fields.positive_short_time("time_per_piece")};
  usual_bench().ask(fields, "open_time", "open time", pace.open_time);
  if (fields.has("time_per_bag_change")) {
    pace.time_per_bag_change = fields.positive_short_time("time_per_bag_change", "1 min");
    usual_bench().ask(fields, "time_per_bag_change", "bag change", pace.time_per_bag_change);
  }
  fields.refuse_unknown();
  return pace;
}

LyeSpoon lye_spoon_of(const Fields& fields) {
  const LyeSpoon spoon{fields.positive_volume("holds", "15 ml"),
                       fields.positive_short_time("time_between", "10 s")};
  usual_bench().ask(fields, "holds", "lye spoon", spoon.holds);
  usual_bench().ask(fields, "time_between", "spoonful's time", spoon.time_between);
  fields.refuse_unknown();
  return spoon;
}

PipeLosses losses_of(const Fields& fields) {
  fields.may_hold({"bag", "bowl_and_whisk", "tip", "each_bag_change", "confirmed", "learned"});
  const auto asked = [&](std::string_view key, std::string_view measure) {
    const Mass mass = fields.mass(key);
    usual_bench().ask(fields, key, measure, mass);
    return mass;
  };
  PipeLosses losses{asked("bag", "stays in the bag"), asked("bowl_and_whisk", "stays in the bowl")};
  if (fields.has("tip")) losses.tip = asked("tip", "stays in the tip");
  if (fields.has("each_bag_change"))
    losses.each_bag_change = asked("each_bag_change", "stays in the bag");
  tell_learned(fields);
  fields.refuse_unknown();
  return losses;
}

void read_size(Pipe& result, const Fields& pipe, const moulds::Library& library,
               const Studio& studio) {
  if (const auto trials = pipe.optional_object("trials"))
    result.trials = piped_trials(*trials, studio);
  if (const auto beads = pipe.optional_object("beads"))
    result.beads = beads_of(*beads, library, studio);
  if (const auto hull = pipe.optional_object("envelope")) result.envelope = envelope(*hull);
  if (!result.trials && !result.beads && !result.envelope)
    throw UserError(pipe.place(), "does not say how big a topping is",
                    "give \"trials\" (weighed), \"beads\" (tip and moves) or \"envelope\" "
                    "(measured)");
}

void read_limits(Pipe& result, const Fields& pipe) {
  if (pipe.has("bag_holds")) {
    result.bag_holds = pipe.positive_volume("bag_holds", "900 ml");
    usual_bench().ask(pipe, "bag_holds", "bag", *result.bag_holds);
  }
  if (const auto bowl = pipe.optional_object("bowl")) result.bowl = bowl_of(*bowl);
  if (const auto pace = pipe.optional_object("pace")) result.pace = pace_of(*pace);
  if (const auto spoon = pipe.optional_object("lye_spoon")) result.lye_spoon = lye_spoon_of(*spoon);
}

}  // namespace

geometry::Move read_move(const Fields& move) {
  const std::string kind =
      move.choice("move", {"dollop", "ring", "spiral", "tail", "dots", "shells", "bead"});
  std::optional<Length> at;
  if (move.has("at_height")) at = move.length("at_height");
  const auto count = [&] { return static_cast<int>(move.whole_number("count", 1, 500)); };
  geometry::Move result;
  if (kind == "dollop")
    result = geometry::Dollop{move.positive_length("diameter", "40 mm"),
                              move.positive_length("height", "25 mm"), at};
  else if (kind == "ring")
    result = geometry::Ring{move.positive_length("radius"), at};
  else if (kind == "spiral")
    result = geometry::ConicalSpiral{move.number("turns"), move.length("start_radius"),
                                     move.length("end_radius"), move.length("rise"), at};
  else if (kind == "tail")
    result = geometry::Tail{move.positive_length("length"), at};
  else if (kind == "dots")
    result =
        geometry::Dots{count(), move.length("circle_radius"), move.positive_length("height"), at};
  else if (kind == "shells")
    result =
        geometry::Shells{count(), move.length("circle_radius"), move.positive_length("length"), at};
  else
    result = geometry::StraightBead{move.positive_length("length"),
                                    move.has("aside") ? move.signed_length("aside") : Length{}, at};
  move.refuse_unknown();
  geometry::check(result, move.place());
  return result;
}

Pipe read_pipe(const Fields& pipe, const Fields& losses, const moulds::Library& library,
               const Studio& studio) {
  if (studio.fields()) pipe.complete_from(*studio.fields(), {"bowl", "bag_holds", "lye_spoon"});
  if (const auto temperatures = studio.section("temperatures"))
    pipe.complete_from(*temperatures, "temperatures", "pipe");
  pipe.may_hold({"formula", "lye_from", "blend", "trials", "beads", "envelope", "fills_headspace",
                 "whip", "whip_now", "bag_holds", "bowl", "pace", "lye_spoon", "temperatures",
                 "confirmed"});
  Pipe result{.formula = read_formula_named_in(pipe, library),
              .fills_headspace = pipe.share("fills_headspace", Share{}, whole, "80 %"),
              .whip = weigh_cup(pipe.object("whip"), studio),
              .whip_now = {},
              .bag_holds = {},
              .losses = losses_of(losses)};
  take_what_stands_ready(result.formula, pipe, studio);
  read_size(result, pipe, library, studio);
  if (const auto now = pipe.optional_object("whip_now")) result.whip_now = weigh_cup(*now, studio);
  read_limits(result, pipe);
  if (const auto temperatures = pipe.optional_object("temperatures"))
    result.temperatures = chemistry::read_heat_question(*temperatures);
  pipe.has("confirmed");
  pipe.refuse_unknown();
  return result;
}

void ask_for_topping(const Fields& pipe, const Pipe& topping) {
  if (topping.pace)
    usual_bench().ask(pipe.object("pace"), "time_per_piece", "piping one",
                      topping.pace->time_per_piece);
  if (topping.envelope) {
    const Fields envelope = pipe.object("envelope");
    usual_bench().ask(envelope, "diameter", "topping's width", topping.envelope->diameter);
    usual_bench().ask(envelope, "height", "topping's height", topping.envelope->height);
  }
  const Volume each = visible_topping(topping).volume;
  usual_bench().ask_found(pipe, "topping", each, in_ml(each));
}

}  // namespace brimwright::runs
