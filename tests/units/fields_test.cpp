#include "units/fields.h"

#include <catch2/catch.hpp>

using namespace brimwright;
using Catch::Matchers::Contains;

namespace {

std::string complaint_of(const std::function<void()>& act) {
  try {
    act();
  } catch (const UserError& error) {
    return error.what();
  }
  return "";
}

}  // namespace

TEST_CASE("a slip in a key is told with the nearest known name", "[units]") {
  const Fields mould = Fields::parse(R"({"wal_mm": "2 mm"})", "moulds/cup.json");
  mould.has("wall_mm");
  CHECK(complaint_of([&] { mould.refuse_unknown(); }) ==
        "moulds/cup.json: /wal_mm: not known; did you mean \"wall_mm\"?");
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
}

TEST_CASE("what a JSON library would let through is refused", "[units]") {
  std::string deep(100, '[');
  const auto [text, said] = GENERATE_COPY(table<std::string, std::string>({
      {R"({"a": 1, "a": 2})", "the key \"a\" stands twice"},
      {"[1]", "it must hold one object"},
      {"", "is not JSON"},
      {"\"x\"", "it must hold one object"},
      {"{\"a\": 1e999}", "a number that is too large"},
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

TEST_CASE("a file that cannot be read says why", "[units]") {
  CHECK_THAT(complaint_of([] { Fields::read("no/such/run.json"); }),
             Contains("there is no such file"));
  CHECK_THAT(complaint_of([] { Fields::read("/"); }), Contains("is not a file that can be read"));
}
