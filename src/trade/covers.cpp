#include "trade/covers.h"

#include <algorithm>
#include <limits>
#include <map>
#include <tuple>

namespace brimwright::trade {
namespace {

__extension__ using Wide = __int128;

constexpr std::size_t most_sellers = 10;  // of one material, all of whose subsets are looked at
constexpr std::size_t most_found = 300;   // of one set of sellers
constexpr std::int64_t unlimited = most_coins + 1;

std::int64_t quotient_up(Wide a, Wide b) { return static_cast<std::int64_t>((a + b - 1) / b); }

auto rank(const Cover& cover) { return std::tuple(cover.coins, cover.packs, cover.weight); }

/// All covers from some of the offers, those of least cost for their content first, so that what is
/// missing can be bounded by the next one's.
class Search {
 public:
  Search(std::int64_t need, const std::vector<Offer>& offers, const std::vector<Postage>& sellers,
         std::vector<std::size_t> chosen, std::int64_t& work)
      : offers_(offers), sellers_(sellers), chosen_(std::move(chosen)), work_(work), need_(need) {
    std::sort(chosen_.begin(), chosen_.end(), [&](std::size_t a, std::size_t b) {
      const Wide of_a = Wide{offers_[a].coins} * offers_[b].holds;
      const Wide of_b = Wide{offers_[b].coins} * offers_[a].holds;
      return of_a != of_b ? of_a < of_b
                          : std::tuple(-offers_[a].holds, a) < std::tuple(-offers_[b].holds, b);
    });
    counts_.resize(offers_.size());
  }

  /// The best cover, if there is one.
  std::optional<Cover> best() {
    descend(0, need_, 0, 0, 0);
    return best_;
  }

  /// The best for each way to spend money with those of `of` who send free from a sum on, of covers
  /// that buy of all of `of` and cost at most `limit`.
  std::vector<Cover> all_up_to(std::int64_t limit, const std::vector<std::size_t>& of) {
    limit_ = limit;
    of_ = &of;
    descend(0, need_, 0, 0, 0);
    std::vector<Cover> found;
    for (auto& [spent, cover] : found_) found.push_back(std::move(cover));
    return found;
  }

 private:
  /// The most of an offer to think of, where `enough` cover what is missing: more only of who sends
  /// free from a sum on.
  std::int64_t most_of(const Offer& offer, std::int64_t enough, std::int64_t coins) const {
    if (offer.coins == 0) return std::min(enough, most_of_a_pack);
    const std::int64_t affordable = std::min((limit_ - coins) / offer.coins, most_of_a_pack);
    const bool may_be_extra = of_ && offer.seller && sellers_[*offer.seller].free_from;
    return may_be_extra ? affordable : std::min(enough, affordable);
  }

  /// The least that a cover costs which has `coins` so far and takes no offer before `place`.
  std::int64_t bound(std::size_t place, std::int64_t missing, std::int64_t coins) const {
    if (missing <= 0) return coins;
    if (place == chosen_.size()) return unlimited;
    const Offer& next = offers_[chosen_[place]];
    const Wide more = (Wide{missing} * next.coins + next.holds - 1) / next.holds;
    return more > most_coins ? unlimited : coins + static_cast<std::int64_t>(more);
  }

  bool is_hopeless(std::size_t place, std::int64_t missing, std::int64_t coins) const {
    return bound(place, missing, coins) > limit_;
  }

  /// As cheap as the best at most, and of more packs.
  bool ends_worse(std::size_t place, std::int64_t missing, std::int64_t coins,
                  std::int64_t packs) const {
    if (of_ || !best_ || bound(place, missing, coins) < best_->coins) return false;
    std::int64_t largest = 1;
    for (std::size_t i = place; i < chosen_.size(); ++i)
      largest = std::max(largest, offers_[chosen_[i]].holds);
    return packs + (missing > 0 ? quotient_up(missing, largest) : 0) > best_->packs;
  }

  void descend(std::size_t place, std::int64_t missing, std::int64_t coins, std::int64_t packs,
               std::int64_t weight) {
    if (--work_ <= 0 || is_hopeless(place, missing, coins)) return;
    if (ends_worse(place, missing, coins, packs)) return;
    if (place == chosen_.size()) return keep(coins, packs, weight);
    const Offer& offer = offers_[chosen_[place]];
    const std::int64_t enough = missing > 0 ? quotient_up(missing, offer.holds) : 0;
    for (std::int64_t count = most_of(offer, enough, coins); count >= 0 && work_ > 0; --count) {
      const std::int64_t sum = coins + count * offer.coins;
      const auto still = static_cast<std::int64_t>(missing - Wide{count} * offer.holds);
      if (--work_ <= 0 || is_hopeless(place + 1, still, sum)) break;  // and so are fewer
      counts_[chosen_[place]] = count;
      descend(place + 1, still, sum, packs + count, weight + count * offer.weight);
    }
    counts_[chosen_[place]] = 0;
  }

  Cover cover(std::int64_t coins, std::int64_t packs, std::int64_t weight) const {
    std::map<std::size_t, std::int64_t> spent;
    for (std::size_t i = 0; i < offers_.size(); ++i)
      if (counts_[i] > 0 && offers_[i].seller)
        spent[*offers_[i].seller] += counts_[i] * offers_[i].coins;
    Cover cover{counts_, coins, packs, weight};
    for (const auto& [seller, sum] : spent) {
      cover.sellers.push_back(seller);
      cover.spent.push_back(sum);
    }
    return cover;
  }

  void keep(std::int64_t coins, std::int64_t packs, std::int64_t weight) {
    Cover found = cover(coins, packs, weight);
    if (!of_) {
      if (best_ && rank(*best_) <= rank(found)) return;
      limit_ = coins;
      best_ = std::move(found);
      return;
    }
    if (found.sellers != *of_) return;
    std::vector<std::int64_t> spent;
    for (std::size_t i = 0; i < found.sellers.size(); ++i)
      if (sellers_[found.sellers[i]].free_from) spent.push_back(found.spent[i]);
    const auto [place, is_new] = found_.try_emplace(spent, found);
    if (found_.size() > most_found) work_ = 0;
    if (!is_new && rank(found) < rank(place->second)) place->second = std::move(found);
  }

  const std::vector<Offer>& offers_;
  const std::vector<Postage>& sellers_;
  std::vector<std::size_t> chosen_;
  std::int64_t& work_;
  std::int64_t need_;
  std::int64_t limit_ = most_coins;
  std::vector<std::int64_t> counts_;
  std::optional<Cover> best_;
  const std::vector<std::size_t>* of_ = nullptr;
  std::map<std::vector<std::int64_t>, Cover> found_;
};

std::int64_t spent_with(const Cover& cover, std::size_t seller) {
  for (std::size_t i = 0; i < cover.sellers.size(); ++i)
    if (cover.sellers[i] == seller) return cover.spent[i];
  return 0;
}

/// Whether `other` may stand wherever `cover` does, at no more.
bool replaces(const Cover& other, const Cover& cover, const std::vector<Postage>& sellers) {
  return rank(other) <= rank(cover) &&
         std::includes(cover.sellers.begin(), cover.sellers.end(), other.sellers.begin(),
                       other.sellers.end()) &&
         std::all_of(cover.sellers.begin(), cover.sellers.end(), [&](std::size_t seller) {
           return !sellers[seller].free_from ||
                  spent_with(other, seller) >= spent_with(cover, seller);
         });
}

std::vector<Cover> without_replaced(std::vector<Cover> all, const std::vector<Postage>& sellers) {
  std::stable_sort(all.begin(), all.end(),
                   [](const Cover& a, const Cover& b) { return rank(a) < rank(b); });
  std::vector<Cover> kept;
  for (Cover& cover : all)
    if (std::none_of(kept.begin(), kept.end(),
                     [&](const Cover& other) { return replaces(other, cover, sellers); }))
      kept.push_back(std::move(cover));
  return kept;
}

std::vector<std::size_t> sellers_of(const std::vector<Offer>& offers) {
  std::vector<std::size_t> sellers;
  for (const Offer& offer : offers)
    if (offer.seller) sellers.push_back(*offer.seller);
  std::sort(sellers.begin(), sellers.end());
  sellers.erase(std::unique(sellers.begin(), sellers.end()), sellers.end());
  return sellers;
}

/// The subsets to look at: all of them, or where these are too many, each seller alone and all.
std::vector<std::vector<std::size_t>> subsets(const std::vector<std::size_t>& sellers) {
  std::vector<std::vector<std::size_t>> sets;
  if (sellers.size() > most_sellers) {
    sets = {{}, sellers};
    for (const std::size_t seller : sellers) sets.push_back({seller});
    return sets;
  }
  for (std::size_t bits = 0; bits < std::size_t{1} << sellers.size(); ++bits) {
    auto& set = sets.emplace_back();
    for (std::size_t i = 0; i < sellers.size(); ++i)
      if (bits >> i & 1) set.push_back(sellers[i]);
  }
  return sets;
}

std::vector<std::size_t> sold_by(const std::vector<std::size_t>& set,
                                 const std::vector<Offer>& offers) {
  std::vector<std::size_t> places;
  for (std::size_t i = 0; i < offers.size(); ++i)
    if (!offers[i].seller || std::binary_search(set.begin(), set.end(), *offers[i].seller))
      places.push_back(i);
  return places;
}

bool sends_free_from_a_sum(const std::vector<std::size_t>& set,
                           const std::vector<Postage>& sellers) {
  return std::any_of(set.begin(), set.end(),
                     [&](std::size_t seller) { return sellers[seller].free_from.has_value(); });
}

std::int64_t may_be_waived(const std::vector<std::size_t>& set,
                           const std::vector<Postage>& sellers) {
  std::int64_t sum = 0;
  for (const std::size_t seller : set)
    if (sellers[seller].free_from) sum += sellers[seller].coins;
  return sum;
}

}  // namespace

Covers covers(std::int64_t need, const std::vector<Offer>& offers,
              const std::vector<Postage>& sellers, std::int64_t most_more, std::int64_t& work) {
  const auto all_sellers = sellers_of(offers);
  Covers result{
      .worth_a_thought = {}, .at_least = unlimited, .are_all = all_sellers.size() <= most_sellers};
  for (const Offer& offer : offers) {
    const Wide least = (Wide{need} * offer.coins + offer.holds - 1) / offer.holds;
    if (least < result.at_least) result.at_least = static_cast<std::int64_t>(least);
  }
  for (const auto& set : subsets(all_sellers)) {
    const auto chosen = sold_by(set, offers);
    const auto best = Search(need, offers, sellers, chosen, work).best();
    if (!best) continue;
    result.worth_a_thought.push_back(*best);
    const std::int64_t more = std::min(most_more, may_be_waived(set, sellers));
    if (more < 0 || !sends_free_from_a_sum(set, sellers)) continue;
    auto others = Search(need, offers, sellers, chosen, work).all_up_to(best->coins + more, set);
    std::move(others.begin(), others.end(), std::back_inserter(result.worth_a_thought));
  }
  result.are_all = result.are_all && work > 0;
  result.worth_a_thought = without_replaced(std::move(result.worth_a_thought), sellers);
  return result;
}

}  // namespace brimwright::trade
