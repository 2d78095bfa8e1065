#include "runs/run_file.h"

#include "planning/fill_level.h"
#include "planning/topping.h"
#include "planning/usual_bench.h"
#include "runs/batch_reading.h"
#include "runs/bottle_reading.h"
#include "runs/cut_reading.h"
#include "runs/decoration_reading.h"
#include "runs/dust_reading.h"
#include "runs/label_reading.h"
#include "runs/lye_pot_reading.h"
#include "runs/money_reading.h"
#include "runs/packaging_reading.h"
#include "runs/pipe_reading.h"
#include "runs/pour_reading.h"
#include "runs/scales_reading.h"
#include "runs/studio_file.h"
#include "schemas/kinds.h"
#include "units/printing.h"
#include "units/share_of.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <set>
#include <string>
#include <string_view>

namespace brimwright::runs {
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
  const Length line = planning::depth_of(run.pour.line, run.pour.mould, run.place("/pour/line"));
  const Fields losses = fields.object("losses");
  ask_for_losses(losses.object("pour"),
                 run.pour.losses.pot + run.pour.losses.jugs + run.pour.losses.test_piece,
                 casts_at_least(run) * curve.volume_below(line) * about);
  const auto decorations = fields.objects("decorations");
  for (std::size_t i = 0; i < decorations.size(); ++i) ask_for_decoration(decorations[i], run, i);
  if (!run.pipe || run.cut) return;
  ask_for_topping(fields.object("pipe"), *run.pipe);
  const Volume each = planning::visible_topping(*run.pipe).volume +
                      run.pipe->fills_headspace * (curve.brimful() - curve.volume_below(line));
  ask_for_losses(losses.object("pipe"),
                 run.pipe->losses.bag + run.pipe->losses.tip + run.pipe->losses.bowl_and_whisk,
                 casts_at_least(run) * each * run.pipe->whip.density());
}

/// Beside what a run may lack; a slip for that is none of these.
bool run_may_say(const std::string& key) {
  return key == "sell" || key == "label" || key == "scales" || key == "losses";
}

/// What is the same in every run is missing where there is no studio to take it from.
void ask_for_what_a_studio_has(const Fields& run) {
  const auto ask = [&](std::string_view key, const std::string& lines) {
    if (run.has(key)) return;
    if (const auto near = nearest_name(key, run.keys()); near && !run_may_say(*near))
      throw UserError(run.place(*near), "unknown key",
                      "did you mean \"" + std::string(key) + "\"?");
    throw UserError(run.place(key), "is missing, and no studio.json beside the run has it",
                    "brimwright init FOLDER makes one; or add here, with your own figures for each "
                    "question mark, " +
                        lines);
  };
  ask("losses",
      R"("losses": { "pour": { "overpour": "?", "pot": "?", "jugs": "?", "test_piece": "?" })" +
          std::string(run.has("pipe") ? R"(, "pipe": { "bag": "?", "bowl_and_whisk": "?" })" : "") +
          " }");
  const std::string step = run.spelling().quoted("/scales/large/step") + R"(: "?", )" +
                           run.spelling().quoted("/scales/large/most") + R"(: "?")";
  ask("scales", R"("scales": { "large": { )" + step + R"( }, "fine": { )" + step + " } }");
}

/// What of the studio the run was completed with, each section once, in the studio's order.
planning::FromStudio taken_from(const Studio& studio, const Fields& run) {
  if (!studio.fields()) return {};
  std::set<std::string> taken = studio.lent();
  for (const std::string& pointer : run.taken())
    taken.insert(pointer.substr(1, pointer.find('/', 1) - 1));
  planning::FromStudio from{.file = studio.fields()->file(), .sections = {}};
  for (const std::string_view section : studio_sections)
    if (taken.contains(std::string(section))) from.sections.emplace_back(section);
  return from;
}

/// A label's weight and the order of its ingredients go by the weights of all parts.
void refuse_unweighed_on_label(const Run& run, const Fields& fields) {
  if (!run.label) return;
  const auto decorations = fields.objects("decorations");
  for (std::size_t i = 0; i < run.decorations.size(); ++i) {
    const auto* bought = std::get_if<planning::Bought>(&run.decorations[i].made);
    if (bought != nullptr && !bought->weighs)
      throw UserError(decorations[i].object("bought").place("weighs"),
                      "is missing, and the label's weight and ingredients go by it",
                      "weigh ten of them and give what one weighs, such as \"1.2 g\", or leave "
                      "\"label\" out");
  }
}

/// A pot is for what is dissolved afresh: what stands ready is weighed for each batter.
void refuse_pot_of_solution(const Run& run) {
  if (!run.lye_pot) return;
  const auto refuse = [&](const chemistry::Formula& formula) {
    for (const auto& alkali : formula.alkalis)
      if (alkali.solution)
        throw UserError(run.lye_pot->where,
                        "shares a pot of lye solution, and \"" + formula.name +
                            "\" is weighed from \"" + alkali.solution->name + "\"",
                        "take \"lye_pot\" out: each batter weighs its lye from what stands ready");
  };
  refuse(run.pour.formula);
  if (run.pipe) refuse(run.pipe->formula);
}

/// Which run it is, when and for whom it is made: from version 2 on.
void read_what_it_is_for(Run& run, const Fields& fields) {
  if (fields.spelling().is_earlier()) return;
  if (fields.has("id")) run.id = fields.uuid("id");
  if (fields.has("made_on")) run.made_on = fields.date("made_on");
  if (fields.has("due")) run.due = fields.date("due");
  run.whom_for = fields.optional_name("for").value_or("");
}

/// What of the studio's figures is learned, of those that were taken from it since.
void say_of_studio(Run& run, const Fields& studio, std::size_t said_before) {
  const auto& said = studio.said();
  for (std::size_t i = said_before; i < said.size(); ++i)
    if (said[i].severity == Severity::note)
      run.remarks.push_back({Severity::note, "Studio: " + said[i].text});
}

}  // namespace

Run read_run(const Fields& fields, const moulds::Library& library,
             std::optional<std::int64_t> sell) {
  fields.of(schemas::run());
  fields.may_hold({"$schema", "schema", "id",        "made_on",  "due",   "for",     "name",
                   "note",    "sell",   "spoilage",  "pour",     "pipe",  "lye_pot", "decorations",
                   "dust",    "cut",    "losses",    "scales",   "money", "label",   "bottles",
                   "pots",    "batch",  "packaging", "confirmed"});
  fields.optional_text("$schema");
  const Studio studio = studio_for(fields.file(), library);
  const std::size_t said_before = studio.fields() ? studio.fields()->said().size() : 0;
  if (studio.fields())
    fields.complete_from(*studio.fields(), {"scales", "losses", "spoilage", "pots"});
  ask_for_what_a_studio_has(fields);
  const Fields losses = fields.object("losses");
  Run run{.file = fields.file(),
          .spelling = fields.spelling(),
          .name = fields.name("name"),
          .sell = sell ? *sell : pieces_to_sell(fields),
          .spoilage = fields.share("spoilage", Share{}, 90 * percent),
          .pour = read_pour(fields.object("pour"), losses.object("pour"), library, studio),
          .pipe = {},
          .decorations = {},
          .cut = {},
          .dust = {},
          .scales = read_scales(fields),
          .money = {}};
  usual_bench().ask(fields, "spoilage", "spoilage", run.spoilage);
  if (sell) fields.has("sell");
  fields.optional_text("note");
  read_what_it_is_for(run, fields);
  if (const auto pipe = fields.optional_object("pipe"))
    run.pipe = read_pipe(*pipe, losses.object("pipe"), library, studio);
  if (const auto cut = fields.optional_object("cut")) {
    if (studio.fields()) cut->complete_from(*studio.fields(), {"kerf"});
    run.cut = read_cut(*cut);
  }
  for (const auto& decoration : fields.objects("decorations"))
    run.decorations.push_back(read_decoration(decoration, run.cut.has_value(), library, studio));
  for (const auto& dust : fields.objects("dust")) run.dust.push_back(read_dusting(dust));
  run.money = read_purse(fields, run, studio, library);
  if (studio.fields() && fields.has("label")) fields.complete_from(*studio.fields(), {"label"});
  if (fields.has("packaging")) run.packaging = read_packaging(fields);
  run.label = read_label_order(fields);
  refuse_unweighed_on_label(run, fields);
  run.bottles = read_bottles(fields);
  run.lye_pot = read_lye_pot(fields);
  refuse_pot_of_solution(run);
  run.pots = read_pots(fields);
  run.batch = read_batch_wish(fields, run.pipe.has_value());
  losses.refuse_unknown();
  fields.refuse_unknown();
  ask_for_sizes(fields, run);
  run.from_studio = taken_from(studio, fields);
  run.remarks = fields.said();
  if (studio.fields()) say_of_studio(run, *studio.fields(), said_before);
  return run;
}

Run read_run(const std::string& path, const moulds::Library& library,
             std::optional<std::int64_t> sell) {
  return read_run(library.document(path), library, sell);
}

}  // namespace brimwright::runs
