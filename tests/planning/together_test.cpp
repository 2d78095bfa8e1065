#include "planning/together.h"

#include "planning/mixtures.h"
#include "planning/plan.h"
#include "sample_run.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <deque>
#include <numeric>

using namespace brimwright;
using namespace brimwright::planning;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;

namespace {

/// Runs of an order with what was measured of them, to be planned as one.
class Order {
 public:
  void add(Run run, std::int64_t sell) {
    auto& one = lines_.emplace_back(std::move(run));
    one.measured.emplace(measured(one.run));
    one.trials.emplace(one.run, *one.measured);
    const std::string at = "/lines/" + std::to_string(asked_.size()) + "/together";
    asked_.push_back({one.run, *one.measured, *one.trials, sell, {"paper.order.json", at}});
  }
  Together together() const { return plan_together(asked_); }
  Plan apart(std::size_t line) const {
    const auto& one = asked_[line];
    return plan_for(one.sell, one.run, one.measured, one.trials);
  }

 private:
  struct Line {
    explicit Line(Run run_of_it) : run(std::move(run_of_it)) {}
    Run run;
    std::optional<Measured> measured = {};
    std::optional<BatchTrials> trials = {};
  };
  std::deque<Line> lines_;
  std::vector<TogetherLine> asked_;
};

/// 90 g in each piece: 100 x 50 mm, poured 18 mm deep, at 1 g/ml. Losses 2 %, 20 g in the pot, 10 g
/// in the jugs, a test piece of 60 g; nothing spoils.
Run run_of(const std::string& name, int cavities) {
  Run run = paper_run();
  run.name = name;
  run.spoilage = {};
  run.pour.mould = paper_mould(cavities, 1);
  run.pour.mould.file = name + ".mould.json";
  return run;
}

Run with_layers(Run run) {
  run.pour.layers = {{"Low", LayerParts{1}, {}}, {"High", LayerParts{2}, {}}};
  return run;
}

std::string why_not(const Order& order) {
  try {
    order.together();
  } catch (const UserError& error) {
    return error.what();
  }
  return "";
}

}  // namespace

TEST_CASE("one base is weighed for several lines, and what is the pot's is lost once",
          "[planning]") {
  Order order;
  order.add(run_of("Bars", 20), 10);
  order.add(run_of("More bars", 20), 5);
  const Together made = order.together();
  REQUIRE(made.plan.batches.size() == 1);
  const Batch& batch = made.plan.batches.front();
  // On paper: 15 x 90 g x 1.02 = 1377 g, two test pieces of 60 g, 20 g in the pot and 10 g in the
  // one jug that both are poured from: 1527 g.
  CHECK_THAT(batch.pour.batter.in_pieces / gram, WithinAbs(1350, 1e-6));
  CHECK_THAT(made.batches.front().left_behind / gram, WithinAbs(30, 1e-9));
  const Mass made_g = batch.pour.batter.weighing.batter;
  CHECK(made_g >= 1527 * gram);
  CHECK(made_g < 1531 * gram);  // one fat in whole grams: a gram of it is about 1.4 g of batter
  // 10 x 90 x 1.02 + 60 and 5 x 90 x 1.02 + 60 grams.
  REQUIRE(made.batches.front().parts.size() == 2);
  CHECK_THAT(made.batches.front().parts[0].takes / gram, WithinAbs(978, 1e-6));
  CHECK_THAT(made.batches.front().parts[1].takes / gram, WithinAbs(519, 1e-6));
  CHECK_THAT(made.batches.front().parts[0].of_batch, WithinAbs(978.0 / 1497, 1e-12));
  // Weighed as one: the alkali is that of the fats as rounded, by their value of 190 mg KOH/g and
  // IUPAC's molar masses, 5 % less, and down to 0.1 g.
  const Weighing& weighing = batch.pour.batter.weighing;
  const double exact = weighing.fats / gram * 0.190 * 39.997 / 56.105 * 0.95;
  CHECK(weighing.naoh / gram <= exact + 1e-9);
  CHECK(weighing.naoh / gram > exact - 0.1);
}

TEST_CASE("the jugs of layers are each line's own", "[planning]") {
  Order order;
  order.add(with_layers(run_of("Bars", 20)), 10);
  order.add(with_layers(run_of("More bars", 20)), 5);
  order.add(run_of("Plain", 20), 5);
  const Together made = order.together();
  // 10 g in two jugs each of the first two, and in the one of the third, which is common.
  CHECK_THAT(made.batches.front().parts[0].takes / gram, WithinAbs(988, 1e-6));
  CHECK_THAT(made.batches.front().parts[1].takes / gram, WithinAbs(529, 1e-6));
  CHECK_THAT(made.batches.front().parts[2].takes / gram, WithinAbs(519, 1e-6));
  CHECK_THAT(made.batches.front().left_behind / gram, WithinAbs(30, 1e-9));
  Mass in_jugs;
  for (std::size_t line : {0U, 1U})
    for (const auto& layer : made.lines[line].batches.front().pour.layers) in_jugs += layer.mass;
  // 15 x 90 x 1.02 + 20 g, each line's sum down to a gram.
  CHECK_THAT(in_jugs / gram, WithinAbs(1397, 2));
  CHECK(in_jugs <= 1397 * gram + 1e-6 * gram);
}

TEST_CASE("a line has its part of the shared weighing, with the superfat of the whole",
          "[planning]") {
  Order order;
  order.add(run_of("Bars", 20), 10);
  order.add(run_of("More bars", 20), 5);
  const Together made = order.together();
  const Weighing& whole = made.plan.batches.front().pour.batter.weighing;
  Mass batter, alkali;
  for (const Plan& line : made.lines) {
    batter += line.pour.batter.weighing.batter;
    alkali += line.pour.batter.weighing.naoh;
    CHECK(line.pour.batter.weighing.superfat.nominal == whole.superfat.nominal);
    CHECK(line.pieces.batches == 1);
    CHECK(line.around.empty());  // another number of its pieces is a matter of all lines
  }
  CHECK_THAT(batter / gram, WithinAbs(whole.batter / gram, 1e-6));
  CHECK_THAT(alkali / gram, WithinAbs(whole.naoh / gram, 1e-6));
}

TEST_CASE("a pot too small for all makes several batches, and parts the lines little",
          "[planning]") {
  const auto with_pot = [](Run run) {
    run.pots.holds = 2 * litre;  // two thirds: 1333 g of base
    return run;
  };
  Order order;
  order.add(with_pot(run_of("Bars", 40)), 16);
  order.add(with_pot(run_of("More bars", 40)), 6);
  const Together made = order.together();
  // 22 x 91.8 g = 2020 g and what stays behind: two batches of 11, 1010 g each, of which the first
  // is of bars alone; alone they would be 1 + 1 or, for the 16 that do not fit, 2 + 1 batches.
  CHECK(made.plan.pieces.batches == 2);
  CHECK(order.apart(0).pieces.batches + order.apart(1).pieces.batches == 3);
  REQUIRE(made.plan.batches.size() == 2);
  std::vector<std::int64_t> sizes, parts;
  for (std::size_t b = 0; b < 2; ++b) {
    sizes.push_back(made.plan.batches[b].casts);
    parts.push_back(static_cast<std::int64_t>(made.batches[b].parts.size()));
  }
  CHECK(sizes == std::vector<std::int64_t>{11, 11});
  CHECK(parts[0] + parts[1] == 3);
  CHECK(made.lines[0].pieces.batches == 2);
  CHECK(made.lines[1].pieces.batches == 1);
}

TEST_CASE("lines of one mould share its cavities", "[planning]") {
  Run rose = run_of("Rose", 12), green = run_of("Green", 12);
  green.pour.mould.file = rose.pour.mould.file;
  Order order;
  order.add(rose, 12);
  order.add(green, 6);
  const Together made = order.together();
  CHECK(made.plan.pieces.fillings == 2);  // 18 pieces in 12 cavities
  for (const Batch& batch : made.plan.batches) CHECK(batch.casts <= 12);
}

TEST_CASE("lines are made apart where that needs less base", "[planning]") {
  // Three lines of 26 pieces, each a batch of its own in a pot for 27; in two batches one of them
  // would be poured twice, and a second test piece of 500 g is more than a pot keeps.
  Order order;
  for (const char* name : {"One", "Two", "Three"}) {
    Run run = run_of(name, 40);
    run.pour.losses.test_piece = 500 * gram;
    run.pots.holds = 7.2 * litre;  // 4800 g
    order.add(std::move(run), 26);
  }
  const Together made = order.together();
  CHECK(made.plan.pieces.batches == 3);
  for (const auto& batch : made.batches) CHECK(batch.parts.size() == 1);
}

TEST_CASE("a wish for small batches holds for the whole base", "[planning]") {
  Run few = run_of("Few", 40);
  few.batch.pieces = 10;
  Order order;
  order.add(few, 10);
  order.add(run_of("More", 40), 6);
  const Together made = order.together();
  for (std::size_t b = 0; b < made.batches.size(); ++b)
    for (const auto& part : made.batches[b].parts)
      if (part.line == 0) CHECK(made.plan.batches[b].casts <= 10);
}

TEST_CASE("a topping's own limits hold for its line alone", "[planning]") {
  Run piped = run_of("Piped", 40);
  piped.pipe = paper_pipe();
  piped.pipe->bowl = Bowl{1 * litre};
  Order order;
  order.add(piped, 20);
  order.add(run_of("Plain", 40), 20);
  const Together made = order.together();
  CHECK(made.lines[0].pieces.batches > 1);
  CHECK(made.lines[1].pieces.batches == 1);
  for (const Batch& batch : made.lines[0].batches) {
    REQUIRE(batch.pipe);
    // 600 ml of the bowl may be whipped topping, at 0.8 g/ml.
    CHECK(batch.pipe->batter.weighing.batter <= 480 * gram);
  }
}

TEST_CASE("bases that are not one base are refused, at the line and with what differs",
          "[planning]") {
  const Run first = run_of("First", 20);
  Run other = run_of("Other", 20);
  std::string says;
  SECTION("formula") {
    other.pour.formula.file = "elsewhere/paper_base.formula.json";
    says = "another formula";
  }
  SECTION("losses in the pot") {
    other.pour.losses.pot = 25 * gram;
    says = "other losses in the pot";
  }
  SECTION("scales") {
    other.scales.fine.step = 0.01 * gram;
    says = "other scales";
  }
  SECTION("pots") {
    other.pots.lye_jug = 2 * litre;
    says = "other pots";
  }
  SECTION("temperatures") {
    other.pour.temperatures = chemistry::HeatQuestion{};
    other.pour.temperatures->water_at = Temperature::in_celsius(8);
    says = "other temperatures";
  }
  SECTION("studio") {
    other.from_studio.file = "other/studio.json";
    says = "another studio";
  }
  SECTION("moulds owned") {
    other.pour.mould.file = first.pour.mould.file;
    other.pour.mould.owned = 2;
    says = "2 moulds";
  }
  SECTION("a pot of lye solution for base and topping") {
    other.pipe = paper_pipe();
    other.lye_pot = PotQuestion{{"other.run.json", "/lye_pot"}, {}};
    says = "one lye solution";
  }
  SECTION("a bottle over base and topping") {
    other.bottles.push_back({"scent", 20 * gram});
    says = "divides a bottle";
  }
  Order order;
  order.add(first, 5);
  order.add(other, 5);
  const std::string complaint = why_not(order);
  CHECK_THAT(complaint, Contains(says));
  CHECK_THAT(complaint, Contains("/lines/1/together"));
  CHECK_THAT(complaint, Contains("another word"));
}

TEST_CASE("a base that no batch can hold is refused as the run by itself is", "[planning]") {
  Order order;
  for (const char* name : {"One", "Two"}) {
    Run run = run_of(name, 20);
    run.pots.holds = 200 * millilitre;
    order.add(std::move(run), 5);
  }
  CHECK_THAT(why_not(order), Contains("is too little for even 1 piece"));
}

TEST_CASE("what each alone is too small to be weighed can be made together", "[planning]") {
  Order order;
  for (const char* name : {"One", "Two", "Three"}) {
    Run run = run_of(name, 20);
    run.pour.losses = {{}, {}, {}, {}};
    run.scales.fine = {10 * gram, 500 * gram};  // alkali for one piece of 90 g: 8.2 g
    order.add(std::move(run), 1);
  }
  CHECK_THROWS_AS(order.apart(0), UserError);
  const Together made = order.together();
  CHECK(made.plan.pieces.batches == 1);
  CHECK(made.plan.batches.front().pour.batter.weighing.superfat.nominal >= Share{});
}

namespace {

std::int64_t line_in(const MixedFillings& fillings, std::size_t line) {
  std::int64_t sum = 0;
  for (const auto& filling : fillings)
    for (const Mixture& mixture : filling) sum += mixture[line];
  return sum;
}

}  // namespace

TEST_CASE("lines of chance are dealt whole and within all limits", "[planning][law]") {
  rc::prop("all casts are dealt, no cavity is filled twice, no batch is too large", [] {
    const auto lines_count = *rc::gen::inRange<std::size_t>(2, 5);
    std::vector<MixedLine> lines;
    for (std::size_t i = 0; i < lines_count; ++i) {
      const std::size_t mould = i > 0 && *rc::gen::inRange(0, 4) == 0 ? lines[0].mould : i;
      const auto cavities =
          mould == i ? *rc::gen::inRange<std::int64_t>(1, 30) : lines[mould].cavities;
      lines.push_back({.casts = *rc::gen::inRange<std::int64_t>(1, 60),
                       .mould = mould,
                       .cavities = cavities,
                       .least = 1,
                       .most = *rc::gen::inRange<std::int64_t>(1, 30),
                       .each = *rc::gen::inRange(20, 120) * gram});
    }
    const Mass pot = *rc::gen::inRange(200, 4000) * gram;
    const auto poured = [&](const Mixture& mixture) {
      Mass sum;
      for (std::size_t i = 0; i < lines.size(); ++i)
        sum += static_cast<double>(mixture[i]) * lines[i].each;
      return sum;
    };
    const auto fits = [&](const Mixture& mixture) { return poured(mixture) <= pot; };
    const auto needs = [&](const Mixture& mixture) {
      Mass sum = poured(mixture) + 20 * gram;
      for (const auto casts : mixture)
        if (casts > 0) sum += 15 * gram;
      return sum;
    };
    const auto dealt = dealt_together(lines, {needs, fits, fits, pot}, std::nullopt);
    RC_ASSERT(dealt.has_value());  // a line at a time is always possible here
    for (std::size_t i = 0; i < lines.size(); ++i) RC_ASSERT(line_in(*dealt, i) == lines[i].casts);
    Mass all;
    std::size_t batches = 0;
    for (const auto& filling : *dealt) {
      std::vector<std::int64_t> in_mould(lines.size());
      for (const Mixture& mixture : filling) {
        ++batches;
        all += poured(mixture);
        RC_ASSERT(fits(mixture));
        for (std::size_t i = 0; i < lines.size(); ++i) {
          RC_ASSERT(mixture[i] <= lines[i].most);
          in_mould[lines[i].mould] += mixture[i];
        }
      }
      for (std::size_t i = 0; i < lines.size(); ++i)
        RC_ASSERT(in_mould[i] <= lines[lines[i].mould].cavities);
    }
    RC_ASSERT(static_cast<double>(batches) * pot >= all);
    // As few fillings as the mould that needs most.
    std::vector<std::int64_t> casts(lines.size());
    for (const auto& line : lines) casts[line.mould] += line.casts;
    std::int64_t fillings = 1;
    for (std::size_t i = 0; i < lines.size(); ++i)
      fillings = std::max(fillings, (casts[i] + lines[i].cavities - 1) / lines[i].cavities);
    RC_ASSERT(static_cast<std::int64_t>(dealt->size()) == fillings);
  });
}
