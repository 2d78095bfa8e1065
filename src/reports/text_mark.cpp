#include "reports/text_mark.h"

#include <cstdint>

namespace brimwright::reports {

std::string text_mark(std::string_view text) {
  std::uint64_t hash = 0xcbf29ce484222325;  // FNV-1a, 64 bits: draft-eastlake-fnv, section 5
  for (const char c : text) hash = (hash ^ static_cast<unsigned char>(c)) * 0x100000001b3;
  std::string mark;
  for (int shift = 60; shift >= 0; shift -= 4) mark += "0123456789abcdef"[(hash >> shift) & 15];
  return mark;
}

}  // namespace brimwright::reports
