#include "reports/buying_words.h"
#include "units/printing.h"
#include "units/wording.h"

#include <set>
#include <string>
#include <utility>

namespace brimwright::reports {
namespace {

using Material = Buying::Material;

/// What is to be put into the basket, a box a line.
SheetGrid basket(const trade::Delivery& delivery, const Buying& buying) {
  SheetGrid grid{.rows = {{"", "packs", "price, " + delivery.goods.currency.code}},
                 .has_boxes = true};
  for (const auto& [number, count] : delivery.packs) {
    const trade::Pack& pack = buying.packs[number];
    grid.rows.push_back({pack.make.empty() ? shown_as(buying, pack) : pack.make,
                         std::to_string(count) + " x " + pack_size(pack.holds),
                         amount_text({count * pack.paid.coins, pack.paid.currency})});
  }
  return grid;
}

/// Goods of another make, each once.
void add_makes(Sheet& sheet, const trade::Delivery& delivery, const Buying& buying) {
  std::set<std::string> told;
  for (const auto& bought : delivery.packs) {
    const trade::Pack& pack = buying.packs[bought.pack];
    const std::string shown = shown_as(buying, pack);
    if (!pack.make.empty() && told.insert(shown).second)
      sheet.blocks.emplace_back(SheetWords{shown + "."});
  }
}

void add_seller(Sheet& sheet, const trade::Delivery& delivery, const Buying& buying) {
  sheet.blocks.emplace_back(
      SheetHeading{seller_words(delivery, buying), money_words(paid_for(delivery))});
  sheet.blocks.emplace_back(basket(delivery, buying));
  add_makes(sheet, delivery, buying);
  const std::string postage = postage_words(delivery, buying);
  if (!postage.empty())
    sheet.blocks.emplace_back(
        SheetWords{"Goods " + money_words(delivery.goods) + ", " + postage + "."});
}

void add_unpriced(Sheet& sheet, const Buying& buying) {
  SheetGrid grid{.rows = {{"", "to buy"}}, .has_boxes = true};
  for (const Material& one : buying.materials)
    if (one.is_unpriced) grid.rows.push_back({one.shown, amount_shown_up(one.to_buy)});
  if (grid.rows.size() == 1) return;
  sheet.blocks.emplace_back(SheetHeading{"No pack is listed", "unpriced, not in the sum"});
  sheet.blocks.emplace_back(std::move(grid));
}

void add_to_make(Sheet& sheet, const Buying& buying) {
  SheetGrid grid{.rows = {{"", "to make"}}, .has_boxes = true};
  for (const Material& one : buying.materials)
    if (is_to_be_made(one)) grid.rows.push_back({one.shown, amount_shown_up(*one.to_make)});
  if (grid.rows.size() == 1) return;
  sheet.blocks.emplace_back(SheetHeading{"To make ahead", "of what is needed for it here"});
  sheet.blocks.emplace_back(std::move(grid));
}

void add_total(Sheet& sheet, const trade::Purchase& purchase) {
  if (!purchase.total) {
    sheet.blocks.emplace_back(SheetHeading{"Nothing to buy with a price", ""});
    return;
  }
  sheet.blocks.emplace_back(SheetHeading{"Altogether", money_words(*purchase.total)});
  if (purchase.at_least)
    sheet.blocks.emplace_back(
        SheetWords{"Not proved to be the cheapest: no purchase costs less than " +
                   money_words(*purchase.at_least) + "."});
}

/// What is needed and what is left, of the materials that `belongs` picks.
template <class Belongs>
void add_amounts(Sheet& sheet, const std::string& title, const Buying& buying, Belongs belongs) {
  SheetGrid grid{.rows = {{"", "needed", "left"}}};
  for (const Material& one : buying.materials)
    if (belongs(one))
      grid.rows.push_back({one.shown, amount_shown_up(one.needed), amount_shown_down(one.left())});
  if (grid.rows.size() == 1) return;
  sheet.blocks.emplace_back(SheetStep{title});
  sheet.blocks.emplace_back(std::move(grid));
}

}  // namespace

Sheet buying_sheet(const Buying& buying, const std::string& printed_at) {
  Sheet sheet{
      .title = "To buy",
      .subtitle = buying.runs.empty()
                      ? "nothing is to make"
                      : "for " + counted(static_cast<std::int64_t>(buying.runs.size()), "run"),
      .blocks = {},
      .foot = printed_at.empty() ? "" : "Printed " + printed_at,
      .printed_at = printed_at};
  for (const auto& run : buying.runs) sheet.blocks.emplace_back(SheetWords{run_words(run) + "."});
  for (const ReadyOrder& order : buying.ready)
    for (const std::string& words : ready_words(order))
      sheet.blocks.emplace_back(SheetWords{words});
  for (const auto& delivery : buying.purchase.deliveries) add_seller(sheet, delivery, buying);
  add_unpriced(sheet, buying);
  add_total(sheet, buying.purchase);
  add_to_make(sheet, buying);
  add_amounts(sheet, "From the shelf", buying,
              [](const Material& one) { return is_of_shelf(one) && !one.is_from_tap; });
  add_amounts(sheet, "Left when all is made", buying,
              [](const Material& one) { return one.bought.whole() > 0; });
  for (const auto& [order, lines] : buying.together)
    sheet.blocks.emplace_back(SheetWords{together_words(lines)});
  for (const ReadyOrder& order : buying.ready)
    for (const Remark& note : order.notes) sheet.blocks.emplace_back(SheetWords{note.text});
  for (const Remark& note : buying.notes) sheet.blocks.emplace_back(SheetWords{note.text});
  return sheet;
}

}  // namespace brimwright::reports
