#include "mesh_writers.h"

#include <zlib.h>

#include <charconv>
#include <cstdint>
#include <cstring>

namespace brimwright::geometry::test {
namespace {

template <class T>
void put(std::string& bytes, T value) {
  char raw[sizeof value];
  std::memcpy(raw, &value, sizeof value);
  bytes.append(raw, sizeof value);
}

std::string joined(const std::array<double, 3>& p) {
  return digits(p[0]) + " " + digits(p[1]) + " " + digits(p[2]);
}

std::string base64(const std::string& bytes) {  // RFC 4648
  constexpr char letters[] = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
  std::string text;
  for (std::size_t i = 0; i < bytes.size(); i += 3) {
    std::uint32_t three = 0;
    for (std::size_t k = 0; k < 3; ++k) {
      three = three << 8 | (i + k < bytes.size() ? static_cast<unsigned char>(bytes[i + k]) : 0U);
    }
    for (std::size_t k = 0; k < 4; ++k) {
      text += i + k <= bytes.size() ? letters[three >> (18 - 6 * k) & 63] : '=';
    }
  }
  return text;
}

std::string gltf_buffer(const TriangleMesh& mesh) {
  std::string bytes;
  for (const auto& [x, y, z] : mesh.vertices_mm) {
    for (const double metres : {x / 1000, z / 1000, -y / 1000})
      put(bytes, static_cast<float>(metres));
  }
  for (const auto& corners : mesh.triangles) {
    for (const std::uint32_t corner : corners) put(bytes, corner);
  }
  return bytes;
}

/// glTF 2.0: positions as floats, then indices as 32-bit numbers, in one buffer.
std::string gltf_json(const TriangleMesh& mesh, const std::string& uri) {
  std::array<double, 3> low = {1e9, 1e9, 1e9}, high = {-1e9, -1e9, -1e9};
  for (const auto& [x, y, z] : mesh.vertices_mm) {
    const std::array<double, 3> p = {x / 1000, z / 1000, -y / 1000};
    for (std::size_t i = 0; i < 3; ++i) {
      low[i] = std::min(low[i], p[i]);
      high[i] = std::max(high[i], p[i]);
    }
  }
  const auto list = [](const std::array<double, 3>& p) {
    return "[" + digits(p[0]) + "," + digits(p[1]) + "," + digits(p[2]) + "]";
  };
  const std::size_t points = 12 * mesh.vertices_mm.size(), indices = 12 * mesh.triangles.size();
  return R"({"asset":{"version":"2.0"},"scene":0,"scenes":[{"nodes":[0]}],"nodes":[{"mesh":0}],)"
         R"("meshes":[{"primitives":[{"attributes":{"POSITION":0},"indices":1}]}],"accessors":[)"
         R"({"bufferView":0,"componentType":5126,"count":)" +
         std::to_string(mesh.vertices_mm.size()) + R"(,"type":"VEC3","min":)" + list(low) +
         R"(,"max":)" + list(high) + R"(},{"bufferView":1,"componentType":5125,"count":)" +
         std::to_string(3 * mesh.triangles.size()) +
         R"(,"type":"SCALAR"}],"bufferViews":[{"buffer":0,"byteOffset":0,"byteLength":)" +
         std::to_string(points) + R"(},{"buffer":0,"byteOffset":)" + std::to_string(points) +
         R"(,"byteLength":)" + std::to_string(indices) + R"(}],"buffers":[{"byteLength":)" +
         std::to_string(points + indices) + uri + "}]}";
}

std::string deflated(const std::string& content) {
  std::string packed(compressBound(content.size()) + 64, '\0');
  z_stream stream{};
  deflateInit2(&stream, Z_BEST_COMPRESSION, Z_DEFLATED, -MAX_WBITS, 9, Z_DEFAULT_STRATEGY);
  stream.next_in = reinterpret_cast<Bytef*>(const_cast<char*>(content.data()));
  stream.avail_in = static_cast<uInt>(content.size());
  stream.next_out = reinterpret_cast<Bytef*>(packed.data());
  stream.avail_out = static_cast<uInt>(packed.size());
  deflate(&stream, Z_FINISH);
  packed.resize(stream.total_out);
  deflateEnd(&stream);
  return packed;
}

}  // namespace

std::string digits(double value) {
  char text[32];
  return {text, std::to_chars(text, text + sizeof text, value).ptr};
}

std::string binary_stl(const TriangleMesh& mesh, const std::string& header) {
  std::string bytes = header;
  bytes.resize(80, ' ');
  put(bytes, static_cast<std::uint32_t>(mesh.triangles.size()));
  for (const auto& corners : mesh.triangles) {
    bytes.append(12, '\0');
    for (const std::uint32_t corner : corners) {
      for (const double number : mesh.vertices_mm[corner]) put(bytes, static_cast<float>(number));
    }
    bytes.append(2, '\0');
  }
  return bytes;
}

std::string text_stl(const TriangleMesh& mesh) {
  std::string text = "solid a mesh\n";
  for (const auto& corners : mesh.triangles) {
    text += "  facet normal 0 0 0\n    outer loop\n";
    for (const std::uint32_t corner : corners) {
      text += "      vertex " + joined(mesh.vertices_mm[corner]) + "\n";
    }
    text += "    endloop\n  endfacet\n";
  }
  return text + "endsolid a mesh\n";
}

std::string obj(const TriangleMesh& mesh) {
  std::string text = "# a mesh\nmtllib missing.mtl\no part\n";
  for (const auto& p : mesh.vertices_mm) text += "v " + joined(p) + "\n";
  for (const auto& [a, b, c] : mesh.triangles) {
    text += "f " + std::to_string(a + 1) + " " + std::to_string(b + 1) + " " +
            std::to_string(c + 1) + "\n";
  }
  return text;
}

std::string text_ply(const TriangleMesh& mesh) {
  std::string text = "ply\nformat ascii 1.0\ncomment a mesh\nelement vertex " +
                     std::to_string(mesh.vertices_mm.size()) +
                     "\nproperty float x\nproperty float y\nproperty float z\nelement face " +
                     std::to_string(mesh.triangles.size()) +
                     "\nproperty list uchar int vertex_indices\nend_header\n";
  for (const auto& p : mesh.vertices_mm) text += joined(p) + "\n";
  for (const auto& [a, b, c] : mesh.triangles) {
    text += "3 " + std::to_string(a) + " " + std::to_string(b) + " " + std::to_string(c) + "\n";
  }
  return text;
}

std::string binary_ply(const TriangleMesh& mesh) {
  std::string bytes = "ply\nformat binary_little_endian 1.0\nelement vertex " +
                      std::to_string(mesh.vertices_mm.size()) +
                      "\nproperty double x\nproperty double y\nproperty double z\nelement face " +
                      std::to_string(mesh.triangles.size()) +
                      "\nproperty list uchar int vertex_indices\nend_header\n";
  for (const auto& p : mesh.vertices_mm) {
    for (const double number : p) put(bytes, number);
  }
  for (const auto& corners : mesh.triangles) {
    bytes += '\3';
    for (const std::uint32_t corner : corners) put(bytes, corner);
  }
  return bytes;
}

std::string off(const TriangleMesh& mesh) {
  std::string text = "OFF\n" + std::to_string(mesh.vertices_mm.size()) + " " +
                     std::to_string(mesh.triangles.size()) + " 0\n";
  for (const auto& p : mesh.vertices_mm) text += joined(p) + "\n";
  for (const auto& [a, b, c] : mesh.triangles) {
    text += "3 " + std::to_string(a) + " " + std::to_string(b) + " " + std::to_string(c) + "\n";
  }
  return text;
}

std::string gltf(const TriangleMesh& mesh) {
  return gltf_json(
      mesh, R"(,"uri":"data:application/octet-stream;base64,)" + base64(gltf_buffer(mesh)) + "\"");
}

std::string glb(const TriangleMesh& mesh) {
  std::string json = gltf_json(mesh, "");
  json.resize((json.size() + 3) / 4 * 4, ' ');
  const std::string buffer = gltf_buffer(mesh);  // a multiple of four bytes already
  std::string bytes = "glTF";
  put(bytes, std::uint32_t{2});
  put(bytes, static_cast<std::uint32_t>(12 + 8 + json.size() + 8 + buffer.size()));
  put(bytes, static_cast<std::uint32_t>(json.size()));
  bytes += "JSON" + json;
  put(bytes, static_cast<std::uint32_t>(buffer.size()));
  bytes += std::string("BIN\0", 4) + buffer;
  return bytes;
}

std::string zip(const std::vector<Part>& parts, Packing packing) {  // PKWARE APPNOTE 6.3
  std::string bytes, directory;
  for (const auto& [name, content] : parts) {
    const std::string packed = packing == Packing::deflated ? deflated(content) : content;
    std::string facts;
    put(facts, std::uint16_t{20});  // version needed
    put(facts, std::uint16_t{0});   // flags
    put(facts, static_cast<std::uint16_t>(packing == Packing::deflated ? 8 : 0));
    put(facts, std::uint32_t{0x00210000});  // 1 January 1980
    put(facts, static_cast<std::uint32_t>(
                   crc32_z(0, reinterpret_cast<const Bytef*>(content.data()), content.size())));
    put(facts, static_cast<std::uint32_t>(packed.size()));
    put(facts, static_cast<std::uint32_t>(content.size()));
    put(facts, static_cast<std::uint16_t>(name.size()));
    put(facts, std::uint16_t{0});  // extra field
    directory += "PK\1\2";
    put(directory, std::uint16_t{20});
    directory += facts + std::string(10, '\0');
    put(directory, static_cast<std::uint32_t>(bytes.size()));
    directory += name;
    bytes += "PK\3\4" + facts + name + packed;
  }
  const auto start = static_cast<std::uint32_t>(bytes.size());
  bytes += directory + "PK\5\6" + std::string(4, '\0');
  put(bytes, static_cast<std::uint16_t>(parts.size()));
  put(bytes, static_cast<std::uint16_t>(parts.size()));
  put(bytes, static_cast<std::uint32_t>(directory.size()));
  put(bytes, start);
  put(bytes, std::uint16_t{0});
  return bytes;
}

std::string model_xml(const TriangleMesh& mesh, const std::string& unit, const std::string& build,
                      const std::string& more_objects) {
  std::string xml = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<!-- unit=\"foot\" --><model" +
                    (unit.empty() ? "" : " unit=\"" + unit + "\"") +
                    " xml:lang=\"en-US\" xmlns="
                    "\"http://schemas.microsoft.com/3dmanufacturing/core/2015/02\"><resources>"
                    "<object id=\"1\" type=\"model\"><mesh><vertices>";
  for (const auto& [x, y, z] : mesh.vertices_mm) {
    xml += "<vertex x=\"" + digits(x) + "\" y=\"" + digits(y) + "\" z=\"" + digits(z) + "\"/>";
  }
  xml += "</vertices><triangles>";
  for (const auto& [a, b, c] : mesh.triangles) {
    xml += "<triangle v1=\"" + std::to_string(a) + "\" v2=\"" + std::to_string(b) + "\" v3=\"" +
           std::to_string(c) + "\"/>";
  }
  return xml + "</triangles></mesh></object>" + more_objects + "</resources><build>" + build +
         "</build></model>";
}

std::string three_mf(const std::string& model, Packing packing) {
  return zip({{"[Content_Types].xml",
               "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">"
               "<Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package."
               "relationships+xml\"/><Default Extension=\"model\" ContentType=\"application/vnd."
               "ms-package.3dmanufacturing-3dmodel+xml\"/></Types>"},
              {"_rels/.rels",
               "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/"
               "relationships\"><Relationship Id=\"rel0\" Target=\"/3D/3dmodel.model\" Type=\"http"
               "://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel\"/></Relationships>"},
              {"3D/3dmodel.model", model}},
             packing);
}

}  // namespace brimwright::geometry::test
