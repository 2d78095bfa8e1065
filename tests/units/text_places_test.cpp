#include "units/text_places.h"

#include <catch2/catch.hpp>

using namespace brimwright;

TEST_CASE("a text that comes again is kept once, and has its place") {
  TextPlaces texts;
  CHECK(!texts.known("base.made"));
  CHECK(texts.place_of("base.made") == 0);
  CHECK(texts.place_of("") == 1);
  CHECK(texts.place_of("base.made") == 0);
  CHECK(texts.place_of("base.mad") == 2);
  CHECK(texts.known("base.mad") == 2);
  CHECK(!texts.known("base"));
  CHECK(texts[0] == "base.made");
  CHECK(texts[1].empty());
  CHECK(texts.size() == 3);
  for (int i = 0; i < 1000; ++i) texts.place_of(std::to_string(i));
  CHECK(texts[texts.place_of("999")] == "999");
  CHECK(texts.size() == 1003);
  const TextPlaces moved = std::move(texts);
  CHECK(moved.known("base.made") == 0);
  CHECK(moved.known("999") == 1002);
}
