#include "cli/input_file.h"

#include "cli/suggestions.h"
#include "units/user_error.h"

#include <cerrno>
#include <filesystem>

namespace brimwright::cli {
namespace {

/// What reads it refuses a longer one, by its own rule (4 MiB) and in its own words.
constexpr std::size_t enough = (std::size_t{4} << 20) + 1;

std::string read_all(std::istream& in) {
  std::string text(enough, '\0');
  in.read(text.data(), static_cast<std::streamsize>(enough));
  text.resize(static_cast<std::size_t>(in.gcount()));
  return text;
}

void refuse_missing(const std::string& file) {
  std::error_code error;
  if (std::filesystem::exists(std::filesystem::symlink_status(file, error)) ||
      error.value() == EACCES)
    return;
  throw UserError({file, ""}, "there is no such file",
                  meant_file(file, "check the name and the folder"));
}

}  // namespace

std::optional<std::string> taken_from(std::string& file, std::istream* in) {
  if (file != "-") {
    refuse_missing(file);
    return std::nullopt;
  }
  file = standard_input;
  if (in == nullptr) throw UserError({file, ""}, "is not there", "name a file");
  std::string text = read_all(*in);
  if (text.empty())
    throw UserError({file, ""}, "is empty", "send a file's text through a pipe, or name a file");
  return text;
}

}  // namespace brimwright::cli
