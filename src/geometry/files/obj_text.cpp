#include "geometry/files/text_lines.h"
#include "geometry/files/text_meshes.h"

#include <algorithm>
#include <cstdint>
#include <string>

namespace brimwright::geometry {
namespace {

/// "v x y z", with a weight of 1 or with colours (Wavefront Advanced Visualizer manual, B1; the
/// colours are common practice).
void pass_vertex(TextLines& lines) {
  for (int i = 0; i < 3; ++i) lines.number(lines.word());
  std::size_t more = 0;
  double weight = 1;
  for (std::string_view word = lines.word(); !word.empty(); word = lines.word()) {
    weight = lines.number(word);
    ++more;
  }
  if (more == 1 && weight != 1) lines.refuse("has a corner with a weight");
}

/// The farthest corner that a polygon names, counted from 1.
std::int64_t pass_polygon(TextLines& lines, std::int64_t vertices) {
  std::size_t corners = 0;
  std::int64_t farthest = 0;
  for (std::string_view word = lines.word(); !word.empty(); word = lines.word()) {
    const auto corner = whole_number(word.substr(0, word.find('/')));
    if (!corner || *corner == 0 || *corner < -vertices)  // below 0 it counts from the last back
      lines.refuse("has a facet with a corner that is not there");
    farthest = std::max(farthest, *corner);
    ++corners;
  }
  if (corners < 3) lines.refuse("has a facet of fewer than three corners");
  return farthest;
}

std::string with_lines_joined(std::string_view text) {
  std::string joined(text);
  for (std::size_t at = joined.find('\\'); at != std::string::npos;
       at = joined.find('\\', at + 1)) {
    const std::size_t end = joined.find_first_not_of(" \r", at + 1);
    if (end != std::string::npos && joined[end] == '\n') joined[at] = joined[end] = ' ';
  }
  return joined;
}

}  // namespace

std::size_t polygons_of_obj(std::string_view text, const std::string& file) {
  if (text.find('\\') != std::string_view::npos) {
    const std::string joined = with_lines_joined(text);
    if (joined.find('\\') == std::string::npos) return polygons_of_obj(joined, file);
  }
  TextLines lines(text, "OBJ", file, '#');
  std::int64_t vertices = 0, farthest = 0;
  std::size_t polygons = 0;
  while (lines.next_line()) {
    const std::string_view keyword = lines.word();
    if (keyword == "v") {
      pass_vertex(lines);
      ++vertices;
    } else if (keyword == "f" || keyword == "fo") {
      farthest = std::max(farthest, pass_polygon(lines, vertices));
      ++polygons;
    }
  }
  if (farthest > vertices)
    lines.refuse("names corner " + std::to_string(farthest) + " of " + std::to_string(vertices));
  if (vertices == 0) lines.refuse("has no corners");
  return polygons;
}

}  // namespace brimwright::geometry
