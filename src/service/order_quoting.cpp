#include "service/order_quoting.h"

#include "costing/order_quote.h"
#include "planning/plan.h"
#include "reports/quote_report.h"
#include "runs/run_file.h"
#include "runs/selling_reading.h"
#include "service/ordered.h"
#include "service/quote_asking.h"
#include "service/run_planning.h"

#include <cstdint>
#include <memory>
#include <string>
#include <utility>
#include <vector>

namespace brimwright::service {
namespace {

/// A line of an order, ready to be planned for any number of pieces.
struct Line {
  Line(planning::Run run_of_it, std::int64_t pieces_of_it, costing::Selling selling_of_it,
       const Caller& caller)
      : run(std::move(run_of_it)),
        pieces(pieces_of_it),
        selling(std::move(selling_of_it)),
        measured(measured_run(run, caller)),
        trials(run, measured) {}
  Line(const Line&) = delete;  // the trials are of its run

  planning::Run run;
  std::int64_t pieces;
  costing::Selling selling;
  planning::Measured measured;
  planning::BatchTrials trials;
};

std::vector<std::int64_t> times_asked(const QuoteRequest& request, const UserTerms& terms) {
  if (request.sell)
    throw UserError(terms.place("sell"), "is of a run, and this is an order",
                    "the order's lines say how many; give " + terms.say({"times", "1,2"}) +
                        " to make it more than once");
  if (!request.times) return {1};
  return numbers_from(*request.times, terms.place("times"));
}

std::vector<std::unique_ptr<Line>> lines_of(const runs::Order& order, const QuoteRequest& request,
                                            const UserTerms& terms, const moulds::Library& library,
                                            const Caller& caller) {
  std::vector<std::unique_ptr<Line>> lines;
  for (const auto& [file, pieces, where] : order.lines) {
    library.named->push_back(file);
    planning::Run run = runs::read_run(file, library, pieces);
    caller.tell_read(*library.named);
    costing::Selling selling = runs::read_selling(run, library);
    ask_as_typed(selling, request, terms);
    lines.push_back(std::make_unique<Line>(std::move(run), pieces, std::move(selling), caller));
  }
  return lines;
}

void refuse_other_money(const std::vector<std::unique_ptr<Line>>& lines) {
  const Line& first = *lines.front();
  for (const auto& line : lines)
    if (!(line->selling.currency == first.selling.currency))
      throw UserError({line->run.file, ""},
                      "pays in " + line->selling.currency.code + ", and " + first.run.file +
                          " in " + first.selling.currency.code,
                      "give all prices in one currency");
}

/// The order made `times` times; adds up in `materials` what it takes.
costing::QuotedOrder made_times(std::int64_t times, const runs::Order& order,
                                const std::vector<std::unique_ptr<Line>>& lines,
                                Materials& materials) {
  std::int64_t pieces = 0;
  for (const auto& line : lines) pieces += times * line->pieces;
  std::vector<costing::QuotedLine> quoted;
  for (const auto& line : lines) {
    const std::int64_t sell = within_reach(times * line->pieces, {order.file, "/lines"});
    const auto plan = planning::plan_for(sell, line->run, line->measured, line->trials);
    pass_gates(line->run, plan);
    add_materials(materials, all_materials(line->run, plan, line->selling));
    quoted.push_back({line->run.name,
                      costing::quoted_number(plan, line->selling, pieces, {line->run.file, ""})});
  }
  return costing::quoted_order(times, std::move(quoted));
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
  const auto lines = lines_of(order, request, asked.terms, library, caller);
  refuse_other_money(lines);
  const costing::Selling& selling = lines.front()->selling;
  const runs::Supplies supplies = supplies_for(lines.front()->run, selling, library);
  std::vector<const planning::Run*> runs;
  for (const auto& line : lines) runs.push_back(&line->run);
  std::vector<costing::QuotedOrder> orders;
  std::vector<reports::Buying> purchases;
  for (const std::int64_t n : times) {
    Materials materials;
    orders.push_back(made_times(n, order, lines, materials));
    purchases.push_back(purchase_for(std::move(materials), supplies, runs));
  }
  const reports::OrderQuoteReport report{order.file, order.whom_for, order.due,
                                         orders,     selling,        purchases};
  return {.document = asked.form == Form::json
                          ? reports::quote_json(report)
                          : reports::quote_text(report, way_to_a_price(asked.terms)),
          .files = files_for(request, report, asked.terms)};
}

}  // namespace brimwright::service
