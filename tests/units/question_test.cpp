#include "units/question.h"

#include <catch2/catch.hpp>

using namespace brimwright;

namespace {

const UserTerms options = {
    .place =
        [](const std::string& member) {
          return Place{"command line", "--" + member};
        },
    .say = [](const Answer& answer) { return "--" + answer.member + " " + answer.value; },
    .one = "option"};

const UserTerms keys = {.place =
                            [](const std::string& member) {
                              return Place{"cup.json", "/mesh/" + member};
                            },
                        .say = [](const Answer& answer) { return "\"" + answer.member + "\""; },
                        .one = "key",
                        .are_keys = true};

const Question which_role({.file = "cup.stl",
                           .field = "",
                           .asks = "role",
                           .problem = "may be a mould",
                           .remedy = "say " + Answer{"role", "body"} + " if it is one" +
                                     Words::outside_a_file(" (a file has it too)"),
                           .choices = {{{{"role", "body"}}}}});

}  // namespace

TEST_CASE("a question is worded for whoever asked", "[units]") {
  CHECK(which_role.in(options).what() ==
        std::string("cup.stl: may be a mould; say --role body if it is one (a file has it too)"));
  CHECK(which_role.in(keys).parts().remedy == "say \"role\" if it is one");
}

TEST_CASE("a question that nobody has worded is still a complaint in words", "[units]") {
  try {
    throw which_role;
  } catch (const UserError& error) {
    CHECK(error.parts().remedy == "say role \"body\" if it is one (a file has it too)");
  }
}

TEST_CASE("what is worded keeps what may be said as values", "[units]") {
  const Question worded = which_role.in(options).in(keys);
  CHECK(worded.parts().remedy == which_role.in(options).parts().remedy);
  REQUIRE(worded.in_parts().choices.size() == 1);
  CHECK(worded.in_parts().choices[0].answers[0].value == "body");
  CHECK(worded.in_parts().asks == "role");
}

TEST_CASE("advice becomes remarks, each with its severity", "[units]") {
  const auto remarks =
      remarks_in(options, {{Severity::caution, "say " + Answer{"up", "+y"} + "."}});
  REQUIRE(remarks.size() == 1);
  CHECK(remarks[0].severity == Severity::caution);
  CHECK(remarks[0].text == "say --up +y.");
}
