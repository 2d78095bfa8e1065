#include "reports/text_table.h"

#include "reports/json_numbers.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <sstream>

using namespace brimwright::reports;

namespace {

std::vector<std::string> lines_of(const std::string& text) {
  std::vector<std::string> lines;
  std::istringstream in(text);
  for (std::string line; std::getline(in, line);) lines.push_back(line);
  return lines;
}

}  // namespace

TEST_CASE("columns line up by characters, not bytes", "[reports]") {
  TextTable table({TextTable::Side::left, TextTable::Side::right});
  table.row({"Öl", "1 g"});
  table.row({"Kokos", "12 g"});
  CHECK(table.text() == "  Öl      1 g\n  Kokos  12 g\n");
}

TEST_CASE("no line for people is wider than 80 columns, whatever the names", "[reports][law]") {
  rc::prop("tables and paragraphs of short words fit the page", [] {
    std::string name;
    const int words = *rc::gen::inRange(1, 60);
    for (int i = 0; i < words; ++i)
      name += (i > 0 ? " " : "") + std::string(*rc::gen::inRange<std::size_t>(1, 14), 'x');
    TextTable table({TextTable::Side::left, TextTable::Side::right, TextTable::Side::left});
    table.row({name, "123.4 g", "about 1.5 tsp"});
    for (const auto& line : lines_of(table.text())) RC_ASSERT(shown_width(line) <= page_width);
    for (const auto& line : lines_of(wrapped(name, " ! ", "   ")))
      RC_ASSERT(shown_width(line) <= page_width);
  });
}

TEST_CASE("nothing of a name is lost when it is broken over lines", "[reports]") {
  TextTable table({TextTable::Side::left, TextTable::Side::right});
  std::string name = "one";
  for (int i = 0; i < 30; ++i) name += " word" + std::to_string(i);
  table.row({name, "1 g"});
  const std::string text = table.text();
  for (int i = 0; i < 30; ++i) CHECK(text.find("word" + std::to_string(i)) != std::string::npos);
}

TEST_CASE("JSON numbers are the nearest to what is printed", "[reports]") {
  // IEEE 754: 3 x 0.1 is 0.30000000000000004, which is not the double nearest to 0.3.
  const double three_steps = 3 * 0.1;
  REQUIRE(three_steps != 0.3);
  CHECK(to_decimals(three_steps, 3) == 0.3);
}
