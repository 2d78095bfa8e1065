#include "peers.h"

#include <admesh/stl.h>

#include <stdexcept>

double admesh_read_and_volume(const std::string& path) {
  stl_file stl;
  std::string name = path;
  stl_open(&stl, name.data());
  if (stl.error != 0) throw std::runtime_error("libadmesh cannot read " + path);
  stl_check_facets_exact(
      &stl);  // its volume needs no neighbours, but its read alone shares nothing
  stl_calculate_volume(&stl);
  const double volume = stl.stats.volume;
  stl_close(&stl);
  return volume;
}
