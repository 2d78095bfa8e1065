#include "service/order_planning.h"

#include "service/run_planning.h"
#include "units/written_number.h"

#include <algorithm>
#include <utility>

namespace brimwright::service {
namespace {

/// Each word with the lines that have it, in the order's order.
std::vector<std::pair<std::string, std::vector<std::size_t>>> lines_by_word(
    const std::vector<std::string>& words) {
  std::vector<std::pair<std::string, std::vector<std::size_t>>> all;
  for (std::size_t i = 0; i < words.size(); ++i) {
    if (words[i].empty()) continue;
    auto known = std::find_if(all.begin(), all.end(),
                              [&](const auto& one) { return one.first == words[i]; });
    if (known == all.end()) known = all.insert(all.end(), {words[i], {}});
    known->second.push_back(i);
  }
  return all;
}

PlannedTogether planned_together(const std::string& word, const std::vector<std::size_t>& lines,
                                 const OrderedRuns& runs, std::int64_t times) {
  std::vector<planning::TogetherLine> asked;
  for (const std::size_t i : lines) {
    OrderedRun& one = *runs[i];
    asked.push_back(
        {one.run, one.measured, one.trials, times * one.line.pieces, one.line.together_at});
  }
  planning::Together together = planning::plan_together(asked);
  pass_gates(together.run, together.plan);
  for (std::size_t k = 0; k < lines.size(); ++k)
    pass_gates_beside_base(runs[lines[k]]->run, together.lines[k]);
  return {word, lines, std::move(together)};
}

}  // namespace

OrderedRun::OrderedRun(runs::OrderLine line_of_it, planning::Run run_of_it, const Caller& caller)
    : line(std::move(line_of_it)),
      run(std::move(run_of_it)),
      measured(measured_run(run, caller)),
      trials(run, measured) {}

OrderedRuns ordered_runs(const runs::Order& order, const moulds::Library& library,
                         const Caller& caller) {
  OrderedRuns runs;
  for (const auto& line : order.lines) {
    library.named->push_back(line.run);
    planning::Run run = run_from(line.run, line.pieces, library);
    caller.tell_read(*library.named);
    runs.push_back(std::make_unique<OrderedRun>(line, std::move(run), caller));
  }
  return runs;
}

const PlannedTogether* PlannedOrder::with(std::size_t line) const {
  for (const PlannedTogether& one : together)
    if (std::find(one.lines.begin(), one.lines.end(), line) != one.lines.end()) return &one;
  return nullptr;
}

PlannedOrder planned_order(const OrderedRuns& runs, std::int64_t times) {
  PlannedOrder order;
  std::vector<std::string> words;
  for (const auto& one : runs) words.push_back(one->line.together);
  for (const auto& [word, lines] : lines_by_word(words))
    if (lines.size() > 1) order.together.push_back(planned_together(word, lines, runs, times));
  for (std::size_t i = 0; i < runs.size(); ++i) {
    OrderedRun& one = *runs[i];
    if (const PlannedTogether* with = order.with(i)) {
      const auto at = std::find(with->lines.begin(), with->lines.end(), i) - with->lines.begin();
      order.lines.push_back(with->together.lines[static_cast<std::size_t>(at)]);
      continue;
    }
    order.lines.push_back(
        planning::plan_for(times * one.line.pieces, one.run, one.measured, one.trials));
    pass_gates(one.run, order.lines.back());
  }
  return order;
}

costing::PartOfBase part_of_base(const PlannedTogether& of, std::size_t line) {
  costing::PartOfBase part{of.together.plan, {}};
  for (const planning::TogetherBatch& batch : of.together.batches) {
    trade::Fraction all = 0, its = 0;
    for (const planning::TogetherPart& one : batch.parts) {
      const trade::Fraction takes = trade::exact(one.takes / gram);
      all += takes;
      if (of.lines[one.line] == line) its = takes;
    }
    part.of_batch.emplace_back(its / all);
  }
  return part;
}

Materials materials_in(const OrderedRuns& runs, const PlannedOrder& order) {
  Materials materials;
  for (const PlannedTogether& one : order.together)
    add_materials(materials, base_materials_in(one.together.run, one.together.plan));
  for (std::size_t i = 0; i < runs.size(); ++i)
    add_materials(materials, order.with(i) != nullptr
                                 ? materials_beside_base(runs[i]->run, order.lines[i])
                                 : materials_in(runs[i]->run, order.lines[i]));
  return materials;
}

std::vector<reports::PouredTogether> poured_together(const OrderedRuns& runs,
                                                     const PlannedOrder& order) {
  std::vector<reports::PouredTogether> all;
  for (const auto& [word, lines, together] : order.together) {
    reports::PouredTogether one{word, {}, &together};
    for (const std::size_t i : lines) one.lines.push_back({i, &runs[i]->run});
    all.push_back(std::move(one));
  }
  return all;
}

std::vector<std::string> lone_words(const runs::Order& order) {
  std::vector<std::string> words, told;
  for (const auto& line : order.lines) words.push_back(line.together);
  for (const auto& [word, lines] : lines_by_word(words))
    if (lines.size() == 1)
      told.push_back("One line alone has " + brimwright::quoted(word) + " for \"together\" (" +
                     order.lines[lines.front()].together_at.field +
                     "), so it is poured by itself.");
  return told;
}

}  // namespace brimwright::service
