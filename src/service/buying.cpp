#include "service/buying.h"

#include "reports/buying_report.h"
#include "reports/csv_table.h"
#include "runs/selling_reading.h"
#include "runs/studio_file.h"
#include "runs/supplies.h"
#include "service/ordered.h"
#include "service/purchasing.h"
#include "service/run_planning.h"
#include "units/shown_text.h"
#include "units/written_number.h"

#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::service {
namespace {

using reports::Buying;

constexpr std::int64_t most_numbers = 2'000;  // of pieces that are planned to find what stock makes

/// A run to buy for.
struct Asked {
  std::string file;
  std::optional<std::int64_t> sell = {};  // where an order says it
  std::string order = {};                 // that order's file
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

/// The runs among the files, and those of the orders.
std::vector<Asked> runs_asked(const std::vector<std::string>& files,
                              const moulds::Library& library) {
  std::vector<Asked> all;
  for (const std::string& file : files) {
    library.named->push_back(file);
    const auto order = order_in(file, std::nullopt, library);
    if (!order) all.push_back({file});
    if (!order) continue;
    for (const auto& line : order->lines) all.push_back({line.run, line.pieces, file});
  }
  return all;
}

/// The studio's file for all runs.
std::string studio_for_all(const std::vector<Asked>& runs, const moulds::Library& library) {
  std::vector<std::string> files;
  for (const auto& one : runs) files.push_back(one.file);
  std::string studio = studio_of_all(files, library);
  if (studio.empty())
    throw UserError({files.front(), ""},
                    "has no studio.json beside it, so nothing can be bought for it",
                    "put packs and prices into a studio.json there, or name the studio's file");
  return studio;
}

/// A run by itself and in an order is bought for twice, which may be meant.
void note_doubles(const std::vector<Asked>& runs, Buying& buying) {
  std::map<std::string, std::int64_t> times;
  for (const auto& one : runs) ++times[one_name_of(one.file)];
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
    if (one.is_from_tap) say("Water is taken from the tap: no pack of it is listed.");
}

/// What is short for a plan of the run with the shelf as it is. Water from the tap never is, and
/// what goes round a piece is not needed to make it.
std::vector<Buying::Stock::Limit> short_of(const planning::Run& run, const planning::Plan& plan,
                                           const runs::Supplies& supplies) {
  auto materials = materials_in(run, plan);
  take_off_stock(materials, supplies);
  std::vector<Buying::Stock::Limit> limits;
  for (const auto& one : materials) {
    const bool is_from_tap = one.name == "water" && one.have.whole() == 0;
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
  for (const auto& [kind, name] : request.wanted)
    reply.files.push_back(
        {name, reports::buying_csv(buying, reports::mark_of(request.decimal_comma))});
  return reply;
}

}  // namespace

Reply bought(const BuyRequest& request, const Request& asked, const moulds::Library& given,
             const Caller& caller) {
  moulds::Library library = given;
  library.named = std::make_shared<std::vector<std::string>>();
  refuse_twice(request.files);
  const auto asked_for = runs_asked(request.files, library);
  if (request.with_stock && (asked_for.size() != 1 || !asked_for.front().order.empty()))
    throw UserError(asked.terms.place("with-stock"), "is of one run", "name a single run with it");
  Buying buying;
  buying.studio = studio_for_all(asked_for, library);
  const runs::Studio studio = runs::studio_for(asked_for.front().file, library);
  runs::Supplies supplies = runs::read_supplies(studio);
  const auto packaging = runs::read_packaging(studio);
  std::vector<PlannedRun> all;
  for (const auto& one : asked_for) {
    library.named->push_back(one.file);
    all.push_back(planned_run(one.file, one.sell, library, caller));
    const auto& [run, measured, plan] = all.back();
    agree_on_currency(run, supplies);
    buying.runs.push_back({one.file, run.name, plan.pieces.sell, plan.pieces.make, one.order});
    add_materials(buying.materials, materials_in(run, plan));
    add_materials(buying.materials, packaging_for(plan, packaging));
  }
  caller.tell_read(*library.named);
  take_off_stock(buying.materials, supplies);
  std::vector<const planning::Run*> runs;
  for (const auto& one : all) runs.push_back(&one.run);
  buy(buying, supplies, runs);
  note(buying);
  note_doubles(asked_for, buying);
  if (request.with_stock) buying.stock = stock_of(all.front(), supplies);
  return reply_of(request, asked, buying);
}

}  // namespace brimwright::service
