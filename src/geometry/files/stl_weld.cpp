#include "geometry/files/stl_weld.h"

#include "geometry/files/stl_blocks.h"
#include "geometry/files/stl_file.h"
#include "geometry/surface/large_pages.h"
#include "geometry/surface/place_table.h"

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

}  // namespace

TriangleMesh welded_stl(const std::string& path) {
  StlBlocks file(path);
  TriangleMesh mesh;
  reserve_large(mesh.triangles, file.facets());
  mesh.triangles.resize(file.facets());
  Corners table;
  std::vector<Corner> corners(block_corners);
  std::size_t done = 0;
  for (std::size_t block = 0; block < file.blocks(); ++block) {
    const std::span<const char> facets = file.block(block);
    const std::size_t count = facets.size() / stl_facet_size;
    const std::span<Corner> own = std::span(corners).first(3 * count);
    if (!take_corners(facets, own)) file.refuse_not_finite();
    number(table, own, mesh.triangles[done].data());
    done += count;
  }
  reserve_large(mesh.vertices_mm, table.known().size());
  for (const auto& [x, y, z] : table.known()) mesh.vertices_mm.push_back({x, y, z});
  return mesh;
}

}  // namespace brimwright::geometry
