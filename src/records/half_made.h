#pragma once

#include <string>

namespace brimwright::records {

/// What the file `path` is called while it is being made beside its place; another name each time.
std::string name_while_made(const std::string& path);

/// Whether a file of that name is one that a program was making, records or a copy of them, when it
/// was stopped: nothing is recorded in it alone.
bool is_half_made(const std::string& name);

}  // namespace brimwright::records
