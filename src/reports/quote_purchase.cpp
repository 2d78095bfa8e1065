#include "reports/quote_purchase.h"

#include "reports/quote_rows.h"

#include <algorithm>
#include <functional>

namespace brimwright::reports {
namespace {

std::string sum_of(const Buying& buying, const std::function<Money(const trade::Delivery&)>& part) {
  const auto& purchase = buying.purchase;
  if (!purchase.total) return "0";
  Money sum{0, purchase.total->currency};
  for (const auto& delivery : purchase.deliveries) sum = sum + part(delivery);
  return amount_text(sum);
}

const Buying::Material* material_in(const Buying& buying, const std::string& name) {
  const auto known = std::find_if(buying.materials.begin(), buying.materials.end(),
                                  [&](const Buying::Material& one) { return one.name == name; });
  return known == buying.materials.end() ? nullptr : &*known;
}

}  // namespace

std::vector<QuoteTable> purchase_tables(const std::vector<Buying>& purchases, std::size_t from,
                                        std::size_t columns, const costing::Selling& selling,
                                        const std::vector<std::string>& heads) {
  const auto of = [&](std::size_t i) -> const Buying& { return purchases[from + i]; };
  Rows sums(columns), left(columns);
  sums.add("Packs", [&](auto i) {
    return sum_of(of(i), [](const trade::Delivery& delivery) { return delivery.goods; });
  });
  sums.add("Postage", [&](auto i) {
    return sum_of(of(i), [](const trade::Delivery& delivery) {
      return delivery.postage.value_or(Money{0, delivery.goods.currency});
    });
  });
  sums.add(
      "To lay out",
      [&](auto i) {
        const auto& total = of(i).purchase.total;
        return total ? amount_text(*total) : std::string("0");
      },
      true);
  for (const auto& material : of(0).materials) {
    const auto in = [&](std::size_t i) { return material_in(of(i), material.name); };
    bool is_bought = false;
    for (std::size_t i = 0; i < columns; ++i)
      is_bought = is_bought || (in(i) != nullptr && in(i)->bought.whole() > 0);
    if (is_bought)
      left.add(material.shown, [&](auto i) {
        return in(i) == nullptr ? std::string() : amount_shown_down(in(i)->left());
      });
  }
  std::vector<QuoteTable> tables = {{"TO LAY OUT NOW, whole packs less what you have, in " +
                                         selling.currency.code + (selling.tax ? ", as paid" : ""),
                                     heads, sums.take()}};
  if (auto rows = left.take(); !rows.empty())
    tables.push_back({"LEFT OF THEM WHEN ALL IS MADE", heads, std::move(rows)});
  return tables;
}

std::vector<std::string> purchase_remarks(const std::vector<Buying>& purchases) {
  std::vector<std::string> remarks, without, unknown, makes;
  bool is_proved = true;
  const auto once = [](std::vector<std::string>& names, const std::string& name) {
    if (std::find(names.begin(), names.end(), name) == names.end()) names.push_back(name);
  };
  for (const Buying& buying : purchases) {
    for (const auto& one : buying.materials)
      if (one.is_unpriced) once(without, one.shown);
    for (const auto& note : buying.notes) once(remarks, note.text);
    for (const auto& delivery : buying.purchase.deliveries)
      if (!delivery.postage && !delivery.seller.empty()) once(unknown, delivery.seller);
    for (const auto& make : makes_bought(buying)) once(makes, make);
    is_proved = is_proved && !buying.purchase.at_least;
  }
  const auto listed = [](const std::vector<std::string>& names) {
    std::string all;
    for (const auto& name : names) all += (all.empty() ? "" : ", ") + name;
    return all;
  };
  if (!without.empty())
    remarks.push_back("No pack is listed of " + listed(without) +
                      ": what is to lay out leaves that out.");
  if (!unknown.empty())
    remarks.push_back("The postage of " + listed(unknown) +
                      " is not given, and not in what is to lay out.");
  for (const auto& make : makes)
    remarks.push_back("What is to lay out buys " + make + ", by your word (\"serves_as\").");
  if (!is_proved)
    remarks.emplace_back("What is to lay out is not proved to be the least that is possible.");
  return remarks;
}

}  // namespace brimwright::reports
