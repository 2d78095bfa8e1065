#include "hostile_bytes.h"
#include "hostile_files.h"
#include "mesh_writers.h"

#include <cstdint>

namespace brimwright::geometry::test {

std::vector<HostileFile> hostile_packages() {
  std::vector<HostileFile> files;
  const auto add = [&](const std::string& name, const std::string& bytes, Fate fate,
                       double ml = 60) {
    files.push_back({name + ".3mf", bytes, unsaid, fate, ml});
  };
  const auto build = [&](const std::string& items, const std::string& objects = "") {
    return three_mf(model_xml(good(), "", items, objects));
  };
  const auto object = [](int id, const std::string& components) {
    return "<object id=\"" + std::to_string(id) + "\"><components>" + components +
           "</components></object>";
  };
  const auto component = [](int id) {
    return "<component objectid=\"" + std::to_string(id) + "\"/>";
  };
  const auto item = [](int id) { return "<item objectid=\"" + std::to_string(id) + "\"/>"; };
  add("itself", build(item(2), object(2, component(2))), Fate::refused);
  add("each-other", build(item(2), object(2, component(3)) + object(3, component(2))),
      Fate::refused);
  add("beside-itself", build(item(1) + item(2), object(2, component(2))), Fate::refused);
  add("missing", build(item(7)), Fate::refused);
  add("missing-part", build(item(2), object(2, component(9))), Fate::refused);
  add("missing-beside", build(item(1) + item(7)), Fate::refused);
  add("missing-within", build(item(2), object(2, component(1) + component(9))), Fate::refused);
  add("assembly", build(item(2), object(2, component(1))), Fate::right);
  add("forward", build(item(2), object(2, component(3)) + object(3, component(1))), Fate::right);
  std::string doubling, chain;
  for (int id = 2; id < 34; ++id) doubling += object(id, component(id - 1) + component(id - 1));
  for (int id = 2; id < 5000; ++id) chain += object(id, component(id - 1));
  add("doubling", build(item(33), doubling), Fate::refused);
  add("chain", build(item(4999), chain), Fate::either);
  add("twice", build(item(1), object(1, component(1))), Fate::refused);
  add("unbuilt", build("", ""), Fate::refused);
  add("unused", build(item(1), model_xml(good(), "").substr(0, 0)), Fate::right);
  for (const std::string t :
       {"nan 0 0 0 1 0 0 0 1 0 0 0", "1e38 0 0 0 1 0 0 0 1 0 0 0", "0 0 0 0 0 0 0 0 0 0 0 0",
        "1 0 0 0 1 0 0 0 1 0 0", "1 0 0 0 1 0 0 0 1 0 0 0 0", "1,5 0 0 0 1 0 0 0 1 0 0 0", "x", "",
        "1 0 0 0 1 0 0 0 0 0 0 0", "1 0 0 0 1 0 0 0 inf 0 0 0"}) {
    add("transform-" + std::to_string(files.size()),
        build("<item objectid=\"1\" transform=\"" + t + "\"/>"), Fate::refused);
  }
  add("tripled", build("<item objectid=\"1\" transform=\"3 0 0 0 1 0 0 0 1 7 7 7\"/>"), Fate::right,
      180);
  add("mirrored", build("<item objectid=\"1\" transform=\"-1 0 0 0 1 0 0 0 1 0 0 0\"/>"),
      Fate::right);
  const std::string model = model_xml(good(), "millimeter");
  for (const std::string unit : {"Millimeter", "mm", "parsec", " millimeter", ""}) {
    add("unit-" + unit, three_mf(with(model, "unit=\"millimeter\"", "unit=\"" + unit + "\"")),
        Fate::refused);
  }
  add("unit-twice",
      three_mf(with(model, "unit=\"millimeter\"", "unit=\"inch\" unit=\"millimeter\"")),
      Fate::refused);
  add("inch", three_mf(with(model, "unit=\"millimeter\"", "unit=\"inch\"")), Fate::right,
      60 * 16387.064);
  add("mark", three_mf(byte_order_mark + model), Fate::either);
  add("wide", three_mf(utf16(model)), Fate::either);
  add("laughs",
      three_mf(with(model, "?>",
                    "?><!DOCTYPE model [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;&a;\">]>")),
      Fate::either);
  add("entity",
      three_mf(
          with(model, "?>", "?><!DOCTYPE model [<!ENTITY x SYSTEM \"file:///etc/hostname\">]>")),
      Fate::either);
  add("reference", three_mf(with(model, "x=\"60\"", "x=\"6&#48;\"")), Fate::either);
  add("deep", three_mf(std::string(200'000, '<') + model), Fate::refused);
  std::string nested;
  for (int i = 0; i < 100'000; ++i) nested += "<a>";
  add("nested", three_mf(with(model, "<resources>", "<resources>" + nested)), Fate::refused);
  add("unclosed", three_mf(model.substr(0, model.size() - 30)), Fate::refused);
  add("quoted",
      three_mf(with(model, "<build>", "<!-- <build><item objectid=\"1\"/></build> --><build>")),
      Fate::right);
  // Zip bombs and other odd archives.
  add("spaces", three_mf(model + std::string(400'000'000, ' ')), Fate::refused);
  const std::string good_package = three_mf(model);
  const std::size_t directory = good_package.rfind("PK\1\2");
  for (const std::size_t field : {8U, 10U, 16U, 20U, 24U, 28U, 30U, 42U}) {
    add("field-" + std::to_string(field),
        with_number(good_package, directory + field, std::uint32_t{0xfffffff0}), Fate::refused);
    add("zero-" + std::to_string(field),
        with_number(good_package, directory + field, std::uint16_t{0}), Fate::either);
  }
  const std::size_t local = good_package.rfind("PK\3\4");
  add("local-size", with_number(good_package, local + 22, std::uint32_t{0x7fffffff}), Fate::either);
  add("local-name", with_number(good_package, local + 26, std::uint16_t{0xffff}), Fate::refused);
  add("prefixed", "MZ" + good_package, Fate::refused);
  add("trailing", good_package + "xyz", Fate::refused);
  const std::string relations =
      "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
      "<Relationship Id=\"r\" Target=\"/3D/3dmodel.model\" Type=\"http://schemas.microsoft.com/"
      "3dmanufacturing/2013/01/3dmodel\"/></Relationships>";
  add("no-model", zip({{"_rels/.rels", relations}}, Packing::stored), Fate::refused);
  add("climbing",
      zip({{"_rels/.rels", with(relations, "/3D/3dmodel.model", "../../../../etc/passwd")},
           {"3D/3dmodel.model", model}},
          Packing::stored),
      Fate::refused);
  add("other-model",
      zip({{"_rels/.rels", with(relations, "/3D/3dmodel.model", "/3D/other.model")},
           {"3D/3dmodel.model", model_xml(box({0, 0, 0}, {10, 10, 10}), "")},
           {"3D/other.model", model}},
          Packing::stored),
      Fate::either);
  add("two-models",
      zip({{"_rels/.rels", relations}, {"3D/3dmodel.model", model}, {"3D/3DMODEL.model", model}},
          Packing::stored),
      Fate::refused);
  std::vector<Part> many = {{"_rels/.rels", relations}, {"3D/3dmodel.model", model}};
  for (int i = 0; i < 20'000; ++i) many.push_back({"p" + std::to_string(i), ""});
  add("many-parts", zip(many, Packing::stored), Fate::either);
  return files;
}

std::vector<HostileFile> hostile_scenes() {
  std::vector<HostileFile> files;
  const std::string g = gltf(good());
  const auto add = [&](const std::string& name, const std::string& what, const std::string& instead,
                       Fate fate, double ml = 60) {
    files.push_back({name + ".gltf", with(g, what, instead), unsaid, fate, ml});
  };
  const std::string nodes = "\"nodes\":[{\"mesh\":0}]";
  add("itself", nodes, "\"nodes\":[{\"mesh\":0,\"children\":[0]}]", Fate::refused);
  add("round", nodes, "\"nodes\":[{\"mesh\":0,\"children\":[1]},{\"children\":[0]}]",
      Fate::refused);
  add("two-parents", nodes, "\"nodes\":[{\"children\":[1,1]},{\"mesh\":0}]", Fate::either);
  add("no-child", nodes, "\"nodes\":[{\"mesh\":0,\"children\":[9]}]", Fate::either);
  add("no-mesh", nodes, "\"nodes\":[{\"mesh\":9}]", Fate::refused);
  add("negative-mesh", nodes, "\"nodes\":[{\"mesh\":-1}]", Fate::refused);
  add("twice", "\"scenes\":[{\"nodes\":[0]}]", "\"scenes\":[{\"nodes\":[0,0]}]", Fate::either);
  add("no-scene", "\"scene\":0", "\"scene\":9", Fate::either);
  add("no-nodes", "\"scenes\":[{\"nodes\":[0]}]", "\"scenes\":[{}]", Fate::refused);
  add("beside-scene", nodes, "\"nodes\":[{\"mesh\":0},{\"mesh\":0,\"translation\":[1,0,0]}]",
      Fate::right);
  add("doubled", nodes, "\"nodes\":[{\"mesh\":0,\"scale\":[2,1,1]}]", Fate::right, 120);
  add("mirrored", nodes, "\"nodes\":[{\"mesh\":0,\"scale\":[-1,1,1]}]", Fate::right);
  add("flattened", nodes, "\"nodes\":[{\"mesh\":0,\"scale\":[0,1,1]}]", Fate::refused);
  add("nowhere", nodes, "\"nodes\":[{\"mesh\":0,\"translation\":[1e39,0,0]}]", Fate::refused);
  add("short-matrix", nodes, "\"nodes\":[{\"mesh\":0,\"matrix\":[1,0,0,0]}]", Fate::either);
  add("long-translation", nodes, "\"nodes\":[{\"mesh\":0,\"translation\":[0,0,0,7,7,7,7,7,7,7]}]",
      Fate::either);
  add("worded-scale", nodes, "\"nodes\":[{\"mesh\":0,\"scale\":[\"2\",1,1]}]", Fate::either);
  add("version-1", "\"version\":\"2.0\"", "\"version\":\"1.0\"", Fate::refused);
  add("version-9", "\"version\":\"2.0\"", "\"version\":\"9.0\"", Fate::refused);
  add("no-asset", "\"asset\":{\"version\":\"2.0\"},", "", Fate::refused);
  add("draco", "{\"asset\"", "{\"extensionsRequired\":[\"KHR_draco_mesh_compression\"],\"asset\"",
      Fate::refused);
  add("required", "{\"asset\"", "{\"extensionsRequired\":[\"EXT_meshopt_compression\"],\"asset\"",
      Fate::refused);
  add("points", "\"indices\":1}", "\"indices\":1,\"mode\":0}", Fate::refused);
  add("lines", "\"indices\":1}", "\"indices\":1,\"mode\":1}", Fate::refused);
  add("strip", "\"indices\":1}", "\"indices\":1,\"mode\":5}", Fate::refused);
  add("mode-99", "\"indices\":1}", "\"indices\":1,\"mode\":99}", Fate::refused);
  add("sparse", "\"type\":\"SCALAR\"}",
      "\"type\":\"SCALAR\",\"sparse\":{\"count\":1,\"indices\":{\"bufferView\":1,\"componentType\":"
      "5125},"
      "\"values\":{\"bufferView\":1}}}",
      Fate::either);
  add("sparse-many", "\"type\":\"SCALAR\"}",
      "\"type\":\"SCALAR\",\"sparse\":{\"count\":2000000000,\"indices\":{\"bufferView\":1,"
      "\"componentType\":5125},"
      "\"values\":{\"bufferView\":1}}}",
      Fate::refused);
  add("shorts", "5125", "5123", Fate::refused);
  add("bytes", "5125", "5121", Fate::refused);
  add("halves", "5126", "5123", Fate::refused);
  add("odd-component", "5126", "1", Fate::refused);
  add("vec2", "VEC3", "VEC2", Fate::refused);
  add("mat4", "VEC3", "MAT4", Fate::refused);
  add("no-view", "\"bufferView\":1", "\"bufferView\":7", Fate::refused);
  add("no-buffer", "{\"buffer\":0,\"byteOffset\":96", "{\"buffer\":7,\"byteOffset\":96",
      Fate::refused);
  add("stride", "\"byteLength\":96}", "\"byteLength\":96,\"byteStride\":4}", Fate::refused);
  add("stride-big", "\"byteLength\":96}", "\"byteLength\":96,\"byteStride\":1000000000}",
      Fate::refused);
  add("offset", "\"bufferView\":0,", "\"bufferView\":0,\"byteOffset\":4000000000,", Fate::refused);
  add("no-base64", ";base64,", ",", Fate::refused);
  add("bad-base64", ";base64,A", ";base64,!!!!A", Fate::refused);
  add("normalized", "\"componentType\":5126", "\"normalized\":true,\"componentType\":5126",
      Fate::either);
  files.push_back({"deep.gltf", std::string(200'000, '{'), unsaid, Fate::refused});
  files.push_back(
      {"deep-list.gltf",
       with(g, "{\"asset\"",
            "{\"extras\":" + std::string(200'000, '[') + std::string(200'000, ']') + ",\"asset\""),
       unsaid, Fate::either});
  std::string chain = "\"nodes\":[{\"children\":[1]}";
  for (int i = 1; i < 50'000; ++i) chain += ",{\"children\":[" + std::to_string(i + 1) + "]}";
  add("chain", nodes, chain + ",{\"mesh\":0}]", Fate::either);
  std::string doubling = "\"nodes\":[";
  for (int i = 0; i < 30; ++i) {
    const std::string child = std::to_string(i + 1);
    doubling += "{\"children\":[" + child + "," + child + "]},";
  }
  add("doubling", nodes, doubling + "{\"mesh\":0}]", Fate::refused);
  add("key-twice", "\"scene\":0", "\"scene\":0,\"nodes\":[]", Fate::refused);
  const std::string b = glb(good());
  files.push_back({"not-json.glb", with(b, "JSON", "BIN\n"), unsaid, Fate::refused});
  files.push_back({"short-chunk.glb", with_number(b, 12, std::uint32_t{8}), unsaid, Fate::refused});
  files.push_back({"no-bin.glb", with(b, std::string("BIN\0", 4), "JUNK"), unsaid, Fate::refused});
  return files;
}

std::vector<HostileFile> files_that_point_at(const std::string& folder) {
  std::vector<HostileFile> files;
  const std::string data = "\"uri\":\"data:application/octet-stream;base64,";
  const std::string g = gltf(good());
  const std::size_t start = g.find(data), end = g.find('"', start + data.size());
  for (const std::string& path :
       std::vector<std::string>{"canary.bin", "./canary.bin", "../canary.bin", "canary%2Ebin",
                                "file://" + folder + "/canary.bin", folder + "/canary.bin",
                                "//canary", "http://127.0.0.1/canary.bin"}) {
    files.push_back({"buffer-" + std::to_string(files.size()) + ".gltf",
                     std::string(g).replace(start, end - start, "\"uri\":\"" + path), unsaid,
                     Fate::refused});
    files.push_back({"image-" + std::to_string(files.size()) + ".gltf",
                     with(g, "{\"asset\"",
                          "{\"images\":[{\"uri\":\"" + path +
                              "\"}],\"textures\":[{\"source\":0}],"
                              "\"materials\":[{\"pbrMetallicRoughness\":{\"baseColorTexture\":{"
                              "\"index\":0}}}],\"asset\""),
                     unsaid, Fate::either});
    files.push_back(
        {"library-" + std::to_string(files.size()) + ".obj",
         with(obj(good()), "mtllib missing.mtl", "mtllib " + path + "\nusemtl a\nmap_Kd " + path),
         in_mm, Fate::right});
    files.push_back(
        {"call-" + std::to_string(files.size()) + ".obj",
         obj(good()) + "call " + path + "\nshadow_obj " + path + "\ntrace_obj " + path + "\n",
         in_mm, Fate::either});
    files.push_back({"texture-" + std::to_string(files.size()) + ".ply",
                     with(text_ply(good()), "comment a mesh", "comment TextureFile " + path), in_mm,
                     Fate::right});
    files.push_back({"texture-" + std::to_string(files.size()) + ".3mf",
                     three_mf(with(model_xml(good(), ""), "<resources>",
                                   "<resources><texture2d id=\"5\" path=\"" + path +
                                       "\" contenttype=\"image/png\"/>")),
                     unsaid, Fate::either});
  }
  return files;
}

}  // namespace brimwright::geometry::test
