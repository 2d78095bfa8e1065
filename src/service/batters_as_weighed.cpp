#include "service/batters_as_weighed.h"

#include "planning/share_superfat.h"
#include "planning/weighing.h"
#include "records/blanks.h"
#include "reports/weigh_out.h"
#include "units/printing.h"

#include <algorithm>
#include <utility>

namespace brimwright::service {
namespace {

using planning::LyePot;
using planning::Weighing;
using reports::Vessel;
using Role = reports::WeighOutRow::Role;

/// A batter of the batch, and what is put on the scales for it.
struct Batter {
  std::string key;  // that its vessels' keys begin with
  const chemistry::Formula& formula;
  const Weighing& planned;
  std::int64_t times = 1;
  std::size_t share = 0;  // its first in the pot's
};

std::vector<Batter> batters_of(const planning::Run& run, const planning::Batch& batch) {
  std::vector<Batter> all = {{reports::base_key(), run.pour.formula, batch.pour.batter.weighing}};
  std::size_t share = 1;
  for (std::size_t i = 0; i < batch.whippings.size(); ++i) {
    const auto& whipping = batch.whippings[i];
    all.push_back({reports::whipping_key(i), run.pipe->formula, whipping.pipe.batter.weighing,
                   whipping.count, share});
    share += static_cast<std::size_t>(whipping.count);
  }
  return all;
}

std::string grams(Mass mass) { return trimmed(mass / gram, 3) + " g"; }

Mass alkali_in(const Weighing& weighing) {
  Mass all;
  for (const auto& ingredient : weighing.ingredients)
    if (ingredient.role == planning::Role::alkali) all += ingredient.weighed;
  return all;
}

chemistry::EffectiveSuperfat superfat_of(const chemistry::Formula& formula,
                                         const Weighing& weighing) {
  const auto all = planning::reacting(formula, weighing.ingredients);
  return chemistry::effective_superfat(all.fats, all.alkalis, all.acids, all.blends);
}

/// Of what was made several times and is noted together.
enum class Which { an_equal_one, the_worst };

Mass of_one(Mass together, Mass planned, std::int64_t times, Which which, Role role) {
  const Mass more = together - static_cast<double>(times) * planned;
  const bool is_lye = role == Role::alkali || role == Role::lye_solution;
  if (which == Which::the_worst && is_lye) return planned + std::max(more, Mass{});
  if (which == Which::the_worst && role == Role::fat)
    return std::max(planned + std::min(more, Mass{}), Mass{});
  return together * (1.0 / static_cast<double>(times));
}

class Batch {
 public:
  Batch(const planning::Run& run, const planning::Plan& plan, const planning::Batch& batch,
        const WeighedRows& rows)
      : rows_(rows),
        batters_(batters_of(run, batch)),
        vessels_(reports::weigh_out(run, plan, batch)),
        planned_pot_(batch.lye_pot) {
    if (planned_pot_) pot_ = pot_as_weighed(*planned_pot_);
  }

  BatchAsWeighed as_weighed() const {
    BatchAsWeighed all;
    for (const Batter& batter : batters_) {
      all.batters.push_back(told_of(batter, Which::an_equal_one));
      if (batter.times > 1) all.batters.back().worst = told_of(batter, Which::the_worst).now;
    }
    if (pot_) tell_of_pot(all.of_pot);
    return all;
  }

 private:
  BatterAsWeighed told_of(const Batter& batter, Which which) const {
    return pot_ ? out_of_pot(batter, which) : with_its_own_lye(batter, which);
  }

  std::optional<Mass> noted(const std::string& row) const {
    const auto at = rows_.find(row);
    return at == rows_.end() ? std::nullopt : std::optional(at->second);
  }

  const Vessel* pot_vessel() const { return reports::find_vessel(vessels_, "lye-pot"); }

  /// What went into it, and what it was topped up to.
  LyePot pot_as_weighed(LyePot pot) const {
    std::size_t alkali = 0;
    for (const auto& row : pot_vessel()->rows) {
      if (row.role != Role::alkali) continue;
      if (const auto mass = noted(row.key)) pot.alkalis[alkali].weighed = *mass;
      ++alkali;
    }
    if (const auto lye = noted(std::string(records::topped_up_row)); lye && *lye > Mass{})
      pot.lye = *lye;
    return pot;
  }

  /// Its fats and what is stirred in, and alkali that it has alone.
  Weighing weighed(const Batter& batter, Which which) const {
    Weighing now = batter.planned;
    for (const Vessel& vessel : vessels_) {
      if (!vessel.key.starts_with(batter.key + ".") ||
          vessel.key.find('.', batter.key.size() + 1) != std::string::npos)
        continue;
      for (const auto& row : vessel.rows)
        if (const auto mass = noted(row.key); mass && row.ingredient)
          now.ingredients[*row.ingredient].weighed =
              of_one(*mass, row.mass, vessel.times, which, row.role);
    }
    return now;
  }

  BatterAsWeighed with_its_own_lye(const Batter& batter, Which which) const {
    Weighing now = weighed(batter, which);
    BatterAsWeighed told{.name = batter.formula.name,
                         .times = batter.times,
                         .planned = batter.planned.superfat.nominal,
                         .now = {}};
    take_lye(now, of_planned(batter.key + std::string(records::day_pot_row), batter, which));
    const double share = of_planned(batter.key + std::string(records::share_row), batter, which);
    told.now = superfat_of(batter.formula, now);
    told.has_more_lye = alkali_in(now) > alkali_in(batter.planned);
    if (share < 1) {
      take_lye(now, share);
      told.if_lye_is_missing = superfat_of(batter.formula, now).nominal;
    }
    return told;
  }

  /// What is noted of a lye solution, as a multiple of what was planned of it.
  double of_planned(const std::string& row, const Batter& batter, Which which) const {
    const auto mass = noted(row);
    if (!mass) return 1;
    const Mass planned = planned_lye(row, batter);
    return of_one(*mass, planned, batter.times, which, Role::lye_solution) / planned;
  }
  Mass planned_lye(const std::string& row, const Batter& batter) const {
    Mass all, of_alkali_and_water;
    for (const auto& ingredient : batter.planned.ingredients) {
      if (ingredient.goes_into != "lye") continue;
      all += ingredient.weighed;
      if (ingredient.role != planning::Role::additive) of_alkali_and_water += ingredient.weighed;
    }
    return row.ends_with(records::day_pot_row) ? of_alkali_and_water : all;
  }
  static void take_lye(Weighing& weighing, double of_planned) {
    for (auto& ingredient : weighing.ingredients)
      if (ingredient.role == planning::Role::alkali)
        ingredient.weighed = of_planned * ingredient.weighed;
  }

  Mass share_of(const Batter& batter, Which which) const {
    const Mass planned = planned_pot_->shares.at(batter.share).lye;
    const auto mass = noted(batter.key + std::string(records::share_row));
    return mass ? of_one(*mass, planned, batter.times, which, Role::lye_solution) : planned;
  }
  Mass alkali_in_share(Mass share) const {
    Mass all;
    for (const auto& alkali : pot_->alkalis) all += alkali.weighed;
    return (share / pot_->lye) * all;
  }

  std::vector<planning::WeighedPart> alkalis_of_pot() const {
    std::vector<planning::WeighedPart> all;
    for (const auto& alkali : pot_->alkalis)
      all.push_back({alkali.weighed, alkali.step, alkali.weighings});
    return all;
  }

  BatterAsWeighed out_of_pot(const Batter& batter, Which which) const {
    constexpr double nothing = 1e-9;
    const Weighing now = weighed(batter, which);
    const Mass share = share_of(batter, which);
    const auto& planned = planned_pot_->shares.at(batter.share);
    return {.name = batter.formula.name,
            .times = batter.times,
            .planned = planned.superfat.nominal,
            .now = planning::share_superfat(batter.formula, now, alkalis_of_pot(),
                                            {share, pot_->share_step}, {pot_->lye, pot_->lye_step}),
            .has_more_lye = alkali_in_share(share) > (1 + nothing) * planned.alkali_taken};
  }

  void tell_of_pot(std::vector<Remark>& remarks) const {
    Mass taken;
    std::int64_t noted_shares = 0;
    for (const Batter& batter : batters_) {
      taken += static_cast<double>(batter.times) * share_of(batter, Which::an_equal_one);
      noted_shares += noted(batter.key + std::string(records::share_row)) ? 1 : 0;
    }
    const auto caution = [&](const std::string& text) {
      remarks.push_back({Severity::caution, text});
    };
    const Mass hair = pot_->share_step / 2;
    if (taken > pot_->lye + hair)
      caution("Together the batters would have " + grams(taken) +
              " of lye solution, and the pot held " + grams(pot_->lye) +
              ": one of these weights is wrong or not noted yet.");
    else if (noted_shares > 0 && noted_shares < std::ssize(batters_) &&
             pot_->lye - taken > planned_pot_->left + pot_->share_step)
      caution(grams(pot_->lye - taken) +
              " of the lye solution would be left in the pot: if another batter had of it, note "
              "that too.");
    tell_of_water(caution);
  }

  /// More water than it was to be topped up to makes it weaker, by what nobody knows.
  void tell_of_water(const auto& caution) const {
    Mass poured, planned, water;
    for (const auto& row : pot_vessel()->rows) {
      const Mass mass = noted(row.key).value_or(row.mass);
      poured += mass;
      if (row.role == Role::alkali) continue;
      planned += row.mass;
      water += mass;
    }
    if (noted(std::string(records::topped_up_row)) || !(water > planned) ||
        !(poured > pot_->lye + pot_->lye_step))
      return;
    caution("Into the pot of lye solution went " + grams(poured) +
            ", and it was to be topped up to " + grams(pot_->lye) +
            ": it is weaker than it is taken for here. Note what it weighed before it "
            "was shared.");
  }

  const WeighedRows& rows_;
  std::vector<Batter> batters_;
  std::vector<Vessel> vessels_;
  const std::optional<LyePot>& planned_pot_;
  std::optional<LyePot> pot_;
};

}  // namespace

BatchAsWeighed as_weighed(const planning::Run& run, const planning::Plan& plan,
                          const planning::Batch& batch, const WeighedRows& rows) {
  return Batch(run, plan, batch, rows).as_weighed();
}

}  // namespace brimwright::service
