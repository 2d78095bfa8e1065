#include "reports/plan_words.h"
#include "reports/ready_report.h"
#include "trade/amount_text.h"
#include "units/shown_text.h"
#include "units/wording.h"

#include <algorithm>

namespace brimwright::reports {
namespace {

std::string joined(const std::vector<std::string>& all) {
  std::string text;
  for (std::size_t i = 0; i < all.size(); ++i)
    text += (i == 0 ? "" : i + 1 == all.size() ? " and " : ", ") + all[i];
  return text;
}

/// "12 stand ready (batch 2026-10-20A)", of 24 "12 of 24 stand ready ...".
std::string stand_words(const std::vector<ReadyBatch>& batches, const std::string& of) {
  std::int64_t pieces = 0;
  for (const ReadyBatch& one : batches) pieces += one.pieces;
  const bool is_one = pieces == 1;
  const auto& ready_on = batches.front().ready_on;
  return std::to_string(pieces) + of +
         (ready_on ? " will be ready on " + *ready_on
                   : std::string(is_one ? " stands ready" : " stand ready")) +
         " (" + batches_words(batches) + ")";
}

/// Batches that are ready on the same day, each group by itself; those that stand ready first.
std::vector<std::vector<ReadyBatch>> by_day(const std::vector<ReadyBatch>& batches) {
  std::vector<std::vector<ReadyBatch>> groups;
  for (const ReadyBatch& one : batches) {
    const auto known = std::find_if(groups.begin(), groups.end(), [&](const auto& group) {
      return group.front().ready_on == one.ready_on;
    });
    if (known == groups.end())
      groups.push_back({one});
    else
      known->push_back(one);
  }
  return groups;
}

std::string batches_named(const std::vector<std::string>& codes) {
  return (codes.size() == 1 ? "batch " : "batches ") + joined(codes);
}

}  // namespace

std::int64_t ReadyLine::delivered_of_it() const { return std::min(wanted, delivered); }

std::int64_t ReadyLine::taken() const {
  std::int64_t pieces = 0;
  for (const ReadyBatch& one : batches) pieces += one.pieces;
  return pieces;
}

std::int64_t ReadyLine::to_make() const {
  return std::max<std::int64_t>(0, wanted - delivered - taken());
}

std::int64_t ReadyLine::to_pack() const { return std::max<std::int64_t>(0, wanted - delivered); }

bool ReadyOrder::is_of_records() const {
  return std::any_of(lines.begin(), lines.end(), [](const ReadyLine& line) {
    return line.delivered > 0 || !line.batches.empty();
  });
}

bool ReadyOrder::is_nothing_to_make() const {
  return !lines.empty() && std::all_of(lines.begin(), lines.end(),
                                       [](const ReadyLine& line) { return line.to_make() == 0; });
}

std::int64_t ReadyOrder::taken() const {
  std::int64_t pieces = 0;
  for (const ReadyLine& line : lines) pieces += line.taken();
  return pieces;
}

records::PaidCost ReadyOrder::cost() const {
  records::PaidCost sum;
  for (const ReadyLine& line : lines)
    for (const ReadyBatch& one : line.batches)
      if (one.cost) sum.add(*one.cost);
  return sum;
}

std::vector<std::string> ReadyOrder::costs_unknown() const {
  std::vector<std::string> codes;
  for (const ReadyLine& line : lines)
    for (const ReadyBatch& one : line.batches)
      if (!one.cost && std::find(codes.begin(), codes.end(), one.code) == codes.end())
        codes.push_back(one.code);
  return codes;
}

std::string batches_words(const std::vector<ReadyBatch>& batches) {
  if (batches.size() == 1) return "batch " + batches.front().code;
  std::vector<std::string> all;
  for (const ReadyBatch& one : batches)
    all.push_back(one.code + " (" + std::to_string(one.pieces) + ")");
  return "batches " + joined(all);
}

std::string ready_words(const ReadyLine& line) {
  if (line.delivered == 0 && line.batches.empty()) return "";
  std::string of = " of " + std::to_string(line.wanted);
  std::vector<std::string> all;
  if (line.delivered > 0) {
    all.push_back(std::to_string(line.delivered) + of + (line.delivered == 1 ? " is" : " are") +
                  " delivered");
    of.clear();
  }
  for (const auto& group : by_day(line.batches)) {
    all.push_back(stand_words(group, of));
    of.clear();
  }
  std::string text = on_one_line(line.name) + ": ";
  for (const std::string& one : all) text += one + ", ";
  return text + (line.to_make() == 0 ? "nothing" : std::to_string(line.to_make())) + " to make.";
}

std::vector<std::string> ready_words(const ReadyOrder& order) {
  std::vector<std::string> all;
  for (const ReadyLine& line : order.lines)
    if (std::string words = ready_words(line); !words.empty()) all.push_back(std::move(words));
  return all;
}

std::string paid_words(const records::PaidCost& cost) {
  std::string text;
  for (const auto& sum : cost.sums) {
    const Money shown = trade::to_coin(sum, trade::ToCoin::nearest, {});
    text += (text.empty() ? "" : " + ") + amount_text(shown) + " " + shown.currency.code;
  }
  if (text.empty()) text = "an unknown sum";
  if (cost.unpriced.empty()) return text;
  return text + ", without what is unpriced: " + joined(cost.unpriced);
}

std::string ready_cost_words(const ReadyOrder& order) {
  const std::int64_t taken = order.taken();
  if (taken == 0) return "";
  const auto cost = order.cost();
  const auto unknown = order.costs_unknown();
  const std::string what = "What went into the " + counted(taken, "piece") + " that " +
                           (taken == 1 ? "is" : "are") + " made already ";
  if (cost.sums.empty())
    return what + "has no known cost: " +
           (cost.unpriced.empty() ? "what " + batches_named(unknown) + " weighed was not recorded."
                                  : "no price is recorded of " + joined(cost.unpriced) + ".");
  return what + "did cost " + paid_words(cost) + ", by its lots" +
         (unknown.empty() ? std::string(".")
                          : "; not counting " + batches_named(unknown) +
                                ", of which was not recorded what it weighed.");
}

std::vector<SheetBlock> ready_blocks(const ReadyOrder& order) {
  SheetGrid grid{.rows = {{"", "batch", "pieces"}}, .has_boxes = true};
  for (const ReadyLine& line : order.lines)
    for (const ReadyBatch& one : line.batches)
      grid.rows.push_back({line.name + (one.ready_on ? ", ready on " + *one.ready_on : ""),
                           one.code, std::to_string(one.pieces)});
  std::vector<SheetBlock> blocks;
  const auto words = ready_words(order);
  if (words.empty()) return blocks;
  blocks.emplace_back(SheetStep{"What is made already"});
  for (const std::string& one : words) blocks.emplace_back(SheetWords{one});
  if (grid.rows.size() > 1) {
    blocks.emplace_back(SheetHeading{"Take from stock", ""});
    blocks.emplace_back(std::move(grid));
  }
  for (const Remark& note : order.notes) blocks.emplace_back(SheetWords{note.text});
  return blocks;
}

}  // namespace brimwright::reports
