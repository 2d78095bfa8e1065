#pragma once

#include <unistd.h>

#include <cstdio>
#include <filesystem>
#include <fstream>
#include <string>

namespace brimwright::geometry::test {

/// A file with the given bytes, in a folder of its own that goes with it.
class ScratchFile {
 public:
  ScratchFile(const std::string& name, const std::string& bytes) : path_(folder() / name) {
    std::filesystem::create_directories(path_.parent_path());
    std::ofstream(path_, std::ios::binary) << bytes;
  }
  ~ScratchFile() { std::filesystem::remove_all(path_.parent_path()); }
  ScratchFile(const ScratchFile&) = delete;
  ScratchFile& operator=(const ScratchFile&) = delete;

  std::string path() const { return path_.string(); }

 private:
  static std::filesystem::path folder() {
    static int number = 0;
    return std::filesystem::temp_directory_path() /
           ("brimwright-geometry-" + std::to_string(::getpid()) + "-" + std::to_string(++number));
  }
  std::filesystem::path path_;
};

}  // namespace brimwright::geometry::test
