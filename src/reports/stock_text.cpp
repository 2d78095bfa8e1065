#include "reports/plan_words.h"
#include "reports/stock_report.h"
#include "reports/text_table.h"
#include "trade/amount_text.h"
#include "units/shown_text.h"
#include "units/wording.h"

namespace brimwright::reports {
namespace {

using records::Lot;
using records::StandingLot;
using trade::Amount;

Amount amount(const StandingLot& of, std::int64_t whole) {
  return of.lot.holds.is_pieces() ? Amount::pieces(whole) : Amount::micrograms(whole);
}

std::string left_words(const StandingLot& of) {
  if (of.left >= 0) return trade::stock_size(of.there());
  return trade::amount_shown_up(amount(of, -of.left)) +
         " more taken than was recorded: count what is there;";
}

std::string origin_words(const Lot& lot) {
  if (lot.origin == Lot::Origin::made) return "made " + lot.bought_on;
  if (lot.origin == Lot::Origin::before_records) return "there before records, " + lot.bought_on;
  return "bought " + lot.bought_on + (lot.seller.empty() ? "" : " of " + lot.seller);
}

std::string all_of(const Stock::Material& material) {
  Amount sum = material.lots.front().there();
  for (std::size_t i = 1; i < material.lots.size(); ++i)
    if (material.lots[i].lot.holds.is_alike(sum)) sum = sum + material.lots[i].there();
  return trade::stock_size(sum);
}

std::string materials_text(const Stock& stock) {
  std::string text;
  for (const auto& material : stock.materials) {
    text += title("  " + material.shown, all_of(material));
    for (const StandingLot& one : material.lots)
      text += wrapped(on_one_line(one.lot.code + (one.lot.make.empty() ? "" : " " + one.lot.make)) +
                          ": " + lot_words(one, stock.day),
                      "    ", "      ");
  }
  return text.empty() ? line("No lot has anything left.") : text;
}

std::string state_words(const Stock::Pieces& pieces) {
  if (!pieces.count.is_known) return "how many were made is not noted";
  std::string text = count_words(pieces.count);
  if (pieces.count.there() <= 0) return text;
  if (pieces.cures_until) text += ", curing until " + *pieces.cures_until;
  return text + (pieces.is_for_sale ? "; for sale" : "; not for sale: " + pieces.why_not);
}

std::string pieces_text(const Stock& stock) {
  std::string text;
  for (const auto& pieces : stock.pieces)
    text += wrapped(
        on_one_line(pieces.batch.code + ", " + pieces.batch.run_name) + ": " + state_words(pieces),
        "  ", "    ");
  return text;
}

std::string names_text(const Stock::Names& names) {
  std::string text;
  const auto add = [&](const char* what, const std::vector<std::string>& all) {
    std::string list;
    for (const std::string& one : all) list += (list.empty() ? "" : ", ") + on_one_line(one);
    if (!list.empty()) text += wrapped(std::string(what) + ": " + list, "  ", "    ");
  };
  add("Materials", names.materials);
  add("Made ahead", names.made_ahead);
  add("Sellers", names.sellers);
  return "\nNames\n" + text;
}

}  // namespace

std::string packs_words(const Lot& lot) {
  return (lot.packs == 1 ? "" : std::to_string(lot.packs) + " x ") + lot.pack;
}

std::string lot_words(const StandingLot& of, const std::string& day) {
  std::string text = left_words(of) + " of " + packs_words(of.lot);
  if (of.lot.is_past(day))
    text += ", PAST its best-before day " + *of.lot.best_before;
  else if (of.lot.best_before)
    text += ", best before " + *of.lot.best_before;
  text += ", " + origin_words(of.lot);
  if (of.lot.paid)
    text += ", " + amount_text(*of.lot.paid) + " " + of.lot.paid->currency.code + " in all";
  else if (of.lot.origin == Lot::Origin::bought)
    text += ", unpriced";
  return text;
}

std::string count_words(const records::PieceCount& count) {
  std::string text = std::to_string(count.made) + " made";
  const auto add = [&](std::int64_t pieces, const char* what) {
    if (pieces != 0) text += ", " + std::to_string(pieces) + " " + what;
  };
  add(count.rejected, "rejected");
  add(count.sold, "sold");
  add(count.given, "given away");
  add(count.spoilt, "spoilt");
  if (count.counted > 0) add(count.counted, "more by count");
  if (count.counted < 0) add(-count.counted, "fewer by count");
  return text + ": " + std::to_string(count.there()) + " there";
}

std::string stock_text(const Stock& stock) {
  std::string text;
  for (const std::string& sentence : stock.done) text += wrapped(sentence, "", "  ");
  if (!text.empty()) text += "\n";
  if (!stock.has_records) {
    text += "Nothing is recorded in " + on_one_line(stock.folder) + " yet.\n";
  } else {
    if (!stock.materials.empty() || stock.done.empty())
      text += title("Lots", stock.day) + materials_text(stock);
    if (!stock.pieces.empty()) text += "\n" + title("Pieces", stock.day) + pieces_text(stock);
  }
  if (stock.names) text += names_text(*stock.names);
  if (!stock.notes.empty()) text += "\nNotes\n";
  for (const Remark& note : stock.notes)
    text += line((note.severity == Severity::note ? "" : "Caution: ") + note.text);
  return text;
}

}  // namespace brimwright::reports
