#include "records/content_hash.h"

#include <sha2.h>

#include <array>
#include <cstdint>

namespace brimwright::records {

std::string content_hash(std::string_view bytes) {
  std::array<char, SHA256_DIGEST_STRING_LENGTH> digits{};
  SHA256Data(reinterpret_cast<const std::uint8_t*>(bytes.data()), bytes.size(), digits.data());
  return digits.data();
}

}  // namespace brimwright::records
