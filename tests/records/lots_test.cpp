#include "records/lots.h"

#include "begun.h"
#include "records/batch_cost.h"
#include "records/lot_use.h"
#include "scratch_folder.h"
#include "units/question.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <filesystem>
#include <map>

using namespace brimwright;
using namespace brimwright::records;
using Catch::Matchers::Contains;
using trade::Amount;

namespace {

constexpr auto today = "2026-11-14";
constexpr std::int64_t a_gram = 1'000'000;

Amount g(std::int64_t grams) { return Amount::micrograms(grams * a_gram); }

Lot lot(const std::string& code, std::int64_t grams, const std::string& bought_on,
        std::optional<std::string> best_before = {}, const std::string& material = "olive") {
  return {.id = code + " of " + bought_on,
          .code = code,
          .material = material,
          .bought_on = bought_on,
          .best_before = std::move(best_before),
          .pack = std::to_string(grams) + " g",
          .holds = g(grams)};
}

Weighed olive(std::int64_t grams, const std::string& row = "pour.fats.olive") {
  return {.row = row, .material = "olive", .shown = "Olive oil", .amount = g(grams)};
}

/// A studio with these lots and one batch.
struct Shelf {
  explicit Shelf(const std::vector<Lot>& lots) {
    records.database().connection().exec("PRAGMA synchronous = OFF");  // hundreds of cases
    act(records, [&] {
      for (const Lot& one : lots) add_lot(records, one);
      begun(records, "batch");
    });
  }
  std::vector<Remark> use(const std::vector<Weighed>& rows, const FromLots& wishes = {}) {
    std::vector<Remark> remarks;
    act(records, [&] { remarks = use_lots(records, "batch", today, rows, wishes); });
    return remarks;
  }
  std::map<std::string, std::int64_t> left() const {  // grams, by code
    std::map<std::string, std::int64_t> left;
    for (const StandingLot& one : lots_of(records, {"olive", "coconut"}))
      left[one.lot.code] += one.left / a_gram;
    return left;
  }

  /// Copied, since making a file waits for the disk.
  static const std::filesystem::path& copied_into(const std::filesystem::path& folder) {
    static const ScratchFolder first;
    Records::kept_in(first.path());
    std::filesystem::copy_file(first.path() / file_name, folder / file_name);
    return folder;
  }

  ScratchFolder folder;
  Records records = Records::kept_in(copied_into(folder.path()));
};

std::string question_of(Shelf& shelf, const std::vector<Weighed>& rows,
                        const FromLots& wishes = {}) {
  try {
    shelf.use(rows, wishes);
  } catch (const Question& question) {
    return question.what();
  }
  return "";
}

}  // namespace

TEST_CASE("a lot is read as it was written") {
  Lot whole = lot("CO-117", 5000, "2026-11-02", "2027-05-31");
  whole.make = "Goldmill olive";
  whole.seller = "Oil mill";
  whole.packs = 2;
  whole.paid = Money{5500, {"EUR", 2}};
  const Shelf shelf({whole});
  const auto read = lots_called(shelf.records, "co-117");
  REQUIRE(read.size() == 1);
  CHECK(read[0].lot.make == "Goldmill olive");
  CHECK(read[0].lot.seller == "Oil mill");
  CHECK(read[0].lot.bought_on == "2026-11-02");
  CHECK(read[0].lot.best_before == "2027-05-31");
  CHECK(read[0].lot.packs == 2);
  CHECK(read[0].lot.pack == "5000 g");
  CHECK(read[0].lot.holds == g(5000));
  CHECK(read[0].lot.paid == Money{5500, {"EUR", 2}});
  CHECK(read[0].left == 5000 * a_gram);
  // By the goods' own name too, since a formula may name them so.
  CHECK(lots_of(shelf.records, {"Goldmill olive"}).size() == 1);
  CHECK(materials_of_lots(shelf.records) == std::vector<std::string>{"Goldmill olive", "olive"});
}

TEST_CASE(
    "what is best before an earlier day goes first, then the older, and what has no day last") {
  Shelf shelf({lot("undated", 100, "2026-01-01"), lot("late", 100, "2026-02-01", "2027-06-01"),
               lot("soon", 100, "2026-10-01", "2027-01-01"),
               lot("soon, older", 100, "2026-09-01", "2027-01-01")});
  shelf.use({olive(150)});
  CHECK(shelf.left() == std::map<std::string, std::int64_t>{
                            {"soon, older", 0}, {"soon", 50}, {"late", 100}, {"undated", 100}});
  shelf.use({olive(150), olive(200, "pipe.fats.olive")});
  CHECK(shelf.left() == std::map<std::string, std::int64_t>{
                            {"soon, older", 0}, {"soon", 0}, {"late", 0}, {"undated", 50}});
}

TEST_CASE("a lot past its best-before day is named, and taken only where it is chosen") {
  Shelf shelf({lot("old", 500, "2026-01-01", "2026-11-13"), lot("new", 500, "2026-11-01")});
  SECTION("passed over") {
    const auto remarks = shelf.use({olive(300)});
    REQUIRE(remarks.size() == 1);
    CHECK(remarks[0].severity == Severity::caution);
    CHECK_THAT(remarks[0].text, Contains("Lot old") && Contains("2026-11-13"));
    CHECK(shelf.left()["old"] == 500);
  }
  SECTION("chosen by the material, by what people call it, by the row") {
    for (const char* name : {"olive", "Olive oil", "pour.fats.olive"}) {
      shelf.use({olive(300)}, {.chosen = {{name, {"OLD"}}}});
      CHECK(shelf.left() == std::map<std::string, std::int64_t>{{"old", 200}, {"new", 500}});
    }
  }
  SECTION("needed for what is short") {
    CHECK_THAT(question_of(shelf, {olive(600)}),
               Contains("600.0 g are needed") && Contains("500.0 g of lot new are left") &&
                   Contains("500.0 g of lot old, past its best-before day"));
    shelf.use({olive(600)}, {.chosen = {{"olive", {"old", "new"}}}});
    CHECK(shelf.left() == std::map<std::string, std::int64_t>{{"old", 0}, {"new", 400}});
  }
  SECTION("on the day itself it is not past") {
    act(shelf.records, [&] { add_lot(shelf.records, lot("day", 50, "2026-01-01", today)); });
    CHECK(shelf.use({olive(40)}).size() == 1);
    CHECK(shelf.left()["day"] == 10);
  }
}

TEST_CASE("more than is left is asked about, all that is short at once, and nothing is taken") {
  Shelf shelf({lot("CO-117", 800, "2026-10-01", {}, "coconut"), lot("OL-1", 100, "2026-10-01")});
  const Weighed coconut{
      .row = "pour.fats.coconut", .material = "coconut", .shown = "Coconut", .amount = g(1264)};
  const std::string asked = question_of(shelf, {coconut, olive(300)});
  CHECK_THAT(asked,
             Contains("of Coconut 1264 g are needed, and only 800.0 g of lot CO-117 are left"));
  CHECK_THAT(asked, Contains("of Olive oil 300.0 g") && Contains("beyond-stock \"CO-117\""));
  CHECK(shelf.left() == std::map<std::string, std::int64_t>{{"CO-117", 800}, {"OL-1", 100}});
  CHECK(used_by(shelf.records, "batch").empty());
  SECTION("and taken of the lot that she names") {
    shelf.use({coconut, olive(300)}, {.beyond = {"co-117", "OL-1"}});
    CHECK(shelf.left() == std::map<std::string, std::int64_t>{{"CO-117", -464}, {"OL-1", -200}});
  }
  SECTION("or is of no lot that she could tell") {
    shelf.use({coconut, olive(300)},
              {.chosen = {{"coconut", {unknown_lot}}, {"olive", {unknown_lot}}}});
    CHECK(shelf.left() == std::map<std::string, std::int64_t>{{"CO-117", 800}, {"OL-1", 100}});
    CHECK(used_by(shelf.records, "batch")[0].unknown() == 1264 * a_gram);
  }
}

TEST_CASE("a lot that came after the batch was begun is not what it was made of, unless chosen") {
  Shelf shelf({lot("next", 500, "2026-11-15")});
  SECTION("none was there") {
    const auto remarks = shelf.use({olive(300)});
    REQUIRE(remarks.size() == 1);
    CHECK_THAT(remarks[0].text, Contains("unknown lot: lot next came on 2026-11-15"));
    CHECK(used_by(shelf.records, "batch")[0].unknown() == 300 * a_gram);
    CHECK(shelf.left()["next"] == 500);
  }
  SECTION("too little was there") {
    act(shelf.records, [&] { add_lot(shelf.records, lot("first", 200, "2026-11-01")); });
    CHECK_THAT(question_of(shelf, {olive(300)}),
               Contains("only 200.0 g of lot first are left") &&
                   Contains("500.0 g of lot next, which came after 2026-11-14"));
    shelf.use({olive(300)}, {.chosen = {{"olive", {"first", "next"}}}});
    CHECK(shelf.left() == std::map<std::string, std::int64_t>{{"first", 0}, {"next", 400}});
  }
}

TEST_CASE("what there never was a lot of is of an unknown lot, and no question") {
  Shelf shelf({lot("CO-117", 800, "2026-10-01", {}, "coconut")});
  CHECK(shelf.use({olive(300)}).empty());
  const auto rows = used_by(shelf.records, "batch");
  REQUIRE(rows.size() == 1);
  CHECK(rows[0].takes.empty());
  CHECK(rows[0].unknown() == 300 * a_gram);
}

TEST_CASE("a slip in what is chosen is told") {
  Shelf shelf({lot("CO-117", 800, "2026-10-01", {}, "coconut"), lot("OL-1", 500, "2026-10-01")});
  CHECK_THAT(question_of(shelf, {olive(3)}, {.chosen = {{"olive", {"CO-117"}}}}),
             Contains("\"CO-117\" is no lot of Olive oil; of it there are OL-1"));
  CHECK_THAT(question_of(shelf, {olive(3)}, {.chosen = {{"olvie", {"OL-1"}}}}),
             Contains("did you mean \"olive\"?"));
  CHECK_THAT(question_of(shelf, {olive(3)}, {.beyond = {"CO-117"}}),
             Contains("is no lot of anything that this batch weighs"));
}

TEST_CASE("goods that serve as a material are taken for it, a count never for a weight") {
  Lot make = lot("G-1", 400, "2026-10-01", {}, "Goldmill olive");
  Lot counted = lot("P-1", 1, "2026-09-01");
  counted.holds = Amount::pieces(100);
  Shelf shelf({make, counted});
  Weighed row = olive(300);
  row.served_by = {"Goldmill olive"};
  shelf.use({row});
  CHECK(lots_called(shelf.records, "G-1")[0].left == 100 * a_gram);
  CHECK(lots_called(shelf.records, "P-1")[0].left == 100);
}

TEST_CASE("what was really weighed takes the place of what was planned, of the same lots") {
  Shelf shelf({lot("first", 200, "2026-10-01"), lot("second", 500, "2026-10-02")});
  shelf.use({olive(300)});
  CHECK(shelf.left() == std::map<std::string, std::int64_t>{{"first", 0}, {"second", 400}});
  shelf.use({olive(150)});
  CHECK(shelf.left() == std::map<std::string, std::int64_t>{{"first", 50}, {"second", 500}});
  shelf.use({olive(310)}, {.chosen = {{"olive", {"second"}}}});
  shelf.use({olive(320)});
  CHECK(shelf.left() == std::map<std::string, std::int64_t>{{"first", 200}, {"second", 180}});
  shelf.use({olive(900)}, {.beyond = {"second"}});
  shelf.use({olive(905)});  // she has said so before
  CHECK(shelf.left()["first"] + shelf.left()["second"] == -205);
}

TEST_CASE("a count corrects: what is missing is the first to be taken, what is too much the last") {
  Shelf shelf({lot("X", 500, "2026-10-01"), lot("X", 300, "2026-10-05")});
  const auto count = [&](std::int64_t grams) {
    act(shelf.records, [&] {
      count_lots(shelf.records, lots_called(shelf.records, "X"), g(grams), today, "spilt");
    });
    std::vector<std::int64_t> left;
    for (const auto& one : lots_called(shelf.records, "X")) left.push_back(one.left / a_gram);
    return left;
  };
  CHECK(count(600) == std::vector<std::int64_t>{300, 300});
  CHECK(count(250) == std::vector<std::int64_t>{0, 250});
  CHECK(count(400) == std::vector<std::int64_t>{0, 400});
  const auto changes = changes_of_lot(shelf.records, lots_called(shelf.records, "X")[1].lot.id);
  REQUIRE(!changes.empty());
  CHECK(changes.back().why == "spilt");
  CHECK(changes.back().what == LotChange::What::counted);
}

TEST_CASE("her own codes count up, and leave out what others call theirs") {
  Shelf shelf(
      {lot("L7", 1, "2026-10-01"), lot("LX-9", 1, "2026-10-01"), lot("12", 1, "2026-10-01")});
  CHECK(own_code(shelf.records) == "L8");
}

TEST_CASE("what a batch did cost is by the lots it was taken from, to the fraction of a coin") {
  Lot dear = lot("dear", 300, "2026-10-01"), cheap = lot("cheap", 700, "2026-10-02");
  dear.paid = Money{1000, {"EUR", 2}};
  cheap.paid = Money{1000, {"EUR", 2}};
  Lot unpriced = lot("gift", 100, "2026-10-03", {}, "coconut");
  Lot made = lot("jug", 400, "2026-10-04", {}, "The jug");
  made.origin = Lot::Origin::made;
  Shelf shelf({dear, cheap, unpriced, made});
  act(shelf.records, [&] {
    use_for_lot(shelf.records, cheap, g(100), made);
    use_for_lot(shelf.records, unpriced, g(50), made);
  });
  shelf.use({olive(400),
             {.row = "j", .material = "The jug", .shown = "The jug", .amount = g(200)},
             {.row = "m", .material = "mica", .shown = "Mica", .amount = g(1)},
             {.row = "w", .material = "water", .shown = "Water", .amount = g(200)}});
  const PaidCost cost = cost_of(shelf.records, used_by(shelf.records, "batch"));
  REQUIRE(cost.sums.size() == 1);
  // By hand: 300/300 of 10 EUR, 100/700 of 10 EUR, and half of the jug's 100/700 of 10 EUR.
  CHECK(cost.sums[0].coins ==
        trade::Fraction(1000) + trade::Fraction(1000) / 7 + trade::Fraction(1000) / 14);
  CHECK(cost.unpriced == std::vector<std::string>{"coconut (lot gift)", "Mica (lot unknown)"});
}

namespace {

/// Lots of two materials, some without a day, some past it.
rc::Gen<std::vector<Lot>> some_lots() {
  return rc::gen::exec([] {
    std::vector<Lot> lots;
    const int count = *rc::gen::inRange(0, 8);
    for (int i = 0; i < count; ++i) {
      const std::string month = std::to_string(*rc::gen::inRange(10, 13));
      std::optional<std::string> day;
      if (*rc::gen::arbitrary<bool>()) day = "2026-" + month + "-14";
      lots.push_back(lot("lot " + std::to_string(i), *rc::gen::inRange(1, 500),
                         "2026-" + month + "-01", day,
                         *rc::gen::element<std::string>("olive", "coconut")));
    }
    return lots;
  });
}

rc::Gen<std::vector<Weighed>> some_rows() {
  return rc::gen::exec([] {
    std::vector<Weighed> rows;
    const int count = *rc::gen::inRange(1, 5);
    for (int i = 0; i < count; ++i) {
      const auto material = *rc::gen::element<std::string>("olive", "coconut");
      rows.push_back({.row = "row " + std::to_string(i),
                      .material = material,
                      .shown = material,
                      .amount = Amount::micrograms(*rc::gen::inRange(0, 300'000'000))});
    }
    return rows;
  });
}

}  // namespace

TEST_CASE("what lots were taken for is what batches weighed, and stock is never negative",
          "[law]") {
  rc::prop("unless she was asked", [] {
    const auto lots = *some_lots();
    const auto rows = *some_rows();
    Shelf shelf(lots);
    bool was_asked = false;
    FromLots wishes;
    try {
      shelf.use(rows, wishes);
    } catch (const Question&) {
      was_asked = true;
      for (const Lot& one : lots)
        if (std::any_of(rows.begin(), rows.end(),
                        [&](const Weighed& row) { return row.material == one.material; }))
          wishes.beyond.insert(one.code);
      shelf.use(rows, wishes);
    }
    std::map<std::string, std::int64_t> weighed, taken;
    for (const RowUse& one : used_by(shelf.records, "batch")) {
      weighed[one.weighed.material] += one.weighed.amount.whole();
      taken[one.weighed.material] += one.weighed.amount.whole() - one.unknown();
      RC_ASSERT(one.takes.empty() || one.unknown() == 0);
    }
    for (const auto& material : {"olive", "coconut"}) {
      std::int64_t bought = 0, left = 0;
      bool is_there = false;
      for (const StandingLot& one : lots_of(shelf.records, {material})) {
        is_there |= was_asked || one.lot.bought_on <= today;
        bought += one.lot.holds.whole();
        left += one.left;
        RC_ASSERT(was_asked || one.left >= 0);
        RC_ASSERT(was_asked || one.left == one.lot.holds.whole() || !one.lot.is_past(today));
      }
      RC_ASSERT(bought - left == taken[material]);
      RC_ASSERT(taken[material] == (is_there ? weighed[material] : 0));
    }
  });
}

TEST_CASE("a lot is touched only once all before it are empty", "[law]") {
  rc::prop("of those that are fit", [] {
    const auto lots = *some_lots();
    Shelf shelf(lots);
    try {
      shelf.use(*some_rows());
    } catch (const Question&) {
      RC_DISCARD("too little");
    }
    for (const auto& material : {"olive", "coconut"}) {
      const auto after = lots_of(shelf.records, {material});
      for (std::size_t i = 0; i + 1 < after.size(); ++i) {
        RC_ASSERT(goes_before(after[i].lot, after[i + 1].lot));
        if (after[i].lot.is_past(today) || after[i].lot.bought_on > today) continue;
        for (std::size_t j = i + 1; j < after.size(); ++j)
          RC_ASSERT(after[i].left == 0 || after[j].left == after[j].lot.holds.whole());
      }
    }
  });
}

TEST_CASE("weighed anew, it is as though it had been weighed so at once", "[law]") {
  rc::prop("in what is left of each material", [] {
    const auto lots = *some_lots();
    auto first = *some_rows(), last = first;
    for (Weighed& row : last) row.amount = Amount::micrograms(*rc::gen::inRange(0, 300'000'000));
    Shelf once(lots), twice(lots);
    try {
      once.use(last);
      twice.use(first);
      twice.use(last);
    } catch (const Question&) {
      RC_DISCARD("too little");
    }
    for (const auto& material : {"olive", "coconut"}) {
      const auto left = [&](const Shelf& shelf) {
        std::int64_t sum = 0;
        for (const auto& one : lots_of(shelf.records, {material})) sum += one.left;
        return sum;
      };
      RC_ASSERT(left(once) == left(twice));
    }
  });
}
