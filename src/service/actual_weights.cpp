#include "service/actual_weights.h"

#include "chemistry/superfat.h"
#include "records/blanks.h"
#include "records/lot_use.h"
#include "runs/studio_file.h"
#include "service/batters_as_weighed.h"
#include "service/lot_purity.h"
#include "service/plan_again.h"
#include "units/reading.h"
#include "units/weight_text.h"

#include <algorithm>
#include <utility>

namespace brimwright::service {
namespace {

using records::Blank;

Mass mass_in(const std::string& text) { return read_mass(text, {}); }

/// Rows of which another mass is noted than is planned.
WeighedRows weighed_otherwise(const std::vector<Blank>& rows, const records::Notes& notes) {
  WeighedRows weighed;
  for (const Blank& row : rows)
    if (const auto mass = notes.mass(row.key); mass && *mass != mass_in(row.planned))
      weighed.emplace(row.key.substr(records::weighed_prefix.size()), *mass);
  return weighed;
}

std::string superfat_words(const chemistry::EffectiveSuperfat& superfat) {
  return "superfat " + chemistry::lowest_in_words(superfat.nominal) + ", 19 in 20 between " +
         chemistry::lowest_in_words(superfat.likely_low) + " and " +
         chemistry::highest_in_words(superfat.likely_high);
}

std::string what_came_out(const BatterAsWeighed& batter) {
  std::string what = batter.name + " as it was weighed" +
                     (batter.times > 1 ? ", of its " + std::to_string(batter.times) +
                                             " whippings each an equal part"
                                       : "") +
                     ": " + superfat_words(batter.now) + "; planned was " +
                     chemistry::lowest_in_words(batter.planned) + ".";
  if (batter.worst && batter.worst->nominal < std::min(batter.now.nominal, batter.planned))
    what += " One that had all that is more of the lye or less of the fats: " +
            superfat_words(*batter.worst) + ".";
  if (batter.if_lye_is_missing)
    what +=
        " That is where only water is missing of its lye solution; where lye is, left in the "
        "jug, it is " +
        chemistry::highest_in_words(*batter.if_lye_is_missing) + ".";
  return what;
}

/// Of one batter, whose superfat is another by what was weighed.
Remark remark_of(const BatterAsWeighed& batter) {
  std::string what = what_came_out(batter);
  const auto& lowest = batter.worst ? *batter.worst : batter.now;
  if (lowest.likely_low >= Share{}) return {Severity::note, std::move(what)};
  return {Severity::danger,
          (batter.now.nominal < Share{} ? "LYE-HEAVY. " : "LYE-HEAVY SOAP MAY COME OUT. ") + what +
              " Lye is left over and burns: correct it before it is poured, or keep it apart, " +
              "and sell nothing of it that was not tested."};
}

bool is_as_planned(const BatterAsWeighed& batter) {
  return batter.now.nominal == batter.planned && !batter.if_lye_is_missing;
}

/// Of which more makes a soap lye-heavy; a pot that is topped up to less is stronger.
bool is_lye(const Blank& row) { return row.role == "alkali" || row.role == "lye_solution"; }
bool is_topped_up(const Blank& row) {
  return row.key == std::string(records::weighed_prefix).append(records::topped_up_row);
}

/// Where the run is another by now, more alkali or fewer fats than planned are told of alone.
AsWeighed without_plan(const std::vector<Blank>& rows, const WeighedRows& weighed) {
  AsWeighed told;
  for (const Blank& row : rows) {
    const auto at = weighed.find(row.key.substr(records::weighed_prefix.size()));
    if (at == weighed.end() || (row.role != "fat" && !is_lye(row))) continue;
    const bool is_above = at->second > mass_in(row.planned);
    if (is_above != (is_lye(row) && !is_topped_up(row))) continue;
    told.remarks.push_back(
        {Severity::danger,
         "LYE-HEAVY SOAP MAY COME OUT: " + row.of + ": of " + row.words + " " +
             (is_above ? "more" : "less") + " was weighed than the " + row.planned +
             " planned. The run was changed since, so its superfat cannot be told: keep it apart, "
             "and sell nothing of it that was not tested."});
    told.more_lye.push_back(told.remarks.back().text);
  }
  return told;
}

/// Of what is weighed or counted: the row that lots were taken for.
std::string row_of(const std::string& key) {
  return key.starts_with(records::weighed_prefix) ? key.substr(records::weighed_prefix.size())
                                                  : records::counted_row(key);
}

trade::Amount really_used(const Blank& row, const records::Notes& notes) {
  if (row.kind == "count")
    return trade::Amount::pieces(notes.count(row.key).value_or(std::stoll(row.planned)));
  return trade::Amount::at_least(notes.mass(row.key).value_or(mass_in(row.planned)));
}

}  // namespace

bool takes_lots(const std::string& key) {
  return key.starts_with(records::weighed_prefix) || !records::counted_row(key).empty();
}

std::vector<Remark> use_as_weighed(records::Records& records, const records::Batch& batch,
                                   const std::vector<std::string>& keys, const std::string& run,
                                   const moulds::Library& library, const LotWishes& wishes,
                                   const UserTerms& terms) {
  const std::string plan = records::plan_of(records, batch);
  std::vector<Blank> planned = records::rows_in(plan, batch.number);
  for (Blank& blank : records::blanks_in(plan, batch.number)) planned.push_back(std::move(blank));
  const auto notes = records::notes_of(records, batch);
  std::vector<records::Weighed> rows;
  for (const auto& used : records::used_by(records, batch.id)) {
    const auto key = std::find_if(keys.begin(), keys.end(), [&](const std::string& one) {
      return row_of(one) == used.weighed.row;
    });
    const Blank* row = key == keys.end() ? nullptr : records::find_blank(planned, *key);
    if (row == nullptr) continue;
    rows.push_back(used.weighed);
    rows.back().amount = really_used(*row, notes);
  }
  if (rows.empty()) return {};
  find_what_serves(rows, records, runs::read_supplies(runs::studio_for(run, library)),
                   purities_in_name);
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
  const WeighedRows weighed = weighed_otherwise(rows, notes);
  if (weighed.empty()) return {};
  const auto again = plan_again(records, batch, run, library, caller);
  if (!again) return without_plan(rows, weighed);
  const planning::Batch& size = again->batch(batch.number);
  const BatchAsWeighed all = as_weighed(again->run, again->plan, size, weighed);
  AsWeighed told;
  for (const BatterAsWeighed& batter : all.batters) {
    if (is_as_planned(batter)) continue;
    told.remarks.push_back(remark_of(batter));
    if (batter.has_more_lye || told.remarks.back().severity == Severity::danger)
      told.more_lye.push_back(told.remarks.back().text);
  }
  told.remarks.insert(told.remarks.end(), all.of_pot.begin(), all.of_pot.end());
  return told;
}

}  // namespace brimwright::service
