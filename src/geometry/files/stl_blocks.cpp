#include "geometry/files/stl_blocks.h"

#include "geometry/files/stl_file.h"
#include "units/user_error.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstring>

namespace brimwright::geometry {
namespace {

constexpr std::size_t block_size = StlBlocks::block_facets * stl_facet_size;

/// Smaller files stay in the processor's caches, and copying them takes less than setting up a map.
constexpr std::size_t smallest_mapped = std::size_t{16} << 20;

[[noreturn]] void refuse_not_binary(const std::string& path) {
  stl_kind(bytes_of(InputFile(path)), path);  // refuses what is no STL at all
  throw UserError({.file = path,
                   .field = "",
                   .problem = "is an STL written as text",
                   .remedy = "export it as a binary STL"});
}

bool is_finite(const char* facet) {
  std::array<float, 9> numbers;
  std::memcpy(numbers.data(), facet + stl_corners_start, sizeof numbers);
  return std::all_of(numbers.begin(), numbers.end(), [](float x) { return std::isfinite(x); });
}

}  // namespace

StlBlocks::StlBlocks(const std::string& path) : path_(path), file_(path) {
  std::string head(std::min(file_.size(), stl_facets_start), '\0');
  file_.read(0, head);
  const auto facets = facets_of_binary_stl(head, file_.size());
  if (!facets) refuse_not_binary(path);
  if (*facets == 0)
    throw UserError({.file = path,
                     .field = "",
                     .problem = "holds no facets",
                     .remedy = "export the shape as a solid mesh"});
  facets_ = *facets;
  if (file_.size() >= smallest_mapped) map_ = file_.mapped();
}

std::span<const char> StlBlocks::block(std::size_t number, std::vector<char>& buffer) const {
  const std::size_t at = number * block_size;
  const std::size_t size = std::min(block_size, facets_ * stl_facet_size - at);
  if (map_) return map_->bytes().subspan(stl_facets_start + at, size);
  buffer.resize(block_size);
  const auto bytes = std::span(buffer).first(size);
  file_.read(stl_facets_start + at, bytes);
  return bytes;
}

void StlBlocks::refuse_not_finite() const {
  std::uint64_t facet = 0;
  std::vector<char> buffer;
  for (std::size_t number = 0; number < blocks(); ++number) {
    const std::span<const char> bytes = block(number, buffer);
    for (std::size_t at = 0; at < bytes.size(); at += stl_facet_size, ++facet)
      if (!is_finite(bytes.data() + at)) refuse_not_a_number(facet, path_);
  }
}

}  // namespace brimwright::geometry
