#pragma once

#include <string>

namespace brimwright::service {

/// An empty folder of the system's for what is tried, gone with all in it when this ends.
class PassingFolder {
 public:
  PassingFolder();
  ~PassingFolder();
  PassingFolder(const PassingFolder&) = delete;
  PassingFolder& operator=(const PassingFolder&) = delete;

  const std::string& path() const { return path_; }

 private:
  std::string path_;
};

}  // namespace brimwright::service
