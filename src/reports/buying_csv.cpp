#include "reports/buying_report.h"
#include "reports/csv_table.h"
#include "units/printing.h"

namespace brimwright::reports {

std::string buying_csv(const Buying& buying, DecimalMark mark) {
  const auto number = [](std::string text) { return CsvCell::number(std::move(text)); };
  CsvTable table(mark);
  table.row({{"seller"},
             {"material"},
             {"name"},
             {"packs"},
             {"pack"},
             {"unit"},
             {"price"},
             {"sum"},
             {"currency"},
             {"in_place_of"}});
  for (const auto& delivery : buying.purchase.deliveries) {
    for (const auto& bought : delivery.packs) {
      const trade::Pack& pack = buying.packs[bought.pack];
      const bool is_counted = pack.holds.is_pieces();
      table.row({{delivery.seller},
                 {pack.material},
                 {pack.make.empty() ? shown_as(buying, pack.material) : pack.make},
                 number(std::to_string(bought.count)),
                 number(is_counted ? std::to_string(pack.holds.whole())
                                   : trimmed(pack.holds.mass() / gram, 6)),
                 {is_counted ? "piece" : "g"},
                 number(amount_text(pack.paid)),
                 number(amount_text({bought.count * pack.paid.coins, pack.paid.currency})),
                 {pack.paid.currency.code},
                 {pack.make.empty() ? "" : shown_as(buying, pack.material)}});
    }
    if (delivery.seller.empty()) continue;
    table.row({{delivery.seller},
               {""},
               {"postage"},
               {""},
               {""},
               {""},
               {""},
               delivery.postage ? number(amount_text(*delivery.postage)) : CsvCell{"not given"},
               {delivery.goods.currency.code},
               {""}});
  }
  for (const auto& one : buying.materials)
    if (one.is_unpriced)
      table.row({{""}, {one.name}, {one.shown}, {""}, {""}, {""}, {""}, {"unpriced"}, {""}, {""}});
  for (const ReadyOrder& order : buying.ready)
    for (const std::string& words : ready_words(order))
      table.row({{""}, {""}, {words}, {""}, {""}, {""}, {""}, {""}, {""}, {""}});
  return table.take();
}

}  // namespace brimwright::reports
