#pragma once

#include "moulds/mesh_survey.h"

#include <optional>
#include <string>

namespace brimwright::moulds::test {

/// Of a file that counts in millimetres; the role is told where none is said.
inline SurveyWishes in_mm(std::optional<Role> role = {}) {
  SurveyWishes wishes;
  wishes.reading.unit = geometry::LengthUnit::millimetre;
  wishes.role = role;
  return wishes;
}

/// Whether any of its remarks holds `text`.
inline bool says(const MeshSurvey& survey, const std::string& text) {
  for (const Advice& advice : survey.remarks)
    if (advice.text.in(plain_terms()).find(text) != std::string::npos) return true;
  return false;
}

}  // namespace brimwright::moulds::test
