#include "service/actual_weights.h"

#include "chemistry/superfat.h"
#include "planning/weighing.h"
#include "records/blanks.h"
#include "records/lot_use.h"
#include "reports/plan_report.h"
#include "reports/weigh_out.h"
#include "runs/studio_file.h"
#include "service/run_planning.h"
#include "units/reading.h"
#include "units/weight_text.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <map>
#include <optional>
#include <utility>

namespace brimwright::service {
namespace {

using Json = nlohmann::ordered_json;
using planning::Weighing;
using records::Blank;
using Weighed = std::map<std::string, Mass>;  // by the row's key, all of its times together

Mass mass_in(const std::string& text) { return read_mass(text, {}); }

/// Rows of which another mass is noted than is planned.
Weighed weighed_otherwise(const std::vector<Blank>& rows, const records::Notes& notes) {
  Weighed weighed;
  for (const Blank& row : rows)
    if (const auto mass = notes.mass(row.key); mass && *mass != mass_in(row.planned))
      weighed.emplace(row.key.substr(records::weighed_prefix.size()), *mass);
  return weighed;
}

const Json* batch_in(const Json& plan, std::int64_t number) {
  for (const Json& batch : plan.at("batches"))
    for (const Json& one : batch.at("numbers"))
      if (one.get<std::int64_t>() == number) return &batch;
  return nullptr;
}

Json superfats_of(const Json& batch) {
  Json superfats = Json::array();
  for (const char* batter : {"pour", "pipe"})
    if (batch.contains(batter) && batch[batter].is_object())
      superfats.push_back(batch[batter].value("superfat_percent", Json()));
  return superfats;
}

/// Whether two plans weigh the same batch of the same things.
bool are_alike(const Json& one, const Json& other, std::int64_t number) {
  const Json* a = batch_in(one, number);
  const Json* b = batch_in(other, number);
  return a != nullptr && b != nullptr && a->at("mark") == b->at("mark") &&
         superfats_of(*a) == superfats_of(*b);
}

/// As planned again from the run's file of now, where that is what was frozen.
std::optional<PlannedRun> plan_again(const std::string& frozen, std::int64_t number,
                                     const std::string& run, const moulds::Library& library,
                                     const Caller& caller) try {
  PlannedRun again = planned_run(run, {}, library, caller);
  if (!are_alike(Json::parse(frozen), Json::parse(reports::plan_json(again.run, again.plan)),
                 number))
    return std::nullopt;
  return again;
} catch (const UserError&) {
  return std::nullopt;
}

const planning::Batch& size_of(const planning::Plan& plan, std::int64_t number) {
  return *std::find_if(plan.batches.begin(), plan.batches.end(), [&](const auto& batch) {
    return std::find(batch.numbers.begin(), batch.numbers.end(), number) != batch.numbers.end();
  });
}

/// A batter of the batch, and what is put on the scales for it.
struct Batter {
  std::string key;  // that its vessels' keys begin with
  const chemistry::Formula& formula;
  const Weighing& planned;
  Share planned_superfat;
};

std::vector<Batter> batters_of(const planning::Run& run, const planning::Batch& batch) {
  std::vector<Batter> all;
  const auto add = [&](const std::string& key, const chemistry::Formula& formula,
                       const Weighing& weighing) {
    all.push_back({key, formula, weighing, weighing.superfat.nominal});
  };
  add(reports::base_key(), run.pour.formula, batch.pour.batter.weighing);
  for (std::size_t i = 0; i < batch.whippings.size(); ++i)
    add(reports::whipping_key(i), run.pipe->formula, batch.whippings[i].pipe.batter.weighing);
  return all;
}

/// How much more alkali each batter has of a pot that was weighed otherwise: as a share of its own.
double lye_of_pot(const planning::Batch& batch, const Weighed& weighed,
                  const std::vector<reports::Vessel>& vessels) {
  if (!batch.lye_pot) return 1;
  double most = 1;
  for (const auto& vessel : vessels)
    if (vessel.kind == reports::Vessel::Kind::lye_pot)
      for (const auto& row : vessel.rows)
        if (const auto at = weighed.find(row.key);
            at != weighed.end() && row.role == reports::WeighOutRow::Role::alkali)
          most = std::max(most, at->second / row.mass);
  return most;
}

/// The batter as it was weighed.
Weighing with(const Batter& batter, const Weighed& weighed,
              const std::vector<reports::Vessel>& vessels, double lye) {
  Weighing now = batter.planned;
  for (const auto& vessel : vessels)
    if (vessel.key.starts_with(batter.key + ".") &&
        vessel.key.find('.', batter.key.size() + 1) == std::string::npos)
      for (const auto& row : vessel.rows)
        if (const auto at = weighed.find(row.key); at != weighed.end() && row.ingredient)
          now.ingredients[*row.ingredient].weighed =
              at->second * (1.0 / static_cast<double>(vessel.times));
  for (auto& ingredient : now.ingredients)
    if (ingredient.role == planning::Role::alkali) ingredient.weighed = lye * ingredient.weighed;
  const auto r = planning::reacting(batter.formula, now.ingredients);
  now.superfat = chemistry::effective_superfat(r.fats, r.alkalis, r.acids, r.blends);
  return now;
}

std::string superfat_words(const chemistry::EffectiveSuperfat& superfat) {
  return "superfat " + chemistry::lowest_in_words(superfat.nominal) + ", 19 in 20 between " +
         chemistry::lowest_in_words(superfat.likely_low) + " and " +
         chemistry::highest_in_words(superfat.likely_high);
}

/// Of one batter, whose superfat is another by what was weighed.
Remark remark_of(const Batter& batter, const Weighing& now) {
  const std::string what =
      batter.formula.name + " as it was weighed: " + superfat_words(now.superfat) +
      "; planned was " + chemistry::lowest_in_words(batter.planned_superfat) + ".";
  if (now.superfat.likely_low >= Share{}) return {Severity::note, what};
  return {Severity::danger,
          (now.superfat.nominal < Share{} ? "LYE-HEAVY. " : "LYE-HEAVY SOAP MAY COME OUT. ") +
              what +
              " Lye is left over and burns: correct it before it is poured, or keep it apart, " +
              "and sell nothing of it that was not tested."};
}

Mass alkali_in(const Weighing& weighing) {
  Mass all;
  for (const auto& ingredient : weighing.ingredients)
    if (ingredient.role == planning::Role::alkali) all += ingredient.weighed;
  return all;
}

bool is_lye(const Blank& row) { return row.role == "alkali"; }

/// Where the run is another by now, more alkali or fewer fats than planned are told of alone.
AsWeighed without_plan(const std::vector<Blank>& rows, const Weighed& weighed) {
  AsWeighed told;
  for (const Blank& row : rows) {
    const auto at = weighed.find(row.key.substr(records::weighed_prefix.size()));
    if (at == weighed.end() || (row.role != "fat" && !is_lye(row))) continue;
    const bool is_above = at->second > mass_in(row.planned);
    if (is_above != is_lye(row)) continue;
    told.has_more_lye = true;
    told.remarks.push_back(
        {Severity::danger,
         "LYE-HEAVY SOAP MAY COME OUT: of " + row.words + " " + (is_above ? "more" : "less") +
             " was weighed than the " + row.planned +
             " planned. The run was changed since, so its superfat cannot be told: keep it apart, "
             "and sell nothing of it that was not tested."});
  }
  return told;
}

}  // namespace

std::vector<Remark> use_as_weighed(records::Records& records, const records::Batch& batch,
                                   const std::vector<std::string>& keys, const std::string& run,
                                   const moulds::Library& library, const LotWishes& wishes,
                                   const UserTerms& terms) {
  const auto planned = records::rows_in(records::plan_of(records, batch), batch.number);
  const auto notes = records::notes_of(records, batch);
  std::vector<records::Weighed> rows;
  for (const auto& used : records::used_by(records, batch.id)) {
    const std::string key = std::string(records::weighed_prefix) + used.weighed.row;
    const Blank* row = records::find_blank(planned, key);
    if (row == nullptr || std::find(keys.begin(), keys.end(), key) == keys.end()) continue;
    rows.push_back(used.weighed);
    rows.back().amount = trade::Amount::at_least(notes.mass(key).value_or(mass_in(row->planned)));
  }
  if (rows.empty()) return {};
  find_what_serves(rows, records, runs::read_supplies(runs::studio_for(run, library)));
  return records::use_lots(records, batch.id, batch.begun_on, std::move(rows),
                           read_wishes(wishes, terms));
}

AsWeighed as_weighed(const records::Records& records, const records::Batch& batch,
                     const records::Notes& notes, const std::string& run,
                     const moulds::Library& library, const Caller& caller) {
  const bool has_any = std::any_of(notes.all.begin(), notes.all.end(), [](const auto& one) {
    return one.first.starts_with(records::weighed_prefix);
  });
  if (!has_any) return {};
  const std::string frozen = records::plan_of(records, batch);
  const auto rows = records::rows_in(frozen, batch.number);
  const Weighed weighed = weighed_otherwise(rows, notes);
  if (weighed.empty()) return {};
  const auto again = plan_again(frozen, batch.number, run, library, caller);
  if (!again) return without_plan(rows, weighed);
  const planning::Batch& size = size_of(again->plan, batch.number);
  const auto vessels = reports::weigh_out(again->run, again->plan, size);
  const double lye = lye_of_pot(size, weighed, vessels);
  AsWeighed told;
  for (const Batter& batter : batters_of(again->run, size)) {
    const Weighing now = with(batter, weighed, vessels, lye);
    if (now.superfat.nominal == batter.planned_superfat) continue;
    told.remarks.push_back(remark_of(batter, now));
    told.has_more_lye |= told.remarks.back().severity == Severity::danger ||
                         alkali_in(now) > alkali_in(batter.planned);
  }
  return told;
}

}  // namespace brimwright::service
