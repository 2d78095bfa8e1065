#pragma once

#include <string>

// Other libraries doing the same with the same file, for the benchmark alone. Each gives the volume
// in cubic millimetres, or 0 where it measures none.
double assimp_import(const std::string& path);
double cgal_read_and_volume(const std::string& path);
double cgal_clip_at_half(const std::string& path);
double vtk_read_and_volume(const std::string& path);
double admesh_read_and_volume(const std::string& path);
