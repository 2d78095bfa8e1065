#include "planning/batching.h"

#include "planning/plan.h"
#include "sample_run.h"
#include "units/printing.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <numeric>

using namespace brimwright;
using namespace brimwright::planning;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;

namespace {

using Fillings = std::vector<std::vector<std::int64_t>>;

Pieces counted(std::int64_t casts, std::int64_t cavities) {
  Pieces pieces;
  pieces.sell = pieces.make = pieces.casts = casts;
  pieces.cavities = cavities;
  pieces.fillings = (casts + cavities - 1) / cavities;
  return pieces;
}

/// `run` with room for so many casts at a time, and so many to make, none spoilt.
Run run_of(std::int64_t pieces, int cavities) {
  Run run = paper_run();
  run.spoilage = {};
  run.sell = pieces;
  run.pour.mould = paper_mould(cavities, 1);
  return run;
}

std::vector<std::int64_t> sizes_of(const Plan& plan) {
  std::vector<std::int64_t> sizes;
  for (const auto& batch : plan.batches)
    sizes.insert(sizes.end(), static_cast<std::size_t>(batch.count()), batch.casts);
  return sizes;
}

bool has_caution(const Plan& plan, const std::string& says) {
  return std::any_of(plan.cautions.begin(), plan.cautions.end(), [&](const Caution& caution) {
    return caution.text.find(says) != std::string::npos;
  });
}

}  // namespace

TEST_CASE("batches are few, fit their fillings and are as even as can be", "[planning]") {
  CHECK(dealt(counted(25, 24), 24) == Fillings{{13}, {12}});
  CHECK(dealt(counted(48, 24), 10) == Fillings{{8, 8, 8}, {8, 8, 8}});
  CHECK(dealt(counted(48, 48), 24) == Fillings{{24, 24}});
  CHECK(dealt(counted(1, 24), 24) == Fillings{{1}});
  // Five batches are enough, three in the one filling and two in the other; the three fill theirs.
  CHECK(dealt(counted(43, 24), 10) == Fillings{{8, 8, 8}, {10, 9}});
  CHECK(dealt(counted(46, 24), 10) == Fillings{{8, 8, 8}, {8, 7, 7}});
}

TEST_CASE("batches hold every piece, within every limit, and never more than they need",
          "[planning][law]") {
  rc::prop("dealt", [] {
    const std::int64_t cavities = *rc::gen::inRange(1, 60);
    const std::int64_t casts = *rc::gen::inRange(1, 400);
    const std::int64_t most = *rc::gen::inRange<std::int64_t>(1, cavities + 1);
    const auto pieces = counted(casts, cavities);
    const auto fillings = dealt(pieces, most);
    RC_ASSERT(static_cast<std::int64_t>(fillings.size()) == pieces.fillings);
    std::int64_t all = 0, batches = 0, least = casts, greatest = 0;
    for (const auto& filling : fillings) {
      const std::int64_t filled = std::accumulate(filling.begin(), filling.end(), std::int64_t{0});
      RC_ASSERT(filled <= cavities);
      RC_ASSERT(!filling.empty());
      all += filled;
      batches += static_cast<std::int64_t>(filling.size());
      for (const std::int64_t size : filling) {
        RC_ASSERT(size >= 1);
        RC_ASSERT(size <= most);
        least = std::min(least, size);
        greatest = std::max(greatest, size);
      }
    }
    RC_ASSERT(all == casts);
    // One batch fewer would not hold them, however it is spread over the fillings.
    std::int64_t fewer_hold = 0;
    for (std::int64_t i = 0; i < pieces.fillings; ++i) {
      const std::int64_t n =
          (batches - 1) / pieces.fillings + (i < (batches - 1) % pieces.fillings);
      fewer_hold += std::min(cavities, n * most);
    }
    RC_ASSERT(batches == pieces.fillings || fewer_hold < casts);
    // Where whole batches may lie anywhere, no two differ by more than one.
    if (pieces.fillings == 1) RC_ASSERT(greatest - least <= 1);
  });
}

TEST_CASE("more moulds never need more fillings", "[planning][law]") {
  rc::prop("fillings fall as moulds grow; batches may not, as fillings are chosen first", [] {
    const int cavities = *rc::gen::inRange(1, 20);
    Run run = run_of(*rc::gen::inRange(1, 120), cavities);
    run.batch.pieces = *rc::gen::inRange(4, 60);
    Plan before = planning::plan(run);
    run.pour.mould.owned = 2;
    const Plan after = planning::plan(run);
    RC_ASSERT(after.pieces.fillings <= before.pieces.fillings);
  });
}

TEST_CASE("forty-eight pieces in a mould of six cavities were one column of batter", "[planning]") {
  // Eight batches of six: 540 g in the pieces, and overpour 10.8, pot 20, jugs 10, test piece 60
  // each time: 640.8 g to make. 640.8 / 1.386029 (see "a run worked on paper") = 462.33, so 463 g
  // of fat; 463 x 0.128676 = 59.577, so 59.5 g NaOH and 119.0 g water.
  const Plan plan = planning::plan(run_of(48, 6));
  CHECK(plan.pieces.fillings == 8);
  REQUIRE(plan.batches.size() == 1);
  CHECK(plan.batches[0].count() == 8);
  const auto& weighing = plan.batches[0].pour.batter.weighing;
  CHECK(fixed(weighing.fats / gram, 0) == "463");
  CHECK(fixed(weighing.naoh / gram, 1) == "59.5");
  CHECK(fixed(weighing.water / gram, 0) == "119");
  CHECK_THAT(plan.pour.batter.weighing.naoh / gram, WithinAbs(8 * 59.5, 1e-6));
  CHECK_THAT(plan.pour.batter.weighing.batter / gram, WithinAbs(8 * 641.5, 1e-6));
  CHECK_THAT(plan.pour.batter.in_pieces / gram, WithinAbs(4320, 1e-6));
  CHECK_THAT(plan.pour.batter.lost / gram, WithinAbs(8 * 641.5 - 4320, 1e-6));
}

TEST_CASE("two batches of 24 weigh what two runs of 24 weigh", "[planning]") {
  Run run = run_of(48, 24);
  run.pipe = paper_pipe();
  const Plan together = planning::plan(run);
  run.sell = 24;
  const Plan alone = planning::plan(run);
  REQUIRE(together.batches.size() == 1);
  CHECK(together.batches[0].count() == 2);
  const auto check = [](const Weighing& sum, const Weighing& each, const Weighing& one) {
    REQUIRE(each.ingredients.size() == one.ingredients.size());
    REQUIRE(sum.ingredients.size() == one.ingredients.size());
    for (std::size_t i = 0; i < one.ingredients.size(); ++i) {
      CHECK(each.ingredients[i].weighed == one.ingredients[i].weighed);
      CHECK_THAT(sum.ingredients[i].weighed / gram,
                 WithinAbs(2 * (one.ingredients[i].weighed / gram), 1e-9));
    }
    CHECK(sum.superfat.low == one.superfat.low);
  };
  check(together.pour.batter.weighing, together.batches[0].pour.batter.weighing,
        alone.pour.batter.weighing);
  check(together.pipe->batter.weighing, together.batches[0].whippings[0].pipe.batter.weighing,
        alone.pipe->batter.weighing);
  CHECK(*together.pipe->loads == 2 * *alone.pipe->loads);
}

TEST_CASE("the run's sums are its batches' sums", "[planning][law]") {
  rc::prop("masses add up", [] {
    Run run = run_of(*rc::gen::inRange(2, 90), *rc::gen::inRange(2, 30));
    run.pipe = paper_pipe();
    run.pipe->losses.each_bag_change = 8 * gram;
    run.pour.layers = {{"Rose", LayerParts{2}, {}}, {"Plain", LayerParts{1}, {}}};
    run.batch.whippings = *rc::gen::inRange(1, 3);
    run.batch.fills_moulds = *rc::gen::arbitrary<bool>();
    Plan plan;
    try {
      plan = planning::plan(run);
    } catch (const UserError&) {
      return;  // a batch of one piece cannot be whipped twice
    }
    Mass base, topping, naoh, jugs, in_pieces;
    std::int64_t casts = 0, loads = 0;
    for (const auto& batch : plan.batches) {
      const auto times = static_cast<double>(batch.count());
      casts += batch.count() * batch.casts;
      base += times * batch.pour.batter.weighing.batter;
      naoh += times * batch.pour.batter.weighing.naoh;
      in_pieces += times * batch.pour.batter.in_pieces;
      for (const auto& layer : batch.pour.layers) jugs += times * layer.mass;
      std::int64_t piped = 0;
      for (const auto& whipping : batch.whippings) {
        const auto goes = times * static_cast<double>(whipping.count);
        topping += goes * whipping.pipe.batter.weighing.batter;
        loads += batch.count() * whipping.count * *whipping.pipe.loads;
        piped += whipping.count * whipping.casts;
      }
      RC_ASSERT(piped == batch.casts);
    }
    RC_ASSERT(casts == plan.pieces.casts);
    RC_ASSERT(abs(base - plan.pour.batter.weighing.batter) < 1e-6 * gram);
    RC_ASSERT(abs(naoh - plan.pour.batter.weighing.naoh) < 1e-6 * gram);
    RC_ASSERT(abs(in_pieces - plan.pour.batter.in_pieces) < 1e-6 * gram);
    RC_ASSERT(abs(jugs - plan.pour.layers[0].mass - plan.pour.layers[1].mass) < 1e-6 * gram);
    RC_ASSERT(abs(topping - plan.pipe->batter.weighing.batter) < 1e-6 * gram);
    RC_ASSERT(loads == *plan.pipe->loads);
    Mass weighed;
    for (const auto& ingredient : plan.pour.batter.weighing.ingredients)
      weighed += ingredient.weighed;
    RC_ASSERT(abs(weighed - base) < 1e-6 * gram);
  });
}

TEST_CASE("filled moulds say what goes to stock", "[planning]") {
  Run run = run_of(25, 24);
  run.batch.fills_moulds = true;
  const Plan plan = planning::plan(run);
  CHECK(plan.pieces.casts == 48);
  CHECK(plan.pieces.make == 48);
  CHECK(plan.pieces.to_stock == 23);
  CHECK(sizes_of(plan) == std::vector<std::int64_t>{24, 24});
}

TEST_CASE("a run of too many batches says how many pieces can be planned, and they can",
          "[planning]") {
  Run run = run_of(20'000, 6);
  run.batch.pieces = 5;  // two batches a filling: 500 fillings
  CHECK_THROWS_WITH(planning::plan(run),
                    Contains("/sell: takes ") && Contains("plan at most 3000 pieces to sell"));
  run.sell = 3000;
  CHECK(planning::plan(run).pieces.batches == 1000);
}

TEST_CASE("her wish bounds a batch", "[planning]") {
  Run run = run_of(48, 24);
  run.batch.pieces = 10;
  const Plan plan = planning::plan(run);
  CHECK(sizes_of(plan) == std::vector<std::int64_t>(6, 8));
  CHECK(plan.pieces.fillings == 2);
}

TEST_CASE("a pot is planned two thirds full, a lye jug half", "[planning]") {
  Run run = run_of(24, 24);
  // Two thirds of 3 l are 2000 ml, at 1 g/ml 2000 g. n pieces take 91.8 n + 90 g: 20 take 1926 g,
  // 1.386029 x 1390 = 1926.6 of which 1927; 21 take 2017.8.
  run.pots.holds = 3 * litre;
  Plan plan = planning::plan(run);
  CHECK(sizes_of(plan) == std::vector<std::int64_t>{12, 12});
  const auto pot = std::find_if(plan.batch_limits.begin(), plan.batch_limits.end(),
                                [](const Limit& limit) { return limit.what == "pot"; });
  REQUIRE(pot != plan.batch_limits.end());
  CHECK(pot->casts == 20);
  CHECK(pot->sets);
  CHECK_THAT(pot->text, Contains("A pot of 3 L, two thirds full, takes the base of 20 pieces"));
  // 20 pieces' lye: 178.8 g NaOH in 357.7 g water, a third NaOH, about 1.34 g/ml (Perry's Chemical
  // Engineers' Handbook, from memory): 400 ml.
  run.pots = {.holds = {}, .lye_jug = 0.6 * litre};
  plan = planning::plan(run);
  const auto jug = std::find_if(plan.batch_limits.begin(), plan.batch_limits.end(),
                                [](const Limit& limit) { return limit.what == "lye jug"; });
  REQUIRE(jug != plan.batch_limits.end());
  CHECK(jug->casts >= 14);  // 300 ml, less what pot, jugs and test piece take
  CHECK(jug->casts <= 15);
}

TEST_CASE("a pot too small for one piece says what would hold it, and that does", "[planning]") {
  Run run = run_of(24, 24);
  run.pots.holds = 0.2 * litre;
  // One piece takes 91.8 + 90 = 181.8 g; 1.5 times that is 273 ml.
  CHECK_THROWS_WITH(planning::plan(run), Contains("/pots/holds: is too little for even 1 piece") &&
                                             Contains("it takes a pot of 0.3 L"));
  run.pots.holds = 0.3 * litre;
  CHECK_NOTHROW(planning::plan(run));
}

TEST_CASE("a batch below the whisk's least is refused with the numbers that can be made",
          "[planning]") {
  Run run = run_of(25, 24);
  run.pipe = paper_pipe();
  // 13 pieces are the least that the whisk catches (see "a run too small for the whisk"): 25 are
  // 13 and 12.
  run.pipe->bowl = Bowl{.holds = 4 * litre, .whisk_needs = 600 * millilitre};
  CHECK_THROWS_WITH(planning::plan(run),
                    Contains("25 pieces are made in batches of 13 and 12, and a batch is at least "
                             "13: the whisk needs as much") &&
                        Contains("plan 24 or 26 pieces to sell"));
  run.sell = 24;
  CHECK_NOTHROW(planning::plan(run));
  run.sell = 26;
  CHECK_NOTHROW(planning::plan(run));
  run.batch.pieces = 12;
  CHECK_THROWS_WITH(planning::plan(run), Contains("/batch: no batch size works") &&
                                             Contains("a wish of at least 13 pieces"));
}

TEST_CASE("advice on the least batch holds when typed back", "[planning][law]") {
  rc::prop("numbers to sell that are named can be planned", [] {
    Run run = run_of(*rc::gen::inRange(1, 60), *rc::gen::inRange(4, 30));
    run.pipe = paper_pipe();
    run.pipe->bowl =
        Bowl{.holds = 6 * litre, .whisk_needs = *rc::gen::inRange(100, 900) * millilitre};
    std::string remedy;
    try {
      planning::plan(run);
      return;
    } catch (const UserError& error) {
      remedy = error.what();
    }
    const auto at = remedy.rfind("plan ");
    if (at == std::string::npos) return;  // no number can be made: moulds or bowl are too small
    std::vector<std::int64_t> numbers;
    for (std::size_t i = at; i < remedy.size();) {
      std::size_t end = i;
      while (end < remedy.size() && remedy[end] >= '0' && remedy[end] <= '9') ++end;
      if (end > i) numbers.push_back(std::stoll(remedy.substr(i, end - i)));
      i = std::max(end, i + 1);
    }
    RC_ASSERT(!numbers.empty());
    for (const std::int64_t sell : numbers) {
      run.sell = sell;
      planning::plan(run);  // throws where the advice is wrong
    }
  });
}

TEST_CASE("one piece that costs a filling is named, with the number that saves it", "[planning]") {
  Run run = run_of(24, 24);
  run.spoilage = 4 * percent;  // 25 casts
  run.pour.mould.unmould_after = std::chrono::minutes(48 * 60);
  const Plan plan = planning::plan(run);
  CHECK(has_caution(plan, "24 to sell needs 25 cavities: a second filling, 48 h; 23 saves it."));
  REQUIRE(plan.around.size() == 2);
  CHECK(plan.around[0].sell == 23);
  CHECK(plan.around[0].fillings == 1);
  CHECK(plan.around[1].sell == 25);
  CHECK(plan.around[1].fillings == 2);
}

TEST_CASE("a run without a piece to spare says so", "[planning]") {
  CHECK(has_caution(planning::plan(run_of(12, 12)), "No piece is planned to spare"));
  Run run = run_of(12, 20);
  run.batch.fills_moulds = true;
  CHECK_FALSE(has_caution(planning::plan(run), "No piece is planned to spare"));
}

TEST_CASE("the last jug came out short by what stays in the pot", "[planning]") {
  // 12 pieces of 90 g in one batch, two equal layers: 45 g each and 2 % overpour, 550.8 g a jug and
  // half of the jugs' 10 g; running sums 555.8 and 1111.6, rounded down: 555 and 556 g.
  Run run = run_of(12, 12);
  run.pour.layers = {{"Low", LayerParts{1}, {}}, {"High", LayerParts{1}, {}}};
  const Plan plan = planning::plan(run);
  CHECK_THAT(plan.pour.layers[0].mass / gram, WithinAbs(555, 1e-9));
  CHECK_THAT(plan.pour.layers[1].mass / gram, WithinAbs(556, 1e-9));
  // What is left is the pot's 20 g and the test piece's 60 g, and what the scale rounded up.
  const double left =
      (plan.pour.batter.weighing.batter - plan.pour.layers[0].mass - plan.pour.layers[1].mass) /
      gram;
  CHECK(left >= 80);
  CHECK(left < 84);
}

TEST_CASE("batches of different sizes each have their own superfat, and the worst stands for all",
          "[planning]") {
  const Plan plan = planning::plan(run_of(25, 24));
  REQUIRE(plan.batches.size() == 2);
  CHECK(plan.batches[0].casts == 13);
  CHECK(plan.batches[0].numbers == std::vector<std::int64_t>{1});
  CHECK(plan.batches[1].numbers == std::vector<std::int64_t>{2});
  const auto low = [&](std::size_t i) { return plan.batches[i].pour.batter.weighing.superfat.low; };
  CHECK(plan.pour.batter.weighing.superfat.low == std::min(low(0), low(1)));
}

TEST_CASE("loaves that are cut are whipped for by the loaf, not by the bar", "[planning]") {
  Run run = run_of(40, 12);
  run.cut = Cut{.bar = Slices{25 * millimetre}};  // four bars of each 100 mm loaf
  run.pipe = paper_pipe();                        // 55 ml, 44 g on each loaf
  run.pipe->bowl = Bowl{.holds = 750 * millilitre};
  // 60 % of 750 ml are 360 g at 0.8 g/ml; less 50 g that stay, 310 / 44 = 7.05 loaves.
  const Plan plan = planning::plan(run);
  CHECK(plan.pieces.per_cast == 4);
  CHECK(plan.pieces.casts == 10);
  REQUIRE(plan.batches.size() == 1);
  CHECK(plan.batches[0].count() == 2);
  CHECK(plan.batches[0].casts == 5);
  CHECK(plan.batches[0].pieces == 20);
  const auto& limits = plan.pipe->limits;
  REQUIRE(limits.size() == 1);
  CHECK(limits[0].casts == 7);
  CHECK_THAT(limits[0].text, Contains("makes 7 loaves at most"));
  run.batch.pieces = 3;
  CHECK_THROWS_WITH(planning::plan(run),
                    Contains("/batch/pieces: asks for batches of 3 pieces, and "
                             "one cast is cut into 4; give 4 or more"));
  run.batch.pieces = 4;
  CHECK(planning::plan(run).batches[0].count() == 10);
}

TEST_CASE("a shared pot of lye is one for each batch, with a share for each whipping",
          "[planning]") {
  Run run = run_of(48, 24);
  run.pipe = paper_pipe();
  run.batch.whippings = 2;
  run.lye_pot = PotQuestion{{run.file, "/lye_pot"}, {}};
  const Plan plan = planning::plan(run);
  REQUIRE(plan.batches.size() == 1);
  REQUIRE(plan.batches[0].lye_pot);
  const auto& shares = plan.batches[0].lye_pot->shares;
  REQUIRE(shares.size() == 3);
  CHECK(shares[1].batter == "Paper base, whipping 1 of 2");
  CHECK(shares[1].lye == shares[2].lye);
}
