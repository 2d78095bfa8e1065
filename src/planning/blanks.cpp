#include "planning/blanks.h"

#include "units/printing.h"
#include "units/rounding.h"
#include "units/weight_text.h"
#include "units/wording.h"

#include <algorithm>
#include <chrono>
#include <utility>

namespace brimwright::planning {
namespace {

using Kind = Blank::Kind;
using When = Blank::When;

std::string shown(Mass mass, Mass step) { return on_scale(rounded_nearest(mass, step), step); }
std::string unit_of(Mass step) { return reads_ounces(step) ? "oz" : "g"; }
std::string text_of(Length length) { return fixed(length / millimetre, 1) + " mm"; }
std::string text_of(Density density) { return fixed(density / gram_per_millilitre, 3) + " g/ml"; }

/// Blanks as they come, one after the other.
/// Of all its batters, in whole days; nothing where no formula says.
std::optional<std::int64_t> longest_cure(const Run& run) {
  std::optional<std::int64_t> longest;
  const auto add = [&](const chemistry::Formula& formula) {
    if (formula.cure)
      longest = std::max<std::int64_t>(longest.value_or(0),
                                       ceil<std::chrono::days>(*formula.cure).count());
  };
  add(run.pour.formula);
  if (run.pipe) add(run.pipe->formula);
  return longest;
}

class Form {
 public:
  Form(const Run& run, const Plan& plan, const Batch& batch)
      : run_(run), plan_(plan), batch_(batch), step_(run.scales.large.step) {}

  std::vector<Blank> filled() {
    day_before();
    base();
    for (std::size_t i = 0; i < batch_.whippings.size(); ++i)
      for (std::int64_t n = 0; n < batch_.whippings[i].count; ++n) topping(i);
    pieces();
    before_sale();
    return std::move(blanks_);
  }

 private:
  struct Part {
    std::string key, of;
    std::size_t part = 0;
  };
  /// Of the batter that is at hand, or of the batch.
  Blank& add(const Part& part, const std::string& key, const std::string& words, Kind kind,
             When when) {
    return blanks_.emplace_back(Blank{.key = part.key.empty() ? key : part.key + "." + key,
                                      .of = part.of,
                                      .words = words,
                                      .kind = kind,
                                      .when = when,
                                      .part = part.part});
  }
  void temperature(const Part& part, const std::string& key, const std::string& words, When when,
                   const std::string& least, const std::string& most) {
    Blank& blank = add(part, key, words, Kind::temperature, when);
    blank.unit = "°";
    blank.least = least;
    blank.most = most;
  }
  void minutes(const Part& part, const std::string& key, const std::string& words, When when,
               const std::string& most) {
    Blank& blank = add(part, key, words, Kind::minutes, when);
    blank.unit = "min";
    blank.most = most;
  }
  void count(const Part& part, const std::string& key, const std::string& words, When when,
             std::int64_t planned) {
    Blank& blank = add(part, key, words, Kind::count, when);
    blank.planned = std::to_string(planned);
    blank.most = std::to_string(2 * planned);
  }
  Blank& mass(const Part& part, const std::string& key, const std::string& words, When when,
              std::optional<Mass> planned = {}) {
    Blank& blank = add(part, key, words, Kind::mass, when);
    blank.unit = unit_of(step_);
    if (planned) blank.planned = shown(*planned, step_);
    return blank;
  }
  void made(const Part& part, When when, Mass planned) {
    Blank& blank = mass(part, "made", part.of + ": made in all", when, planned);
    blank.least = shown(planned * 0.5, step_);
    blank.most = shown(planned * 1.5, step_);
  }
  void left(const Part& part, When when, Mass on_tools) {
    mass(part, "left_over", part.of + ": left over", when).not_above = part.key + ".made";
    mass(part, "on_tools", part.of + ": left on tools", when, on_tools).not_above =
        part.key + ".made";
  }
  /// How much of it stayed in which place; where there is but one, what was left on tools tells it.
  struct Stayed {
    std::string key, words;
    Mass planned;
    bool is_planned = true;  // and so shown; otherwise its number is not known
  };
  void stayed(const Part& part, When when, Mass elsewhere, const std::vector<Stayed>& places) {
    const auto is_planned = [](const Stayed& place) { return place.planned > Mass{}; };
    const auto count = std::count_if(places.begin(), places.end(), is_planned);
    if (count < 2 && !(elsewhere > Mass{})) return;
    for (const Stayed& place : places)
      if (is_planned(place))
        mass(part, place.key, part.of + ": of it " + place.words, when,
             place.is_planned ? std::optional(place.planned) : std::nullopt)
            .not_above = part.key + ".made";
  }
  void mixed(const Part& part, When when) {
    temperature(part, "fats_at", "fats at", when, "0 °C", "100 °C");
    temperature(part, "lye_at", "lye solution at", when, "-5 °C", "110 °C");
    temperature(part, "room_at", "room at", when, "5 °C", "45 °C");
    minutes(part, "trace", part.of + ": trace after", when, "6 h");
  }
  Blank& cup(const Part& part, const std::string& words, When when, std::optional<Mass> planned,
             Density least, Density most) {
    Blank& blank = add(part, "cup", words, Kind::mass, when);
    const Mass step = run_.scales.fine.step;
    blank.unit = unit_of(step);
    if (planned) blank.planned = shown(*planned, step);
    blank.least = text_of(least);
    blank.most = text_of(most);
    return blank;
  }

  std::string casts(const std::string& done) const {
    return (run_.cut ? "loaves " : "pieces ") + done;
  }

  bool is_first() const {
    return std::find(batch_.numbers.begin(), batch_.numbers.end(), 1) != batch_.numbers.end();
  }

  /// Cast once for all batches, with the first.
  void day_before() {
    for (std::size_t i = 0; is_first() && i < plan_.decorations.size(); ++i) {
      const auto& decoration = plan_.decorations[i];
      if (decoration.is_bought) continue;
      const std::size_t from = blanks_.size();
      decoration_cast(i, decoration);
      for (std::size_t b = from; b < blanks_.size(); ++b) blanks_[b].batch = 1;
    }
  }

  /// What its losses can be told by, where it has any.
  void decoration_cast(std::size_t i, const DecorationTally& tally) {
    const Decoration& decoration = run_.decorations[i];
    const Part part{"decoration-" + std::to_string(i + 1), tally.name, i};
    const bool has_jug = decoration.left_in_jug > Mass{};
    mass(part, "melted", part.of + ": melted", When::day_before, tally.make);
    if (has_jug)
      count(part, "fills", part.of + ": tray fillings", When::day_before, tally.tray_fills);
    count(part, "cast", part.of + ": cast", When::day_before, tally.casts);
    mass(part, "left_over", part.of + ": melt left over", When::day_before).not_above =
        part.key + ".melted";
    if (has_jug)
      mass(part, "in_jug", part.of + ": left in the jug, all fillings", When::day_before,
           static_cast<double>(tally.tray_fills) * decoration.left_in_jug)
          .not_above = part.key + ".melted";
    if (!(decoration.melt_loss > Share{}) || std::holds_alternative<Drizzle>(decoration.made))
      return;
    const Mass step = run_.scales.fine.step;
    Blank& each = add(part, "cast_each", part.of + ": one weighs", Kind::mass, When::day_before);
    each.unit = unit_of(step);
    each.planned = shown(tally.mass_each, step);
    each.least = shown(tally.mass_each * 0.5, step);
    each.most = shown(tally.mass_each * 1.5, step);
  }

  void base() {
    const Part part{"base", batch_.pipe ? "base" : "batter"};
    const BatterTally& tally = batch_.pour.batter;
    mixed(part, When::base_mixed);
    base_cup(part, tally.density);
    add(part, "made_on", part.of + ": made on (date)", Kind::date, When::base_mixed);
    made(part, When::base_mixed, tally.weighing.batter);
    count({"pour", part.of}, "filled", casts("poured"), When::poured, batch_.casts);
    Blank& line =
        add({"pour", part.of}, "line_off", "line off by (+ above)", Kind::length, When::poured);
    line.unit = "mm";
    line.least = text_of(-batch_.pour.poured_to);
    line.most = text_of(run_.pour.mould.curve.height() - batch_.pour.poured_to);
    left(part, When::poured, tally.lost);
    const PourLosses& losses = run_.pour.losses;
    stayed(part, When::poured, losses.test_piece + losses.overpour.of_one() * tally.in_pieces,
           {{"in_pot", "in the pot", losses.pot}, {"in_jugs", "in the jugs", losses.jugs}});
  }

  /// The base's own cup tells a batter that is heavier than planned from a mould that holds more.
  void base_cup(const Part& part, Density density) {
    const Density least = 0.85 * gram_per_millilitre, most = 1.25 * gram_per_millilitre;
    if (run_.pipe) {
      const Volume holds = run_.pipe->whip.holds;
      cup(part, part.of + ": weigh-cup, " + fixed_ml(holds, 0), When::base_mixed, holds * density,
          least, most)
          .cup_holds = in_ml(holds);
      return;
    }
    Blank& holds =
        add(part, "cup_holds", part.of + ": the weigh-cup holds", Kind::volume, When::base_mixed);
    holds.unit = "ml";
    holds.least = "15 ml";
    holds.most = "360 ml";
    cup(part, part.of + ": weigh-cup, full", When::base_mixed, {}, least, most).cup_holds_key =
        part.key + ".cup_holds";
  }

  void topping(std::size_t group) {
    const auto& whipping = batch_.whippings[group];
    const bool is_one_go = batch_.whippings.size() == 1 && whipping.count == 1;
    const std::string number = std::to_string(++whippings_);
    const Part part{is_one_go ? "topping" : "topping-" + number,
                    is_one_go ? "topping" : "whipping " + number, group};
    const auto& tally = whipping.pipe.batter;
    const Volume holds = run_.pipe->whip.holds;
    mixed(part, When::topping_mixed);
    add(part, "made_on", part.of + ": made on (date)", Kind::date, When::topping_mixed);
    made(part, When::topping_mixed, tally.weighing.batter);
    cup(part, part.of + ": weigh-cup, " + fixed_ml(holds, 0), When::whipped, run_.pipe->whip.net,
        0.3 * gram_per_millilitre, tally.density_computed * 1.05)
        .cup_holds = in_ml(holds);
    count(part, "piped", (is_one_go ? "" : part.of + ": ") + casts("piped"), When::piped,
          whipping.casts);
    const PipeLosses& losses = run_.pipe->losses;
    const auto& loads = whipping.pipe.loads;
    const bool has_changes = losses.each_bag_change > Mass{} && loads != 1;
    if (has_changes) bag_changes(part, loads);
    left(part, When::piped, tally.lost);
    const double changes = loads ? static_cast<double>(*loads - 1) : 1;
    stayed(part, When::piped, {},
           {{"in_bowl", "in bowl and whisk", losses.bowl_and_whisk},
            {"in_bag", "in the bag", losses.bag},
            {"in_tip", "in the tip", losses.tip},
            {"at_bag_changes", "lost at all bag changes",
             has_changes ? changes * losses.each_bag_change : Mass{}, loads.has_value()}});
  }

  void bag_changes(const Part& part, const std::optional<std::int64_t>& loads) {
    const std::string words = part.of + ": bag changes";
    if (loads)
      count(part, "bag_changes", words, When::piped, *loads - 1);
    else
      add(part, "bag_changes", words, Kind::count, When::piped);
  }

  /// Of the whole run, as they are counted out for it: with the first batch.
  void bought() {
    for (std::size_t i = 0; is_first() && i < plan_.decorations.size(); ++i) {
      const auto& decoration = plan_.decorations[i];
      if (!decoration.is_bought || decoration.casts == 0) continue;
      count({"decoration-" + std::to_string(i + 1), ""}, "used",
            decoration.name + ": used up" + (plan_.pieces.batches > 1 ? ", whole run" : ""),
            When::afterwards, decoration.casts);
      blanks_.back().batch = 1;
    }
  }

  void pieces() {
    bought();
    const Part batch;
    count(batch, "pieces.made", "pieces made, rejects too", When::afterwards, batch_.pieces);
    Blank& rejects = add(batch, "pieces.rejected", "rejects", Kind::count, When::afterwards);
    if (plan_.pieces.batches == 1)
      rejects.planned = std::to_string(plan_.pieces.make - plan_.pieces.sell);
    rejects.not_above = "pieces.made";
    add(batch, "pieces.why", "rejects: why", Kind::text, When::afterwards);
    minutes(batch, "minutes.making", "work: making", When::afterwards, "24 h");
    minutes(batch, "minutes.pieces", "work: on the pieces", When::afterwards, "24 h");
    minutes(batch, "minutes.packing", "work: packing", When::afterwards, "24 h");
    add(batch, "unmoulded_on", "unmoulded (date)", Kind::date, When::afterwards);
    if (run_.cut) add(batch, "cut_on", "cut (date)", Kind::date, When::afterwards);
  }

  void before_sale() {
    const Part batch;
    Blank& cured = add(batch, "cured", "cured: date, pieces", Kind::weighing, When::afterwards);
    cured.unit = unit_of(run_.scales.fine.step);
    if (plan_.piece.cured) cured.planned = fixed(*plan_.piece.cured / gram, 1) + " g each";
    cured.most = fixed(plan_.piece.fresh / gram, 1) + " g";
    add(batch, "tested_how", "tested by (how)", Kind::text, When::afterwards);
    add(batch, "tested", "tested: pass or hold", Kind::choice, When::afterwards).choices = {"pass",
                                                                                            "hold"};
    add(batch, "tested_words", "tested: what came of it", Kind::text, When::afterwards);
    Blank& ready = add(batch, "ready_on", "ready on (date)", Kind::date, When::afterwards);
    if (const auto cure = longest_cure(run_)) ready.least = std::to_string(*cure) + " days";
    add(batch, "held_back", "or held back, and why", Kind::text, When::afterwards);
  }

  const Run& run_;
  const Plan& plan_;
  const Batch& batch_;
  Mass step_;
  std::int64_t whippings_ = 0;
  std::vector<Blank> blanks_;
};

}  // namespace

std::vector<Blank> blanks_of(const Run& run, const Plan& plan, const Batch& batch) {
  return Form(run, plan, batch).filled();
}

bool is_of_base(const Blank& blank) { return blank.key.starts_with("base."); }

const Blank* find_blank(const std::vector<Blank>& blanks, const std::string& key) {
  const auto at = std::find_if(blanks.begin(), blanks.end(),
                               [&](const Blank& blank) { return blank.key == key; });
  return at == blanks.end() ? nullptr : &*at;
}

std::string name_of(Blank::Kind kind) {
  switch (kind) {
    case Kind::mass:
      return "mass";
    case Kind::temperature:
      return "temperature";
    case Kind::minutes:
      return "minutes";
    case Kind::date:
      return "date";
    case Kind::count:
      return "count";
    case Kind::length:
      return "length";
    case Kind::volume:
      return "volume";
    case Kind::choice:
      return "choice";
    case Kind::text:
      return "text";
    case Kind::weighing:
      return "weighing";
  }
  return "";
}

}  // namespace brimwright::planning
