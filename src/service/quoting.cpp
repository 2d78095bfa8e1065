#include "service/quoting.h"

#include "costing/quote.h"
#include "planning/plan.h"
#include "reports/quote_report.h"
#include "runs/packaging_reading.h"
#include "runs/selling_reading.h"
#include "runs/studio_file.h"
#include "service/order_quoting.h"
#include "service/ordered.h"
#include "service/pack_steps.h"
#include "service/quote_asking.h"
#include "service/recorded_stock.h"
#include "service/run_planning.h"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace brimwright::service {
namespace {

std::vector<std::int64_t> numbers_asked(const QuoteRequest& request, const planning::Run& run,
                                        const UserTerms& terms) {
  const Place where = request.sell ? terms.place("sell") : run.place("/sell");
  auto numbers = request.sell ? numbers_from(*request.sell, where) : std::vector{run.sell};
  for (const std::int64_t one : numbers) within_reach(one, where);
  return numbers;
}

/// Plans the run for one number of pieces after the other, and keeps what each takes.
class Numbers {
 public:
  Numbers(const planning::Run& run, const planning::Measured& measured,
          const costing::Selling& selling)
      : run_(run), measured_(measured), selling_(selling), trials_(run, measured) {}

  /// A number that is asked about.
  planning::Plan plan(std::int64_t sell) {
    planning::Plan plan = planning::plan_for(sell, run_, measured_, trials_);
    pass_gates(run_, plan);
    used_[sell] = all_materials(run_, plan, selling_);
    return plan;
  }
  /// One between those, of which no weights are told.
  planning::Plan amounts(std::int64_t sell) {
    planning::Plan plan = planning::amounts_for(sell, run_, measured_, trials_);
    used_between_[sell] = all_materials(run_, plan, selling_);
    return plan;
  }

  const Materials& used(std::int64_t sell) const { return used_.at(sell); }
  const std::map<std::int64_t, Materials>& used_between() const { return used_between_; }

 private:
  const planning::Run& run_;
  const planning::Measured& measured_;
  const costing::Selling& selling_;
  planning::BatchTrials trials_;
  std::map<std::int64_t, Materials> used_, used_between_;
};

Reply quoted_run(const QuoteRequest& request, const Request& asked, const moulds::Library& library,
                 const Caller& caller) {
  if (request.times)
    throw UserError(asked.terms.place("times"), "is of an order, and this is a run",
                    "give numbers of pieces with " + asked.terms.say({"sell", "12,24"}));
  const std::optional<std::string> own_number;  // the numbers asked about are read here
  const planning::Run run =
      told_run({request.file, request.text, own_number}, asked.terms, library, caller);
  costing::Selling selling = runs::read_selling(run, library);
  ask_as_typed(selling, request, asked.terms);
  const auto numbers = numbers_asked(request, run, asked.terms);
  const Shelf shelf = with_recorded_stock(supplies_for(run, selling, library), {run.file},
                                          request.printed_at.substr(0, 10), library, asked.terms);
  const runs::Supplies& supplies = shelf.supplies;
  const planning::Measured measured = measured_run(run, caller);
  Numbers planned(run, measured, selling);
  const costing::Quote quote = costing::quote(
      numbers, [&](std::int64_t sell) { return planned.plan(sell); },
      [&](std::int64_t sell) { return planned.amounts(sell); }, selling, {run.file, ""});
  std::vector<reports::Buying> purchases;
  for (const std::int64_t sell : numbers) {
    purchases.push_back(purchase_for(planned.used(sell), supplies, {&run}));
    put_notes(purchases.back(), shelf);
  }
  const auto steps = pack_steps(planned.used_between(), supplies, {&run});
  std::vector<std::string> remarks;
  const auto studios = runs::read_packaging(runs::studio_for(run.file, library));
  if (auto words = runs::own_packaging_words(run, studios)) remarks.push_back(std::move(*words));
  const reports::QuoteReport report{run, quote, selling, purchases, steps, remarks};
  return {.document = asked.form == Form::json
                          ? reports::quote_json(report)
                          : reports::quote_text(report, way_to_a_price(asked.terms)),
          .files = files_for(request, report, asked.terms)};
}

}  // namespace

Reply quoted(const QuoteRequest& request, const Request& asked, const moulds::Library& library,
             const Caller& caller) {
  if (const auto order = order_in(request.file, request.text, library))
    return quoted_order(*order, request, asked, library, caller);
  return quoted_run(request, asked, library, caller);
}

}  // namespace brimwright::service
