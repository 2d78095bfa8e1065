#include "reports/quote_report.h"
#include "reports/text_table.h"
#include "units/printing.h"
#include "units/wording.h"

#include <algorithm>

namespace brimwright::reports {
namespace {

using Side = TextTable::Side;
using costing::QuotedNumber;

constexpr std::size_t side_by_side = 4;  // as many numbers of pieces as a line of text has room for

std::string line(const std::string& text) { return wrapped(text, "  ", "  "); }

std::string in_money(const trade::ExactMoney& money, const Place& where) {
  return amount_text(trade::to_coin(money, trade::ToCoin::nearest, where));
}

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

/// Some of the numbers, with what was rounded of each.
class Columns {
 public:
  Columns(const std::vector<QuotedNumber>& numbers, std::size_t from, const Place& where)
      : where_(where) {
    const std::size_t to = std::min(from + side_by_side, numbers.size());
    for (std::size_t i = from; i < to; ++i) {
      numbers_.push_back(&numbers[i]);
      costs_.push_back(printed(numbers[i], where));
    }
  }

  std::string text(const costing::Selling& selling) const {
    return pieces() + "\nA PIECE COSTS, in " + selling.currency.code +
           (selling.tax ? ", without tax" : "") + "\n" + parts() + prices(selling) +
           "\nTHE RUN COSTS\n" + items();
  }

 private:
  template <class Cell>
  void row(TextTable& table, const std::string& name, Cell cell) const {
    std::vector<std::string> cells = {name};
    for (std::size_t i = 0; i < numbers_.size(); ++i) cells.push_back(cell(i));
    table.row(std::move(cells));
  }
  TextTable table() const {
    std::vector<Side> sides(numbers_.size() + 1, Side::right);
    sides.front() = Side::left;
    return TextTable(sides);
  }
  const planning::Pieces& pieces_of(std::size_t i) const { return numbers_[i]->pieces; }

  std::string pieces() const {
    TextTable told = table();
    row(told, "Pieces to sell", [&](auto i) { return std::to_string(pieces_of(i).sell); });
    row(told, "to make", [&](auto i) { return std::to_string(pieces_of(i).make); });
    row(told, "fillings", [&](auto i) { return std::to_string(pieces_of(i).fillings); });
    row(told, "batches", [&](auto i) { return std::to_string(pieces_of(i).batches); });
    return told.text();
  }

  std::string parts() const {
    TextTable told = table();
    for (std::size_t k = 0; k < costs_.front().parts.size(); ++k)
      row(told, name_of(costs_.front().parts[k].part), [&](auto i) {
        const auto& [part, each] = costs_[i].parts[k];
        return is_unpriced(*numbers_[i], part) ? std::string("unpriced") : amount_text(each);
      });
    told.rule();
    row(told, "Cost", [&](auto i) { return amount_text(costs_[i].each); });
    return told.text();
  }

  std::string prices(const costing::Selling& selling) const {
    std::string text;
    for (std::size_t k = 0; k < numbers_.front()->prices.size(); ++k) {
      const auto& way = numbers_.front()->prices[k].way;
      const auto told = [&](std::size_t i) -> const trade::PriceTold& {
        return numbers_[i]->prices[k].told;
      };
      TextTable table = this->table();
      const std::string ask = !selling.tax               ? "Ask"
                              : selling.tax->is_in_asked ? "Ask, with tax"
                                                         : "Ask, without tax";
      row(table, ask, [&](auto i) { return amount_text(told(i).asked); });
      if (selling.tax)
        row(table, "tax in it", [&](auto i) {
          return selling.tax->is_in_asked ? in_money(told(i).tax, where_) : std::string("none");
        });
      if (selling.fees) row(table, "fees", [&](auto i) { return in_money(told(i).fees, where_); });
      row(table, "left for you", [&](auto i) { return in_money(told(i).profit, where_); });
      row(table, "margin, of the price", [&](auto i) { return in_percent_of(told(i).margin); });
      row(table, "markup, on the cost", [&](auto i) { return in_percent_of(told(i).markup); });
      text += "\n" + for_heading(way.name) + ", " + asking_text(way.asking) + "\n" + table.text();
    }
    return text;
  }

  /// Nothing in it has a price.
  static bool is_unpriced(const QuotedNumber& number, costing::CostPart part) {
    return std::none_of(number.items.begin(), number.items.end(), [&](const auto& item) {
      return item.part == part && item.cost.has_value();
    });
  }

  static std::string for_heading(std::string name) {
    std::transform(name.begin(), name.end(), name.begin(),
                   [](char c) { return c >= 'a' && c <= 'z' ? static_cast<char>(c - 32) : c; });
    return name;
  }

  std::string items() const {
    TextTable told = table();
    const auto& items = numbers_.front()->items;
    for (std::size_t k = 0; k < items.size(); ++k) {
      if (k == 0 || items[k].part != items[k - 1].part) told.row({name_of(items[k].part)});
      row(told, "  " + items[k].name, [&](auto i) {
        return numbers_[i]->items[k].cost ? amount_text(costs_[i].items[k])
                                          : std::string("unpriced");
      });
    }
    told.rule();
    row(told, "Sum", [&](auto i) { return amount_text(costs_[i].total); });
    return told.text();
  }

  std::vector<const QuotedNumber*> numbers_;
  std::vector<PrintedCost> costs_;
  Place where_;
};

std::string unpriced_text(const costing::Quote& quote) {
  const auto& names = quote.numbers.front().unpriced;
  if (names.empty()) return "";
  std::string listed;
  for (const auto& name : names) listed += (listed.empty() ? "" : ", ") + name;
  return line("UNPRICED: " + listed +
              ". What is above leaves them out, and there is no price to ask before they have "
              "one.") +
         "\n";
}

std::string dangers_text(const costing::Quote& quote) {
  std::string text;
  for (const auto& number : quote.numbers)
    for (const auto& danger : number.dangers)
      text += wrapped(std::to_string(number.pieces.sell) + " pieces: " + danger, "!! ", "   ");
  return text.empty() ? "" : text + "\n";
}

std::string around_text(const costing::Quote& quote) {
  if (quote.numbers.size() != 1) return "";
  std::string text;
  for (const auto& one : quote.numbers.front().around) text += line(one.text);
  return text.empty() ? "" : "\n" + text;
}

std::string below_cost_text(const costing::Quote& quote) {
  std::string text;
  for (const auto& number : quote.numbers)
    for (const auto& [way, told] : number.prices)
      if (told.profit.coins < 0)
        text += wrapped("BELOW COST: " + way.name + " at " + amount_text(told.asked) +
                            " loses money on each of " + std::to_string(number.pieces.sell) +
                            " pieces.",
                        "!! ", "   ");
  return text.empty() ? "" : text + "\n";
}

std::int64_t largest(const costing::Quote& quote) {
  std::int64_t most = 0;
  for (const auto& number : quote.numbers) most = std::max(most, number.pieces.sell);
  return most;
}

std::string gaps_text(const std::vector<costing::Gap>& gaps) {
  std::string text;
  for (const auto& gap : gaps) {
    const std::string numbers = gap.from == gap.to
                                    ? std::to_string(gap.from)
                                    : std::to_string(gap.from) + " to " + std::to_string(gap.to);
    text += wrapped(numbers + " cannot be made: " + gap.why + ".", "  ", "    ");
  }
  return text;
}

/// What goes up at each of them.
std::string steps_text(const costing::Quote& quote, const Place& where) {
  if (quote.steps.empty() && quote.gaps.empty()) return "";
  TextTable table(std::vector<Side>(6, Side::right));
  table.row({"piece", "fillings", "batches", "tray fills", "bags", "costs more by"});
  const auto up = [](std::int64_t before, std::int64_t after) {
    const std::int64_t more = after - before;
    return more == 0 ? std::string() : (more > 0 ? "+" : "") + std::to_string(more);
  };
  for (const auto& [sell, before, after, more] : quote.steps)
    table.row({std::to_string(sell), up(before.fillings, after.fillings),
               up(before.batches, after.batches), up(before.tray_fills, after.tray_fills),
               up(before.bags, after.bags), more ? in_money(*more, where) : "unpriced"});
  return "\nSTEPS, up to " + std::to_string(2 * largest(quote)) + " pieces\n" +
         (quote.steps.empty() ? "" : table.text()) + gaps_text(quote.gaps);
}

}  // namespace

std::string quote_text(const planning::Run& run, const costing::Quote& quote,
                       const costing::Selling& selling, const std::string& way_to_a_price) {
  const Place where{run.file, ""};
  std::string text =
      dangers_text(quote) + below_cost_text(quote) + run.name + "\n\n" + unpriced_text(quote);
  for (std::size_t i = 0; i < quote.numbers.size(); i += side_by_side)
    text += (i == 0 ? "" : "\n") + Columns(quote.numbers, i, where).text(selling);
  if (selling.ways.empty()) text += "\n" + line("No price to ask: " + way_to_a_price + ".");
  return text + around_text(quote) + steps_text(quote, where);
}

}  // namespace brimwright::reports
