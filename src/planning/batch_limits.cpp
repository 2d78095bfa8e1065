#include "planning/batch_limits.h"

#include "chemistry/batter_density.h"
#include "chemistry/salts.h"
#include "planning/base_is.h"
#include "planning/lye_pot.h"
#include "planning/whip.h"
#include "units/printing.h"
#include "units/rounding.h"
#include "units/share_of.h"
#include "units/user_error.h"
#include "units/water.h"
#include "units/wording.h"

#include <algorithm>
#include <cmath>
#include <functional>

namespace brimwright::planning {
namespace {

using std::chrono::seconds;

// Beyond any batch, and far below what a whole number holds.
constexpr std::int64_t most_tried = 1'000'000;

std::string litres(Volume volume) { return trimmed(volume / litre, 2) + " L"; }
/// Rounded up, so that a vessel of that size does hold it.
std::string litres_up(Volume volume) {
  return trimmed(std::ceil(volume / litre * 10 - 1e-9) / 10, 1) + " L";
}
std::string minutes_up(double time_s) {
  return trimmed(std::ceil(time_s / 60 * 10 - 1e-9) / 10, 1) + " min";
}

/// Casts as she counts them: pieces, or the loaves that are cut.
std::string casts_counted(std::int64_t n, const Pieces& pieces) {
  return pieces.per_cast > 1 ? counted(n, "loaf", "loaves") : counted(n, "piece");
}

/// Something that fills up with casts.
struct Vessel {
  std::string what;
  Place where;
  std::function<double(std::int64_t)> filled;       // by so many casts: 1 is as full as it may be
  std::function<std::string(std::int64_t)> words;   // "A pot of 5 l ... at most 31 pieces"
  std::function<std::string(std::int64_t)> remedy;  // what would hold so many
};

/// A size that cannot be weighed at all is no matter of how much a vessel holds.
double filled_or_none(const Vessel& vessel, std::int64_t casts) {
  try {
    return vessel.filled(casts);
  } catch (const UserError&) {
    return 0;
  }
}
bool is_within(const Vessel& vessel, std::int64_t casts) {
  return filled_or_none(vessel, casts) <= 1 + 1e-9;
}

/// The greatest number for which `holds`, which is true up to it and false beyond; 0 for none. The
/// guess is where the search begins.
std::int64_t greatest(std::int64_t guess, const std::function<bool(std::int64_t)>& holds) {
  std::int64_t low = 0, high = std::clamp<std::int64_t>(guess, 1, most_tried);
  std::int64_t stride = 1;
  if (holds(high)) {
    do {
      low = high;
      if (low >= most_tried) return most_tried;
      high = std::min(most_tried, low + stride);
      stride *= 2;
    } while (holds(high));
  } else {
    while (high > 1) {
      low = std::max<std::int64_t>(0, high - stride);
      if (low == 0 || holds(low)) break;
      high = low;
      stride *= 2;
    }
    if (high == 1) return 0;
  }
  while (high - low > 1) {
    const std::int64_t middle = low + (high - low) / 2;
    (holds(middle) ? low : high) = middle;
  }
  return low;
}

/// Nearly a straight line: what stays behind, and so much for each cast.
std::int64_t most_within(const Vessel& vessel, std::int64_t about) {
  const std::int64_t one = about, other = std::max<std::int64_t>(2 * about, about + 1);
  const double slope = (filled_or_none(vessel, other) - filled_or_none(vessel, one)) /
                       static_cast<double>(other - one);
  double guess = static_cast<double>(about);
  if (slope > 0) guess += (1 - filled_or_none(vessel, one)) / slope;
  return greatest(static_cast<std::int64_t>(std::clamp(guess, 1.0, 1.0 * most_tried)),
                  [&](std::int64_t casts) { return is_within(vessel, casts); });
}

/// What one lye takes up in its jug: alkali, water, and what else goes in.
Volume lye_in_jug(const chemistry::Formula& formula, const Weighing& weighing) {
  std::vector<Mass> alkalis(formula.alkalis.size());
  Volume others;
  for (const auto& ingredient : weighing.ingredients) {
    if (ingredient.role == Role::alkali) alkalis[ingredient.index] = ingredient.weighed;
    if (ingredient.role != Role::additive || ingredient.goes_into != "lye") continue;
    const auto& additive = formula.additives[ingredient.index];
    const Density known =
        chemistry::known_density(additive).value_or(water_density(formula.pour_temperature));
    others += ingredient.weighed / additive.density.value_or(known);
  }
  return chemistry::lye_volume(formula, alkalis, weighing.plain_water()) + others;
}

/// The limits as they are gathered for one run.
class Gathering {
 public:
  Gathering(const Run& run, const Pieces& pieces, BatchTrials& trials, BaseIs base)
      : run_(run),
        pieces_(pieces),
        trials_(trials),
        has_base_(base == BaseIs::its_own),
        whippings_(run.batch.whippings) {}

  BatchLimits limits() {
    count("cavities", pieces_.cavities,
          "The moulds have " + counted_cavities() + " to fill at a time.");
    if (has_base_) wish();
    vessels();
    limits_.most = most_tried;
    for (const auto& limit : limits_.of_batch) limits_.most = std::min(limits_.most, limit.casts);
    least();
    refuse_none();
    return std::move(limits_);
  }

 private:
  std::string counted_cavities() const { return counted(pieces_.cavities, "cavity", "cavities"); }

  void count(const std::string& what, std::int64_t casts, const std::string& text) {
    limits_.of_batch.push_back({.what = what, .casts = casts, .text = text});
  }

  void wish() {
    const BatchWish& wish = run_.batch;
    if (wish.casts)
      count("wish", *wish.casts,
            "You ask for batches of at most " + casts_counted(*wish.casts, pieces_) + ".");
    if (!wish.pieces) return;
    if (*wish.pieces < pieces_.per_cast)
      throw UserError(run_.place("/batch/pieces"),
                      "asks for batches of " + counted(*wish.pieces, "piece") +
                          ", and one cast is cut into " + std::to_string(pieces_.per_cast),
                      "give " + std::to_string(pieces_.per_cast) + " or more");
    count("wish", *wish.pieces / pieces_.per_cast,
          "You ask for batches of at most " + counted(*wish.pieces, "piece") + ".");
  }

  void vessels() {
    about_ = pieces_.casts;
    for (const auto& limit : limits_.of_batch) about_ = std::min(about_, limit.casts);
    if (run_.pots.holds && has_base_) pot();
    if (run_.pots.lye_jug && (has_base_ || run_.pipe)) jug();
    if (!run_.pipe) return;
    if (run_.pipe->bowl) bowl();
    if (run_.pipe->pace) open_time();
  }

  void of_batch(const Vessel& vessel) {
    const std::int64_t most = most_within(vessel, about_);
    refuse_too_small_a_vessel(vessel, most);
    count(vessel.what, most, vessel.words(most));
    vessels_.push_back(vessel);
  }
  void of_whipping(const Vessel& vessel) {
    const std::int64_t about = std::max<std::int64_t>(1, about_ / whippings_);
    const std::int64_t most = most_within(vessel, about);
    refuse_too_small_a_vessel(vessel, most);
    const std::string text = vessel.words(most);
    limits_.of_whipping.push_back({.what = vessel.what, .casts = most, .text = text});
    count(vessel.what, most * whippings_,
          whippings_ == 1
              ? text
              : text + " In " + std::to_string(whippings_) + " whippings a batch makes " +
                    casts_counted(most * whippings_, pieces_) + ".");
    Vessel of_batch = vessel;
    of_batch.remedy = [this, remedy = vessel.remedy](std::int64_t casts) {
      return remedy((casts + whippings_ - 1) / whippings_);
    };
    vessels_.push_back(of_batch);
  }
  void refuse_too_small_a_vessel(const Vessel& vessel, std::int64_t most) const {
    if (most > 0) return;
    throw UserError(vessel.where,
                    "is too little for even " + casts_counted(1, pieces_) + ": " + vessel.words(0),
                    "it takes " + vessel.remedy(1));
  }

  void pot() {
    const Volume room = fullest_pot * *run_.pots.holds;
    const auto base = [this](std::int64_t casts) {
      return trials_.base(casts).batter / trials_.base_density();
    };
    of_batch({.what = "pot",
              .where = run_.place("/pots/holds"),
              .filled = [=](std::int64_t casts) { return base(casts) / room; },
              .words =
                  [=, this](std::int64_t casts) {
                    return "A pot of " + litres(*run_.pots.holds) +
                           ", two thirds full, takes the base of " + casts_counted(casts, pieces_) +
                           " at most.";
                  },
              .remedy =
                  [=](std::int64_t casts) {
                    return "a pot of " + litres_up(base(casts) / fullest_pot.of_one());
                  }});
  }

  /// The lyes of a batch are made one after the other, or in one pot for all.
  Volume largest_lye(std::int64_t casts) {
    if (!has_base_) return lye_of_whipping(casts);
    const Weighing& base = trials_.base(casts);
    const Volume lye = lye_in_jug(run_.pour.formula, base);
    if (!run_.pipe) return lye;
    if (!run_.lye_pot) return std::max(lye, lye_of_whipping(casts));
    const auto whippings = casts_of_whippings(casts, std::min(casts, whippings_));
    std::vector<PotBatter> batters{{run_.pour.formula, base}};
    for (const std::int64_t each : whippings)
      batters.push_back({run_.pipe->formula, trials_.whipping(each).batter.weighing});
    const LyePot pot = lye_pot(batters, run_.scales, *run_.lye_pot);
    std::vector<Mass> alkalis;
    for (const PotAlkali& alkali : pot.alkalis) alkalis.push_back(alkali.weighed);
    return chemistry::lye_volume(run_.pour.formula, alkalis, pot.water);
  }
  Volume lye_of_whipping(std::int64_t casts) {
    const auto whippings = casts_of_whippings(casts, std::min(casts, whippings_));
    return lye_in_jug(run_.pipe->formula, trials_.whipping(whippings.front()).batter.weighing);
  }
  void jug() {
    const Volume room = fullest_lye_jug * *run_.pots.lye_jug;
    of_batch({.what = "lye jug",
              .where = run_.place("/pots/lye_jug"),
              .filled = [=, this](std::int64_t casts) { return largest_lye(casts) / room; },
              .words =
                  [this](std::int64_t casts) {
                    return "A lye jug of " + litres(*run_.pots.lye_jug) +
                           ", half full, takes the lye solution for " +
                           casts_counted(casts, pieces_) + " at most.";
                  },
              .remedy =
                  [this](std::int64_t casts) {
                    return "a lye jug of " +
                           litres_up(largest_lye(casts) / fullest_lye_jug.of_one());
                  }});
  }

  void bowl() {
    const Volume holds = run_.pipe->bowl->holds;
    const Volume room = fullest_bowl * holds;
    const auto whipped = [this](std::int64_t casts) {
      const auto& batter = trials_.whipping(casts).batter;
      return batter.weighing.batter / batter.density;
    };
    of_whipping({.what = "bowl",
                 .where = run_.place("/pipe/bowl/holds"),
                 .filled = [=](std::int64_t casts) { return whipped(casts) / room; },
                 .words =
                     [=, this](std::int64_t casts) {
                       return "A bowl of " + litres(holds) + ", " +
                              trimmed(fullest_bowl.in_percent(), 0) +
                              " % full when whipped, makes " + casts_counted(casts, pieces_) +
                              " at most.";
                     },
                 .remedy =
                     [=](std::int64_t casts) {
                       return "a bowl of " + litres_up(whipped(casts) / fullest_bowl.of_one());
                     }});
  }

  void open_time() {
    const seconds open = run_.pipe->pace->open_time;
    const auto takes = [this](std::int64_t casts) {
      return static_cast<double>(trials_.whipping(casts).piping->count());
    };
    of_whipping(
        {.what = "open time",
         .where = run_.place("/pipe/pace"),
         .filled =
             [=](std::int64_t casts) { return takes(casts) / static_cast<double>(open.count()); },
         .words =
             [=, this](std::int64_t casts) {
               return "Whipped batter can be piped for " + in_minutes(open) + ": " +
                      casts_counted(casts, pieces_) + " at most.";
             },
         .remedy =
             [=](std::int64_t casts) {
               return minutes_up(takes(casts)) + " of open time, or quicker piping";
             }});
  }

  bool is_weighable(const std::function<void()>& weigh) const {
    try {
      weigh();
      return true;
    } catch (const UserError&) {
      return false;
    }
  }

  /// The smallest number for which `holds`, which is false below it and true from it on; nothing
  /// where none is.
  std::optional<std::int64_t> smallest(const std::function<bool(std::int64_t)>& holds) const {
    if (holds(1)) return 1;
    std::int64_t low = 1, high = std::max<std::int64_t>(2, about_);
    while (!holds(high)) {
      if (high >= most_tried) return std::nullopt;
      low = high;
      high = std::min(most_tried, 2 * high);
    }
    while (high - low > 1) {
      const std::int64_t middle = low + (high - low) / 2;
      (holds(middle) ? high : low) = middle;
    }
    return high;
  }

  void least_at(const std::optional<std::int64_t>& casts, const std::string& because) {
    if (casts.value_or(1) <= limits_.least) return;
    limits_.least = *casts;
    limits_.least_because = because;
  }

  /// Nothing where no size is weighable: then the weighing itself says why, when it is planned.
  void least() {
    if (has_base_) least_of_base();
    if (!run_.pipe) return;
    least_at(whippings_, "each of its " + std::to_string(whippings_) + " whippings takes one");
    const auto topping = smallest(
        [this](std::int64_t casts) { return is_weighable([&] { trials_.whipping(casts); }); });
    if (topping)
      least_at(*topping * whippings_,
               "these scales cannot weigh the topping of fewer with a superfat above zero");
    if (run_.pipe->bowl && run_.pipe->bowl->whisk_needs) whisk();
  }

  void least_of_base() {
    const auto base =
        smallest([this](std::int64_t casts) { return is_weighable([&] { trials_.base(casts); }); });
    least_at(base, "these scales cannot weigh the base of fewer with a superfat above zero");
  }

  void whisk() {
    const Volume catches = *run_.pipe->bowl->whisk_needs;
    const auto caught = smallest([&](std::int64_t casts) {
      bool is_enough = false;
      const bool is_sound = is_weighable([&] {
        is_enough = trials_.whipping(casts).batter.weighing.batter / trials_.topping().plain.used >=
                    catches * (1 - 1e-9);
      });
      return is_sound && is_enough;
    });
    if (!caught) return;
    const std::string text = "The whisk needs at least " + in_ml(catches, 0) +
                             " of unwhipped batter: " + casts_counted(*caught, pieces_) + ".";
    limits_.of_whipping.push_back(
        {.what = "whisk", .is_least = true, .casts = *caught, .text = text});
    limits_.of_batch.push_back(
        {.what = "whisk", .is_least = true, .casts = *caught * whippings_, .text = text});
    least_at(*caught * whippings_, "the whisk needs as much");
  }

  void refuse_none() const {
    if (limits_.most >= limits_.least) return;
    std::string most_because, remedy;
    for (const auto& limit : limits_.of_batch)
      if (!limit.is_least && limit.casts == limits_.most) most_because = limit.text;
    for (const auto& limit : limits_.of_batch) {
      if (limit.is_least || limit.casts >= limits_.least) continue;
      const auto vessel = std::find_if(vessels_.begin(), vessels_.end(),
                                       [&](const Vessel& v) { return v.what == limit.what; });
      remedy += (remedy.empty() ? "" : ", and ") +
                (vessel != vessels_.end() ? vessel->remedy(limits_.least)
                 : limit.what == "wish"
                     ? "a wish of at least " + casts_counted(limits_.least, pieces_)
                     : "moulds with " + std::to_string(limits_.least) + " cavities or more");
    }
    if (most_because.ends_with('.')) most_because.pop_back();
    throw UserError(run_.place("/batch"),
                    "no batch size works: a batch is at least " +
                        casts_counted(limits_.least, pieces_) + ", as " + limits_.least_because +
                        ", and at most " + casts_counted(limits_.most, pieces_) + ". " +
                        most_because,
                    "it takes " + remedy);
  }

  const Run& run_;
  const Pieces& pieces_;
  BatchTrials& trials_;
  bool has_base_;  // of its own
  std::int64_t whippings_;
  std::int64_t about_ = 1;  // casts by which trials begin
  std::vector<Vessel> vessels_;
  BatchLimits limits_;
};

}  // namespace

BatchLimits limits_of(const Run& run, const Pieces& pieces, BatchTrials& trials) {
  return Gathering(run, pieces, trials, BaseIs::its_own).limits();
}

BatchLimits own_limits_of(const Run& run, const Pieces& pieces, BatchTrials& trials) {
  return Gathering(run, pieces, trials, BaseIs::shared).limits();
}

double filled_by(const Run& run, const Weighing& base, Density density) {
  double filled = 0;
  if (run.pots.holds) filled = base.batter / density / (fullest_pot * *run.pots.holds);
  if (run.pots.lye_jug)
    filled = std::max(filled,
                      lye_in_jug(run.pour.formula, base) / (fullest_lye_jug * *run.pots.lye_jug));
  return filled;
}

}  // namespace brimwright::planning
