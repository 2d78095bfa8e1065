#pragma once

#include "moulds/library.h"

#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace brimwright::service {

/// A file that a command is asked to write, and by which option.
struct Output {
  std::string option;  // "--picture"
  std::string path;    // as typed
};

/// Refuses a path whose ending does not fit what is written there: "a drawing" goes to ".svg". A
/// device or pipe has no ending. Capitals are no difference.
void check_ending(const Output& output, const std::string& what,
                  const std::vector<std::string>& endings);
/// The ending of `path` in small letters, with its dot; empty if it has none.
std::string ending_of(const std::string& path);

/// Refuses, before the first is written, what cannot be written or would cost a file that is not
/// to be lost: one of `read`, a file of the shipped catalogue, or another output of the same
/// command. Links are followed, names of the same file known as one.
void check_targets(const std::vector<Output>& outputs, const std::vector<std::string>& read,
                   const moulds::Library& library);

/// A whole new file in place of the old; a device, pipe or "/dev/stdout" is written to.
void write_output(const std::string& path, std::string_view bytes);

}  // namespace brimwright::service
