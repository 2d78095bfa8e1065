#include "service/run_file.h"

#include "chemistry/alkali_names.h"
#include "planning/decoration.h"
#include "planning/topping.h"
#include "planning/usual_bench.h"
#include "service/batch_reading.h"
#include "service/cut_reading.h"
#include "service/formula_naming.h"
#include "service/label_reading.h"
#include "service/lye_pot_reading.h"
#include "service/perch_reading.h"
#include "service/pipe_reading.h"
#include "units/printing.h"
#include "units/reading.h"

#include <algorithm>
#include <cmath>

namespace brimwright::service {
namespace {

using planning::Run;
using planning::usual_bench;

// The most pieces in one run: beyond any small studio, and far below what a whole number holds.
constexpr std::int64_t most_pieces = 1'000'000;

std::int64_t pieces_to_sell(const Fields& run) {
  const double wanted = run.number("sell");
  if (wanted != std::floor(wanted) || wanted < 1)
    throw UserError(run.place("sell"), "is " + exact(wanted) + " pieces",
                    "give a whole number of pieces, 1 or more");
  return run.whole_number("sell", 1, most_pieces);
}

planning::LayerColour layer_colour(const Fields& fields) {
  chemistry::refuse_alkali(fields.name("name"), fields.place("name"));
  planning::LayerColour colour{fields.name("name"), fields.rate("rate"), {}};
  if (fields.has("bulk_density"))
    colour.bulk_density = read_density(fields.text("bulk_density"), fields.place("bulk_density"));
  const bool by_spoon = std::holds_alternative<SpecificVolume>(colour.rate.amount);
  if (by_spoon && !colour.bulk_density)
    throw UserError(fields.place("rate"), "is by the spoon and the powder has no bulk density",
                    "give \"bulk_density\", such as \"0.3 g/ml\": weigh a level spoon to find it");
  colour.label = chemistry::read_label_data(fields);
  fields.refuse_unknown();
  return colour;
}

planning::Layer layer(const Fields& fields) {
  planning::Layer result;
  result.name = fields.name("name");
  const int ways = int{fields.has("depth")} + int{fields.has("mass")} + int{fields.has("parts")} +
                   int{fields.has("rest")};
  if (ways != 1)
    throw UserError(fields.place(), ways == 0 ? "says no amount" : "says its amount more than once",
                    "give one of \"depth\", \"mass\", \"parts\" or \"rest\": true");
  if (fields.has("depth")) result.amount = planning::LayerDepth{fields.positive_length("depth")};
  if (fields.has("mass")) result.amount = planning::LayerMass{fields.positive_mass("mass")};
  if (fields.has("parts")) {
    const double parts = fields.number("parts");
    if (!(parts > 0))
      throw UserError(fields.place("parts"), "is not above zero", "give parts above zero");
    result.amount = planning::LayerParts{parts};
  }
  if (fields.has("rest")) {
    if (!fields.truth("rest"))
      throw UserError(fields.place("rest"), "is false", "leave it out, or give true");
    result.amount = planning::LayerRest{};
  }
  for (const auto& colour : fields.objects("colours"))
    result.colours.push_back(layer_colour(colour));
  if (const auto propped = fields.optional_object("propped")) result.propped = read_tilt(*propped);
  fields.refuse_unknown();
  return result;
}

planning::Pour pour_section(const Fields& pour, const Fields& losses,
                            const moulds::Library& library) {
  pour.may_hold({"mould", "moulds_owned", "formula", "line", "layers", "warmth", "confirmed"});
  losses.may_hold({"overpour", "pot", "jugs", "test_piece", "confirmed"});
  planning::Pour result{.mould = read_mould_named_in(pour, library),
                        .formula = read_formula_named_in(pour, library),
                        .line = read_fill_level(pour, "line"),
                        .layers = {},
                        .losses = {.overpour = losses.share("overpour", Share{}, 50 * percent),
                                   .pot = losses.mass("pot"),
                                   .jugs = losses.mass("jugs"),
                                   .test_piece = losses.mass("test_piece")}};
  for (const auto& fields : pour.objects("layers")) result.layers.push_back(layer(fields));
  if (const auto warmth = pour.optional_object("warmth"))
    result.warmth = chemistry::read_heat_question(*warmth);
  const Volume brimful = result.mould.curve.brimful();
  usual_bench().ask_found(pour, "poured piece", brimful, trimmed(brimful / millilitre, 2) + " ml");
  usual_bench().ask(losses, "overpour", "overpour", result.losses.overpour);
  usual_bench().ask(losses, "pot", "stays in the pot", result.losses.pot);
  usual_bench().ask(losses, "jugs", "stays in the pot", result.losses.jugs);
  usual_bench().ask(losses, "test_piece", "test piece", result.losses.test_piece);
  pour.refuse_unknown();
  losses.refuse_unknown();
  return result;
}

planning::Scale scale(const Fields& fields, std::string_view step) {
  const planning::Scale result{fields.positive_mass("reads"), fields.positive_mass("holds")};
  if (result.holds < 10 * result.reads)
    throw UserError(fields.place(), "holds less than ten of its own steps",
                    "\"reads\" is the step of the display, \"holds\" the most it weighs");
  usual_bench().ask(fields, "reads", step, result.reads);
  usual_bench().ask(fields, "holds", "scale's most", result.holds);
  fields.refuse_unknown();
  return result;
}

/// The step tells which of two scales is fine; what they hold may have changed places alone.
void ask_for_swapped_scales(const Fields& fields, const planning::Scales& scales) {
  const std::string shown = fields.object("large").text("holds");
  const bool is_confirmed = fields.confirms(shown);
  if (scales.large.holds >= scales.fine.holds || is_confirmed) return;
  throw UserError(fields.place("large"),
                  "holds \"" + shown + "\", less than the fine scale, which is far from usual",
                  "are the two \"holds\" swapped? If it is right, put \"confirmed\": \"" + shown +
                      "\" beside \"large\" and \"fine\"");
}

planning::Scales scales_section(const Fields& run) {
  const Fields scales = run.object("scales");
  const planning::Scales result{scale(scales.object("large"), "scale's step"),
                                scale(scales.object("fine"), "fine scale's step")};
  if (result.fine.reads > result.large.reads)
    throw UserError(scales.place("fine"), "reads coarser than the large scale",
                    "swap the two; with one scale only, give it in both places");
  ask_for_swapped_scales(scales, result);
  scales.refuse_unknown();
  return result;
}

/// A price that is not filled in: "", null, {} or one without a sum paid.
bool is_unpriced(const Fields& prices, const std::string& name) {
  if (prices.is_empty(name)) return true;
  return prices.is_object(name) && prices.object(name).is_empty("paid");
}

planning::Priced kind_of(const std::string& name, const Run& run) {
  if (name == "water") return planning::Priced::water;
  if (name == "NaOH" || name == "KOH") return planning::Priced::alkali;
  const auto holds = [&](const chemistry::Formula& formula) {
    return std::any_of(formula.fats.begin(), formula.fats.end(),
                       [&](const auto& fat) { return fat.fat.id == name; });
  };
  const bool is_fat = holds(run.pour.formula) || (run.pipe && holds(run.pipe->formula));
  return is_fat ? planning::Priced::fat : planning::Priced::other;
}

planning::Price price_of(const Fields& fields, const Currency& currency) {
  planning::Price price{read_money(fields.text("paid"), currency, fields.place("paid")),
                        fields.positive_mass("for")};
  fields.has("confirmed");
  fields.refuse_unknown();
  return price;
}

planning::Purse money_section(const Fields& money, const Run& run) {
  planning::Purse purse{currency(money.text("currency"), money.place("currency")), {}};
  const bool has_prices = !money.is_empty("prices");
  const auto prices = has_prices ? money.optional_object("prices") : std::nullopt;
  for (const auto& name : prices ? prices->keys() : std::vector<std::string>()) {
    if (is_unpriced(*prices, name)) continue;
    const Fields fields = prices->object(name);
    purse.prices[name] = price_of(fields, purse.currency);
    ask_for_price(fields, purse.prices[name], kind_of(name, run));
  }
  money.refuse_unknown();
  return purse;
}

double casts_at_least(const Run& run) { return run.cut ? 1 : static_cast<double>(run.sell); }

/// `lost` of a batter whose pieces hold about `in_pieces`. A small trial loses more than it makes.
void ask_for_losses(const Fields& losses, Mass lost, Mass in_pieces) {
  constexpr Mass trial = 250 * gram;  // common practice, no source
  losses.has("confirmed");
  if (lost <= trial) return;
  usual_bench().ask_found(losses, "losses for what is in the pieces", lost / in_pieces,
                          trimmed(lost / gram, 0) + " g lost");
}

/// Asks for what only the whole run tells.
void ask_for_sizes(const Fields& fields, const Run& run) {
  // Batter weighs near enough as much as water for this.
  constexpr Density about = 1 * gram_per_millilitre;
  const auto& curve = run.pour.mould.curve;
  const Length line = planning::depth_of(run.pour.line, run.pour.mould, {run.file, "/pour/line"});
  const Fields losses = fields.object("losses");
  ask_for_losses(losses.object("pour"),
                 run.pour.losses.pot + run.pour.losses.jugs + run.pour.losses.test_piece,
                 casts_at_least(run) * curve.volume_below(line) * about);
  const auto decorations = fields.objects("perch");
  for (std::size_t i = 0; i < decorations.size(); ++i) ask_for_decoration(decorations[i], run, i);
  if (!run.pipe || run.cut) return;
  ask_for_topping(fields.object("pipe"), *run.pipe);
  const Volume each =
      planning::visible_topping(*run.pipe).volume +
      run.pipe->fills_headspace.of_one() * (curve.brimful() - curve.volume_below(line));
  ask_for_losses(losses.object("pipe"),
                 run.pipe->losses.bag + run.pipe->losses.tip + run.pipe->losses.bowl_and_whisk,
                 casts_at_least(run) * each * run.pipe->whip.density());
}

}  // namespace

Run read_run(const Fields& fields, const moulds::Library& library,
             std::optional<std::int64_t> sell) {
  fields.may_hold({"$schema", "schema",  "name",    "note", "sell",  "spoilage", "pour",
                   "pipe",    "lye_pot", "perch",   "dust", "cut",   "losses",   "scales",
                   "money",   "label",   "bottles", "pots", "batch", "confirmed"});
  fields.optional_text("$schema");
  fields.choice("schema", {"brimwright.run/1"});
  const Fields losses = fields.object("losses");
  Run run{.file = fields.file(),
          .name = fields.name("name"),
          .sell = sell ? *sell : pieces_to_sell(fields),
          .spoilage = fields.share("spoilage", Share{}, 90 * percent),
          .pour = pour_section(fields.object("pour"), losses.object("pour"), library),
          .pipe = {},
          .perch = {},
          .cut = {},
          .dust = {},
          .scales = scales_section(fields),
          .money = {}};
  usual_bench().ask(fields, "spoilage", "spoilage", run.spoilage);
  if (sell) fields.has("sell");
  fields.optional_text("note");
  if (const auto pipe = fields.optional_object("pipe"))
    run.pipe = read_pipe(*pipe, losses.object("pipe"), library);
  if (const auto cut = fields.optional_object("cut")) run.cut = read_cut(*cut);
  for (const auto& perch : fields.objects("perch"))
    run.perch.push_back(read_decoration(perch, run.cut.has_value(), library));
  for (const auto& dust : fields.objects("dust")) run.dust.push_back(read_dusting(dust));
  if (!fields.is_empty("money")) run.money = money_section(fields.object("money"), run);
  run.label = read_label_order(fields);
  run.bottles = read_bottles(fields);
  run.lye_pot = read_lye_pot(fields);
  run.pots = read_pots(fields);
  run.batch = read_batch_wish(fields, run.pipe.has_value());
  losses.refuse_unknown();
  fields.refuse_unknown();
  ask_for_sizes(fields, run);
  run.remarks = fields.said();
  return run;
}

Run read_run(const std::string& path, const moulds::Library& library,
             std::optional<std::int64_t> sell) {
  return read_run(Fields::read(path), library, sell);
}

}  // namespace brimwright::service
