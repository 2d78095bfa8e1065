#include "runs/pour_reading.h"

#include "chemistry/alkali_names.h"
#include "planning/usual_bench.h"
#include "runs/level_reading.h"
#include "runs/made_ahead_reading.h"
#include "runs/named_files.h"
#include "units/learned_values.h"
#include "units/reading.h"
#include "units/wording.h"

#include <string>
#include <variant>

namespace brimwright::runs {
namespace {

using planning::usual_bench;

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
    throw UserError(fields.place(),
                    ways == 0 ? "gives no amount" : "gives its amount more than once",
                    "give one of \"depth\", \"mass\", \"parts\" or \"rest\": true");
  if (fields.has("depth"))
    result.amount = planning::LayerDepth{fields.positive_length("depth", "15 mm")};
  if (fields.has("mass")) result.amount = planning::LayerMass{fields.positive_mass("mass", "40 g")};
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
  if (const auto tilted = fields.optional_object("tilted")) result.tilted = read_tilt(*tilted);
  fields.refuse_unknown();
  return result;
}

}  // namespace

planning::Pour read_pour(const Fields& pour, const Fields& losses, const moulds::Library& library,
                         const Studio& studio) {
  if (const auto temperatures = studio.section("temperatures"))
    pour.complete_from(*temperatures, "temperatures", "pour");
  pour.may_hold({"mould", "moulds_owned", "formula", "lye_from", "blend", "line", "layers",
                 "temperatures", "confirmed"});
  losses.may_hold({"overpour", "pot", "jugs", "test_piece", "confirmed", "learned"});
  planning::Pour result{.mould = read_mould_named_in(pour, library, studio),
                        .formula = read_formula_named_in(pour, library),
                        .line = read_fill_level(pour, "line"),
                        .layers = {},
                        .losses = {.overpour = losses.share("overpour", Share{}, 50 * percent),
                                   .pot = losses.mass("pot", "20 g"),
                                   .jugs = losses.mass("jugs", "20 g"),
                                   .test_piece = losses.mass("test_piece", "60 g")}};
  take_what_stands_ready(result.formula, pour, studio);
  for (const auto& fields : pour.objects("layers")) result.layers.push_back(layer(fields));
  if (const auto temperatures = pour.optional_object("temperatures"))
    result.temperatures = chemistry::read_heat_question(*temperatures);
  const Volume brimful = result.mould.curve.brimful();
  usual_bench().ask_found(pour, "poured piece", brimful, in_ml(brimful, 2));
  usual_bench().ask(losses, "overpour", "overpour", result.losses.overpour);
  usual_bench().ask(losses, "pot", "stays in the pot", result.losses.pot);
  usual_bench().ask(losses, "jugs", "stays in the pot", result.losses.jugs);
  usual_bench().ask(losses, "test_piece", "test piece", result.losses.test_piece);
  tell_learned(losses);
  pour.refuse_unknown();
  losses.refuse_unknown();
  return result;
}

}  // namespace brimwright::runs
