#include "trade/buying.h"

#include "shops.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <fstream>
#include <map>
#include <sstream>
#include <thread>
#include <tuple>

using namespace brimwright;
using namespace brimwright::trade;
using Catch::Matchers::Contains;

namespace {

Pack pack(const std::string& material, Amount holds, std::int64_t coins,
          const std::string& seller = "") {
  return {
      .material = material, .holds = holds, .paid = {coins, eur}, .seller = seller, .as_of = {}};
}
Seller seller(const std::string& name, std::int64_t postage,
              std::optional<std::int64_t> free_from = {}) {
  Seller seller{.name = name};
  seller.postage = Money{postage, eur};
  if (free_from) seller.postage_free_from = Money{*free_from, eur};
  return seller;
}
Amount kg(double count) { return Amount::at_least(count * kilogram); }

Purchase bought(const Shops& shops) { return cheapest(shops.needs, shops.packs, shops.sellers); }
std::int64_t coins(const Purchase& purchase) { return purchase.total ? purchase.total->coins : 0; }

/// How many of each pack of the list.
std::vector<std::int64_t> counts(const Purchase& purchase, std::size_t packs) {
  std::vector<std::int64_t> counts(packs);
  for (const auto& delivery : purchase.deliveries)
    for (const auto& one : delivery.packs) counts[one.pack] = one.count;
  return counts;
}

/// Cost, packs and what is left over, by the words of buying.h.
using Worth = std::tuple<std::int64_t, std::int64_t, std::int64_t>;
std::int64_t needed(const Shops& shops, const std::string& material) {
  for (const Need& need : shops.needs)
    if (need.material == material) return need.amount.whole();
  return 0;
}
Worth worth(const Shops& shops, const std::vector<std::int64_t>& counts) {
  std::int64_t cost = 0, packs = 0, left = 0;
  std::map<std::string, std::int64_t> spent;
  for (std::size_t i = 0; i < counts.size(); ++i) {
    if (counts[i] == 0) continue;
    const Pack& one = shops.packs[i];
    cost += counts[i] * one.paid.coins;
    packs += counts[i];
    left += counts[i] * ((2000 * one.holds.whole() / needed(shops, one.material) + 1) / 2);
    spent[one.seller] += counts[i] * one.paid.coins;
  }
  for (const Seller& one : shops.sellers)
    if (spent.contains(one.name) &&
        !(one.postage_free_from && spent[one.name] >= one.postage_free_from->coins))
      cost += one.postage->coins;
  return {cost, packs, left};
}

/// Every purchase, one by one. More than enough is tried as far as it could save postage.
class EveryPurchase {
 public:
  explicit EveryPurchase(const Shops& shops) : shops_(shops), counts_(shops.packs.size()) {
    for (const Seller& one : shops.sellers) postage_ += one.postage->coins;
    go_on(0);
  }
  const std::optional<Worth>& best() const { return best_; }

 private:
  void go_on(std::size_t i) {
    if (i == counts_.size()) {
      if (!covers()) return;
      const Worth found = worth(shops_, counts_);
      if (!best_ || found < *best_) best_ = found;
      return;
    }
    const Pack& one = shops_.packs[i];
    const std::int64_t need = needed(shops_, one.material);
    const std::int64_t most =
        need == 0 ? 0
                  : (need + one.holds.whole() - 1) / one.holds.whole() + postage_ / one.paid.coins;
    for (counts_[i] = 0; counts_[i] <= most; ++counts_[i]) go_on(i + 1);
    counts_[i] = 0;
  }
  bool covers() const {
    return std::all_of(shops_.needs.begin(), shops_.needs.end(), [&](const Need& need) {
      std::int64_t sum = 0;
      for (std::size_t i = 0; i < counts_.size(); ++i)
        if (shops_.packs[i].material == need.material)
          sum += counts_[i] * shops_.packs[i].holds.whole();
      return sum >= need.amount.whole();
    });
  }

  const Shops& shops_;
  std::vector<std::int64_t> counts_;
  std::int64_t postage_ = 0;
  std::optional<Worth> best_;
};

/// The same purchase as a program in the language of lp_solve, with whole numbers of packs.
std::string program_of(const Shops& shops) {
  std::ostringstream goal, rows, whole;
  goal << "min: 0";
  for (std::size_t i = 0; i < shops.packs.size(); ++i) {
    goal << " + " << shops.packs[i].paid.coins << " x" << i;
    whole << (i ? ", x" : "int x") << i;
  }
  for (const Need& need : shops.needs) {
    rows << "need" << &need - shops.needs.data()
         << ": 0";  // a named row of one variable is no bound
    for (std::size_t i = 0; i < shops.packs.size(); ++i)
      if (shops.packs[i].material == need.material)
        rows << " + " << shops.packs[i].holds.whole() << " x" << i;
    rows << " >= " << need.amount.whole() << ";\n";
    if (need.amount.whole() == 0)  // nothing is bought of what is not needed
      for (std::size_t i = 0; i < shops.packs.size(); ++i)
        if (shops.packs[i].material == need.material) rows << "x" << i << " <= 0;\n";
  }
  for (std::size_t s = 0; s < shops.sellers.size(); ++s) {
    const Seller& one = shops.sellers[s];
    goal << " + " << one.postage->coins << " z" << s << " - " << one.postage->coins << " f" << s;
    whole << ", z" << s << ", f" << s;
    rows << "z" << s << " <= 1;\nf" << s << " - z" << s << " <= 0;\n";
    for (std::size_t i = 0; i < shops.packs.size(); ++i)
      if (shops.packs[i].seller == one.name) rows << "x" << i << " - 40 z" << s << " <= 0;\n";
    if (!one.postage_free_from) {
      rows << "f" << s << " <= 0;\n";
      continue;
    }
    rows << "0 f" << s;
    for (std::size_t i = 0; i < shops.packs.size(); ++i)
      if (shops.packs[i].seller == one.name)
        rows << " + " << shops.packs[i].paid.coins << " x" << i;
    rows << " - " << one.postage_free_from->coins << " f" << s << " >= 0;\n";
  }
  return goal.str() + ";\n" + rows.str() + whole.str() + ";\n";
}

std::int64_t by_lp_solve(const Shops& shops) {
  FILE* pipe = nullptr;
  {
    std::ofstream file("trade_test.lp");
    file << program_of(shops);
  }
  pipe = popen("lp_solve -S3 trade_test.lp", "r");
  REQUIRE(pipe);
  std::string said(4096, '\0');
  said.resize(std::fread(said.data(), 1, said.size(), pipe));
  pclose(pipe);
  const std::string before = "Value of objective function: ";
  const auto place = said.find(before);
  CAPTURE(said);
  REQUIRE(place != std::string::npos);
  return std::llround(std::stod(said.substr(place + before.size())));
}

}  // namespace

TEST_CASE("20 kg at once are bought where they cost less than five times 5 kg", "[trade]") {
  const Shops shops{
      {{"olive", kg(18)}}, {pack("olive", kg(5), 2750), pack("olive", kg(20), 8900)}, {}};
  const Purchase purchase = bought(shops);
  CHECK(coins(purchase) == 8900);  // four packs of 5 kg are 110.00
  CHECK(counts(purchase, 2) == std::vector<std::int64_t>{0, 1});
  CHECK(purchase.covered.at(0).bought == kg(20));
  CHECK(!purchase.at_least);
}

TEST_CASE("a pack more is bought where it saves more postage than it costs", "[trade]") {
  const Shops shops{{{"olive", kg(5)}, {"salt", kg(1)}},
                    {pack("olive", kg(5), 2750, "mill"), pack("salt", kg(1), 200, "mill")},
                    {seller("mill", 690, 3100)}};
  const Purchase purchase = bought(shops);
  CHECK(coins(purchase) == 3150);  // 27.50 + 2 x 2.00, sent free; with one salt it is 36.40
  CHECK(counts(purchase, 2) == std::vector<std::int64_t>{1, 2});
  CHECK(purchase.deliveries.at(0).is_postage_free);
}

TEST_CASE("two sellers are not paid for sending where one has all", "[trade]") {
  const Shops shops{{{"olive", kg(5)}, {"coconut", kg(5)}},
                    {pack("olive", kg(5), 2750, "mill"), pack("olive", kg(5), 2900, "shop"),
                     pack("coconut", kg(5), 2000, "shop")},
                    {seller("mill", 690), seller("shop", 500)}};
  const Purchase purchase = bought(shops);
  CHECK(coins(purchase) == 2900 + 2000 + 500);
  CHECK(purchase.deliveries.size() == 1);
}

TEST_CASE("a microgram more than a pack holds takes another pack", "[trade]") {
  const Need need{"olive", Amount::at_least(5 * kilogram + gram / 1e6)};
  CHECK(coins(cheapest({need}, {pack("olive", kg(5), 2750)}, {})) == 5500);
  CHECK(coins(cheapest({{"olive", kg(5)}}, {pack("olive", kg(5), 2750)}, {})) == 2750);
}

TEST_CASE("what has no pack is named, and not bought for nothing", "[trade]") {
  const Purchase purchase =
      cheapest({{"mica", kg(0.1)}, {"olive", kg(1)}}, {pack("olive", kg(5), 2750)}, {});
  REQUIRE(purchase.unpriced.size() == 1);
  CHECK(purchase.unpriced[0].material == "mica");
  CHECK(coins(purchase) == 2750);
  CHECK(!cheapest({{"mica", kg(1)}}, {}, {}).total);
}

TEST_CASE("who needs nothing buys nothing", "[trade]") {
  const Purchase none = cheapest({{"olive", kg(0)}}, {pack("olive", kg(5), 2750)}, {});
  CHECK(!none.total);
  CHECK(none.deliveries.empty());
  CHECK(none.unpriced.empty());
  CHECK(cheapest({}, {}, {}).deliveries.empty());
}

TEST_CASE("postage of a seller who does not say it is not taken for nothing", "[trade]") {
  const Purchase purchase =
      cheapest({{"olive", kg(1)}}, {pack("olive", kg(5), 2750, "market")}, {});
  CHECK(!purchase.deliveries.at(0).postage);
  CHECK(coins(purchase) == 2750);
}

TEST_CASE("of equal cost the fewest packs are bought, then the least is left over", "[trade]") {
  const Shops packs_tie{
      {{"olive", kg(10)}}, {pack("olive", kg(5), 2000), pack("olive", kg(10), 4000)}, {}};
  CHECK(counts(bought(packs_tie), 2) == std::vector<std::int64_t>{0, 1});
  const Shops left_tie{
      {{"olive", kg(10)}}, {pack("olive", kg(20), 4000), pack("olive", kg(12), 4000)}, {}};
  CHECK(counts(bought(left_tie), 2) == std::vector<std::int64_t>{0, 1});
}

TEST_CASE("what cannot be added up is refused", "[trade]") {
  const auto buy = [](const Need& need, const Pack& one) { return cheapest({need}, {one}, {}); };
  CHECK_THROWS_WITH(buy({"box", Amount::pieces(12)}, pack("box", kg(1), 100)),
                    Contains("needed by piece") && Contains("sold by weight"));
  CHECK_THROWS_WITH(buy({"olive", kg(1)}, pack("olive", Amount::pieces(1), 100)),
                    Contains("needed by weight") && Contains("sold by piece"));
  CHECK_THROWS_WITH(buy({"olive", kg(1000)}, pack("olive", Amount::at_least(gram / 1e4), 1)),
                    Contains("more than a million packs"));
  CHECK_THROWS_WITH(buy({"olive", kg(1000)}, pack("olive", kg(1), 999'999'999'99900)),
                    Contains("10^15 coins"));
  Pack other = pack("olive", kg(5), 2750);
  other.paid.currency = {"USD", 2};
  CHECK_THROWS_WITH(cheapest({{"olive", kg(1)}}, {pack("olive", kg(1), 700), other}, {}),
                    Contains("EUR") && Contains("USD"));
}

TEST_CASE("a purchase is the best of all there are, ties included", "[trade][law]") {
  rc::prop("as going through every purchase finds it", [] {
    const Shops shops = any_shops();
    const Purchase purchase = bought(shops);
    RC_ASSERT(!purchase.at_least);
    const EveryPurchase every(shops);
    RC_ASSERT(worth(shops, counts(purchase, shops.packs.size())) == every.best().value());
    RC_ASSERT(coins(purchase) == std::get<0>(*every.best()));
  });
}

TEST_CASE("one material alone is covered at the cost of its cheapest purchase without postage",
          "[trade][law]") {
  rc::prop("as going through every purchase finds it", [] {
    Shops shops = any_shops();
    shops.sellers.clear();
    const Need need = shops.needs.front();
    shops.needs = {need};
    std::erase_if(shops.packs, [&](const Pack& one) { return one.material != need.material; });
    RC_PRE(need.amount.whole() > 0);
    const auto alone = cheapest_alone(need, shops.packs);
    RC_ASSERT(alone.has_value());
    RC_ASSERT(alone->paid.coins == std::get<0>(*EveryPurchase(shops).best()));
    RC_ASSERT(need.amount.less(alone->holds).whole() == 0);
  });
}

TEST_CASE("a purchase costs what lp_solve finds", "[trade][law]") {
  rc::prop("to the coin", [] {
    const Shops shops = any_shops();
    RC_ASSERT(coins(bought(shops)) == by_lp_solve(shops));
  });
}

TEST_CASE("stock, dearer packs and doubled prices do what they should", "[trade][law]") {
  rc::prop("more stock never costs more", [] {
    const Shops shops = any_shops();
    Shops stocked = shops;
    for (Need& need : stocked.needs)
      need.amount = need.amount.less(Amount::pieces(*rc::gen::inRange<std::int64_t>(0, 6)));
    // What is not needed is not bought to save postage, so something must still be needed.
    for (std::size_t i = 0; i < shops.needs.size(); ++i)
      RC_PRE((stocked.needs[i].amount.whole() > 0) == (shops.needs[i].amount.whole() > 0));
    RC_ASSERT(coins(bought(stocked)) <= coins(bought(shops)));
  });
  rc::prop("all prices and postages doubled cost double", [] {
    const Shops shops = any_shops();
    Shops dear = shops;
    for (Pack& one : dear.packs) one.paid.coins *= 2;
    for (Seller& one : dear.sellers) {
      one.postage->coins *= 2;
      if (one.postage_free_from) one.postage_free_from->coins *= 2;
    }
    RC_ASSERT(coins(bought(dear)) == 2 * coins(bought(shops)));
  });
  rc::prop("a dearer pack never lowers the sum where no sum sends free", [] {
    Shops shops = any_shops();
    for (Seller& one : shops.sellers) one.postage_free_from.reset();
    Shops dear = shops;
    dear.packs[*rc::gen::inRange<std::size_t>(0, dear.packs.size())].paid.coins += 3;
    RC_ASSERT(coins(bought(dear)) >= coins(bought(shops)));
  });
}

TEST_CASE("two threads buy at once", "[trade]") {
  const Shops shops{{{"olive", kg(5)}, {"coconut", kg(7)}},
                    {pack("olive", kg(5), 2750, "mill"), pack("olive", kg(1), 700, "shop"),
                     pack("coconut", kg(2), 900, "mill"), pack("coconut", kg(5), 2000, "shop")},
                    {seller("mill", 690, 8000), seller("shop", 500)}};
  const std::int64_t alone = coins(bought(shops));
  std::vector<int> wrong(2);
  const auto buy_often = [&](int& misses) {
    for (int i = 0; i < 200; ++i) misses += coins(bought(shops)) != alone;
  };
  std::thread other([&] { buy_often(wrong[0]); });
  buy_often(wrong[1]);
  other.join();
  CHECK(wrong == std::vector<int>{0, 0});
}
