#include "geometry/files/split_package.h"

#include "complaint.h"
#include "geometry/files/mesh_file.h"
#include "geometry/files/mesh_import.h"
#include "geometry/repair/mesh_checks.h"
#include "geometry/surface/enclosed_volume.h"
#include "mesh_writers.h"
#include "scratch_file.h"
#include "solids.h"

#include <catch2/catch.hpp>

#include <utility>

using namespace brimwright;
using namespace brimwright::geometry;
using namespace brimwright::geometry::test;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinRel;

namespace {

constexpr auto relations =
    "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
    "<Relationship Id=\"rel0\" Target=\"/3D/3dmodel.model\" Type=\"http://schemas.microsoft.com/"
    "3dmanufacturing/2013/01/3dmodel\"/></Relationships>";

/// The root part as slicers write it: assemblies of objects of other parts.
std::string root_xml(const std::string& objects, const std::string& items,
                     const std::string& unit = "millimeter") {
  return "<?xml version=\"1.0\" encoding=\"UTF-8\"?><model unit=\"" + unit +
         "\" xmlns=\"http://schemas.microsoft.com/3dmanufacturing/core/2015/02\" "
         "xmlns:p=\"http://schemas.microsoft.com/3dmanufacturing/production/2015/06\" "
         "requiredextensions=\"p\"><resources>" +
         objects + "</resources><build p:UUID=\"2c7c17d8-22b5-4d84-8835-1976022ea369\">" + items +
         "</build></model>";
}

std::string assembly(int id, const std::string& components) {
  return "<object id=\"" + std::to_string(id) + "\" type=\"model\"><components>" + components +
         "</components></object>";
}

std::string component(const std::string& path, int id, const std::string& transform = "") {
  return "<component " + (path.empty() ? "" : "p:path=\"" + path + "\" ") + "objectid=\"" +
         std::to_string(id) + "\"" + (transform.empty() ? "" : " transform=\"" + transform + "\"") +
         "/>";
}

std::string package(const std::string& root, std::vector<Part> parts) {
  parts.insert(parts.begin(), {{"_rels/.rels", relations}, {"3D/3dmodel.model", root}});
  return zip(parts, Packing::deflated);
}

const TriangleMesh brick = box({0, 0, 0}, {10, 20, 30});
const std::string one = "/3D/Objects/object_1.model", two = "/3D/Objects/object_2.model";
const std::string item7 = "<item objectid=\"7\"/>";

std::string refusal_of(const std::string& bytes) {
  const ScratchFile file("split.3mf", bytes);
  return brimwright::test::complaint_of([&] { read_mesh(file.path(), {}); });
}

}  // namespace

TEST_CASE("a 3MF with its parts in several files is read, each part where it belongs",
          "[geometry][files][split]") {
  // 3MF Production Extension 1.1, chapter 3: one component moved, one doubled along z and mirrored
  // along x, the whole moved up by its item; and an item that names a part itself.
  const std::string root =
      root_xml(assembly(7, component(one, 1, "1 0 0 0 1 0 0 0 1 100 0 0") +
                               component(two, 4, "-1 0 0 0 1 0 0 0 2 0 200 0")),
               "<item objectid=\"7\" transform=\"1 0 0 0 1 0 0 0 1 0 0 5\"/>"
               "<item p:path=\"" +
                   one + "\" objectid=\"1\" transform=\"1 0 0 0 1 0 0 0 1 0 400 0\"/>");
  const std::string more = assembly(4, component("", 1));  // of its own part
  const ScratchFile file(
      "split.3mf",
      package(root, {{"3D/Objects/object_1.model", model_xml(brick, "millimeter")},
                     {"3D/Objects/object_2.model",
                      model_xml(brick, "millimeter", "<item objectid=\"1\"/>", more)}}));
  const MeshFile read = read_mesh(file.path(), {});
  const Box box = bounding_box(read.mesh);
  CHECK(box.low_mm == std::array<double, 3>{-10, 0, 0});
  CHECK(box.high_mm == std::array<double, 3>{110, 420, 65});
  CHECK_THAT(enclosed_volume(checked_solid(read.mesh, "split.3mf").solid) / millilitre,
             WithinRel(6.0 + 12.0 + 6.0, 1e-12));
  REQUIRE(read.remarks.size() == 1);
  CHECK_THAT(read.remarks[0].text, Contains("3 objects"));
}

TEST_CASE("a 3MF of one part is read alike by both readers", "[geometry][files][split]") {
  const std::string build =
      "<item objectid=\"1\" transform=\"-1 0 0 0 1 0 0 0 1 0 0 0\"/>"
      "<item objectid=\"7\" transform=\"0 1 0 -1 0 0 0 0 1 0 300 7\"/>";
  const std::string more = assembly(7, component("", 1, "1 0 0 0 1 0 0 0 3 0 0 5"));
  const std::string bytes =
      three_mf(model_xml(turned({{12, 0}, {18, 20}}, 24), "inch", build, more));
  const ImportedMesh ours = mesh_of_split_package(bytes, "one.3mf");
  const ImportedMesh theirs = import_mesh(bytes, MeshFormat::three_mf, "one.3mf");
  CHECK(ours.objects == theirs.objects);
  CHECK(ours.mesh.triangles.size() == theirs.mesh.triangles.size());
  CHECK_THAT(enclosed_volume(ours.mesh) / cubic_millimetre,
             WithinRel(enclosed_volume(theirs.mesh) / cubic_millimetre, 1e-6));
  const Box a = bounding_box(ours.mesh), b = bounding_box(theirs.mesh);
  for (std::size_t i = 0; i < 3; ++i) {
    CHECK_THAT(a.low_mm[i], Catch::Matchers::WithinAbs(b.low_mm[i], 1e-4));
    CHECK_THAT(a.high_mm[i], Catch::Matchers::WithinAbs(b.high_mm[i], 1e-4));
  }
}

TEST_CASE("3MF packages of several parts made to hurt are refused",
          "[geometry][files][split][hostile]") {
  const std::string part = model_xml(brick, "millimeter");
  const std::vector<Part> good = {{"3D/Objects/object_1.model", part}};
  CHECK(refusal_of(package(root_xml(assembly(7, component(one, 1)), item7), good)) == "");
  std::string doubling, chain;
  for (int id = 8; id < 60; ++id)
    doubling += assembly(id, component("", id - 1) + component("", id - 1));
  for (int id = 8; id < 5000; ++id) chain += assembly(id, component("", id - 1));
  struct Row {
    std::string bytes, says;
  };
  const Row row = GENERATE_COPY(values<Row>({
      {package(root_xml(assembly(7, component("/3D/Objects/none.model", 1)), item7), good),
       "/3d/objects/none.model, which is not in it"},
      {package(root_xml(assembly(7, component(one, 9)), item7), good),
       "object 9, which is not there"},
      {package(root_xml(assembly(7, component("Objects/object_1.model", 1)), item7), good),
       "by no whole path"},
      {package(root_xml(assembly(7, component("/3D/3dmodel.model", 7)), item7), good),
       "within itself"},
      {package(root_xml(assembly(7, component("/3d/3DModel.model", 7)), item7), good),
       "within itself"},
      {package(root_xml(assembly(7, component(one, 1)) + doubling, "<item objectid=\"59\"/>"),
               good),
       "more than 10000 times"},
      {package(root_xml(assembly(7, component(one, 1)) + chain, "<item objectid=\"4999\"/>"), good),
       "more than 64 deep"},
      {package(root_xml(assembly(7, component(one, 7)), item7),
               {{"3D/Objects/object_1.model",
                 root_xml(assembly(7, component("/3D/3dmodel.model", 7)), "")}}),
       "as its standard forbids"},
      {package(root_xml(assembly(7, component(one, 1)), item7),
               {{"3D/Objects/object_1.model", model_xml(brick, "inch")}}),
       "counts in inch in its part"},
      {package(root_xml(assembly(7, component(one, 1)), item7),
               {{"3D/Objects/object_1.model", part.substr(0, part.size() / 2)}}),
       "not a sound 3MF file"},
      {package(root_xml(assembly(7, component(one, 1, "1 0 0 0 1 0 0 0 nan 0 0 0")), item7), good),
       "no proper matrix"},
      {package(root_xml(assembly(7, component(one, 1)), item7),
               {{"3D/Objects/object_1.model", part + std::string(30'000'000, ' ')}}),
       "1000 times"},
  }));
  CHECK_THAT(refusal_of(row.bytes), Contains(row.says));
}

TEST_CASE("a large part placed ten thousand times is refused before the memory is full",
          "[geometry][files][split][hostile]") {
  const TriangleMesh large = refined(refined(refined(refined(ball(20, 12, 24)))));
  std::string components;
  for (int i = 0; i < 9000; ++i) components += component(one, 1);
  const std::string bytes =
      package(root_xml(assembly(7, components), item7),
              {{"3D/Objects/object_1.model", model_xml(large, "millimeter")}});
  CHECK_THAT(refusal_of(bytes), Contains("more than 10 million corners"));
}
