#include "geometry/stl_weld.h"

#include "geometry/stl_blocks.h"
#include "geometry/stl_file.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <cstring>
#include <limits>
#include <span>
#include <vector>

namespace brimwright::geometry {
namespace {

struct Corner {
  float x, y, z;
  bool operator==(const Corner&) const = default;
};

constexpr std::uint32_t none = std::numeric_limits<std::uint32_t>::max();

std::uint64_t hash_of(const Corner& corner) {
  std::array<std::uint32_t, 3> bits{};
  std::memcpy(bits.data(), &corner, sizeof bits);
  constexpr std::uint64_t golden = 0x9e3779b97f4a7c15;  // 2^64 / golden ratio (Knuth, TAOCP 3, 6.4)
  std::uint64_t hash = (std::uint64_t{bits[0]} << 32 | bits[1]) * golden;
  hash ^= hash >> 29;
  hash = (hash ^ bits[2]) * golden;
  return hash ^ hash >> 32;
}

/// Corners by place: an open hash table that grows, never more than half full.
///
/// Its memory is asked for ahead, a block's corners at a time: one after the other, they would each
/// wait for it.
class CornerTable {
 public:
  static constexpr std::size_t block = 3 * StlBlocks::block_facets;

  CornerTable() : slots_(std::size_t{1} << 16), mask_(slots_.size() - 1) {}

  /// Writes the numbers of `corners`, which get new ones where they have none yet.
  void number(std::span<const Corner> corners, std::uint32_t* numbers) {
    while (2 * (known_.size() + corners.size()) > slots_.size()) grow();
    for (std::size_t i = 0; i < corners.size(); ++i) {
      hash_[i] = hash_of(corners[i]);
      __builtin_prefetch(&slots_[hash_[i] & mask_]);
    }
    for (std::size_t i = 0; i < corners.size(); ++i) {
      const std::uint32_t near = slots_[hash_[i] & mask_].number;
      if (near != none) __builtin_prefetch(&known_[near]);
    }
    for (std::size_t i = 0; i < corners.size(); ++i) numbers[i] = number(corners[i], hash_[i]);
  }

  const std::vector<Corner>& known() const { return known_; }

 private:
  struct Slot {
    std::uint32_t number = none;
    std::uint32_t tag = 0;  // the hash's upper half, which tells most others apart
  };

  std::uint32_t number(const Corner& corner, std::uint64_t hash) {
    const auto tag = static_cast<std::uint32_t>(hash >> 32);
    std::size_t at = hash & mask_;
    while (slots_[at].number != none &&
           (slots_[at].tag != tag || known_[slots_[at].number] != corner)) {
      at = (at + 1) & mask_;
    }
    if (slots_[at].number == none) {
      slots_[at] = {static_cast<std::uint32_t>(known_.size()), tag};
      known_.push_back(corner);
    }
    return slots_[at].number;
  }

  void grow() {
    slots_.assign(4 * slots_.size(), Slot{});
    mask_ = slots_.size() - 1;
    for (std::uint32_t number = 0; number < known_.size(); ++number) {
      const std::uint64_t hash = hash_of(known_[number]);
      std::size_t at = hash & mask_;
      while (slots_[at].number != none) at = (at + 1) & mask_;
      slots_[at] = {number, static_cast<std::uint32_t>(hash >> 32)};
    }
  }

  std::vector<Slot> slots_;
  std::size_t mask_;
  std::vector<Corner> known_;
  std::array<std::uint64_t, block> hash_{};
};

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
  mesh.triangles.resize(file.facets());
  CornerTable table;
  std::vector<Corner> corners(CornerTable::block);
  std::size_t done = 0;
  for (std::size_t block = 0; block < file.blocks(); ++block) {
    const std::span<const char> facets = file.block(block);
    const std::size_t count = facets.size() / stl_facet_size;
    const std::span<Corner> own = std::span(corners).first(3 * count);
    if (!take_corners(facets, own)) file.refuse_not_finite();
    table.number(own, mesh.triangles[done].data());
    done += count;
  }
  mesh.vertices_mm.reserve(table.known().size());
  for (const auto& [x, y, z] : table.known()) mesh.vertices_mm.push_back({x, y, z});
  return mesh;
}

}  // namespace brimwright::geometry
