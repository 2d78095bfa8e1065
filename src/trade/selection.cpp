#include "trade/selection.h"

#include "trade/choice.h"

#include <algorithm>
#include <utility>

namespace brimwright::trade {
namespace {

constexpr std::int64_t steps_a_material = 100'000;  // of the search for covers
constexpr std::int64_t steps_in_all = 1'000'000;
constexpr std::size_t most_covers = 2'000;  // that are chosen from

struct Listed {
  std::vector<std::vector<Cover>> covers;
  std::int64_t at_least = 0;
  std::size_t count = 0;
  bool are_all = true;
};

Listed listed(const std::vector<Wanted>& materials, const std::vector<Postage>& sellers,
              std::int64_t most_more) {
  Listed list;
  std::int64_t still = steps_in_all;
  for (const Wanted& wanted : materials) {
    const bool has_room = still > 0 && list.count < most_covers;
    std::int64_t work = steps_a_material;
    Covers found = covers(wanted.need, wanted.offers, sellers, has_room ? most_more : -1, work);
    still -= steps_a_material - work;
    list.are_all = list.are_all && found.are_all && has_room;
    list.at_least += found.at_least;
    list.count += found.worth_a_thought.size();
    list.covers.push_back(std::move(found.worth_a_thought));
  }
  return list;
}

std::vector<Postage> as_if_free(std::vector<Postage> sellers) {
  for (Postage& seller : sellers)
    if (seller.free_from) seller = {};
  return sellers;
}

/// Where a seller's goods cannot come to the sum from which he sends free, in a selection of at
/// most `coins`, because the rest of that is needed for what he has not, he may as well not say it.
std::vector<Postage> within_reach(std::vector<Postage> sellers,
                                  const std::vector<Wanted>& materials, const Listed& list,
                                  std::int64_t coins) {
  for (std::size_t s = 0; s < sellers.size(); ++s) {
    std::int64_t with_others = 0;
    for (std::size_t m = 0; m < materials.size(); ++m) {
      const auto& offers = materials[m].offers;
      if (std::none_of(offers.begin(), offers.end(),
                       [&](const Offer& offer) { return offer.seller == s; }))
        with_others += list.covers[m].front().coins;
    }
    if (sellers[s].free_from && *sellers[s].free_from > coins - with_others)
      sellers[s].free_from.reset();
  }
  return sellers;
}

bool may_waive(const std::vector<Postage>& sellers) {
  return std::any_of(sellers.begin(), sellers.end(),
                     [](const Postage& one) { return one.free_from.has_value(); });
}

Selection selected(const Listed& list, const Choice& choice, std::int64_t at_least) {
  Selection selection{.counts = {}, .coins = choice.coins, .at_least = at_least};
  for (std::size_t m = 0; m < list.covers.size(); ++m)
    selection.counts.push_back(list.covers[m][choice.taken[m]].counts);
  return selection;
}

/// Without a cover of each material there is no choice; those that have one are told by it.
Selection without_choice(const Listed& list) {
  Selection selection;
  for (const auto& covers : list.covers)
    selection.counts.push_back(covers.empty() ? std::vector<std::int64_t>()
                                              : covers.front().counts);
  return selection;
}

}  // namespace

Selection selection(const std::vector<Wanted>& materials, const std::vector<Postage>& sellers) {
  const Listed few = listed(materials, sellers, -1);
  if (std::any_of(few.covers.begin(), few.covers.end(),
                  [](const auto& covers) { return covers.empty(); }))
    return without_choice(few);
  const Choice best_of_few = best_choice(few.covers, sellers);
  const auto reached = within_reach(sellers, materials, few, best_of_few.coins);
  const std::int64_t waived = least_choice(few.covers, as_if_free(reached)).at_least;
  const std::int64_t at_least = few.are_all ? waived : few.at_least;
  if (at_least == best_of_few.coins && !may_waive(sellers))
    return selected(few, best_of_few, at_least);

  const Listed more = listed(materials, reached, best_of_few.coins - at_least);
  const Choice best = best_choice(more.covers, sellers);
  if (more.are_all) return selected(more, best, std::max(best.at_least, at_least));
  return best.coins < best_of_few.coins ? selected(more, best, at_least)
                                        : selected(few, best_of_few, at_least);
}

}  // namespace brimwright::trade
