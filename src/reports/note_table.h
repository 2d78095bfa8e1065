#pragma once

#include <array>
#include <string>
#include <vector>

namespace brimwright::reports {

/// Something that is or may be noted, with all that is known of it in words; any but the key may be
/// empty.
struct NoteRow {
  std::string part;  // that it stands under: "Mixing: base"
  std::string key, what, planned, noted;
};

/// Rows under the parts that they are of, no line wider than page_width: a key or a value that is
/// too long for its column has a line of its own. `heads` stand over key, what, planned and noted.
std::string note_table(const std::vector<NoteRow>& rows, const std::array<std::string, 4>& heads);

}  // namespace brimwright::reports
