#include "learn_bench.h"

#include <cmath>
#include <map>

using namespace brimwright;
using namespace brimwright::service;

// Batches are made from their truth: what was put on the scales, what of it was spilt there, how
// dense it came out, what a cavity took and what stayed in the pot. So each expected value is the
// one that was put in.

namespace {

constexpr int enough = 7;  // batches
using Notes = std::vector<std::pair<std::string, std::string>>;

/// Grams by the keys of rows, as planned, of all that goes into the base.
std::map<std::string, double> planned_rows(const Json& plan) {
  std::map<std::string, double> rows;
  for (const Json& vessel : plan["batches"][0]["weigh_out"])
    if (vessel["key"].get<std::string>().starts_with("pour.") && vessel["vessel"] != "layers")
      for (const Json& row : vessel["rows"]) rows[row["key"]] = row["g"];
  return rows;
}

struct Truth {
  std::map<std::string, double> more_g = {};  // than planned, by row
  double times = 1;                           // all of it
  double spilt_g = 0, density = 1.05, pot_g = 31, takes = 1.03;
};

Notes notes_of(const Json& plan, const Truth& truth) {
  Notes notes;
  double weighed_g = 0;
  for (const auto& [key, planned_g] : planned_rows(plan)) {
    const auto more = truth.more_g.find(key);
    const double its_g = truth.times * planned_g + (more == truth.more_g.end() ? 0 : more->second);
    weighed_g += its_g;
    if (its_g != planned_g) notes.emplace_back("weighed." + key, grams(its_g));
  }
  const double made_g = weighed_g - truth.spilt_g;
  const double in_pieces_g = plan["batches"][0]["casts"].get<double>() * truth.takes *
                             truth.density * plan["pour"]["volume_each_ml"].get<double>();
  notes.insert(notes.end(), {{"base.made", grams(made_g)},
                             {"base.left_over", grams(made_g - in_pieces_g - truth.pot_g)},
                             {"base.on_tools", grams(truth.pot_g)},
                             {"base.cup_holds", "100 ml"},
                             {"base.cup", grams(100 * truth.density)},
                             {"pour.filled", plan["batches"][0]["casts"].dump()},
                             {"pour.line_off", "0 mm"}});
  return notes;
}

/// Bars whose pot keeps a good deal, so that there is enough for what is tried here.
class FullBench : public Bench {
 public:
  FullBench() {
    Json run = read("bars.run.json");
    run["losses"]["pour"]["pot"] = "150 g";
    put("bars.run.json", run);
  }
};

void make(const Bench& bench, int from, int count, const Truth& truth) {
  const Json plan = bench.plan();
  for (int i = from; i < from + count; ++i) bench.made(i, notes_of(plan, truth));
}

std::string untold(const Json& learned, const std::string& name) {
  for (const Json& one : learned["untold"])
    if (one["name"] == name) return one["text"];
  return "";
}

double volume_mm(const Json& plan, double takes) {
  return (takes - 1) * plan["pour"]["volume_each_ml"].get<double>() /
         plan["pour"]["ml_per_mm"].get<double>();
}

}  // namespace

TEST_CASE("a batter mixed in other proportions tells nothing of its formula's density", "[learn]") {
  const FullBench bench;
  make(bench, 0, enough, {});
  make(bench, enough, 3, {.more_g = {{"pour.lye.water", 40}}, .density = 1.02});
  const Json learned = bench.learned();
  const Json density = bench.figure("density");
  CHECK(density["values"].size() == enough);
  CHECK(density["value"] == Approx(1.05));
  const std::string why = untold(learned, "density");
  CHECK(why.find("3 batches cannot tell; the last, ") != std::string::npos);
  CHECK(why.find("was weighed otherwise than planned. Next time weigh all of it in the planned "
                 "proportions.") != std::string::npos);
  // Its own cup tells what the mould took, and its own notes what stayed in the pot.
  CHECK(bench.figure("volume")["values"].size() == enough + 3);
  CHECK(bench.figure("volume")["value"] == Approx(volume_mm(bench.plan(), 1.03)).margin(0.01));
  CHECK(bench.figure("pot")["value"] == Approx(31));
}

TEST_CASE("more of everything is the same batter, and tells all that it would have", "[learn]") {
  const FullBench bench;
  make(bench, 0, enough, {.times = 1.1});
  CHECK(bench.figure("density")["value"] == Approx(1.05));
  CHECK(bench.figure("density")["values"].size() == enough);
  CHECK(bench.figure("pot")["value"] == Approx(31));
  CHECK(untold(bench.learned(), "density").empty());
}

TEST_CASE("two grams of oil more are the same batter", "[learn]") {
  const FullBench bench;
  make(bench, 0, enough, {.more_g = {{"pour.fats.olive", 2}}});
  CHECK(bench.figure("density")["values"].size() == enough);
}

TEST_CASE("what is spilt at the scales is no loss in the pot", "[learn]") {
  const FullBench bench;
  make(bench, 0, enough, {.more_g = {{"pour.fats.olive", 30}}, .spilt_g = 30});
  CHECK(bench.figure("pot")["value"] == Approx(31));
  CHECK(bench.figure("base_on_tools")["value"] == Approx(31));
  CHECK(bench.figure("volume")["value"] == Approx(volume_mm(bench.plan(), 1.03)).margin(0.01));
  CHECK(bench.learned()["contradictions"].empty());
}

TEST_CASE("more batter than was weighed for it is a contradiction, and its masses tell nothing",
          "[learn]") {
  const FullBench bench;
  make(bench, 0, 3, {.more_g = {{"pour.fats.olive", -20}}, .spilt_g = -80});
  const Json learned = bench.learned();
  CHECK(bench.figure("pot") == nullptr);
  REQUIRE(learned["contradictions"].size() == 3);
  CHECK(learned["contradictions"][0]["unaccounted_g"] == Approx(80));
  CHECK(learned["contradictions"][0]["text"].get<std::string>().find(
            "80 g more was made than was weighed for it; its masses are not counted") !=
        std::string::npos);
}

namespace {

double grams_in(const std::map<std::string, double>& rows) {
  double all = 0;
  for (const auto& row : rows) all += row.second;
  return all;
}

// How a piece dries, in days.
constexpr double fresh_g = 100, lost_in_the_end = 0.8, days_to_63_percent = 9;
double dried(double day) { return lost_in_the_end * (1 - std::exp(-day / days_to_63_percent)); }

/// Batches whose pieces hold `water`, as a share of them.
void make_cured(const Bench& bench, int from, const Notes& notes, double water) {
  for (int i = from; i < from + enough; ++i) {
    Notes all = notes;
    for (const auto& [day, on] : {std::pair{3, "2026-04-13"},
                                  {8, "2026-04-18"},
                                  {15, "2026-04-25"},
                                  {21, "2026-05-01"},
                                  {28, "2026-05-08"},
                                  {40, "2026-05-20"}})
      all.emplace_back(std::string("cured.") + on,
                       "1 piece, " + grams(fresh_g * (1 - water * dried(day))));
    all.emplace_back("base.made_on", "2026-04-10");
    bench.made(i, all);
  }
}

}  // namespace

TEST_CASE("a piece dries by the water that was weighed for it", "[learn]") {
  const FullBench bench;
  const Json plan = bench.plan();
  const double all_g = grams_in(planned_rows(plan)), more_g = 30,
               water_g = plan["batches"][0]["pour"]["water_g"];
  const auto make_with = [&](int from, const std::string& row, double its_more_g) {
    make_cured(bench, from, notes_of(plan, {.more_g = {{row, its_more_g}}}),
               (water_g + more_g) / (all_g + more_g));
  };
  make_with(0, "pour.lye.water", more_g);
  CHECK(bench.figure("cure")["value"].get<double>() == Approx(100 * dried(35)).margin(0.1));

  // Lactate is a solution, whose water nobody says here.
  make_with(enough, "pour.lye.sodium-lactate-60-solution", 4);
  CHECK(bench.figure("cure")["values"].size() == enough);
  CHECK(untold(bench.learned(), "cure").find("was weighed otherwise than planned") !=
        std::string::npos);
}

TEST_CASE("what comes out of a day's pot holds its water", "[learn]") {
  const FullBench bench;
  bench.put("studio.json", {{"schema", "brimwright.studio/1"},
                            {"days",
                             {{"making", {{"monday", "8 h"}}},
                              {"one_lye_a_day", {{"holds", "5 l"}, {"saves", "20 min"}}}}}});
  const Json plan = bench.plan();
  const auto rows = planned_rows(plan);
  const double water_g = rows.at("pour.lye.water"), lye_g = water_g + rows.at("pour.lye.naoh"),
               more_g = 40, all_g = grams_in(rows),
               // The lactate's own is not counted, as where nothing was weighed otherwise.
      in_batch_g = plan["batches"][0]["pour"]["water_g"].get<double>() + more_g * water_g / lye_g;
  Notes notes = notes_of(plan, {});
  notes.emplace_back("weighed.pour.day-pot", grams(lye_g + more_g));
  make_cured(bench, 0, notes, in_batch_g / (all_g + more_g));
  CHECK(bench.figure("cure")["value"].get<double>() == Approx(100 * dried(35)).margin(0.1));
  // Other proportions make another density.
  CHECK(bench.figure("density") == nullptr);
}

TEST_CASE("what stays in the tip and at bag changes is told apart, and taken", "[learn]") {
  Bench bench;
  for (const char* formula : {"meadow_base.formula.json", "cloud_topping.formula.json"})
    fs::copy(Bench::source() / "examples" / formula, bench.file(formula),
             fs::copy_options::overwrite_existing);
  Json run = Bench::example("spring_cups.run.json");
  run.erase("label");
  const Json losses = run["losses"]["pipe"];  // 4 g in the tip, 8 g at a change of bags
  run["losses"].erase("pipe");
  bench.put("cups.run.json", run);
  bench.put("studio.json", {{"schema", "brimwright.studio/1"}, {"losses", {{"pipe", losses}}}});
  const std::string typed = text_of_file(bench.file("studio.json"));
  bench.learn_of("cups.run.json");
  const Json plan = bench.plan();
  std::map<std::string, Json> blanks;
  for (const Json& blank : plan["batches"][0]["blanks"]) blanks[blank["key"]] = blank;
  const int changes = plan["batches"][0]["pipe"]["loads"].get<int>() - 1;
  REQUIRE(changes == 2);
  CHECK(blanks["topping.in_tip"]["planned"] == "4 g");
  CHECK(blanks["topping.bag_changes"]["planned"] == "2");
  CHECK(blanks["topping.at_bag_changes"]["planned"] == "16 g");
  for (int i = 0; i < enough; ++i)
    bench.made(i, {{"topping.on_tools", "97 g"},
                   {"topping.in_bowl", "33 g"},
                   {"topping.in_bag", "25 g"},
                   {"topping.in_tip", "6 g"},
                   {"topping.bag_changes", "3"}});
  // 97 - 33 - 25 - 6 = 33 g at three changes.
  CHECK(bench.figure("each_bag_change")["value"] == 11);
  CHECK(bench.figure("tip")["value"] == 6);
  CHECK(bench.figure("bag")["value"] == 25);
  bench.keep(bench.take("each_bag_change"));
  bench.keep(bench.take("tip"));
  CHECK(bench.read("studio.json")["losses"]["pipe"]["each_bag_change"] == "11 g");
  CHECK(bench.plan()["assumptions"]["pipe"]["tip_g"] == 6);
  int told = 0;
  const Json taken = bench.plan();
  for (const Json& caution : taken["cautions"])
    told += caution["text"].get<std::string>().find("figure, 11 g, is learned from 7 batches") !=
            std::string::npos;
  CHECK(told == 1);
  bench.keep(bench.undo("tip"));
  bench.keep(bench.undo("each_bag_change"));
  CHECK(text_of_file(bench.file("studio.json")) == typed);
}
