#include "reports/quote_tables.h"

#include "reports/quote_purchase.h"
#include "reports/quote_rows.h"
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
      return item.part == part && item.cost && !item.is_from_tap;
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
    std::vector<QuoteTable> all = {pieces()};
    if (is_of_records()) {
      all.push_back(to_make());
      all.push_back(of_stock());
    }
    all.push_back(each());
    all.push_back(together());
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
    if (!is_of_records()) return table("", told);
    const auto row = [&](const std::string& name, auto pieces_of) {
      told.add(name, [&](auto i) {
        std::int64_t pieces = 0;
        for (const ReadyLine& line : rest(i).ready.lines) pieces += (line.*pieces_of)();
        return std::to_string(pieces);
      });
    };
    row("delivered", &ReadyLine::delivered_of_it);
    row("made already", &ReadyLine::taken);
    row("to make", &ReadyLine::to_make);
    return table("", told);
  }

  const RestQuote& rest(std::size_t i) const { return report_.rests[from_ + i]; }
  bool is_of_records() const {
    return std::any_of(report_.rests.begin(), report_.rests.end(),
                       [](const RestQuote& one) { return one.ready.is_of_records(); });
  }

  QuoteTable to_make() const {
    Rows told = rows();
    for (std::size_t k = 0; k < lines(); ++k)
      told.add(run(k), [&](auto i) {
        const QuotedNumber* number = rest(i).of_line(k);
        return number ? in_money(number->total, where_) : std::string("nothing to make");
      });
    told.add(
        "Cost",
        [&](auto i) {
          const auto& all = rest(i).to_make;
          return all ? amount_text(printed_cost(*all, where_)) : std::string("nothing");
        },
        true);
    return table(costs_heading("WHAT IS LEFT TO MAKE COSTS", report_.selling), told);
  }

  QuoteTable of_stock() const {
    Rows told = rows();
    for (std::size_t k = 0; k < lines(); ++k)
      told.add(run(k), [&](auto i) { return paid_cell(rest(i).ready.lines[k]); });
    return table("WHAT IS MADE ALREADY DID COST, materials by their lots", told);
  }

  static std::string paid_cell(const ReadyLine& line) {
    if (line.batches.empty()) return "none is taken";
    records::PaidCost cost;
    bool is_whole = true;
    for (const ReadyBatch& one : line.batches) {
      if (one.cost) cost.add(*one.cost);
      is_whole = is_whole && one.cost && one.cost->unpriced.empty();
    }
    if (cost.sums.empty()) return "not known";
    std::string text;
    for (const ExactMoney& sum : cost.sums)
      text += (text.empty() ? "" : " + ") + in_money(sum, {}) +
              (cost.sums.size() == 1 ? "" : " " + sum.currency.code);
    return is_whole ? text : "more than " + text;
  }

  QuoteTable each() const {
    Rows told = rows();
    for (std::size_t k = 0; k < lines(); ++k)
      told.add(run(k), [&](auto i) { return in_money(number(i, k).each, where_); });
    return table(costs_heading(is_of_records() ? "A PIECE COSTS, all made anew" : "A PIECE COSTS",
                               report_.selling),
                 told);
  }

  QuoteTable together() const {
    Rows told = rows();
    for (std::size_t k = 0; k < lines(); ++k)
      told.add(run(k), [&](auto i) { return in_money(number(i, k).total, where_); });
    told.add(
        "Cost", [&](auto i) { return amount_text(printed_cost(*orders_[i], where_)); }, true);
    return table(is_of_records() ? "THE ORDER WOULD COST, all made anew" : "THE ORDER COSTS", told);
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

}  // namespace

const QuotedNumber* RestQuote::of_line(std::size_t k) const {
  if (!to_make || ready.lines[k].to_make() == 0) return nullptr;
  std::size_t at = 0;
  for (std::size_t i = 0; i < k; ++i) at += ready.lines[i].to_make() > 0 ? 1 : 0;
  return &to_make->lines[at].number;
}

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

}  // namespace brimwright::reports
