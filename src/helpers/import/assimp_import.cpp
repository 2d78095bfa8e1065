#include "helpers/import/assimp_import.h"

#include <assimp/IOSystem.hpp>
#include <assimp/Importer.hpp>
#include <assimp/MemoryIOWrapper.h>
#include <assimp/importerdesc.h>
#include <assimp/postprocess.h>
#include <assimp/scene.h>

#include <algorithm>
#include <array>
#include <cstdint>
#include <cstring>
#include <string>
#include <utility>

namespace brimwright::helpers {
namespace {

using geometry::ImportedMesh;
using geometry::MeshFormat;
using geometry::TriangleMesh;

/// A world with one file in it.
class OneFile : public Assimp::IOSystem {
 public:
  OneFile(std::string name, std::string_view bytes) : name_(std::move(name)), bytes_(bytes) {}

  bool Exists(const char* name) const override { return name_ == name; }
  char getOsSeparator() const override { return '/'; }
  Assimp::IOStream* Open(const char* name, const char* mode) override {
    if (!Exists(name) || std::strpbrk(mode, "wa+") != nullptr) return nullptr;
    return new Assimp::MemoryIOStream(reinterpret_cast<const std::uint8_t*>(bytes_.data()),
                                      bytes_.size());
  }
  void Close(Assimp::IOStream* stream) override { delete stream; }

 private:
  std::string name_;
  std::string_view bytes_;
};

/// The file's name inside, with the ending by which Assimp knows it.
std::string inner_name(MeshFormat format) {
  constexpr std::array names = {"mesh.stl", "mesh.obj",  "mesh.ply", "mesh.off",
                                "mesh.3mf", "mesh.gltf", "mesh.glb"};
  return names[static_cast<std::size_t>(format)];
}

/// Assimp's own name of the importer: two of them claim .gltf, and only the second reads version 2.
std::string importer_name(MeshFormat format) {
  switch (format) {
    case MeshFormat::stl:
      return "Stereolithography (STL) Importer";
    case MeshFormat::obj:
      return "Wavefront Object Importer";
    case MeshFormat::ply:
      return "Stanford Polygon Library (PLY) Importer";
    case MeshFormat::off:
      return "OFF Importer";
    case MeshFormat::three_mf:
      return "3mf Importer";
    case MeshFormat::gltf:
    case MeshFormat::glb:
      return "glTF2 Importer";
  }
  return {};
}

bool keep_one_importer(Assimp::Importer& importer, MeshFormat format) {
  for (std::size_t i = importer.GetImporterCount(); i-- > 0;) {
    if (importer.GetImporterInfo(i)->mName == importer_name(format)) continue;
    importer.UnregisterLoader(importer.GetImporter(i));
  }
  return importer.GetImporterCount() == 1;
}

using Transform = std::array<std::array<double, 4>, 3>;

Transform combined(const Transform& outer, const aiMatrix4x4& m) {
  const std::array<std::array<double, 4>, 4> inner = {
      {{m.a1, m.a2, m.a3, m.a4}, {m.b1, m.b2, m.b3, m.b4}, {m.c1, m.c2, m.c3, m.c4}, {0, 0, 0, 1}}};
  Transform product{};
  for (std::size_t row = 0; row < 3; ++row) {
    for (std::size_t column = 0; column < 4; ++column) {
      for (std::size_t k = 0; k < 4; ++k) product[row][column] += outer[row][k] * inner[k][column];
    }
  }
  return product;
}

bool mirrors(const Transform& t) {
  return t[0][0] * (t[1][1] * t[2][2] - t[1][2] * t[2][1]) -
             t[0][1] * (t[1][0] * t[2][2] - t[1][2] * t[2][0]) +
             t[0][2] * (t[1][0] * t[2][1] - t[1][1] * t[2][0]) <
         0;
}

void append(const aiMesh& part, const Transform& place, TriangleMesh& mesh) {
  const auto first = static_cast<std::uint32_t>(mesh.vertices_mm.size());
  for (unsigned i = 0; i < part.mNumVertices; ++i) {
    const aiVector3D& v = part.mVertices[i];
    geometry::Point moved{};
    for (std::size_t row = 0; row < 3; ++row) {
      moved[row] = place[row][0] * v.x + place[row][1] * v.y + place[row][2] * v.z + place[row][3];
    }
    mesh.vertices_mm.push_back(moved);
  }
  const bool mirrored = mirrors(place);  // which turns a facet's back to the front
  for (unsigned i = 0; i < part.mNumFaces; ++i) {
    const aiFace& face = part.mFaces[i];
    if (face.mNumIndices != 3) continue;
    std::array<std::uint32_t, 3> corners = {face.mIndices[0], face.mIndices[1], face.mIndices[2]};
    if (mirrored) std::swap(corners[1], corners[2]);
    for (std::uint32_t& corner : corners) corner += first;
    mesh.triangles.push_back(corners);
  }
}

void append_placed(const aiScene& scene, const aiNode& node, const Transform& outer,
                   ImportedMesh& imported) {
  const Transform place = combined(outer, node.mTransformation);
  for (unsigned i = 0; i < node.mNumMeshes; ++i) {
    append(*scene.mMeshes[node.mMeshes[i]], place, imported.mesh);
    ++imported.objects;
  }
  for (unsigned i = 0; i < node.mNumChildren; ++i) {
    append_placed(scene, *node.mChildren[i], place, imported);
  }
}

std::size_t polygons_of(const aiScene& scene) {
  std::size_t polygons = 0;
  for (unsigned i = 0; i < scene.mNumMeshes; ++i) {
    const aiMesh& mesh = *scene.mMeshes[i];
    polygons += static_cast<std::size_t>(
        std::count_if(mesh.mFaces, mesh.mFaces + mesh.mNumFaces,
                      [](const aiFace& face) { return face.mNumIndices > 2; }));
  }
  return polygons;
}

}  // namespace

/// The triangles keep their corners to themselves, as our own weld joins them by place alone:
/// Assimp's keeps corners apart whose normals differ.
std::optional<ImportedMesh> import_by_assimp(std::string_view bytes, MeshFormat format) {
  Assimp::Importer importer;
  if (!keep_one_importer(importer, format)) return std::nullopt;
  importer.SetIOHandler(new OneFile(inner_name(format), bytes));
  importer.SetPropertyInteger(AI_CONFIG_PP_SBP_REMOVE,
                              aiPrimitiveType_POINT | aiPrimitiveType_LINE);
  const aiScene* scene = importer.ReadFile(inner_name(format), 0);
  if (scene == nullptr) return std::nullopt;
  ImportedMesh imported;
  imported.polygons = polygons_of(*scene);
  scene = importer.ApplyPostProcessing(aiProcess_Triangulate | aiProcess_SortByPType);
  if (scene == nullptr || scene->mRootNode == nullptr) {
    imported.polygons = 0;  // nothing but points and lines
    return imported;
  }
  constexpr Transform unmoved = {{{1, 0, 0, 0}, {0, 1, 0, 0}, {0, 0, 1, 0}}};
  append_placed(*scene, *scene->mRootNode, unmoved, imported);
  return imported;
}

}  // namespace brimwright::helpers
