#include "service/pack_steps.h"

#include "trade/buying.h"

#include <algorithm>
#include <optional>
#include <string>
#include <utility>

namespace brimwright::service {
namespace {

using trade::Amount;

using ByNumber = std::map<std::int64_t, Materials>;

void add_name(std::vector<std::string>& names, const std::string& name) {
  if (std::find(names.begin(), names.end(), name) == names.end()) names.push_back(name);
}

/// Of all that any of the numbers takes, and of what that is made of.
std::vector<std::string> names_of(const ByNumber& used) {
  std::vector<std::string> names;
  for (const auto& number : used)
    for (const auto& one : number.second) {
      add_name(names, one.name);
      for (const auto& part : one.made_of) add_name(names, part.price_name);
    }
  return names;
}

/// Each once.
Materials all_of(const ByNumber& needed) {
  Materials all;
  for (const auto& number : needed)
    for (const auto& one : number.second)
      if (std::none_of(all.begin(), all.end(),
                       [&](const auto& other) { return other.name == one.name; }))
        all.push_back(one);
  return all;
}

/// The studio's shelf and waste by those names, so that none is looked up for each number again.
runs::Supplies by_name_of(const runs::Needed& needed, const runs::Supplies& supplies) {
  runs::Supplies named = supplies;
  named.have.clear();
  named.waste.clear();
  named.waste_at.clear();
  for (const auto& [listed, shelf] : supplies.have) {
    const std::string name = runs::material_of(listed, needed, supplies, shelf.where);
    if (!needed.has(name)) continue;
    const auto [there, is_new] = named.have.emplace(name, shelf);
    if (!is_new) there->second.amount = there->second.amount + shelf.amount;
  }
  for (const auto& [listed, share] : supplies.waste) {
    const Place& where = supplies.waste_at.at(listed);
    const std::string name = runs::material_of(listed, needed, supplies, where);
    if (!needed.has(name)) continue;
    named.waste[name] = share;
    named.waste_at[name] = where;
  }
  return named;
}

/// What the packs of one material come to at least. From a need that was looked at up to what its
/// packs hold that is the same: less than there it cannot be, and more is not needed.
class OneMaterial {
 public:
  explicit OneMaterial(std::vector<trade::Pack> packs) : packs_(std::move(packs)) {}

  /// Nothing where it was too much work to find.
  std::optional<Money> paid_for(const Amount& need) {
    if (need.whole() == 0) return Money{0, packs_.front().paid.currency};
    for (const Looked& one : looked_)
      if (one.from <= need.whole() && need.whole() <= one.to) return one.paid;
    const auto least = trade::cheapest_alone({packs_.front().material, need}, packs_);
    looked_.push_back({need.whole(), least ? least->holds.whole() : need.whole(),
                       least ? std::optional(least->paid) : std::nullopt});
    return looked_.back().paid;
  }

 private:
  struct Looked {
    std::int64_t from, to;
    std::optional<Money> paid;
  };
  std::vector<trade::Pack> packs_;
  std::vector<Looked> looked_;
};

/// That a step of `material` at `sell` may be missing.
void cannot_tell(std::vector<reports::UntoldPacks>& untold, std::int64_t sell,
                 const reports::Buying::Material& material) {
  const auto known = std::find_if(untold.begin(), untold.end(), [&](const auto& other) {
    return other.material == material.name;
  });
  if (known == untold.end())
    untold.push_back({material.name, material.shown, sell, sell});
  else
    known->to = sell;
}

/// From one piece fewer to `sell`.
void look(reports::PackSteps& steps, std::int64_t sell, const reports::Buying::Material& material,
          const std::optional<Money>& before, const std::optional<Money>& now) {
  if (!before || !now)
    cannot_tell(steps.untold, sell, material);
  else if (before->coins < now->coins)
    steps.told.push_back(
        {sell, material.name, material.shown, {now->coins - before->coins, now->currency}});
}

}  // namespace

reports::PackSteps pack_steps(const std::map<std::int64_t, Materials>& used,
                              const runs::Supplies& supplies,
                              const std::vector<const planning::Run*>& runs) {
  const runs::Supplies named = by_name_of({names_of(used), runs::purities_planned(runs)}, supplies);
  ByNumber needed = used;
  for (auto& number : needed) take_off_stock(number.second, named, runs);
  std::map<std::string, std::vector<trade::Pack>> packs;
  for (auto& pack : packs_for(all_of(needed), supplies, runs)) packs[pack.material].push_back(pack);
  std::map<std::string, OneMaterial> materials;
  for (auto& [name, own] : packs) materials.emplace(name, OneMaterial(std::move(own)));

  reports::PackSteps steps;
  std::map<std::string, std::optional<Money>> before;
  std::int64_t last = 0;
  for (const auto& [sell, now] : needed) {
    if (sell != last + 1) before.clear();
    last = sell;
    for (const auto& one : now) {
      const auto known = materials.find(one.name);
      if (known == materials.end()) continue;
      const auto paid = known->second.paid_for(one.to_buy);
      const auto fewer = before.find(one.name);
      if (fewer != before.end()) look(steps, sell, one, fewer->second, paid);
      before[one.name] = paid;
    }
  }
  return steps;
}

}  // namespace brimwright::service
