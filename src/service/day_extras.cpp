#include "service/day_extras.h"

#include "moulds/mould_file.h"
#include "service/ordered.h"
#include "units/rounding.h"

#include <algorithm>
#include <optional>
#include <utility>

namespace brimwright::service {
namespace {

struct Owned {
  moulds::Mould mould;
  std::int64_t count;
  std::optional<std::size_t> known = {};  // of the studio's, where some run fills it
};

std::vector<Owned> owned_moulds(const runs::Studio& studio, const DayWork& work,
                                const moulds::Library& library) {
  std::vector<Owned> all;
  const auto section = studio.section("moulds_owned");
  if (!section) return all;
  for (const std::string& name : section->keys()) {
    try {
      Owned one{moulds::read_mould(library.resolve(name, section->place(name)), library),
                section->whole_number(name, 1, 1000)};
      const auto& cast_in = work.trays.files;
      if (std::find(cast_in.begin(), cast_in.end(), one_name_of(one.mould.file)) != cast_in.end())
        continue;  // decorations are
      const auto known = work.moulds.find(one_name_of(one.mould.file));
      if (known != work.moulds.end()) one.known = known->second;
      all.push_back(std::move(one));
    } catch (const UserError&) {
      continue;  // it is not there, or cannot be read: then nothing is offered of it
    }
  }
  return all;
}

/// Base that is made beyond pieces and planned losses.
Mass left_over(const planning::Run& run, const planning::PourTally& pour) {
  const planning::PourLosses& losses = run.pour.losses;
  const auto& batter = pour.batter;
  const Mass planned = batter.in_pieces * (1 + losses.overpour.of_one()) + losses.pot +
                       losses.jugs + losses.test_piece;
  return batter.weighing.batter - planned;
}
Mass left_over(const planning::Together& together, std::size_t batch) {
  Mass planned = together.batches[batch].left_behind;
  for (const auto& part : together.batches[batch].parts) planned += part.takes;
  return together.plan.batches[batch].pour.batter.weighing.batter - planned;
}

struct LeftOver {
  Mass base;
  Density density;
};
LeftOver left_of(const DayLine& line, std::int64_t number) {
  const planning::Plan& plan = line.together ? line.together->plan : *line.parts.front().plan;
  for (std::size_t b = 0; b < plan.batches.size(); ++b) {
    const auto& batch = plan.batches[b];
    if (std::find(batch.numbers.begin(), batch.numbers.end(), number) == batch.numbers.end())
      continue;
    return {line.together ? left_over(*line.together, b)
                          : left_over(*line.parts.front().run, batch.pour),
            line.parts.front().measured->pour.batter.density};
  }
  return {Mass{}, gram / millilitre};
}

/// Cavities that are filled, from one day to before another.
struct Locked {
  std::size_t owned;
  days::Day from, to;
  std::int64_t cavities;
};

class Offering {
 public:
  Offering(const reports::DaysReport& report, const std::vector<DayFile>& files,
           std::vector<Owned> owned)
      : report_(report), files_(files), owned_(std::move(owned)) {}

  std::vector<reports::DaysReport::Extra> all() {
    std::vector<reports::DaysReport::Extra> all;
    for (const auto& one : report_.schedule.batches) {
      const auto& delivery = report_.deliveries[one.delivery];
      const DayLine& line = files_[delivery.asked].lines[one.line];
      const std::int64_t number = delivery.lines[one.line].batches[one.batch].number;
      const LeftOver left = left_of(line, number);
      for (std::size_t i = 0; i < owned_.size(); ++i) {
        if (is_filled_by(line, owned_[i])) continue;
        const Mass each = owned_[i].mould.curve.brimful() * left.density;
        const std::int64_t filled =
            std::min(free_cavities(i, one.poured, one.unmoulded), whole_down(left.base / each));
        if (filled < 1) continue;
        offered_.push_back({i, one.poured, one.unmoulded, filled});
        all.push_back({line.name(), owned_[i].mould.name, number, filled});
      }
    }
    return all;
  }

 private:
  static bool is_filled_by(const DayLine& line, const Owned& owned) {
    return std::any_of(line.parts.begin(), line.parts.end(), [&](const DayPart& part) {
      return one_name_of(part.run->pour.mould.file) == one_name_of(owned.mould.file);
    });
  }

  /// From `from` to before `to`, of all that she owns.
  std::int64_t free_cavities(std::size_t i, days::Day from, days::Day to) const {
    const Owned& owned = owned_[i];
    std::int64_t moulds = owned.count;
    if (owned.known) moulds -= most_in_use(*owned.known, from, to);
    std::int64_t cavities = moulds * owned.mould.cavities;
    for (const Locked& other : offered_)
      if (other.owned == i && other.from < std::max(to, from + std::chrono::days(1)) &&
          from < std::max(other.to, other.from + std::chrono::days(1)))
        cavities -= other.cavities;
    return std::max<std::int64_t>(0, cavities);
  }

  /// Moulds of that kind that scheduled batches fill, on the day when they are most.
  std::int64_t most_in_use(std::size_t kind, days::Day from, days::Day to) const {
    std::int64_t most = 0;
    for (days::Day day = from; day == from || day < to; day += std::chrono::days(1)) {
      std::int64_t moulds = 0;
      for (const auto& batch : report_.schedule.batches) {
        if (batch.poured > day || (batch.unmoulded <= day && batch.poured != day)) continue;
        const auto& line = report_.deliveries[batch.delivery].lines[batch.line];
        const std::int64_t cavities = report_.studio.moulds[kind].cavities;
        for (const auto& [mould, casts] : line.batches[batch.batch].filled)
          if (mould == kind) moulds += (casts + cavities - 1) / cavities;
      }
      most = std::max(most, moulds);
    }
    return most;
  }

  const reports::DaysReport& report_;
  const std::vector<DayFile>& files_;
  std::vector<Owned> owned_;
  std::vector<Locked> offered_;
};

}  // namespace

std::vector<reports::DaysReport::Extra> extras(const reports::DaysReport& report,
                                               const std::vector<DayFile>& files,
                                               const DayWork& work, const runs::Studio& studio,
                                               const moulds::Library& library) {
  return Offering(report, files, owned_moulds(studio, work, library)).all();
}

}  // namespace brimwright::service
