#include "days/decision.h"

#include "days/board.h"
#include "days/bounds.h"
#include "days/search.h"

#include <algorithm>
#include <map>
#include <utility>

namespace brimwright::days {
namespace {

/// Puts each batch on the earliest day that takes it; of a day's, in the order given.
bool are_all_poured(const Problem& problem, Board& board, const std::vector<std::size_t>& order) {
  for (int day = problem.begin(); day < problem.end() && board.all_left() > 0; ++day)
    for (const std::size_t i : order)
      while (board.pour(i, day)) {
      }
  return board.all_left() == 0;
}

/// Orders of urgency worth a try: by the last day; by the days that there are; by the work.
std::vector<std::vector<std::size_t>> orders(const Problem& problem) {
  const auto& batches = problem.batches();
  std::vector<std::size_t> order;
  for (std::size_t i = 0; i < batches.size(); ++i) order.push_back(i);
  std::vector<std::vector<std::size_t>> all;
  const auto add = [&](const auto& key) {
    auto sorted = order;
    std::stable_sort(sorted.begin(), sorted.end(),
                     [&](std::size_t a, std::size_t b) { return key(a) < key(b); });
    if (std::find(all.begin(), all.end(), sorted) == all.end()) all.push_back(std::move(sorted));
  };
  add([&](std::size_t i) { return batches[i].last; });
  add([&](std::size_t i) {
    const auto& on =
        problem.lines()[batches[i].line].on[static_cast<std::size_t>(batches[i].first)];
    const int locked = on.free - batches[i].first;
    return batches[i].last - locked * static_cast<int>(batches[i].numbers.size());
  });
  add([&](std::size_t i) { return -batches[i].busy.count(); });
  return all;
}

Decision told(const Problem& problem, Board& board) {
  Decision decision{.verdict = Verdict::possible, .packing = problem.packing()};
  std::vector<std::size_t> next(problem.batches().size());
  for (const auto& [which, day] : board.poured()) {
    const Alike& alike = problem.batches()[which];
    const LineRules& rules = problem.lines()[alike.line];
    decision.made.push_back({rules.delivery, rules.number, alike.numbers[next[which]++], day});
  }
  board.casting().delay();
  std::map<std::tuple<int, std::size_t, std::size_t>, int> counts;
  for (const auto& filling : board.casting().fillings())
    ++counts[{filling.day, filling.batch, filling.tray}];
  for (const auto& [key, count] : counts)
    decision.casts.push_back({.made = std::get<1>(key),
                              .tray = std::get<2>(key),
                              .day = std::get<0>(key),
                              .count = count});
  return decision;
}

}  // namespace

Decision decide(const Problem& problem, std::int64_t most_looks) {
  if (is_too_much(problem)) return {.verdict = Verdict::impossible};
  for (const auto& order : orders(problem)) {
    Board board(problem);
    if (are_all_poured(problem, board, order)) return told(problem, board);
  }
  Board board(problem);
  const Verdict verdict = searched(problem, board, most_looks);
  return verdict == Verdict::possible ? told(problem, board) : Decision{.verdict = verdict};
}

}  // namespace brimwright::days
