#pragma once

#include <string>
#include <string_view>

namespace brimwright {

/// Whether `path` is something that is written to and cannot be replaced by a new file: a character
/// device, a pipe, or a file that this program holds open already, such as "/dev/stdout".
bool is_stream(const std::string& path);

/// Writes `bytes` to what `is_stream` names; "/dev/stdout" goes on where standard output stands.
/// UserError naming `path` when it cannot be opened or does not take them all.
void write_stream(const std::string& path, std::string_view bytes);

}  // namespace brimwright
