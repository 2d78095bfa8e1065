// Run by the build: embed_page OUT.cpp FILE...
// Writes the files, gzipped, as the C++ source of page_assets(). The same files always give the
// same bytes: no name, no time and no system stands in the gzip head.

#include <zlib.h>

#include <array>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <iterator>
#include <stdexcept>
#include <string>
#include <utility>

namespace {

namespace fs = std::filesystem;

std::string bytes_of(const fs::path& path) {
  std::ifstream file(path, std::ios::binary);
  if (!file) throw std::runtime_error(path.string() + " cannot be read");
  return {std::istreambuf_iterator<char>(file), {}};
}

std::string gzipped(std::string plain) {
  z_stream stream{};
  constexpr int gzip_of_32_kib = 15 + 16, most_memory = 9;
  if (deflateInit2(&stream, Z_BEST_COMPRESSION, Z_DEFLATED, gzip_of_32_kib, most_memory,
                   Z_DEFAULT_STRATEGY) != Z_OK)
    throw std::runtime_error("zlib does not start");
  gz_header head{};
  head.os = 255;  // unknown: RFC 1952, 2.3.1
  deflateSetHeader(&stream, &head);
  std::string packed(deflateBound(&stream, static_cast<uLong>(plain.size())) + 32, '\0');
  stream.next_in = reinterpret_cast<Bytef*>(plain.data());
  stream.avail_in = static_cast<uInt>(plain.size());
  stream.next_out = reinterpret_cast<Bytef*>(packed.data());
  stream.avail_out = static_cast<uInt>(packed.size());
  const int end = deflate(&stream, Z_FINISH);
  packed.resize(stream.total_out);
  deflateEnd(&stream);
  if (end != Z_STREAM_END) throw std::runtime_error("zlib does not end");
  return packed;
}

std::string type_of(const fs::path& path) {
  for (const auto& [ending, type] : std::array<std::pair<const char*, const char*>, 8>{
           {{".html", "text/html; charset=utf-8"},
            {".js", "text/javascript; charset=utf-8"},
            {".css", "text/css; charset=utf-8"},
            {".txt", "text/plain; charset=utf-8"},
            {".json", "application/json"},
            {".svg", "image/svg+xml"},
            {".png", "image/png"},
            {".woff2", "font/woff2"}}})
    if (path.extension() == ending) return type;
  throw std::runtime_error(path.string() + ": no type is known for a file that ends so");
}

void write_asset(std::ostream& out, const fs::path& path) {
  const std::string name = path.filename() == "index.html" ? "" : path.filename().string();
  const std::string bytes = gzipped(bytes_of(path));
  out << "    {\"/" << name << "\", \"" << type_of(path) << "\", {\n";
  // Short pieces of a string literal compile some ten times as fast as a list of numbers.
  constexpr std::size_t bytes_in_a_line = 24;
  for (std::size_t i = 0; i < bytes.size(); ++i) {
    if (i % bytes_in_a_line == 0) out << "      \"";
    const auto byte = static_cast<unsigned char>(bytes[i]);
    out << '\\' << char('0' + (byte >> 6)) << char('0' + (byte >> 3 & 7)) << char('0' + (byte & 7));
    if (i % bytes_in_a_line == bytes_in_a_line - 1 || i + 1 == bytes.size()) out << "\"\n";
  }
  out << "      , " << bytes.size() << "}},\n";
}

void write_assets(std::ostream& out, int files, char** file) {
  out << "#include \"web/page_assets.h\"\n\nnamespace brimwright::web {\n"
         "namespace {\nconst PageAsset assets[] = {\n";
  for (int i = 0; i < files; ++i) write_asset(out, file[i]);
  out << "};\n}\nstd::span<const PageAsset> page_assets() { return assets; }\n}\n";
}

}  // namespace

int main(int argc, char** argv) try {
  if (argc < 3) throw std::runtime_error("embed_page OUT.cpp FILE...");
  std::ofstream out(argv[1], std::ios::binary);
  write_assets(out, argc - 2, argv + 2);
  out.close();
  if (!out) throw std::runtime_error(std::string(argv[1]) + " cannot be written");
} catch (const std::exception& error) {
  std::cerr << "embed_page: " << error.what() << "\n";
  return 1;
}
