#include "desk/secret.h"

#include <sys/random.h>

#include <array>
#include <cerrno>
#include <stdexcept>

namespace brimwright::desk {

std::string new_token() {
  std::array<unsigned char, 24> bytes{};
  // Up to 256 bytes come whole once the system has gathered its first entropy (getrandom(2)).
  ssize_t got = -1;
  do got = ::getrandom(bytes.data(), bytes.size(), 0);
  while (got < 0 && errno == EINTR);
  if (got != static_cast<ssize_t>(bytes.size()))
    throw std::runtime_error("the system gave no random numbers");
  std::string token;
  for (const unsigned char byte : bytes)
    for (const int half : {byte >> 4, byte & 15}) token += "0123456789abcdef"[half];
  return token;
}

bool is_same_secret(std::string_view a, std::string_view b) {
  if (a.size() != b.size()) return false;
  volatile unsigned char difference = 0;
  for (std::size_t i = 0; i < a.size(); ++i)
    difference = static_cast<unsigned char>(difference | (a[i] ^ b[i]));
  return difference == 0;
}

}  // namespace brimwright::desk
