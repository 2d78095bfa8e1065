#pragma once

#include "moulds/library.h"
#include "moulds/mesh_cavity.h"
#include "moulds/mesh_survey.h"
#include "units/question.h"

#include <cstddef>
#include <list>
#include <mutex>
#include <stdexcept>
#include <string>
#include <variant>

namespace brimwright::moulds {

/// The mesh would have to be measured first, which may take long: no mistake of anybody's.
class NotYetMeasured : public std::runtime_error {
 public:
  explicit NotYetMeasured(const std::string& path);
};

/// Meshes that have been measured, or were refused, for as long as their files stay as they were: a
/// file counts as the same while its device, inode, size and times do. The least lately used go
/// first when all together have more than `most_facets`; the last one measured stays.
///
/// May be used by several threads at once; they measure one mesh at a time, so that two large ones
/// do not share the memory, and so that a mesh asked for twice is measured once.
class MeshMemory {
 public:
  /// Four million facets and their curves take some 2 GiB.
  explicit MeshMemory(std::size_t most_facets = 4'000'000) : most_facets_(most_facets) {}

  /// As measured_mesh(). With `only_remembered`, NotYetMeasured instead of measuring.
  MeshCavities measured(const std::string& path, const SurveyWishes& wishes, bool only_remembered);

  std::size_t count() const;

 private:
  using Finding = std::variant<MeshCavities, Question, UserError>;
  struct Known {
    std::string key;
    Finding finding;
  };
  const Finding* found(const std::string& key);
  void keep(const std::string& key, const Finding& finding);

  std::size_t most_facets_;
  mutable std::mutex memory_, measuring_;
  std::list<Known> known_;  // the last used first
};

/// As measured_mesh() of mesh_cavity.h, remembered where the library has a memory.
MeshCavities measured_mesh(const std::string& path, const SurveyWishes& wishes,
                           const Library& library);

}  // namespace brimwright::moulds
