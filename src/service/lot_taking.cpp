#include "service/lot_taking.h"

#include "reports/weigh_out.h"
#include "runs/studio_file.h"
#include "service/lot_purity.h"
#include "service/run_planning.h"
#include "units/written_number.h"

#include <algorithm>
#include <iterator>
#include <map>
#include <set>
#include <utility>

namespace brimwright::service {
namespace {

using records::Weighed;
using reports::Vessel;
using trade::Amount;

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

/// What is melted is melted for the first.
std::vector<Weighed> rows_in(const std::vector<Vessel>& vessels, std::int64_t number) {
  std::vector<Weighed> rows;
  for (const Vessel& vessel : vessels) {
    if (vessel.kind == Vessel::Kind::melt && number != 1) continue;
    for (const auto& row : vessel.rows)
      if (!row.material.empty())
        rows.push_back({.row = row.key,
                        .material = row.material,
                        .shown = row.name,
                        .amount = Amount::at_least(static_cast<double>(vessel.times) * row.mass)});
  }
  return rows;
}

bool is_for(const std::string& name, const std::vector<Weighed>& rows) {
  return std::any_of(rows.begin(), rows.end(), [&](const Weighed& row) {
    return name == row.row || name == row.material || name == row.shown;
  });
}

bool is_lot_for(const std::string& code, const std::vector<Weighed>& rows,
                const records::Records& records) {
  const auto lots = records::lots_called(records, code);
  return std::any_of(lots.begin(), lots.end(), [&](const auto& one) {
    return std::any_of(rows.begin(), rows.end(), [&](const Weighed& row) {
      const auto& others = row.served_by;
      return row.material == one.lot.material ||
             std::find(others.begin(), others.end(), one.lot.make) != others.end() ||
             std::find(others.begin(), others.end(), one.lot.material) != others.end();
    });
  });
}

}  // namespace

std::vector<Weighed> weighed_for(const planning::Run& run, const planning::Plan& plan,
                                 std::int64_t number) {
  auto rows = rows_in(reports::weigh_out(run, plan, batch_numbered(plan, number)), number);
  if (number == 1) add_counted(rows, plan);
  return rows;
}

std::vector<Weighed> weighed_beside_base(const planning::Run& run, const planning::Plan& plan,
                                         std::int64_t number) {
  auto rows =
      rows_in(reports::weigh_out_beside_base(run, plan, batch_numbered(plan, number)), number);
  if (number == 1) add_counted(rows, plan);
  return rows;
}

std::vector<Weighed> weighed_for_base(const reports::PouredTogether& base, std::size_t batch) {
  return rows_in(reports::weigh_out(base, batch), 1);
}

void find_what_serves(std::vector<Weighed>& rows, const records::Records& records,
                      const runs::Supplies& supplies, const PuritiesOf& purities) {
  std::vector<std::string> needed;
  for (const Weighed& row : rows) needed.push_back(row.material);
  std::multimap<std::string, std::string> serving;
  for (const std::string& name : records::materials_of_lots(records)) {
    const auto serves = supplies.serves_as.find(name);
    const Place where =
        serves == supplies.serves_as.end() ? Place{records.path(), ""} : serves->second.where;
    const std::string material = runs::material_of(name, needed, supplies, where);
    if (material == name) continue;
    serving.emplace(material, name);
    for (Weighed& row : rows)
      if (row.material == material) leave_out_other_purity(row, name, purities(row));
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

LotWishes wishes_for(const std::vector<Weighed>& rows, const LotWishes& typed,
                     const records::Records& records, const UserTerms& terms) {
  LotWishes wishes;
  for (const std::string& one : typed.lots)
    if (is_for(read_wishes({{one}, {}}, terms).chosen.begin()->first, rows))
      wishes.lots.push_back(one);
  for (const std::string& code : typed.beyond_stock)
    if (is_lot_for(code, rows, records)) wishes.beyond_stock.push_back(code);
  return wishes;
}

void find_what_serves(std::vector<Weighed>& rows, const records::Records& records,
                      const planning::Run& run, const moulds::Library& library) {
  find_what_serves(rows, records, *runs::supplies_of(runs::studio_for(run.file, library), library),
                   [&](const Weighed& row) { return purities_of_row(run, row); });
}

LotsTaken take_of_lots(records::Records& records, const records::Batch& batch,
                       const planning::Run& run, std::vector<Weighed> rows, const LotWishes& wishes,
                       const UserTerms& terms) {
  LotsTaken taken{.remarks = records::use_lots(records, batch.id, batch.begun_on, std::move(rows),
                                               read_wishes(wishes, terms))};
  note_other_analyses(taken.remarks, records, batch, run);
  OtherPurities other = other_purities(records, batch, run);
  taken.has_more_lye = other.has_more_lye;
  taken.remarks.insert(taken.remarks.end(), std::make_move_iterator(other.remarks.begin()),
                       std::make_move_iterator(other.remarks.end()));
  return taken;
}

}  // namespace brimwright::service
