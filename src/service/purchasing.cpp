#include "service/purchasing.h"

#include "chemistry/fat_search.h"
#include "planning/cost.h"
#include "reports/plan_words.h"
#include "runs/substitutes.h"
#include "trade/fraction.h"
#include "units/fields.h"
#include "units/printing.h"
#include "units/user_error.h"
#include "units/written_number.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <string>
#include <utility>

namespace brimwright::service {
namespace {

using reports::Buying;
using trade::Amount;

runs::Needed needed_by(const Materials& materials, const std::vector<const planning::Run*>& runs) {
  std::vector<std::string> names;
  for (const auto& one : materials) names.push_back(one.name);
  return {std::move(names), runs::purities_planned(runs)};
}

Buying::Material material(const std::string& name, const std::string& shown, Amount used) {
  const Amount none = used.less(used);
  return {.name = name,
          .shown = shown,
          .used = used,
          .waste = {},
          .needed = used,
          .have = none,
          .to_buy = used,
          .bought = none};
}

Amount whole_pieces(const trade::Fraction& count) {
  const auto floor = static_cast<std::int64_t>(numerator(count) / denominator(count));
  return Amount::pieces(floor + (trade::Fraction(floor) < count ? 1 : 0));
}

/// An amount that is listed for a material counts it where it is counted, and weighs it else.
void refuse_other_kind(const Amount& amount, const Buying::Material& of, const std::string& listed,
                       const Place& where) {
  if (amount.is_alike(of.used)) return;
  if (amount.is_pieces())
    throw UserError(where,
                    "counts pieces of " + brimwright::quoted(listed) + ", which is used by weight",
                    "give its weight, such as \"500 g\"");
  throw UserError(where,
                  "is a weight of " + brimwright::quoted(listed) + ", which is used by the piece",
                  "give a number of pieces, such as \"50 pieces\"");
}

Amount with_waste(const Buying::Material& one) {
  if (one.waste == Share{}) return one.used;
  const trade::Fraction more = 1 + trade::exact(one.waste);
  if (one.used.is_pieces()) return whole_pieces(more * trade::Fraction(one.used.whole()));
  return Amount::at_least(one.used.mass() * (1 + one.waste.of_one()));
}

/// The studio's packs of what is needed, by the names of `materials`, and by the pack's own name
/// where it serves as one of them.
class ListedPacks {
 public:
  ListedPacks(const Materials& materials, const runs::Supplies& supplies,
              const std::vector<const planning::Run*>& runs)
      : materials_(materials) {
    const runs::Needed needed = needed_by(materials, runs);
    for (const auto& [pack, where] : supplies.packs) {
      const std::string own = runs::own_material_of(pack.material, needed, supplies, where);
      const auto serves = supplies.serves_as.find(pack.material);
      if (serves == supplies.serves_as.end()) {
        add(pack, own, "", where);
        continue;
      }
      const auto& [material, said] = serves->second;
      const std::string other = runs::own_material_of(material, needed, supplies, said);
      if (other != own) add(pack, own, "", where);
      add(pack, other, pack.material, where);
    }
  }
  std::vector<trade::Pack> take() { return std::move(packs_); }

 private:
  void add(trade::Pack pack, const std::string& name, const std::string& make, const Place& where) {
    const auto known = std::find_if(materials_.begin(), materials_.end(),
                                    [&](const auto& one) { return one.name == name; });
    if (known == materials_.end()) return;
    refuse_other_kind(pack.holds, *known, pack.material, where);
    pack.material = name;
    pack.make = make;
    packs_.push_back(std::move(pack));
  }

  const Materials& materials_;
  std::vector<trade::Pack> packs_;
};

/// Of its own, not of what serves as it.
bool has_own_pack(const std::vector<trade::Pack>& packs, const std::string& material) {
  return std::any_of(packs.begin(), packs.end(), [&](const trade::Pack& pack) {
    return pack.material == material && pack.make.empty();
  });
}

Materials materials_of(const std::vector<planning::CostLine>& used, const planning::Run& run) {
  Materials materials;
  for (const auto& line : used) {
    const Amount amount =
        line.pieces > 0 ? Amount::pieces(line.pieces) : Amount::at_least(line.used);
    materials.push_back(material(line.name, reports::material_name(line.name, run), amount));
    if (run.money && run.money->prices.contains(line.name)) continue;  // it is bought
    materials.back().made_of = line.made_of;
    for (auto& part : materials.back().made_of)
      part.name = reports::material_name(part.price_name, run);
  }
  return materials;
}

}  // namespace

bool has_pack(const std::vector<trade::Pack>& packs, const std::string& material) {
  return std::any_of(packs.begin(), packs.end(),
                     [&](const trade::Pack& pack) { return pack.material == material; });
}

std::vector<trade::Pack> packs_for(const Materials& materials, const runs::Supplies& supplies,
                                   const std::vector<const planning::Run*>& runs) {
  auto packs = ListedPacks(materials, supplies, runs).take();
  const auto of_studio = packs;
  for (const auto* run : runs) {
    if (!run->money) continue;
    for (const auto& one : materials) {
      const auto price = run->money->prices.find(one.name);
      if (price == run->money->prices.end()) continue;
      const Amount holds = price->second.pieces > 0 ? Amount::pieces(price->second.pieces)
                                                    : Amount::at_most(price->second.pack);
      if (!holds.is_alike(one.used)) continue;
      if (!has_own_pack(of_studio, one.name))
        packs.push_back({.material = one.name,
                         .holds = holds,
                         .paid = price->second.paid,
                         .seller = "",
                         .as_of = {}});
    }
  }
  return packs;
}

Materials materials_in(const planning::Run& run, const planning::Plan& plan) {
  return materials_of(planning::materials_used(plan), run);
}

Materials base_materials_in(const planning::Run& run, const planning::Plan& plan) {
  return materials_of(planning::base_used(plan), run);
}

Materials materials_beside_base(const planning::Run& run, const planning::Plan& plan) {
  return materials_of(planning::used_beside_base(plan), run);
}

void add_packaging(Materials& all, const planning::Run& run, std::int64_t pieces,
                   const runs::PackagingList& packaging) {
  const Place where =
      run.packaging ? run.place("/packaging") : Place{run.from_studio.file, "/packaging"};
  for (const auto& one : packaging) {
    const trade::Fraction sum = trade::exact(one.each) * trade::Fraction(pieces);
    const Amount used =
        one.is_counted ? whole_pieces(sum) : Amount::at_least(sum.convert_to<double>() * gram);
    add_materials(all, {material(one.material, one.material, used)}, where);
  }
}

void add_materials(Materials& all, const Materials& more, const Place& where) {
  for (const auto& one : more) {
    const auto known = std::find_if(all.begin(), all.end(),
                                    [&](const auto& other) { return other.name == one.name; });
    if (known == all.end()) {
      all.push_back(one);
      continue;
    }
    if (!known->used.is_alike(one.used))
      throw UserError(where,
                      brimwright::quoted(one.name) + " is used by weight, and by the piece too",
                      "give one of the two another name");
    known->used = known->used + one.used;
  }
}

namespace {

bool is_listed(const std::string& material, const runs::Supplies& supplies) {
  return std::any_of(supplies.packs.begin(), supplies.packs.end(),
                     [&](const auto& one) { return one.pack.material == material; });
}

/// What the shelf lacks of what she makes ahead is made, of materials that are used for it; what
/// there is a pack of is bought.
void make_ahead(Materials& materials, const runs::Supplies& supplies) {
  Materials parts;
  for (auto& one : materials) {
    if (one.made_of.empty() || is_listed(one.name, supplies)) continue;
    const auto waste = supplies.waste.find(one.name);
    if (waste != supplies.waste.end()) one.waste = waste->second;
    const auto shelf = supplies.have.find(one.name);
    const Amount needed = with_waste(one);
    const bool is_there = shelf != supplies.have.end() && shelf->second.amount.is_alike(needed);
    one.to_make = is_there ? needed.less(shelf->second.amount) : needed;
    if (one.to_make->whole() == 0) continue;
    for (const auto& part : one.made_of)
      add_materials(parts, {material(part.price_name, part.name,
                                     Amount::at_least(part.in_a_gram * one.to_make->mass()))});
  }
  add_materials(materials, parts);
}

}  // namespace

void take_off_stock(Materials& materials, const runs::Supplies& supplies,
                    const std::vector<const planning::Run*>& runs) {
  make_ahead(materials, supplies);
  const runs::Needed needed = needed_by(materials, runs);
  const auto find = [&](const std::string& listed, const Place& where) {
    const std::string name = runs::material_of(listed, needed, supplies, where);
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
      refuse_other_kind(shelf.amount, *one, listed, shelf.where);
      one->have = one->have + shelf.amount;
    }
  for (auto& one : materials) {
    one.needed = with_waste(one);
    one.to_buy = one.needed.less(one.to_make ? one.needed : one.have);
  }
}

namespace {

/// What stands on the shelf under a name that is a slip away from what is needed would not count.
void note_misspelt_shelf(Buying& buying, const runs::Supplies& supplies,
                         const runs::Needed& needed) {
  auto called = needed.names;
  for (const auto& one : buying.materials) called.push_back(one.shown);
  for (const auto& [listed, shelf] : supplies.have) {
    const std::string name = runs::material_of(listed, needed, supplies, shelf.where);
    const bool is_known = needed.has(name) || is_listed(listed, supplies) ||
                          supplies.made_ahead.contains(listed) ||
                          !chemistry::fats_named(listed).empty() ||
                          runs::other_purity_words(listed, supplies, needed);
    const auto near = is_known ? std::nullopt : nearest_name(listed, called);
    if (near)
      buying.notes.push_back(
          {Severity::caution, "What you have of " + brimwright::quoted(listed) +
                                  " does not count: nothing of that name is needed. If it is " +
                                  brimwright::quoted(*near) + ", call it so under \"have\"."});
  }
}

/// Of alkali on the shelf, and of packs where none is left that counts.
void note_other_purities(Buying& buying, const runs::Supplies& supplies,
                         const runs::Needed& needed) {
  std::set<std::string> looked;
  const auto look = [&](const std::string& listed, bool is_on_shelf) {
    if (!looked.insert(listed).second) return;
    const auto other = runs::other_purity_words(listed, supplies, needed);
    if (other && (is_on_shelf || !has_pack(buying.packs, other->dry)))
      buying.notes.push_back({Severity::caution, other->text});
  };
  for (const auto& [listed, shelf] : supplies.have)
    if (shelf.amount.whole() > 0) look(listed, true);
  for (const auto& one : supplies.packs) look(one.pack.material, false);
}

/// One pack is of one purity, whatever its name.
void note_two_purities(Buying& buying, const runs::Needed& needed) {
  for (const auto& one : needed.purities)
    for (const auto& other : needed.purities) {
      if (one.dry != other.dry || !(one.high < other.low) || !needed.has(one.dry)) continue;
      buying.notes.push_back(
          {Severity::caution,
           brimwright::quoted(one.formula) + " is planned with " + one.dry + " that is " +
               trimmed(one.purity.in_percent(), 2) + " % pure, " +
               brimwright::quoted(other.formula) + " with " +
               trimmed(other.purity.in_percent(), 2) +
               " %, and it is added up here as though it "
               "were one: plan both with the purity of what you buy, or buy for each by itself."});
      return;
    }
}

}  // namespace

void buy(Buying& buying, const runs::Supplies& supplies,
         const std::vector<const planning::Run*>& runs) {
  const runs::Needed needed = needed_by(buying.materials, runs);
  note_misspelt_shelf(buying, supplies, needed);
  runs::refuse_other_goods(supplies.serves_as, runs);
  buying.packs = packs_for(buying.materials, supplies, runs);
  note_other_purities(buying, supplies, needed);
  note_two_purities(buying, needed);
  buying.sellers = supplies.sellers;
  std::vector<trade::Need> needs;
  for (auto& one : buying.materials) {
    if (one.to_buy.whole() == 0) continue;
    if (!has_pack(buying.packs, one.name)) {
      one.is_from_tap = planning::may_be_from_tap(one.name);
      one.is_unpriced = !one.is_from_tap;
      if (one.is_from_tap) continue;
    }
    needs.push_back({one.name, one.to_buy});
  }
  buying.purchase = trade::cheapest(needs, buying.packs, buying.sellers);
  for (const auto& covered : buying.purchase.covered)
    for (auto& one : buying.materials)
      if (one.name == covered.material) one.bought = covered.bought;
}

void agree_on_currency(const planning::Run& run, runs::Supplies& supplies) {
  if (!run.money) return;
  if (supplies.currency.code.empty()) supplies.currency = run.money->currency;
  if (!(run.money->currency == supplies.currency))
    throw UserError(
        run.place("/money/currency"),
        "is " + run.money->currency.code + ", and others pay in " + supplies.currency.code,
        "give all prices in one currency");
}

}  // namespace brimwright::service
