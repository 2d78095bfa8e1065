#include "service/poured_base.h"

#include "moulds/mesh_memory.h"
#include "reports/plan_report.h"
#include "service/order_planning.h"
#include "service/order_rest.h"
#include "service/ordered.h"
#include "units/written_number.h"

#include <algorithm>
#include <memory>
#include <optional>
#include <stdexcept>
#include <utility>

namespace brimwright::service {
namespace {

using Files = std::vector<std::string>;

/// An order as it is planned, with the files that it and each of its runs were read from.
struct MadeOrder {
  OrderedRuns runs;
  PlannedOrder planned;
  std::vector<Files> read_by;  // the runs
  Files read;
  moulds::Library library;  // by which they were read
};

MadeOrder made(const std::string& file, const std::string& today, moulds::Library library,
               const Caller& caller) {
  library.named = std::make_shared<Files>();
  library.read_once = std::make_shared<ReadOnce>();
  const auto order = order_in(file, std::nullopt, library);
  if (!order) throw UserError({file, ""}, "is no order any more", "do it again");
  const RestOfOrder rest =
      rest_of(*order, 1, ready_by(*order, std::nullopt, today, library), library, caller);
  MadeOrder made{.runs = {}, .planned = {}, .read_by = {}, .read = {file}, .library = library};
  for (const runs::OrderLine& line : rest.order.lines) {
    moulds::Library its = library;
    its.named = std::make_shared<Files>();
    runs::Order alone = rest.order;
    alone.lines = {line};
    made.runs.push_back(std::move(ordered_runs(alone, its, caller).front()));
    made.read.insert(made.read.end(), its.named->begin(), its.named->end());
    made.read_by.push_back(std::move(*its.named));
  }
  made.planned = planned_order(made.runs, 1);
  return made;
}

struct MadeBase {
  PouredBase base;
  bool is_of_its_sources = true;  // to the letter, which none was read anew for
};

MadeBase of_word(MadeOrder made, const std::string& order, const std::string& word) {
  auto& all = made.planned.together;
  const auto with =
      std::find_if(all.begin(), all.end(), [&](const auto& one) { return one.word == word; });
  if (with == all.end())
    throw UserError({order, ""},
                    "has fewer than two lines left to make that are poured together as " +
                        brimwright::quoted(word),
                    "begin what is left as a batch of its run");
  PouredBase base{.word = word,
                  .together = std::move(with->together),
                  .runs = {},
                  .lines = {},
                  .answer = {},
                  .sources = {}};
  PlanSources sources = sources_of_plan(order, made.read, made.library);
  base.sources = std::move(sources.sources);
  for (std::size_t i = 0; i < with->lines.size(); ++i) {
    const OrderedRun& run = *made.runs[with->lines[i]];
    base.runs.push_back(run.run);
    PlanSources its = sources_of_plan(run.line.run, made.read_by[with->lines[i]], made.library);
    sources.are_as_planned &= its.are_as_planned;
    base.lines.push_back({.file = run.line.run,
                          .answer = reports::line_json(run.run, base.together.lines[i]),
                          .sources = std::move(its.sources)});
  }
  base.answer = reports::base_json(base.told());
  return {std::move(base), sources.are_as_planned};
}

bool are_alike(const PouredBase& one, const PouredBase& other) {
  return one.answer == other.answer &&
         std::equal(one.lines.begin(), one.lines.end(), other.lines.begin(), other.lines.end(),
                    [](const auto& a, const auto& b) { return a.answer == b.answer; });
}

}  // namespace

reports::PouredTogether PouredBase::told() const {
  reports::PouredTogether told{word, {}, &together};
  for (std::size_t i = 0; i < runs.size(); ++i) told.lines.push_back({i, &runs[i]});
  return told;
}

std::size_t PouredBase::size_of(std::int64_t number) const {
  for (std::size_t b = 0; b < together.plan.batches.size(); ++b) {
    const auto& numbers = together.plan.batches[b].numbers;
    if (std::find(numbers.begin(), numbers.end(), number) != numbers.end()) return b;
  }
  throw std::logic_error("the base has no batch " + std::to_string(number));
}

/// A line counts those batches alone that it takes part in.
std::vector<PouredBase::Poured> PouredBase::poured_from(std::int64_t number) const {
  std::vector<Poured> poured;
  for (const planning::TogetherPart& part : together.batches[size_of(number)].parts) {
    std::int64_t own = 0;
    for (std::int64_t before = 1; before <= number; ++before) {
      const auto& parts = together.batches[size_of(before)].parts;
      own += std::any_of(parts.begin(), parts.end(),
                         [&](const auto& one) { return one.line == part.line; })
                 ? 1
                 : 0;
    }
    poured.push_back({part.line, own, part.takes});
  }
  return poured;
}

std::vector<std::string> shared_words(const runs::Order& order) {
  std::vector<std::string> words;
  for (const runs::OrderLine& line : order.lines) {
    const auto has_it = [&](const runs::OrderLine& other) {
      return other.together == line.together;
    };
    if (!line.together.empty() &&
        std::count_if(order.lines.begin(), order.lines.end(), has_it) > 1 &&
        std::find(words.begin(), words.end(), line.together) == words.end())
      words.push_back(line.together);
  }
  return words;
}

/// Planned twice where a run's plan that is frozen would be.
PouredBase poured_base(const std::string& order, const std::string& word, const std::string& today,
                       const moulds::Library& given, const Caller& caller) {
  moulds::Library library = given;
  if (!library.memory) library.memory = std::make_shared<moulds::MeshMemory>();
  MeasureMemory measured;
  Caller patient = caller;
  if (patient.memory == nullptr) patient.memory = &measured;
  MadeBase first = of_word(made(order, today, library, patient), order, word);
  if (!first.is_of_its_sources &&
      !are_alike(first.base, of_word(made(order, today, library, patient), order, word).base))
    throw UserError({order, ""}, "was changed while it was planned, or a file that it names was",
                    "do it again");
  return std::move(first.base);
}

}  // namespace brimwright::service
