#pragma once

// What the makers of hostile files share.

#include "geometry/files/mesh_file.h"
#include "solids.h"

#include <cstring>
#include <stdexcept>
#include <string>

namespace brimwright::geometry::test {

inline const MeshReading in_mm{.unit = LengthUnit::millimetre};
inline const MeshReading unsaid{};

inline TriangleMesh good() { return box({0, 0, 0}, {60, 40, 25}); }

inline std::string with(std::string bytes, const std::string& what, const std::string& instead) {
  const std::size_t at = bytes.find(what);
  if (at == std::string::npos) throw std::logic_error("no " + what + " to replace");
  return bytes.replace(at, what.size(), instead);
}

inline std::string with_all(std::string bytes, const std::string& what,
                            const std::string& instead) {
  for (std::size_t at = bytes.find(what); at != std::string::npos;
       at = bytes.find(what, at + instead.size())) {
    bytes.replace(at, what.size(), instead);
  }
  return bytes;
}

template <class Number>
std::string with_number(std::string bytes, std::size_t at, Number number) {
  std::memcpy(bytes.data() + at, &number, sizeof number);
  return bytes;
}

inline std::string capitals(std::string text) {
  for (char& c : text) {
    if (c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
  }
  return text;
}

inline std::string utf16(const std::string& text) {
  std::string wide = "\xFF\xFE";
  for (const char c : text) wide += {c, '\0'};
  return wide;
}

inline const char* const byte_order_mark = "\xEF\xBB\xBF";

}  // namespace brimwright::geometry::test
