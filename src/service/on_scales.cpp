#include "service/on_scales.h"

#include "records/blanks.h"
#include "reports/weigh_out.h"

#include <algorithm>
#include <cmath>
#include <cstddef>

namespace brimwright::service {
namespace {

using Role = std::string;

/// Of a batter's shares so much may stand elsewhere before its density is another: no more than
/// half of that, since what goes into batter is at most some twice as dense as batter, and so under
/// what a cup is good for (common practice, no source).
constexpr double as_good_as_in_shares = 0.005;
/// So much of a batter may be of what may hold water, or not, before its water is not known
/// (common practice, no source).
constexpr double as_good_as_known = 0.001;

/// What is weighed, all of its times together.
struct Row {
  Role role;
  Mass planned, weighed;

  bool is_water() const { return role == "water" || role == "ice"; }
  Mass more() const { return weighed - planned; }
};
using Rows = std::vector<Row>;

bool is_otherwise(const Rows& rows) {
  return std::any_of(rows.begin(), rows.end(),
                     [](const Row& row) { return row.weighed != row.planned; });
}

/// As the scale shows it, which is what she weighs.
Rows rows_of(const PlannedVessel& vessel, const records::NotedValues& notes) {
  Rows rows;
  rows.reserve(vessel.rows.size());
  for (const PlannedRow& row : vessel.rows)
    rows.push_back({row.role, row.planned, notes.mass(row.note).value_or(row.planned)});
  return rows;
}

/// Lye that was made the day before is topped up with water to what is planned of it, so that less
/// of anything else is more water.
void top_up(Rows& lye) {
  Mass more;
  for (const Row& row : lye) more += row.more();
  if (!(more < Mass{})) return;
  const auto water =
      std::find_if(lye.begin(), lye.end(), [](const Row& row) { return row.is_water(); });
  if (water == lye.end())
    lye.push_back({"water", Mass{}, -more});
  else
    water->weighed -= more;
}

/// How much of a whole stands elsewhere than planned.
double moved(const Rows& rows) {
  Mass planned, weighed;
  for (const Row& row : rows) planned += row.planned, weighed += row.weighed;
  double off = 0;
  for (const Row& row : rows) off += std::abs(row.weighed / weighed - row.planned / planned);
  return off / 2;
}

double water_in(const Rows& rows, Mass Row::*mass) {
  Mass water, all;
  for (const Row& row : rows) {
    all += row.*mass;
    if (row.is_water()) water += row.*mass;
  }
  return water / all;
}

/// A batter's own vessels, by what their keys begin with.
bool is_of(const PlannedVessel& vessel, const std::string& batter) {
  return vessel.key.starts_with(batter + ".") &&
         vessel.key.find('.', batter.size() + 1) == std::string::npos;
}

class Scales {
 public:
  Scales(const PlannedScales& batch, const records::NotedValues& notes)
      : batch_(batch), vessels_(batch.weigh_out->vessels()), notes_(notes) {
    for (const PlannedVessel& vessel : vessels_)
      if (vessel.vessel == "lye_pot") pot_ = rows_of(vessel, notes);
    if (const auto lye = noted(std::string(records::topped_up_row))) top_up_pot(*lye);
  }

  /// `tally` is what the plan's answer has of it.
  std::optional<BatterOnScales> batter(const std::string& key, const PlannedTally& tally) const {
    if (!notes_.has_any_from(std::string(records::weighed_prefix) + key + ".") &&
        !is_otherwise(pot_))
      return std::nullopt;
    Rows rows;
    Mass from_pot;
    double times = 1;
    const bool is_lye_ahead = has_lye_ahead(key);
    for (const PlannedVessel& vessel : vessels_) {
      if (!is_of(vessel, key) || vessel.vessel == "layers") continue;
      times = static_cast<double>(vessel.times);
      Rows its = rows_of(vessel, notes_);
      if (is_lye_ahead && vessel.vessel == "lye") top_up(its);
      if (vessel.vessel == "lye") take_from_day_pot(its, key);
      for (const Row& row : its) {
        if (row.role == "lye_solution" && is_lye_ahead) continue;  // its own, weighed before
        if (row.role == "lye_solution") from_pot += row.planned;
        rows.push_back(row);
      }
    }
    const bool is_of_other_pot = from_pot > Mass{} && is_otherwise(pot_);
    if (!is_otherwise(rows) && !is_of_other_pot) return std::nullopt;
    return found(rows, from_pot, times, tally);
  }

  std::vector<std::optional<Mass>> melts() const {
    std::vector<std::optional<Mass>> all;
    for (const PlannedVessel& vessel : vessels_) {
      if (vessel.vessel != "melt") continue;
      const Rows rows = rows_of(vessel, notes_);
      Mass weighed;
      for (const Row& row : rows) weighed += row.weighed;
      all.push_back(is_otherwise(rows) ? std::optional(weighed) : std::nullopt);
    }
    return all;
  }

 private:
  std::optional<Mass> noted(const std::string& row) const {
    return notes_.mass(std::string(records::weighed_prefix) + row);
  }

  /// Water, to what it is noted to have weighed then.
  void top_up_pot(Mass lye) {
    Row water{"water", batch_.lye_pot.value(), lye};
    for (const Row& row : pot_) {
      water.planned -= row.planned;
      water.weighed -= row.weighed;
    }
    pot_.push_back(std::move(water));
  }

  /// Alkali and water came together then, as strong as planned.
  void take_from_day_pot(Rows& lye, const std::string& key) const {
    const auto mass = noted(key + std::string(records::day_pot_row));
    if (!mass) return;
    const auto is_of_pot = [](const Row& row) { return row.is_water() || row.role == "alkali"; };
    Mass planned;
    for (const Row& row : lye)
      if (is_of_pot(row)) planned += row.planned;
    for (Row& row : lye)
      if (is_of_pot(row)) row.weighed = (*mass / planned) * row.planned;
  }

  bool has_lye_ahead(const std::string& key) const {
    const auto has = [&](const char* kind) {
      return std::any_of(vessels_.begin(), vessels_.end(), [&](const PlannedVessel& vessel) {
        return is_of(vessel, key) && vessel.vessel == kind;
      });
    };
    return has("lye") && has("share");
  }

  /// Of whippings that are weighed together each may have had all that is more of them.
  BatterOnScales found(const Rows& rows, Mass from_pot, double times,
                       const PlannedTally& tally) const {
    Mass planned, more, water, unknown;
    for (const Row& row : rows) {
      planned += row.planned / times;
      more += row.more();
      if (row.is_water()) water += row.more();
      if (row.role == "lye_solution") water += water_in(pot_, &Row::weighed) * row.more();
      if (may_hold_water(row, tally)) unknown += abs(row.more());
    }
    Rows one = rows;
    for (Row& row : one) {
      row.weighed = row.planned / times + row.more();
      row.planned = row.planned / times;
    }
    double off = moved(one);
    const Mass make = tally.make.value();
    if (from_pot > Mass{} && is_otherwise(pot_)) {
      const Mass lye = from_pot / times;
      off += lye / planned * moved(pot_);
      water += (water_in(pot_, &Row::weighed) - water_in(pot_, &Row::planned)) * lye;
      for (const Row& row : pot_)
        if (may_hold_water(row, tally)) unknown += abs(row.more());
    }
    BatterOnScales batter{.on_scales = {.at_most = make + std::max(more, times > 1 ? Mass{} : more),
                                        .is_in_shares = off <= as_good_as_in_shares},
                          .more = more,
                          .more_water = {}};
    if (unknown <= as_good_as_known * planned) batter.more_water = water;
    return batter;
  }

  static bool may_hold_water(const Row& row, const PlannedTally& tally) {
    if (row.role == "alkali") return tally.has_solutions;
    return row.role == "additive" || row.role == "liquid";
  }

  const PlannedScales& batch_;
  const std::vector<PlannedVessel>& vessels_;
  const records::NotedValues& notes_;
  Rows pot_ = {};
};

}  // namespace

bool is_any_weighed(const records::NotedValues& notes) {
  return notes.has_any_from(records::weighed_prefix);
}

BatchOnScales on_scales(const PlannedScales& batch, const records::NotedValues& notes) {
  BatchOnScales found;
  if (!batch.weigh_out) return found;
  const Scales scales(batch, notes);
  found.base = scales.batter(reports::base_key(), batch.base);
  for (std::size_t i = 0; i < batch.whippings.size(); ++i)
    found.whippings.push_back(scales.batter(reports::whipping_key(i), batch.whippings[i]));
  found.melts = scales.melts();
  return found;
}

}  // namespace brimwright::service
