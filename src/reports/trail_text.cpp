#include "reports/plan_words.h"
#include "reports/stock_report.h"
#include "reports/text_table.h"
#include "reports/trail_report.h"
#include "trade/amount_text.h"
#include "units/shown_text.h"
#include "units/wording.h"

namespace brimwright::reports {
namespace {

using trade::Amount;

std::string words_of(std::int64_t whole, bool is_pieces) {
  return trade::amount_shown_up(is_pieces ? Amount::pieces(whole) : Amount::micrograms(whole));
}

std::string set_in(const std::string& text) { return wrapped(text, "    ", "      "); }

std::string lot_text(const Trail::LotPart& lot, const std::string& day) {
  const auto& its = lot.of.lot;
  std::string text =
      line("Lot " + on_one_line(its.code) + " of " +
           on_one_line(its.make.empty() ? its.material : its.make) + ": " + lot_words(lot.of, day));
  for (const auto& one : lot.made_of)
    text += set_in("made of " + words_of(one.whole, one.is_pieces) + " of " + one.material +
                   ", lot " + one.code);
  for (const auto& one : lot.made_into)
    text += set_in(words_of(one.whole, one.is_pieces) + " of it in " + one.material + ", lot " +
                   one.code);
  for (const auto& one : lot.counts) {
    const bool is_less = one.whole < 0;
    text +=
        set_in("counted on " + one.day + ": " +
               (one.whole == 0 ? "as recorded"
                               : words_of(is_less ? -one.whole : one.whole, its.holds.is_pieces()) +
                                     (is_less ? " less" : " more")) +
               (one.why.empty() ? "" : " (" + on_one_line(one.why) + ")"));
  }
  return text;
}

std::string row_text(const Trail::Row& row) {
  const bool is_pieces = row.weighed.amount.is_pieces();
  std::string text = row.weighed.shown + " " + words_of(row.weighed.amount.whole(), is_pieces);
  const bool is_split = row.from.size() > 1 || (row.from.size() == 1 && row.unknown > 0);
  std::string from;
  for (const auto& one : row.from)
    from += (from.empty() ? "" : ", ") + ("lot " + one.code) +
            (one.make.empty() ? "" : " (" + one.make + ")") +
            (is_split ? " " + words_of(one.whole, is_pieces) : "");
  if (row.unknown > 0)
    from += (from.empty() ? "" : ", ") +
            (row.weighed.material == "water" ? std::string("no lot recorded")
                                             : std::string("LOT UNKNOWN")) +
            (is_split ? " " + words_of(row.unknown, is_pieces) : "");
  return set_in(on_one_line(text + ": " + from));
}

std::string cost_text(const records::PaidCost& cost, bool has_base) {
  std::string text;
  for (const auto& sum : cost.sums) {
    const Money shown = trade::to_coin(sum, trade::ToCoin::nearest, {});
    text += (text.empty() ? "" : " + ") + amount_text(shown) + " " + shown.currency.code;
  }
  if (text.empty() && cost.unpriced.empty()) return "";
  text = "Materials did cost " + (text.empty() ? "an unknown sum" : text) + " by their lots" +
         (has_base ? ", with its part of the base" : "");
  std::string unpriced;
  for (const std::string& name : cost.unpriced) unpriced += (unpriced.empty() ? "" : ", ") + name;
  return set_in(on_one_line(
      text + (unpriced.empty() ? "." : ", without what is unpriced: " + unpriced + ".")));
}

std::string went_text(const records::PieceChange& went) {
  std::string text = counted(went.pieces < 0 ? -went.pieces : went.pieces, "piece") + " ";
  if (went.what == records::PieceChange::What::counted)
    text += went.pieces < 0 ? "fewer by count" : "more by count";
  else
    text += went.what == records::PieceChange::What::given ? "given away" : name_of(went.what);
  if (!went.of_order_name.empty()) text += " for " + went.of_order_name;
  return set_in(
      on_one_line(text + " on " + went.day + (went.why.empty() ? "" : " (" + went.why + ")")));
}

std::string pieces_text(const Trail::BatchPart& part) {
  if (part.lines.empty())
    return part.count.is_known ? count_words(part.count) : "how many pieces is not noted";
  std::string codes;
  for (const std::string& code : part.lines) codes += (codes.empty() ? "" : ", ") + code;
  return "poured into " + codes;
}

std::string batch_text(const Trail::BatchPart& part) {
  std::string text = line(on_one_line("Batch " + part.batch.code + " of " + part.batch.run_name +
                                      ", begun " + part.batch.begun_on + ": " + pieces_text(part)));
  if (!part.base.empty())
    text += set_in(on_one_line("poured from " + part.base + ", of which it is " +
                               fixed_percent(Share::of_one(part.of_base.convert_to<double>()))));
  for (const auto& row : part.rows) text += row_text(row);
  if (part.has_all_rows && part.rows.empty()) text += set_in("What was weighed was not recorded.");
  if (part.has_all_rows) text += cost_text(part.cost, !part.base.empty());
  for (const auto& went : part.went) text += went_text(went);
  return text;
}

}  // namespace

std::string trail_text(const Trail& trail) {
  std::string text = title("Trail of " + trail.is + " " + on_one_line(trail.asked), trail.day);
  if (!trail.lots.empty()) text += "\nLots\n";
  for (const auto& lot : trail.lots) text += lot_text(lot, trail.day);
  text += trail.batches.empty() ? "\nIt is in no batch that is recorded.\n" : "\nBatches\n";
  for (const auto& batch : trail.batches) text += batch_text(batch);
  if (trail.gaps.empty()) return text;
  text += "\nGaps: of an unknown lot, so it may be in these too\n";
  for (const auto& gap : trail.gaps)
    text += line(on_one_line(gap.shown + " in batch " + gap.batch + " of " + gap.run));
  return text;
}

}  // namespace brimwright::reports
