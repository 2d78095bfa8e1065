#include "geometry/repair/mend_holes.h"

#include "geometry/surface/surface_edges.h"
#include "geometry/surface/vectors.h"
#include "units/printing.h"

#include <algorithm>
#include <limits>
#include <string>
#include <utility>

namespace brimwright::geometry {
namespace {

constexpr double most_of_one = 0.01, most_of_all = 0.03;  // our own bounds, of the shell's surface

struct Lid {
  std::vector<std::array<std::uint32_t, 3>> triangles;
  double area_mm2 = 0;
  bool has_middle = false;  // needs the rim's middle as a new corner, which it calls `middle`

  static constexpr std::uint32_t middle = std::numeric_limits<std::uint32_t>::max();
};

/// The lid of least area without new corners, by dynamic programming over stretches of the rim
/// (G. Barequet, M. Sharir, Computer Aided Geometric Design 1995, 12, 207).
class LeastLid {
 public:
  LeastLid(const TriangleMesh& mesh, const std::vector<std::uint32_t>& rim)
      : mesh_(mesh), rim_(rim), size_(rim.size()), area_(size_ * size_, 0), top_(size_ * size_, 0) {
    for (std::size_t span = 2; span < size_; ++span)
      for (std::size_t from = 0; from + span < size_; ++from) choose_top(from, from + span);
  }

  Lid lid() const {
    Lid lid{.triangles = {}, .area_mm2 = area_[size_ - 1]};
    std::vector<std::pair<std::size_t, std::size_t>> open = {{0, size_ - 1}};
    while (!open.empty()) {
      const auto [from, to] = open.back();
      open.pop_back();
      if (to - from < 2) continue;
      const std::size_t top = top_[from * size_ + to];
      lid.triangles.push_back({rim_[from], rim_[top], rim_[to]});
      open.emplace_back(from, top);
      open.emplace_back(top, to);
    }
    return lid;
  }

 private:
  void choose_top(std::size_t from, std::size_t to) {
    double least = std::numeric_limits<double>::max();
    for (std::size_t top = from + 1; top < to; ++top) {
      const double area = area_[from * size_ + top] + area_[top * size_ + to] +
                          geometry::area_mm2(mesh_, {rim_[from], rim_[top], rim_[to]});
      if (area >= least) continue;
      least = area;
      top_[from * size_ + to] = top;
    }
    area_[from * size_ + to] = least;
  }

  const TriangleMesh& mesh_;
  const std::vector<std::uint32_t>& rim_;
  std::size_t size_;
  std::vector<double> area_;
  std::vector<std::size_t> top_;
};

/// A fan about the rim's middle, for rims too long for the least lid.
Lid fan(const TriangleMesh& mesh, const Rim& rim) {
  Lid lid{.triangles = {}, .area_mm2 = 0, .has_middle = true};
  for (std::size_t i = 0; i < rim.corners.size(); ++i) {
    const std::uint32_t here = rim.corners[i], next = rim.corners[(i + 1) % rim.corners.size()];
    lid.triangles.push_back({here, next, Lid::middle});
    lid.area_mm2 +=
        length(doubled_area(mesh.vertices_mm[here], mesh.vertices_mm[next], rim.middle_mm)) / 2;
  }
  return lid;
}

/// Whether a hole of three corners goes on flat from a facet beside it: one facet of a wall is
/// missing.
bool lies_in_a_wall(const TriangleMesh& mesh, const Rim& rim) {
  if (rim.corners.size() != 3) return false;
  const auto& v = mesh.vertices_mm;
  const Vector lid = rim.vector_area_mm2 * 2;
  return std::any_of(rim.beside.begin(), rim.beside.end(), [&](std::uint32_t facet) {
    const auto& [a, b, c] = mesh.triangles[facet];
    const Vector beside = doubled_area(v[a], v[b], v[c]);
    // One part in a million of the cosine, more than coordinates of single precision blur it.
    return dot(lid, beside) >= (1 - 1e-6) * length(lid) * length(beside);
  });
}

std::vector<double> areas_of_shells(const TriangleMesh& mesh, const SurfaceEdges& edges) {
  std::vector<double> area(edges.shells, 0);
  for (std::size_t facet = 0; facet < mesh.triangles.size(); ++facet)
    area[edges.shell[facet]] += area_mm2(mesh, mesh.triangles[facet]);
  return area;
}

/// Leaves away the first, which is the widest, of each shell.
void spare_the_widest(std::vector<Rim>& rims, std::uint32_t shells) {
  std::vector<bool> seen(shells, false);
  std::erase_if(rims, [&](const Rim& rim) {
    const bool first = !seen[rim.shell];
    seen[rim.shell] = true;
    return first;
  });
}

struct Patch {
  Rim rim;
  Lid lid;
  bool in_a_wall;
};

/// `steps` are left for least lids; a rim that needs more gets a fan.
Patch patch_for(const TriangleMesh& mesh, Rim rim, std::size_t& steps) {
  constexpr std::size_t longest = 200;  // steps grow with the cube: a million here
  const bool in_a_wall = lies_in_a_wall(mesh, rim);
  const std::size_t corners = rim.corners.size();
  const std::size_t needed = corners <= longest ? corners * corners * corners / 6 : steps + 1;
  const bool least = needed <= steps;
  if (least) steps -= needed;
  Lid lid = least ? LeastLid(mesh, rim.corners).lid() : fan(mesh, rim);
  return {std::move(rim), std::move(lid), in_a_wall};
}

/// The patches to put on, least hole first.
std::vector<Patch> fitting_patches(const TriangleMesh& mesh, Rims which) {
  const SurfaceEdges edges = surface_edges(mesh);
  const std::vector<double> surface = areas_of_shells(mesh, edges);
  std::vector<Rim> rims = rims_of(mesh);
  if (which == Rims::but_the_widest) spare_the_widest(rims, edges.shells);
  std::vector<double> filled(edges.shells, 0);
  std::vector<Patch> patches;
  std::size_t steps = 300'000'000;  // our own bound: some seconds
  for (auto rim = rims.rbegin(); rim != rims.rend(); ++rim) {
    const double most = most_of_one * surface[rim->shell];
    if (rim->corners.size() < 3 || (rim->area_mm2() > most && !lies_in_a_wall(mesh, *rim)))
      continue;
    Patch patch = patch_for(mesh, std::move(*rim), steps);
    if (!patch.in_a_wall && patch.lid.area_mm2 > most) continue;
    if (!patch.in_a_wall) filled[patch.rim.shell] += patch.lid.area_mm2;
    patches.push_back(std::move(patch));
  }
  std::erase_if(patches, [&](const Patch& patch) {
    return filled[patch.rim.shell] > most_of_all * surface[patch.rim.shell];
  });
  return patches;
}

void put_on(TriangleMesh& mesh, const Patch& patch) {
  const auto middle = static_cast<std::uint32_t>(mesh.vertices_mm.size());
  if (patch.lid.has_middle) mesh.vertices_mm.push_back(patch.rim.middle_mm);
  for (auto corners : patch.lid.triangles) {
    std::replace(corners.begin(), corners.end(), Lid::middle, middle);
    mesh.triangles.push_back(corners);
  }
}

}  // namespace

std::optional<Mend> fill_small_holes(TriangleMesh& mesh, Rims which) {
  Mend mend{.flaw = Flaw::holes, .what = {}, .bound = {}};
  double widest = 0;
  for (const Patch& patch : fitting_patches(mesh, which)) {
    put_on(mesh, patch);
    const double width = patch.rim.width_mm();
    if (mend.count++ == 0) mend.first_mm = patch.rim.middle_mm;
    widest = std::max(widest, width);
    if (!patch.in_a_wall) mend.bound += patch.lid.area_mm2 * width * cubic_millimetre;
  }
  if (mend.count == 0) return std::nullopt;
  mend.what = std::to_string(mend.count) + (mend.count == 1 ? " hole" : " holes") +
              " filled where facets were missing, up to " + trimmed(widest, 2) + " mm across";
  return mend;
}

}  // namespace brimwright::geometry
