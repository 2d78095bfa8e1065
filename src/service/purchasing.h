#pragma once

#include "planning/plan.h"
#include "planning/run.h"
#include "reports/buying_report.h"
#include "runs/packaging_reading.h"
#include "runs/supplies.h"

#include <cstdint>
#include <vector>

namespace brimwright::service {

using Materials = std::vector<reports::Buying::Material>;

/// All that one plan takes, by weight.
Materials materials_in(const planning::Run& run, const planning::Plan& plan);

/// The same in two: of its base's batter, and of all else.
Materials base_materials_in(const planning::Run& run, const planning::Plan& plan);
Materials materials_beside_base(const planning::Run& run, const planning::Plan& plan);

/// Adds what goes round so many pieces of `run` that are sold.
void add_packaging(Materials& all, const planning::Run& run, std::int64_t pieces,
                   const runs::PackagingList& packaging);

/// Adds `more`, of what stands at `where`, to what is there of the same material. UserError where
/// one is counted and the other weighed.
void add_materials(Materials& all, const Materials& more, const Place& where = {});

/// Puts waste and shelf into `materials` of `runs`, and what is then still to buy.
void take_off_stock(Materials& materials, const runs::Supplies& supplies,
                    const std::vector<const planning::Run*>& runs);

/// The studio's packs of `materials`, by their names; where it has none of one, those at the prices
/// of `runs`.
std::vector<trade::Pack> packs_for(const Materials& materials, const runs::Supplies& supplies,
                                   const std::vector<const planning::Run*>& runs);

/// Whether `packs` has one of `material`, of its own or of goods that serve as it.
bool has_pack(const std::vector<trade::Pack>& packs, const std::string& material);

/// Buys what `buying.materials` lack at least cost: of the studio's packs, and where it has none of
/// a material at the prices of `runs`.
void buy(reports::Buying& buying, const runs::Supplies& supplies,
         const std::vector<const planning::Run*>& runs);

/// A run's own currency is the studio's, where prices of both are added up: the first that is named
/// becomes that of `supplies`, another is refused.
void agree_on_currency(const planning::Run& run, runs::Supplies& supplies);

}  // namespace brimwright::service
