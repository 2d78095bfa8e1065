#include "hostile_bytes.h"
#include "hostile_files.h"
#include "mesh_writers.h"

#include <cstdint>
#include <initializer_list>
#include <utility>

namespace brimwright::geometry::test {
namespace {

std::vector<HostileFile> joined(std::initializer_list<std::vector<HostileFile>> lists) {
  std::vector<HostileFile> all;
  for (const auto& list : lists) all.insert(all.end(), list.begin(), list.end());
  return all;
}

std::vector<HostileFile> odd_lines() {
  std::vector<HostileFile> files;
  for (const HostileFile& file : good_files()) {
    const bool is_text = file.bytes.find('\0') == std::string::npos;
    const std::string ending = file.name.substr(file.name.find('.'));
    files.push_back({"CAPITALS" + capitals(ending), file.bytes, file.reading, Fate::right});
    files.push_back({"a.b.c" + ending, file.bytes, file.reading, Fate::right});
    if (!is_text) continue;
    files.push_back({"mark-" + file.name, byte_order_mark + file.bytes, file.reading, Fate::right});
    files.push_back(
        {"crlf-" + file.name, with_all(file.bytes, "\n", "\r\n"), file.reading, Fate::right});
    files.push_back(
        {"cr-" + file.name, with_all(file.bytes, "\n", "\r"), file.reading, Fate::either});
    files.push_back({"wide-" + file.name, utf16(file.bytes), file.reading, Fate::either});
    files.push_back(
        {"nul-" + file.name, file.bytes + std::string(100, '\0'), file.reading, Fate::either});
    files.push_back(
        {"blank-" + file.name, "\n \n" + file.bytes + "\n\n  \n", file.reading, Fate::either});
    if (file.name.ends_with(".gltf")) continue;
    files.push_back(
        {"tabs-" + file.name, with_all(file.bytes, " ", "\t"), file.reading, Fate::either});
    files.push_back({"shout-" + file.name, capitals(file.bytes), file.reading, Fate::either});
  }
  return files;
}

std::vector<HostileFile> odd_stl_texts() {
  std::vector<HostileFile> files;
  const std::string stl = text_stl(good());
  const TriangleMesh other = moved(good(), {100, 0, 0});
  files.push_back(
      {"solid-binary.stl", binary_stl(good(), "solid made by a program"), in_mm, Fate::right});
  files.push_back({"facet-binary.stl",
                   binary_stl(good(), "solid\nfacet normal 0 0 0 outer loop vertex"), in_mm,
                   Fate::right});
  files.push_back({"two-solids.stl", stl + text_stl(other), in_mm, Fate::right, 120});
  files.push_back({"unnamed.stl", with_all(stl, " a mesh", ""), in_mm, Fate::right});
  files.push_back(
      {"named.stl", with_all(stl, "a mesh", "facet endfacet loop"), in_mm, Fate::either});
  files.push_back({"half-ended.stl", with(stl + text_stl(other), "endsolid a mesh\n", ""), in_mm,
                   Fate::either, 120});
  files.push_back({"quad.stl", with(stl, "    endloop", "      vertex 5 5 5\n    endloop"), in_mm,
                   Fate::refused});
  files.push_back({"two-corners.stl", with(stl, "      vertex 0 0 0\n", ""), in_mm, Fate::refused});
  files.push_back({"no-loop.stl", with(stl, "    endloop\n", ""), in_mm, Fate::either});
  files.push_back({"no-facet.stl", with(stl, "  facet normal 0 0 0\n", ""), in_mm, Fate::either});
  return files;
}

std::vector<HostileFile> odd_obj_texts() {
  std::vector<HostileFile> files;
  const std::string o = obj(good());
  files.push_back({"weights.obj", with_all(o, " 25\n", " 25 2\n"), in_mm, Fate::either});
  files.push_back({"colours.obj", with_all(o, " 25\n", " 25 0.5 0.5 0.5\n"), in_mm, Fate::either});
  files.push_back({"flat.obj", with_all(o, " 25\n", "\n"), in_mm, Fate::refused});
  files.push_back({"relative.obj", with(o, "\nf 1 3 2", "\nf -8 -6 -7"), in_mm, Fate::right});
  files.push_back({"continued.obj", with(o, "\nf 1 3 2", "\nf 1 \\\n3 2"), in_mm, Fate::either});
  files.push_back({"slashes.obj", with(o, "\nf 1 3 2", "\nf 1// 3// 2//"), in_mm, Fate::either});
  files.push_back({"lines.obj", o + "l 1 2\np 1 2 3\n", in_mm, Fate::right});
  files.push_back(
      {"curve.obj", o + "cstype bezier\ndeg 3\ncurv 0 1 1 2 3 4\nend\n", in_mm, Fate::either});
  files.push_back(
      {"long-line.obj", o + "# " + std::string(3'000'000, 'x') + "\n", in_mm, Fate::either});
  files.push_back(
      {"long-name.obj", o + "g " + std::string(3'000'000, 'x') + "\n", in_mm, Fate::either});
  return files;
}

std::vector<HostileFile> odd_ply_texts() {
  std::vector<HostileFile> files;
  const std::string p = text_ply(good());
  files.push_back({"swapped.ply",
                   with(with(p, "float x\nproperty float y", "float q\nproperty float x"),
                        "float q", "float y"),
                   in_mm, Fate::either});
  files.push_back({"no-x.ply", with(p, "float x", "float u"), in_mm, Fate::refused});
  files.push_back({"twice-x.ply", with(p, "float y", "float x"), in_mm, Fate::refused});
  files.push_back({"odd-type.ply", with(p, "float x", "quad x"), in_mm, Fate::refused});
  files.push_back(
      {"odd-list.ply", with(p, "list uchar int", "list float float"), in_mm, Fate::either});
  files.push_back({"odd-format.ply", with(p, "ascii 1.0", "ascii 7.0"), in_mm, Fate::either});
  files.push_back({"said-binary.ply", with(p, "ascii", "binary_big_endian"), in_mm, Fate::refused});
  files.push_back({"said-ascii.ply", with(binary_ply(good()), "binary_little_endian", "ascii"),
                   in_mm, Fate::refused});
  files.push_back(
      {"other-endian.ply", with(binary_ply(good()), "little", "big"), in_mm, Fate::refused});
  files.push_back(
      {"other-name.ply", with(p, "vertex_indices", "vertex_index"), in_mm, Fate::right});
  return files;
}

std::vector<HostileFile> odd_off_texts() {
  std::vector<HostileFile> files;
  const std::string f = off(good());
  for (const std::string kind :
       {"COFF", "NOFF", "STOFF", "4OFF", "nOFF", "OFF BINARY", "off", "OFFSET"}) {
    files.push_back({"kind-" + kind + ".off", with(f, "OFF", kind), in_mm, Fate::either});
  }
  files.push_back(
      {"comments.off", with(f, "OFF\n", "OFF # mesh\n# of a box\n\n"), in_mm, Fate::either});
  files.push_back({"one-line.off", with(f, "OFF\n", "OFF "), in_mm, Fate::either});
  files.push_back({"coloured.off", with(f, "\n3 0 2 1", "\n3 0 2 1 255 0 0"), in_mm, Fate::either});
  return files;
}

std::vector<HostileFile> wrong_names() {
  std::vector<HostileFile> files;
  for (const char* name : {"x.stl", "x.obj", "x.ply", "x.off", "x.3mf", "x.gltf", "x.glb"}) {
    files.push_back({name, std::string(1, '\0'), in_mm, Fate::refused});
    files.push_back({name, "\n", in_mm, Fate::refused});
    files.push_back({name, std::string(1000, '\0'), in_mm, Fate::refused});
    files.push_back({name, std::string(100'000, '('), in_mm, Fate::refused});
    for (const HostileFile& file : good_files()) {  // one format under another's name
      if (!file.name.ends_with(std::string(name).substr(1))) {
        files.push_back({name, file.bytes, in_mm, Fate::refused});
      }
    }
  }
  return files;
}

}  // namespace

std::vector<HostileFile> odd_texts() {
  return joined({odd_lines(), odd_stl_texts(), odd_obj_texts(), odd_ply_texts(), odd_off_texts(),
                 wrong_names()});
}

}  // namespace brimwright::geometry::test
