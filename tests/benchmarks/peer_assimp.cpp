#include "peers.h"

#include <assimp/Importer.hpp>
#include <assimp/scene.h>

#include <stdexcept>

double assimp_import(const std::string& path) {
  Assimp::Importer importer;
  const aiScene* scene = importer.ReadFile(path, 0);
  if (scene == nullptr) throw std::runtime_error(importer.GetErrorString());
  return 0;
}
