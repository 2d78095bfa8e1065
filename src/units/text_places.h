#pragma once

#include <cstddef>
#include <deque>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>

namespace brimwright {

/// Texts of which many are the same: each is kept once, and known by its place.
class TextPlaces {
 public:
  TextPlaces() = default;
  TextPlaces(TextPlaces&&) = default;
  TextPlaces& operator=(TextPlaces&&) = default;

  /// Keeps it where it is not there yet.
  std::size_t place_of(std::string_view text);
  std::optional<std::size_t> known(std::string_view text) const;

  std::size_t size() const { return texts_.size(); }
  const std::string& operator[](std::size_t place) const { return texts_[place]; }

 private:
  std::deque<std::string> texts_;  // which stay where they are
  std::unordered_map<std::string_view, std::size_t> places_;
};

}  // namespace brimwright
