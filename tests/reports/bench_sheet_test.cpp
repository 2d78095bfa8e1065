#include "reports/bench_sheet.h"

#include "planning/plan.h"
#include "reports/plan_report.h"
#include "reports/sheet_bytes.h"
#include "reports/sheet_html.h"
#include "reports/sheet_pdf.h"
#include "reports/weigh_out.h"
#include "sample_run.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <cmath>
#include <optional>
#include <string>
#include <variant>
#include <vector>

using namespace brimwright;
using namespace brimwright::reports;

namespace {

Sheet sheet_of(const planning::Run& run) { return bench_sheet(run, planning::plan(run)); }

planning::Run decorated_run() {
  planning::Run run = planning::paper_run();
  run.pipe = planning::paper_pipe();
  run.decorations = {planning::paper_brick()};
  run.dust = {{.name = "gold mica", .per_piece = 10 * milligram}};
  return run;
}

template <class Block>
std::vector<Block> all(const Sheet& sheet) {
  std::vector<Block> found;
  for (const auto& block : sheet.blocks)
    if (const auto* its = std::get_if<Block>(&block)) found.push_back(*its);
  return found;
}

std::vector<std::string> headings(const Sheet& sheet) {
  std::vector<std::string> names;
  for (const auto& heading : all<SheetHeading>(sheet)) names.push_back(heading.text);
  return names;
}

std::size_t times_weighed(const Sheet& sheet, const std::string& name) {
  std::size_t times = 0;
  for (const auto& list : all<WeighList>(sheet))
    for (const auto& row : list.rows) times += row.name.rfind(name, 0) == 0;
  return times;
}

/// Where the first block stands of which that is true.
template <class Test>
std::size_t first(const Sheet& sheet, Test&& test) {
  for (std::size_t i = 0; i < sheet.blocks.size(); ++i)
    if (test(sheet.blocks[i])) return i;
  return sheet.blocks.size();
}

template <class Block>
bool is_a(const SheetBlock& block) {
  return std::holds_alternative<Block>(block);
}

/// What a heading, a step, a vessel, a sentence or a warning says; nothing of the other blocks.
std::string text_of(const SheetBlock& block) {
  if (const auto* heading = std::get_if<SheetHeading>(&block)) return heading->text;
  if (const auto* step = std::get_if<SheetStep>(&block)) return step->text;
  if (const auto* words = std::get_if<SheetWords>(&block)) return words->text;
  if (const auto* list = std::get_if<WeighList>(&block)) return list->title;
  const auto* warning = std::get_if<SheetWarning>(&block);
  return warning ? warning->text : "";
}

std::size_t first_said(const Sheet& sheet, const std::string& part) {
  return first(sheet, [&](const SheetBlock& block) {
    return text_of(block).find(part) != std::string::npos;
  });
}

bool is_lye(const SheetBlock& block) {
  const auto* list = std::get_if<WeighList>(&block);
  return list && !list->rows.empty() && list->rows.back().name.rfind("NaOH", 0) == 0;
}

std::size_t times_in(const std::string& text, const std::string& part) {
  std::size_t times = 0;
  for (auto at = text.find(part); at != std::string::npos; at = text.find(part, at + 1)) ++times;
  return times;
}

chemistry::HeatQuestion temperatures(double lye_used_at) {
  chemistry::HeatQuestion question;
  question.room_at = Temperature::in_celsius(21);
  question.water_at = Temperature::in_celsius(10);
  question.lye_used_at = Temperature::in_celsius(lye_used_at);
  return question;
}

}  // namespace

TEST_CASE(
    "The sheet follows the hands: the day before, pour, pipe, decorate, dust, then what came") {
  // The order of the work, not of the plan.
  CHECK(headings(sheet_of(decorated_run())) ==
        std::vector<std::string>{"THE DAY BEFORE", "POUR  Paper base", "PIPE  Paper base",
                                 "DECORATE", "DUST", "BEFORE SALE", "WHAT REALLY HAPPENED"});
}

TEST_CASE("A plain pour has no day before and nothing to pipe, decorate or dust") {
  CHECK(headings(sheet_of(planning::paper_run())) ==
        std::vector<std::string>{"POUR  Paper base", "BEFORE SALE", "WHAT REALLY HAPPENED"});
}

TEST_CASE("A vessel's running totals add up to the last one") {
  const auto run = decorated_run();
  for (const auto& list : all<WeighList>(sheet_of(run))) {
    double sum = 0;
    for (const auto& row : list.rows) {
      sum += std::stod(row.weight);
      // On the scale that the vessel stands on, of 1 g; where lye is in it, down.
      if (!row.running.empty()) CHECK(std::stod(row.running) == Approx(sum).margin(1));
    }
  }
}

TEST_CASE("A running total is what the vessel's scale can show, and of lye never above it") {
  planning::Run run = decorated_run();
  run.scales = {.large = {5 * gram, 5 * kilogram}, .fine = {0.1 * gram, 500 * gram}};
  std::size_t totals = 0;
  for (const auto& list : all<WeighList>(sheet_of(run))) {
    const bool is_of_lye = list.rows.back().name.rfind("NaOH", 0) == 0;
    double sum = 0;
    for (const auto& row : list.rows) {
      sum += std::stod(row.weight);
      if (row.running.empty()) continue;
      ++totals;
      CHECK(std::fmod(std::stod(row.running), 5) == 0);
      if (is_of_lye) CHECK(std::stod(row.running) <= sum);
    }
  }
  CHECK(totals == 6);
}

TEST_CASE("The running total leaves out the oil that was set aside for the colours") {
  planning::Run run = planning::paper_run();
  auto plan = planning::plan(run);
  auto& fat = plan.batches.front().pour.batter.weighing.ingredients.front();
  REQUIRE(fat.role == planning::Role::fat);
  fat.set_aside = 27.7 * gram;
  const auto vessels = weigh_out(run, plan, plan.batches.front());
  const Vessel* fats = find_vessel(vessels, "pour.fats");
  REQUIRE(fats);
  const WeighOutRow& row = fats->rows.front();
  CHECK(*row.running / gram == Approx(row.mass / gram - 27.7));
  CHECK(fats->total == *row.running);
  CHECK(row.note.find("set 27.7 g of it aside") != std::string::npos);
}

TEST_CASE("Lye used colder than the room is made the day before, and stands nowhere twice") {
  planning::Run run = planning::paper_run();
  run.pour.temperatures = temperatures(12);
  const auto cold = sheet_of(run);
  CHECK(headings(cold).front() == "THE DAY BEFORE");
  CHECK(times_weighed(cold, "NaOH") == 1);
  CHECK(times_weighed(cold, "Lye solution made yesterday") == 1);

  run.pour.temperatures = temperatures(38);
  const auto warm = sheet_of(run);
  CHECK(headings(warm).front() == "POUR  Paper base");
  CHECK(times_weighed(warm, "NaOH") == 1);
  CHECK(times_weighed(warm, "Lye solution made yesterday") == 0);
}

TEST_CASE("With one pot of lye for both, only the pot's alkali is weighed") {
  planning::Run run = decorated_run();
  run.lye_pot = planning::PotQuestion{{"paper.run.json", "/lye_pot"}, {}};
  const auto sheet = sheet_of(run);
  CHECK(times_weighed(sheet, "NaOH") == 1);
  CHECK(times_weighed(sheet, "Lye solution from the shared pot") >= 2);
}

TEST_CASE("The warning about lye stands before the first alkali") {
  for (const auto& run : {planning::paper_run(), decorated_run()}) {
    const auto sheet = sheet_of(run);
    const auto warned = first(sheet, [](const SheetBlock& block) {
      const auto* warning = std::get_if<SheetWarning>(&block);
      return warning && warning->text.find("Lye burns skin and eyes") != std::string::npos;
    });
    const auto weighed = first(sheet, [](const SheetBlock& block) {
      const auto* list = std::get_if<WeighList>(&block);
      return list && !list->rows.empty() && list->rows.back().name.rfind("NaOH", 0) == 0;
    });
    REQUIRE(weighed < sheet.blocks.size());
    CHECK(warned < weighed);
  }
}

TEST_CASE("Water is weighed before the alkali that goes into it, in a lye and in a shared pot") {
  // Water on dry alkali boils up: common practice, no source, and the sheet's own caution.
  planning::Run run = decorated_run();
  for (const bool is_shared : {false, true}) {
    if (is_shared) run.lye_pot = planning::PotQuestion{{"paper.run.json", "/lye_pot"}, {}};
    std::size_t lyes = 0;
    for (const auto& list : all<WeighList>(sheet_of(run))) {
      bool has_water = false;
      for (const auto& row : list.rows) {
        has_water = has_water || row.name.rfind("Water", 0) == 0;
        if (row.name.rfind("NaOH", 0) != 0) continue;
        CHECK(has_water);
        ++lyes;
      }
    }
    CHECK(lyes == (is_shared ? 1 : 2));
  }
}

TEST_CASE("First aid stands before the first lye, after what is about this very batch") {
  planning::Run run = decorated_run();
  run.pour.losses = {};  // no batter for pot and jugs: a caution of its own
  const auto sheet = sheet_of(run);
  const auto aid = first(sheet, is_a<SheetFirstAid>);
  REQUIRE(aid < sheet.blocks.size());
  CHECK(all<SheetFirstAid>(sheet).size() == 1);
  CHECK(first_said(sheet, "No losses are allowed for in pot") < aid);
  CHECK(aid < first_said(sheet, "Lye burns skin and eyes"));
  CHECK(aid < first(sheet, is_a<WeighList>));
  CHECK(times_in(sheet_html(sheet), "Rinse the mouth. No vomiting.") == 1);
}

TEST_CASE("Hot lye was sent into the fridge with its lid on") {
  planning::Run run = planning::paper_run();
  run.pour.temperatures = temperatures(8);
  run.pour.temperatures->cooled_in = chemistry::Surroundings::fridge;
  const auto sheet = sheet_of(run);
  const auto loosely = first_said(sheet, "Cover hot lye loosely");
  CHECK(first(sheet, is_lye) < loosely);
  CHECK(loosely < first_said(sheet, "Then close it, mark it CAUSTIC with the date"));
  CHECK(first_said(sheet, "Never in a fridge with food") < sheet.blocks.size());
  CHECK(first_said(sheet, "Lid on") == sheet.blocks.size());
  CHECK(first_said(sheet, "in the fridge") == sheet.blocks.size());
  // A warm lye does not wait.
  run.pour.temperatures = temperatures(38);
  CHECK(first_said(sheet_of(run), "Cover hot lye loosely") == sheet_of(run).blocks.size());
}

TEST_CASE("Whipping and melting are warned of in large type where they are done, and only there") {
  const auto sheet = sheet_of(decorated_run());
  const auto pipe = first_said(sheet, "PIPE  "), cup = first_said(sheet, "fill the weigh-cup");
  for (const std::string says : {"The whisk throws specks at face height",
                                 "let nobody taste it. Never use its tools for food again"}) {
    CAPTURE(says);
    const auto at = first_said(sheet, says);
    CHECK(pipe < at);
    CHECK(at < cup);
    REQUIRE(std::holds_alternative<SheetWords>(sheet.blocks.at(at)));
    CHECK(std::get<SheetWords>(sheet.blocks[at]).is_order);
  }
  CHECK(first_said(sheet, "melt-and-pour scalds. Never put it into lye") <
        first_said(sheet, "Cast Brick"));
  const auto plain = sheet_of(planning::paper_run());
  for (const std::string says : {"face height", "let nobody taste", "elt-and-pour", "iping tips"})
    CHECK(first_said(plain, says) == plain.blocks.size());
}

TEST_CASE("Every lye on the sheet is told: lye into water") {
  planning::Run run = decorated_run();
  CHECK(times_in(sheet_html(sheet_of(run)),
                 "Alkali into water, never water into alkali: a little") == 2);
  run.lye_pot = planning::PotQuestion{{"paper.run.json", "/lye_pot"}, {}};
  CHECK(times_in(sheet_html(sheet_of(run)),
                 "Alkali into water, never water into alkali: a little") == 1);
}

TEST_CASE("The terminal names water before the alkali, and first aid last of all") {
  planning::Run run = decorated_run();
  for (const bool is_shared : {false, true}) {
    if (is_shared) run.lye_pot = planning::PotQuestion{{"paper.run.json", "/lye_pot"}, {}};
    const auto text = plan_text(run, planning::plan(run));
    for (const std::string part : {"POUR  ", "PIPE  ", "ONE POT OF LYE"}) {
      const auto at = text.find(part);
      if (at == std::string::npos) continue;
      CHECK(text.find("\n  Water", at) < text.find("\n  NaOH", at));
    }
    CHECK((text.find("ONE POT OF LYE") != std::string::npos) == is_shared);
    CHECK(text.find("\nAT THE BENCH\n") < text.find("\nFIRST AID"));
    CHECK(times_in(text, "Rinse the mouth. No vomiting.") == 1);
  }
}

TEST_CASE("A caution about one batter stands where its work begins, once") {
  planning::Run run = decorated_run();
  auto plan = planning::plan(run);
  const auto caution = [](const std::string& text, std::optional<planning::BatterRole> batter) {
    planning::Caution its{{Severity::caution, text}, planning::Topic::plan};
    its.batter = batter;
    return its;
  };
  using planning::BatterRole;
  plan.cautions.push_back(caution("Of the whole piece.", {}));
  plan.cautions.push_back(caution("Of the base.", BatterRole::base));
  plan.cautions.push_back(caution("Of the topping.", BatterRole::topping));
  plan.cautions.push_back(caution("Of batches that are not made.", BatterRole::base));
  plan.cautions.back().batch_pieces = 1;
  const auto sheet = bench_sheet(run, plan);
  const auto pour = first_said(sheet, "POUR  "), pipe = first_said(sheet, "PIPE  ");
  CHECK(first_said(sheet, "Of the whole piece.") < first(sheet, is_a<SheetFirstAid>));
  CHECK(pour < first_said(sheet, "Of the base."));
  CHECK(first_said(sheet, "Of the base.") < first_said(sheet, "Fats for the base"));
  CHECK(pipe < first_said(sheet, "Of the topping."));
  CHECK(first_said(sheet, "Of the topping.") < first_said(sheet, "Fats for the topping"));
  CHECK(times_in(sheet_html(sheet), "Of the base.") == 1);
  CHECK(first_said(sheet, "Of batches that are not made.") == sheet.blocks.size());
}

TEST_CASE("A caution about lye that is made the day before stands there") {
  planning::Run run = decorated_run();
  run.pipe->temperatures = temperatures(8);
  auto plan = planning::plan(run);
  plan.cautions.push_back({{Severity::caution, "Of the topping."}, planning::Topic::plan});
  plan.cautions.back().batter = planning::BatterRole::topping;
  const auto sheet = bench_sheet(run, plan);
  CHECK(first_said(sheet, "Of the topping.") < first(sheet, is_lye));
  CHECK(first_said(sheet, "Of the topping.") < first_said(sheet, "POUR  "));
}

TEST_CASE("Each page's foot tells when, from what file and by what it was printed") {
  planning::Run run = decorated_run();
  run.file = "folder of \"mine\"/spring <style>.run.json";
  const auto sheet = bench_sheet(run, planning::plan(run), {}, "2026-05-30 19:46");
  CHECK(sheet.foot.rfind("Printed 2026-05-30 19:46 from spring <style>.run.json by Brimwright ",
                         0) == 0);
  const auto html = sheet_html(sheet);
  CHECK(times_in(html, "<style>.run") == 0);
  CHECK(times_in(html, "@bottom-left") == 1);
  CHECK(sheet_of(run).foot.rfind("From ", 0) == 0);
}

TEST_CASE(
    "A lye stays whole and a layer with its colours; what is asked of the hands is on paper") {
  const auto run = decorated_run();
  std::size_t lyes = 0;
  for (const auto& list : all<WeighList>(sheet_of(run))) {
    const bool is_of_lye = list.title.rfind("Lye solution", 0) == 0;
    lyes += is_of_lye;
    CHECK(list.stays_whole == is_of_lye);
    // What must be read before the alkali goes in stands before it.
    if (is_of_lye) CHECK(list.before.front().text.find("never water into alkali") < 200);
  }
  CHECK(lyes == 2);
  std::vector<std::string> blanks;
  for (const auto& block : all<SheetBlanks>(sheet_of(run)))
    for (const auto& blank : block.blanks) blanks.push_back(blank.what);
  for (const std::string what :
       {"batch number", "room at", "lye solution at", "fats at", "base: trace after",
        "topping: trace after", "tested by (how)", "tested: what came of it"}) {
    CAPTURE(what);
    CHECK(std::count(blanks.begin(), blanks.end(), what) >= 1);
  }
}

TEST_CASE("A danger is the first thing on the sheet") {
  const auto run = decorated_run();
  auto plan = planning::plan(run);
  plan.cautions.push_back({{Severity::danger, "The bowl runs over."}, planning::Topic::heat});
  const auto sheet = bench_sheet(run, plan);
  const auto* warning = std::get_if<SheetWarning>(&sheet.blocks.front());
  REQUIRE(warning);
  CHECK(warning->severity == Severity::danger);
}

TEST_CASE("The pour line is told as at the bench: from the brim down, and in grams each") {
  // By hand: 100 x 50 mm, 2 mm below a brim of 20 mm: 90 ml of 1 g/ml.
  const auto html = sheet_html(sheet_of(planning::paper_run()));
  CHECK(html.find("Pour to 2 mm below the brim, 90 g each.") != std::string::npos);
}

TEST_CASE("HTML takes no script, no file and no markup out of a name") {
  planning::Run run = decorated_run();
  run.name = "<script>alert(1)</script> & \"co\"";
  run.decorations.front().name = "<img src=x onerror=y>";
  run.pour.mould.name = "Tom & <b>Co</b>";
  const auto html = sheet_html(sheet_of(run), Paper::Letter);
  CHECK(times_in(html, "<script") == 0);
  CHECK(times_in(html, "<img") == 0);
  CHECK(times_in(html, "<b>Co") == 0);
  CHECK(times_in(html, "&lt;script&gt;alert(1)") >= 2);  // title and heading
  CHECK(times_in(html, "<?xml") == 0);
  CHECK(times_in(html, "size: letter") == 1);
  // The only addresses are the names of SVG's own vocabulary.
  CHECK(times_in(html, "http") == times_in(html, "xmlns=\"http://www.w3.org/2000/svg\""));
}

TEST_CASE("A sheet that went to the PDF's helper and back is the same sheet") {
  const auto sheet = sheet_of(decorated_run());
  const auto back =
      sandbox::from_bytes<PrintedSheet>(sandbox::as_bytes(PrintedSheet{sheet, Paper::Letter}));
  CHECK(back.paper == Paper::Letter);
  CHECK(back.sheet.blocks.size() == sheet.blocks.size());
  CHECK(sheet_html(back.sheet) == sheet_html(sheet));  // every block and the drawing's every line
}

TEST_CASE("The same plan gives the same PDF, byte for byte, and any paper another") {
  const auto sheet = sheet_of(decorated_run());
  const auto once = sheet_pdf(sheet, Paper::A4);
  CHECK(once.rfind("%PDF-1.", 0) == 0);
  CHECK(once == sheet_pdf(sheet, Paper::A4));
  CHECK(once != sheet_pdf(sheet, Paper::Letter));
}

TEST_CASE("Any name, however long or broken, makes a PDF") {
  rc::prop("", [](const std::string& name) {
    Sheet sheet{.title = name, .subtitle = name, .blocks = {}, .foot = name};
    sheet.blocks = {SheetHeading{name, name},
                    SheetStep{name},
                    SheetWords{name, true},
                    SheetWarning{Severity::danger, name},
                    SheetFirstAid{name, {{name, name}, {"Eyes", name}}, {name, "b"}, name},
                    WeighList{.rows = {{name, name, "12 g", "0.42 oz", "12 g"}},
                              .title = name,
                              .before = {{name, true}},
                              .after = {{name}},
                              .stays_whole = true,
                              .tare_unit = "g"},
                    SheetCounts{name, 3},
                    SheetGrid{{{name, "b"}, {"1", name}}, 1},
                    SheetBlanks{{{name, "g", name}}}};
    RC_ASSERT(sheet_pdf(sheet, Paper::A4).rfind("%PDF-1.", 0) == 0);
    RC_ASSERT(sheet_html(sheet).find("</html>") != std::string::npos);
  });
}
