#pragma once

#include <stdexcept>

namespace brimwright::geometry {

/// More facets lie over each other than can be looked through: each plumb line meets thousands.
class TooManyLayers : public std::runtime_error {
 public:
  TooManyLayers() : std::runtime_error("too many facets lie over each other") {}
};

}  // namespace brimwright::geometry
