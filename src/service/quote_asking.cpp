#include "service/quote_asking.h"

#include "reports/csv_table.h"
#include "reports/sheet_html.h"
#include "reports/sheet_pdf.h"
#include "runs/selling_reading.h"
#include "runs/studio_file.h"
#include "service/run_planning.h"
#include "units/fields.h"
#include "units/written_number.h"

#include <algorithm>
#include <optional>
#include <utility>

namespace brimwright::service {
namespace {

constexpr std::size_t most_numbers = 12;

void refuse_two_ways(const QuoteRequest& request, const UserTerms& terms) {
  std::vector<std::string> said;
  if (request.margin) said.emplace_back("margin");
  if (request.markup) said.emplace_back("markup");
  if (request.price) said.emplace_back("price");
  if (request.way) said.emplace_back("way");
  if (said.size() > 1)
    throw UserError(terms.place(said.front()),
                    "stands beside another way to a price, " + terms.say({said.back()}),
                    "give one of the two");
}

void choose_way(costing::Selling& selling, const std::string& name, const Place& where) {
  std::vector<std::string> names;
  for (const auto& way : selling.ways) {
    if (way.name == name) {
      selling.ways = std::vector{way};
      return;
    }
    names.push_back(way.name);
  }
  const auto near = nearest_name(name, names);
  throw UserError(where, brimwright::quoted(name) + " is no way of selling of the studio",
                  near ? "did you mean " + brimwright::quoted(*near) + "?"
                       : "keep it under \"asking\" in the studio's file");
}

/// A customer is offered one price, of which all is known.
template <class Report>
void refuse_no_offer(const std::vector<std::string>& unpriced, const Report& report,
                     const UserTerms& terms) {
  if (!unpriced.empty())
    throw UserError(terms.place("offer"), unpriced.front() + " has no price, so nothing is offered",
                    "give its price");
  if (report.selling.ways.size() == 1) return;
  throw UserError(terms.place("offer"),
                  report.selling.ways.empty() ? "needs a price" : "needs one way to a price",
                  report.selling.ways.empty()
                      ? way_to_a_price(terms)
                      : "name one of the studio's ways with " +
                            terms.say({"way", report.selling.ways[0].name}));
}

std::string picture_of(const reports::QuoteReport& report, const UserTerms& terms) {
  if (report.quote.costs.empty())
    throw UserError(terms.place("picture"), "shows costs, and something has no price",
                    "give the price of " + report.quote.numbers.front().unpriced.front());
  return reports::quote_picture_svg(report);
}

std::string picture_of(const reports::OrderQuoteReport&, const UserTerms& terms) {
  throw UserError(terms.place("picture"), "is of a run, and this is an order",
                  "ask for the picture of one of its runs");
}

template <class Report>
std::vector<MadeFile> files_of(const QuoteRequest& request, const Report& report,
                               const std::vector<std::string>& unpriced, const UserTerms& terms) {
  std::vector<MadeFile> files;
  for (const auto& [kind, name] : request.files) {
    if (kind == FileKind::picture) {
      files.push_back({name, picture_of(report, terms)});
      continue;
    }
    const bool is_offer = kind == FileKind::offer || kind == FileKind::offer_pdf;
    if (is_offer) refuse_no_offer(unpriced, report, terms);
    if (kind == FileKind::csv) {
      files.push_back({name, reports::quote_csv(report, reports::mark_of(request.decimal_comma))});
      continue;
    }
    const auto sheet = is_offer ? reports::offer_sheet(report, request.printed_at)
                                : reports::quote_sheet(report, request.printed_at);
    const bool is_pdf = kind == FileKind::pdf || kind == FileKind::offer_pdf;
    files.push_back({name, is_pdf ? reports::sheet_pdf(sheet, reports::Paper::A4)
                                  : reports::sheet_html(sheet)});
  }
  return files;
}

}  // namespace

std::vector<std::int64_t> numbers_from(const std::string& typed, const Place& where,
                                       const std::string& what) {
  std::vector<std::int64_t> numbers;
  for (std::size_t from = 0; from <= typed.size();) {
    const std::size_t to = std::min(typed.find(',', from), typed.size());
    const std::int64_t one = pieces_from(typed.substr(from, to - from), where, what);
    if (std::find(numbers.begin(), numbers.end(), one) == numbers.end()) numbers.push_back(one);
    from = to + 1;
  }
  if (numbers.size() > most_numbers)
    throw UserError(where, "names " + std::to_string(numbers.size()) + " numbers",
                    "give at most " + std::to_string(most_numbers));
  return numbers;
}

std::int64_t within_reach(std::int64_t pieces, const Place& where) {
  if (pieces > most_pieces)
    throw UserError(where, "is " + std::to_string(pieces) + " pieces",
                    "give at most " + std::to_string(most_pieces) + " to a quote");
  return pieces;
}

void ask_as_typed(costing::Selling& selling, const QuoteRequest& request, const UserTerms& terms) {
  refuse_two_ways(request, terms);
  if (request.way) return choose_way(selling, *request.way, terms.place("way"));
  std::optional<trade::Asking> asking;
  if (request.margin) asking = runs::read_margin(*request.margin, terms.place("margin"));
  if (request.markup) asking = runs::read_markup(*request.markup, terms.place("markup"));
  if (request.price)
    asking = runs::read_set_price(*request.price, selling.currency, terms.place("price"));
  if (asking) selling.ways = {{"as asked", *asking}};
}

std::string way_to_a_price(const UserTerms& terms) {
  return "give " + terms.say({"margin"}) + ", " + terms.say({"markup"}) + " or " +
         terms.say({"price"}) +
         ", or keep your ways of selling under \"asking\" in the studio's file";
}

/// The studio's shelf and packs; where its prices are in another money than the run's, none.
runs::Supplies supplies_for(const planning::Run& run, const costing::Selling& selling,
                            const moulds::Library& library) {
  runs::Supplies supplies = *runs::supplies_of(runs::studio_for(run.file, library), library);
  if (supplies.currency.code.empty()) supplies.currency = selling.currency;
  if (supplies.currency == selling.currency) return supplies;
  runs::Supplies none;
  none.currency = selling.currency;
  return none;
}

Materials all_materials(const planning::Run& run, const planning::Plan& plan,
                        const costing::Selling& selling) {
  Materials materials = materials_in(run, plan);
  add_packaging(materials, run, plan.pieces.sell, selling.packaging);
  return materials;
}

reports::Buying purchase_for(Materials materials, const runs::Supplies& supplies,
                             const std::vector<const planning::Run*>& runs) {
  reports::Buying buying;
  buying.materials = std::move(materials);
  take_off_stock(buying.materials, supplies, runs);
  buy(buying, supplies, runs);
  return buying;
}

std::vector<MadeFile> files_for(const QuoteRequest& request, const reports::QuoteReport& report,
                                const UserTerms& terms) {
  return files_of(request, report, report.quote.numbers.front().unpriced, terms);
}

std::vector<MadeFile> files_for(const QuoteRequest& request,
                                const reports::OrderQuoteReport& report, const UserTerms& terms) {
  return files_of(request, report, report.orders.front().unpriced, terms);
}

}  // namespace brimwright::service
