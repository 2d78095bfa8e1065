#include "service/order_quoting.h"

#include "costing/order_quote.h"
#include "reports/quote_report.h"
#include "runs/packaging_reading.h"
#include "runs/selling_reading.h"
#include "runs/studio_file.h"
#include "service/order_planning.h"
#include "service/order_rest.h"
#include "service/ordered.h"
#include "service/quote_asking.h"
#include "service/recorded_stock.h"
#include "service/run_planning.h"

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

std::int64_t pieces_of(const OrderedRuns& runs, std::int64_t times) {
  std::int64_t pieces = 0;
  for (const auto& one : runs) pieces += times * one->line.pieces;
  return pieces;
}

/// The order made `times` times, of its finished plan; what an order costs is spread over `pieces`.
costing::QuotedOrder quoted(std::int64_t times, std::int64_t pieces, const OrderedRuns& runs,
                            const std::vector<costing::Selling>& sellings,
                            const PlannedOrder& planned) {
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

/// By which number of pieces a line is costed, made anew: all of it, or, where a part is made
/// already and all of it are too few to be made, its run's own number.
std::vector<std::int64_t> costed_by(const OrderedRuns& runs, std::int64_t times,
                                    const reports::ReadyOrder& ready,
                                    const moulds::Library& library) {
  std::vector<std::int64_t> pieces;
  for (std::size_t i = 0; i < runs.size(); ++i) {
    OrderedRun& one = *runs[i];
    pieces.push_back(times * one.line.pieces);
    const auto& line = ready.lines[i];
    if (line.to_make() == line.wanted || !one.line.together.empty()) continue;
    try {
      planning::plan_for(pieces.back(), one.run, one.measured, one.trials);
    } catch (const UserError&) {
      pieces.back() = run_from(one.line.run, std::nullopt, library).sell;
    }
  }
  return pieces;
}

PlannedOrder planned_anew(const OrderedRuns& runs, const std::vector<std::int64_t>& pieces) {
  std::vector<std::int64_t> own;
  for (std::size_t i = 0; i < runs.size(); ++i) {
    own.push_back(runs[i]->line.pieces);
    runs[i]->line.pieces = pieces[i];
  }
  const auto put_back = [&] {
    for (std::size_t i = 0; i < runs.size(); ++i) runs[i]->line.pieces = own[i];
  };
  try {
    PlannedOrder planned = planned_order(runs, 1);
    put_back();
    return planned;
  } catch (...) {
    put_back();
    throw;
  }
}

/// What a run of another number of pieces costs, as the part of it that so many are.
void scale_to(costing::QuotedNumber& number, std::int64_t pieces) {
  const auto part = trade::Fraction(pieces) / trade::Fraction(number.pieces.sell);
  number.total = part * number.total;
  for (auto& item : number.items) {
    if (item.cost) item.cost = part * *item.cost;
    item.how.clear();
    item.amount = "of a run of " + std::to_string(number.pieces.sell) + ": " + item.amount;
  }
  number.pieces.sell = number.pieces.make = pieces;
  number.around.clear();
}

void scale_lines(costing::QuotedOrder& order, const OrderedRuns& runs,
                 const std::vector<std::int64_t>& costed, std::vector<std::string>& remarks) {
  std::vector<costing::QuotedLine> lines = std::move(order.lines);
  for (std::size_t i = 0; i < lines.size(); ++i) {
    const std::int64_t wanted = order.times * runs[i]->line.pieces;
    if (costed[i] == wanted) continue;
    scale_to(lines[i].number, wanted);
    remarks.push_back(
        lines[i].run + ": just " + std::to_string(wanted) +
        " cannot be made, so what a piece costs and is asked for is that of a run of " +
        std::to_string(costed[i]) + ".");
  }
  order = costing::quoted_order(order.times, std::move(lines));
}

/// What of an order is not made already, planned.
struct Rest {
  RestOfOrder of;
  OrderedRuns runs;
  PlannedOrder planned;
  std::vector<costing::Selling> sellings;
};

Rest planned_rest(const runs::Order& order, std::int64_t times, const ReadyBy& by,
                  const OrderedRuns& all, const std::vector<costing::Selling>& sellings,
                  const moulds::Library& library, const Caller& caller) {
  Rest rest{
      .of = rest_of(order, times, by, library, caller), .runs = {}, .planned = {}, .sellings = {}};
  rest.runs = ordered_runs(rest.of.order, library, caller);
  rest.planned = planned_order(rest.runs, 1);
  for (const auto& one : rest.runs)
    for (std::size_t i = 0; i < all.size(); ++i)
      if (all[i]->line.run == one->line.run) rest.sellings.push_back(sellings[i]);
  return rest;
}

reports::RestQuote quoted_rest(Rest&& rest, std::int64_t pieces) {
  reports::RestQuote told{.ready = std::move(rest.of.ready)};
  if (!rest.runs.empty()) told.to_make = quoted(1, pieces, rest.runs, rest.sellings, rest.planned);
  return told;
}

/// What is bought for the rest, and to pack all that is not delivered.
Materials all_materials(const Rest& rest, const OrderedRuns& all,
                        const std::vector<costing::Selling>& sellings) {
  Materials materials = materials_in(rest.runs, rest.planned);
  for (std::size_t i = 0; i < all.size(); ++i)
    if (const std::int64_t pieces = rest.of.ready.lines[i].to_pack(); pieces > 0)
      add_packaging(materials, all[i]->run, pieces, sellings[i].packaging);
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
  std::vector<reports::RestQuote> rests;
  std::vector<std::string> of_few;
};

/// `rest_for`: what is not made already of it, made so often.
template <class RestFor>
MadeOften made_often(const std::vector<std::int64_t>& times, const OrderedRuns& ordered,
                     const std::vector<costing::Selling>& sellings, const Shelf& shelf,
                     const moulds::Library& library, const RestFor& rest_for) {
  MadeOften made;
  for (const std::int64_t n : times) {
    const std::int64_t pieces = pieces_of(ordered, n);
    Rest rest = rest_for(n);
    const auto costed = costed_by(ordered, n, rest.of.ready, library);
    made.plans.push_back(std::make_unique<const PlannedOrder>(planned_anew(ordered, costed)));
    const PlannedOrder& plan = *made.plans.back();
    made.orders.push_back(quoted(n, pieces, ordered, sellings, plan));
    scale_lines(made.orders.back(), ordered, costed, made.of_few);
    made.purchases.push_back(
        purchase_for(all_materials(rest, ordered, sellings), shelf.supplies, runs_of(ordered)));
    put_notes(made.purchases.back(), shelf);
    made.rests.push_back(quoted_rest(std::move(rest), pieces));
    made.together.push_back(poured_together(ordered, plan));
  }
  return made;
}

/// Of lines alone with their word, of numbers too few to be made, and of what goes round the pieces
/// of a run of its own.
std::vector<std::string> remarks_on(const runs::Order& order, const OrderedRuns& ordered,
                                    const MadeOften& made, const moulds::Library& library) {
  auto remarks = lone_words(order);
  remarks.insert(remarks.end(), made.of_few.begin(), made.of_few.end());
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
  const ReadyBy by = ready_by(order, std::nullopt, request.printed_at.substr(0, 10), library);
  const MadeOften made = made_often(times, ordered, sellings, shelf, library, [&](std::int64_t n) {
    return planned_rest(order, n, by, ordered, sellings, library, caller);
  });
  const auto remarks = remarks_on(order, ordered, made, library);
  const reports::OrderQuoteReport report{order.file,    order.whom_for, order.due,
                                         made.orders,   selling,        made.purchases,
                                         made.together, made.rests,     remarks};
  return {.document = asked.form == Form::json
                          ? reports::quote_json(report)
                          : reports::quote_text(report, way_to_a_price(asked.terms)),
          .files = files_for(request, report, asked.terms)};
}

}  // namespace brimwright::service
