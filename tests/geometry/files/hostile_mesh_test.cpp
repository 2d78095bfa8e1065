#include "geometry/repair/mesh_checks.h"
#include "geometry/repair/mesh_mending.h"
#include "geometry/surface/enclosed_volume.h"
#include "hostile_files.h"
#include "scratch_file.h"
#include "units/user_error.h"

#include <catch2/catch.hpp>
#include <sys/inotify.h>
#include <sys/resource.h>
#include <unistd.h>

#include <array>
#include <chrono>
#include <cstdint>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace brimwright::geometry {
namespace {

using Catch::Matchers::WithinRel;
using test::Fate;
using test::HostileFile;
using test::ScratchFile;

/// The volume in ml, or nothing if the file is refused as it should be: by a UserError of one line
/// that names it. Anything else is thrown on.
std::optional<double> ml_or_refusal(const HostileFile& file, const std::string& path) {
  try {
    const MeshFile read = read_mesh(path, file.reading);
    const Mended whole = mended(read.mesh, path, MendAim::closed_solid);
    return enclosed_volume(checked_solid(whole.mesh, path).solid) / millilitre;
  } catch (const UserError& error) {
    const std::string line = error.what();
    CHECK(line.find(path) != std::string::npos);
    CHECK(line.find('\n') == std::string::npos);
    CHECK_FALSE(error.parts().remedy.empty());
    return std::nullopt;
  }
}

void check_fate(const HostileFile& file, const std::string& path) {
  using Clock = std::chrono::steady_clock;
  INFO(file.name << " of " << file.bytes.size() << " bytes");
  const Clock::time_point start = Clock::now();
  const std::optional<double> ml = ml_or_refusal(file, path);
  CHECK(Clock::now() - start < std::chrono::seconds(10));
  if (ml) CHECK_THAT(*ml, WithinRel(file.right_ml, 1e-6));
  if (file.fate == Fate::refused) CHECK_FALSE(ml.has_value());
  if (file.fate == Fate::right) CHECK(ml.has_value());
}

void check_fates(const std::vector<HostileFile>& files) {
  for (const HostileFile& file : files) {
    const ScratchFile scratch(file.name, file.bytes);
    check_fate(file, scratch.path());
  }
  for (const int who : {RUSAGE_SELF, RUSAGE_CHILDREN}) {
    rusage used{};
    REQUIRE(::getrusage(who, &used) == 0);
#ifndef __SANITIZE_ADDRESS__                   // whose own shadow is larger than that
    CHECK(used.ru_maxrss <= 2 * 1024 * 1024);  // kilobytes: 2 GiB
#endif
  }
}

TEST_CASE("the good files are good", "[geometry][files][hostile]") {
  check_fates(test::good_files());
}

TEST_CASE("counts that lie are found out", "[geometry][files][hostile]") {
  check_fates(test::lying_counts());
}

TEST_CASE("corners that are not there are found out", "[geometry][files][hostile]") {
  check_fates(test::bad_indices());
}

TEST_CASE("numbers that are none, or none a mould could have, are refused",
          "[geometry][files][hostile]") {
  check_fates(test::odd_numbers());
}

TEST_CASE("marks, line ends, capitals and odd keywords change nothing or are refused",
          "[geometry][files][hostile]") {
  check_fates(test::odd_texts());
}

TEST_CASE("3MF packages made to hurt are refused in time", "[geometry][files][hostile]") {
  check_fates(test::hostile_packages());
}

TEST_CASE("glTF scenes made to hurt are refused in time", "[geometry][files][hostile]") {
  check_fates(test::hostile_scenes());
}

/// Tells which files in some folders were opened, written or made.
class Watch {
 public:
  explicit Watch(const std::vector<std::string>& folders)
      : descriptor_(::inotify_init1(IN_NONBLOCK)) {
    REQUIRE(descriptor_ >= 0);
    for (const std::string& folder : folders) {
      const std::uint32_t events = IN_OPEN | IN_ACCESS | IN_MODIFY | IN_CREATE | IN_DELETE;
      REQUIRE(::inotify_add_watch(descriptor_, folder.c_str(), events) >= 0);
    }
  }
  ~Watch() { ::close(descriptor_); }
  Watch(const Watch&) = delete;
  Watch& operator=(const Watch&) = delete;

  std::set<std::string> touched() const {
    std::set<std::string> names;
    std::array<char, 1 << 16> buffer{};
    for (ssize_t got = 0; (got = ::read(descriptor_, buffer.data(), buffer.size())) > 0;) {
      for (std::size_t at = 0; at < static_cast<std::size_t>(got);) {
        inotify_event event{};
        std::memcpy(&event, &buffer[at], sizeof event);
        if (event.len > 0) names.insert(&buffer[at + sizeof event]);
        at += sizeof event + event.len;
      }
    }
    return names;
  }

 private:
  int descriptor_;
};

void write(const std::string& path, const std::string& bytes) {
  std::ofstream(path, std::ios::binary) << bytes;
}

TEST_CASE("the watch would notice", "[geometry][files][hostile]") {
  const ScratchFile scratch("canary.bin", "tweet");
  const Watch watch({std::filesystem::path(scratch.path()).parent_path().string()});
  CHECK(watch.touched().empty());
  CHECK(std::ifstream(scratch.path()).get() == 't');
  CHECK(watch.touched() == std::set<std::string>{"canary.bin"});
}

TEST_CASE("no file is opened but the mesh itself, whatever it points at",
          "[geometry][files][hostile]") {
  const ScratchFile scratch("inner/none", "");
  const std::string inner = std::filesystem::path(scratch.path()).parent_path().string();
  const std::string outer = std::filesystem::path(inner).parent_path().string();
  // Where a mesh's data could be: a reader that followed the path would find a buffer's length.
  for (const std::string& folder : {inner, outer}) {
    write(folder + "/canary.bin", std::string(240, '\0'));
  }
  for (const HostileFile& file : test::files_that_point_at(outer)) {
    write(inner + "/" + file.name, file.bytes);
    const Watch watch({inner, outer});
    check_fate(file, inner + "/" + file.name);
    INFO(file.name);
    CHECK(watch.touched() == std::set<std::string>{file.name});
  }
  std::filesystem::remove_all(outer);
}

}  // namespace
}  // namespace brimwright::geometry
