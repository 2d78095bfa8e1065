#include "units/fields.h"

#include "complaint.h"
#include "units/guarded_json.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <cmath>

using namespace brimwright;
using brimwright::test::complaint_of;
using Catch::Matchers::Contains;

TEST_CASE("a slip in a key is told with the nearest known name", "[units]") {
  const Fields mould = Fields::parse(R"({"wal_mm": "2 mm"})", "moulds/cup.json");
  mould.has("wall_mm");
  CHECK(complaint_of([&] { mould.refuse_unknown(); }) ==
        "moulds/cup.json: /wal_mm: unknown key; did you mean \"wall_mm\"?");
}

TEST_CASE("a misspelt key was told only after the missing one had been given", "[units]") {
  const Fields run = Fields::parse(R"({"spoilge": "4 %", "nme": "x"})", "run.json");
  CHECK(
      complaint_of([&] { run.share("spoilage", Share{}, whole); }) ==
      "run.json: /spoilage: is missing, and \"spoilge\" is not known (\"spoilage\"?); correct the "
      "spelling, or give it with its unit, such as \"5 %\"");
  // Where the reader says what may stand there, all that may not is told at once.
  run.may_hold({"name", "spoilage", "note"});
  CHECK_THAT(complaint_of([&] { run.share("spoilage", Share{}, whole); }),
             Contains("\"spoilge\" is not known (\"spoilage\"?)") &&
                 Contains("\"nme\" is not known (\"name\"?)"));
  const Fields plain = Fields::parse(R"({"note": "x"})", "run.json");
  plain.may_hold({"name", "spoilage", "note"});
  CHECK(complaint_of([&] { plain.name("name"); }) == "run.json: /name: is missing; give a text");
}

TEST_CASE("of two misspelt keys only the first was told", "[units]") {
  const Fields run = Fields::parse(R"({"nme": "x", "spoilge": "4 %"})", "run.json");
  run.has("name");
  run.has("spoilage");
  CHECK(complaint_of([&] { run.refuse_unknown(); }) ==
        "run.json: /nme: unknown key, and \"spoilge\" is not known (\"spoilage\"?); did you mean "
        "\"name\"?");
}

TEST_CASE("a negative share was told to be above zero, where zero is allowed", "[units]") {
  const Fields f = Fields::parse(R"({"s": "-3 %", "u": "\u22123 %", "m": "-3 g"})", "run.json");
  CHECK(complaint_of([&] { f.share("s", Share{}, 50 * percent); }) ==
        "run.json: /s: \"-3 %\" is negative; give 0 or more: a share from 0 to 50 %");
  CHECK_THAT(complaint_of([&] { f.share("u", Share{}, 50 * percent); }), Contains("is negative"));
  CHECK_THAT(complaint_of([&] { f.share("s", 10 * percent, whole); }),
             Contains("give a share from 10 to 100 %") && !Contains("0 or more"));
  CHECK_THAT(complaint_of([&] { f.mass("m"); }), Contains("is negative; give 0 or more"));
}

TEST_CASE("a value once confirmed covered every later one", "[units]") {
  const auto confirms = [](const std::string& confirmed) {
    return Fields::parse(R"({"value": 257, "confirmed": )" + confirmed + "}", "f.json")
        .confirms_value_of("value");
  };
  CHECK(confirms("true"));
  CHECK(confirms("257"));
  CHECK(confirms("257.0"));
  CHECK_FALSE(confirms("false"));
  CHECK_THROWS_WITH(confirms("256"),
                    Contains("/confirmed: is the bare number 256, but \"value\" is "
                             "the bare number 257"));
  CHECK_THROWS_WITH(confirms("\"yes\""), Contains("/confirmed"));
}

TEST_CASE("a complaint points into the file with a JSON pointer", "[units]") {
  const Fields run = Fields::parse(R"({"a/b": {"c": [{"d": 5}]}})", "run.json");
  const Fields inner = run.object("a/b").objects("c").at(0);
  // RFC 6901: "/" inside a key is written ~1.
  CHECK(complaint_of([&] { inner.length("d"); }) ==
        "run.json: /a~1b/c/0/d: is the bare number 5 without a unit; write it with its unit in "
        "quotes, such as \"5 mm\"");
  CHECK_THAT(complaint_of([&] { inner.text("e"); }), Contains("/a~1b/c/0/e: is missing"));
}

TEST_CASE("a file that is no JSON is refused with line and column", "[units]") {
  CHECK_THAT(complaint_of([] { Fields::parse("{\n  \"a\": 1,\n  b\n}", "run.json"); }),
             Contains("run.json: line 3, column 3: is not JSON from here on"));
  CHECK_THAT(complaint_of([] { Fields::parse("solid cup\nfacet normal 0 0 1", "cup.stl"); }),
             Contains("cup.stl: is not a JSON file: it does not begin with {"));
}

TEST_CASE("what a JSON library would let through is refused", "[units]") {
  std::string deep(100, '[');
  const auto [text, said] = GENERATE_COPY(table<std::string, std::string>({
      {R"({"a": 1, "a": 2})", "the key \"a\" appears twice in one object"},
      {"[1]", "it must hold one object"},
      {"", "is empty"},
      {"\"x\"", "it must hold one object"},
      {"{\n\"a\": 1e999}", "holds a number that is too large"},
      {"{\"a\": NaN}", "is not JSON"},
      {"{\"a\": \"\xff\"}", "is not JSON"},
      {"{\"a\": " + deep, "nested deeper than 64"},
      {"{} {}", "is not JSON"},
  }));
  CAPTURE(text);
  CHECK_THAT(complaint_of([&] { Fields::parse(text, "run.json"); }), Contains(said));
}

TEST_CASE("values of the wrong kind are refused with what they are", "[units]") {
  const Fields f = Fields::parse(
      R"({"n": 1.5, "t": "x", "l": [1], "o": {}, "z": "0 mm", "d": "9 g/ml", "s": "31 %", "b": null})",
      "run.json");
  CHECK_THAT(complaint_of([&] { f.whole_number("n", 1, 9); }), Contains("give a whole number"));
  CHECK_THAT(complaint_of([&] { f.number("t"); }), Contains("is the text \"x\""));
  CHECK_THAT(complaint_of([&] { f.text("l"); }), Contains("is a list"));
  CHECK_THAT(complaint_of([&] { f.objects("o"); }), Contains("is an object"));
  CHECK_THAT(complaint_of([&] { f.positive_length("z"); }), Contains("is zero"));
  CHECK_THAT(complaint_of([&] { f.density("d"); }), Contains("between 0.3 and 3 g/ml"));
  CHECK_THAT(complaint_of([&] { f.share("s", Share{}, 30 * percent); }),
             Contains("from 0 to 30 %"));
  CHECK_THAT(complaint_of([&] {
               f.choice("t", {"cone", "dome"});
             }),
             Contains("\"cone\", \"dome\""));
  CHECK_THAT(complaint_of([&] { f.text("b"); }), Contains("is null"));
}

TEST_CASE("what is asked for is shown by an example that fits the field", "[units]") {
  const Fields mould = Fields::parse(R"({"length": 80, "open_time": "soon"})", "mould.json");
  CHECK_THAT(complaint_of([&] { mould.length("length", "80 mm"); }),
             Contains("such as \"80 mm\"") && !Contains("5 mm"));
  CHECK_THAT(complaint_of([&] { mould.length("width", "60 mm"); }), Contains("\"60 mm\""));
  CHECK_THAT(complaint_of([&] { mould.positive_short_time("open_time", "25 min"); }),
             Contains("\"25 min\"") && !Contains("20 s\""));
}

TEST_CASE("a mistyped choice or key is told the one that was meant, capitals or not", "[units]") {
  const Fields f = Fields::parse(R"({"alkali": "naoh", "where": "fat", "Name": "x"})", "f.json");
  CHECK_THAT(complaint_of([&] {
               f.choice("alkali", {"NaOH", "KOH"});
             }),
             Contains("did you mean \"NaOH\"?"));
  CHECK_THAT(complaint_of([&] {
               f.choice("where", {"lye", "fats", "batter"});
             }),
             Contains("did you mean \"fats\"?"));
  f.has("name");
  CHECK_THAT(complaint_of([&] { f.refuse_unknown(); }),
             Contains("/Name: unknown key; did you mean \"name\"?"));
  const Fields odd = Fields::parse(R"({"zzzzz": 1})", "f.json");
  odd.has("name");
  odd.has("note");
  CHECK(complaint_of([&] { odd.refuse_unknown(); }) ==
        "f.json: /zzzzz: unknown key; the keys allowed here are name, note");
}

TEST_CASE("a file that cannot be read says why", "[units]") {
  CHECK_THAT(complaint_of([] { Fields::read("no/such/run.json"); }),
             Contains("there is no such file"));
  CHECK_THAT(complaint_of([] { Fields::read("/"); }), Contains("is not a file that can be read"));
}

namespace {

/// An object of so many keys, each with the same beginning, as a crafted file would have them.
std::string object_of(std::size_t keys) {
  std::string text = "{";
  for (std::size_t i = 0; i < keys; ++i)
    text += (i > 0 ? ",\"key" : "\"key") + std::to_string(i * 7919 % keys) + "\":1";
  return text + "}";
}

JsonWork work_for(const std::string& text) {
  JsonWork work;
  parsed_json(text, "run.json", &work);
  return work;
}

std::string repeated(std::string_view text, std::size_t times) {
  std::string all;
  for (std::size_t i = 0; i < times; ++i) all += text;
  return all;
}

/// `{"key": [{}, {}, ... ]}`
std::string list_of(std::size_t objects) {
  return "{\"list\": [{}" + repeated(",{}", objects - 1) + "]}";
}

}  // namespace

TEST_CASE("a file of a hundred thousand keys takes no more comparisons than sorting them",
          "[units]") {
  // 0.96 MB of a run's keys took 8.5 s: each was compared with all before it, 5e9 comparisons.
  for (const std::size_t keys : {1'000u, 100'000u}) {
    const auto n = static_cast<double>(keys);
    // 2 n log2 n: introsort's own bound, with room for its constant.
    CHECK(static_cast<double>(work_for(object_of(keys)).comparisons) < 2 * n * std::log2(n));
  }
}

TEST_CASE("a list of many objects is put together object by object", "[units]") {
  // The library looked through the whole list after each object in it.
  const JsonWork work = work_for(list_of(80'000));
  CHECK(work.values == 80'002);  // each object once, the list, the document
  CHECK(work.comparisons == 0);
}

TEST_CASE("a file of more values than any file of this program has is refused", "[units]") {
  CHECK_THAT(complaint_of([] { Fields::parse(list_of(200'000), "run.json"); }),
             Contains("run.json: holds more than 200,000 values"));
}

TEST_CASE("keys keep the file's order and are found however many there are", "[units]") {
  const Fields run = Fields::parse(R"({"z": 1, "a": 2, "m": {"y": 3, "b": 4}})", "run.json");
  CHECK(run.json() == R"({"z":1,"a":2,"m":{"y":3,"b":4}})");
  CHECK(run.keys() == std::vector<std::string>{"z", "a", "m"});
  CHECK(run.object("m").number("b") == 4);
  CHECK_FALSE(run.has("b"));
  const Fields many = Fields::parse(object_of(2'000), "run.json");
  CHECK(many.keys().size() == 2'000);
  CHECK(many.number("key1999") == 1);
}

TEST_CASE("what is compared pair by pair is refused in lists longer than a bench has", "[units]") {
  CHECK(Fields::parse(list_of(200), "run.json").objects("list").size() == 200);
  CHECK(complaint_of([] { Fields::parse(list_of(201), "run.json").objects("list"); }) ==
        "run.json: /list: lists 201; at most 200 may stand here");
  CHECK(Fields::parse(list_of(201), "run.json").objects("list", 500).size() == 201);
  CHECK_THAT(complaint_of([] { Fields::parse(object_of(2'001), "run.json").keys(); }),
             Contains("has 2001 names; at most 2000"));
  const std::string numbers = "{\"list\": [1" + repeated(",1", 1'000) + "]}";
  CHECK_THAT(complaint_of([&] { Fields::parse(numbers, "run.json").numbers("list"); }),
             Contains("/list: lists 1001; at most 1000"));
}

TEST_CASE("no slip is looked for in a key of a thousand letters", "[units]") {
  const std::vector<std::string> known = {std::string(1'000, 'a'), "saponification_value"};
  CHECK(nearest_name("saponifcation_value", known) == "saponification_value");
  // One letter short of a known name, and still not compared letter by letter.
  CHECK_FALSE(nearest_name(std::string(999, 'a'), known));
  // A known name that is longer by more letters than a slip has.
  CHECK_FALSE(nearest_name("a", known));
}

TEST_CASE("a value of 100 kB is not echoed whole", "[units]") {
  const std::string big(100'000, 'x');
  const Fields run = Fields::parse(
      "{\"t\": \"" + big + "\", \"l\": [\"" + big + "\"], \"" + big + "\": 1}", "run.json");
  for (const auto& said :
       {complaint_of([&] { run.number("t"); }), complaint_of([&] { run.length("t"); }),
        complaint_of([&] {
          run.choice("t", {"cone", "dome"});
        }),
        complaint_of([&] { run.refuse_unknown(); }), complaint_of([&] { run.object(big); }),
        complaint_of([&] { run.name("t"); })}) {
    CAPTURE(said);
    CHECK(said.starts_with("run.json: /"));
    CHECK(said.size() < 1'500);
  }
  CHECK_THAT(complaint_of([&] { run.number("t"); }),
             Contains("xxx … xxx") && Contains("give a plain number"));
}

TEST_CASE("a name is one line of at most 200 characters", "[units]") {
  const auto named = [](const std::string& name) {
    return Fields::parse("{\"name\": \"" + name + "\"}", "run.json").name("name");
  };
  // Characters, not bytes: an umlaut is one.
  CHECK(named(repeated("ö", 200)) == repeated("ö", 200));
  CHECK(complaint_of([&] { named(repeated("ö", 201)); }) ==
        "run.json: /name: is 201 characters long; a name has at most 200");
  for (const char* line_end : {"\\n", "\\r", "\\u0085", "\\u2028"})
    CHECK_THAT(complaint_of([&] { named(std::string("Rose") + line_end + "0 g"); }),
               Contains("goes over more than one line"));
  CHECK_THAT(complaint_of([&] {
               Fields::parse("{\"" + std::string(201, 'k') + "\": 1}", "run.json").keys();
             }),
             Contains("is 201 characters long"));
}

TEST_CASE("a place below zero is read with a copied minus sign too", "[units]") {
  const Fields place =
      Fields::parse("{\"x\": \"-12 mm\", \"y\": \"\u221212 mm\", \"z\": \" -1/2 in\"}", "run.json");
  CHECK(place.signed_length("x") / millimetre == -12);
  CHECK(place.signed_length("y") / millimetre == -12);
  CHECK(place.signed_length("z") / millimetre == -12.7);
}
