#include "reports/quote_tables.h"

#include <algorithm>
#include <cstdint>

namespace brimwright::reports {
namespace {

std::int64_t largest(const costing::Quote& quote) {
  std::int64_t most = 0;
  for (const auto& number : quote.numbers) most = std::max(most, number.pieces.sell);
  return most;
}

std::string from_to(std::int64_t from, std::int64_t to) {
  return from == to ? std::to_string(from) : std::to_string(from) + " to " + std::to_string(to);
}

}  // namespace

std::string why_untold() {
  return "its packs can be put together in so many ways that the cheapest could not be proved";
}

std::vector<std::string> untold_remarks(const QuoteReport& report) {
  std::vector<std::string> remarks;
  for (const UntoldPacks& one : report.pack_steps.untold)
    remarks.push_back("Where another pack of " + one.shown + " begins is not told, " +
                      from_to(one.from, one.to) + " pieces: " + why_untold() + ".");
  return remarks;
}

std::optional<QuoteTable> steps_table(const QuoteReport& report) {
  const auto& steps = report.quote.steps;
  if (steps.empty()) return std::nullopt;
  QuoteTable table{.title = "STEPS, up to " + std::to_string(2 * largest(report.quote)) + " pieces",
                   .heads = {"piece", "fillings", "batches", "tray fills", "bags", "costs more by"},
                   .rows = {},
                   .needs_heads = true};
  const auto up = [](std::int64_t before, std::int64_t after) {
    const std::int64_t more = after - before;
    return more == 0 ? std::string() : (more > 0 ? "+" : "") + std::to_string(more);
  };
  const Place where{report.run.file, ""};
  for (const auto& [sell, before, after, more] : steps)
    table.rows.push_back({std::to_string(sell),
                          {up(before.fillings, after.fillings), up(before.batches, after.batches),
                           up(before.tray_fills, after.tray_fills), up(before.bags, after.bags),
                           more ? in_money(*more, where) : "unpriced"}});
  return table;
}

std::optional<QuoteTable> pack_steps_table(const QuoteReport& report) {
  const auto& [told, untold] = report.pack_steps;
  if (told.empty() && untold.empty()) return std::nullopt;
  QuoteTable table{.title = "ANOTHER PACK, up to " + std::to_string(2 * largest(report.quote)) +
                            " pieces: each material by itself, no postage",
                   .heads = {"piece", "of", "to lay out more"},
                   .rows = {},
                   .needs_heads = true};
  for (const PackStep& step : told)
    table.rows.push_back({std::to_string(step.sell), {step.shown, amount_text(step.more)}});
  for (const UntoldPacks& one : untold)
    table.rows.push_back({from_to(one.from, one.to), {one.shown, "not told"}});
  return table;
}

}  // namespace brimwright::reports
