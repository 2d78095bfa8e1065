#include "reports/quote_purchase.h"
#include "reports/quote_tables.h"

#include <algorithm>

namespace brimwright::reports {
namespace {

using costing::QuotedNumber;

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

bool has_tap_water(const QuotedNumber& number) {
  return std::any_of(number.items.begin(), number.items.end(),
                     [](const auto& item) { return item.is_from_tap; });
}

void add_all(std::vector<std::string>& remarks, const std::vector<std::string>& more) {
  remarks.insert(remarks.end(), more.begin(), more.end());
}

}  // namespace

std::vector<std::string> notes_of(const QuoteReport& report) {
  std::vector<std::string> notes = report.remarks;
  if (has_tap_water(report.quote.numbers.front())) notes.push_back(tap_words());
  return notes;
}

std::vector<std::string> notes_of(const OrderQuoteReport& report) {
  std::vector<std::string> notes = report.remarks;
  const auto& lines = report.orders.front().lines;
  if (std::any_of(lines.begin(), lines.end(),
                  [](const auto& line) { return has_tap_water(line.number); }))
    notes.push_back(tap_words());
  return notes;
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

std::vector<std::string> made_already_words(const QuoteReport&) { return {}; }

std::vector<std::string> made_already_words(const OrderQuoteReport& report) {
  std::vector<std::string> words;
  for (std::size_t i = 0; i < report.rests.size(); ++i) {
    const std::string often =
        report.rests.size() == 1 ? "" : "x " + std::to_string(report.orders[i].times) + ": ";
    for (const std::string& one : ready_words(report.rests[i].ready)) words.push_back(often + one);
  }
  return words;
}

std::vector<std::string> remarks_of(const QuoteReport& report, const std::string& way_to_a_price) {
  std::vector<std::string> remarks;
  const auto& unpriced = report.quote.numbers.front().unpriced;
  if (!unpriced.empty()) remarks.push_back(unpriced_remark(unpriced));
  add_way_to_a_price(remarks, report.selling, way_to_a_price);
  add_all(remarks, notes_of(report));
  add_all(remarks, purchase_remarks(report.purchases));
  add_all(remarks, untold_remarks(report));
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
  add_all(remarks, purchase_remarks(report.purchases));
  for (std::size_t i = 0; i < report.orders.size(); ++i)
    for (const PouredTogether& one : report.together[i])
      remarks.push_back(
          (report.orders.size() == 1 ? "" : "x " + std::to_string(report.orders[i].times) + ": ") +
          together_words(one));
  add_all(remarks, notes_of(report));
  const ReadyOrder& ready = report.rests.front().ready;
  if (ready.is_of_records())
    remarks.emplace_back(
        "Costs of a piece and prices are those of all pieces made anew, whatever is made already; "
        "to lay out is what the rest takes, and what packing all that is not delivered takes.");
  if (std::string words = ready_cost_words(ready); !words.empty())
    remarks.push_back(std::move(words));
  for (const Remark& note : ready.notes) remarks.push_back(note.text);
  return remarks;
}

}  // namespace brimwright::reports
