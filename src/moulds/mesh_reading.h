#pragma once

#include "moulds/library.h"
#include "moulds/mesh_cavity.h"
#include "units/fields.h"
#include "units/question.h"

namespace brimwright::moulds {

/// The mesh that the object under "mesh" of a mould file names, with its unit, role, upright axis
/// and, where its hollows differ, the group of them that is filled. Questions about it stand at the
/// key that answers.
MeshCavities read_mesh_cavities(const Fields& fields, const Library& library);
/// What is said of a mesh, as keys of that object.
UserTerms terms_of_mesh(const Fields& fields);

}  // namespace brimwright::moulds
