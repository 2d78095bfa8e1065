#include "planning/together.h"

#include "planning/batch_limits.h"
#include "planning/batch_sums.h"
#include "planning/batches.h"
#include "planning/batching.h"
#include "planning/mixtures.h"
#include "planning/one_base.h"
#include "planning/plan.h"
#include "planning/plan_cautions.h"
#include "planning/weighing_part.h"

#include <algorithm>
#include <map>
#include <optional>
#include <string>
#include <utility>

namespace brimwright::planning {
namespace {

using Lines = std::vector<TogetherLine>;

/// Mixes bases on paper, each mixture once.
class Mixing {
 public:
  explicit Mixing(const Lines& lines) : lines_(lines), first_(lines.front()) {}

  /// Base poured for one cast.
  Mass each(std::size_t line) const {
    const TogetherLine& its = lines_[line];
    return its.measured.pour.batter.mass_each * (1 + its.run.pour.losses.overpour.of_one());
  }

  /// What a line takes of a batch that makes so many casts of it, one at least.
  Mass takes(std::size_t line, std::int64_t casts) const {
    const Pour& pour = lines_[line].run.pour;
    const Mass in_jugs = pour.layers.empty() ? Mass{} : pour.losses.jugs;
    return static_cast<double>(casts) * each(line) + pour.losses.test_piece + in_jugs;
  }

  /// What stays in the pot and in the jug of all that is poured plain, the most that one of its
  /// lines says.
  Mass left_behind(const Mixture& mixture) const {
    Mass in_jug;
    for (std::size_t i = 0; i < lines_.size(); ++i)
      if (mixture[i] > 0 && lines_[i].run.pour.layers.empty())
        in_jug = std::max(in_jug, lines_[i].run.pour.losses.jugs);
    return first_.run.pour.losses.pot + in_jug;
  }

  Mass taken(const Mixture& mixture) const {
    Mass sum;
    for (std::size_t i = 0; i < lines_.size(); ++i)
      if (mixture[i] > 0) sum += takes(i, mixture[i]);
    return sum;
  }
  Mass needs(const Mixture& mixture) const { return taken(mixture) + left_behind(mixture); }

  Mass in_pieces(const Mixture& mixture) const {
    Mass sum;
    for (std::size_t i = 0; i < lines_.size(); ++i)
      sum += static_cast<double>(mixture[i]) * lines_[i].measured.pour.batter.mass_each;
    return sum;
  }

  const Weighing& weighed(const Mixture& mixture) {
    const auto known = weighings_.find(mixture);
    if (known != weighings_.end()) return known->second;
    return weighings_.emplace(mixture, weighed_for(needs(mixture))).first->second;
  }

  /// What cannot be weighed fills nothing.
  bool is_within(const Mixture& mixture) { return is_wished(mixture) && !overfills(mixture); }
  bool is_sound(const Mixture& mixture) {
    return is_wished(mixture) && is_weighable(mixture) && !overfills(mixture);
  }

  /// Base poured of the largest batch for pot and jug, nearly.
  Mass most_poured() {
    const Pots& pots = first_.run.pots;
    Mass all;
    for (std::size_t i = 0; i < lines_.size(); ++i)
      all += static_cast<double>(lines_[i].sell) * 2 * each(i);
    if (!pots.holds && !pots.lye_jug) return all;
    Mass low, high = all;
    for (int i = 0; i < 40; ++i) {
      const Mass middle = 0.5 * (low + high);
      (filled(middle) <= 1 ? low : high) = middle;
    }
    return high;
  }

 private:
  Weighing weighed_for(Mass needs) const {
    return trial_weighing_of(first_.run.pour.formula, first_.measured.pour.batter.per_fat, needs,
                             first_.run.scales);
  }

  /// No batch is larger than that of a line's own wish.
  bool is_wished(const Mixture& mixture) const {
    Mass poured;
    for (std::size_t i = 0; i < lines_.size(); ++i)
      poured += static_cast<double>(mixture[i]) * each(i);
    for (std::size_t i = 0; i < lines_.size(); ++i) {
      const auto wish = wished_casts(i);
      if (mixture[i] > 0 && wish && poured > static_cast<double>(*wish) * each(i) * (1 + 1e-9))
        return false;
    }
    return true;
  }
  std::optional<std::int64_t> wished_casts(std::size_t line) const {
    const BatchWish& wish = lines_[line].run.batch;
    if (wish.pieces) return *wish.pieces / pieces_in_a_cast(lines_[line].measured);
    return wish.casts;
  }

  bool is_weighable(const Mixture& mixture) {
    try {
      weighed(mixture);
      return true;
    } catch (const UserError&) {
      return false;
    }
  }
  bool overfills(const Mixture& mixture) {
    try {
      return filled_by(first_.run, weighed(mixture), density()) > 1 + 1e-9;
    } catch (const UserError&) {
      return false;
    }
  }
  double filled(Mass poured) const {
    try {
      return filled_by(first_.run, weighed_for(poured), density());
    } catch (const UserError&) {
      return 0;
    }
  }
  Density density() const { return first_.measured.pour.batter.density; }

  const Lines& lines_;
  const TogetherLine& first_;
  std::map<Mixture, Weighing> weighings_;
};

/// A line with its own count and limits.
struct Counted {
  Pieces pieces;
  BatchLimits limits;  // that stay its own
};

std::vector<Counted> counts_of(const Lines& lines) {
  std::vector<Counted> all;
  for (const TogetherLine& line : lines) {
    const Pieces pieces = pieces_of(line.run, line.sell, pieces_in_a_cast(line.measured));
    all.push_back({pieces, own_limits_of(line.run, pieces, line.trials)});
  }
  return all;
}

std::vector<MixedLine> mixed_lines(const Lines& lines, const std::vector<Counted>& counts,
                                   const Mixing& mixing) {
  std::vector<MixedLine> all;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    std::size_t mould = 0;  // the first line's that has the same
    while (lines[mould].run.pour.mould.file != lines[i].run.pour.mould.file) ++mould;
    all.push_back({.casts = counts[i].pieces.casts,
                   .mould = mould,
                   .cavities = counts[i].pieces.cavities,
                   .least = counts[i].limits.least,
                   .most = counts[i].limits.most,
                   .fills_moulds = lines[i].run.batch.fills_moulds,
                   .each = mixing.each(i)});
  }
  return all;
}

/// How each line is dealt by itself, or why one cannot be.
struct Apart {
  std::optional<MixedFillings> fillings;
  std::optional<UserError> why_not;
};

Apart dealt_apart(const Lines& lines, const std::vector<Counted>& counts,
                  const std::vector<MixedLine>& mixed) {
  std::vector<std::vector<std::vector<std::int64_t>>> all;
  try {
    for (std::size_t i = 0; i < lines.size(); ++i) {
      const auto& [run, measured, trials, sell, where] = lines[i];
      const Pieces& pieces = counts[i].pieces;
      all.push_back(dealt_within(run, pieces, limits_of(run, pieces, trials)));
      for (const auto& filling : all.back())
        for (const std::int64_t casts : filling) trials.base(casts);
    }
  } catch (const UserError& error) {
    return {std::nullopt, error};
  }
  return {one_by_one(mixed, all), std::nullopt};
}

MixedFillings fillings_of(const Lines& lines, const std::vector<Counted>& counts, Mixing& mixing) {
  const auto mixed = mixed_lines(lines, counts, mixing);
  const Apart apart = dealt_apart(lines, counts, mixed);
  const MixtureTests tests{
      .needs = [&](const Mixture& mixture) { return mixing.needs(mixture); },
      .is_within = [&](const Mixture& mixture) { return mixing.is_within(mixture); },
      .is_sound = [&](const Mixture& mixture) { return mixing.is_sound(mixture); },
      .most = mixing.most_poured()};
  auto fillings = dealt_together(mixed, tests, apart.fillings);
  if (fillings) return std::move(*fillings);
  if (apart.why_not) throw UserError(*apart.why_not);
  throw UserError(lines.front().where,
                  "cannot be poured together within what pot, lye jug, scales and bowls allow",
                  "leave \"together\" out, or ask for other numbers of pieces");
}

/// Different mixtures, the largest first, each with the numbers of its batches in the order of
/// making.
std::vector<std::pair<Mixture, std::vector<std::int64_t>>> numbered(const MixedFillings& fillings,
                                                                    const Mixing& mixing) {
  std::map<Mixture, std::vector<std::int64_t>> numbers;
  std::int64_t number = 0;
  for (const auto& filling : fillings)
    for (const Mixture& mixture : filling) numbers[mixture].push_back(++number);
  std::vector<std::pair<Mixture, std::vector<std::int64_t>>> all(numbers.begin(), numbers.end());
  std::stable_sort(all.begin(), all.end(), [&](const auto& a, const auto& b) {
    const Mass one = mixing.taken(a.first), other = mixing.taken(b.first);
    if (one < other || other < one) return other < one;
    return a.second.front() < b.second.front();
  });
  return all;
}

/// A line's batch while the others are not known yet.
struct LineBatch {
  Batch batch;
  std::size_t of_shared;  // batch of the base
};

class Making {
 public:
  Making(const Lines& lines, const std::vector<Counted>& counts, const MixedFillings& fillings,
         Mixing& mixing)
      : lines_(lines),
        counts_(counts),
        fillings_(fillings),
        mixing_(mixing),
        own_(lines.size()),
        run_(shared_base(lines)) {}

  Together together() {
    for (const auto& [mixture, numbers] : numbered(fillings_, mixing_)) mix(mixture, numbers);
    number_own();
    for (std::size_t i = 0; i < lines_.size(); ++i) plan_line(i);
    plan_base();
    return {std::move(run_), std::move(plan_), std::move(batches_), std::move(planned_)};
  }

 private:
  void mix(const Mixture& mixture, const std::vector<std::int64_t>& numbers) {
    const TogetherLine& first = lines_.front();
    const BaseOfBatch base = told_base(mixing_.weighed(mixture), run_, first.measured);
    Batch batch;
    batch.numbers = numbers;
    auto& batter = batch.pour.batter;
    batter.density = first.measured.pour.batter.density;
    batter.density_computed = first.measured.pour.batter.density_computed;
    batter.per_fat = first.measured.pour.batter.per_fat;
    batter.in_pieces = mixing_.in_pieces(mixture);
    batter.lost = base.weighing.batter - batter.in_pieces;
    batter.weighing = base.weighing;
    batter.heat = base.heat;
    TogetherBatch shared{.parts = {}, .left_behind = mixing_.left_behind(mixture)};
    for (std::size_t i = 0; i < lines_.size(); ++i) {
      if (mixture[i] == 0) continue;
      const Mass takes = mixing_.takes(i, mixture[i]);
      shared.parts.push_back(
          {.line = i, .batch = 0, .takes = takes, .of_batch = takes / mixing_.taken(mixture)});
      own_[i].push_back(
          {own_batch(i, mixture[i], base, shared.parts.back().of_batch), batches_.size()});
      batch.casts += mixture[i];
      batch.pieces += own_[i].back().batch.pieces;
    }
    batches_.push_back(std::move(shared));
    plan_.batches.push_back(std::move(batch));
  }

  Batch own_batch(std::size_t line, std::int64_t casts, const BaseOfBatch& base, double part) {
    const auto& [run, measured, trials, sell, where] = lines_[line];
    BaseOfBatch own{part_of(base.weighing, part), base.heat};
    own.heat.remarks.clear();  // of the lye that is made for all
    Batch batch = batch_of(run, measured, casts, trials, counts_[line].limits, std::move(own));
    batch.pieces = casts * counts_[line].pieces.per_cast;
    return batch;
  }

  /// A line counts those batches alone that it takes part in.
  void number_own() {
    std::vector<std::size_t> of_number;
    for (std::size_t s = 0; s < plan_.batches.size(); ++s)
      for (const std::int64_t number : plan_.batches[s].numbers) {
        of_number.resize(std::max(of_number.size(), static_cast<std::size_t>(number)));
        of_number[static_cast<std::size_t>(number) - 1] = s;
      }
    for (auto& own : own_) {
      std::int64_t number = 0;
      for (const std::size_t s : of_number)
        for (LineBatch& one : own)
          if (one.of_shared == s) one.batch.numbers.push_back(++number);
      std::stable_sort(own.begin(), own.end(), [](const LineBatch& a, const LineBatch& b) {
        return a.batch.casts > b.batch.casts;
      });
    }
  }

  std::int64_t fillings_with(std::size_t line) const {
    return std::count_if(fillings_.begin(), fillings_.end(), [&](const auto& filling) {
      return std::any_of(filling.begin(), filling.end(),
                         [&](const Mixture& mixture) { return mixture[line] > 0; });
    });
  }

  void plan_line(std::size_t line) {
    const auto& [run, measured, trials, sell, where] = lines_[line];
    Batches batches{
        .count = 0, .different = {}, .limits = counts_[line].limits.of_batch, .around = {}};
    for (auto& [batch, of_shared] : own_[line]) {
      for (TogetherPart& part : batches_[of_shared].parts)
        if (part.line == line) part.batch = batches.different.size();
      batches.count += batch.count();
      batches.different.push_back(std::move(batch));
    }
    Pieces pieces = counts_[line].pieces;
    pieces.fillings = fillings_with(line);
    planned_.push_back(plan_in(std::move(batches), pieces, run, measured, BaseIs::shared));
  }

  void plan_base() {
    plan_.file = run_.file;
    plan_.name = run_.name;
    Pieces& all = plan_.pieces;
    all.fillings = static_cast<std::int64_t>(fillings_.size());
    for (const auto& [pieces, limits] : counts_) {
      all.sell += pieces.sell;
      all.make += pieces.make;
      all.casts += pieces.casts;
      all.cavities += pieces.cavities;
      all.to_stock += pieces.to_stock;
    }
    for (const Batch& batch : plan_.batches) all.batches += batch.count();
    plan_.pour = pour_of(run_, plan_.batches);
    collect_cautions(plan_, run_);
  }

  const Lines& lines_;
  const std::vector<Counted>& counts_;
  const MixedFillings& fillings_;
  Mixing& mixing_;
  std::vector<std::vector<LineBatch>> own_;  // of each line
  Run run_;
  Plan plan_;  // of the base
  std::vector<TogetherBatch> batches_;
  std::vector<Plan> planned_;  // the lines
};

}  // namespace

Together plan_together(const std::vector<TogetherLine>& lines) {
  refuse_other_base(lines);
  const auto counts = counts_of(lines);
  Mixing mixing(lines);
  const MixedFillings fillings = fillings_of(lines, counts, mixing);
  return Making(lines, counts, fillings, mixing).together();
}

}  // namespace brimwright::planning
