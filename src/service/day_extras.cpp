#include "service/day_extras.h"

#include "moulds/mould_file.h"
#include "service/ordered.h"
#include "units/rounding.h"

#include <algorithm>

namespace brimwright::service {
namespace {

struct Owned {
  moulds::Mould mould;
  std::int64_t cavities;
};

std::vector<Owned> owned_moulds(const runs::Studio& studio, const moulds::Library& library) {
  std::vector<Owned> all;
  const auto section = studio.section("moulds_owned");
  if (!section) return all;
  for (const std::string& name : section->keys()) {
    try {
      Owned one{moulds::read_mould(library.resolve(name, section->place(name)), library), 0};
      one.cavities = std::int64_t{one.mould.cavities} * section->whole_number(name, 1, 1000);
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

}  // namespace

std::vector<reports::DaysReport::Extra> extras(const std::vector<DayFile>& files,
                                               const runs::Studio& studio,
                                               const moulds::Library& library) {
  std::vector<reports::DaysReport::Extra> all;
  const auto owned = owned_moulds(studio, library);
  for (const DayFile& file : files)
    for (const DayLine& line : file.lines) {
      if (line.together) continue;  // its base is lost in one pot for several runs
      const DayPart& part = line.parts.front();
      for (const auto& batch : part.plan->batches)
        for (const Owned& one : owned) {
          if (one_name_of(one.mould.file) == one_name_of(part.run->pour.mould.file)) continue;
          const Mass each = one.mould.curve.brimful() * batch.pour.batter.density;
          const std::int64_t filled =
              std::min(one.cavities, whole_down(left_over(*part.run, batch.pour) / each));
          if (filled < 1) continue;
          for (const std::int64_t number : batch.numbers)
            all.push_back({part.run->name, one.mould.name, number, filled});
        }
    }
  return all;
}

}  // namespace brimwright::service
