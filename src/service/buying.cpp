#include "service/buying.h"

#include "planning/cost.h"
#include "reports/buying_report.h"
#include "reports/csv_table.h"
#include "reports/sheet_html.h"
#include "reports/sheet_pdf.h"
#include "runs/packaging_reading.h"
#include "runs/studio_file.h"
#include "runs/supplies.h"
#include "service/order_planning.h"
#include "service/order_rest.h"
#include "service/ordered.h"
#include "service/purchasing.h"
#include "service/recorded_stock.h"
#include "service/run_planning.h"
#include "units/shown_text.h"
#include "units/written_number.h"

#include <map>
#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace brimwright::service {
namespace {

using reports::Buying;

constexpr std::int64_t most_numbers = 2'000;  // of pieces that are planned to find what stock makes

/// A run to buy for, or an order's.
struct Asked {
  std::string file;
  std::optional<runs::Order> order;

  std::vector<std::string> runs() const {
    if (!order) return {file};
    std::vector<std::string> files;
    for (const auto& line : order->lines) files.push_back(line.run);
    return files;
  }
};

void refuse_twice(const std::vector<std::string>& files) {
  std::map<std::string, std::string> known;
  for (const std::string& file : files) {
    const auto [place, is_new] = known.emplace(one_name_of(file), file);
    if (!is_new)
      throw UserError({file, ""},
                      "is named twice, as " + brimwright::quoted(place->second) + " too",
                      "name each file once; to make more of a run, raise its \"sell\"");
  }
}

std::vector<Asked> asked_for(const std::vector<std::string>& files,
                             const moulds::Library& library) {
  std::vector<Asked> all;
  for (const std::string& file : files) {
    library.named->push_back(file);
    all.push_back({file, order_in(file, std::nullopt, library)});
  }
  return all;
}

/// Their files, and those of the orders' lines.
std::vector<std::string> runs_of(const std::vector<Asked>& all) {
  std::vector<std::string> files;
  for (const Asked& one : all)
    for (std::string& file : one.runs()) files.push_back(std::move(file));
  return files;
}

/// The studio's file for all runs.
std::string studio_for_all(const std::vector<std::string>& files, const moulds::Library& library) {
  std::string studio = studio_of_all(files, library);
  if (studio.empty())
    throw UserError({files.front(), ""},
                    "has no studio.json beside it, so nothing can be bought for it",
                    "put packs and prices into a studio.json there, or name the studio's file");
  return studio;
}

/// A run by itself and in an order is bought for twice, which may be meant.
void note_doubles(const std::vector<std::string>& files, Buying& buying) {
  std::map<std::string, std::int64_t> times;
  for (const auto& one : files) ++times[one_name_of(one)];
  for (const auto& [file, count] : times)
    if (count > 1)
      buying.notes.push_back({Severity::note, on_one_line(file) + " is bought for " +
                                                  std::to_string(count) +
                                                  " times, once for each place it stands in."});
}

void note(Buying& buying) {
  const auto say = [&](const std::string& text) { buying.notes.push_back({Severity::note, text}); };
  for (const auto& delivery : buying.purchase.deliveries)
    if (!delivery.postage)
      say("The postage of " + brimwright::quoted(delivery.seller) +
          " is not given, so it is not in the sum, and the choice of packs takes it for nothing.");
  for (const auto& one : buying.materials)
    if (one.is_from_tap) say(reports::tap_words());
  for (const std::string& make : reports::makes_bought(buying))
    buying.notes.push_back(
        {Severity::caution, make +
                                ", by your word (\"serves_as\"): before it is weighed, compare "
                                "what its supplier says with what the formula was planned with."});
}

/// What is short for a plan of the run with the shelf as it is. Water that is not bought comes from
/// the tap, and what goes round a piece is not needed to make it.
std::vector<Buying::Stock::Limit> short_of(const planning::Run& run, const planning::Plan& plan,
                                           const runs::Supplies& supplies) {
  auto materials = materials_in(run, plan);
  take_off_stock(materials, supplies, {&run});
  const auto packs = packs_for(materials, supplies, {&run});
  std::vector<Buying::Stock::Limit> limits;
  for (const auto& one : materials) {
    const bool is_from_tap = planning::may_be_from_tap(one.name) && !has_pack(packs, one.name);
    if (one.to_buy.whole() > 0 && !is_from_tap)
      limits.push_back({one.name, one.shown, one.needed, one.have});
  }
  return limits;
}

/// Plans every number of pieces downwards: between two that can be made there may be some that fall
/// below the least batch.
Buying::Stock stock_of(const PlannedRun& planned, const runs::Supplies& supplies) {
  Buying::Stock stock;
  planning::BatchTrials trials(planned.run, planned.measured);
  std::int64_t numbers = 0;
  for (std::int64_t sell = planned.run.sell; sell > 0; --sell) {
    if (++numbers > most_numbers)
      throw UserError({planned.run.file, "/sell"},
                      "is so many that stock falls short of the " + std::to_string(most_numbers) +
                          " numbers below too",
                      "ask with a smaller number of pieces");
    try {
      planning::Run smaller = planned.run;
      smaller.sell = sell;
      const auto plan = planning::amounts_for(sell, smaller, planned.measured, trials);
      const auto limits = short_of(planned.run, plan, supplies);
      if (limits.empty()) {
        pass_gates(smaller, plan);
        stock.pieces = sell;
        stock.batches = plan.pieces.batches;
        return stock;
      }
      stock.short_for = sell;
      stock.limited_by = limits;
    } catch (const UserError&) {
      continue;  // so few, or this many, cannot be made for another reason
    }
  }
  return stock;
}

Reply reply_of(const BuyRequest& request, const Request& asked, const Buying& buying) {
  Reply reply{.document = asked.form == Form::json ? reports::buying_json(buying)
                                                   : reports::buying_text(buying)};
  for (const auto& [kind, name] : request.wanted) {
    if (kind == FileKind::csv) {
      reply.files.push_back(
          {name, reports::buying_csv(buying, reports::mark_of(request.decimal_comma))});
      continue;
    }
    const auto sheet = reports::buying_sheet(buying, request.printed_at);
    reply.files.push_back({name, kind == FileKind::pdf
                                     ? reports::sheet_pdf(sheet, reports::Paper::A4)
                                     : reports::sheet_html(sheet)});
  }
  return reply;
}

/// Plans what is asked for, and gathers what it takes.
class Gathering {
 public:
  Gathering(const moulds::Library& library, const Caller& caller, std::string today,
            const runs::PackagingList& packaging, runs::Supplies& supplies, Buying& buying)
      : library_(library),
        caller_(caller),
        today_(std::move(today)),
        packaging_(packaging),
        supplies_(supplies),
        buying_(buying) {}

  void gather(const Asked& asked) {
    if (asked.order)
      gather_order(*asked.order);
    else
      gather_run(asked.file);
  }
  const std::vector<const planning::Run*>& runs() const { return runs_; }
  const PlannedRun& first_run() const { return *by_themselves_.front(); }

 private:
  void gather_run(const std::string& file) {
    library_.named->push_back(file);
    by_themselves_.push_back(
        std::make_unique<PlannedRun>(planned_run(file, std::nullopt, library_, caller_)));
    const auto& [run, measured, plan] = *by_themselves_.back();
    add_materials(buying_.materials, materials_in(run, plan));
    add(file, run, plan, "");
    pack(run, plan.pieces.sell);
  }

  void gather_order(const runs::Order& order) {
    auto rest =
        rest_of(order, 1, ready_by(order, std::nullopt, today_, library_), library_, caller_);
    orders_.push_back(ordered_runs(rest.order, library_, caller_));
    const OrderedRuns& ordered = orders_.back();
    planned_.push_back(std::make_unique<PlannedOrder>(planned_order(ordered, 1)));
    const PlannedOrder& planned = *planned_.back();
    add_materials(buying_.materials, materials_in(ordered, planned));
    for (std::size_t i = 0; i < ordered.size(); ++i)
      add(ordered[i]->line.run, ordered[i]->run, planned.lines[i], order.file);
    for (const reports::ReadyLine& line : rest.ready.lines) pack(line, ordered);
    buying_.ready.push_back(std::move(rest.ready));
    for (auto& one : poured_together(ordered, planned))
      buying_.together.push_back({order.file, std::move(one)});
    for (const std::string& remark : lone_words(order))
      buying_.notes.push_back({Severity::note, remark});
  }

  void add(const std::string& file, const planning::Run& run, const planning::Plan& plan,
           const std::string& order) {
    buying_.runs.push_back({file, run.name, plan.pieces.sell, plan.pieces.make, order});
  }

  /// What goes round pieces, those made and those from stock.
  void pack(const planning::Run& run, std::int64_t pieces) {
    agree_on_currency(run, supplies_);
    add_packaging(buying_.materials, run, pieces, runs::packaging_of(run, packaging_));
    if (const auto words = runs::own_packaging_words(run, packaging_))
      buying_.notes.push_back({Severity::note, *words});
    runs_.push_back(&run);
  }
  void pack(const reports::ReadyLine& line, const OrderedRuns& ordered) {
    const std::int64_t pieces = line.to_pack();
    if (pieces == 0) return;
    for (const auto& one : ordered)
      if (one->line.run == line.run) return pack(one->run, pieces);
    of_stock_.push_back(std::make_unique<planning::Run>(run_from(line.run, pieces, library_)));
    pack(*of_stock_.back(), pieces);
  }

  const moulds::Library& library_;
  const Caller& caller_;
  std::string today_;
  const runs::PackagingList& packaging_;
  runs::Supplies& supplies_;
  Buying& buying_;
  std::vector<std::unique_ptr<PlannedRun>> by_themselves_;
  std::vector<OrderedRuns> orders_;
  std::vector<std::unique_ptr<PlannedOrder>> planned_;
  std::vector<std::unique_ptr<planning::Run>> of_stock_;  // of whose pieces none is made
  std::vector<const planning::Run*> runs_;
};

}  // namespace

Reply bought(const BuyRequest& request, const Request& asked, const moulds::Library& given,
             const Caller& caller) {
  moulds::Library library = given;
  library.named = std::make_shared<std::vector<std::string>>();
  refuse_twice(request.files);
  const auto all = asked_for(request.files, library);
  if (request.with_stock && (all.size() != 1 || all.front().order))
    throw UserError(asked.terms.place("with-stock"), "is of one run", "name a single run with it");
  const auto files = runs_of(all);
  Buying buying;
  buying.studio = studio_for_all(files, library);
  const runs::Studio studio = runs::studio_for(files.front(), library);
  Shelf shelf = with_recorded_stock(*runs::supplies_of(studio, library), files,
                                    request.printed_at.substr(0, 10), library, asked.terms);
  runs::Supplies& supplies = shelf.supplies;
  const auto packaging = runs::read_packaging(studio);
  Gathering gathering(library, caller, request.printed_at.substr(0, 10), packaging, supplies,
                      buying);
  for (const Asked& one : all) gathering.gather(one);
  caller.tell_read(*library.named);
  take_off_stock(buying.materials, supplies, gathering.runs());
  buy(buying, supplies, gathering.runs());
  note(buying);
  put_notes(buying, shelf);
  note_doubles(files, buying);
  if (request.with_stock) buying.stock = stock_of(gathering.first_run(), supplies);
  return reply_of(request, asked, buying);
}

}  // namespace brimwright::service
