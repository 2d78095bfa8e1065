#pragma once

#include <filesystem>
#include <string>
#include <vector>

/// What a program took from its start to its end, as the kernel counts it.
struct Spent {
  double milliseconds = 0;  // by the clock
  double peak_mib = 0;      // of memory; 0 where it is not known, being below this process's own
};

/// Runs `program` with these words, its output thrown away. std::runtime_error if it cannot be
/// started or fails.
Spent spent_by(const std::string& program, const std::vector<std::string>& words);

/// std::runtime_error unless all of it could be written.
void write_file(const std::filesystem::path& path, const std::string& bytes);

/// A folder of one's own among the temporary ones, removed with all in it at the end.
class ScratchFolder {
 public:
  explicit ScratchFolder(const std::string& name);
  ~ScratchFolder();
  ScratchFolder(const ScratchFolder&) = delete;
  ScratchFolder& operator=(const ScratchFolder&) = delete;
  const std::filesystem::path& path() const { return path_; }

 private:
  std::filesystem::path path_;
};
