#include "records/notes.h"

#include "records/act.h"
#include "records/batches.h"
#include "records/noting.h"
#include "records/records.h"
#include "scratch_folder.h"
#include "units/question.h"

#include <catch2/catch.hpp>

using namespace brimwright;
using namespace brimwright::records;
using Catch::Matchers::Contains;

namespace {

constexpr auto moment = "2026-12-01T09:30:05+01:00";
const Place typed{"command line", "--set"};

/// What planning asks of a batch, as it stands in a plan's answer.
constexpr auto plan = R"({"batches": [{"numbers": [1, 2], "blanks": [
  {"key": "decoration-1.cast", "words": "cast", "kind": "count", "batch": 1},
  {"key": "base.fats_at", "words": "fats at", "kind": "temperature", "least": "0 °C", "most": "100 °C"},
  {"key": "base.trace", "words": "trace", "kind": "minutes", "most": "6 h"},
  {"key": "base.cup_holds", "words": "holds", "kind": "volume", "least": "15 ml", "most": "360 ml"},
  {"key": "base.cup", "words": "cup", "kind": "mass", "least": "0.85 g/ml", "most": "1.25 g/ml", "cup_holds_key": "base.cup_holds"},
  {"key": "base.made", "words": "made", "kind": "mass", "planned": "1000 g", "least": "500 g", "most": "1500 g"},
  {"key": "base.left_over", "words": "left over", "kind": "mass", "not_above": "base.made"},
  {"key": "pour.line_off", "words": "line", "kind": "length", "least": "-30 mm", "most": "6 mm"},
  {"key": "topping.cup", "words": "cup", "kind": "mass", "least": "0.3 g/ml", "most": "1.05 g/ml", "cup_holds": "120 ml"},
  {"key": "pieces.made", "words": "made", "kind": "count", "planned": "24", "most": "48"},
  {"key": "pieces.rejected", "words": "rejects", "kind": "count", "not_above": "pieces.made"},
  {"key": "pieces.why", "words": "why", "kind": "text"},
  {"key": "unmoulded_on", "words": "unmoulded", "kind": "date"},
  {"key": "cured", "words": "cured", "kind": "weighing", "most": "104 g"},
  {"key": "tested", "words": "tested", "kind": "choice", "choices": ["pass", "hold"]},
  {"key": "ready_on", "words": "ready", "kind": "date", "least": "35 days"},
  {"key": "held_back", "words": "held back", "kind": "text"}]}]})";

struct Studio {
  ScratchFolder folder;
  Records records = Records::kept_in(folder.path());
  Batch batch = begun();
  int acts = 0;

  Batch begun(std::int64_t number = 2) {
    Act act(records, "begin", moment, "begin", "{}");
    const Batch fresh = begin_batch(records,
                                    {.id = "b",
                                     .run = "r",
                                     .run_file = "may.run.json",
                                     .run_name = "May",
                                     .number = number,
                                     .begun_on = "2026-12-01",
                                     .begun_at = moment,
                                     .pieces = 24,
                                     .program = "1",
                                     .plan = plan},
                                    typed);
    act.done();
    return fresh;
  }
  void set(const std::vector<std::pair<std::string, std::string>>& values,
           std::vector<std::string> confirmed = {}) {
    std::vector<Note> changes;
    for (const auto& [key, value] : values) changes.push_back({key, value, typed});
    Act act(records, std::to_string(++acts), moment, "note", "{}");
    note(records, batch, changes,
         {.today = "2026-12-29",
          .noted_at = moment,
          .confirmed = std::move(confirmed),
          .confirmed_at = {"command line", "--confirmed"}});
    act.done();
  }
  /// The complaint of noting that, which may change nothing.
  std::string refused(const std::vector<std::pair<std::string, std::string>>& values,
                      std::vector<std::string> confirmed = {}) {
    const auto before = notes().all.size();
    std::string said;
    try {
      set(values, std::move(confirmed));
    } catch (const UserError& error) {
      said = error.what();
    }
    CHECK(notes().all.size() == before);
    return said;
  }
  Notes notes() const { return notes_of(records, batch); }
};

}  // namespace

TEST_CASE("what is noted is kept as it was typed, and read by its kind") {
  Studio studio;
  studio.set({{"base.made", "2 lb 4 oz"},
              {"base.fats_at", "104 °F"},
              {"base.trace", "1 min 30 s"},
              {"pour.line_off", "-1,5 mm"},
              {"pieces.made", "23"},
              {"unmoulded_on", "2026-12-03"},
              {"tested", "Pass"},
              {"pieces.why", "one chipped; größer als sonst"}});
  const Notes notes = studio.notes();
  CHECK(notes.text("base.made") == "2 lb 4 oz");
  CHECK(*notes.mass("base.made") / gram ==
        Approx(36 * 28.349523125));  // avoirdupois, by definition
  CHECK(notes.temperature("base.fats_at")->celsius() == Approx(40));
  CHECK(notes.minutes("base.trace")->count() == 90);
  CHECK(*notes.length("pour.line_off") / millimetre == Approx(-1.5));
  CHECK(notes.count("pieces.made") == 23);
  CHECK(notes.date("unmoulded_on") == std::chrono::year_month_day{std::chrono::year{2026},
                                                                  std::chrono::December,
                                                                  std::chrono::day{3}});
  CHECK(notes.text("tested") == "pass");
  CHECK(notes.text("pieces.why") == "one chipped; größer als sonst");
  CHECK(!notes.mass("base.left_over"));
  const PackedNotes packed(studio.records);
  REQUIRE(packed.size() == 1);
  CHECK(packed.batch(0) == "b");
  const PackedNotes::Of looked_into = packed.of(0);
  const Notes unpacked = looked_into.copy();
  REQUIRE(unpacked.all.size() == 8);
  for (const auto& [key, noted] : unpacked.all) {
    CHECK(noted.value == notes.text(key));
    CHECK(looked_into.text(key) == noted.value);
  }
  CHECK(!looked_into.value("base.mad"));
  CHECK(!looked_into.value("zzz"));
  CHECK(looked_into.has_any_from("pieces."));
  CHECK(!looked_into.has_any_from("weighed."));
  CHECK(!packed.of_none().value("base.made"));
  studio.set({{"base.made", "1.02 kg"}, {"pieces.why", ""}});
  CHECK(*studio.notes().mass("base.made") / gram == Approx(1020));
  CHECK(!studio.notes().text("pieces.why"));
}

TEST_CASE("what cannot be is refused, and what is far from usual is asked once") {
  Studio studio;
  CHECK_THAT(studio.refused({{"base.made", "1000"}}), Contains("no unit"));
  CHECK_THAT(studio.refused({{"base.made", "10 kg"}}), Contains("500 g to 1500 g is usual"));
  CHECK_THAT(studio.refused({{"base.fats_at", "400 °C"}}), Contains("outside -40 to 200"));
  CHECK_THAT(studio.refused({{"pieces.made", "23.5"}}), Contains("whole number"));
  CHECK_THAT(studio.refused({{"pieces.made", "-1"}}), Contains("whole number"));
  CHECK_THAT(studio.refused({{"unmoulded_on", "2026-11-30"}}),
             Contains("before the batch was begun"));
  CHECK_THAT(studio.refused({{"unmoulded_on", "2027-01-02"}}), Contains("still to come"));
  CHECK_THAT(studio.refused({{"unmoulded_on", "3.12.2026"}}), Contains("3.12.2026"));
  CHECK_THAT(studio.refused({{"tested", "fine"}}), Contains("give pass or hold"));
  CHECK_THAT(studio.refused({{"pieces.why", "one\ntwo"}}), Contains("one line"));
  CHECK_THAT(studio.refused({{"pieces.why", "\xff"}}), Contains("cannot be printed"));
  CHECK_THAT(studio.refused({{"base.mad", "1 kg"}}), Contains("did you mean base.made?"));
  CHECK_THAT(studio.refused({{"decoration-1.cast", "4"}}), Contains("nothing that is noted"));
  CHECK_THAT(studio.refused({{"base.made", "1 kg"}, {"base.made", "1 kg"}}),
             Contains("given twice"));
  CHECK_THAT(studio.refused({{"base.made", "1 kg"}}, {"2 kg"}), Contains("none of the values"));
  studio.set({{"base.made", "1.6 kg"}}, {"1.6 kg"});
  CHECK(studio.notes().text("base.made") == "1.6 kg");
}

TEST_CASE("several notes are noted together or not at all") {
  Studio studio;
  CHECK(!studio.refused({{"base.made", "1 kg"}, {"pieces.made", "x"}}).empty());
  CHECK(studio.notes().all.empty());
}

TEST_CASE("no more is left over than was made, whichever is noted last") {
  Studio studio;
  CHECK_THAT(studio.refused({{"base.left_over", "1.1 kg"}}),
             Contains("more than base.made, 1000 g"));
  studio.set({{"base.left_over", "900 g"}});
  CHECK_THAT(studio.refused({{"base.made", "850 g"}}), Contains("more than base.made, 850 g"));
  studio.set({{"base.made", "850 g"}}, {"850 g"});
  CHECK_THAT(studio.refused({{"pieces.rejected", "25"}}), Contains("more than pieces.made, 24"));
}

TEST_CASE("a weigh-cup's density is one that a batter can have") {
  Studio studio;
  // By hand: 61 g in 120 ml are 0.51 g/ml; 261 g, with the cup itself, are 2.2.
  studio.set({{"topping.cup", "61 g"}});
  CHECK_THAT(studio.refused({{"topping.cup", "261 g"}}), Contains("take the empty cup off"));
  // Of a cup whose volume is noted beside it: 121 g in 250 ml are no base, but in 120 ml.
  studio.set({{"base.cup", "121 g"}});
  CHECK_THAT(studio.refused({{"base.cup_holds", "250 ml"}}), Contains("0.48 g/ml"));
  studio.set({{"base.cup_holds", "120 ml"}});
}

TEST_CASE("cured pieces are weighed on a day, together, and are lighter than fresh ones") {
  Studio studio;
  studio.set({{"cured.2026-12-15", "12 pieces, 1140 g"}, {"cured.2026-12-08", "3 pieces 300 g"}});
  auto weighings = weighings_of(studio.records, studio.batch);
  REQUIRE(weighings.size() == 2);
  CHECK(weighings[1].day == "2026-12-15");
  CHECK(weighings[1].pieces == 12);
  CHECK(weighings[1].together / gram == Approx(1140));
  CHECK(all_weighings(studio.records).at("b").size() == 2);
  CHECK_THAT(studio.refused({{"cured.2026-12-16", "12 pieces, 1260 g"}}),
             Contains("105 g a piece"));
  CHECK_THAT(studio.refused({{"cured.2026-12-16", "1140 g"}}), Contains("12 pieces, 1040 g"));
  CHECK_THAT(studio.refused({{"cured.2026-12-16", "0 pieces, 1140 g"}}),
             Contains("nothing on a scale"));
  CHECK_THAT(studio.refused({{"cured.tuesday", "12 pieces, 1140 g"}}), Contains("tuesday"));
  CHECK_THAT(studio.refused({{"cured.2027-01-16", "12 pieces, 1140 g"}}),
             Contains("still to come"));
  CHECK_THAT(studio.refused({{"cured", "12 pieces, 1140 g"}}), Contains("needs its day"));
  studio.set({{"cured.2026-12-15", ""}});
  CHECK(weighings_of(studio.records, studio.batch).size() == 1);
}

TEST_CASE("nothing is for sale without a test that was passed") {
  Studio studio;
  const auto why_not = [&](const std::string& today) {
    return for_sale(studio.notes(), today).why_not;
  };
  CHECK(why_not("2026-12-29") == "has no test result");
  CHECK_THAT(studio.refused({{"ready_on", "2026-12-29"}}), Contains("no test result"));
  CHECK_THAT(studio.refused({{"ready_on", "2026-12-29"}, {"tested", "hold"}}),
             Contains("says hold"));
  studio.set({{"tested", "pass"}});
  CHECK(why_not("2026-12-29") == "is not noted as ready");
  // Begun on 2026-12-01: by coreutils' date, 35 days later it is 2027-01-05.
  CHECK_THAT(studio.refused({{"ready_on", "2027-01-04"}}), Contains("to cure for 35 days"));
  studio.set({{"ready_on", "2027-01-04"}}, {"2027-01-04"});
  studio.set({{"ready_on", "2027-01-05"}});  // may be still to come
  CHECK(why_not("2026-12-29") == "is ready on 2027-01-05");
  CHECK(for_sale(studio.notes(), "2027-01-05").is);
  // What is held back later is so at once, whatever was noted before.
  studio.set({{"held_back", "smells of nothing"}});
  CHECK(why_not("2027-01-05") == "is held back: smells of nothing");
  CHECK_THAT(studio.refused({{"ready_on", "2027-01-06"}}), Contains("held back"));
  studio.set({{"held_back", ""}, {"tested", "hold"}});
  CHECK(why_not("2027-01-05") == "is on hold by its test");
  studio.set({{"tested", ""}});
  CHECK(why_not("2027-01-05") == "has no test result");
}

TEST_CASE("a question about a value says what answers it") {
  Studio studio;
  try {
    studio.set({{"base.made", "10 kg"}});
    FAIL("not asked");
  } catch (const Question& question) {
    CHECK(question.in_parts().asks == "confirmed");
  }
}
