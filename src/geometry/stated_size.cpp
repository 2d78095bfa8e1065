#include "geometry/stated_size.h"

#include "units/user_error.h"

#include <charconv>
#include <cstdint>
#include <cstring>
#include <vector>

namespace brimwright::geometry {
namespace {

constexpr std::string_view blanks = " \t\r\n";

[[noreturn]] void refuse(MeshFormat format, const std::string& file, const std::string& problem) {
  throw UserError(
      {.file = file,
       .field = "",
       .problem = problem.empty() ? "is not a sound " + name_of(format) + " file" : problem,
       .remedy = "copy or export it again"});
}

std::string_view take_line(std::string_view& text) {
  const std::size_t end = text.find('\n');
  const std::string_view line = text.substr(0, end);
  text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
  return line;
}

std::vector<std::string_view> words_of(std::string_view line) {
  std::vector<std::string_view> words;
  while (true) {
    const std::size_t start = line.find_first_not_of(blanks);
    if (start == std::string_view::npos) return words;
    const std::size_t end = line.find_first_of(blanks, start);
    words.push_back(line.substr(start, end - start));
    if (end == std::string_view::npos) return words;
    line.remove_prefix(end);
  }
}

std::optional<std::size_t> whole_number(std::string_view word) {
  std::size_t number = 0;
  const auto [end, error] = std::from_chars(word.data(), word.data() + word.size(), number);
  if (error != std::errc() || end != word.data() + word.size()) return std::nullopt;
  return number;
}

[[noreturn]] void refuse_short(MeshFormat format, const std::string& file) {
  refuse(format, file, "promises more than it holds; it was cut short or is broken");
}

/// Refuses counts that the file is too short for, at `least` bytes each.
void check_room(std::size_t count, std::size_t least, std::size_t size, MeshFormat format,
                const std::string& file) {
  if (count > size / least) refuse_short(format, file);
}

std::size_t lines_with_words(std::string_view text) {
  std::size_t lines = 0;
  while (!text.empty()) {
    if (take_line(text).find_first_not_of(blanks) != std::string_view::npos) ++lines;
  }
  return lines;
}

/// The head's counts (G. Turk, The PLY Polygon File Format, 1994): "element vertex 8", "element
/// face 12". As text, each element has a line; Assimp makes up those that are missing.
std::optional<std::size_t> stated_by_ply(std::string_view text, const std::string& file) {
  using Words = std::vector<std::string_view>;
  const std::size_t size = text.size();
  if (words_of(take_line(text)) != Words{"ply"}) refuse(MeshFormat::ply, file, "");
  std::optional<std::size_t> faces;
  std::size_t elements = 0;
  bool as_text = false;
  while (!text.empty()) {
    const Words words = words_of(take_line(text));
    if (words == Words{"end_header"}) {
      if (as_text && lines_with_words(text) < elements) refuse_short(MeshFormat::ply, file);
      return faces;
    }
    if (words.size() != 3) continue;
    if (words[0] == "format") as_text = words[1] == "ascii";
    if (words[0] != "element") continue;
    const auto count = whole_number(words[2]);
    if (!count) refuse(MeshFormat::ply, file, "");
    check_room(*count, 3, size, MeshFormat::ply,
               file);  // three one-byte values, the least there is
    elements += *count;
    if (words[1] == "face") faces = count;
  }
  refuse(MeshFormat::ply, file, "");
}

/// "OFF", then the numbers of vertices, faces and edges, with comments after '#' (Geomview manual).
std::optional<std::size_t> stated_by_off(std::string_view text, const std::string& file) {
  const std::size_t size = text.size();
  std::vector<std::string_view> words;
  while (!text.empty() && words.size() < 3) {
    const std::string_view line = take_line(text);
    for (const std::string_view word : words_of(line.substr(0, line.find('#'))))
      words.push_back(word);
  }
  if (words.empty() || !words[0].ends_with("OFF")) refuse(MeshFormat::off, file, "");
  const auto vertices = words.size() < 3 ? std::nullopt : whole_number(words[1]);
  const auto faces = words.size() < 3 ? std::nullopt : whole_number(words[2]);
  if (!vertices || !faces) refuse(MeshFormat::off, file, "");
  check_room(*vertices, sizeof "0 0 0" - 1, size, MeshFormat::off, file);
  check_room(*faces, sizeof "3 0 0 0" - 1, size, MeshFormat::off, file);
  return faces;
}

/// Magic, version and length (glTF 2.0 specification, section 4.4.2).
void check_glb(std::string_view bytes, const std::string& file) {
  std::uint32_t version = 0, length = 0;
  if (bytes.size() < 12 || !bytes.starts_with("glTF")) refuse(MeshFormat::glb, file, "");
  std::memcpy(&version, bytes.data() + 4, sizeof version);
  std::memcpy(&length, bytes.data() + 8, sizeof length);
  if (version != 2) {
    refuse(MeshFormat::glb, file, "is of glTF version " + std::to_string(version) + ", not 2");
  }
  if (length != bytes.size()) {
    refuse(MeshFormat::glb, file,
           "states " + std::to_string(length) + " bytes but has " + std::to_string(bytes.size()));
  }
}

bool has_line_beginning(std::string_view text, std::string_view beginning) {
  while (!text.empty()) {
    std::string_view line = take_line(text);
    const std::size_t start = line.find_first_not_of(blanks);
    if (start != std::string_view::npos && line.substr(start).starts_with(beginning)) return true;
  }
  return false;
}

void check_obj(std::string_view text, const std::string& file) {
  if (text.find('\0') != std::string_view::npos || !has_line_beginning(text, "v ")) {
    refuse(MeshFormat::obj, file, "");
  }
}

void check_gltf(std::string_view text, const std::string& file) {
  constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
  if (text.starts_with(byte_order_mark)) text.remove_prefix(byte_order_mark.size());
  const std::size_t start = text.find_first_not_of(blanks);
  if (start == std::string_view::npos || text[start] != '{') refuse(MeshFormat::gltf, file, "");
}

}  // namespace

std::optional<std::size_t> stated_polygons(std::string_view bytes, MeshFormat format,
                                           const std::string& file) {
  switch (format) {
    case MeshFormat::ply:
      return stated_by_ply(bytes, file);
    case MeshFormat::off:
      return stated_by_off(bytes, file);
    case MeshFormat::glb:
      check_glb(bytes, file);
      break;
    case MeshFormat::gltf:
      check_gltf(bytes, file);
      break;
    case MeshFormat::obj:
      check_obj(bytes, file);
      break;
    case MeshFormat::stl:
    case MeshFormat::three_mf:
      break;
  }
  return std::nullopt;
}

}  // namespace brimwright::geometry
