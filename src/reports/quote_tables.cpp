#include "reports/quote_tables.h"

#include "units/printing.h"
#include "units/wording.h"

#include <algorithm>
#include <functional>

namespace brimwright::reports {
namespace {

using costing::QuotedNumber;
using trade::ExactMoney;

std::string in_percent_of(const trade::Fraction& share) {
  return trimmed(share.convert_to<double>() * 100, 1) + " %";
}

std::string asking_text(const trade::Asking& asking) {
  if (const auto* margin = std::get_if<trade::Margin>(&asking))
    return "margin " + in_percent(margin->of_price, 2);
  if (const auto* markup = std::get_if<trade::Markup>(&asking))
    return "markup " + in_percent(markup->of_cost, 2);
  return "price as set";
}

std::string in_capitals(std::string name) {
  std::transform(name.begin(), name.end(), name.begin(),
                 [](char c) { return c >= 'a' && c <= 'z' ? static_cast<char>(c - 32) : c; });
  return name;
}

std::string heading_of(const costing::SellingWay& way) {
  return in_capitals(way.name) + ", " + asking_text(way.asking);
}

std::string costs_heading(const std::string& what, const costing::Selling& selling) {
  return what + ", in " + selling.currency.code + (selling.tax ? ", without tax" : "");
}

using Cell = std::function<std::string(std::size_t)>;

/// Rows of a table, a cell for each of its columns.
class Rows {
 public:
  explicit Rows(std::size_t columns) : columns_(columns) {}

  void add(const std::string& name, const Cell& cell, bool is_sum = false) {
    rows_.push_back({name, {}, is_sum});
    for (std::size_t i = 0; i < columns_; ++i) rows_.back().cells.push_back(cell(i));
  }
  void head(const std::string& name) { rows_.push_back({name}); }
  std::vector<QuoteRow> take() { return std::move(rows_); }

 private:
  std::size_t columns_;
  std::vector<QuoteRow> rows_;
};

// What stands below the price of a piece and that of a whole order alike.

template <class Told>
void add_where_it_goes(Rows& rows, const costing::Selling& selling, const Place& where,
                       const std::function<const Told&(std::size_t)>& told) {
  if (selling.tax)
    rows.add("tax in it", [&](auto i) {
      return selling.tax->is_in_asked ? in_money(told(i).tax, where) : std::string("none");
    });
  if (selling.fees) rows.add("fees", [&](auto i) { return in_money(told(i).fees, where); });
  rows.add("left for you", [&](auto i) { return in_money(told(i).profit, where); });
  rows.add("margin, of the price", [&](auto i) { return in_percent_of(told(i).margin); });
  rows.add("markup, on the cost", [&](auto i) { return in_percent_of(told(i).markup); });
}

// What is laid out now, in whole packs.

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

/// What the sums to lay out leave out, or take for more than is known.
std::vector<std::string> purchase_remarks(const std::vector<Buying>& purchases) {
  std::vector<std::string> remarks, without, unknown, makes;
  bool is_proved = true;
  const auto once = [](std::vector<std::string>& names, const std::string& name) {
    if (std::find(names.begin(), names.end(), name) == names.end()) names.push_back(name);
  };
  for (const Buying& buying : purchases) {
    for (const auto& one : buying.materials)
      if (one.is_unpriced) once(without, one.shown);
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

std::string unpriced_remark(const std::vector<std::string>& names) {
  std::string listed;
  for (const auto& name : names) listed += (listed.empty() ? "" : ", ") + name;
  return "UNPRICED: " + listed +
         ". The costs leave them out, and there is no price to ask before they have one.";
}

std::string below_cost(const std::string& way, const std::string& asked,
                       const std::string& on_what) {
  return "BELOW COST: " + way + " at " + asked + " loses money on " + on_what + ".";
}

/// Some of a run's numbers of pieces, with what was rounded of each.
class Columns {
 public:
  Columns(const QuoteReport& report, std::size_t from)
      : report_(report), from_(from), where_{report.run.file, ""} {
    const auto& numbers = report.quote.numbers;
    for (std::size_t i = from; i < std::min(from + side_by_side, numbers.size()); ++i) {
      numbers_.push_back(&numbers[i]);
      costs_.push_back(printed(numbers[i], where_));
    }
    heads_ = {"Pieces to sell"};
    for (const auto* number : numbers_) heads_.push_back(std::to_string(number->pieces.sell));
  }

  std::vector<QuoteTable> tables() const {
    std::vector<QuoteTable> all = {pieces(), parts()};
    for (std::size_t way = 0; way < numbers_.front()->prices.size(); ++way)
      all.push_back(price(way));
    all.push_back(items());
    for (auto& table :
         purchase_tables(report_.purchases, from_, numbers_.size(), report_.selling, heads_))
      all.push_back(std::move(table));
    return all;
  }

 private:
  QuoteTable table(const std::string& title, Rows rows) const {
    return {title, heads_, rows.take()};
  }
  Rows rows() const { return Rows(numbers_.size()); }

  QuoteTable pieces() const {
    const auto of = [&](std::size_t i) -> const planning::Pieces& { return numbers_[i]->pieces; };
    Rows told = rows();
    told.add("Pieces to sell", [&](auto i) { return std::to_string(of(i).sell); });
    told.add("to make", [&](auto i) { return std::to_string(of(i).make); });
    told.add("fillings", [&](auto i) { return std::to_string(of(i).fillings); });
    told.add("batches", [&](auto i) { return std::to_string(of(i).batches); });
    return table("", told);
  }

  QuoteTable parts() const {
    Rows told = rows();
    for (std::size_t k = 0; k < costs_.front().parts.size(); ++k)
      told.add(name_of(costs_.front().parts[k].part), [&](auto i) {
        const auto& [part, each] = costs_[i].parts[k];
        return is_unpriced(*numbers_[i], part) ? std::string("unpriced") : amount_text(each);
      });
    told.add(
        "Cost", [&](auto i) { return amount_text(costs_[i].each); }, true);
    return table(costs_heading("A PIECE COSTS", report_.selling), told);
  }

  QuoteTable price(std::size_t way) const {
    const std::function<const trade::PriceTold&(std::size_t)> told =
        [&](std::size_t i) -> const trade::PriceTold& { return numbers_[i]->prices[way].told; };
    Rows shown = rows();
    shown.add(ask_words(report_.selling), [&](auto i) { return amount_text(told(i).asked); });
    add_where_it_goes(shown, report_.selling, where_, told);
    return table(heading_of(numbers_.front()->prices[way].way), shown);
  }

  /// Nothing in it has a price.
  static bool is_unpriced(const QuotedNumber& number, costing::CostPart part) {
    return std::none_of(number.items.begin(), number.items.end(), [&](const auto& item) {
      return item.part == part && item.cost.has_value();
    });
  }

  QuoteTable items() const {
    Rows told = rows();
    const auto& items = numbers_.front()->items;
    for (std::size_t k = 0; k < items.size(); ++k) {
      if (k == 0 || items[k].part != items[k - 1].part) told.head(name_of(items[k].part));
      told.add("  " + items[k].name, [&](auto i) {
        return numbers_[i]->items[k].cost ? amount_text(costs_[i].items[k])
                                          : std::string("unpriced");
      });
    }
    told.add(
        "Sum", [&](auto i) { return amount_text(costs_[i].total); }, true);
    return table("THE RUN COSTS", told);
  }

  const QuoteReport& report_;
  std::size_t from_;
  Place where_;
  std::vector<const QuotedNumber*> numbers_;
  std::vector<PrintedCost> costs_;
  std::vector<std::string> heads_;
};

/// Some of the numbers of times that an order is made.
class OrderColumns {
 public:
  OrderColumns(const OrderQuoteReport& report, std::size_t from)
      : report_(report), from_(from), where_{report.source, ""} {
    heads_ = {"Times the order"};
    for (std::size_t i = from; i < std::min(from + side_by_side, report.orders.size()); ++i) {
      orders_.push_back(&report.orders[i]);
      heads_.push_back("x " + std::to_string(report.orders[i].times));
    }
  }

  std::vector<QuoteTable> tables() const {
    std::vector<QuoteTable> all = {pieces(), each(), together()};
    for (std::size_t way = 0; way < orders_.front()->prices.size(); ++way)
      all.push_back(price(way));
    for (auto& table :
         purchase_tables(report_.purchases, from_, orders_.size(), report_.selling, heads_))
      all.push_back(std::move(table));
    return all;
  }

 private:
  QuoteTable table(const std::string& title, Rows rows) const {
    return {title, heads_, rows.take()};
  }
  Rows rows() const { return Rows(orders_.size()); }
  std::size_t lines() const { return orders_.front()->lines.size(); }
  const std::string& run(std::size_t k) const { return orders_.front()->lines[k].run; }
  const QuotedNumber& number(std::size_t i, std::size_t k) const {
    return orders_[i]->lines[k].number;
  }

  QuoteTable pieces() const {
    Rows told = rows();
    if (orders_.size() > 1)
      told.add("Times the order", [&](auto i) { return "x " + std::to_string(orders_[i]->times); });
    for (std::size_t k = 0; k < lines(); ++k)
      told.add(run(k), [&](auto i) { return std::to_string(number(i, k).pieces.sell); });
    told.add(
        "Pieces to sell", [&](auto i) { return std::to_string(orders_[i]->pieces); }, true);
    return table("", told);
  }

  QuoteTable each() const {
    Rows told = rows();
    for (std::size_t k = 0; k < lines(); ++k)
      told.add(run(k), [&](auto i) { return in_money(number(i, k).each, where_); });
    return table(costs_heading("A PIECE COSTS", report_.selling), told);
  }

  QuoteTable together() const {
    Rows told = rows();
    for (std::size_t k = 0; k < lines(); ++k)
      told.add(run(k), [&](auto i) { return in_money(number(i, k).total, where_); });
    told.add(
        "Cost", [&](auto i) { return amount_text(printed_cost(*orders_[i], where_)); }, true);
    return table("THE ORDER COSTS", told);
  }

  QuoteTable price(std::size_t way) const {
    const std::function<const costing::OrderPrice&(std::size_t)> told =
        [&](std::size_t i) -> const costing::OrderPrice& { return orders_[i]->prices[way]; };
    Rows shown = rows();
    for (std::size_t k = 0; k < lines(); ++k)
      shown.add(run(k) + ", each",
                [&](auto i) { return amount_text(number(i, k).prices[way].told.asked); });
    shown.add(
        ask_words(report_.selling), [&](auto i) { return in_money(told(i).asked, where_); }, true);
    add_where_it_goes(shown, report_.selling, where_, told);
    return table(heading_of(orders_.front()->prices[way].way), shown);
  }

  const OrderQuoteReport& report_;
  std::size_t from_;
  Place where_;
  std::vector<const costing::QuotedOrder*> orders_;
  std::vector<std::string> heads_;
};

void add_alarms(std::vector<std::string>& alarms, const std::string& of,
                const QuotedNumber& number) {
  const std::string pieces = of + std::to_string(number.pieces.sell) + " pieces";
  const std::string begin = pieces + ": ", each_of_them = "each of " + pieces;
  for (const auto& danger : number.dangers) alarms.push_back(begin + danger);
  for (const auto& [way, told] : number.prices)
    if (told.profit.coins < 0)
      alarms.push_back(below_cost(way.name, amount_text(told.asked), each_of_them));
}

void add_way_to_a_price(std::vector<std::string>& remarks, const costing::Selling& selling,
                        const std::string& way_to_a_price) {
  if (selling.ways.empty()) remarks.push_back("No price to ask: " + way_to_a_price + ".");
}

std::int64_t largest(const costing::Quote& quote) {
  std::int64_t most = 0;
  for (const auto& number : quote.numbers) most = std::max(most, number.pieces.sell);
  return most;
}

}  // namespace

std::string in_money(const ExactMoney& money, const Place& where) {
  return amount_text(trade::to_coin(money, trade::ToCoin::nearest, where));
}

Money printed_cost(const costing::QuotedOrder& order, const Place& where) {
  Money sum{0, order.cost.currency};
  for (const auto& [run, number] : order.lines)
    sum = sum + trade::to_coin(number.total, trade::ToCoin::nearest, where);
  return sum;
}

std::string ask_words(const costing::Selling& selling) {
  if (!selling.tax) return "Ask";
  return selling.tax->is_in_asked ? "Ask, with tax" : "Ask, without tax";
}

std::vector<QuoteTable> tables_of(const QuoteReport& report, std::size_t from) {
  return Columns(report, from).tables();
}

std::vector<QuoteTable> tables_of(const OrderQuoteReport& report, std::size_t from) {
  return OrderColumns(report, from).tables();
}

std::size_t columns_of(const QuoteReport& report) { return report.quote.numbers.size(); }
std::size_t columns_of(const OrderQuoteReport& report) { return report.orders.size(); }

std::optional<QuoteTable> steps_table(const QuoteReport& report) {
  const auto& steps = report.quote.steps;
  if (steps.empty()) return std::nullopt;
  QuoteTable table{.title = "STEPS, up to " + std::to_string(2 * largest(report.quote)) + " pieces",
                   .heads = {"piece", "fillings", "batches", "tray fills", "bags", "costs more by"},
                   .rows = {},
                   .needs_heads = true};
  const auto up = [](std::int64_t before, std::int64_t after) {
    const std::int64_t more = after - before;
    return more == 0 ? std::string() : (more > 0 ? "+" : "") + std::to_string(more);
  };
  const Place where{report.run.file, ""};
  for (const auto& [sell, before, after, more] : steps)
    table.rows.push_back({std::to_string(sell),
                          {up(before.fillings, after.fillings), up(before.batches, after.batches),
                           up(before.tray_fills, after.tray_fills), up(before.bags, after.bags),
                           more ? in_money(*more, where) : "unpriced"}});
  return table;
}

std::optional<QuoteTable> pack_steps_table(const QuoteReport& report) {
  if (report.pack_steps.empty()) return std::nullopt;
  QuoteTable table{.title = "ANOTHER PACK, up to " + std::to_string(2 * largest(report.quote)) +
                            " pieces: each material by itself, no postage",
                   .heads = {"piece", "of", "to lay out more"},
                   .rows = {},
                   .needs_heads = true};
  for (const PackStep& step : report.pack_steps)
    table.rows.push_back({std::to_string(step.sell), {step.shown, amount_text(step.more)}});
  return table;
}

std::vector<std::string> alarms_of(const QuoteReport& report) {
  std::vector<std::string> alarms;
  for (const auto& number : report.quote.numbers) add_alarms(alarms, "", number);
  return alarms;
}

std::vector<std::string> alarms_of(const OrderQuoteReport& report) {
  std::vector<std::string> alarms;
  for (const auto& order : report.orders)
    for (const auto& [run, number] : order.lines) add_alarms(alarms, run + ", ", number);
  return alarms;
}

std::vector<std::string> remarks_of(const QuoteReport& report, const std::string& way_to_a_price) {
  std::vector<std::string> remarks;
  const auto& unpriced = report.quote.numbers.front().unpriced;
  if (!unpriced.empty()) remarks.push_back(unpriced_remark(unpriced));
  add_way_to_a_price(remarks, report.selling, way_to_a_price);
  for (auto& remark : purchase_remarks(report.purchases)) remarks.push_back(std::move(remark));
  if (report.quote.numbers.size() == 1)
    for (const auto& one : report.quote.numbers.front().around) remarks.push_back(one.text);
  for (const auto& [from, to, why] : report.quote.gaps)
    remarks.push_back(
        (from == to ? std::to_string(from) : std::to_string(from) + " to " + std::to_string(to)) +
        " cannot be made: " + why + ".");
  return remarks;
}

std::vector<std::string> remarks_of(const OrderQuoteReport& report,
                                    const std::string& way_to_a_price) {
  std::vector<std::string> remarks;
  const auto& unpriced = report.orders.front().unpriced;
  if (!unpriced.empty()) remarks.push_back(unpriced_remark(unpriced));
  add_way_to_a_price(remarks, report.selling, way_to_a_price);
  for (auto& remark : purchase_remarks(report.purchases)) remarks.push_back(std::move(remark));
  for (std::size_t i = 0; i < report.orders.size(); ++i)
    for (const PouredTogether& one : report.together[i])
      remarks.push_back(
          (report.orders.size() == 1 ? "" : "x " + std::to_string(report.orders[i].times) + ": ") +
          together_words(one));
  remarks.insert(remarks.end(), report.remarks.begin(), report.remarks.end());
  return remarks;
}

}  // namespace brimwright::reports
