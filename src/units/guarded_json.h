#pragma once

#include <nlohmann/json_fwd.hpp>

#include <cstddef>
#include <string>
#include <string_view>

namespace brimwright {

/// What reading a text took, so that a test can count it: a file made to be slow must not take more
/// than its length allows.
struct JsonWork {
  std::size_t values = 0;       // put in their places
  std::size_t comparisons = 0;  // of two keys
};

/// Parses `text`, refusing what a JSON library lets through: repeated keys, more than 64 levels,
/// more than 200,000 values, numbers beyond a double. UserError names `file`, with line and column
/// where it is not JSON. Takes time by the text's length alone, whatever stands in it: n keys in
/// one object take n log n comparisons. Adds what it took to `work`.
nlohmann::ordered_json parsed_json(std::string_view text, const std::string& file,
                                   JsonWork* work = nullptr);

}  // namespace brimwright
