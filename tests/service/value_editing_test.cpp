#include "schemas/value_editing.h"

#include <catch2/catch.hpp>

using namespace brimwright::schemas;

// A studio's file as somebody writes it, with her own blanks and order: each expected text differs
// from it in the one place that is said, by eye.
const std::string studio = R"({
  "schema": "brimwright.studio/1",
  "losses": {
    "pour": { "pot":"20 g",   "jugs": "15 g" }
  },
  "note": "\"pot\": mine"
}
)";

TEST_CASE("a value is replaced where it stands and nothing else is touched", "[schemas]") {
  CHECK(with_value(studio, {"losses", "pour", "pot"}, "\"25.3 g\"") == R"({
  "schema": "brimwright.studio/1",
  "losses": {
    "pour": { "pot":"25.3 g",   "jugs": "15 g" }
  },
  "note": "\"pot\": mine"
}
)");
}

TEST_CASE("what is not there yet comes last in its object, set off as its neighbours",
          "[schemas]") {
  CHECK(with_value(studio, {"losses", "pipe", "bag"}, "\"9 g\"") == R"({
  "schema": "brimwright.studio/1",
  "losses": {
    "pour": { "pot":"20 g",   "jugs": "15 g" },
    "pipe": { "bag": "9 g" }
  },
  "note": "\"pot\": mine"
}
)");
  CHECK(with_value("{}", {"a"}, "1") == R"({ "a": 1 })");
  CHECK(with_value(R"({"a":1})", {"b", "c"}, "2") == R"({"a":1, "b": { "c": 2 }})");
}

TEST_CASE("taking out what was put in gives the text as it was, to the letter", "[schemas]") {
  for (const KeyPath& path :
       {KeyPath{"losses", "pour", "learned"}, KeyPath{"losses", "pipe"}, KeyPath{"hand"}})
    CHECK(without_value(with_value(studio, path, R"({ "x": [1, "}"] })"), path) == studio);
  CHECK(without_value(studio, {"losses", "pipe", "bag"}) == studio);
}
