#include "moulds/library.h"

#include "scratch_folder.h"

#include <catch2/catch.hpp>

#include <filesystem>

namespace brimwright::moulds {
namespace {

namespace fs = std::filesystem;

/// A studio's folder, a shipped catalogue, a library, and something private beside them.
struct World {
  ScratchFolder scratch;
  std::string run = scratch.write("studio/run.json", "{}");
  std::string own = scratch.write("studio/moulds/own.json", "{}");
  std::string shipped_mould = scratch.write("shipped/moulds/bowl.json", "{}");
  std::string shipped_mesh = scratch.write("shipped/meshes/cup.stl", "x");
  std::string in_library = scratch.write("shelf/bar.json", "{}");
  std::string secret = scratch.write("private/diary.txt", "dear diary");
  Library library{.shipped = (scratch.path() / "shipped").string(),
                  .folders = {(scratch.path() / "shelf").string()}};

  std::string complaint(const std::string& name, const std::string& from) const {
    try {
      return "accepted: " + library.resolve(name, {from, "/mould"});
    } catch (const UserError& error) {
      CHECK(error.parts().field == "/mould");
      CHECK(error.parts().file == from);
      return error.what();
    }
  }
};

}  // namespace

TEST_CASE("a file is found beside the file that names it, then in the catalogue, then on the shelf",
          "[moulds][library]") {
  const World world;
  CHECK(world.library.resolve("moulds/own.json", {world.run, ""}) == world.own);
  CHECK(world.library.resolve("./moulds/../moulds/own.json", {world.run, ""}) == world.own);
  CHECK(world.library.resolve("moulds/bowl.json", {world.run, ""}) == world.shipped_mould);
  CHECK(world.library.resolve("bar.json", {world.run, ""}) == world.in_library);
  CHECK(world.library.resolve(world.in_library, {world.run, ""}) == world.in_library);
}

TEST_CASE("a studio's own file stands before the catalogue's of the same name",
          "[moulds][library]") {
  const World world;
  const std::string mine = world.scratch.write("studio/moulds/bowl.json", "{}");
  CHECK(world.library.resolve("moulds/bowl.json", {world.run, ""}) == mine);
}

TEST_CASE("a catalogue mould reaches the mesh beside its folder", "[moulds][library]") {
  const World world;
  CHECK(world.library.resolve("../meshes/cup.stl", {world.shipped_mould, ""}) ==
        world.shipped_mesh);
}

TEST_CASE("a name that leads out of the folders is refused", "[moulds][library]") {
  const World world;
  const std::string outside = "but not in any folder brimwright may read: ";
  CHECK_THAT(world.complaint("../private/diary.txt", world.run),
             Catch::Matchers::Contains(outside));
  CHECK_THAT(world.complaint("moulds/../../private/diary.txt", world.run),
             Catch::Matchers::Contains(outside));
  CHECK_THAT(world.complaint(world.secret, world.run), Catch::Matchers::Contains(outside));
  CHECK_THAT(world.complaint("/etc/passwd", world.run), Catch::Matchers::Contains(outside));
  // A folder that only begins with an allowed folder's name is another folder.
  world.scratch.write("studio2/x.json", "{}");
  CHECK_THAT(world.complaint("../studio2/x.json", world.run), Catch::Matchers::Contains(outside));
}

TEST_CASE("a file that is there, but outside, was said not to be found", "[moulds][library]") {
  const World world;
  const std::string there = world.complaint("../private/diary.txt", world.run);
  CHECK_THAT(there,
             Catch::Matchers::Contains("\"../private/diary.txt\" is there, as " + world.secret));
  CHECK_THAT(there, Catch::Matchers::Contains(
                        "copy it beside this file, or allow its folder with library \"" +
                        (world.scratch.path() / "private").string() + "\""));
  CHECK_THAT(there, !Catch::Matchers::Contains("dear diary"));
  const std::string missing = world.complaint("../private/no-such.txt", world.run);
  CHECK_THAT(missing, Catch::Matchers::Contains("there is no file \"../private/no-such.txt\""));
  CHECK_THAT(missing, Catch::Matchers::Contains("it leads out of the folders"));
  // With its folder allowed, it is found.
  Library wider = world.library;
  wider.folders.push_back((world.scratch.path() / "private").string());
  CHECK(wider.resolve("../private/diary.txt", {world.run, ""}) == world.secret);
}

TEST_CASE("a link is followed before its place is judged", "[moulds][library]") {
  const World world;
  const fs::path studio = world.scratch.path() / "studio";
  fs::create_symlink(world.secret, studio / "link.json");
  fs::create_directory_symlink(world.scratch.path() / "private", studio / "door");
  fs::create_symlink(world.own, studio / "fine.json");
  fs::create_symlink("loop.json", studio / "loop.json");
  CHECK_THAT(world.complaint("link.json", world.run),
             Catch::Matchers::Contains("not in any folder"));
  CHECK_THAT(world.complaint("door/diary.txt", world.run),
             Catch::Matchers::Contains("not in any folder"));
  CHECK(world.library.resolve("fine.json", {world.run, ""}) == world.own);
  CHECK_THROWS_AS(world.library.resolve("loop.json", {world.run, ""}), UserError);
}

TEST_CASE("a slip in a file's name was answered with a list of folders", "[moulds][library]") {
  const World world;
  const auto says = [&](const std::string& name) { return world.complaint(name, world.run); };
  CHECK_THAT(says("moulds/bowll.json"),
             Catch::Matchers::Contains("did you mean \"moulds/bowl.json\"?"));
  CHECK_THAT(says("bowl.json"), Catch::Matchers::Contains("did you mean \"moulds/bowl.json\"?"));
  CHECK_THAT(says("mould/own.json"),
             Catch::Matchers::Contains("did you mean \"moulds/own.json\"?"));
  // What lies beside the folders that may be read is not looked at.
  CHECK(says("private/diary.tx").find("did you mean") == std::string::npos);
}

TEST_CASE("what is no regular file is refused, saying where it was looked for",
          "[moulds][library]") {
  const World world;
  const std::string missing = world.complaint("nowhere.json", world.run);
  CHECK_THAT(missing, Catch::Matchers::Contains("there is no file \"nowhere.json\""));
  CHECK_THAT(missing, Catch::Matchers::Contains((world.scratch.path() / "shelf").string()));
  CHECK_THAT(world.complaint("moulds", world.run), Catch::Matchers::Contains("there is no file"));
  CHECK_THROWS_AS(world.library.resolve("", {world.run, ""}), UserError);
  CHECK_THROWS_AS(world.library.resolve(std::string("a\0b", 3), {world.run, ""}), UserError);
  CHECK_THROWS_AS(world.library.resolve(std::string(5000, 'a'), {world.run, ""}), UserError);
}

}  // namespace brimwright::moulds
