#include "service/lot_taking.h"

#include "reports/weigh_out.h"
#include "runs/studio_file.h"
#include "units/written_number.h"

#include <algorithm>
#include <map>
#include <set>
#include <stdexcept>
#include <utility>

namespace brimwright::service {
namespace {

using records::Weighed;
using reports::Vessel;
using trade::Amount;

const planning::Batch& size_of(const planning::Plan& plan, std::int64_t number) {
  for (const auto& batch : plan.batches)
    if (std::find(batch.numbers.begin(), batch.numbers.end(), number) != batch.numbers.end())
      return batch;
  throw std::logic_error("the plan has no batch " + std::to_string(number));
}

void add_counted(std::vector<Weighed>& rows, const planning::Plan& plan) {
  for (std::size_t i = 0; i < plan.decorations.size(); ++i) {
    const auto& decoration = plan.decorations[i];
    if (!decoration.is_bought || decoration.casts == 0) continue;
    rows.push_back({.row = "decoration-" + std::to_string(i + 1) + ".bought",
                    .material = decoration.material,
                    .shown = decoration.name,
                    .amount = Amount::pieces(decoration.casts)});
  }
}

/// The codes of the lots that a batch took `material` from, but for `code`.
std::set<std::string> other_lots(const records::Records& records, const records::Batch& batch,
                                 const std::string& material, const std::string& code) {
  std::set<std::string> others;
  const auto its_lots = records::lots_called(records, code);
  for (const auto& row : records::used_by(records, batch.id)) {
    if (row.weighed.material != material) continue;
    for (const auto& take : row.takes)
      if (std::none_of(its_lots.begin(), its_lots.end(),
                       [&](const auto& one) { return one.lot.id == take.lot; }))
        if (const auto lot = records::lot_of_id(records, take.lot)) others.insert(lot->lot.code);
  }
  return others;
}

/// A formula's lye is for the analysis of one lot; another takes another lye.
void note_other_analyses(std::vector<Remark>& remarks, const records::Records& records,
                         const records::Batch& batch, const planning::Run& run) {
  std::vector<const chemistry::Formula*> formulas = {&run.pour.formula};
  if (run.pipe) formulas.push_back(&run.pipe->formula);
  for (const auto* formula : formulas)
    for (const auto& fat : formula->fats) {
      if (fat.lot.empty()) continue;
      for (const std::string& code : other_lots(records, batch, fat.fat.id, fat.lot))
        remarks.push_back(
            {Severity::caution, fat.fat.name + " is of lot " + code + ", and \"" + formula->name +
                                    "\" has the analysis of lot " + fat.lot +
                                    ": compare their saponification values before you pour."});
    }
}

}  // namespace

std::vector<Weighed> weighed_for(const planning::Run& run, const planning::Plan& plan,
                                 const planning::Batch& batch, std::int64_t number) {
  std::vector<Weighed> rows;
  for (const Vessel& vessel : reports::weigh_out(run, plan, batch)) {
    if (vessel.kind == Vessel::Kind::melt && number != 1) continue;
    for (const auto& row : vessel.rows)
      if (!row.material.empty())
        rows.push_back({.row = row.key,
                        .material = row.material,
                        .shown = row.name,
                        .amount = Amount::at_least(static_cast<double>(vessel.times) * row.mass)});
  }
  if (number == 1) add_counted(rows, plan);
  return rows;
}

void find_what_serves(std::vector<Weighed>& rows, const records::Records& records,
                      const runs::Supplies& supplies) {
  std::vector<std::string> needed;
  for (const Weighed& row : rows) needed.push_back(row.material);
  std::multimap<std::string, std::string> serving;
  for (const std::string& name : records::materials_of_lots(records)) {
    const auto serves = supplies.serves_as.find(name);
    const Place where =
        serves == supplies.serves_as.end() ? Place{records.path(), ""} : serves->second.where;
    const std::string material = runs::material_of(name, needed, supplies, where);
    if (material != name) serving.emplace(material, name);
  }
  for (Weighed& row : rows) {
    const auto [first, end] = serving.equal_range(row.material);
    for (auto one = first; one != end; ++one) row.served_by.push_back(one->second);
  }
}

records::FromLots read_wishes(const LotWishes& typed, const UserTerms& terms) {
  records::FromLots wishes;
  for (const std::string& one : typed.lots) {
    const auto equals = one.rfind('=');
    if (equals == std::string::npos || equals == 0 || equals + 1 == one.size())
      throw UserError(terms.place("lot"), brimwright::quoted(one) + " names no material and lot",
                      "write both, such as " + terms.say({"lot", "\"olive=OL-12\""}));
    wishes.chosen[one.substr(0, equals)].push_back(one.substr(equals + 1));
  }
  wishes.beyond = {typed.beyond_stock.begin(), typed.beyond_stock.end()};
  return wishes;
}

std::vector<Remark> take_of_lots(records::Records& records, const records::Batch& batch,
                                 const planning::Run& run, const planning::Plan& plan,
                                 const moulds::Library& library, const LotWishes& wishes,
                                 const UserTerms& terms) {
  auto rows = weighed_for(run, plan, size_of(plan, batch.number), batch.number);
  find_what_serves(rows, records, *runs::supplies_of(runs::studio_for(run.file, library), library));
  auto remarks = records::use_lots(records, batch.id, batch.begun_on, std::move(rows),
                                   read_wishes(wishes, terms));
  note_other_analyses(remarks, records, batch, run);
  return remarks;
}

}  // namespace brimwright::service
