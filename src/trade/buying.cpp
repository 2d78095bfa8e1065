#include "trade/buying.h"

#include "trade/covers.h"
#include "trade/selection.h"
#include "units/written_number.h"

#include <algorithm>
#include <map>
#include <stdexcept>
#include <utility>

namespace brimwright::trade {
namespace {

constexpr std::int64_t most_weight = 1'000'000;  // a thousand needs, in thousandths

struct Sellers {
  std::vector<Postage> postages;              // of those who ask for it
  std::map<std::string, std::size_t> places;  // in the list above, by name
};

Sellers who_ask_for_postage(const std::vector<Seller>& all) {
  Sellers sellers;
  for (const Seller& seller : all) {
    if (!seller.postage || seller.postage->coins == 0) continue;
    if (seller.postage_free_from && seller.postage_free_from->coins <= 0) continue;
    sellers.places.emplace(seller.name, sellers.postages.size());
    sellers.postages.push_back({.coins = seller.postage->coins});
    if (seller.postage_free_from)
      sellers.postages.back().free_from = seller.postage_free_from->coins;
  }
  return sellers;
}

void look_at(const Need& need, const Pack& pack) {
  if (need.amount.is_alike(pack.holds)) return;
  const auto kind = [](const Amount& amount) { return amount.is_pieces() ? "piece" : "weight"; };
  throw UserError(Place{},
                  quoted(need.material) + " is needed by " + kind(need.amount) +
                      ", and a pack of it is sold by " + kind(pack.holds),
                  "say what a pack holds in the way in which it is used");
}

std::int64_t weight_of(const Pack& pack, std::int64_t need) {
  const double needs = static_cast<double>(pack.holds.whole()) / static_cast<double>(need);
  const auto thousandths = static_cast<std::int64_t>(std::min(needs, 1e4) * 1000 + 0.5);
  return std::min(thousandths, most_weight);
}

/// A material that is needed, and the packs of it, by their places.
struct Packed {
  Need need;
  std::vector<std::size_t> packs = {};
};

std::vector<Packed> packed(const std::vector<Need>& needs, const std::vector<Pack>& packs) {
  std::vector<Packed> all;
  for (const Need& need : needs) {
    const auto known = std::find_if(all.begin(), all.end(), [&](const Packed& other) {
      return other.need.material == need.material;
    });
    if (known != all.end())
      throw std::invalid_argument("a material is needed twice: " + need.material);
    if (need.amount.whole() == 0) continue;
    auto& one = all.emplace_back(Packed{need});
    for (std::size_t i = 0; i < packs.size(); ++i)
      if (packs[i].material == need.material) {
        look_at(need, packs[i]);
        one.packs.push_back(i);
      }
  }
  return all;
}

std::vector<Offer> offers(const Packed& material, const std::vector<Pack>& packs,
                          const Sellers& sellers) {
  std::vector<Offer> offers;
  for (const std::size_t i : material.packs) {
    const std::int64_t need = material.need.amount.whole();
    Offer offer{packs[i].holds.whole(), packs[i].paid.coins, weight_of(packs[i], need)};
    const auto seller = sellers.places.find(packs[i].seller);
    if (seller != sellers.places.end()) offer.seller = seller->second;
    offers.push_back(offer);
  }
  return offers;
}

void look_at(const std::vector<Pack>& packs) {
  for (const Pack& pack : packs) {
    if (pack.holds.whole() <= 0 || pack.paid.coins < 0)
      throw std::invalid_argument("a pack of nothing, or below nothing: " + pack.material);
    if (!(pack.paid.currency == packs.front().paid.currency))
      throw UserError(Place{},
                      "packs are paid in " + packs.front().paid.currency.code + " and in " +
                          pack.paid.currency.code,
                      "give all prices in one currency");
  }
}

[[noreturn]] void refuse_so_many(const Need& need) {
  throw UserError(Place{},
                  "more than a million packs of " + quoted(need.material) +
                      " are needed, or a sum of more than 10^15 coins",
                  "look at what a pack holds and costs");
}

Delivery& delivery_of(const std::string& seller, std::vector<Delivery>& deliveries,
                      const Currency& currency) {
  const auto known = std::find_if(deliveries.begin(), deliveries.end(),
                                  [&](const Delivery& one) { return one.seller == seller; });
  if (known != deliveries.end()) return *known;
  return deliveries.emplace_back(Delivery{.seller = seller, .packs = {}, .goods = {0, currency}});
}

/// What sending comes to, from the goods and the seller's own terms.
void add_postage(Delivery& delivery, const std::vector<Seller>& sellers) {
  const Money none{0, delivery.goods.currency};
  if (delivery.seller.empty()) {
    delivery.postage = none;
    return;
  }
  const auto seller = std::find_if(sellers.begin(), sellers.end(),
                                   [&](const Seller& one) { return one.name == delivery.seller; });
  if (seller == sellers.end() || !seller->postage) return;
  delivery.is_postage_free =
      seller->postage_free_from && delivery.goods.coins >= seller->postage_free_from->coins;
  delivery.postage = delivery.is_postage_free ? none : *seller->postage;
}

/// Adds up what is bought anew, from the packs and counts alone.
Purchase purchase(const std::vector<std::int64_t>& counts, const std::vector<Packed>& all,
                  const std::vector<Pack>& packs, const std::vector<Seller>& sellers) {
  Purchase result;
  for (std::size_t i = 0; i < packs.size(); ++i) {
    if (counts[i] == 0) continue;
    Delivery& delivery = delivery_of(packs[i].seller, result.deliveries, packs[i].paid.currency);
    delivery.packs.push_back({i, counts[i]});
    delivery.goods.coins += counts[i] * packs[i].paid.coins;
  }
  for (Delivery& delivery : result.deliveries) {
    add_postage(delivery, sellers);
    if (!result.total) result.total = Money{0, delivery.goods.currency};
    result.total->coins += delivery.goods.coins + (delivery.postage ? delivery.postage->coins : 0);
  }
  for (const Packed& one : all) {
    if (one.packs.empty()) {
      result.unpriced.push_back(one.need);
      continue;
    }
    Amount bought = one.need.amount.times(0);
    for (const std::size_t i : one.packs) bought = bought + packs[i].holds.times(counts[i]);
    if (one.need.amount.less(bought).whole() > 0)
      throw std::logic_error("what is bought does not cover the need of " + one.need.material);
    result.covered.push_back({one.need.material, one.need.amount, bought});
  }
  return result;
}

}  // namespace

Purchase cheapest(const std::vector<Need>& needs, const std::vector<Pack>& packs,
                  const std::vector<Seller>& sellers) {
  look_at(packs);
  const auto all = packed(needs, packs);
  const Sellers posting = who_ask_for_postage(sellers);
  std::vector<const Packed*> priced;
  std::vector<Wanted> materials;
  for (const Packed& one : all) {
    if (one.packs.empty()) continue;
    priced.push_back(&one);
    materials.push_back({one.need.amount.whole(), offers(one, packs, posting)});
  }
  std::vector<std::int64_t> counts(packs.size());
  if (materials.empty()) return purchase(counts, all, packs, sellers);

  const Selection selected = selection(materials, posting.postages);
  for (std::size_t m = 0; m < materials.size(); ++m) {
    if (selected.counts[m].empty()) refuse_so_many(priced[m]->need);
    for (std::size_t i = 0; i < priced[m]->packs.size(); ++i)
      counts[priced[m]->packs[i]] = selected.counts[m][i];
  }
  Purchase result = purchase(counts, all, packs, sellers);
  if (result.total->coins != selected.coins)
    throw std::logic_error("what is bought does not come to what was selected");
  if (selected.at_least < selected.coins)
    result.at_least = Money{selected.at_least, result.total->currency};
  return result;
}

std::optional<CoveredAlone> cheapest_alone(const Need& need, const std::vector<Pack>& packs) {
  look_at(packs);
  const auto all = packed({need}, packs);
  if (all.empty() || all.front().packs.empty()) return std::nullopt;
  std::int64_t work = 100'000;  // steps of the search
  const Covers found = covers(need.amount.whole(), offers(all.front(), packs, {}), {}, -1, work);
  if (!found.are_all || found.worth_a_thought.empty()) return std::nullopt;
  const Cover& best = found.worth_a_thought.front();
  CoveredAlone alone{{best.coins, packs.front().paid.currency}, need.amount.times(0)};
  for (std::size_t i = 0; i < all.front().packs.size(); ++i)
    alone.holds = alone.holds + packs[all.front().packs[i]].holds.times(best.counts[i]);
  return alone;
}

}  // namespace brimwright::trade
