#include "planning/topping_workings.h"

#include "chemistry/batter_density.h"
#include "chemistry/density_workings.h"
#include "chemistry/heat_workings.h"
#include "planning/pour_workings.h"
#include "planning/weighing_workings.h"
#include "planning/whip.h"
#include "units/printing.h"

#include <string>
#include <type_traits>

namespace brimwright::planning {
namespace {

constexpr auto the_run = "the run";

std::vector<Given> losses_of(const PipeLosses& losses) {
  return {{"bag", in_figures(losses.bag), the_run},
          {"tip", in_figures(losses.tip), the_run},
          {"bowl and whisk", in_figures(losses.bowl_and_whisk), the_run},
          {"each bag change", in_figures(losses.each_bag_change), the_run}};
}

std::string seconds(std::chrono::seconds time) { return std::to_string(time.count()) + " s"; }

Working by_trials(const PipedTrials& trials) {
  std::vector<std::string> weighed;
  for (const Mass mass : trials.weighed) weighed.push_back(in_figures(mass));
  const std::string count = std::to_string(weighed.size());
  return {.of = "trials_ml",
          .formula =
              "by trials = mean of the weighed trials ÷ density of their whip (its "
              "weigh-cup, net ÷ what it holds)",
          .with = {{"weighed trials", count, the_run},
                   {"weigh-cup, net", in_figures(trials.cup.net), the_run},
                   {"weigh-cup, holds", in_figures(trials.cup.holds), the_run}},
          .sum = in_brackets(weighed) + " ÷ " + count + " ÷ (" + in_figures(trials.cup.net) +
                 " ÷ " + in_figures(trials.cup.holds) + ")"};
}

Working as_given(Volume each) {
  return {.of = "given_ml",
          .formula = "as the run gives it, in place of the trials",
          .with = {{"volume each", in_figures(each), the_run}},
          .sum = in_figures(each)};
}

Working by_beads(const Pipe& pipe, const VisibleTopping& visible) {
  std::vector<std::string> laid;
  std::vector<Given> with;
  for (std::size_t i = 0; i < visible.moves.size(); ++i) {
    laid.push_back(in_figures(visible.moves[i].volume));
    with.push_back({"move " + std::to_string(i + 1), laid.back()});
  }
  const double hand = visible.correction_used ? visible.correction_used->correction : 1;
  with.push_back({"correction for your hand", in_figures(hand),
                  visible.correction_used ? pipe.beads->tip.name : "none is known"});
  return {.of = "beads_ml",
          .formula =
              "by beads = what the moves lay down, added up × the tip's correction for your hand, "
              "if it has one",
          .with = with,
          .sum = in_brackets(laid) + " × " + in_figures(hand)};
}

Working by_envelope(const Envelope& envelope) {
  const bool is_cone = envelope.form == EnvelopeForm::cone;
  const std::string across = in_figures(envelope.diameter), high = in_figures(envelope.height);
  return {.of = "envelope_ml",
          .formula = std::string("by outline = share that is soap × volume of ") +
                     (is_cone ? "a cone (π ÷ 12 × across² × high)"
                              : "half an ellipsoid (π ÷ 6 × across² × high)"),
          .with = {{"across", across, the_run},
                   {"high", high, the_run},
                   {"share that is soap", in_figures(envelope.soap_share), the_run}},
          .sum = in_figures(envelope.soap_share) + " × π ÷ " + (is_cone ? "12" : "6") + " × " +
                 across + " × " + across + " × " + high};
}

/// The volume that one move lays down, by its own formula.
std::string formula_of(const geometry::Dollop&) {
  return "dollop: half an ellipsoid = π ÷ 6 × across² × high";
}
std::string formula_of(const geometry::Ring&) {
  return "ring = section of the bead × 2 π × radius (Pappus)";
}
std::string formula_of(const geometry::ConicalSpiral&) {
  return "spiral = section of the bead × length of its path (arc-length integral)";
}
std::string formula_of(const geometry::Tail&) {
  return "tail = section of the bead × length ÷ 3, a cone";
}
std::string formula_of(const geometry::Dots&) {
  return "dots = how many × section of the bead × high × 2 ÷ 3";
}
std::string formula_of(const geometry::Shells&) {
  return "shells = how many × section of the bead × length ÷ 2";
}
std::string formula_of(const geometry::StraightBead&) { return "bead = section × length"; }

/// With the section in it, where the figure is plain arithmetic.
std::string sum_of(const geometry::Dollop& dollop, const std::string&) {
  const std::string across = in_figures(dollop.diameter);
  return "π ÷ 6 × " + across + " × " + across + " × " + in_figures(dollop.height);
}
std::string sum_of(const geometry::Ring& ring, const std::string& section) {
  return section + " × 2 × π × " + in_figures(ring.radius);
}
std::string sum_of(const geometry::ConicalSpiral&, const std::string&) { return ""; }
std::string sum_of(const geometry::Tail& tail, const std::string& section) {
  return section + " × " + in_figures(tail.length) + " ÷ 3";
}
std::string sum_of(const geometry::Dots& dots, const std::string& section) {
  return std::to_string(dots.count) + " × " + section + " × " + in_figures(dots.height) +
         " × 2 ÷ 3";
}
std::string sum_of(const geometry::Shells& shells, const std::string& section) {
  return std::to_string(shells.count) + " × " + section + " × " + in_figures(shells.length) +
         " ÷ 2";
}
std::string sum_of(const geometry::StraightBead& bead, const std::string& section) {
  return section + " × " + in_figures(bead.length);
}

Working move_working(const Beads& beads, std::size_t i, const geometry::Laid& laid) {
  const Area opening = geometry::area_of(beads.tip.opening);
  const std::string section = in_figures(opening) + " × " + in_figures(beads.bead_to_opening);
  Working working{.of = "moves." + std::to_string(i) + ".volume_ml",
                  .formula = {},
                  .with = {{"opening of the tip", in_figures(opening), beads.tip.name},
                           {"bead ÷ opening", in_figures(beads.bead_to_opening), the_run},
                           {"path, pressing", in_figures(laid.length)}},
                  .comes_to = in_figures(laid.volume)};
  std::visit(
      [&](const auto& move) {
        working.formula =
            formula_of(move) + "; section = opening of the tip × (bead ÷ tip opening)";
        working.sum = sum_of(move, section);
      },
      beads.moves[i]);
  return working;
}

std::vector<Working> visible_workings(const Pipe& pipe, const PipeTally& tally) {
  std::vector<Working> ways;
  const VisibleTopping& visible = tally.visible;
  const auto add = [&](Working working, Volume volume) {
    working.comes_to = in_figures(volume);
    ways.push_back(std::move(working));
  };
  if (visible.as_given) add(as_given(*visible.as_given), *visible.as_given);
  if (pipe.trials) add(by_trials(*pipe.trials), *visible.by_trials);
  if (pipe.beads) add(by_beads(pipe, visible), *visible.by_beads);
  if (pipe.envelope) add(by_envelope(*pipe.envelope), *visible.by_envelope);
  Working counts = ways.front();  // what is given, then trials, beads, an envelope
  counts.of = "visible_each_ml";
  std::vector<Working> all{counts};
  append_at(all, "visible_by", std::move(ways));
  if (pipe.beads)
    for (std::size_t i = 0; i < visible.moves.size(); ++i)
      append_at(all, "visible_by", {move_working(*pipe.beads, i, visible.moves[i])});
  return all;
}

std::vector<Working> size_workings(const Pipe& pipe, const PipeTally& tally, Volume headspace) {
  return {{.of = "in_headspace_each_ml",
           .formula = "in the headspace = share of it that the topping fills × headspace",
           .with = {{"share of the headspace", in_figures(pipe.fills_headspace), the_run},
                    {"headspace", in_figures(headspace), "from the pour line to the brim"}},
           .sum = in_figures(pipe.fills_headspace) + " × " + in_figures(headspace),
           .comes_to = in_figures(tally.in_headspace_each)},
          {.of = "volume_each_ml",
           .formula = "topping = visible shape + what of it is in the headspace",
           .with = {{"visible shape", in_figures(tally.visible_each)},
                    {"in the headspace", in_figures(tally.in_headspace_each)}},
           .sum = in_figures(tally.visible_each) + " + " + in_figures(tally.in_headspace_each),
           .comes_to = in_figures(tally.batter.volume_each)}};
}

std::vector<Working> density_workings(const Pipe& pipe, const PipeTally& tally) {
  const auto& per_fat = tally.batter.per_fat;
  const Density plain = chemistry::batter_density(pipe.formula, per_fat).used;
  std::vector<Working> all = {
      {.of = "density_g_per_ml",
       .formula = "density of the whip = weigh-cup's net weight ÷ its volume",
       .with = {{"weigh-cup, net", in_figures(pipe.whip.net), the_run},
                {"weigh-cup, holds", in_figures(pipe.whip.holds), the_run}},
       .sum = in_figures(pipe.whip.net) + " ÷ " + in_figures(pipe.whip.holds),
       .comes_to = in_figures(tally.batter.density)},
      {.of = "overrun_percent",
       .formula = "overrun = plain density ÷ whipped density − 1",
       .with = {{"plain", in_figures(plain), "before whipping"},
                {"whipped", in_figures(tally.batter.density)}},
       .sum = in_figures(plain) + " ÷ " + in_figures(tally.batter.density) + " − 1",
       .comes_to = in_figures(Share::of_one(tally.overrun))}};
  append_at(all, "plain_density_computed_g_per_ml",
            {chemistry::computed_density_working(pipe.formula, per_fat)});
  return all;
}

std::string pieces_of_bowl(const PipeTally& tally, const WeighCup& cup) {
  return "(" + in_figures(tally.batter.weighing.batter) + " − " + in_figures(tally.left_behind) +
         ") ÷ (" + in_figures(tally.batter.volume_each) + " × " + in_figures(cup.net) + " ÷ " +
         in_figures(cup.holds) + ")";
}

std::vector<Given> bowl_given(const PipeTally& tally) {
  return {{"batter", in_figures(tally.batter.weighing.batter)},
          {"stays in bag, tip, bowl and whisk", in_figures(tally.left_behind)},
          {"topping of one", in_figures(tally.batter.volume_each)}};
}

/// What the bowl pipes now: in casts, and in the pieces that these give.
std::vector<Working> now_workings(const Pipe& pipe, const PipeTally& tally, std::int64_t per_cast) {
  if (!pipe.whip_now) return {};
  Working casts{.of = "casts_now",
                .formula =
                    "this bowl is enough for = batter left after losses ÷ today's density ÷ "
                    "topping of one, rounded down",
                .with = bowl_given(tally),
                .sum = pieces_of_bowl(tally, *pipe.whip_now),
                .rounded = to_whole(Rounded::down),
                .comes_to = std::to_string(*tally.casts_now)};
  casts.with.push_back({"today's weigh-cup, net", in_figures(pipe.whip_now->net), the_run});
  casts.with.push_back({"planned weigh-cup, net", in_figures(pipe.whip.net), the_run});
  Working pieces = casts;
  pieces.of = "pieces_now";
  pieces.comes_to = std::to_string(*tally.casts_now * per_cast);
  if (per_cast > 1) {
    pieces.formula += "; × pieces that one cast gives";
    pieces.sum = std::to_string(*tally.casts_now) + " × " + std::to_string(per_cast);
    pieces.rounded.clear();
  }
  return {casts, pieces};
}

Working readings_working(const PipeTally& tally, std::int64_t casts) {
  Working working{.of = "readings",
                  .formula =
                      "pieces = batter left after losses ÷ (net weight ÷ cup) ÷ topping of "
                      "one, rounded down; overrun = plain density ÷ whipped density − 1",
                  .with = bowl_given(tally)};
  working.with.push_back(
      {"plain density", in_figures((1 + tally.overrun) * tally.batter.density), "before whipping"});
  working.with.push_back({"to pipe", std::to_string(casts)});
  return working;
}

void tell_pace(Working& working, const Pace& pace) {
  working.with.push_back({"one takes", seconds(pace.time_per_piece), the_run});
  working.with.push_back({"a bag change", seconds(pace.time_per_bag_change), the_run});
  working.with.push_back({"open time", seconds(pace.open_time), the_run});
}

Working limits_working(const Pipe& pipe, const PipeTally& tally, std::int64_t casts) {
  Working working{.of = "limits",
                  .formula =
                      "least = what the whisk needs ÷ plain batter of one; most = share of the "
                      "bowl ÷ whipped batter of one, and open time ÷ piping of one; found by "
                      "weighing batches of that size, never by proportion",
                  .with = {{"to pipe", std::to_string(casts)}},
                  .sources = {"how full a bowl may be whipped: common practice, no source"}};
  if (pipe.pace) tell_pace(working, *pipe.pace);
  if (pipe.bowl) {
    working.with.push_back({"bowl holds", in_figures(pipe.bowl->holds), the_run});
    working.with.push_back(
        {"of it filled at most", in_figures(fullest_bowl), "common practice, no source"});
    if (pipe.bowl->whisk_needs)
      working.with.push_back({"whisk needs", in_figures(*pipe.bowl->whisk_needs), the_run});
  }
  if (tally.loads) working.with.push_back({"bag loads", std::to_string(*tally.loads)});
  return working;
}

/// Bag loads, time and spoonfuls, where the run tells what they need.
std::vector<Working> bench_workings(const Pipe& pipe, const PipeTally& tally, std::int64_t casts) {
  std::vector<Working> all;
  if (pipe.bag_holds)
    all.push_back({.of = "loads",
                   .formula = "bag loads = batter ÷ density of the whip ÷ what a bag holds",
                   .with = {{"batter", in_figures(tally.batter.weighing.batter)},
                            {"density of the whip", in_figures(tally.batter.density)},
                            {"a bag holds", in_figures(*pipe.bag_holds), the_run}},
                   .sum = in_figures(tally.batter.weighing.batter) + " ÷ " +
                          in_figures(tally.batter.density) + " ÷ " + in_figures(*pipe.bag_holds),
                   .rounded = to_whole(Rounded::up),
                   .comes_to = std::to_string(*tally.loads)});
  if (!pipe.pace) return all;
  Working piping{.of = "piping_s",
                 .formula = "piping = cast × one + bag changes",
                 .with = {{"cast", std::to_string(casts)}},
                 .sum = std::to_string(casts) + " × " + seconds(pipe.pace->time_per_piece) + " + " +
                        std::to_string(tally.loads.value_or(1) - 1) + " × " +
                        seconds(pipe.pace->time_per_bag_change),
                 .comes_to = seconds(*tally.piping)};
  tell_pace(piping, *pipe.pace);
  all.push_back(piping);
  return all;
}

}  // namespace

std::vector<Working> whipping_workings(const Run& run, const Whipping& whipping, Volume headspace,
                                       std::int64_t per_cast) {
  const Pipe& pipe = *run.pipe;
  const PipeTally& tally = whipping.pipe;
  const auto lost = losses_of(pipe.losses);
  std::vector<Working> all = visible_workings(pipe, tally);
  append_at(all, "", size_workings(pipe, tally, headspace));
  append_at(all, "", density_workings(pipe, tally));
  append_at(all, "", batter_workings(tally.batter, whipping.casts, lost));
  all.push_back(make_working(tally.batter, lost, tally.batter.in_pieces + tally.left_behind));
  append_at(all, "", weighing_workings(pipe.formula, tally.batter.per_fat, tally.batter.weighing));
  append_at(all, "heat",
            chemistry::heat_workings(tally.batter.heat,
                                     pipe.temperatures.value_or(chemistry::HeatQuestion{}),
                                     tally.batter.weighing.pot_strength));
  append_at(all, "", now_workings(pipe, tally, per_cast));
  all.push_back(readings_working(tally, whipping.casts));
  all.push_back(limits_working(pipe, tally, whipping.casts));
  append_at(all, "", bench_workings(pipe, tally, whipping.casts));
  return all;
}

}  // namespace brimwright::planning
