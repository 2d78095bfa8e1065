#pragma once

#include "moulds/library.h"
#include "service/requests.h"

#include <optional>
#include <ostream>
#include <string>
#include <vector>

namespace brimwright::cli {

/// How standard output is called where a file is to be written.
inline constexpr auto standard_output = "-";

/// Where to write, as typed, by each option of each command.
struct OutputWords {
  std::optional<std::string> write, glb, picture, label, html, pdf, csv, offer, ics, svg, records;
  std::vector<std::string> piece;
};

/// A file that a command is asked to write.
struct Output {
  std::string option;  // "--picture"
  std::string path;    // as typed
  service::FileKind kind;
};

/// The files asked for. UserError at the option for a path whose ending does not fit what is
/// written there; a device or pipe has no ending. Capitals are no difference. A piece is written as
/// its ending says, .svg, .glb or .stl.
std::vector<Output> outputs_of(const OutputWords& words);

/// Whether one of them is called `standard_output`, and so is all that may stand there.
bool is_to_standard_output(const std::vector<Output>& outputs);

std::vector<service::WantedFile> wanted(const std::vector<Output>& outputs);

/// Refuses, before the first is written, what cannot be written or would cost a file that is not
/// to be lost: one of `read`, a file of the shipped catalogue, or another output of the same
/// command. Links are followed, names of the same file known as one.
void check_targets(const std::vector<Output>& outputs, const std::vector<std::string>& read,
                   const moulds::Library& library);

/// Each a whole new file in place of the old; a device, pipe or "/dev/stdout" is written to, and
/// what is called `standard_output` goes to `out`.
void write(const std::vector<service::MadeFile>& files, std::ostream& out);

}  // namespace brimwright::cli
