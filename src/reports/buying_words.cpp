#include "reports/buying_words.h"

#include "units/wording.h"

#include <algorithm>

namespace brimwright::reports {
namespace {

const trade::Seller* seller_of(const Buying& buying, const std::string& name) {
  const auto known = std::find_if(buying.sellers.begin(), buying.sellers.end(),
                                  [&](const trade::Seller& one) { return one.name == name; });
  return known == buying.sellers.end() ? nullptr : &*known;
}

}  // namespace

std::string money_words(const Money& sum) { return amount_text(sum) + " " + sum.currency.code; }

std::string run_words(const Buying::Run& run) {
  return run.name + ": " + counted(run.sell, "piece") + " to sell, " + std::to_string(run.make) +
         " to make";
}

std::string seller_words(const trade::Delivery& delivery, const Buying& buying) {
  if (delivery.seller.empty()) return "Without a seller";
  const auto* seller = seller_of(buying, delivery.seller);
  if (!seller || !seller->lead_days) return delivery.seller;
  return delivery.seller + " (there in " + counted(*seller->lead_days, "day") + ")";
}

std::string postage_words(const trade::Delivery& delivery, const Buying& buying) {
  if (delivery.seller.empty()) return "";
  if (!delivery.postage) return "postage not given";
  if (!delivery.is_postage_free) return "postage " + money_words(*delivery.postage);
  return "postage free from " +
         money_words(*seller_of(buying, delivery.seller)->postage_free_from) + " on";
}

Money paid_for(const trade::Delivery& delivery) {
  return delivery.goods + delivery.postage.value_or(Money{0, delivery.goods.currency});
}

bool is_to_be_made(const Buying::Material& material) {
  return material.to_make && material.to_make->whole() > 0;
}

bool is_of_shelf(const Buying::Material& material) {
  return material.to_buy.whole() == 0 && material.needed.whole() > 0 && !is_to_be_made(material);
}

std::string tap_words() {
  return "Water is taken from the tap: it has no price and no pack, so it costs nothing and is not "
         "bought. If you buy it, list it as \"distilled water\".";
}

std::string shown_as(const Buying& buying, const std::string& material) {
  const auto known =
      std::find_if(buying.materials.begin(), buying.materials.end(),
                   [&](const Buying::Material& one) { return one.name == material; });
  return known == buying.materials.end() ? material : known->shown;
}

std::string shown_as(const Buying& buying, const trade::Pack& pack) {
  const std::string material = shown_as(buying, pack.material);
  return pack.make.empty() ? material : pack.make + ", in place of " + material;
}

std::vector<std::string> makes_bought(const Buying& buying) {
  std::vector<std::string> makes;
  for (const auto& delivery : buying.purchase.deliveries)
    for (const auto& bought : delivery.packs) {
      const trade::Pack& pack = buying.packs[bought.pack];
      const std::string shown = shown_as(buying, pack);
      if (!pack.make.empty() && !pack.holds.is_pieces() &&
          std::find(makes.begin(), makes.end(), shown) == makes.end())
        makes.push_back(shown);
    }
  return makes;
}

}  // namespace brimwright::reports
