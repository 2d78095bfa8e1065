#include "reports/buying_report.h"
#include "reports/buying_words.h"
#include "reports/plan_words.h"
#include "reports/text_table.h"
#include "units/shown_text.h"
#include "units/wording.h"

#include <algorithm>

namespace brimwright::reports {
namespace {

using Side = TextTable::Side;

std::string headed(const std::string& text) { return text + "\n"; }

std::string runs_text(const Buying& buying) {
  std::string text =
      headed(buying.runs.empty()
                 ? std::string("To buy, where nothing is to make")
                 : "To buy for " + counted(static_cast<std::int64_t>(buying.runs.size()), "run"));
  for (const ReadyOrder& order : buying.ready)
    for (const std::string& words : ready_words(order)) text += line(words);
  for (const auto& run : buying.runs)
    text += line(run_words(run) + " (" + on_one_line(run.file) +
                 (run.order.empty() ? "" : ", of " + on_one_line(run.order)) + ")");
  return text;
}

std::string delivery_text(const trade::Delivery& delivery, const Buying& buying) {
  std::string text = "\n" + title(seller_words(delivery, buying), money_words(paid_for(delivery)));
  TextTable table({Side::left, Side::right, Side::right});
  for (const auto& bought : delivery.packs) {
    const trade::Pack& pack = buying.packs[bought.pack];
    const Money sum{bought.count * pack.paid.coins, pack.paid.currency};
    table.row({"[ ] " + shown_as(buying, pack),
               std::to_string(bought.count) + " x " + pack_size(pack.holds), amount_text(sum)});
  }
  text += table.text();
  const std::string postage = postage_words(delivery, buying);
  if (!postage.empty()) text += line("goods " + money_words(delivery.goods) + ", " + postage);
  return text;
}

std::string total_text(const Buying& buying) {
  const auto& purchase = buying.purchase;
  if (!purchase.total) return "\n" + headed("Nothing to buy with a price");
  std::string text = "\n" + title("Altogether", money_words(*purchase.total));
  if (purchase.at_least)
    text += line("Not proved to be the cheapest: no purchase costs less than " +
                 money_words(*purchase.at_least) + ".");
  return text;
}

/// The materials that `belongs` picks, a row each.
template <class Belongs, class Row>
std::string table_of(const Buying& buying, const std::string& heading, Belongs belongs, Row row) {
  TextTable table({Side::left, Side::right, Side::right});
  bool has_rows = false;
  for (const auto& material : buying.materials)
    if (belongs(material)) {
      table.row(row(material));
      has_rows = true;
    }
  return has_rows ? "\n" + headed(heading) + table.text() : "";
}

std::string materials_text(const Buying& buying) {
  using Material = Buying::Material;
  using Cells = std::vector<std::string>;
  return table_of(
             buying, "Unpriced, and not in the sum: no pack is listed",
             [](const Material& one) { return one.is_unpriced; },
             [](const Material& one) -> Cells {
               return {"[ ] " + one.shown, amount_shown_up(one.to_buy) + " to buy"};
             }) +
         table_of(
             buying, "To make ahead, of what is needed for it here",
             [](const Material& one) { return is_to_be_made(one); },
             [](const Material& one) -> Cells {
               return {"[ ] " + one.shown, amount_shown_up(*one.to_make) + " to make"};
             }) +
         table_of(
             buying, "From the shelf", [](const Material& one) { return is_of_shelf(one); },
             [](const Material& one) -> Cells {
               return {one.shown, amount_shown_up(one.needed) + " needed",
                       amount_shown_down(one.left()) + " left"};
             }) +
         table_of(
             buying, "Left when all is made",
             [](const Material& one) { return one.bought.whole() > 0; },
             [](const Material& one) -> Cells {
               return {one.shown, amount_shown_up(one.needed) + " needed",
                       amount_shown_down(one.left()) + " left"};
             });
}

std::string stock_text(const Buying& buying) {
  if (!buying.stock) return "";
  const auto& stock = *buying.stock;
  std::string text = "\n" + headed("With what is on the shelf");
  text += line(stock.pieces == 0 ? "No number of pieces can be made."
                                 : counted(stock.pieces, "piece") + " to sell can be made, in " +
                                       counted(stock.batches, "batch", "batches") + ".");
  if (!stock.short_for) return text;
  text += line("For " + std::to_string(*stock.short_for) + " there is too little of:");
  TextTable table({Side::left, Side::right, Side::right});
  for (const auto& limit : stock.limited_by)
    table.row({limit.shown, amount_shown_up(limit.needed) + " needed",
               amount_shown_down(limit.have) + " there"});
  return text + table.text();
}

}  // namespace

std::string buying_text(const Buying& buying) {
  std::string text = runs_text(buying);
  for (const auto& delivery : buying.purchase.deliveries) text += delivery_text(delivery, buying);
  text += total_text(buying) + materials_text(buying) + stock_text(buying);
  const bool has_notes = std::any_of(buying.ready.begin(), buying.ready.end(),
                                     [](const ReadyOrder& one) { return !one.notes.empty(); });
  if (!buying.notes.empty() || !buying.together.empty() || has_notes)
    text += "\n" + headed("Notes");
  for (const ReadyOrder& order : buying.ready)
    for (const Remark& note : order.notes) text += line(note.text);
  for (const auto& [order, lines] : buying.together) text += line(together_words(lines));
  for (const Remark& note : buying.notes) text += line(note.text);
  return text;
}

}  // namespace brimwright::reports
