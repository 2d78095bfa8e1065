#pragma once

#include "records/records.h"
#include "remembering_disk.h"

#include <cstddef>
#include <filesystem>
#include <functional>
#include <vector>

namespace brimwright {

/// What acts in a folder asked of the disk, from the records that lay there before the first.
struct AskedOfDisk {
  FilesOnDisk before = {};
  std::vector<DiskAct> disk = {};
  std::vector<std::size_t> acknowledged = {};  // how much was asked before each act was
};

/// Acts on `disk`, and calls `acknowledged` after each act that is.
using WorkOnDisk =
    std::function<void(const RememberingDisk& disk, const std::function<void()>& acknowledged)>;
AskedOfDisk asked_of_disk(const std::filesystem::path& folder, RememberingDisk::Under whom,
                          const WorkOnDisk& work);

/// Looks at the records that a power cut left; the first `certain` acts were acknowledged before.
using LookAtCut = std::function<void(const records::Records& records, std::size_t certain)>;

/// Cuts the power after each of what was asked of the disk, in every way there is of what that
/// leaves. Of all these states each `stride`-th is looked at, which the program itself opens and
/// SQLite finds sound. How many were looked at.
std::size_t check_cuts(const AskedOfDisk& asked, std::size_t stride, const LookAtCut& look);

}  // namespace brimwright
