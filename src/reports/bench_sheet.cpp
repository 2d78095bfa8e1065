#include "reports/bench_sheet.h"

#include "planning/hours_in_mould.h"
#include "planning/scales.h"
#include "reports/batch_sheet.h"
#include "reports/batter_sheet.h"
#include "reports/cut_words.h"
#include "reports/gauge_report.h"
#include "reports/mould_picture.h"
#include "reports/together_report.h"
#include "reports/vessel_filling.h"
#include "reports/weigh_out.h"
#include "units/printing.h"
#include "units/shown_text.h"
#include "units/weight_text.h"
#include "units/wording.h"

#include <algorithm>
#include <filesystem>
#include <iterator>
#include <numeric>
#include <optional>
#include <set>
#include <stdexcept>

namespace brimwright::reports {
namespace {

using planning::BatterRole;
using When = planning::Blank::When;
using planning::Topic;

/// Which batch of the run a sheet is for: a number, or any of its size.
struct WhichBatch {
  const planning::Batch& batch;
  std::optional<std::int64_t> number;
  bool is_first;                       // cast-ahead work stands with it
  std::vector<CodedBatch> codes = {};  // of its size, where they are known
};

/// What a sheet says of lines that are poured together.
struct Sharing {
  SheetOf of = SheetOf::whole_batch;
  std::string title = {}, subtitle = {};  // of the base's own sheet
  std::string first = {};                 // there: what comes before it is mixed; may be empty
  std::vector<SheetBlock> to_lines = {};  // there: what of it goes where
  std::string out_of = {};                // of a line: the base that it is poured from
};

/// What the topping's fats are whipped at, where that is colder than the room.
std::optional<Temperature> cold_fats(const planning::Run& run) {
  if (!run.pipe || !run.pipe->temperatures) return std::nullopt;
  const auto& at = run.pipe->temperatures->fats_at;
  const Temperature room = Temperature::in_celsius(20);  // where nothing else is said
  return at && *at < room ? at : std::nullopt;
}

bool stands_overnight(const std::vector<Vessel>& vessels) {
  return std::any_of(vessels.begin(), vessels.end(), [](const Vessel& vessel) {
    return vessel.is_day_before && vessel.kind != Vessel::Kind::melt;
  });
}

/// The sheet under construction, part after part.
class Bench {
 public:
  Bench(const planning::Run& run, const planning::Plan& plan, const WhichBatch& which,
        Sharing sharing = {})
      : run_(run),
        plan_(plan),
        batch_(which.batch),
        which_(which),
        sharing_(std::move(sharing)),
        vessels_(is(SheetOf::line_of_base) ? weigh_out_beside_base(run, plan, which.batch)
                                           : weigh_out(run, plan, which.batch)),
        blanks_(planning::blanks_of(run, plan, which.batch)) {
    if (!is(SheetOf::whole_batch))
      std::erase_if(blanks_, [&](const planning::Blank& blank) {
        return planning::is_of_base(blank) == is(SheetOf::line_of_base);
      });
    sheet_.title = is(SheetOf::base_alone) ? sharing_.title : plan.name;
    sheet_.subtitle = is(SheetOf::base_alone) ? sharing_.subtitle : subtitle();
  }

  Sheet sheet() {
    dangers();
    about_no_batter();
    which_batch();
    first_aid();
    day_before();
    if (!sharing_.first.empty()) order(sharing_.first);
    if (is(SheetOf::line_of_base))
      pour_out_of_base();
    else
      mix_base();
    if (is(SheetOf::base_alone)) {
      to_lines();
      blanks(When::poured);
    } else {
      pour_and_finish();
    }
    if (!is(SheetOf::base_alone)) {
      add(SheetHeading{"WHAT REALLY HAPPENED", "for the next plan"});
      blanks(When::afterwards);
      drawing();
    }
    return std::move(sheet_);
  }

 private:
  template <class Block>
  void add(Block block) {
    sheet_.blocks.push_back(std::move(block));
  }
  bool is(SheetOf of) const { return sharing_.of == of; }
  void blanks(When when, std::size_t part = 0) { add_blanks(blanks_, when, part, sheet_); }
  void order(const std::string& text) { add(SheetWords{text, true}); }
  void words(const std::string& text) { add(SheetWords{text}); }

  /// What is known of it stands there; what is not, is filled in.
  void which_batch() {
    const auto& codes = which_.codes;
    const bool is_one = codes.size() == 1 && (which_.number || batch_.count() == 1);
    for (const CodedBatch& coded : codes)
      add(SheetStep{(is_one ? "Batch number "
                            : "Batch " + std::to_string(coded.number) +
                                  " of this run has the batch number ") +
                    coded.code + (coded.begun_on.empty() ? "" : ", begun on " + coded.begun_on)});
    SheetBlanks unknown;
    if (!is_one) unknown.blanks.push_back({"batch number", "", ""});
    if (!is_one || codes.front().begun_on.empty())
      unknown.blanks.push_back({"begun on (date)", "", ""});
    if (!unknown.blanks.empty()) add(std::move(unknown));
  }

  bool is_whole_run() const { return plan_.pieces.batches == 1; }

  std::string subtitle() const {
    const auto& pieces = plan_.pieces;
    const auto& mould = run_.pour.mould;
    std::string of_run = counted(pieces.sell, "piece", "pieces") + " to sell, make " +
                         std::to_string(pieces.make) + ". " + mould.name + ": " +
                         counted(mould.owned, "mould", "moulds") + " of " +
                         counted(mould.cavities, "cavity", "cavities") + ", " +
                         counted(pieces.fillings, "filling", "fillings") + ".";
    if (is_whole_run()) return of_run;
    return "ONE BATCH: " + counted(batch_.pieces, "piece", "pieces") + ", batch " +
           (which_.number ? std::to_string(*which_.number) : "____") + " of " +
           std::to_string(pieces.batches) +
           (which_.number || batch_.count() == pieces.batches ? "" : " (" + numbers() + ")") +
           ". The run: " + of_run;
  }
  std::string numbers() const {
    std::string text;
    for (const std::int64_t number : batch_.numbers) {
      if (text.size() > 40) return text + " ...";
      text += (text.empty() ? "" : ", ") + std::to_string(number);
    }
    return text;
  }

  /// They stand first whatever they are about; the rest stands with its work.
  void dangers() {
    for (const auto& caution : plan_.cautions)
      if (caution.severity == Severity::danger) add(SheetWarning{caution.severity, caution.text});
  }

  enum class Whose { this_batch, any_batch };
  void warnings(Severity severity, Topic topic, Whose whose) {
    warnings(severity, topic, whose, [](const planning::Caution&) { return true; });
  }
  template <class Test>
  void warnings(Severity severity, Topic topic, Whose whose, Test&& test) {
    for (const auto& caution : plan_.cautions)
      if (caution.severity == severity && caution.topic == topic &&
          caution.is_general == (whose == Whose::any_batch) && is_of_this_size(caution) &&
          test(caution))
        add(SheetWarning{severity, caution.text});
  }
  bool is_of_this_size(const planning::Caution& caution) const {
    return !caution.batch_pieces || *caution.batch_pieces == batch_.pieces;
  }

  void about_no_batter() {
    warnings(Severity::caution, Topic::plan, Whose::this_batch,
             [](const planning::Caution& caution) { return !caution.batter; });
  }
  /// Once, where the work on it begins.
  void about(BatterRole batter) {
    if (!told_.insert(batter).second) return;
    warnings(Severity::caution, Topic::plan, Whose::this_batch,
             [&](const planning::Caution& caution) { return caution.batter == batter; });
  }
  void cautions_of(Topic topic) {
    warnings(Severity::caution, topic, Whose::this_batch);
    warnings(Severity::caution, topic, Whose::any_batch);
    warnings(Severity::note, topic, Whose::this_batch);
  }
  /// What is read with wet hands: each in large type, with its box to tick.
  void orders_of(Topic topic) {
    for (const auto& caution : plan_.cautions)
      if (caution.topic == topic && caution.is_general) order(caution.text);
  }

  void first_aid() {
    SheetFirstAid box{"FIRST AID", {}, {"Emergency", "Poison centre"}, ""};
    for (const auto& line : planning::first_aid()) box.lines.push_back({line.what, line.to_do});
    box.source = planning::first_aid_source();
    add(std::move(box));
  }

  /// Shared by the batters, or used colder than the room: it stands overnight.
  bool is_lye_early() const { return stands_overnight(vessels_); }

  /// Once, before the first lye on the sheet.
  void lye_cautions() {
    if (lye_is_cautioned_) return;
    lye_is_cautioned_ = true;
    // The notes about its heat say again what stands with each lye.
    warnings(Severity::caution, Topic::heat, Whose::this_batch);
    cautions_of(Topic::lye);
    warnings(Severity::caution, Topic::heat, Whose::any_batch);
    cautions_of(Topic::aluminium);
  }

  void day_before() {
    if (plan_.decorations.empty() && !is_lye_early()) return;
    add(SheetHeading{"THE DAY BEFORE", ""});
    casts();
    if (is_lye_early()) lye_cautions();
    for (const Vessel& vessel : vessels_) {
      if (!vessel.is_day_before || vessel.kind == Vessel::Kind::melt) continue;
      if (!vessel.batter || *vessel.batter == BatterRole::base) about(BatterRole::base);
      if (!vessel.batter || *vessel.batter == BatterRole::topping) about(BatterRole::topping);
      add_vessel(vessel, run_, sheet_);
    }
    orders_of(Topic::chilled_lye);
    chill();
  }

  void casts() {
    if (plan_.decorations.empty()) return;
    if (!which_.is_first)
      return words("Decorations are made ready once for all batches: see batch 1.");
    orders_of(Topic::melting);
    auto melt = vessels_.begin();
    for (const auto& decoration : plan_.decorations) {
      if (decoration.is_bought) {
        order("Count out " + std::to_string(decoration.casts) + " × " + decoration.name +
              ", bought, spares included.");
        continue;
      }
      while (melt->kind != Vessel::Kind::melt) ++melt;
      add_vessel(*melt++, run_, sheet_);
      if (decoration.tray_fills > 1) add(SheetCounts{"Tray fills", decoration.tray_fills});
      blanks(When::day_before, static_cast<std::size_t>(&decoration - plan_.decorations.data()));
    }
  }

  void vessel(const std::string& key) {
    if (const Vessel* its = find_vessel(vessels_, key)) add_vessel(*its, run_, sheet_);
  }

  /// Fats that are whipped colder than the room stand cold overnight.
  void chill() {
    if (const auto at = cold_fats(run_))
      order("Melt the topping's fats, and let them set until they are at " + in_both_scales(*at) +
            ".");
  }

  void mix_base() {
    const auto base = base_of(run_, batch_);
    add(SheetHeading{"POUR  " + base.formula.name,
                     "make " + on_display(base.tally.weighing.batter, base.step)});
    about(BatterRole::base);
    vessel(base_key() + ".fats");
    lye_of(base_key());
    batter_cautions();
    vessel(base_key() + ".batter");
    add_superfat(base, sheet_);
    at_pour(base);
    blanks(When::base_mixed);
  }

  void pour_and_finish() {
    set_embeds_first();
    if (is(SheetOf::line_of_base))
      jugs();
    else
      vessel(base_key() + ".layers");
    to_line();
    blanks(When::poured);
    pipe();
    decoration();
    cut();
    dust();
    before_sale();
  }

  void pour_out_of_base() {
    add(SheetHeading{"POUR  " + run_.pour.formula.name, sharing_.out_of});
    words(
        "The base is mixed for several lines, on a sheet of its own: nothing of it is weighed "
        "here.");
  }

  /// They are filled where the base is mixed.
  void jugs() {
    if (batch_.pour.layers.empty()) return;
    SheetGrid grid{{{"Layers, lowest first", "in the jug", "each", "from", "to"}}, 0};
    for (const auto& layer : batch_.pour.layers)
      grid.rows.push_back({layer.name, on_display(layer.mass, layer.step),
                           on_display(layer.mass_each, layer.step), in_mm(layer.from),
                           in_mm(layer.to)});
    add(std::move(grid));
  }

  void to_lines() {
    for (SheetBlock& block : sharing_.to_lines) sheet_.blocks.push_back(std::move(block));
  }

  void to_line() {
    const auto base = base_of(run_, batch_);
    const auto& pour = batch_.pour;
    order("Pour to " + in_mm(run_.pour.mould.curve.height() - pour.poured_to) +
          " below the brim, " + on_display(pour.batter.mass_each, base.step) + " each.");
    words("The line is " + depth_text(pour.poured_to) + " above the lowest point. " +
          held_to_line(run_, plan_.pour) + "; 1 mm more or less is " +
          fixed_ml(pour.surface * millimetre) + ".");
  }

  /// What stands ready is weighed out; what is not is made now.
  void lye_of(const std::string& batter_key) {
    vessel(batter_key + ".share");
    const Vessel* lye = find_vessel(vessels_, batter_key + ".lye");
    if (lye == nullptr || lye->is_day_before) return;
    lye_cautions();
    add_vessel(*lye, run_, sheet_);
  }

  /// Once, before the first additives: fragrance and powders.
  void batter_cautions() {
    cautions_of(Topic::allergens);
    if (plan_.dust.empty()) cautions_of(Topic::dust);
  }

  void at_pour(const BatterOnSheet& batter) {
    if (batter.tally.heat.at_pour)
      words("Lye solution and fats together come to " + in_both_scales(*batter.tally.heat.at_pour) +
            "; then the batter warms by itself.");
  }

  void pipe() {
    for (std::size_t i = 0; i < batch_.whippings.size(); ++i) pipe(i);
  }

  void pipe(std::size_t i) {
    const auto& whipping = batch_.whippings[i];
    const std::string key = whipping_key(i);
    const auto topping = topping_of(run_, whipping);
    const auto& pipe = whipping.pipe;
    const std::string which =
        run_.batch.whippings == 1 ? "" : ", whipped for " + casts_on_sheet(whipping.casts, run_);
    add(SheetHeading{"PIPE  " + topping.formula.name + which,
                     "make " + on_display(topping.tally.weighing.batter, topping.step)});
    about(BatterRole::topping);
    if (whipping.count > 1) add(SheetCounts{"Weigh out and whip this many times", whipping.count});
    vessel(key + ".fats");
    lye_of(key);
    orders_of(Topic::whipping);
    if (pipe.lye)
      add(SheetCounts{"Lye solution by the spoonful, " + std::to_string(pipe.lye->each.count()) +
                          " s each, " + in_minutes(pipe.lye->altogether) + " in all",
                      pipe.lye->spoonfuls});
    vessel(key + ".batter");
    add_superfat(topping, sheet_);
    blanks(When::topping_mixed, i);
    if (run_.pipe->temperatures && run_.pipe->temperatures->batter_below)
      order("Keep the topping below " + in_both_scales(*run_.pipe->temperatures->batter_below) +
            ".");
    add_weigh_cup(pipe, run_, sheet_);
    blanks(When::whipped, i);
    add_piping(pipe, run_, sheet_);
    blanks(When::piped, i);
  }

  /// Those that the batter is poured round are set first.
  bool is_set_first(std::size_t i) const {
    const auto* buried = std::get_if<planning::Buried>(&run_.decorations[i].where);
    return buried && !buried->pressed_in;
  }

  void set_embeds_first() {
    for (std::size_t i = 0; i < plan_.decorations.size(); ++i)
      if (is_set_first(i))
        place(plan_.decorations[i], "; set before the pour, which goes round it");
  }

  void decoration() {
    bool is_headed = false;
    for (std::size_t i = 0; i < plan_.decorations.size(); ++i) {
      if (is_set_first(i)) continue;
      if (!is_headed) add(SheetHeading{"DECORATE", ""});
      is_headed = true;
      const auto& fit = plan_.decorations[i].fit;
      place(plan_.decorations[i],
            fit.stands_proud     ? "; press it in until it sticks out " + in_mm(*fit.stands_proud)
            : fit.embeds.empty() ? ""
                                 : "; press it in after the pour");
    }
    if (const auto hours = planning::hours_in_mould(run_))
      words("Unmould after " + in_hours(*hours) + ".");
  }

  std::string each_on_scale(Mass each) const {
    return on_display(each, planning::on_fine_scale(run_.scales, each).step);
  }

  void place(const planning::DecorationTally& decoration, const std::string& how) {
    const std::string each =
        decoration.mass_each > Mass{} ? ", " + each_on_scale(decoration.mass_each) + " each" : "";
    order(decoration.name + ": " + decoration.count_text + each + how + ".");
    if (!decoration.fit.embeds.empty()) add_places(decoration.fit, sheet_);
  }

  void cut() {
    if (!plan_.cut) return;
    const auto& cut = *plan_.cut;
    const auto bars = static_cast<std::int64_t>(cut.bars.size());
    add(SheetHeading{"CUT  " + counted(bars, "bar", "bars") + " from each loaf",
                     counted(batch_.casts, "loaf", "loaves")});
    const auto& asked = *run_.cut;
    if (asked.top_planing > Length{}) order("Plane " + in_mm(asked.top_planing) + " off the top.");
    if (asked.end_trim > Length{}) order("Trim " + in_mm(asked.end_trim) + " off each end.");
    if (asked.side_trim > Length{}) order("Trim " + in_mm(asked.side_trim) + " off each side.");
    const auto& bar = cut.bars.front();
    order(std::to_string(cut.rows) + " x " + std::to_string(cut.columns) + " bars, each " +
          in_mm(bar.along) + " x " + in_mm(bar.across) + ", " + in_mm(bar.height) + " high.");
    words(bar_weights(plan_.piece));
    if (batch_.casts > 1) add(SheetCounts{"Loaves", batch_.casts});
  }

  void dust() {
    if (plan_.dust.empty()) return;
    add(SheetHeading{"DUST", ""});
    cautions_of(Topic::dust);
    vessel("dust");
  }

  void before_sale() {
    add(SheetHeading{"BEFORE SALE", ""});
    for (const Topic topic : {Topic::look_alike, Topic::small_parts, Topic::test})
      cautions_of(topic);
    if (plan_.piece.cured)
      words("A piece weighs " + fixed(plan_.piece.fresh / gram, 1) + " g fresh and about " +
            fixed(*plan_.piece.cured / gram, 1) + " g cured.");
    // Read before the day, on a screen: hands that are at work have no use for them.
    if (const std::int64_t notes = notes_on_figures(); notes > 0)
      words("The plan has " + counted(notes, "note", "notes") +
            " more, on where figures come from and on what goes in.");
  }

  std::int64_t notes_on_figures() const {
    return std::count_if(plan_.cautions.begin(), plan_.cautions.end(), [](const auto& caution) {
      return caution.severity == Severity::note && caution.topic == Topic::plan;
    });
  }

  void drawing() {
    MouldPicture picture;
    picture.pour_line = plan_.pour.line;
    for (const auto& layer : plan_.pour.layers)
      picture.layers.push_back({layer.name, layer.from, layer.to});
    add(SheetDrawing{mould_picture(run_.pour.mould, picture)});
  }

  const planning::Run& run_;
  const planning::Plan& plan_;
  const planning::Batch& batch_;
  WhichBatch which_;
  Sharing sharing_;
  std::vector<Vessel> vessels_;
  std::vector<planning::Blank> blanks_;
  Sheet sheet_;
  std::set<BatterRole> told_;
  bool lye_is_cautioned_ = false;
};

bool has_number(const planning::Batch& batch, std::int64_t number) {
  return std::find(batch.numbers.begin(), batch.numbers.end(), number) != batch.numbers.end();
}

/// Those of the numbers that a sheet is for.
std::vector<CodedBatch> codes_of(const planning::Batch& batch, std::optional<std::int64_t> number,
                                 const std::vector<CodedBatch>& codes) {
  std::vector<CodedBatch> its;
  for (const CodedBatch& coded : codes)
    if (number ? coded.number == *number : has_number(batch, coded.number)) its.push_back(coded);
  return its;
}

std::string foot_of(const planning::Run& run, const std::string& printed_at) {
  const std::string file = on_one_line(std::filesystem::path(run.file).filename().string());
  return (printed_at.empty() ? "From " : "Printed " + printed_at + " from ") + file +
         " by Brimwright " BRIMWRIGHT_VERSION;
}

std::string numbers_of(const planning::Batch& batch, std::int64_t batches) {
  if (batches == 1) return "";
  std::string text = batch.count() == 1 ? "batch " : "batches ";
  for (std::size_t i = 0; i < batch.numbers.size(); ++i)
    text += (i == 0 ? "" : ", ") + std::to_string(batch.numbers[i]);
  return text + " of " + std::to_string(batches);
}

/// What a line's own sheet has for before the pour.
bool has_work_ahead(const planning::Run& run) { return run.pipe || !run.decorations.empty(); }

/// The base's own sheet for one of its batches.
Sharing base_alone(const PouredTogether& of, std::size_t b) {
  const auto& together = *of.planned;
  const auto& base = together.plan.batches[b];
  const Mass step = together.run.scales.large.step;
  Sharing sharing{.of = SheetOf::base_alone,
                  .title = together.plan.name + ", poured together (" + of.word + ")"};
  SheetGrid grid{{{"Line", "makes", "takes", "share"}}, 0};
  for (const auto& part : together.batches[b].parts) {
    const planning::Run& run = *of.lines[part.line].run;
    const auto& own = together.lines[part.line].batches[part.batch];
    sharing.subtitle += (sharing.subtitle.empty() ? "For " : ", ") + run.name + " (" +
                        counted(own.pieces, "piece") + ")";
    if (has_work_ahead(run))
      sharing.first =
          "First the lines' own sheets: what they cast, chill or set into the moulds before the "
          "pour.";
    grid.rows.push_back({run.name, casts_on_sheet(own.casts, run), on_display(part.takes, step),
                         fixed_percent(Share::of_one(part.of_batch))});
  }
  const std::string numbers = numbers_of(base, together.plan.pieces.batches);
  sharing.subtitle += numbers.empty() ? "." : "; " + numbers + ".";
  sharing.to_lines.emplace_back(SheetHeading{"TO EACH LINE", ""});
  sharing.to_lines.emplace_back(std::move(grid));
  for (const Vessel& vessel : weigh_out(of, b))
    if (vessel.kind == Vessel::Kind::layers) {
      Sheet jugs;
      add_vessel(vessel, together.run, jugs);
      std::move(jugs.blocks.begin(), jugs.blocks.end(), std::back_inserter(sharing.to_lines));
    }
  return sharing;
}

Sharing line_of_base(const PouredTogether& of, std::size_t b) {
  const auto& plan = of.planned->plan;
  const std::string numbers = numbers_of(plan.batches[b], plan.pieces.batches);
  return {.of = SheetOf::line_of_base,
          .out_of = "out of the base (" + of.word + ")" + (numbers.empty() ? "" : ", " + numbers)};
}

std::vector<std::size_t> in_order_of_making(const planning::Plan& plan) {
  std::vector<std::size_t> order(plan.batches.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    return plan.batches[a].numbers.front() < plan.batches[b].numbers.front();
  });
  return order;
}

Sheet with_foot(Sheet sheet, const planning::Run& run, const std::string& printed_at) {
  sheet.foot = foot_of(run, printed_at);
  sheet.printed_at = printed_at;
  return sheet;
}

}  // namespace

Sheet bench_sheet(const planning::Run& run, const planning::Plan& plan,
                  std::optional<std::int64_t> number, const std::string& printed_at,
                  const std::vector<CodedBatch>& codes) {
  std::optional<Sheet> all;
  for (const auto& batch : plan.batches) {
    if (number && !has_number(batch, *number)) continue;
    const bool is_first = number ? *number == 1 : has_number(batch, 1);
    Sheet one = Bench(run, plan, {batch, number, is_first, codes_of(batch, number, codes)}).sheet();
    if (!all) {
      all = std::move(one);
      continue;
    }
    all->blocks.emplace_back(SheetPage{one.title, one.subtitle});
    std::move(one.blocks.begin(), one.blocks.end(), std::back_inserter(all->blocks));
  }
  if (!all) throw std::logic_error("no batch has that number");
  return with_foot(std::move(*all), run, printed_at);
}

std::vector<Sheet> bench_sheets(const PouredTogether& of, const std::string& printed_at,
                                const PouredCodes& codes) {
  const auto& together = *of.planned;
  std::vector<Sheet> sheets;
  for (const std::size_t b : in_order_of_making(together.plan)) {
    const auto& base = together.plan.batches[b];
    Bench bench(together.run, together.plan, {base, {}, false, codes_of(base, {}, codes.base)},
                base_alone(of, b));
    sheets.push_back(with_foot(bench.sheet(), together.run, printed_at));
    for (const auto& part : together.batches[b].parts) {
      const planning::Run& run = *of.lines[part.line].run;
      const auto& plan = together.lines[part.line];
      const auto& own = plan.batches[part.batch];
      const auto known = part.line < codes.lines.size() ? codes_of(own, {}, codes.lines[part.line])
                                                        : std::vector<CodedBatch>();
      Bench line(run, plan, {own, {}, has_number(own, 1), known}, line_of_base(of, b));
      sheets.push_back(with_foot(line.sheet(), run, printed_at));
    }
  }
  return sheets;
}

bool is_begun_the_day_before(const planning::Run& run, const planning::Plan& plan) {
  return cold_fats(run) ||
         std::any_of(plan.batches.begin(), plan.batches.end(), [&](const planning::Batch& batch) {
           return stands_overnight(weigh_out(run, plan, batch));
         });
}

Sheet sheet_of_all(const std::string& what_for, std::vector<Sheet> sheets) {
  Sheet all = std::move(sheets.front());
  for (auto one = sheets.begin() + 1; one != sheets.end(); ++one) {
    all.blocks.emplace_back(SheetPage{one->title, one->subtitle});
    std::move(one->blocks.begin(), one->blocks.end(), std::back_inserter(all.blocks));
  }
  all.foot = what_for + (all.foot.empty() ? "" : ". ") + all.foot;
  return all;
}

}  // namespace brimwright::reports
