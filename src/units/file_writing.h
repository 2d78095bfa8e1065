#pragma once

#include <string>
#include <string_view>

namespace brimwright {

/// Puts `bytes` in the file `path`, so that there is at any moment the old file or the new one,
/// whole: a temporary file beside it, fsync, rename, fsync of the folder. The temporary file has no
/// name until it is whole, where the file system can do that (O_TMPFILE): nothing is left behind
/// even by a power cut. Elsewhere remove_unfinished_files() is for a signal that ends the program.
///
/// A file that was there keeps its permissions; a link is followed and stays a link. UserError
/// naming `path` when the folder is not there or may not be written to, when something other than a
/// file is in the way, or the disk is full; nothing is then left behind.
void write_file(const std::string& path, std::string_view bytes);

}  // namespace brimwright
