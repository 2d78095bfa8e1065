#include "sandbox/job_bytes.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <array>
#include <string>
#include <variant>
#include <vector>

namespace brimwright::sandbox {
namespace {

struct Shelf {
  std::string name;
  bool is_full = false;
  std::vector<std::array<double, 3>> places;
  std::vector<std::variant<std::string, int>> things;

  bool operator==(const Shelf&) const = default;
};

template <class Bytes>
void pass(Bytes& bytes, Like<Shelf> auto& shelf) {
  bytes(shelf.name, shelf.is_full, shelf.places, shelf.things);
}

const Shelf shelf{"moulds", true, {{1, 2, 3}, {0.1, -0.0, 1e300}}, {std::string("cup"), 7}};

TEST_CASE("what is sent to a helper comes out as it went in", "[sandbox][law]") {
  CHECK(from_bytes<Shelf>(as_bytes(shelf)) == shelf);
  CHECK(from_bytes<Shelf>(as_bytes(Shelf{})) == Shelf{});
  rc::prop("texts and numbers",
           [](const std::vector<std::string>& texts, const std::vector<std::uint32_t>& numbers) {
             RC_ASSERT(from_bytes<std::vector<std::string>>(as_bytes(texts)) == texts);
             RC_ASSERT(from_bytes<std::vector<std::uint32_t>>(as_bytes(numbers)) == numbers);
           });
}

TEST_CASE("bytes cut short, with something after them, or of chance are told from sound ones",
          "[sandbox][law]") {
  const std::string sound = as_bytes(shelf);
  for (std::size_t size = 0; size < sound.size(); ++size)
    CHECK_THROWS_AS(from_bytes<Shelf>(std::string_view(sound).substr(0, size)), BadBytes);
  CHECK_THROWS_AS(from_bytes<Shelf>(sound + "x"), BadBytes);
  CHECK_THROWS_AS(from_bytes<std::string>(as_bytes(std::uint64_t{1} << 62)), BadBytes);
  CHECK_THROWS_AS(from_bytes<std::vector<double>>(as_bytes(std::uint64_t{1} << 61)), BadBytes);
  CHECK_THROWS_AS((from_bytes<std::variant<int, bool>>(as_bytes(std::uint64_t{2}))), BadBytes);
  CHECK_THROWS_AS(from_bytes<bool>("\x02"), BadBytes);
  rc::prop("no bytes do more than be refused", [](const std::string& chance) {
    try {
      (void)from_bytes<Shelf>(chance);
    } catch (const BadBytes&) {
    }
  });
}

}  // namespace
}  // namespace brimwright::sandbox
