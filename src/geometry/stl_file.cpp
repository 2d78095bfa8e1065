#include "geometry/stl_file.h"

#include "units/user_error.h"

#include <bit>
#include <cmath>
#include <cstdint>
#include <cstring>

namespace brimwright::geometry {
namespace {

// The layout of a binary STL: 80 bytes of header, the number of facets, and for each facet 12
// floats (normal and three corners) and two spare bytes, little-endian (de facto standard, from
// the 3D Systems StereoLithography Interface Specification, 1989).
constexpr std::size_t header_size = 80;
constexpr std::size_t facets_start = 84;
constexpr std::size_t facet_size = 50;
constexpr std::size_t corners_start = 12;
static_assert(std::endian::native == std::endian::little);

std::uint64_t length_of_facets(std::uint64_t facets) { return facets_start + facet_size * facets; }

std::uint32_t stated_facets(std::string_view bytes) {
  std::uint32_t facets = 0;
  std::memcpy(&facets, bytes.data() + header_size, sizeof facets);
  return facets;
}

bool looks_like_text(std::string_view bytes) {
  return bytes.find('\0') == std::string_view::npos &&
         bytes.find("facet") != std::string_view::npos;
}

[[noreturn]] void refuse_length(std::string_view bytes, const std::string& file) {
  if (bytes.size() < facets_start) {
    throw UserError({.file = file,
                     .field = "",
                     .problem = "is too short for an STL file",
                     .remedy = "copy or export it again"});
  }
  const std::uint32_t facets = stated_facets(bytes);
  throw UserError({.file = file,
                   .field = "",
                   .problem = "states " + std::to_string(facets) + " facets, which take " +
                              std::to_string(length_of_facets(facets)) + " bytes, but has " +
                              std::to_string(bytes.size()),
                   .remedy = "it was cut short or is no STL file; copy or export it again"});
}

}  // namespace

StlKind stl_kind(std::string_view bytes, const std::string& file) {
  if (bytes.size() >= facets_start && bytes.size() == length_of_facets(stated_facets(bytes))) {
    return StlKind::binary;
  }
  const std::size_t start = bytes.find_first_not_of(" \t\r\n");
  const bool begins_as_text =
      start != std::string_view::npos && bytes.substr(start).starts_with("solid");
  if (begins_as_text && looks_like_text(bytes)) return StlKind::text;
  refuse_length(bytes, file);
}

TriangleMesh binary_stl(std::string_view bytes, const std::string& file) {
  const std::uint32_t facets = stated_facets(bytes);
  TriangleMesh mesh;
  mesh.vertices_mm.resize(std::size_t{3} * facets);
  mesh.triangles.resize(facets);
  const char* corners = bytes.data() + facets_start + corners_start;
  for (std::uint32_t facet = 0; facet < facets; ++facet, corners += facet_size) {
    std::array<float, 9> numbers;
    std::memcpy(numbers.data(), corners, sizeof numbers);
    float nothing = 0;  // stays 0 if all are finite: an infinity or a NaN times 0 is a NaN
    for (const float number : numbers) nothing += number * 0;
    if (nothing != 0) {
      throw UserError({.file = file,
                       .field = "facet " + std::to_string(facet + 1),
                       .problem = "has a corner that is not a number",
                       .remedy = "export it again"});
    }
    const std::uint32_t first = 3 * facet;
    for (std::uint32_t corner = 0; corner < 3; ++corner) {
      mesh.vertices_mm[first + corner] = {numbers[3 * corner], numbers[3 * corner + 1],
                                          numbers[3 * corner + 2]};
    }
    mesh.triangles[facet] = {first, first + 1, first + 2};
  }
  return mesh;
}

std::size_t facets_of_text_stl(std::string_view text, const std::string& file) {
  constexpr std::string_view end_of_facet = "endfacet";
  if (text.find("endsolid") == std::string_view::npos) {
    throw UserError({.file = file,
                     .field = "",
                     .problem = "lacks its last line, \"endsolid\"",
                     .remedy = "it was cut short; copy or export it again"});
  }
  std::size_t facets = 0;
  for (std::size_t at = text.find(end_of_facet); at != std::string_view::npos;
       at = text.find(end_of_facet, at + end_of_facet.size())) {
    ++facets;
  }
  return facets;
}

}  // namespace brimwright::geometry
