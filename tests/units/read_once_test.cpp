#include "units/read_once.h"

#include "units/user_error.h"

#include <catch2/catch.hpp>
#include <unistd.h>

#include <cstdint>
#include <filesystem>
#include <fstream>
#include <string>

using namespace brimwright;

namespace {

class OneFile {
 public:
  explicit OneFile(const std::string& text) { write(text); }
  ~OneFile() { std::filesystem::remove(path_); }
  OneFile(const OneFile&) = delete;
  OneFile& operator=(const OneFile&) = delete;

  void write(const std::string& text) const { std::ofstream(path_) << text; }
  std::string path() const { return path_.string(); }

 private:
  std::filesystem::path path_ =
      std::filesystem::temp_directory_path() / ("read_once_" + std::to_string(getpid()) + ".json");
};

// What is expected is what the file held, as written here.
std::int64_t sell_in(const Fields& document) { return document.whole_number("sell", 1, 100); }

}  // namespace

TEST_CASE("within one answer a file stays as it was when it was read", "[units]") {
  const OneFile file(R"({ "sell": 12 })");
  ReadOnce answer;
  CHECK(answer.text(file.path()) == nullptr);
  CHECK(sell_in(answer.document(file.path())) == 12);
  file.write(R"({ "sell": 24 })");
  CHECK(sell_in(answer.document(file.path())) == 12);
  REQUIRE(answer.text(file.path()) != nullptr);
  CHECK(*answer.text(file.path()) == R"({ "sell": 12 })");
}

TEST_CASE("the next answer sees what was changed in the file", "[units]") {
  const OneFile file(R"({ "sell": 12 })");
  CHECK(sell_in(ReadOnce().document(file.path())) == 12);
  file.write(R"({ "sell": 24 })");
  CHECK(sell_in(ReadOnce().document(file.path())) == 24);
}

TEST_CASE("who reads a document again is told of its unknown keys again", "[units]") {
  const OneFile file(R"({ "sell": 12, "sel": 1 })");
  ReadOnce answer;
  const Fields first = answer.document(file.path());
  CHECK(first.has("sell"));
  CHECK(first.has("sel"));
  first.refuse_unknown();
  const Fields second = answer.document(file.path());
  CHECK(second.has("sell"));
  CHECK_THROWS_AS(second.refuse_unknown(), UserError);  // nobody asked this one for "sel"
}

TEST_CASE("what is made of a file is made once for an answer, each kind of thing by itself",
          "[units]") {
  ReadOnce answer;
  int times = 0;
  const auto make = [&] { return ++times; };
  CHECK(*answer.of<int>("a.json", make) == 1);
  CHECK(*answer.of<int>("a.json", make) == 1);
  CHECK(*answer.of<int>("b.json", make) == 2);
  CHECK(*answer.of<std::string>("a.json", [] { return std::string("text"); }) == "text");
}

TEST_CASE("a file that cannot be read is refused each time it is asked for", "[units]") {
  ReadOnce answer;
  CHECK_THROWS_AS(answer.document("no_such_file.json"), UserError);
  CHECK_THROWS_AS(answer.document("no_such_file.json"), UserError);
}
