#include "units/text_places.h"

namespace brimwright {

std::size_t TextPlaces::place_of(std::string_view text) {
  if (const auto place = known(text)) return *place;
  const std::size_t place = texts_.size();
  places_.emplace(texts_.emplace_back(text), place);
  return place;
}

std::optional<std::size_t> TextPlaces::known(std::string_view text) const {
  const auto at = places_.find(text);
  if (at == places_.end()) return std::nullopt;
  return at->second;
}

}  // namespace brimwright
