#include "geometry/surface/seeded_hash.h"

#include <sys/random.h>

#include <stdexcept>

namespace brimwright::geometry {
namespace {

std::array<std::uint64_t, 8> drawn() {
  std::array<std::uint64_t, 8> keys{};
  if (::getentropy(keys.data(), sizeof keys) != 0)
    throw std::runtime_error("the system gives no random numbers");
  return keys;
}

}  // namespace

const HashKeys& HashKeys::of_process() {
  static const HashKeys keys(drawn());
  return keys;
}

}  // namespace brimwright::geometry
