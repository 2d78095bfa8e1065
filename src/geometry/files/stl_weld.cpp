#include "geometry/files/stl_weld.h"

#include "geometry/files/stl_blocks.h"
#include "geometry/files/stl_file.h"
#include "geometry/surface/large_pages.h"
#include "geometry/surface/parallel.h"
#include "geometry/surface/place_table.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <cstring>
#include <span>
#include <vector>

namespace brimwright::geometry {
namespace {

using Corners = PlaceTable<float>;
using Corner = Corners::Place;
using Facet = std::array<std::uint32_t, 3>;
constexpr std::size_t block_corners = 3 * StlBlocks::block_facets;

/// Writes the numbers of `corners`, which get new ones where they have none yet.
void number(Corners& table, std::span<const Corner> corners, std::uint32_t* numbers) {
  std::array<std::uint64_t, block_corners> hash;
  table.reserve(corners.size());
  for (std::size_t i = 0; i < corners.size(); ++i) {
    hash[i] = table.hash_of(corners[i]);
    table.prefetch_slot(hash[i]);
  }
  for (std::size_t i = 0; i < corners.size(); ++i) table.prefetch_place(hash[i]);
  for (std::size_t i = 0; i < corners.size(); ++i)
    numbers[i] = table.number_of(corners[i], hash[i]);
}

/// The corners of a block's facets; false if one of them is not a number.
bool take_corners(std::span<const char> facets, std::span<Corner> corners) {
  float nothing = 0;  // stays 0 if all are finite: an infinity or a NaN times 0 is a NaN
  for (std::size_t facet = 0; 3 * facet < corners.size(); ++facet) {
    std::array<float, 9> numbers;
    std::memcpy(numbers.data(), &facets[facet * stl_facet_size + stl_corners_start],
                sizeof numbers);
    for (float& number : numbers) {
      nothing += number * 0;
      number += 0.0F;  // makes 0 of -0
    }
    std::memcpy(&corners[3 * facet], numbers.data(), sizeof numbers);
  }
  return nothing == 0;
}

/// Facets that follow each other, whose corners are numbered as they come in it.
struct Stretch {
  std::size_t first_block = 0, end_block = 0;
  Corners corners;
  std::vector<std::uint32_t> numbers;  // of its corners in the whole
  std::size_t first_new = 0;           // the number of the first corner that no stretch before has
};

/// One after the other for a small file, which threads would not be worth their while for.
std::vector<Stretch> stretches_of(const StlBlocks& file) {
  constexpr std::size_t least_blocks = 32;
  const std::size_t wanted = std::min(things_at_once(), file.blocks() / least_blocks);
  std::vector<Stretch> stretches(std::max<std::size_t>(wanted, 1));
  for (std::size_t i = 0; i < stretches.size(); ++i) {
    stretches[i].first_block = file.blocks() * i / stretches.size();
    stretches[i].end_block = file.blocks() * (i + 1) / stretches.size();
  }
  return stretches;
}

void weld(Stretch& stretch, const StlBlocks& file, Facet* facets) {
  std::vector<Corner> corners(block_corners);
  std::vector<char> buffer;
  for (std::size_t block = stretch.first_block; block < stretch.end_block; ++block) {
    const std::span<const char> bytes = file.block(block, buffer);
    const std::span<Corner> own = std::span(corners).first(3 * (bytes.size() / stl_facet_size));
    if (!take_corners(bytes, own)) file.refuse_not_finite();
    number(stretch.corners, own, facets[block * StlBlocks::block_facets].data());
  }
}

/// Of the corners from `begin` to `end` of a stretch, which of those before it has each first.
void look_up(std::span<Stretch> before, Stretch& stretch, std::size_t begin, std::size_t end) {
  std::array<std::uint64_t, block_corners> hash;
  const std::vector<Corner>& places = stretch.corners.known();
  for (const Stretch& earlier : before) {
    for (std::size_t i = begin; i < end; ++i) {
      hash[i - begin] = earlier.corners.hash_of(places[i]);
      earlier.corners.prefetch_slot(hash[i - begin]);
    }
    for (std::size_t i = begin; i < end; ++i) earlier.corners.prefetch_place(hash[i - begin]);
    for (std::size_t i = begin; i < end; ++i) {
      if (stretch.numbers[i] != Corners::none) continue;
      const std::uint32_t there = earlier.corners.known_number_of(places[i], hash[i - begin]);
      if (there != Corners::none) stretch.numbers[i] = earlier.numbers[there];
    }
  }
}

/// As though all had been numbered one after the other; gives how many corners there are.
std::size_t number_the_whole(std::span<Stretch> stretches) {
  std::size_t corners = 0;
  for (std::size_t s = 0; s < stretches.size(); ++s) {
    Stretch& stretch = stretches[s];
    stretch.numbers.assign(stretch.corners.known().size(), Corners::none);
    if (s > 0)
      in_parallel((stretch.numbers.size() + block_corners - 1) / block_corners,
                  [&](std::size_t part) {
                    look_up(stretches.first(s), stretch, part * block_corners,
                            std::min(stretch.numbers.size(), (part + 1) * block_corners));
                  });
    stretch.first_new = corners;
    for (std::uint32_t& number : stretch.numbers)
      if (number == Corners::none) number = static_cast<std::uint32_t>(corners++);
  }
  return corners;
}

/// Writes the stretch's own corners, and its facets' numbers of all.
void put(const Stretch& stretch, const StlBlocks& file, TriangleMesh& mesh) {
  const std::vector<Corner>& places = stretch.corners.known();
  for (std::size_t i = 0; i < places.size(); ++i)
    if (stretch.numbers[i] >= stretch.first_new)
      mesh.vertices_mm[stretch.numbers[i]] = {places[i][0], places[i][1], places[i][2]};
  if (stretch.first_block == 0) return;
  const std::size_t end =
      std::min<std::size_t>(file.facets(), stretch.end_block * StlBlocks::block_facets);
  for (std::size_t facet = stretch.first_block * StlBlocks::block_facets; facet < end; ++facet)
    for (std::uint32_t& corner : mesh.triangles[facet]) corner = stretch.numbers[corner];
}

}  // namespace

TriangleMesh welded_stl(const std::string& path) {
  const StlBlocks file(path);
  TriangleMesh mesh;
  reserve_large(mesh.triangles, file.facets());
  mesh.triangles.resize(file.facets());
  std::vector<Stretch> stretches = stretches_of(file);
  in_parallel(stretches.size(),
              [&](std::size_t s) { weld(stretches[s], file, mesh.triangles.data()); });
  const std::size_t corners = number_the_whole(stretches);
  reserve_large(mesh.vertices_mm, corners);
  mesh.vertices_mm.resize(corners);
  in_parallel(stretches.size(), [&](std::size_t s) { put(stretches[s], file, mesh); });
  return mesh;
}

}  // namespace brimwright::geometry
