#include "sandbox/limited_work.h"

#include "sandbox/helper_process.h"

#include <unistd.h>

#include <array>
#include <filesystem>

namespace brimwright::sandbox {
namespace {

namespace fs = std::filesystem;

struct Helper {
  std::string_view program, job;
};

constexpr std::array<Helper, 3> helpers = {
    {{"brimwright-import", "import"}, {"brimwright-unite", "unite"}, {"brimwright-pdf", "draw"}}};

const Helper& helper_for(Job job) { return helpers[static_cast<std::size_t>(job)]; }

fs::path running_program() {
  std::error_code none;
  return fs::read_symlink("/proc/self/exe", none);
}

/// Beside the running program or in the folder that installing puts it in, and nowhere else: a path
/// of the user's may hold anything. Empty: it is in neither.
std::string path_of(std::string_view program) {
  const fs::path here = running_program().parent_path();
  for (const fs::path& folder : {here, here / BRIMWRIGHT_HELPERS_FROM_PROGRAM}) {
    const std::string path = folder / program;
    if (::access(path.c_str(), X_OK) == 0) return path;
  }
  return {};
}

}  // namespace

WorkReport limited(Job job, std::initializer_list<std::string_view> bytes,
                   const WorkLimits& limits) {
  const Helper& helper = helper_for(job);
  const std::string path = path_of(helper.program);
  if (path.empty()) return {WorkEnd::no_helper};
  return worked_by(path, helper.job, bytes, limits);
}

bool has_helper(Job job) { return !path_of(helper_for(job).program).empty(); }

std::string missing_helper(Job job) {
  return "the helper program " + std::string(helper_for(job).program) +
         ", which is not installed beside " + running_program().string();
}

}  // namespace brimwright::sandbox
