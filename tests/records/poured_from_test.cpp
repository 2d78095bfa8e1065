#include "records/poured_from.h"

#include "begun.h"
#include "scratch_folder.h"

#include <catch2/catch.hpp>

namespace brimwright::records {
namespace {

TEST_CASE("what is poured from a base has its part of that, and all parts are the whole") {
  const ScratchFolder folder;
  auto records = Records::kept_in(folder.path());
  act(records, [&] {
    const Batch base = begun(records, "base", 0);
    for (int i = 1; i <= 3; ++i)
      pour_from(records, {.batch = begun(records, "line " + std::to_string(i)).id,
                          .base = base.id,
                          .place = i,
                          .takes = 7'000'001LL * i});
  });
  const auto lines = poured_of(records, "base");
  REQUIRE(lines.size() == 3);
  trade::Fraction all = 0;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    CHECK(lines[i].batch == "line " + std::to_string(i + 1));
    CHECK(poured_from(records, lines[i].batch)->base == "base");
    all += part_of_base(records, lines[i]);
  }
  CHECK(all == 1);
  CHECK(part_of_base(records, lines[2]) == trade::Fraction(1) / 2);  // 3 of 1 + 2 + 3
  CHECK(all_bases(records) == std::set<std::string>{"base"});
  CHECK_FALSE(poured_from(records, "base"));
  CHECK(poured_of(records, "line 1").empty());
}

TEST_CASE("what a batch was poured from never changes") {
  const ScratchFolder folder;
  auto records = Records::kept_in(folder.path());
  act(records, [&] {
    const Batch base = begun(records, "base", 0);
    pour_from(records, {.batch = begun(records, "line").id, .base = base.id});
  });
  auto& connection = records.database().connection();
  CHECK_THROWS(connection.exec("UPDATE poured_from SET takes = 2"));
  CHECK_THROWS(connection.exec("DELETE FROM poured_from"));
  CHECK_THROWS(connection.exec("INSERT INTO poured_from VALUES ('line', 'base', 2, 5)"));
  CHECK_THROWS(connection.exec("INSERT INTO poured_from VALUES ('nobody', 'base', 2, 5)"));
  CHECK_THROWS(connection.exec("INSERT INTO poured_from VALUES ('base', 'base', 2, 5)"));
  CHECK(poured_of(records, "base").size() == 1);
}

}  // namespace
}  // namespace brimwright::records
