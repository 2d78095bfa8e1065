#pragma once

#include "trade/buying.h"

#include <rapidcheck.h>

#include <string>
#include <vector>

/// Something to buy and those who sell it.
struct Shops {
  std::vector<brimwright::trade::Need> needs;
  std::vector<brimwright::trade::Pack> packs;
  std::vector<brimwright::trade::Seller> sellers;
};

inline const brimwright::Currency eur{"EUR", 2};

/// Small ones, whose every purchase can be gone through: at most five packs of at most three
/// materials, each needed at least once by the piece or by weight, and two sellers at most who ask
/// for postage and may send free from a sum on. Packs are of few sizes and prices, so that ties are
/// common.
inline Shops any_shops() {
  using namespace brimwright::trade;
  const auto in = [](std::int64_t least, std::int64_t most) {
    return *rc::gen::inRange<std::int64_t>(least, most + 1);
  };
  Shops shops;
  const std::int64_t sellers = in(0, 2);
  for (std::int64_t i = 0; i < sellers; ++i) {
    Seller seller{.name = "seller " + std::to_string(i)};
    seller.postage = brimwright::Money{in(0, 8), eur};
    if (in(0, 1) == 1) seller.postage_free_from = brimwright::Money{in(0, 45), eur};
    shops.sellers.push_back(seller);
  }
  const std::int64_t materials = in(1, 3);
  for (std::int64_t m = 0; m < materials; ++m) {
    const std::string name = "material " + std::to_string(m);
    shops.needs.push_back({name, Amount::pieces(in(0, 16))});
    const std::int64_t packs = in(1, materials == 1 ? 4 : materials == 2 ? 2 : 2);
    for (std::int64_t i = 0; i < packs; ++i) {
      Pack pack{.material = name,
                .holds = Amount::pieces(in(3, 9)),
                .paid = {in(2, 14), eur},
                .seller = "",
                .as_of = {}};
      if (const std::int64_t of = in(0, sellers); of > 0)
        pack.seller = shops.sellers[static_cast<std::size_t>(of) - 1].name;
      shops.packs.push_back(pack);
    }
  }
  return shops;
}
