#include "hostile_files.h"

#include "hostile_bytes.h"
#include "mesh_writers.h"

#include <cstdint>
#include <limits>

namespace brimwright::geometry::test {
namespace {

std::vector<HostileFile> other_lying_counts() {
  const std::string ply = text_ply(good()), bply = binary_ply(good()), o = off(good()),
                    g = gltf(good());
  const TriangleMesh both = together(good(), moved(good(), {100, 0, 0}));
  std::vector<HostileFile> files;
  // What is left over is more of the mesh: half a tray must not pass for the whole.
  files.push_back({"half.ply", with(text_ply(both), "face 24", "face 12"), in_mm, Fate::refused});
  files.push_back(
      {"half-binary.ply", with(binary_ply(both), "face 24", "face 12"), in_mm, Fate::refused});
  files.push_back({"half.off", with(off(both), "16 24 0", "16 12 0"), in_mm, Fate::refused});
  files.push_back({"negative.ply", with(ply, "vertex 8", "vertex -8"), in_mm, Fate::refused});
  files.push_back({"negative.off", with(o, "8 12 0", "8 -12 0"), in_mm, Fate::refused});
  files.push_back(
      {"negative.gltf", with(g, "\"count\":36", "\"count\":-36"), unsaid, Fate::refused});
  files.push_back({"real.gltf", with(g, "\"count\":36", "\"count\":3.6e1"), unsaid, Fate::either});
  files.push_back({"list.ply", with(ply, "\n3 0 2 1", "\n255 0 2 1"), in_mm, Fate::refused});
  files.push_back(
      {"list-4g.ply", with(ply, "\n3 0 2 1", "\n4000000000 0 2 1"), in_mm, Fate::refused});
  files.push_back(
      {"polygon.off", with(o, "\n3 0 2 1", "\n4000000000 0 2 1"), in_mm, Fate::refused});
  files.push_back({"polygon0.off", with(o, "\n3 0 2 1", "\n0 0 2 1"), in_mm, Fate::refused});
  files.push_back({"headless.ply", with(ply, "end_header\n", ""), in_mm, Fate::refused});
  files.push_back({"headless-binary.ply", with(bply, "end_header\n", ""), in_mm, Fate::refused});
  return files;
}

std::vector<HostileFile> numbers_in_texts() {
  std::vector<HostileFile> files;
  struct Text {
    std::string number;
    Fate fate;
  };
  // Instead of a 60. The box's other sides keep its size, so that a misread number shows.
  const std::vector<Text> texts = {
      {"nan", Fate::refused},
      {"NaN", Fate::refused},
      {"-nan(ind)", Fate::refused},
      {"inf", Fate::refused},
      {"-Infinity", Fate::refused},
      {"1e38", Fate::refused},
      {"1e39", Fate::refused},
      {"1e999", Fate::refused},
      {"-1e38", Fate::refused},
      {"1.#IND", Fate::refused},
      {"6e1", Fate::either},
      {"6.0E+01", Fate::either},
      {"+60", Fate::either},
      {"060", Fate::either},
      {"60.", Fate::either},
      {"0x3C", Fate::refused},
      {"60,0", Fate::refused},
      {"60,5", Fate::refused},
      {"6_0", Fate::refused},
      {"6'0", Fate::refused},
      {"60mm", Fate::refused},
      {"60.0.0", Fate::refused},
      {"--60", Fate::refused},
      {"6e", Fate::refused},
      {"", Fate::refused},
      {"60 60", Fate::refused},
      {"\xEF\xBC\x96\xEF\xBC\x90", Fate::refused},
      {"60.000000000000000000000000000000000000000000000000000001", Fate::either},
      {"600000000000000000000000000000000000000000e-40", Fate::either}};
  int n = 0;
  for (const auto& [text, fate] : texts) {
    const std::string name = "number-" + std::to_string(n++);
    files.push_back({name + "-text.stl",
                     with_all(text_stl(good()), "vertex 60 ", "vertex " + text + " "), in_mm,
                     fate});
    files.push_back(
        {name + ".obj", with_all(obj(good()), "v 60 ", "v " + text + " "), in_mm, fate});
    files.push_back(
        {name + ".ply", with_all(text_ply(good()), "\n60 ", "\n" + text + " "), in_mm, fate});
    files.push_back(
        {name + ".off", with_all(off(good()), "\n60 ", "\n" + text + " "), in_mm, fate});
    files.push_back({name + ".3mf",
                     three_mf(with_all(model_xml(good(), ""), "x=\"60\"", "x=\"" + text + "\"")),
                     unsaid, fate});
    files.push_back(
        {name + ".gltf",
         with(gltf(good()), "{\"mesh\":0}", "{\"mesh\":0,\"scale\":[" + text + ",1,1]}"), unsaid,
         fate == Fate::either ? Fate::refused : fate, 3600});
  }
  for (HostileFile& file : files) {
    if (file.name.ends_with(".gltf"))
      file.fate = file.fate == Fate::refused ? Fate::either : file.fate;
  }
  return files;
}

std::vector<HostileFile> tiny_and_huge_numbers() {
  std::vector<HostileFile> files;
  // Denormals in the place of zeros.
  for (const std::string zero : {"1e-40", "-1e-320", "4.9e-324", "1e-999", "-0", "0e99"}) {
    const std::string name = "zero-" + zero;
    files.push_back({name + "-text.stl",
                     with_all(text_stl(good()), "vertex 0 ", "vertex " + zero + " "), in_mm,
                     Fate::either});
    files.push_back(
        {name + ".obj", with_all(obj(good()), "v 0 ", "v " + zero + " "), in_mm, Fate::either});
    files.push_back({name + ".ply", with_all(text_ply(good()), "\n0 ", "\n" + zero + " "), in_mm,
                     Fate::either});
    files.push_back(
        {name + ".off", with_all(off(good()), "\n0 ", "\n" + zero + " "), in_mm, Fate::either});
  }
  const std::string stl = binary_stl(good()), bply = binary_ply(good()), b = glb(good());
  const std::size_t ply_point = bply.find("end_header\n") + 11 + 24,
                    glb_point = b.size() - 240 + 12;
  for (const double number : {std::numeric_limits<double>::quiet_NaN(),
                              std::numeric_limits<double>::infinity(), 1e38, -3e38, 1e308}) {
    const std::string name = "binary-" + digits(number);
    const auto small = static_cast<float>(number);
    files.push_back({name + ".stl", with_number(stl, 84 + 50 + 12, small), in_mm, Fate::refused});
    files.push_back({name + ".ply", with_number(bply, ply_point, number), in_mm, Fate::refused});
    files.push_back({name + ".glb", with_number(b, glb_point, small), unsaid, Fate::refused});
  }
  return files;
}

}  // namespace

std::vector<HostileFile> good_files() {
  return {{"good.stl", binary_stl(good()), in_mm, Fate::right},
          {"good-text.stl", text_stl(good()), in_mm, Fate::right},
          {"good.obj", obj(good()), in_mm, Fate::right},
          {"good.ply", text_ply(good()), in_mm, Fate::right},
          {"good-binary.ply", binary_ply(good()), in_mm, Fate::right},
          {"good.off", off(good()), in_mm, Fate::right},
          {"good.3mf", three_mf(model_xml(good(), "")), unsaid, Fate::right},
          {"good.gltf", gltf(good()), unsaid, Fate::right},
          {"good.glb", glb(good()), unsaid, Fate::right}};
}

std::vector<HostileFile> lying_counts() {
  const std::string stl = binary_stl(good()), ply = text_ply(good()), bply = binary_ply(good());
  const std::string o = off(good()), g = gltf(good()), b = glb(good());
  std::vector<HostileFile> files = other_lying_counts();
  for (const std::uint32_t count : {0U, 1U, 11U, 13U, 0x7fffffffU, 0xffffffffU}) {
    const std::string n = std::to_string(count);
    files.push_back({"count-" + n + ".stl", with_number(stl, 80, count), in_mm, Fate::refused});
    for (const std::string element : {"vertex 8", "face 12"}) {
      const std::string lie = element.substr(0, element.find(' ') + 1) + n;
      files.push_back({element[0] + n + ".ply", with(ply, "element " + element, "element " + lie),
                       in_mm, Fate::refused});
      files.push_back({element[0] + n + "-binary.ply",
                       with(bply, "element " + element, "element " + lie), in_mm, Fate::refused});
    }
    files.push_back({"v" + n + ".off", with(o, "8 12 0", n + " 12 0"), in_mm, Fate::refused});
    files.push_back({"f" + n + ".off", with(o, "8 12 0", "8 " + n + " 0"), in_mm, Fate::refused});
    const std::string indices = "\"count\":36", points = "\"count\":8";
    files.push_back({"i" + n + ".gltf", with(g, indices, "\"count\":" + n), unsaid, Fate::either});
    files.push_back({"p" + n + ".gltf", with(g, points, "\"count\":" + n), unsaid, Fate::either});
    files.push_back({"l" + n + ".gltf", with(g, "\"byteLength\":240", "\"byteLength\":" + n),
                     unsaid, Fate::either});
    files.push_back({"o" + n + ".gltf", with(g, "\"byteOffset\":96", "\"byteOffset\":" + n), unsaid,
                     Fate::refused});
    files.push_back({"l" + n + ".glb", with_number(b, 8, count), unsaid, Fate::refused});
    files.push_back({"c" + n + ".glb", with_number(b, 12, count), unsaid, Fate::refused});
  }
  return files;
}

std::vector<HostileFile> bad_indices() {
  std::vector<HostileFile> files;
  for (const std::string index :
       {"8", "-1", "99", "4294967295", "4294967296", "18446744073709551616", "1.5", "x", ""}) {
    const std::string n = "-" + index;
    const std::string o = index == "8" ? "9" : index;  // OBJ counts from 1, and from the end
    files.push_back({"obj" + n + ".obj", with(obj(good()), "\nf 1 3 2", "\nf " + o + " 3 2"), in_mm,
                     Fate::refused});
    files.push_back({"ply" + n + ".ply",
                     with(text_ply(good()), "\n3 0 2 1", "\n3 " + index + " 2 1"), in_mm,
                     Fate::refused});
    files.push_back({"off" + n + ".off", with(off(good()), "\n3 0 2 1", "\n3 " + index + " 2 1"),
                     in_mm, Fate::refused});
    files.push_back({"3mf" + n + ".3mf",
                     three_mf(with(model_xml(good(), ""), "v1=\"0\"", "v1=\"" + index + "\"")),
                     unsaid, Fate::refused});
  }
  const std::string bply = binary_ply(good());
  const std::size_t first_index = bply.find("end_header\n") + 11 + 8 * 24 + 1;
  const std::string b = glb(good());
  const std::size_t gltf_index = b.size() - 12 * 12;
  for (const std::uint32_t index : {8U, 0x7fffffffU, 0xffffffffU}) {
    files.push_back({"b" + std::to_string(index) + ".ply", with_number(bply, first_index, index),
                     in_mm, Fate::refused});
    files.push_back({"b" + std::to_string(index) + ".glb", with_number(b, gltf_index, index),
                     unsaid, Fate::refused});
  }
  files.push_back({"zero.obj", with(obj(good()), "\nf 1 3 2", "\nf 0 3 2"), in_mm, Fate::refused});
  files.push_back({"two.obj", with(obj(good()), "\nf 1 3 2", "\nf 1 3"), in_mm, Fate::refused});
  return files;
}

std::vector<HostileFile> odd_numbers() {
  std::vector<HostileFile> files = numbers_in_texts();
  const std::vector<HostileFile> more = tiny_and_huge_numbers();
  files.insert(files.end(), more.begin(), more.end());
  return files;
}

}  // namespace brimwright::geometry::test
