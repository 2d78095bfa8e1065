#include "geometry/files/mesh_import.h"

#include "sandbox/limited_work.h"
#include "units/user_error.h"

#include <algorithm>
#include <chrono>
#include <optional>

namespace brimwright::geometry {
namespace {

using sandbox::WorkEnd;

/// What the helper sent is as little to be trusted as the file it read.
std::optional<ImportedMesh> mesh_in(const std::string& bytes) try {
  auto imported = sandbox::from_bytes<ImportedMesh>(bytes);
  if (!has_its_corners(imported.mesh)) return std::nullopt;
  return imported;
} catch (const sandbox::BadBytes&) {
  return std::nullopt;
}

sandbox::WorkLimits limits_for(std::size_t file_size) {
  constexpr std::size_t gibibyte = std::size_t{1} << 30;
  constexpr std::size_t megabyte = 1'000'000;
  // 2 GiB on top of the file itself; 5 s, and half a second more for each megabyte above ten, some
  // ten times what a sound text file takes here.
  const std::size_t beyond = std::max(file_size, 10 * megabyte) / megabyte - 10;
  return {.memory_bytes = 2 * gibibyte + file_size,
          .time = std::chrono::milliseconds(5000 + 500 * beyond)};
}

[[noreturn]] void refuse(WorkEnd end, MeshFormat format, const std::string& file) {
  UserError::Parts parts{.file = file, .field = "", .problem = "", .remedy = ""};
  parts.remedy = "export it again, or as a binary STL";
  if (end == WorkEnd::out_of_time) {
    parts.problem = "takes too long to read; it is broken or far too large";
  } else if (end == WorkEnd::out_of_memory) {
    parts.problem = "takes more than 2 GiB of memory to read; it is broken or far too large";
  } else if (end == WorkEnd::not_confined) {
    parts.problem = "cannot be read safely: the system could not sandbox its reader (seccomp)";
    parts.remedy = "save it as a binary STL, which needs none";
  } else if (end == WorkEnd::no_helper) {
    parts.problem = std::string("is ") + (format == MeshFormat::stl ? "text " : "") +
                    name_of(format) + " and cannot be read without " +
                    sandbox::missing_helper(sandbox::Job::import_mesh);
    parts.remedy = "install that, or save the mesh as a binary STL, which needs none";
  } else {
    parts.problem = "is not a sound " + name_of(format) + " file";
    if (format == MeshFormat::gltf)
      parts.remedy = "export it again as one file (.glb), with nothing kept in files beside it";
  }
  throw UserError(parts);
}

}  // namespace

ImportedMesh import_mesh(std::string_view bytes, MeshFormat format, const std::string& file) {
  const sandbox::WorkReport report = sandbox::limited(
      sandbox::Job::import_mesh, {sandbox::as_bytes(format), bytes}, limits_for(bytes.size()));
  if (report.end != WorkEnd::finished) refuse(report.end, format, file);
  auto imported = mesh_in(report.bytes);
  if (!imported) refuse(WorkEnd::broke_down, format, file);
  imported->unfiltered = report.unfiltered;
  return *std::move(imported);
}

}  // namespace brimwright::geometry
