#include "geometry/files/stl_file.h"

#include "units/user_error.h"

#include <bit>
#include <cstdint>
#include <cstring>

namespace brimwright::geometry {
namespace {

constexpr std::size_t header_size = 80;
static_assert(std::endian::native == std::endian::little);

std::uint64_t length_of_facets(std::uint64_t facets) {
  return stl_facets_start + stl_facet_size * facets;
}

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
  if (bytes.size() < stl_facets_start)
    throw UserError({.file = file,
                     .field = "",
                     .problem = "is too short for an STL file",
                     .remedy = "copy or export it again"});
  const std::uint32_t facets = stated_facets(bytes);
  throw UserError({.file = file,
                   .field = "",
                   .problem = "states " + std::to_string(facets) + " facets, which take " +
                              std::to_string(length_of_facets(facets)) + " bytes, but has " +
                              std::to_string(bytes.size()),
                   .remedy = "it was cut short or is no STL file; copy or export it again"});
}

}  // namespace

std::optional<std::uint32_t> facets_of_binary_stl(std::string_view head, std::uint64_t size) {
  if (head.size() < stl_facets_start) return std::nullopt;
  const std::uint32_t facets = stated_facets(head);
  if (size != length_of_facets(facets)) return std::nullopt;
  return facets;
}

void refuse_not_a_number(std::uint64_t facet, const std::string& file) {
  throw UserError({.file = file,
                   .field = "facet " + std::to_string(facet + 1),
                   .problem = "has a corner that is not a number",
                   .remedy = "export it again"});
}

StlKind stl_kind(std::string_view bytes, const std::string& file) {
  if (facets_of_binary_stl(bytes, bytes.size())) return StlKind::binary;
  const std::size_t start = bytes.find_first_not_of(" \t\r\n");
  const bool begins_as_text =
      start != std::string_view::npos && bytes.substr(start).starts_with("solid");
  if (begins_as_text && looks_like_text(bytes)) return StlKind::text;
  refuse_length(bytes, file);
}

}  // namespace brimwright::geometry
