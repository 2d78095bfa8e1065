#pragma once

#include <string>
#include <string_view>

namespace brimwright {

/// Puts `bytes` in the file `path`, so that there is at any moment the old file or the new one,
/// whole: a temporary file beside it, fsync, rename, fsync of the folder.
///
/// A file that was there keeps its permissions; a link is followed and stays a link. UserError
/// naming `path` when the folder is not there or may not be written to, when something other than a
/// file is in the way, or the disk is full; nothing is then left behind.
void write_file(const std::string& path, std::string_view bytes);

}  // namespace brimwright
