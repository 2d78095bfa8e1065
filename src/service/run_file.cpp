#include "service/run_file.h"

#include "chemistry/alkali_names.h"
#include "service/batch_reading.h"
#include "service/cut_reading.h"
#include "service/formula_naming.h"
#include "service/label_reading.h"
#include "service/lye_pot_reading.h"
#include "service/perch_reading.h"
#include "service/pipe_reading.h"
#include "units/printing.h"
#include "units/reading.h"

#include <cmath>

namespace brimwright::service {
namespace {

using planning::Run;

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
  pour.refuse_unknown();
  losses.refuse_unknown();
  return result;
}

planning::Scale scale(const Fields& fields) {
  const planning::Scale result{fields.positive_mass("reads"), fields.positive_mass("holds")};
  if (result.holds < 10 * result.reads)
    throw UserError(fields.place(), "holds less than ten of its own steps",
                    "\"reads\" is the step of the display, \"holds\" the most it weighs");
  fields.refuse_unknown();
  return result;
}

planning::Scales scales_section(const Fields& run) {
  const Fields scales = run.object("scales");
  const planning::Scales result{scale(scales.object("large")), scale(scales.object("fine"))};
  if (result.fine.reads > result.large.reads)
    throw UserError(scales.place("fine"), "reads coarser than the large scale",
                    "swap the two; with one scale only, give it in both places");
  scales.refuse_unknown();
  return result;
}

planning::Purse money_section(const Fields& money) {
  planning::Purse purse{currency(money.text("currency"), money.place("currency")), {}};
  if (const auto prices = money.optional_object("prices"))
    for (const auto& name : prices->keys()) {
      const Fields price = prices->object(name);
      purse.prices[name] = {read_money(price.text("paid"), purse.currency, price.place("paid")),
                            price.positive_mass("for")};
      price.refuse_unknown();
    }
  money.refuse_unknown();
  return purse;
}

}  // namespace

Run read_run(const Fields& fields, const moulds::Library& library,
             std::optional<std::int64_t> sell) {
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
  if (sell) fields.has("sell");
  fields.optional_text("note");
  if (const auto pipe = fields.optional_object("pipe"))
    run.pipe = read_pipe(*pipe, losses.object("pipe"), library);
  if (const auto cut = fields.optional_object("cut")) run.cut = read_cut(*cut);
  for (const auto& perch : fields.objects("perch"))
    run.perch.push_back(read_decoration(perch, run.cut.has_value(), library));
  for (const auto& dust : fields.objects("dust")) run.dust.push_back(read_dusting(dust));
  if (const auto money = fields.optional_object("money")) run.money = money_section(*money);
  run.label = read_label_order(fields);
  run.bottles = read_bottles(fields);
  run.lye_pot = read_lye_pot(fields);
  run.pots = read_pots(fields);
  run.batch = read_batch_wish(fields, run.pipe.has_value());
  losses.refuse_unknown();
  fields.refuse_unknown();
  return run;
}

Run read_run(const std::string& path, const moulds::Library& library,
             std::optional<std::int64_t> sell) {
  return read_run(Fields::read(path), library, sell);
}

}  // namespace brimwright::service
