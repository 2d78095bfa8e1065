#include "geometry/surface/large_pages.h"

#include <sys/mman.h>

#include <cstdint>

namespace brimwright::geometry {

void ask_for_large_pages(void* first, std::size_t bytes) {
  constexpr std::uintptr_t page = std::uintptr_t{2} << 20;  // of x86-64, and usual on ARM
  const auto begin = reinterpret_cast<std::uintptr_t>(first);
  const std::uintptr_t start = (begin + page - 1) / page * page;
  const std::uintptr_t end = (begin + bytes) / page * page;
  if (end <= start) return;
  // A refusal costs time alone.
  static_cast<void>(
      ::madvise(static_cast<char*>(first) + (start - begin), end - start, MADV_HUGEPAGE));
}

}  // namespace brimwright::geometry
