#include "geometry/repair/flaw.h"

#include <array>

namespace brimwright::geometry {

std::string_view name_of(Flaw flaw) {
  constexpr std::array<std::string_view, 13> names = {"unshared corners",
                                                      "collapsed facets",
                                                      "duplicate facets",
                                                      "slits",
                                                      "turned facets",
                                                      "scraps",
                                                      "holes",
                                                      "inside out",
                                                      "nested parts",
                                                      "overlapping parts",
                                                      "crossing",
                                                      "open edges",
                                                      "crowded edges"};
  return names[static_cast<std::size_t>(flaw)];
}

}  // namespace brimwright::geometry
