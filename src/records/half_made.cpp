#include "records/half_made.h"

#include <unistd.h>

#include <atomic>
#include <string_view>

namespace brimwright::records {
namespace {

constexpr std::string_view ending = ".new";

}  // namespace

std::string name_while_made(const std::string& path) {
  static std::atomic<int> made = 0;
  return path + "." + std::to_string(::getpid()) + "." + std::to_string(++made) +
         std::string(ending);
}

bool is_half_made(const std::string& name) {
  std::string_view left = name;
  if (!left.ends_with(ending)) return false;
  left.remove_suffix(ending.size());
  for (int numbers = 0; numbers < 2; ++numbers) {
    const auto dot = left.find_last_not_of("0123456789");
    if (dot == left.npos || left[dot] != '.' || dot + 1 == left.size()) return false;
    left = left.substr(0, dot);
  }
  return !left.empty();
}

}  // namespace brimwright::records
