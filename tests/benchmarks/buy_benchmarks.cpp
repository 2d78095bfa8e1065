// Times what to buy at least cost: 60 materials, each in 4 packs of 8 sellers, for many orders made
// by chance. Prints the median and the longest, in milliseconds of the thread's processor time, and
// how many were not proved cheapest. Words: how many orders, and how many materials.
#include "trade/buying.h"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <random>
#include <string>
#include <vector>

namespace {

using namespace brimwright;
using namespace brimwright::trade;

const Currency eur{"EUR", 2};

struct Shops {
  std::vector<Need> needs;
  std::vector<Pack> packs;
  std::vector<Seller> sellers;
};

enum class Postage { none, always, free_from_a_sum };

Shops shops_by_chance(std::mt19937& chance, int materials, Postage kind) {
  const auto in = [&](int least, int most) {
    return std::uniform_int_distribution<int>(least, most)(chance);
  };
  Shops shops;
  for (int i = 0; i < 8; ++i) {
    Seller seller{.name = "seller " + std::to_string(i)};
    if (kind != Postage::none) seller.postage = Money{in(390, 990), eur};
    if (kind == Postage::free_from_a_sum) seller.postage_free_from = Money{100 * in(40, 150), eur};
    shops.sellers.push_back(seller);
  }
  const std::vector<double> sizes_kg = {0.25, 0.5, 1, 2.5, 5, 10, 25};
  for (int m = 0; m < materials; ++m) {
    const std::string name = "material " + std::to_string(m);
    shops.needs.push_back({name, Amount::at_least(in(20, 30'000) * gram)});
    const double a_kilogram = in(300, 2'000);
    for (int i = 0; i < 4; ++i) {
      const double size = sizes_kg[static_cast<std::size_t>(in(0, 6))];
      const double price = a_kilogram * size * (1 - 0.05 * size / 5) * in(85, 115) / 100;
      shops.packs.push_back({.material = name,
                             .holds = Amount::at_most(size * kilogram),
                             .paid = {static_cast<std::int64_t>(price), eur},
                             .seller = "seller " + std::to_string(in(0, 7)),
                             .as_of = {}});
    }
  }
  return shops;
}

double now_ms() {
  timespec time{};
  clock_gettime(CLOCK_THREAD_CPUTIME_ID, &time);
  return 1e3 * static_cast<double>(time.tv_sec) + 1e-6 * static_cast<double>(time.tv_nsec);
}

void measure(const char* what, int orders, int materials, Postage kind) {
  std::mt19937 chance(1);
  std::vector<double> times;
  int unproved = 0;
  for (int i = 0; i < orders; ++i) {
    const Shops shops = shops_by_chance(chance, materials, kind);
    const double before = now_ms();
    const Purchase purchase = cheapest(shops.needs, shops.packs, shops.sellers);
    times.push_back(now_ms() - before);
    unproved += purchase.at_least.has_value();
  }
  std::sort(times.begin(), times.end());
  std::printf("%-28s median %7.1f ms, longest %7.1f ms, %d of %d not proved\n", what,
              times[times.size() / 2], times.back(), unproved, orders);
}

}  // namespace

int main(int argc, char** argv) {
  const int orders = argc > 1 ? std::atoi(argv[1]) : 50;
  const int materials = argc > 2 ? std::atoi(argv[2]) : 60;
  setvbuf(stdout, nullptr, _IOLBF, 0);
  measure("no postage", orders, materials, Postage::none);
  measure("postage", orders, materials, Postage::always);
  measure("postage free from a sum on", orders, materials, Postage::free_from_a_sum);
}
