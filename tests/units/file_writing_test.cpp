#include "units/file_writing.h"

#include "units/unfinished_files.h"
#include "units/user_error.h"

#include <catch2/catch.hpp>
#include <fcntl.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <memory>
#include <stdexcept>
#include <string>
#include <vector>

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

TEST_CASE("a program killed in the middle of writing leaves the old file and nothing beside it",
          "[units][files]") {
  const Folder folder;
  const int nameless = ::open(folder.file("").c_str(), O_TMPFILE | O_WRONLY | O_CLOEXEC, 0600);
  if (nameless < 0) return;  // this file system gives every file a name at once
  ::close(nameless);
  const std::string old_one = folder.file("cup.stl"), new_one = folder.file("new.stl");
  write_file(old_one, "the old one");
  for (const std::string& path : {old_one, new_one}) {
    const pid_t child = ::fork();
    REQUIRE(child >= 0);
    if (child == 0) {  // the system kills it at the byte after this many: signal(7), SIGXFSZ
      ::signal(SIGXFSZ, SIG_DFL);
      const rlimit small{4096, 4096}, no_core{0, 0};
      ::setrlimit(RLIMIT_FSIZE, &small);
      ::setrlimit(RLIMIT_CORE, &no_core);
      write_file(path, std::string(100'000, 'x'));
      ::_exit(0);
    }
    int status = 0;
    REQUIRE(::waitpid(child, &status, 0) == child);
    REQUIRE((WIFSIGNALED(status) && WTERMSIG(status) == SIGXFSZ));
  }
  CHECK(content(old_one) == "the old one");
  CHECK(folder.entries() == 1);
}

TEST_CASE("a signal that ends the program takes along what is half-written, and that alone",
          "[units][files]") {
  const Folder folder;
  const std::string half = folder.file("half.tmp"), whole = folder.file("whole.tmp"),
                    long_done = folder.file("long done.tmp");
  for (const std::string& path : {half, whole, long_done}) std::ofstream(path) << "x";
  { const UnfinishedFile done(long_done); }
  CHECK(!fs::exists(long_done));  // its scope ended without a final name
  std::ofstream(long_done) << "another's by now";
  const UnfinishedFile unfinished(half);
  UnfinishedFile finished(whole);
  REQUIRE(finished.rename_to(folder.file("cup.stl")) == 0);
  remove_unfinished_files();
  CHECK(!fs::exists(half));
  CHECK(fs::exists(folder.file("cup.stl")));
  CHECK(fs::exists(long_done));
}

TEST_CASE(
    "more files than are known to a signal, or names too long for it, are written all the same",
    "[units][files]") {
  const Folder folder;
  std::vector<std::unique_ptr<UnfinishedFile>> many;
  for (int i = 0; i < 40; ++i) {
    std::ofstream(folder.file(std::to_string(i))) << "x";
    many.push_back(std::make_unique<UnfinishedFile>(folder.file(std::to_string(i))));
  }
  const UnfinishedFile nowhere(std::string(10'000, 'n'));
  many.clear();
  CHECK(folder.entries() == 0);
  std::ofstream(folder.file("half")) << "x";
  const UnfinishedFile next(folder.file("half"));  // there is room again
  remove_unfinished_files();
  CHECK(folder.entries() == 0);
}

}  // namespace brimwright
