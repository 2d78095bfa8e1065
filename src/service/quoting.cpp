#include "service/quoting.h"

#include "costing/quote.h"
#include "planning/plan.h"
#include "reports/quote_report.h"
#include "runs/selling_reading.h"
#include "service/run_planning.h"
#include "units/fields.h"
#include "units/written_number.h"

#include <algorithm>
#include <cstdint>
#include <string>
#include <vector>

namespace brimwright::service {
namespace {

// Each number up to twice the largest is planned, in a millisecond or two.
constexpr std::int64_t most_pieces = 5000;
constexpr std::size_t most_numbers = 12;

/// "12,24,48": each once, in the order typed.
std::vector<std::int64_t> numbers_from(const std::string& typed, const Place& where) {
  std::vector<std::int64_t> numbers;
  for (std::size_t from = 0; from <= typed.size();) {
    const std::size_t to = std::min(typed.find(',', from), typed.size());
    const std::int64_t one = pieces_from(typed.substr(from, to - from), where);
    if (std::find(numbers.begin(), numbers.end(), one) == numbers.end()) numbers.push_back(one);
    from = to + 1;
  }
  return numbers;
}

std::vector<std::int64_t> numbers_asked(const QuoteRequest& request, const planning::Run& run,
                                        const UserTerms& terms) {
  const Place where = request.sell ? terms.place("sell") : run.place("/sell");
  auto numbers = request.sell ? numbers_from(*request.sell, where) : std::vector{run.sell};
  if (numbers.size() > most_numbers)
    throw UserError(where, "names " + std::to_string(numbers.size()) + " numbers of pieces",
                    "give at most " + std::to_string(most_numbers));
  for (const std::int64_t one : numbers)
    if (one > most_pieces)
      throw UserError(where, "is " + std::to_string(one) + " pieces",
                      "give at most " + std::to_string(most_pieces) + " to a quote");
  return numbers;
}

/// What is typed takes the place of the studio's ways.
void ask_as_typed(costing::Selling& selling, const QuoteRequest& request, const UserTerms& terms) {
  const int said = int(request.margin.has_value()) + int(request.markup.has_value()) +
                   int(request.price.has_value());
  if (said == 0) return;
  if (said > 1)
    throw UserError(terms.place(request.margin ? "margin" : "markup"),
                    "stands beside another way to a price",
                    "give one of " + terms.say({"margin"}) + ", " + terms.say({"markup"}) +
                        " and " + terms.say({"price"}));
  trade::Asking asking = trade::SetPrice{};
  if (request.margin) {
    asking = runs::read_margin(*request.margin, terms.place("margin"));
  } else if (request.markup) {
    asking = runs::read_markup(*request.markup, terms.place("markup"));
  } else {
    const Money price = read_money(*request.price, selling.currency, terms.place("price"));
    if (price.coins <= 0)
      throw UserError(terms.place("price"), "is zero", "give a price above zero");
    asking = trade::SetPrice{price};
  }
  selling.ways = {{"as asked", asking}};
}

std::string way_to_a_price(const UserTerms& terms) {
  return "give " + terms.say({"margin"}) + ", " + terms.say({"markup"}) + " or " +
         terms.say({"price"}) +
         ", or keep your ways of selling under \"asking\" in the studio's file";
}

}  // namespace

Reply quoted(const QuoteRequest& request, const Request& asked, const moulds::Library& library,
             const Caller& caller) {
  const std::optional<std::string> own_number;  // the numbers asked about are read here
  const planning::Run run =
      told_run({request.file, request.text, own_number}, asked.terms, library, caller);
  costing::Selling selling = runs::read_selling(run, library);
  ask_as_typed(selling, request, asked.terms);
  const auto numbers = numbers_asked(request, run, asked.terms);
  const planning::Measured measured = measured_run(run, caller);
  planning::BatchTrials trials(run, measured);
  const auto plan_for = [&](std::int64_t sell) {
    planning::Plan plan = planning::plan_for(sell, run, measured, trials);
    if (std::find(numbers.begin(), numbers.end(), sell) != numbers.end()) pass_gates(run, plan);
    return plan;
  };
  const costing::Quote quote = costing::quote(numbers, plan_for, selling, {run.file, ""});
  if (asked.form == Form::json) return {.document = reports::quote_json(run, quote, selling)};
  return {.document = reports::quote_text(run, quote, selling, way_to_a_price(asked.terms))};
}

}  // namespace brimwright::service
