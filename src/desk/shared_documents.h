#pragma once

#include "desk/request.h"

#include <cstddef>
#include <deque>
#include <mutex>
#include <optional>
#include <string>

namespace brimwright::desk {

/// Documents that a browser opens in a tab of its own, where no header can bring the key: each lies
/// at an address that cannot be guessed. The oldest go when there are more than `most`. May be used
/// by several threads at once.
class SharedDocuments {
 public:
  explicit SharedDocuments(std::size_t most = 8) : most_(most) {}

  /// The path at which it lies from now on. It may bring its own styles, and can run nothing.
  std::string share(HttpAnswer document, const std::string& name);
  bool has(const std::string& path) const;
  /// Nothing if none lies there (any more).
  std::optional<HttpAnswer> at(const std::string& path) const;
  static bool is_path(const std::string& path);

 private:
  struct Shared {
    std::string path;
    HttpAnswer document;
  };

  std::size_t most_;
  mutable std::mutex mutex_;
  std::deque<Shared> shared_;  // the oldest first
};

}  // namespace brimwright::desk
