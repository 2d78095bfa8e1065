#pragma once

#include "moulds/library.h"
#include "moulds/mesh_survey.h"
#include "moulds/mould.h"
#include "units/fields.h"

#include <optional>
#include <string>

namespace brimwright::moulds {

/// Reads a mould file (schema brimwright.mould/2, or 1) and measures its cavity every way the file
/// gives.
///
/// Where two ways differ by more than 3 %, a caution shows both. Water, where weighed, decides: the
/// curve is scaled by the detail factor. Throws UserError with file and field for anything wrong.
Mould read_mould(const std::string& path, const Library& library);
/// The same of a document that stands for the file it names.
Mould read_mould(const Fields& fields, const Library& library);

/// A mesh on its own as a mould: what `gauge cup.stl` measures. Its cavities are the hollows that
/// hold most together; `found` has all of them. With `cavity`, a number from 1, it is that hollow
/// alone; UserError at "cavity" if there is none of that number. What its remarks advise to say is
/// in `terms`.
Mould mould_of_mesh(const std::string& path, const SurveyWishes& wishes,
                    const UserTerms& terms = plain_terms(), const Library& library = {},
                    const std::optional<std::string>& cavity = {});

}  // namespace brimwright::moulds
