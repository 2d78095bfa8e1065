#include "reports/buying_report.h"
#include "units/printing.h"

#include <string_view>
#include <vector>

namespace brimwright::reports {
namespace {

/// A cell of text: in quotes where RFC 4180 asks for them, led by an apostrophe where a spreadsheet
/// would work it out.
std::string text_cell(std::string text) {
  constexpr std::string_view formula_begins = "=+-@\t\r";
  if (!text.empty() && formula_begins.find(text.front()) != std::string_view::npos)
    text.insert(0, 1, '\'');
  if (text.find_first_of("\",\r\n") == std::string::npos) return text;
  std::string quoted = "\"";
  for (const char c : text) quoted += c == '"' ? "\"\"" : std::string(1, c);
  return quoted + "\"";
}

std::string row(const std::vector<std::string>& cells) {
  std::string line;
  for (const std::string& cell : cells) line += (&cell == &cells.front() ? "" : ",") + cell;
  return line + "\r\n";
}

}  // namespace

std::string buying_csv(const Buying& buying) {
  std::string text =
      row({"seller", "material", "name", "packs", "pack", "unit", "price", "sum", "currency"});
  for (const auto& delivery : buying.purchase.deliveries) {
    for (const auto& bought : delivery.packs) {
      const trade::Pack& pack = buying.packs[bought.pack];
      text += row({text_cell(delivery.seller), text_cell(pack.material),
                   text_cell(shown_as(buying, pack.material)), std::to_string(bought.count),
                   pack.holds.is_pieces() ? std::to_string(pack.holds.whole())
                                          : trimmed(pack.holds.mass() / gram, 6),
                   pack.holds.is_pieces() ? "piece" : "g", amount_text(pack.paid),
                   amount_text({bought.count * pack.paid.coins, pack.paid.currency}),
                   pack.paid.currency.code});
    }
    if (delivery.seller.empty()) continue;
    text += row({text_cell(delivery.seller), "", "postage", "", "", "", "",
                 delivery.postage ? amount_text(*delivery.postage) : "not given",
                 delivery.goods.currency.code});
  }
  for (const auto& one : buying.materials)
    if (one.is_unpriced)
      text += row({"", text_cell(one.name), text_cell(one.shown), "", "", "", "", "unpriced", ""});
  return text;
}

}  // namespace brimwright::reports
