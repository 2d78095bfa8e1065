#include "geometry/files/text_lines.h"
#include "geometry/files/text_meshes.h"
#include "units/user_error.h"

namespace brimwright::geometry {
namespace {

void expect(TextLines& lines, std::string_view keyword) {
  if (lines.word_anywhere() != keyword) lines.refuse("lacks \"" + std::string(keyword) + "\"");
}

/// After "facet".
void pass_facet(TextLines& lines) {
  expect(lines, "normal");
  for (int i = 0; i < 3; ++i) lines.word_anywhere();  // often not numbers, and not used
  expect(lines, "outer");
  expect(lines, "loop");
  for (int corner = 0; corner < 3; ++corner) {
    expect(lines, "vertex");
    for (int i = 0; i < 3; ++i) lines.number(lines.word_anywhere());
  }
  expect(lines, "endloop");
  expect(lines, "endfacet");
}

}  // namespace

std::size_t polygons_of_stl_text(std::string_view text, const std::string& file) {
  TextLines lines(text, "STL", file);
  std::size_t facets = 0;
  bool within = false;
  for (std::string_view word = lines.word_anywhere(); !word.empty(); word = lines.word_anywhere()) {
    if (word == "facet" && within) {
      pass_facet(lines);
      ++facets;
    } else if (word == (within ? "endsolid" : "solid")) {
      lines.skip_line();
      within = !within;
    } else {
      lines.refuse("has a word in the wrong place");
    }
  }
  if (within) lines.refuse("lacks its last line, \"endsolid\"; it was cut short");
  return facets;
}

}  // namespace brimwright::geometry
