#include "service/buying.h"

#include "planning/cost.h"
#include "reports/buying_report.h"
#include "reports/plan_words.h"
#include "runs/run_file.h"
#include "runs/studio_file.h"
#include "runs/supplies.h"
#include "service/run_planning.h"
#include "units/shown_text.h"
#include "units/wording.h"
#include "units/written_number.h"

#include <algorithm>
#include <filesystem>
#include <map>
#include <memory>
#include <utility>

namespace brimwright::service {
namespace {

namespace fs = std::filesystem;
using reports::Buying;
using trade::Amount;

constexpr std::int64_t most_numbers = 2'000;  // of pieces that are planned to find what stock makes

struct Planned {
  planning::Run run;
  planning::Plan plan;
  planning::Measured measured;
};

std::string one_name_of(const std::string& file) {
  std::error_code error;
  const fs::path path = fs::weakly_canonical(file, error);
  return error ? file : path.string();
}

void refuse_twice(const std::vector<std::string>& files) {
  std::map<std::string, std::string> known;
  for (const std::string& file : files) {
    const auto [place, is_new] = known.emplace(one_name_of(file), file);
    if (!is_new)
      throw UserError({file, ""},
                      "is named twice, as " + brimwright::quoted(place->second) + " too",
                      "name each run once; to make more of it, raise its \"sell\"");
  }
}

/// The studio's file for all runs.
std::string one_studio(const std::vector<std::string>& files, const moulds::Library& library) {
  std::string first;
  for (const std::string& file : files) {
    const runs::Studio studio = runs::studio_for(file, library);
    if (!studio.fields())
      throw UserError({file, ""}, "has no studio.json beside it, so nothing can be bought for it",
                      "put packs and prices into a studio.json there, or name the studio's file");
    const std::string& name = studio.fields()->file();
    if (first.empty()) first = name;
    if (one_name_of(first) != one_name_of(name))
      throw UserError({file, ""}, "is of another studio (" + name + ") than " + files.front(),
                      "buy for each studio by itself, or name one studio for all");
  }
  return first;
}

Planned planned(const std::string& file, const moulds::Library& library, const Caller& caller) {
  planning::Run run = runs::read_run(file, library, std::nullopt);
  planning::Measured measured = measured_run(run, caller);
  planning::Plan plan = gated_plan(run, measured);
  return {std::move(run), std::move(plan), std::move(measured)};
}

/// A run's own currency is the studio's, where prices of both would be added up.
void look_at_currency(const planning::Run& run, runs::Supplies& supplies) {
  if (!run.money) return;
  if (supplies.currency.code.empty()) supplies.currency = run.money->currency;
  if (!(run.money->currency == supplies.currency))
    throw UserError(
        run.place("/money/currency"),
        "is " + run.money->currency.code + ", and others pay in " + supplies.currency.code,
        "give all prices in one currency");
}

std::vector<std::string> names_of(const std::vector<Buying::Material>& materials) {
  std::vector<std::string> names;
  for (const auto& one : materials) names.push_back(one.name);
  return names;
}

/// What one plan uses, each with the studio's waste.
std::vector<Buying::Material> needed_for(const planning::Run& run, const planning::Plan& plan) {
  std::vector<Buying::Material> materials;
  for (const auto& line : planning::materials_used(plan)) {
    const Amount used = Amount::at_least(line.used);
    const Amount none = Amount::at_least(Mass{});
    materials.push_back({.name = line.name,
                         .shown = reports::material_name(line.name, run),
                         .used = used,
                         .waste = {},
                         .needed = used,
                         .have = none,
                         .to_buy = used,
                         .bought = none});
  }
  return materials;
}

void add(std::vector<Buying::Material>& all, const std::vector<Buying::Material>& more) {
  for (const auto& one : more) {
    const auto known = std::find_if(all.begin(), all.end(),
                                    [&](const auto& other) { return other.name == one.name; });
    if (known == all.end())
      all.push_back(one);
    else
      known->used = known->used + one.used;
  }
}

void refuse_pieces(const Amount& amount, const std::string& name, const Place& where) {
  if (!amount.is_pieces()) return;
  throw UserError(where,
                  "counts pieces of " + brimwright::quoted(name) + ", which is used by weight",
                  "give its weight, such as \"500 g\"");
}

/// Puts waste and shelf into `materials`.
void take_off_stock(std::vector<Buying::Material>& materials, const runs::Supplies& supplies) {
  const auto names = names_of(materials);
  const auto find = [&](const std::string& listed, const Place& where) {
    const std::string name = runs::material_of(listed, names, where);
    return std::find_if(materials.begin(), materials.end(),
                        [&](const auto& one) { return one.name == name; });
  };
  std::map<std::string, std::string> told;
  for (const auto& [listed, share] : supplies.waste)
    if (const auto one = find(listed, supplies.waste_at.at(listed)); one != materials.end()) {
      if (!told.emplace(one->name, listed).second)
        throw UserError(supplies.waste_at.at(listed),
                        "is the waste of what " + brimwright::quoted(told[one->name]) + " is too",
                        "say it once");
      one->waste = share;
    }
  for (const auto& [listed, shelf] : supplies.have)
    if (const auto one = find(listed, shelf.where); one != materials.end()) {
      refuse_pieces(shelf.amount, listed, shelf.where);
      one->have = one->have + shelf.amount;
    }
  for (auto& one : materials) {
    one.needed = Amount::at_least(one.used.mass() * (1 + one.waste.of_one()));
    one.to_buy = one.needed.less(one.have);
  }
}

/// The packs of what is needed, by the names of `materials`: the studio's, and where it has none
/// the prices of the runs.
std::vector<trade::Pack> packs_for(const std::vector<Buying::Material>& materials,
                                   const runs::Supplies& supplies,
                                   const std::vector<Planned>& all) {
  const auto names = names_of(materials);
  std::vector<trade::Pack> packs;
  for (const auto& [pack, where] : supplies.packs) {
    packs.push_back(pack);
    packs.back().material = runs::material_of(pack.material, names, where);
    if (std::find(names.begin(), names.end(), packs.back().material) == names.end())
      packs.pop_back();
    else
      refuse_pieces(pack.holds, pack.material, where);
  }
  const auto of_studio = packs;
  const auto is_known = [&](const std::string& name) {
    return std::any_of(of_studio.begin(), of_studio.end(),
                       [&](const trade::Pack& pack) { return pack.material == name; });
  };
  for (const auto& one : all) {
    if (!one.run.money) continue;
    for (const auto& [name, price] : one.run.money->prices)
      if (!is_known(name) && std::find(names.begin(), names.end(), name) != names.end())
        packs.push_back({.material = name,
                         .holds = Amount::at_most(price.pack),
                         .paid = price.paid,
                         .seller = "",
                         .as_of = {}});
  }
  return packs;
}

bool has_pack(const std::vector<trade::Pack>& packs, const std::string& material) {
  return std::any_of(packs.begin(), packs.end(),
                     [&](const trade::Pack& pack) { return pack.material == material; });
}

void buy(Buying& buying) {
  std::vector<trade::Need> needs;
  for (auto& one : buying.materials) {
    if (one.to_buy.whole() == 0) continue;
    if (!has_pack(buying.packs, one.name)) {
      (one.name == "water" ? one.is_from_tap : one.is_unpriced) = true;
      if (one.is_from_tap) continue;
    }
    needs.push_back({one.name, one.to_buy});
  }
  buying.purchase = trade::cheapest(needs, buying.packs, buying.sellers);
  for (const auto& covered : buying.purchase.covered)
    for (auto& one : buying.materials)
      if (one.name == covered.material) one.bought = covered.bought;
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

/// What is short for a plan of the run with the shelf as it is. Water from the tap never is.
std::vector<Buying::Stock::Limit> short_of(const planning::Run& run, const planning::Plan& plan,
                                           const runs::Supplies& supplies) {
  auto materials = needed_for(run, plan);
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
Buying::Stock stock_of(const Planned& planned, const runs::Supplies& supplies) {
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
      const auto plan = planning::plan_for(sell, smaller, planned.measured, trials);
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
    reply.files.push_back({name, reports::buying_csv(buying)});
  return reply;
}

}  // namespace

Reply bought(const BuyRequest& request, const Request& asked, const moulds::Library& given,
             const Caller& caller) {
  moulds::Library library = given;
  library.named = std::make_shared<std::vector<std::string>>();
  refuse_twice(request.files);
  if (request.with_stock && request.files.size() != 1)
    throw UserError(asked.terms.place("with-stock"), "is of one run", "name a single run with it");
  Buying buying;
  buying.studio = one_studio(request.files, library);
  runs::Supplies supplies = runs::read_supplies(runs::studio_for(request.files.front(), library));
  std::vector<Planned> all;
  for (const std::string& file : request.files) {
    library.named->push_back(file);
    all.push_back(planned(file, library, caller));
    look_at_currency(all.back().run, supplies);
    const auto& [run, plan, measured] = all.back();
    buying.runs.push_back({file, run.name, plan.pieces.sell, plan.pieces.make});
    add(buying.materials, needed_for(run, plan));
  }
  caller.tell_read(*library.named);
  take_off_stock(buying.materials, supplies);
  buying.packs = packs_for(buying.materials, supplies, all);
  buying.sellers = supplies.sellers;
  buy(buying);
  note(buying);
  if (request.with_stock) buying.stock = stock_of(all.front(), supplies);
  return reply_of(request, asked, buying);
}

}  // namespace brimwright::service
