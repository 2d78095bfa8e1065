#include "trade/choice.h"

#include "trade/integer_program.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <tuple>
#include <utility>

namespace brimwright::trade {
namespace {

using Materials = std::vector<std::vector<Cover>>;
using Taken = std::vector<std::size_t>;

constexpr int most_nodes = 1'000;             // of the solver
constexpr std::int64_t most_steps = 300'000;  // of the enumeration
constexpr double solver_noise = 1e-3;         // of a coin
constexpr double exact_enough = 1e8;          // coins; the solver's own tolerance is 1e-9 of them

struct Standing {
  std::int64_t coins = 0, packs = 0, weight = 0;
  auto operator<=>(const Standing&) const = default;
};

std::int64_t sum_of(const std::vector<std::int64_t>& parts) {
  return std::accumulate(parts.begin(), parts.end(), std::int64_t{0});
}

Standing standing(const Materials& materials, const Taken& taken,
                  const std::vector<Postage>& sellers) {
  Standing sum{.coins = sum_of(postage_of(materials, taken, sellers))};
  for (std::size_t i = 0; i < materials.size(); ++i) {
    const Cover& cover = materials[i][taken[i]];
    sum.coins += cover.coins;
    sum.packs += cover.packs;
    sum.weight += cover.weight;
  }
  return sum;
}

/// Each material by itself: what no choice's goods are below.
std::int64_t cheapest_goods(const Materials& materials) {
  std::int64_t sum = 0;
  for (const auto& covers : materials) sum += covers.front().coins;  // they are sorted
  return sum;
}

/// The choice as 0 or 1 for each cover, and for each seller: is anything bought of him, does he
/// send it free. Costs count from each material's cheapest cover, so that they are small.
class Model {
 public:
  Model(const Materials& materials, const std::vector<Postage>& sellers)
      : materials_(materials), sellers_(sellers) {
    first_of_.push_back(0);
    for (const auto& covers : materials) first_of_.push_back(first_of_.back() + covers.size());
    program_.costs.resize(first_of_.back() + 2 * sellers.size());
    for (std::size_t m = 0; m < materials.size(); ++m) add_material(m);
    for (std::size_t s = 0; s < sellers.size(); ++s) add_seller(s);
  }

  Solved least_coins() {
    for (std::size_t s = 0; s < sellers_.size(); ++s) {
      program_.costs[buys_of(s)] = static_cast<double>(sellers_[s].coins);
      program_.costs[sends_free(s)] = -static_cast<double>(sellers_[s].coins);
    }
    return least(&Cover::coins);
  }
  Solved least_packs() {
    forget_sellers();
    return least(&Cover::packs);
  }
  Solved least_left_over() {
    forget_sellers();
    return least(&Cover::weight);
  }

  /// From now on what is minimised stays at the whole number `sum`, counted from the cheapest.
  void keep_at(std::int64_t sum) {
    IntegerProgram::Row row{.most = static_cast<double>(sum) + 0.5};
    for (std::size_t i = 0; i < program_.costs.size(); ++i)
      if (program_.costs[i] != 0) row.terms.push_back({i, program_.costs[i]});
    if (!row.terms.empty()) program_.rows.push_back(std::move(row));
  }

  Taken taken(const Solved& solved) const {
    Taken taken;
    for (std::size_t m = 0; m < materials_.size(); ++m) {
      const auto begin = solved.is_taken.begin() + static_cast<std::ptrdiff_t>(first_of_[m]);
      const auto end = solved.is_taken.begin() + static_cast<std::ptrdiff_t>(first_of_[m + 1]);
      const auto place = std::find(begin, end, true);
      if (place == end) return {};
      taken.push_back(static_cast<std::size_t>(place - begin));
    }
    return taken;
  }

  /// The same figure of a choice as the program minimised last, from `base` on.
  static std::int64_t base(const Materials& materials, std::int64_t Cover::*figure) {
    std::int64_t sum = 0;
    for (const auto& covers : materials) sum += least_of(covers, figure);
    return sum;
  }

 private:
  std::size_t buys_of(std::size_t seller) const { return first_of_.back() + 2 * seller; }
  std::size_t sends_free(std::size_t seller) const { return buys_of(seller) + 1; }

  static std::int64_t least_of(const std::vector<Cover>& covers, std::int64_t Cover::*figure) {
    std::int64_t least = covers.front().*figure;
    for (const Cover& cover : covers) least = std::min(least, cover.*figure);
    return least;
  }

  void add_material(std::size_t m) {
    IntegerProgram::Row one{.least = 1, .most = 1};
    std::vector<std::vector<IntegerProgram::Term>> bought_of(sellers_.size());
    for (std::size_t i = 0; i < materials_[m].size(); ++i) {
      one.terms.push_back({first_of_[m] + i, 1});
      for (const std::size_t s : materials_[m][i].sellers)
        bought_of[s].push_back({first_of_[m] + i, 1});
    }
    program_.rows.push_back(std::move(one));
    for (std::size_t s = 0; s < sellers_.size(); ++s) {
      if (bought_of[s].empty()) continue;
      IntegerProgram::Row row{.most = 0, .terms = std::move(bought_of[s])};
      row.terms.push_back({buys_of(s), -1});
      program_.rows.push_back(std::move(row));
    }
  }

  void add_seller(std::size_t s) {
    IntegerProgram::Row none{.most = 0, .terms = {{sends_free(s), 1}}};
    if (!sellers_[s].free_from) {
      program_.rows.push_back(std::move(none));
      return;
    }
    program_.rows.push_back({.most = 0, .terms = {{sends_free(s), 1}, {buys_of(s), -1}}});
    IntegerProgram::Row enough{.least = 0};
    enough.terms.push_back({sends_free(s), -static_cast<double>(*sellers_[s].free_from)});
    for (std::size_t m = 0; m < materials_.size(); ++m)
      for (std::size_t i = 0; i < materials_[m].size(); ++i) {
        const Cover& cover = materials_[m][i];
        for (std::size_t place = 0; place < cover.sellers.size(); ++place)
          if (cover.sellers[place] == s && cover.spent[place] > 0)
            enough.terms.push_back({first_of_[m] + i, static_cast<double>(cover.spent[place])});
      }
    program_.rows.push_back(std::move(enough));
  }

  void forget_sellers() {
    std::fill(program_.costs.begin() + static_cast<std::ptrdiff_t>(first_of_.back()),
              program_.costs.end(), 0.0);
  }

  Solved least(std::int64_t Cover::*figure) {
    for (std::size_t m = 0; m < materials_.size(); ++m) {
      const std::int64_t base = least_of(materials_[m], figure);
      for (std::size_t i = 0; i < materials_[m].size(); ++i)
        program_.costs[first_of_[m] + i] = static_cast<double>(materials_[m][i].*figure - base);
    }
    return solved(program_, most_nodes);
  }

  const Materials& materials_;
  const std::vector<Postage>& sellers_;
  std::vector<std::size_t> first_of_;
  IntegerProgram program_;
};

/// Goes through the choices, material by material, leaving out what cannot be better than the best.
class Enumeration {
 public:
  Enumeration(const Materials& materials, const std::vector<Postage>& sellers, Taken best)
      : materials_(materials), sellers_(sellers), best_(std::move(best)) {
    standing_ = standing(materials, best_, sellers);
    still_.resize(materials.size() + 1);
    for (std::size_t m = materials.size(); m-- > 0;)
      still_[m] = still_[m + 1] + materials[m].front().coins;
    uses_.resize(sellers.size());
    descend(0);
  }

  bool is_complete() const { return steps_ <= most_steps; }
  const Taken& best() const { return best_; }

 private:
  void descend(std::size_t m) {
    if (++steps_ > most_steps || coins_ + postage_ + still_[m] > standing_.coins) return;
    if (m == materials_.size()) return keep();
    for (std::size_t i = 0; i < materials_[m].size(); ++i) {
      if (coins_ + postage_ + materials_[m][i].coins + still_[m + 1] > standing_.coins) return;
      step(m, i, +1);
      descend(m + 1);
      step(m, i, -1);
    }
  }

  /// Takes a cover, or puts it back. Postage that may fall away is counted at the end.
  void step(std::size_t m, std::size_t i, int sign) {
    const Cover& cover = materials_[m][i];
    coins_ += sign * cover.coins;
    for (const std::size_t s : cover.sellers) {
      const bool was_used = uses_[s] > 0;
      uses_[s] += sign;
      if (!sellers_[s].free_from && was_used != (uses_[s] > 0))
        postage_ += sign * sellers_[s].coins;
    }
    if (sign > 0)
      taken_.push_back(i);
    else
      taken_.pop_back();
  }

  void keep() {
    const Standing found = standing(materials_, taken_, sellers_);
    if (!(found < standing_)) return;
    standing_ = found;
    best_ = taken_;
  }

  const Materials& materials_;
  const std::vector<Postage>& sellers_;
  Taken best_, taken_;
  Standing standing_;
  std::vector<std::int64_t> still_;
  std::vector<int> uses_;
  std::int64_t coins_ = 0, postage_ = 0, steps_ = 0;
};

/// The best that the solver finds, from `taken` on; each earlier figure is held while the next is
/// made least. What it finds is compared in whole numbers.
Taken with_ties_settled(Model& model, const Materials& materials,
                        const std::vector<Postage>& sellers, Taken taken) {
  const auto take_if_better = [&](const Solved& solved) {
    if (solved.is_taken.empty()) return;
    Taken found = model.taken(solved);
    if (!found.empty() && standing(materials, found, sellers) < standing(materials, taken, sellers))
      taken = std::move(found);
  };
  model.keep_at(standing(materials, taken, sellers).coins - cheapest_goods(materials));
  take_if_better(model.least_packs());
  model.keep_at(standing(materials, taken, sellers).packs - Model::base(materials, &Cover::packs));
  take_if_better(model.least_left_over());
  return taken;
}

/// What the solver finds cheapest, and its bound in whole coins.
Choice least(Model& model, const Materials& materials, const std::vector<Postage>& sellers) {
  Taken taken(materials.size(), 0);
  const Solved solved = model.least_coins();
  if (!solved.is_taken.empty())
    if (Taken found = model.taken(solved);
        !found.empty() && standing(materials, found, sellers) < standing(materials, taken, sellers))
      taken = std::move(found);
  const std::int64_t goods = cheapest_goods(materials);
  const std::int64_t coins = standing(materials, taken, sellers).coins;
  const double bound = std::clamp(std::ceil(solved.bound - solver_noise), 0.0, exact_enough);
  return {taken, coins, std::min(coins, goods + static_cast<std::int64_t>(bound))};
}

}  // namespace

std::vector<std::int64_t> postage_of(const Materials& materials, const Taken& taken,
                                     const std::vector<Postage>& sellers) {
  std::vector<std::int64_t> spent(sellers.size()), postage(sellers.size());
  std::vector<bool> is_used(sellers.size());
  for (std::size_t m = 0; m < materials.size(); ++m) {
    const Cover& cover = materials[m][taken[m]];
    for (std::size_t i = 0; i < cover.sellers.size(); ++i) {
      is_used[cover.sellers[i]] = true;
      spent[cover.sellers[i]] += cover.spent[i];
    }
  }
  for (std::size_t s = 0; s < sellers.size(); ++s) {
    const bool is_free = sellers[s].free_from && spent[s] >= *sellers[s].free_from;
    if (is_used[s] && !is_free) postage[s] = sellers[s].coins;
  }
  return postage;
}

Choice least_choice(const Materials& materials, const std::vector<Postage>& sellers) {
  Model model(materials, sellers);
  return least(model, materials, sellers);
}

Choice best_choice(const Materials& materials, const std::vector<Postage>& sellers) {
  Model model(materials, sellers);
  const Choice cheapest = least(model, materials, sellers);
  if (cheapest.at_least == cheapest.coins)
    return {with_ties_settled(model, materials, sellers, cheapest.taken), cheapest.coins,
            cheapest.coins};
  const Enumeration all(materials, sellers, cheapest.taken);
  const std::int64_t found = standing(materials, all.best(), sellers).coins;
  return {all.best(), found, all.is_complete() ? found : std::min(found, cheapest.at_least)};
}

}  // namespace brimwright::trade
