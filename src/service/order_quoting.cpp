#include "service/order_quoting.h"

#include "costing/order_quote.h"
#include "reports/quote_report.h"
#include "runs/packaging_reading.h"
#include "runs/selling_reading.h"
#include "runs/studio_file.h"
#include "service/order_planning.h"
#include "service/ordered.h"
#include "service/quote_asking.h"
#include "service/recorded_stock.h"

#include <cstdint>
#include <memory>
#include <string>
#include <utility>
#include <vector>

namespace brimwright::service {
namespace {

constexpr std::int64_t most_times = 1000;  // beyond any customer; a slip

std::vector<std::int64_t> times_asked(const QuoteRequest& request, const UserTerms& terms) {
  if (request.sell)
    throw UserError(terms.place("sell"), "is of a run, and this is an order",
                    "the order's lines say how many; give " + terms.say({"times", "1,2"}) +
                        " to make it more than once");
  if (!request.times) return {1};
  const Place where = terms.place("times");
  auto times = numbers_from(*request.times, where, "times");
  for (const std::int64_t one : times)
    if (one > most_times)
      throw UserError(where, "is " + std::to_string(one) + " times the order",
                      "give at most " + std::to_string(most_times));
  return times;
}

/// What each run of the order costs and is sold for.
std::vector<costing::Selling> sellings_of(const OrderedRuns& runs, const QuoteRequest& request,
                                          const UserTerms& terms, const moulds::Library& library) {
  std::vector<costing::Selling> sellings;
  for (const auto& one : runs) {
    sellings.push_back(runs::read_selling(one->run, library));
    ask_as_typed(sellings.back(), request, terms);
  }
  return sellings;
}

void refuse_other_money(const OrderedRuns& runs, const std::vector<costing::Selling>& sellings) {
  for (std::size_t i = 0; i < runs.size(); ++i)
    if (!(sellings[i].currency == sellings.front().currency))
      throw UserError({runs[i]->run.file, ""},
                      "pays in " + sellings[i].currency.code + ", and " + runs.front()->run.file +
                          " in " + sellings.front().currency.code,
                      "give all prices in one currency");
}

void refuse_too_many(const runs::Order& order, std::int64_t times) {
  for (const auto& line : order.lines)
    if (times * line.pieces > most_pieces)
      throw UserError({order.file, "/lines"},
                      "comes to " + std::to_string(times * line.pieces) + " pieces of one run" +
                          (times == 1 ? "" : ", made " + std::to_string(times) + " times"),
                      "give at most " + std::to_string(most_pieces) + " to a quote");
}

/// The order made `times` times, of its finished plan.
costing::QuotedOrder quoted(std::int64_t times, const OrderedRuns& runs,
                            const std::vector<costing::Selling>& sellings,
                            const PlannedOrder& planned) {
  std::int64_t pieces = 0;
  for (const auto& one : runs) pieces += times * one->line.pieces;
  std::vector<costing::QuotedLine> lines;
  for (std::size_t i = 0; i < runs.size(); ++i) {
    const auto& plan = planned.lines[i];
    const PlannedTogether* with = planned.with(i);
    auto items = with == nullptr ? costing::cost_items(plan, sellings[i])
                                 : costing::cost_items(plan, sellings[i], part_of_base(*with, i));
    lines.push_back({runs[i]->run.name, costing::quoted_number(plan, std::move(items), sellings[i],
                                                               pieces, {runs[i]->run.file, ""})});
  }
  return costing::quoted_order(times, std::move(lines));
}

Materials all_materials(const OrderedRuns& runs, const std::vector<costing::Selling>& sellings,
                        const PlannedOrder& planned) {
  Materials materials = materials_in(runs, planned);
  for (std::size_t i = 0; i < runs.size(); ++i)
    add_packaging(materials, runs[i]->run, planned.lines[i], sellings[i].packaging);
  return materials;
}

std::vector<const planning::Run*> runs_of(const OrderedRuns& ordered) {
  std::vector<const planning::Run*> runs;
  for (const auto& one : ordered) runs.push_back(&one->run);
  return runs;
}

/// The order made as often as is asked: planned, priced and bought for.
struct MadeOften {
  std::vector<std::unique_ptr<const PlannedOrder>> plans;
  std::vector<costing::QuotedOrder> orders;
  std::vector<reports::Buying> purchases;
  std::vector<std::vector<reports::PouredTogether>> together;  // refer to `plans`
};

MadeOften made_often(const std::vector<std::int64_t>& times, const OrderedRuns& ordered,
                     const std::vector<costing::Selling>& sellings, const Shelf& shelf) {
  MadeOften made;
  for (const std::int64_t n : times) {
    made.plans.push_back(std::make_unique<const PlannedOrder>(planned_order(ordered, n)));
    const PlannedOrder& plan = *made.plans.back();
    made.orders.push_back(quoted(n, ordered, sellings, plan));
    made.purchases.push_back(
        purchase_for(all_materials(ordered, sellings, plan), shelf.supplies, runs_of(ordered)));
    put_notes(made.purchases.back(), shelf);
    made.together.push_back(poured_together(ordered, plan));
  }
  return made;
}

/// Of lines alone with their word, and of what goes round the pieces of a run of its own.
std::vector<std::string> remarks_on(const runs::Order& order, const OrderedRuns& ordered,
                                    const moulds::Library& library) {
  auto remarks = lone_words(order);
  const auto studios = runs::read_packaging(runs::studio_for(ordered.front()->run.file, library));
  for (const auto* run : runs_of(ordered))
    if (auto words = runs::own_packaging_words(*run, studios)) remarks.push_back(std::move(*words));
  return remarks;
}

}  // namespace

Reply quoted_order(const runs::Order& order, const QuoteRequest& request, const Request& asked,
                   const moulds::Library& given, const Caller& caller) {
  moulds::Library library = given;
  library.named = std::make_shared<std::vector<std::string>>(std::vector{order.file});
  const auto times = times_asked(request, asked.terms);
  std::vector<std::string> files;
  for (const auto& line : order.lines) files.push_back(line.run);
  studio_of_all(files, library);
  for (const std::int64_t n : times) refuse_too_many(order, n);
  const OrderedRuns ordered = ordered_runs(order, library, caller);
  const auto sellings = sellings_of(ordered, request, asked.terms, library);
  refuse_other_money(ordered, sellings);
  const costing::Selling& selling = sellings.front();
  const Shelf shelf =
      with_recorded_stock(supplies_for(ordered.front()->run, selling, library), files,
                          request.printed_at.substr(0, 10), library, asked.terms);
  const MadeOften made = made_often(times, ordered, sellings, shelf);
  const auto remarks = remarks_on(order, ordered, library);
  const reports::OrderQuoteReport report{order.file, order.whom_for, order.due,     made.orders,
                                         selling,    made.purchases, made.together, remarks};
  return {.document = asked.form == Form::json
                          ? reports::quote_json(report)
                          : reports::quote_text(report, way_to_a_price(asked.terms)),
          .files = files_for(request, report, asked.terms)};
}

}  // namespace brimwright::service
