#include "learn_bench.h"

#include <cmath>

using namespace brimwright;
using namespace brimwright::service;

// What is noted is made of the plan's own figures and of one thing that is other than planned; so
// each expected value is the one that was put in.

namespace {

constexpr int enough = 7;  // batches

/// One whose notes are all there, with a pot that keeps `pot_g` and a cup of 100 ml that weighs 105
/// g.
std::vector<std::pair<std::string, std::string>> notes_with_pot(const Json& plan, double pot_g) {
  const double each_ml = plan["pour"]["volume_each_ml"];
  const double casts = plan["batches"][0]["casts"];
  return {{"base.made", grams(casts * each_ml * 1.05 + pot_g + 12)},
          {"base.left_over", "12 g"},
          {"base.on_tools", grams(pot_g)},
          {"base.cup_holds", "100 ml"},
          {"base.cup", "105 g"},
          {"pour.filled", plan["batches"][0]["casts"].dump()},
          {"pour.line_off", "0 mm"}};
}

void make_with_pot(const Bench& bench, int from, int count, double pot_g) {
  const Json plan = bench.plan();
  for (int i = from; i < from + count; ++i) bench.made(i, notes_with_pot(plan, pot_g));
}

Json studio_with(const Json& more) {
  Json studio = {{"schema", "brimwright.studio/1"}};
  studio.update(more);
  return studio;
}

/// The run's cups, piped by moves of a tip alone, so that her hand's correction counts.
void put_cups(const Bench& bench) {
  for (const char* formula : {"meadow_base.formula.json", "cloud_topping.formula.json"})
    fs::copy(Bench::source() / "examples" / formula, bench.file(formula),
             fs::copy_options::overwrite_existing);
  Json run = Bench::example("spring_cups.run.json");
  run["pipe"].erase("trials");
  run["pipe"].erase("whip_now");
  run.erase("label");
  bench.put("cups.run.json", run);
}

const std::string tip = "star 8 x 16 mm";

/// Batches whose topping is `hand` times what tip and moves lay down.
void make_cups(const Bench& bench, double hand) {
  const Json plan = bench.plan();
  const Json& pipe = plan["assumptions"]["pipe"];
  const Json& batch = plan["batches"][0];
  const double casts = batch["casts"];
  REQUIRE(batch["pipe"]["whippings"].size() == 1);
  const double each_ml =
      hand * pipe["by_moves_ml"].get<double>() + pipe["in_headspace_each_ml"].get<double>();
  const double g_per_ml = 0.65, on_tools_g = 89, left_over_g = 20;
  for (int i = 0; i < enough; ++i)
    bench.made(i, {{"topping.made", grams(casts * each_ml * g_per_ml + on_tools_g + left_over_g)},
                   {"topping.left_over", grams(left_over_g)},
                   {"topping.on_tools", grams(on_tools_g)},
                   {"topping.cup", "78 g"},  // of 120 ml
                   {"topping.piped", batch["casts"].dump()},
                   {"pour.line_off", "0 mm"}});
}

}  // namespace

TEST_CASE("taking twice and undoing twice goes back step by step, to the letter", "[learn]") {
  const Bench bench;
  const std::string typed = text_of_file(bench.file("bars.run.json"));
  make_with_pot(bench, 0, enough, 31);
  bench.keep(bench.take("pot"));
  const std::string first = text_of_file(bench.file("bars.run.json"));
  make_with_pot(bench, enough, 3 * enough, 40);  // most pairs of all are of 40 g then
  bench.keep(bench.take("pot"));
  CHECK(bench.read("bars.run.json")["losses"]["pour"]["pot"] == "40 g");
  CHECK(bench.figure("pot")["in_file"]["taken"]["steps"] == 2);

  const Reply back = bench.undo("pot");
  CHECK(back.document.find("pot is 31 g again, as it was taken on 2026-12-01 from 7 batches") !=
        std::string::npos);
  bench.keep(back);
  CHECK(text_of_file(bench.file("bars.run.json")) == first);
  const Reply further = bench.undo("pot");
  CHECK(further.document.find("pot is 20 g again\n") != std::string::npos);
  bench.keep(further);
  CHECK(text_of_file(bench.file("bars.run.json")) == typed);
}

TEST_CASE("what she typed over a taken value is what undoing a further one gives back", "[learn]") {
  const Bench bench;
  make_with_pot(bench, 0, enough, 31);
  bench.keep(bench.take("pot"));
  Json run = bench.read("bars.run.json");
  run["losses"]["pour"]["pot"] = "33 g";
  bench.put("bars.run.json", run);
  bench.keep(bench.take("pot"));
  CHECK(bench.figure("pot")["in_file"]["taken"]["steps"] == 1);
  bench.keep(bench.undo("pot"));
  CHECK(bench.read("bars.run.json")["losses"]["pour"]["pot"] == "33 g");
}

TEST_CASE("the same figure of the same batches is not taken once more", "[learn]") {
  const Bench bench;
  make_with_pot(bench, 0, enough, 31);
  bench.keep(bench.take("pot"));
  CHECK(bench.figure("pot")["in_file"]["is_taken"] == true);
  CHECK(bench.take("pot").complaint.find("is taken already from these batches") !=
        std::string::npos);
}

TEST_CASE("a loss that the run does not say itself is taken into the studio", "[learn]") {
  const Bench bench;
  bench.put("studio.json", studio_with({{"losses", {{"pour", {{"pot", "20 g"}}}}}}));
  Json run = bench.read("bars.run.json");
  run["losses"]["pour"].erase("pot");
  bench.put("bars.run.json", run);
  make_with_pot(bench, 0, enough, 31);
  const std::string typed = text_of_file(bench.file("studio.json"));
  CHECK(bench.figure("pot")["in_file"]["file"] == bench.file("studio.json"));
  bench.keep(bench.take("pot"));
  CHECK(bench.read("studio.json")["losses"]["pour"]["pot"] == "31 g");
  CHECK(bench.plan()["assumptions"]["pour"]["pot_g"] == 31);
  bench.keep(bench.undo("pot"));
  CHECK(text_of_file(bench.file("studio.json")) == typed);
}

TEST_CASE("what taking would make of the plan is what the plan says once it is taken", "[learn]") {
  const Bench bench;
  const Json plan = bench.plan();
  const double each_ml = plan["pour"]["volume_each_ml"];
  const double casts = plan["batches"][0]["casts"];
  for (int i = 0; i < enough; ++i)  // 3 % more in a cavity, and 31 g in the pot
    bench.made(i, {{"base.made", grams(casts * each_ml * 1.03 * 1.05 + 31 + 12)},
                   {"base.left_over", "12 g"},
                   {"base.on_tools", "31 g"},
                   {"base.cup_holds", "100 ml"},
                   {"base.cup", "105 g"},
                   {"pour.filled", plan["batches"][0]["casts"].dump()},
                   {"pour.line_off", "0 mm"}});
  const auto effect = [](const Json& figure, const std::string& of) {
    for (const Json& one : figure["with_it"])
      if (one["of"] == of) return one;
    return Json{{"now", nullptr}, {"then", nullptr}};
  };
  for (const char* name : {"pot", "volume", "density"}) {
    CAPTURE(name);
    const Json mix = effect(bench.figure(name), "base to mix");
    CHECK(mix["now"] == bench.plan()["pour"]["make_g"]);
    bench.keep(bench.take(name));
    CHECK(mix["then"] == bench.plan()["pour"]["make_g"]);
  }
}

TEST_CASE("minutes stand beside what the studio says, and are taken there", "[learn]") {
  const Bench bench;
  bench.put("studio.json",
            studio_with({{"currency", "EUR"},
                         {"work", {{"paid_an_hour", "15"}, {"each_batch", "60 min"}}}}));
  const std::string typed = text_of_file(bench.file("studio.json"));
  const std::string pieces = bench.plan()["pieces"]["make"].dump();  // 12
  for (int i = 0; i < enough; ++i)
    bench.made(i, {{"minutes.making", "90 min"},
                   {"minutes.packing", "20 min"},
                   {"pieces.made", pieces},
                   {"pieces.rejected", "2"}});
  CHECK(bench.figure("each_batch")["value"] == 90);
  CHECK(bench.figure("each_batch")["used_now"] == 60);
  CHECK(bench.figure("each_piece_packed")["value"] == 2);  // 20 min / (12 - 2)
  CHECK(bench.figure("each_piece_packed")["used_now"] == nullptr);

  bench.keep(bench.take("each_batch"));
  bench.keep(bench.take("each_piece_packed"));
  const Json work = bench.read("studio.json")["work"];
  CHECK(work["each_batch"] == "90 min");
  CHECK(work["each_piece_packed"] == "120 s");
  CHECK(bench.figure("each_batch")["standing"] == "as planned");
  bench.keep(bench.undo("each_piece_packed"));
  bench.keep(bench.undo("each_batch"));
  CHECK(text_of_file(bench.file("studio.json")) == typed);
}

TEST_CASE("minutes are not taken where nobody says what her time costs", "[learn]") {
  const Bench bench;
  bench.put("studio.json", studio_with(Json::object()));
  for (int i = 0; i < enough; ++i) bench.made(i, {{"minutes.making", "90 min"}});
  CHECK(bench.figure("each_batch")["in_file"]["refused"]["problem"] ==
        "needs the studio's \"work\", which says what your time costs");
  CHECK(bench.take("each_batch").complaint.find("add \"work\" with \"paid_an_hour\"") !=
        std::string::npos);
}

TEST_CASE("her hand is taken into the studio by its tip, and the topping grows with it",
          "[learn]") {
  Bench bench;
  put_cups(bench);
  bench.put("studio.json", studio_with({{"note", "mine"}}));
  bench.learn_of("cups.run.json");
  make_cups(bench, 1.12);
  const std::string typed = text_of_file(bench.file("studio.json"));
  const double by_moves_ml = bench.plan()["assumptions"]["pipe"]["by_moves_ml"];
  CHECK(bench.figure("hand")["value"].get<double>() == Approx(1.12).margin(0.001));
  CHECK(bench.figure("hand")["used_now"] == 1);
  CHECK(bench.figure("topping")["value"].get<double>() == Approx(1.12 * by_moves_ml).epsilon(1e-3));
  CHECK(bench.figure("topping")["in_file"] == nullptr);

  bench.keep(bench.take("hand"));
  const Json hand = bench.read("studio.json")["hand"][tip];
  CHECK(hand["correction"].get<double>() == Approx(1.12).margin(0.0005));
  CHECK(hand["trials"] == enough);
  const Json pipe = bench.plan()["assumptions"]["pipe"];
  CHECK(pipe["visible_each_ml"].get<double>() == Approx(1.12 * by_moves_ml).epsilon(1e-3));
  CHECK(bench.figure("hand")["standing"] == "as planned");

  const std::string first = text_of_file(bench.file("studio.json"));
  make_cups(bench, 1.3);
  bench.keep(bench.take("hand"));
  CHECK(bench.read("studio.json")["hand"][tip]["trials"] == 2 * enough);
  bench.keep(bench.undo("hand"));
  CHECK(text_of_file(bench.file("studio.json")) == first);
  bench.keep(bench.undo("hand"));
  CHECK(text_of_file(bench.file("studio.json")) == typed);
}

TEST_CASE("a cure is taken into its formula, and the cured piece weighs so", "[learn]") {
  const Bench bench;
  const Json plan = bench.plan();
  const Json& cure = plan["assumptions"]["cure"];
  REQUIRE(cure["sold_on_day"] == 35);
  const double fresh_g = plan["piece"]["fresh_g"], days_to_63_percent = 9,
               lost_in_the_end = 0.7;  // of the water
  const double water_g = fresh_g * cure["water_percent"].get<double>() / 100;
  const auto weighs = [&](double day) {
    return fresh_g - water_g * lost_in_the_end * (1 - std::exp(-day / days_to_63_percent));
  };
  const double truth_percent = 100 * lost_in_the_end * (1 - std::exp(-35 / days_to_63_percent));
  for (int i = 0; i < enough; ++i) {
    std::vector<std::pair<std::string, std::string>> notes;
    const auto poured = std::chrono::sys_days(std::chrono::year{2026} / 3 / (10 + i));
    for (const int day : {1, 4, 8, 14, 21, 28, 40}) {
      const std::chrono::year_month_day on(poured + std::chrono::days(day));
      const auto two = [](unsigned number) {
        return (number < 10 ? "0" : "") + std::to_string(number);
      };
      notes.emplace_back("cured.2026-" + two(static_cast<unsigned>(on.month())) + "-" +
                             two(static_cast<unsigned>(on.day())),
                         "1 piece, " + grams(weighs(day)));
    }
    bench.made(i, notes);
  }
  const std::string typed = text_of_file(bench.file("meadow_base.formula.json"));
  CHECK(bench.figure("cure")["value"].get<double>() == Approx(truth_percent).margin(0.1));
  CHECK(bench.figure("cure")["used_now"] == 85);  // "water_lost_in_cure" of the formula
  const Json with_it = bench.figure("cure")["with_it"];
  bench.keep(bench.take("cure"));
  const Json piece = bench.plan()["piece"];
  REQUIRE(with_it.size() == 1);
  CHECK(with_it[0]["of"] == "a cured piece");
  CHECK(with_it[0]["then"].get<double>() == Approx(piece["cured_g"].get<double>()).margin(0.051));
  const double lost_g = piece["fresh_g"].get<double>() - piece["cured_g"].get<double>();
  CHECK(lost_g == Approx(piece["fresh_g"].get<double>() * cure["water_percent"].get<double>() /
                         100 * truth_percent / 100)
                      .margin(0.2));  // both are given to 0.1 g
  bench.keep(bench.undo("cure"));
  CHECK(text_of_file(bench.file("meadow_base.formula.json")) == typed);

  Json formula = bench.read("meadow_base.formula.json");
  formula.erase("water_lost_in_cure");
  formula["drying"] = {{"water_lost_in_the_end", "85 %"}, {"time_to_63_percent", "10 days"}};
  bench.put("meadow_base.formula.json", formula);
  CHECK(bench.take("cure").complaint.find("own \"drying\"") != std::string::npos);
}
