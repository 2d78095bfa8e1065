#include "service/run_file.h"

#include "chemistry/formula.h"
#include "moulds/mould_file.h"
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

moulds::Mould mould_named_in(const Fields& section, const moulds::Library& library) {
  return moulds::read_mould(library.resolve(section.text("mould"), section.place("mould")),
                            library);
}

chemistry::Formula formula_named_in(const Fields& section, const moulds::Library& library) {
  const Fields file =
      Fields::read(library.resolve(section.text("formula"), section.place("formula")));
  return chemistry::read_formula(file);
}

/// "below_brim" or "depth", exactly one of them, under `key`.
planning::FillLevel fill_level(const Fields& section, std::string_view key) {
  const Fields level = section.object(key);
  const bool below = level.has("below_brim");
  if (below == level.has("depth"))
    throw UserError(level.place(), below ? "says the level twice" : "says no level",
                    "give either \"below_brim\" or \"depth\"");
  const planning::FillLevel result =
      below ? planning::FillLevel(planning::BelowBrim{level.length("below_brim")})
            : planning::FillLevel(planning::FromFloor{level.positive_length("depth")});
  level.refuse_unknown();
  return result;
}

planning::LayerColour layer_colour(const Fields& fields) {
  planning::LayerColour colour{fields.text("name"), fields.rate("rate"), {}};
  if (fields.has("bulk_density"))
    colour.bulk_density = read_density(fields.text("bulk_density"), fields.place("bulk_density"));
  const bool by_spoon = std::holds_alternative<SpecificVolume>(colour.rate.amount);
  if (by_spoon && !colour.bulk_density)
    throw UserError(fields.place("rate"), "is by the spoon and the powder has no bulk density",
                    "give \"bulk_density\", such as \"0.3 g/ml\": weigh a level spoon to find it");
  fields.refuse_unknown();
  return colour;
}

planning::Layer layer(const Fields& fields) {
  planning::Layer result;
  result.name = fields.text("name");
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
  fields.refuse_unknown();
  return result;
}

planning::Pour pour_section(const Fields& pour, const Fields& losses,
                            const moulds::Library& library) {
  planning::Pour result{.mould = mould_named_in(pour, library),
                        .formula = formula_named_in(pour, library),
                        .line = fill_level(pour, "line"),
                        .layers = {},
                        .losses = {.overpour = losses.share("overpour", Share{}, 50 * percent),
                                   .pot = losses.mass("pot"),
                                   .jugs = losses.mass("jugs"),
                                   .test_piece = losses.mass("test_piece")}};
  for (const auto& fields : pour.objects("layers")) result.layers.push_back(layer(fields));
  pour.refuse_unknown();
  losses.refuse_unknown();
  return result;
}

planning::WeighCup weigh_cup(const Fields& fields) {
  const planning::WeighCup cup{fields.positive_volume("holds"), fields.positive_mass("net")};
  const double density = cup.density() / gram_per_millilitre;
  // No batter whips below 0.3 g/ml nor weighs over 3: a slip of ounces, tare or cup size.
  if (density < 0.3 || density > 3)
    throw UserError(
        fields.place(), "makes a density of " + trimmed(density, 3) + " g/ml",
        "a whipped batter lies between 0.3 and 1.1; check the cup's volume and the tare");
  fields.refuse_unknown();
  return cup;
}

planning::PipedTrials piped_trials(const Fields& fields) {
  planning::PipedTrials trials{{}, weigh_cup(fields.object("weigh_cup"))};
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
  fields.refuse_unknown();
  return trials;
}

planning::Envelope envelope(const Fields& fields) {
  const bool is_cone = fields.choice("form", {"cone", "dome"}) == "cone";
  const planning::Envelope result{
      is_cone ? planning::EnvelopeForm::cone : planning::EnvelopeForm::dome,
      fields.positive_length("diameter"), fields.positive_length("height"),
      fields.share("solidity", 10 * percent, whole)};
  fields.refuse_unknown();
  return result;
}

std::variant<planning::PipedTrials, planning::Envelope> visible_topping(const Fields& pipe) {
  const auto trials = pipe.optional_object("trials");
  const auto hull = pipe.optional_object("envelope");
  if (trials.has_value() == hull.has_value())
    throw UserError(pipe.place(),
                    trials ? "gives the topping's size twice" : "does not say how big a topping is",
                    "give either \"trials\" (weighed) or \"envelope\" (measured)");
  if (trials) return piped_trials(*trials);
  return envelope(*hull);
}

planning::Pipe pipe_section(const Fields& pipe, const Fields& losses,
                            const moulds::Library& library) {
  planning::Pipe result{
      .formula = formula_named_in(pipe, library),
      .visible = visible_topping(pipe),
      .fills_headspace = pipe.share("fills_headspace", Share{}, whole),
      .whip = weigh_cup(pipe.object("whip")),
      .whip_now = {},
      .bag_holds = {},
      .losses = {.bag = losses.mass("bag"), .bowl_and_whisk = losses.mass("bowl_and_whisk")}};
  if (const auto now = pipe.optional_object("whip_now")) result.whip_now = weigh_cup(*now);
  if (pipe.has("bag_holds")) result.bag_holds = pipe.positive_volume("bag_holds");
  pipe.refuse_unknown();
  losses.refuse_unknown();
  return result;
}

planning::Decoration decoration(const Fields& fields, const moulds::Library& library) {
  planning::Decoration result{.name = fields.text("name"),
                              .material = fields.text("material"),
                              .mould = mould_named_in(fields, library),
                              .fill = fill_level(fields, "fill"),
                              .density = fields.density("density"),
                              .spares = fields.share("spares", Share{}, whole),
                              .melt_loss = fields.share("melt_loss", Share{}, 50 * percent),
                              .jug_film = fields.mass("jug_film")};
  if (fields.choice("made_of", {"one cast", "two halves"}) == "two halves")
    result.form = planning::CastForm::two_halves;
  result.per_piece = fields.whole_number("per_piece", 1, 1000);
  fields.refuse_unknown();
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
          .name = fields.text("name"),
          .sell = sell ? *sell : pieces_to_sell(fields),
          .spoilage = fields.share("spoilage", Share{}, 90 * percent),
          .pour = pour_section(fields.object("pour"), losses.object("pour"), library),
          .pipe = {},
          .perch = {},
          .dust = {},
          .scales = scales_section(fields),
          .money = {}};
  if (sell) fields.has("sell");
  fields.optional_text("note");
  if (const auto pipe = fields.optional_object("pipe"))
    run.pipe = pipe_section(*pipe, losses.object("pipe"), library);
  for (const auto& perch : fields.objects("perch")) run.perch.push_back(decoration(perch, library));
  for (const auto& dust : fields.objects("dust")) {
    run.dust.push_back({dust.text("name"), dust.positive_mass("per_piece")});
    dust.refuse_unknown();
  }
  if (const auto money = fields.optional_object("money")) run.money = money_section(*money);
  losses.refuse_unknown();
  fields.refuse_unknown();
  return run;
}

Run read_run(const std::string& path, const moulds::Library& library,
             std::optional<std::int64_t> sell) {
  return read_run(Fields::read(path), library, sell);
}

}  // namespace brimwright::service
