#include "learn_bench.h"

using namespace brimwright;
using namespace brimwright::service;

namespace {

Json figure(const Json& learned, const std::string& name) {
  for (const Json& one : learned["figures"])
    if (one["name"] == name) return one;
  return nullptr;
}

/// So many batches in each of which a cavity takes 3 % more than measured at a density of 1.05
/// g/ml, and 31 g, more or less, stay in the pot.
void make_batches(const Bench& bench, int count) {
  const Json plan = bench.plan();
  const double measured_ml = plan["pour"]["volume_each_ml"];
  const auto casts = plan["batches"][0]["casts"].get<std::int64_t>();
  for (int i = 0; i < count; ++i) {
    const double pot_g = 31 + (i % 3 - 1);
    const double made_g = static_cast<double>(casts) * measured_ml * 1.03 * 1.05 + pot_g + 12;
    bench.made(i, {{"base.made", std::to_string(made_g) + " g"},
                   {"base.left_over", "12 g"},
                   {"base.on_tools", std::to_string(pot_g) + " g"},
                   {"base.cup_holds", "100 ml"},
                   {"base.cup", "105 g"},
                   {"pour.filled", std::to_string(casts)},
                   {"pour.line_off", "0 mm"}});
  }
}

}  // namespace

TEST_CASE("a run without records says how to begin them", "[learn]") {
  const Bench bench;
  CHECK(bench.ask({.what = bench.request()}).complaint.find("has no records beside it") !=
        std::string::npos);
}

TEST_CASE("what batches tell is in the answer, each apart from the others", "[learn]") {
  const Bench bench;
  make_batches(bench, 7);
  const Json learned = bench.learned();
  CHECK(learned["batches"] == 7);
  CHECK(figure(learned, "density")["value"] == Approx(1.05));
  CHECK(figure(learned, "density")["standing"] == "suggested");
  CHECK(figure(learned, "pot")["value"] == Approx(31).margin(0.5));
  CHECK(figure(learned, "pot")["used_now"] == 20);
  // 3 % of the volume as a height: volume / (ml a millimetre).
  const Json plan = bench.plan();
  const double mm =
      0.03 * plan["pour"]["volume_each_ml"].get<double>() / plan["pour"]["ml_per_mm"].get<double>();
  CHECK(figure(learned, "volume")["value"] == Approx(mm).margin(0.01));
  CHECK(figure(learned, "volume")["values"].size() == 7);
}

TEST_CASE("what is taken stands where a typed one would, and the plan says so", "[learn]") {
  const Bench bench;
  make_batches(bench, 7);
  const double before_ml = bench.plan()["pour"]["volume_each_ml"];
  for (const char* name : {"pot", "density", "volume"}) bench.keep(bench.take(name));
  const Json run = Json::parse(text_of_file(bench.file("bars.run.json")));
  CHECK(run["losses"]["pour"]["pot"] == "31 g");
  CHECK(run["losses"]["pour"]["learned"]["pot"] ==
        Json({{"value", "31 g"}, {"batches", 7}, {"on", "2026-12-01"}, {"before", "20 g"}}));
  const Json plan = bench.plan();
  CHECK(plan["pour"]["density_g_per_ml"] == 1.05);
  CHECK(plan["pour"]["volume_each_ml"].get<double>() == Approx(1.03 * before_ml).epsilon(1e-4));
  int told = 0;
  for (const Json& caution : plan["cautions"])
    told +=
        caution["text"].get<std::string>().find("is learned from 7 batches") != std::string::npos;
  CHECK(told == 3);
  // Batches made before tell the same of the mould as they did, and what is used is that now.
  for (const char* name : {"pot", "density", "volume"})
    CHECK(figure(bench.learned(), name)["standing"] == "as planned");
}

TEST_CASE("undoing what was taken gives every file as it was, to the letter", "[learn]") {
  const Bench bench;
  make_batches(bench, 7);
  for (const auto& [name, file] : {std::pair{"pot", "bars.run.json"},
                                   {"density", "meadow_base.formula.json"},
                                   {"volume", "my_bar.json"}}) {
    const std::string before = text_of_file(bench.file(file));
    bench.keep(bench.take(name));
    CHECK(text_of_file(bench.file(file)) != before);
    bench.keep(bench.undo(name));
    CHECK(text_of_file(bench.file(file)) == before);
  }
}

TEST_CASE("nothing is taken that chance may have made, or undone that is hers", "[learn]") {
  const Bench bench;
  make_batches(bench, 5);
  CHECK(bench.take("pot").complaint.find("too few") != std::string::npos);
  CHECK(bench.take("pt").complaint.find("did you mean \"pot\"?") != std::string::npos);
  CHECK(bench.undo("pot").complaint.find("was not taken") != std::string::npos);
  CHECK(bench.undo("luck").complaint.find("is not a figure") != std::string::npos);
  make_batches(bench, 2);
  bench.keep(bench.take("pot"));
  Json run = Json::parse(text_of_file(bench.file("bars.run.json")));
  run["losses"]["pour"]["pot"] = "33 g";
  std::ofstream(bench.file("bars.run.json")) << run.dump(2);
  CHECK(bench.undo("pot").complaint.find("was written anew") != std::string::npos);
}

TEST_CASE("batches of another formula under the same name tell nothing of today's", "[learn]") {
  const Bench bench;
  make_batches(bench, 7);
  Json formula = Json::parse(text_of_file(bench.file("meadow_base.formula.json")));
  formula["water"]["lye_strength"] = "45 %";
  std::ofstream(bench.file("meadow_base.formula.json")) << formula.dump(2);
  const Json learned = bench.learned();
  CHECK(learned["left_out"] == 7);
  CHECK(figure(learned, "density") == nullptr);
  CHECK(figure(learned, "pot") != nullptr);
}

TEST_CASE("batches of a formula and a mould that were renamed since tell of them", "[learn]") {
  Bench bench;
  bench.made_from({"meadow_base.formula.json", "my_bar.json"});
  make_batches(bench, 7);
  Json run = bench.read("bars.run.json");
  run["pour"]["formula"] = "meadow.formula.json";
  run["pour"]["mould"] = "bar_82.json";
  bench.put("bars.run.json", run);
  fs::copy(bench.file("meadow_base.formula.json"), bench.file("meadow.formula.json"));
  fs::copy(bench.file("my_bar.json"), bench.file("bar_82.json"));
  // Copies beside them are others.
  CHECK(figure(bench.learned(), "density") == nullptr);
  CHECK(figure(bench.learned(), "volume") == nullptr);
  fs::remove(bench.file("meadow_base.formula.json"));
  fs::remove(bench.file("my_bar.json"));
  CHECK(figure(bench.learned(), "density")["values"].size() == 7);
  CHECK(figure(bench.learned(), "volume")["values"].size() == 7);
  // What was learned since does not make another of them.
  bench.keep(bench.take("density"));
  bench.keep(bench.take("volume"));
  CHECK(figure(bench.learned(), "density")["values"].size() == 7);
  CHECK(figure(bench.learned(), "volume")["values"].size() == 7);
}
