#include "units/shown_text.h"

#include "units/user_error.h"

#include <catch2/catch.hpp>

#include <string>

using namespace brimwright;

TEST_CASE("a name cannot move the cursor, ring the bell or turn the line round", "[units]") {
  const auto [name, shown] = GENERATE(table<std::string, std::string>({
      {"\x1b[2J\x1b]0;x\a", "\\x1b[2J\\x1b]0;x\\x07"},
      {std::string("nul\0byte", 8), "nul\\x00byte"},
      {"del\x7f", "del\\x7f"},
      {"\u009b31m", "\\x9b31m"},  // the control sequence introducer of C1, as UTF-8
      {"\u202e7 g\u202c", "\\u202e7 g\\u202c"},
      {"\u2066x\u2069", "\\u2066x\\u2069"},
      {"\r5 g", "\\x0d5 g"},
      {"raw \x9b and \xff", "raw \uFFFD and \uFFFD"},  // no UTF-8
      {"\xed\xa0\x80", "\uFFFD\uFFFD\uFFFD"},          // half a surrogate pair
      {"\xc0\x9b", "\uFFFD\uFFFD"},                    // an overlong form
      {"cut \xe2\x80", "cut \uFFFD\uFFFD"},            // the last character is not whole
      {"Größe ½ 日本 🧼 \u200f",
       "Größe ½ 日本 🧼 \u200f"},  // what is only foreign stays
  }));
  CAPTURE(shown);
  CHECK(for_terminal(name) == shown);
  CHECK(on_one_line(name) == shown);
}

TEST_CASE("a table keeps its lines, a complaint becomes one", "[units]") {
  CHECK(for_terminal("a\n\tb") == "a\n\tb");
  CHECK(on_one_line("a\n\tb\u2028c") == "a\\x0a\\x09b\\u2028c");
  const UserError error({"a\nb.json", "/x\x1b[1m"}, "is \"\u202e\"", "mend\nit");
  CHECK(std::string(error.what()) == "a\\x0ab.json: /x\\x1b[1m: is \"\\u202e\"; mend\\x0ait");
}

TEST_CASE("a long text is cut between characters and keeps both its ends", "[units]") {
  CHECK(shortened("öäü", 3) == "öäü");
  CHECK(shortened("ööööööööööööüüü", 12) == "öööööö … üüü");
  CHECK(characters_in(shortened(std::string(100'000, 'x'), 80)) == 80);
  CHECK(characters_in("ö\xff日") == 3);
}
