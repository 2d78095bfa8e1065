#pragma once

#include "moulds/library.h"

#include <string>

namespace brimwright::desk {

/// A document that stood in the file `from`, to be kept in `to`: the moulds, formulas and meshes it
/// names (under "mould", "formula" and "file") are named so that they mean the same files there.
///
/// A name stays as it is where it does already. One that is found by no name from `to` stays too:
/// planning will say so. "$schema" goes, because editors read it as a path.
std::string named_from(const std::string& text, const std::string& from, const std::string& to,
                       const moulds::Library& library);

/// The same of a file that is itself to lie at `to`: but for those names it stays to the letter.
/// UserError where a file it names would be found by no name from there.
std::string moved(const std::string& text, const std::string& from, const std::string& to,
                  const moulds::Library& library);

}  // namespace brimwright::desk
