#include "units/file_writing.h"

#include "units/user_error.h"

#include <catch2/catch.hpp>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

#include <csignal>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <stdexcept>
#include <string>

namespace brimwright {
namespace {

namespace fs = std::filesystem;
using Catch::Matchers::Contains;

class Folder {
 public:
  Folder() {
    std::string pattern = (fs::temp_directory_path() / "brimwright-XXXXXX").string();
    if (mkdtemp(pattern.data()) == nullptr) throw std::runtime_error("no scratch folder");
    path_ = pattern;
  }
  ~Folder() {
    fs::permissions(path_, fs::perms::owner_all);
    fs::remove_all(path_);
  }
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;

  std::string file(const std::string& name) const { return (path_ / name).string(); }
  std::ptrdiff_t entries() const {
    return std::distance(fs::directory_iterator(path_), fs::directory_iterator());
  }

 private:
  fs::path path_;
};

std::string content(const std::string& path) {
  std::ifstream in(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

/// Files may be no larger than this while it lives; a full disk, as far as a writer can tell.
class SmallFilesOnly {
 public:
  explicit SmallFilesOnly(rlim_t bytes) {
    getrlimit(RLIMIT_FSIZE, &before_);
    rlimit small = before_;
    small.rlim_cur = bytes;
    handler_ = std::signal(SIGXFSZ, SIG_IGN);
    setrlimit(RLIMIT_FSIZE, &small);
  }
  ~SmallFilesOnly() {
    setrlimit(RLIMIT_FSIZE, &before_);
    std::signal(SIGXFSZ, handler_);
  }
  SmallFilesOnly(const SmallFilesOnly&) = delete;
  SmallFilesOnly& operator=(const SmallFilesOnly&) = delete;

 private:
  rlimit before_{};
  void (*handler_)(int) = nullptr;
};

}  // namespace

TEST_CASE("what is written is what is read, and nothing lies beside it", "[units][files]") {
  const Folder folder;
  const std::string path = folder.file("cup.stl");
  std::string bytes(100000, 'x');
  bytes[3] = '\0';
  write_file(path, bytes);
  CHECK(content(path) == bytes);
  write_file(path, "short");
  CHECK(content(path) == "short");
  write_file(path, "");
  CHECK(content(path).empty());
  CHECK(folder.entries() == 1);
}

TEST_CASE("a name without a folder is written where one stands", "[units][files]") {
  const Folder folder;
  const fs::path before = fs::current_path();
  fs::current_path(fs::path(folder.file("")));
  write_file("here.svg", "<svg/>");
  fs::current_path(before);
  CHECK(content(folder.file("here.svg")) == "<svg/>");
}

TEST_CASE("a file written anew keeps its permissions, and a link stays a link", "[units][files]") {
  const Folder folder;
  const std::string path = folder.file("real.json"), link = folder.file("link.json");
  write_file(path, "old");
  fs::permissions(path, fs::perms::owner_read | fs::perms::owner_write);
  fs::create_symlink("real.json", link);
  write_file(link, "new");
  CHECK(fs::is_symlink(link));
  CHECK(content(path) == "new");
  CHECK(fs::status(path).permissions() == (fs::perms::owner_read | fs::perms::owner_write));
  CHECK(folder.entries() == 2);
}

TEST_CASE("what cannot be written is told by its path, and nothing is left behind",
          "[units][files]") {
  const Folder folder;
  SECTION("the folder is not there") {
    const std::string path = folder.file("none/cup.stl");
    CHECK_THROWS_WITH(write_file(path, "x"), Contains(path) && Contains("folder is not there"));
    CHECK(folder.entries() == 0);
  }
  SECTION("a folder has that name") {
    fs::create_directory(folder.file("cup.stl"));
    CHECK_THROWS_WITH(write_file(folder.file("cup.stl"), "x"), Contains("is a folder"));
    CHECK(folder.entries() == 1);
    CHECK(fs::is_empty(folder.file("cup.stl")));
  }
  SECTION("something else than a file has that name") {
    REQUIRE(::mkfifo(folder.file("pipe").c_str(), 0600) == 0);
    CHECK_THROWS_WITH(write_file(folder.file("pipe"), "x"), Contains("is not a file"));
    CHECK(folder.entries() == 1);
  }
  SECTION("a link to nothing has that name") {
    fs::create_symlink("gone", folder.file("link"));
    CHECK_THROWS_WITH(write_file(folder.file("link"), "x"), Contains("link to nothing"));
    CHECK(folder.entries() == 1);
  }
  SECTION("there is no name") { CHECK_THROWS_AS(write_file("", "x"), UserError); }
  SECTION("the name is too long") {
    CHECK_THROWS_WITH(write_file(folder.file(std::string(300, 'n')), "x"), Contains("too long"));
    CHECK(folder.entries() == 0);
  }
  SECTION("the folder may not be written to") {
    if (::geteuid() == 0) return;  // whom nothing is forbidden
    fs::permissions(folder.file(""), fs::perms::owner_read | fs::perms::owner_exec);
    CHECK_THROWS_WITH(write_file(folder.file("cup.stl"), "x"), Contains("may not be written"));
  }
}

TEST_CASE("a full disk leaves the old file whole", "[units][files]") {
  const Folder folder;
  const std::string path = folder.file("cup.stl");
  write_file(path, "the old one");
  {
    const SmallFilesOnly limit(4096);
    CHECK_THROWS_WITH(write_file(path, std::string(100000, 'x')),
                      Contains(path) && Contains("does not fit"));
  }
  CHECK(content(path) == "the old one");
  CHECK(folder.entries() == 1);
}

}  // namespace brimwright
