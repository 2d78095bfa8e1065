#include "service/lot_taking.h"

#include "reports/weigh_out.h"
#include "runs/studio_file.h"
#include "units/written_number.h"

#include <algorithm>
#include <map>
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
  find_what_serves(rows, records, runs::read_supplies(runs::studio_for(run.file, library)));
  return records::use_lots(records, batch.id, batch.begun_on, std::move(rows),
                           read_wishes(wishes, terms));
}

}  // namespace brimwright::service
