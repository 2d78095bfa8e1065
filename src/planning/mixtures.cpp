#include "planning/mixtures.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>
#include <tuple>
#include <utility>

namespace brimwright::planning {
namespace {

// As for a run by itself.
constexpr std::int64_t most_batches = 1000;

using Batches = std::vector<Mixture>;

std::int64_t parts_up(std::int64_t whole, std::int64_t part) { return (whole + part - 1) / part; }

std::int64_t casts_in(const Mixture& mixture) {
  return std::accumulate(mixture.begin(), mixture.end(), std::int64_t{0});
}

/// How good a dealing is; the less, the better.
struct Worth {
  std::size_t fillings = 0, batches = 0;
  Mass needs;
  std::int64_t parts = 0;  // lines in batches
  Mass uneven;             // largest batch less smallest

  bool is_better_than(const Worth& other) const {
    if (fillings != other.fillings) return fillings < other.fillings;
    if (batches != other.batches) return batches < other.batches;
    if (needs_less(other)) return true;
    if (other.needs_less(*this)) return false;
    if (parts != other.parts) return parts < other.parts;
    return uneven < other.uneven - 1e-9 * other.uneven;
  }
  bool needs_less(const Worth& other) const { return needs < other.needs - 1e-9 * other.needs; }
};

class Dealer {
 public:
  Dealer(const std::vector<MixedLine>& lines, const MixtureTests& tests)
      : lines_(lines), tests_(tests) {}

  enum class Spread { even, full };
  std::optional<MixedFillings> dealt(Spread spread) const {
    MixedFillings fillings;
    for (const Mixture& filling : spread_over_fillings(spread)) {
      auto batches = divided(filling);
      if (!batches) return std::nullopt;
      fillings.push_back(std::move(*batches));
    }
    return fillings;
  }

  Worth worth(const MixedFillings& fillings) const {
    Batches all;
    for (const Batches& filling : fillings) all.insert(all.end(), filling.begin(), filling.end());
    Worth worth = worth_of(all);
    worth.fillings = fillings.size();
    return worth;
  }

 private:
  Mixture none() const { return Mixture(lines_.size(), 0); }

  /// Base poured.
  Mass load(const Mixture& mixture) const {
    Mass sum;
    for (std::size_t i = 0; i < lines_.size(); ++i)
      sum += static_cast<double>(mixture[i]) * lines_[i].each;
    return sum;
  }

  Worth worth_of(const Batches& batches) const {
    Worth worth{.batches = batches.size(), .needs = {}, .uneven = {}};
    Mass least = load(batches.front()), most = least;
    for (const Mixture& batch : batches) {
      worth.needs += tests_.needs(batch);
      worth.parts +=
          std::count_if(batch.begin(), batch.end(), [](auto casts) { return casts > 0; });
      least = std::min(least, load(batch));
      most = std::max(most, load(batch));
    }
    worth.uneven = most - least;
    return worth;
  }

  // ---- over fillings

  /// The lines of one mould: what must fill it first, then in their order.
  std::vector<std::vector<std::size_t>> lines_by_mould() const {
    std::map<std::size_t, std::vector<std::size_t>> by_mould;
    for (std::size_t i = 0; i < lines_.size(); ++i) by_mould[lines_[i].mould].push_back(i);
    std::vector<std::vector<std::size_t>> all;
    for (auto& [mould, its] : by_mould) {
      std::stable_partition(its.begin(), its.end(),
                            [&](std::size_t i) { return lines_[i].fills_moulds; });
      all.push_back(std::move(its));
    }
    std::stable_sort(all.begin(), all.end(), [&](const auto& a, const auto& b) {
      return fillings_for(a) > fillings_for(b);
    });
    return all;
  }
  std::int64_t casts_of(const std::vector<std::size_t>& its) const {
    std::int64_t sum = 0;
    for (const std::size_t i : its) sum += lines_[i].casts;
    return sum;
  }
  std::int64_t fillings_for(const std::vector<std::size_t>& its) const {
    return parts_up(casts_of(its), lines_[its.front()].cavities);
  }

  std::vector<std::int64_t> sizes(const std::vector<std::size_t>& its, Spread spread) const {
    const std::int64_t casts = casts_of(its), fillings = fillings_for(its);
    const std::int64_t cavities = lines_[its.front()].cavities;
    const bool is_full = spread == Spread::full || lines_[its.front()].fills_moulds;
    std::vector<std::int64_t> all;
    for (std::int64_t t = 0; t < fillings; ++t)
      all.push_back(is_full ? std::min(cavities, casts - t * cavities)
                            : casts / fillings + (t < casts % fillings ? 1 : 0));
    return all;
  }

  /// Each mould in the fillings that have least so far.
  std::vector<Mixture> spread_over_fillings(Spread spread) const {
    const auto moulds = lines_by_mould();
    std::vector<Mixture> fillings(static_cast<std::size_t>(fillings_for(moulds.front())), none());
    for (const auto& its : moulds) {
      const auto amounts = sizes(its, spread);
      std::vector<std::size_t> order(fillings.size());
      std::iota(order.begin(), order.end(), std::size_t{0});
      std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return load(fillings[a]) < load(fillings[b]);
      });
      order.resize(amounts.size());
      std::sort(order.begin(), order.end());
      std::size_t next = 0;
      std::int64_t left = lines_[its[next]].casts;
      for (std::size_t t = 0; t < amounts.size(); ++t)
        for (std::int64_t room = amounts[t]; room > 0;) {
          while (left == 0) left = lines_[its[++next]].casts;
          const std::int64_t taken = std::min(room, left);
          fillings[order[t]][its[next]] += taken;
          room -= taken;
          left -= taken;
        }
    }
    return fillings;
  }

  // ---- a filling over batches

  std::optional<Batches> divided(const Mixture& filling) const {
    auto alone = line_by_line(filling);
    const std::int64_t most = alone ? static_cast<std::int64_t>(alone->size())
                                    : std::min(casts_in(filling), most_batches);
    for (std::int64_t batches = fewest(filling); batches <= most; ++batches) {
      auto cut = cut_in(filling, batches);
      if (!cut) continue;
      const bool is_tie = alone && batches == most;
      return is_tie && worth_of(*alone).is_better_than(worth_of(*cut)) ? alone : cut;
    }
    return alone;
  }

  std::int64_t fewest(const Mixture& filling) const {
    double batches = std::ceil(load(filling) / tests_.most * (1 - 1e-9));
    batches = std::clamp(batches, 1.0, static_cast<double>(most_batches));
    auto fewest = static_cast<std::int64_t>(batches);
    for (std::size_t i = 0; i < lines_.size(); ++i)
      fewest = std::max(fewest, parts_up(filling[i], lines_[i].most));
    return fewest;
  }

  /// No batch has two lines.
  std::optional<Batches> line_by_line(const Mixture& filling) const {
    Batches all;
    for (std::size_t i = 0; i < lines_.size(); ++i) {
      if (filling[i] == 0) continue;
      const auto its = evenly(i, filling[i]);
      if (its.empty()) return std::nullopt;
      all.insert(all.end(), its.begin(), its.end());
    }
    return all;
  }
  Batches evenly(std::size_t line, std::int64_t casts) const {
    const MixedLine& its = lines_[line];
    for (std::int64_t n = parts_up(casts, its.most); n <= std::min(casts, most_batches); ++n) {
      if (casts / n < its.least) return {};
      Batches batches(static_cast<std::size_t>(n), none());
      for (std::int64_t j = 0; j < n; ++j)
        batches[static_cast<std::size_t>(j)][line] = casts / n + (j < casts % n ? 1 : 0);
      if (tests_.is_sound(batches.front()) && tests_.is_sound(batches.back())) return batches;
    }
    return {};
  }

  /// The lines one after the other, cut into so many batches of like weight.
  std::optional<Batches> cut_in(const Mixture& filling, std::int64_t batches) const {
    Mixture left = filling;
    Batches all;
    for (std::int64_t more = batches; more > 0; --more) {
      auto batch = next_batch(left, more);
      if (!batch || !tests_.is_sound(*batch)) return std::nullopt;
      for (std::size_t i = 0; i < lines_.size(); ++i) left[i] -= (*batch)[i];
      all.push_back(std::move(*batch));
    }
    return all;
  }

  /// Of what is left for so many batches: first what the others could not take, then up to a like
  /// weight.
  std::optional<Mixture> next_batch(const Mixture& left, std::int64_t batches) const {
    const Mass wanted = load(left) / static_cast<double>(batches);
    Mixture batch = none();
    for (std::size_t i = 0; i < lines_.size(); ++i)
      batch[i] = std::max<std::int64_t>(0, left[i] - (batches - 1) * lines_[i].most);
    for (std::size_t i = 0; i < lines_.size(); ++i) {
      if (left[i] == 0) continue;
      const double more = std::round((wanted - load(batch)) / lines_[i].each);
      const double casts = static_cast<double>(batch[i]) + std::max(0.0, more);
      if (!take(batch, i, std::min(left[i], static_cast<std::int64_t>(std::min(casts, 1e9))), left,
                batches))
        return std::nullopt;
    }
    if (casts_in(batch) == 0) return std::nullopt;
    return batch;
  }

  /// Into `batch` as near to `wanted` of that line as its limits and the batch's allow.
  bool take(Mixture& batch, std::size_t line, std::int64_t wanted, const Mixture& left,
            std::int64_t batches) const {
    const std::int64_t there = left[line];
    for (std::int64_t off = 0; off <= there; ++off)
      for (const std::int64_t casts : {wanted - off, wanted + off}) {
        if (casts < 0 || casts > there || !is_allowed(line, casts, there - casts, batches))
          continue;
        batch[line] = casts;
        if (tests_.is_within(batch)) return true;
      }
    return false;
  }

  bool is_allowed(std::size_t line, std::int64_t casts, std::int64_t rest,
                  std::int64_t batches) const {
    const MixedLine& its = lines_[line];
    const bool is_part = casts == 0 || (casts >= its.least && casts <= its.most);
    const bool can_go_on = rest == 0 || (rest >= its.least && rest <= (batches - 1) * its.most);
    return is_part && can_go_on;
  }

  const std::vector<MixedLine>& lines_;
  const MixtureTests& tests_;
};

}  // namespace

std::optional<MixedFillings> dealt_together(const std::vector<MixedLine>& lines,
                                            const MixtureTests& tests,
                                            const std::optional<MixedFillings>& apart) {
  const Dealer dealer(lines, tests);
  std::optional<MixedFillings> best;
  const auto judge = [&](std::optional<MixedFillings> dealt) {
    if (!dealt) return;
    const Worth worth = dealer.worth(*dealt);
    if (apart && dealer.worth(*apart).needs_less(worth)) return;
    if (!best || worth.is_better_than(dealer.worth(*best))) best = std::move(dealt);
  };
  judge(dealer.dealt(Dealer::Spread::even));
  judge(dealer.dealt(Dealer::Spread::full));
  judge(apart);
  return best;
}

MixedFillings one_by_one(const std::vector<MixedLine>& lines,
                         const std::vector<std::vector<std::vector<std::int64_t>>>& fillings) {
  MixedFillings all;
  std::map<std::size_t, std::size_t> begun;  // fillings of a mould that lines before have taken
  for (std::size_t i = 0; i < lines.size(); ++i)
    for (const auto& filling : fillings[i]) {
      const std::size_t at = begun[lines[i].mould]++;
      if (all.size() <= at) all.resize(at + 1);
      for (const std::int64_t casts : filling) {
        all[at].emplace_back(lines.size(), 0);
        all[at].back()[i] = casts;
      }
    }
  return all;
}

}  // namespace brimwright::planning
