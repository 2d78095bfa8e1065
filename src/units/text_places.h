#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace brimwright {

/// Texts of which many are the same: each is kept once, and known by its place.
class TextPlaces {
 public:
  /// Keeps it where it is not there yet.
  std::size_t place_of(std::string_view text);
  std::optional<std::size_t> known(std::string_view text) const;

  std::size_t size() const { return texts_.size(); }
  const std::string& operator[](std::size_t place) const { return texts_[place]; }
  const std::vector<std::string>& texts() const { return texts_; }

 private:
  struct Hash {
    using is_transparent = void;
    std::size_t operator()(std::string_view text) const {
      return std::hash<std::string_view>()(text);
    }
  };

  std::vector<std::string> texts_;
  std::unordered_map<std::string, std::size_t, Hash, std::equal_to<>> places_;
};

}  // namespace brimwright
