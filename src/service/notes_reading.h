#pragma once

#include "records/note.h"
#include "service/requests.h"

#include <optional>
#include <string>
#include <vector>

namespace brimwright::service {

/// What is to be noted, as typed and from a file.
struct NotesAsked {
  std::vector<records::Note> changes = {};
  std::vector<std::string> confirmed = {};
  std::optional<std::string> batch_code = {};  // that the file is of
  Place batch_code_at = {};
};

/// Of `request`: each of its `set`, then its file (src/schemas/notes.schema.json).
NotesAsked notes_asked(const NoteRequest& request, const UserTerms& terms);

}  // namespace brimwright::service
