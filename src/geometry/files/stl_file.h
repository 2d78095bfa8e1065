#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace brimwright::geometry {

// The layout of a binary STL: 80 bytes of header, the number of facets, and for each facet 12
// floats (normal and three corners) and two spare bytes, little-endian (de facto standard, from
// the 3D Systems StereoLithography Interface Specification, 1989).
inline constexpr std::size_t stl_facets_start = 84;
inline constexpr std::size_t stl_facet_size = 50;
inline constexpr std::size_t stl_corners_start = 12;  // in a facet

/// How many facets a file of `size` bytes holds if it is a binary STL: told by its length and by
/// `head`, its first 84 bytes or all of a shorter file.
std::optional<std::uint32_t> facets_of_binary_stl(std::string_view head, std::uint64_t size);

/// Refuses a facet, counted from 0, that has a corner which is not a number.
[[noreturn]] void refuse_not_a_number(std::uint64_t facet, const std::string& file);

enum class StlKind { binary, text };

/// Told by the length: a binary STL of n facets has 84 + 50 n bytes, whatever its header says (many
/// begin with "solid", as a text does). UserError for a file that is neither, or cut short.
StlKind stl_kind(std::string_view bytes, const std::string& file);

}  // namespace brimwright::geometry
