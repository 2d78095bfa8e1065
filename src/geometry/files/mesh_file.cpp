#include "geometry/files/mesh_file.h"

#include "geometry/files/input_file.h"
#include "geometry/files/mesh_format.h"
#include "geometry/files/mesh_import.h"
#include "geometry/files/package_unit.h"
#include "geometry/files/split_package.h"
#include "geometry/files/stated_size.h"
#include "geometry/files/stl_file.h"
#include "geometry/files/stl_weld.h"
#include "geometry/files/text_meshes.h"
#include "geometry/surface/enclosed_volume.h"
#include "geometry/surface/parallel.h"
#include "geometry/surface/weld.h"
#include "units/letters.h"
#include "units/printing.h"
#include "units/question.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace brimwright::geometry {
namespace {

/// A mesh in its file's own numbers and axes, with what the file itself or its standard says of
/// them.
struct RawMesh {
  TriangleMesh mesh;
  std::optional<PackageUnit> own_unit;
  Axis own_up = Axis::plus_z;
  std::vector<Remark> remarks;
  bool is_welded = false;
};

[[noreturn]] void refuse(const std::string& file, const std::string& field,
                         const std::string& problem, const std::string& remedy) {
  throw UserError({.file = file, .field = field, .problem = problem, .remedy = remedy});
}

RawMesh raw_of(ImportedMesh imported, std::optional<std::size_t> stated, const std::string& file) {
  if (stated && imported.polygons != *stated)
    refuse(file, "",
           "says it has " + std::to_string(*stated) + " facets, but only " +
               std::to_string(imported.polygons) + " could be read",
           "it was cut short or is broken; copy or export it again");
  drop_unused_vertices(imported.mesh);
  RawMesh raw{.mesh = std::move(imported.mesh), .own_unit = {}, .remarks = {}};
  if (imported.objects > 1)
    raw.remarks.push_back({Severity::note, file + " holds " + std::to_string(imported.objects) +
                                               " objects, measured together"});
  if (imported.unfiltered)
    raw.remarks.push_back({Severity::note, file + " was read with limits on memory and time but "
                                                  "without a filter (seccomp), which this system's "
                                                  "kernel lacks"});
  return raw;
}

/// Text is read several times over, by us and in a child: five times the size of a binary STL, it
/// takes fifty times as long.
bool is_text(MeshFormat format, std::string_view head, std::uint64_t size) {
  switch (format) {
    case MeshFormat::obj:
    case MeshFormat::off:
    case MeshFormat::gltf:
      return true;
    case MeshFormat::ply:
      return head.find("format binary") == std::string_view::npos;
    case MeshFormat::stl:
      return !facets_of_binary_stl(head, size) && head.find("solid") != std::string_view::npos &&
             head.find('\0') == std::string_view::npos;
    case MeshFormat::three_mf:
    case MeshFormat::glb:
      break;
  }
  return false;
}

/// Told by the first few bytes, before the rest is read.
void refuse_long_text(const InputFile& input, MeshFormat format, const std::string& file) {
  constexpr std::size_t mebibyte = std::size_t{1} << 20;
  constexpr std::size_t longest = 128 * mebibyte;  // our own bound: half a million facets of STL
  if (input.size() <= longest) return;
  std::string head(4096, '\0');
  input.read(0, head);
  if (!is_text(format, head, input.size())) return;
  refuse(file, "",
         "is " + std::to_string(input.size() / mebibyte) + " MiB of text, and at most " +
             std::to_string(longest / mebibyte) + " MiB of text are read",
         "export it as a binary STL, which is read up to 1 GiB");
}

/// A binary STL is read in one pass, without ever holding its bytes.
bool is_binary_stl(const InputFile& input) {
  std::string head(std::min(input.size(), stl_facets_start), '\0');
  input.read(0, head);
  return facets_of_binary_stl(head, input.size()).has_value();
}

RawMesh raw_stl(std::string bytes, const std::string& file) {
  stl_kind(bytes, file);  // refuses what is no STL at all
  const std::string text =
      in_small_letters(std::move(bytes));  // Assimp knows its keywords in no other
  const std::size_t facets = polygons_of_stl_text(text, file);
  return raw_of(import_mesh(text, MeshFormat::stl, file), facets, file);
}

/// Takes a byte-order mark off the front of a text, which Assimp would stumble over. A binary STL
/// may begin with anything, and is not read here.
std::string without_mark(std::string bytes) {
  constexpr std::string_view mark = "\xEF\xBB\xBF";
  if (bytes.starts_with(mark)) bytes.erase(0, mark.size());
  return bytes;
}

RawMesh raw_mesh(const InputFile& input, MeshFormat format, const std::string& file) {
  if (format == MeshFormat::stl && is_binary_stl(input))
    return {.mesh = welded_stl(file), .own_unit = {}, .remarks = {}, .is_welded = true};
  std::string bytes = without_mark(bytes_of(input));
  if (format == MeshFormat::stl) return raw_stl(std::move(bytes), file);
  std::optional<PackageUnit> own_unit;
  Axis own_up = Axis::plus_z;
  if (format == MeshFormat::three_mf) own_unit = unit_of_package(bytes, file);
  if (format == MeshFormat::gltf || format == MeshFormat::glb) {
    own_unit = PackageUnit{"meter", 1000};  // glTF 2.0 specification, section 3.4
    own_up = Axis::plus_y;
  }
  const auto stated = stated_polygons(bytes, format, file);
  const bool is_split = own_unit && own_unit->is_split;
  RawMesh raw =
      raw_of(is_split ? mesh_of_split_package(bytes, file) : import_mesh(bytes, format, file),
             stated, file);
  raw.own_unit = own_unit;
  raw.own_up = own_up;
  return raw;
}

void refuse_empty(const TriangleMesh& mesh, const std::string& file) {
  if (mesh.triangles.empty())
    refuse(file, "", "holds no facets", "export the shape as a solid mesh");
}

void refuse_not_finite(const TriangleMesh& mesh, const std::string& file) {
  for (std::size_t i = 0; i < mesh.triangles.size(); ++i) {
    for (const std::uint32_t corner : mesh.triangles[i]) {
      for (const double number : mesh.vertices_mm[corner]) {
        if (std::isfinite(number)) continue;
        refuse(file, "facet " + std::to_string(i + 1), "has a corner that is not a number",
               "export it again");
      }
    }
  }
}

double in_mm(LengthUnit unit) {
  switch (unit) {
    case LengthUnit::millimetre:
      return 1;
    case LengthUnit::centimetre:
      return centimetre / millimetre;
    case LengthUnit::metre:
      return metre / millimetre;
    case LengthUnit::inch:
      return inch / millimetre;
  }
  return 1;
}

/// "60 x 40 x 25": the mesh's own numbers times `factor`.
std::string size_text(const TriangleMesh& mesh, double factor, int decimals) {
  const Box box = bounding_box(mesh);
  std::string text;
  for (std::size_t i = 0; i < 3; ++i) {
    if (i > 0) text += " x ";
    text += trimmed((box.high_mm[i] - box.low_mm[i]) * factor, decimals);
  }
  return text;
}

/// Each unit with the size that the mesh has in it.
std::vector<Choice> choices_of_unit(const TriangleMesh& mesh) {
  const Box box = bounding_box(mesh);
  std::vector<Choice> choices;
  for (const LengthUnit unit :
       {LengthUnit::millimetre, LengthUnit::centimetre, LengthUnit::metre, LengthUnit::inch}) {
    std::array<Length, 3> size;
    for (std::size_t i = 0; i < 3; ++i)
      size[i] = (box.high_mm[i] - box.low_mm[i]) * in_mm(unit) * millimetre;
    choices.push_back({.answers = {{"unit", name_of(unit)}}, .size = size});
  }
  return choices;
}

[[noreturn]] void ask_for_unit(const TriangleMesh& mesh, const std::string& file) {
  const std::string as_is = size_text(mesh, 1, 2);
  Words remedy = "give ";
  auto choices = choices_of_unit(mesh);
  for (std::size_t i = 0; i < choices.size(); ++i) {
    if (i > 0) remedy += i + 1 < choices.size() ? ", " : " or ";
    remedy += choices[i].answers.front();
  }
  throw Question({.file = file,
                  .field = "",
                  .asks = "unit",
                  .problem = "does not say its unit: it would be " + as_is + " mm, or " + as_is +
                             " cm, or " + as_is + " in, which is " +
                             size_text(mesh, inch / millimetre, 0) + " mm",
                  .remedy = std::move(remedy),
                  .choices = std::move(choices)});
}

/// The unit that fits `own`, if it is one of ours; microns and feet are turned into millimetres.
std::optional<LengthUnit> as_length_unit(const PackageUnit& own) {
  for (const LengthUnit unit :
       {LengthUnit::millimetre, LengthUnit::centimetre, LengthUnit::metre, LengthUnit::inch}) {
    if (in_mm(unit) == own.in_mm) return unit;
  }
  return std::nullopt;
}

/// "inches": numbers are in them.
std::string many_of(double in_mm, const std::string& otherwise) {
  struct Many {
    double in_mm;
    const char* name;
  };
  for (const Many& unit : {Many{0.001, "microns"}, Many{1, "millimetres"}, Many{10, "centimetres"},
                           Many{25.4, "inches"}, Many{304.8, "feet"}, Many{1000, "metres"}})
    if (unit.in_mm == in_mm) return unit.name;
  return otherwise;
}

/// The unit of the file's numbers, and their factor to millimetres.
std::pair<LengthUnit, double> settled_unit(RawMesh& raw, const MeshReading& reading,
                                           const std::string& file) {
  if (!raw.own_unit) {
    if (!reading.unit) ask_for_unit(raw.mesh, file);
    return {*reading.unit, in_mm(*reading.unit)};
  }
  const std::optional<LengthUnit> own = as_length_unit(*raw.own_unit);
  const std::string stated = many_of(raw.own_unit->in_mm, raw.own_unit->name);
  if (reading.unit && reading.unit != own)
    refuse(file, "",
           "says that it is in " + stated + ", not in " +
               many_of(in_mm(*reading.unit), name_of(*reading.unit)),
           "leave the unit out, or export it again if its size is wrong");
  if (own) return {*own, raw.own_unit->in_mm};
  raw.remarks.push_back({Severity::note, file + " is in " + stated + "; it was converted to mm"});
  return {LengthUnit::millimetre, raw.own_unit->in_mm};
}

void refuse_absurd_size(const TriangleMesh& mesh, const std::string& file) {
  constexpr double largest_mm = 20'000;  // our own bounds: no studio's mould is outside them
  constexpr double smallest_mm = 0.5;
  const Box box = bounding_box(mesh);
  double largest = 0;
  for (std::size_t i = 0; i < 3; ++i) largest = std::max(largest, box.high_mm[i] - box.low_mm[i]);
  if (largest <= largest_mm && largest >= smallest_mm) return;
  refuse(file, "", "would be " + size_text(mesh, 1, 3) + " mm, which no mould is",
         "check its unit");
}

}  // namespace

MeshFile read_mesh(const std::string& path, const MeshReading& reading) {
  const MeshFormat format = mesh_format(path);
  const InputFile input(path);
  refuse_long_text(input, format, path);
  RawMesh raw = raw_mesh(input, format, path);
  refuse_empty(raw.mesh, path);
  if (!raw.is_welded) refuse_not_finite(raw.mesh, path);
  const auto found = settled_unit(raw, reading, path);
  const LengthUnit unit = found.first;
  const double factor = found.second;
  const Axis up = reading.up.value_or(raw.own_up);
  in_stretches(raw.mesh.vertices_mm.size(),
               [=, vertices = raw.mesh.vertices_mm.data()](std::size_t v) {
                 for (double& coordinate : vertices[v]) coordinate *= factor;
                 vertices[v] = upright(vertices[v], up);
                 for (double& coordinate : vertices[v]) coordinate += 0.0;  // makes 0 of -0
               });
  if (reading.straight_up)
    for (auto& vertex : raw.mesh.vertices_mm) vertex = straightened(vertex, *reading.straight_up);
  refuse_absurd_size(raw.mesh, path);
  if (!reading.up && up != Axis::plus_z)
    raw.remarks.push_back({Severity::note, path + " was read with " + name_of(up) +
                                               " up, as the standard for this kind of file says"});
  const bool is_our_unit = !raw.own_unit || as_length_unit(*raw.own_unit);
  return {.mesh = std::move(raw.mesh),
          .unit = unit,
          .up = up,
          .frame = {.in_mm = factor,
                    .unit = is_our_unit ? name_of(unit) : raw.own_unit->name,
                    .up = up,
                    .straight_up = reading.straight_up},
          .remarks = std::move(raw.remarks),
          // To turn by an angle may round two places to one.
          .is_welded = raw.is_welded && !reading.straight_up};
}

}  // namespace brimwright::geometry
