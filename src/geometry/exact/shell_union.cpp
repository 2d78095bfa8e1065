#include "geometry/exact/shell_union.h"

#include "geometry/exact/solid_union.h"
#include "geometry/files/mesh_file.h"
#include "geometry/surface/mesh_error.h"
#include "sandbox/limited_work.h"
#include "units/user_error.h"

#include <algorithm>
#include <bit>
#include <optional>
#include <utility>

namespace brimwright::geometry {
namespace {

using sandbox::WorkEnd;
using Outcome = SolidUnion::Outcome;

/// 2 GiB, and four seconds and a tenth of a millisecond for each facet that is gone through, some
/// eight times what it takes here.
sandbox::WorkLimits corefinement_limits(std::size_t facets) {
  return {.memory_bytes = std::size_t{2} << 30,
          .time = std::chrono::milliseconds(4000 + std::min<std::size_t>(facets / 10, 120'000))};
}

std::optional<SolidUnion> union_in(const std::string& bytes) try {
  auto found = sandbox::from_bytes<SolidUnion>(bytes);
  if (!has_its_corners(found.solid)) return std::nullopt;
  return found;
} catch (const sandbox::BadBytes&) {
  return std::nullopt;
}

std::string reason_for(WorkEnd end, Outcome outcome) {
  if (end == WorkEnd::out_of_time) return "they could not be united in reasonable time";
  if (end == WorkEnd::out_of_memory) return "uniting them took more than 2 GiB of memory";
  if (end == WorkEnd::not_confined)
    return "the system could not sandbox the helper that unites them (seccomp)";
  if (end == WorkEnd::no_helper)
    return "they cannot be united without " + sandbox::missing_helper(sandbox::Job::unite_solids);
  if (end != WorkEnd::finished) return "they could not be united";
  if (outcome == Outcome::crosses_itself) return "one of them crosses itself";
  if (outcome == Outcome::touches_along_an_edge) return "they touch along an edge only";
  return "one of them touches itself";
}

/// How many facets are gone through: all of them at each doubling of the solids' number.
std::size_t facets_to_see(const std::vector<TriangleMesh>& solids) {
  std::size_t facets = 0;
  for (const TriangleMesh& solid : solids) facets += solid.triangles.size();
  return facets * std::bit_width(solids.size() - 1);
}

}  // namespace

UnionBudget::UnionBudget(std::size_t facets)
    : end_(std::chrono::steady_clock::now() +
           corefinement_limits(facets * std::bit_width(facets)).time) {}

std::chrono::milliseconds UnionBudget::left() const {
  const auto left = end_ - std::chrono::steady_clock::now();
  return std::max(std::chrono::milliseconds(0),
                  std::chrono::duration_cast<std::chrono::milliseconds>(left));
}

UnitedSolid united(const std::vector<TriangleMesh>& solids, const UnionBudget& budget,
                   const Point& place_mm, const std::string& file) {
  sandbox::WorkLimits limits = corefinement_limits(facets_to_see(solids));
  limits.time = std::min(limits.time, budget.left());
  const sandbox::WorkReport report =
      sandbox::limited(sandbox::Job::unite_solids, {sandbox::as_bytes(solids)}, limits);
  std::optional<SolidUnion> found;
  if (report.end == WorkEnd::finished) found = union_in(report.bytes);
  if (found && found->outcome == Outcome::united)
    return {std::move(found->solid), found->swallowed, found->swallowed_mm3};
  const WorkEnd end = report.end == WorkEnd::finished && !found ? WorkEnd::broke_down : report.end;
  throw PlacedError(
      {.file = file,
       .field = place_text(place_mm),
       .problem = "has parts that overlap or touch, the first here, and " +
                  reason_for(end, found ? found->outcome : Outcome::united),
       .remedy = "unite the parts into one solid in the modelling program and export it again"},
      place_mm);
}

}  // namespace brimwright::geometry
