#include "learn_bench.h"

#include <algorithm>
#include <map>

using namespace brimwright;
using namespace brimwright::service;

// What is noted is made of the plan's own figures and of one thing that is other than planned; so
// each expected value is the one that was put in.

namespace {

constexpr int enough = 7;  // batches

/// The run's cups, with their topping measured in the ways that are left in `pipe`.
class Cups : public Bench {
 public:
  explicit Cups(const std::vector<std::string>& ways) {
    for (const char* formula : {"meadow_base.formula.json", "cloud_topping.formula.json"})
      fs::copy(source() / "examples" / formula, file(formula),
               fs::copy_options::overwrite_existing);
    Json run = example("spring_cups.run.json");
    for (const char* way : {"trials", "beads", "envelope"})
      if (std::find(ways.begin(), ways.end(), way) == ways.end()) run["pipe"].erase(way);
    if (std::find(ways.begin(), ways.end(), "envelope") != ways.end())
      run["pipe"]["envelope"] = {
          {"form", "dome"}, {"diameter", "56 mm"}, {"height", "34 mm"}, {"soap_share", "60 %"}};
    run["pipe"].erase("whip_now");
    for (const char* section : {"label", "dust"}) run.erase(section);
    put("cups.run.json", run);
    learn_of("cups.run.json");
  }

  /// Batches whose toppings hold `each_ml` above their foot.
  void make(int from, double each_ml) const {
    const Json planned = plan();
    const Json& batch = planned["batches"][0];
    const double casts = batch["casts"], g_per_ml = 0.65, on_tools_g = 89, left_over_g = 20;
    const double all_ml =
        casts * (each_ml + planned["assumptions"]["pipe"]["in_headspace_each_ml"].get<double>());
    for (int i = from; i < from + enough; ++i)
      made(i, {{"topping.made", grams(all_ml * g_per_ml + on_tools_g + left_over_g)},
               {"topping.left_over", grams(left_over_g)},
               {"topping.on_tools", grams(on_tools_g)},
               {"topping.cup", "78 g"},  // of 120 ml
               {"topping.piped", batch["casts"].dump()},
               {"pour.line_off", "0 mm"}});
  }
  double visible_ml() const { return plan()["assumptions"]["pipe"]["visible_each_ml"]; }
  bool says(const std::string& text) const {
    const Json planned = plan();
    for (const Json& caution : planned["cautions"])
      if (caution["text"].get<std::string>().find(text) != std::string::npos) return true;
    return false;
  }
};

Json effect(const Json& figure, const std::string& of) {
  for (const Json& one : figure["with_it"])
    if (one["of"] == of) return one;
  return Json{{"now", nullptr}, {"then", nullptr}};
}

}  // namespace

TEST_CASE("a topping's volume is taken beside its trials, and used in their place", "[learn]") {
  const Cups bench({"trials", "beads"});
  const std::string typed = text_of_file(bench.file("cups.run.json"));
  const double by_trials_ml = bench.visible_ml();
  const double make_g = bench.plan()["pipe"]["make_g"];
  bench.make(0, 40);
  const Json figure = bench.figure("topping");
  CHECK(figure["value"].get<double>() == Approx(40).margin(0.01));
  CHECK(figure["used_now"].get<double>() == Approx(by_trials_ml).margin(0.01));
  CHECK(figure["standing"] == "suggested");
  CHECK(figure["in_file"]["would_say"] == "40 ml");
  const Json to_mix = effect(figure, "topping to mix");
  CHECK(to_mix["now"] == make_g);

  bench.keep(bench.take("topping"));
  const Json trials = bench.read("cups.run.json")["pipe"]["trials"];
  CHECK(trials["volume_each"] == "40 ml");
  CHECK(trials["learned"]["volume_each"]["batches"] == enough);
  CHECK(bench.visible_ml() == 40);
  CHECK(to_mix["then"] == bench.plan()["pipe"]["make_g"]);
  CHECK(bench.says("Topping: The volume each figure, 40 ml, is learned from 7 batches"));
  CHECK(bench.says("planned at 40 ml each above its foot, as the run gives it, not at the"));
  CHECK(bench.figure("topping")["standing"] == "as planned");
  CHECK(bench.figure("topping")["values"].size() == enough);  // the same topping as before
  bench.keep(bench.undo("topping"));
  CHECK(text_of_file(bench.file("cups.run.json")) == typed);
}

TEST_CASE("of a topping that is measured by its outline the share of it is taken", "[learn]") {
  const Cups bench({"envelope"});
  const std::string typed = text_of_file(bench.file("cups.run.json"));
  // Half an ellipsoid: pi / 6 x 56^2 x 34 mm3.
  const double outline_ml = 3.14159265 / 6 * 5.6 * 5.6 * 3.4;
  bench.make(0, 0.7 * outline_ml);
  CHECK(bench.figure("topping")["in_file"]["would_say"] == "70 %");
  const double then_g = effect(bench.figure("topping"), "topping to mix")["then"];
  bench.keep(bench.take("topping"));
  CHECK(bench.read("cups.run.json")["pipe"]["envelope"]["soap_share"] == "70 %");
  CHECK(bench.visible_ml() == Approx(0.7 * outline_ml).margin(0.01));
  CHECK(bench.plan()["pipe"]["make_g"] == then_g);
  CHECK(bench.says("Topping: The soap share figure, 70 %, is learned from 7 batches"));
  bench.keep(bench.undo("topping"));
  CHECK(text_of_file(bench.file("cups.run.json")) == typed);
}

TEST_CASE("more than its outline encloses is not taken", "[learn]") {
  const Cups bench({"envelope"});
  bench.make(0, 57);  // of 55.8 ml
  CHECK(bench.figure("topping")["in_file"]["refused"]["problem"] ==
        "is more than the outline of the topping encloses");
  CHECK(bench.take("topping").complaint.find("is more than the outline") != std::string::npos);
}

TEST_CASE("batches of a topping that was measured anew since tell nothing of today's", "[learn]") {
  const Cups bench({"trials"});
  bench.make(0, 40);
  Json run = bench.read("cups.run.json");
  run["pipe"]["trials"]["weighed"] = {"12 g", "12.2 g"};  // a smaller one
  bench.put("cups.run.json", run);
  CHECK(bench.figure("topping") == nullptr);
  CHECK(bench.learned()["left_out"] == enough);
  CHECK(bench.figure("whipped_density")["values"].size() == enough);
}

TEST_CASE("a decoration's losses are taken where the run has them, each decoration's own",
          "[learn]") {
  const Cups bench({"trials"});
  const Json plan = bench.plan();
  std::map<std::string, Json> blanks;
  for (const Json& blank : plan["batches"][0]["blanks"]) blanks[blank["key"]] = blank;
  const double fills = std::stod(blanks["decoration-1.fills"]["planned"].get<std::string>());
  const Json losses = bench.read("cups.run.json")["decorations"][0];
  REQUIRE(losses["left_in_jug"] == "6 g");
  REQUIRE(losses["melt_loss"] == "4 %");
  // Of 200 g melted 7 % are lost; 9 g stay in the jug at each filling.
  const double melted_g = 200, lost_g = 14, in_jug_g = 9 * fills, cast_g = 2.5,
               left_over_g = melted_g - lost_g - in_jug_g - 52 * cast_g;
  for (int i = 0; i < enough; ++i)
    bench.made(i, {{"decoration-1.melted", grams(melted_g)},
                   {"decoration-1.left_over", grams(left_over_g)},
                   {"decoration-1.in_jug", grams(in_jug_g)},
                   {"decoration-1.cast", "52"},
                   {"decoration-1.cast_each", grams(cast_g)}});
  const std::string typed = text_of_file(bench.file("cups.run.json"));
  const std::string melt = "melt_loss:Pearl bead", jug = "left_in_jug:Pearl bead";
  CHECK(bench.figure(melt)["value"] == Approx(7));
  CHECK(bench.figure(melt)["used_now"] == 4);
  CHECK(bench.figure(jug)["value"] == Approx(9));
  for (const std::string& name : {melt, jug}) {
    CAPTURE(name);
    const Json to_melt = effect(bench.figure(name), "Pearl bead to melt");
    CHECK(to_melt["now"] == bench.plan()["decorations"][0]["make_g"]);
    bench.keep(bench.take(name));
    CHECK(to_melt["then"] == bench.plan()["decorations"][0]["make_g"]);
  }
  const Json taken = bench.read("cups.run.json")["decorations"][0];
  CHECK(taken["melt_loss"] == "7 %");
  CHECK(taken["left_in_jug"] == "9 g");
  CHECK(taken["learned"]["melt_loss"]["before"] == "4 %");
  CHECK(bench.says("Pearl bead: The melt loss figure, 7 %, is learned from 7 batches"));
  CHECK(bench.says("Pearl bead: The left in jug figure, 9 g, is learned from 7 batches"));
  bench.keep(bench.undo(jug));
  bench.keep(bench.undo(melt));
  CHECK(text_of_file(bench.file("cups.run.json")) == typed);
}

TEST_CASE("more melted than was weighed for it is a contradiction", "[learn]") {
  const Cups bench({"trials"});
  std::string row;
  const Json plan = bench.plan();
  for (const Json& vessel : plan["batches"][0]["weigh_out"])
    if (vessel["vessel"] == "melt") row = vessel["rows"][0]["key"];
  for (int i = 0; i < 3; ++i)
    bench.made(i, {{"weighed." + row, "150 g"},
                   {"decoration-1.melted", "190 g"},
                   {"decoration-1.left_over", "20 g"},
                   {"decoration-1.in_jug", "6 g"},
                   {"decoration-1.cast", "52"},
                   {"decoration-1.cast_each", "2.5 g"}});
  const Json learned = bench.learned();
  CHECK(bench.figure("melt_loss:Pearl bead") == nullptr);
  REQUIRE(learned["contradictions"].size() == 3);
  CHECK(learned["contradictions"][0]["unaccounted_g"] == 40);
}
