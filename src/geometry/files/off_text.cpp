#include "geometry/files/text_lines.h"
#include "geometry/files/text_meshes.h"
#include "units/user_error.h"

#include <limits>
#include <string>

namespace brimwright::geometry {
namespace {

constexpr std::size_t most = std::numeric_limits<std::int32_t>::max();

struct Counts {
  std::size_t vertices, faces;
  bool plain;  // corners have three numbers and no more: no colours or normals
};

/// "OFF", then the numbers of vertices, faces and edges (Geomview manual, OFF files).
Counts counts_of(TextLines& lines, std::size_t size) {
  if (!lines.next_line()) lines.refuse("is blank");
  const std::string_view kind = lines.word();
  if (kind != "OFF" && kind != "COFF" && kind != "NOFF" && kind != "CNOFF")
    lines.refuse("does not begin with \"OFF\"");
  const bool plain = kind == "OFF";
  const std::size_t vertices = lines.index(lines.word_anywhere(), most);
  const std::size_t faces = lines.index(lines.word_anywhere(), most);
  lines.skip_line();  // the number of edges, which nobody fills in
  if (vertices > size / (sizeof "0 0 0" - 1) || faces > size / (sizeof "3 0 0 0" - 1))
    lines.refuse("says it holds more than it does; it was cut short or is broken");
  return {vertices, faces, plain};
}

}  // namespace

std::size_t polygons_of_off(std::string_view text, const std::string& file) {
  TextLines lines(text, "OFF", file, '#');
  const Counts counts = counts_of(lines, text.size());
  const auto next = [&] {
    if (!lines.next_line())
      lines.refuse("says it holds more than it does; it was cut short or is broken");
  };
  for (std::size_t vertex = 0; vertex < counts.vertices; ++vertex) {
    next();
    for (int i = 0; i < 3; ++i) lines.number(lines.word());
    if (counts.plain && !lines.word().empty()) lines.refuse("has a corner of more than 3 numbers");
    for (auto word = lines.word(); !word.empty(); word = lines.word()) lines.number(word);
  }
  for (std::size_t face = 0; face < counts.faces; ++face) {
    next();
    const std::size_t corners = lines.index(lines.word(), most);
    if (corners < 3) lines.refuse("has a facet of fewer than three corners");
    for (std::size_t i = 0; i < corners; ++i) lines.index(lines.word(), counts.vertices);
  }
  if (lines.next_line()) lines.refuse("holds more than it says");
  return counts.faces;
}

}  // namespace brimwright::geometry
