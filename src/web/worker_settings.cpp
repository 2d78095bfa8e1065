#include "web/worker_settings.h"

#include <unistd.h>

#include <algorithm>

namespace brimwright::web {

std::size_t usual_memory_limit() {
  constexpr std::size_t most = std::size_t{8} << 30;
  const auto pages = ::sysconf(_SC_PHYS_PAGES), page = ::sysconf(_SC_PAGESIZE);
  if (pages <= 0 || page <= 0) return most;
  return std::min(most, static_cast<std::size_t>(pages) * static_cast<std::size_t>(page) / 4 * 3);
}

}  // namespace brimwright::web
