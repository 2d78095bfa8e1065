#include "service/json_parts.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <random>
#include <stdexcept>
#include <string>

using brimwright::service::JsonParts;
using Json = nlohmann::ordered_json;

namespace {

/// Nested at random, with marks of JSON's own in its texts.
class Chance {
 public:
  explicit Chance(unsigned seed) : random_(seed) {}

  Json value(int depth) {
    const int kind = up_to(depth > 4 ? 3 : 6);
    if (kind == 0) return text();
    if (kind == 1) return up_to(1000) / 8.0 - 50;
    if (kind == 2) return up_to(1) == 1 ? Json(nullptr) : Json(up_to(1) == 1);
    if (kind == 3) return up_to(100'000);
    Json json = kind == 4 ? Json::array() : Json::object();
    for (int n = up_to(5); n > 0; --n)
      if (kind == 4)
        json.push_back(value(depth + 1));
      else
        json["key" + std::to_string(n)] = value(depth + 1);
    return json;
  }

 private:
  int up_to(int most) { return std::uniform_int_distribution(0, most)(random_); }
  std::string text() {
    static const std::string marks = "{}[]\",:\\ \nab\u00e9";
    std::string text;
    for (int n = up_to(12); n > 0; --n)
      text += marks[static_cast<std::size_t>(up_to(10))];  // no half of a letter
    return text;
  }

  std::mt19937 random_;
};

/// The same document put together of its parts, as nlohmann's library reads each that has no parts.
Json rebuilt(const JsonParts& parts, const JsonParts::Part& part) {
  if (part.text.front() == '{') {
    Json json = Json::object();
    parts.each_member(part, [&](std::string_view key, const JsonParts::Part& value) {
      json[std::string(key)] = rebuilt(parts, value);
    });
    return json;
  }
  if (part.text.front() == '[') {
    Json json = Json::array();
    parts.each_element(
        part, [&](const JsonParts::Part& value) { json.push_back(rebuilt(parts, value)); });
    return json;
  }
  return Json::parse(part.text.begin(), part.text.end());
}

}  // namespace

TEST_CASE("put together of its parts a document is what it was", "[json]") {
  for (unsigned seed = 0; seed < 300; ++seed) {
    const Json json = Chance(seed).value(0);
    for (const int indent : {-1, 2}) {
      const std::string text = " " + json.dump(indent) + "\n";
      const JsonParts parts(text);
      if (json.is_object() || json.is_array()) CHECK(rebuilt(parts, parts.whole()) == json);
    }
  }
}

TEST_CASE("a document that is cut off is refused, wherever it ends", "[json]") {
  const std::string text = R"({"a": [1, {"b": "}\"]"}], "c": {"d": null}})";
  for (std::size_t length = 0; length < text.size(); ++length) {
    INFO(text.substr(0, length));
    const std::string cut = text.substr(0, length);
    CHECK_THROWS_AS(JsonParts(cut).whole(), std::runtime_error);
  }
}

TEST_CASE("what is no JSON is refused", "[json]") {
  for (const std::string text : {R"({"a" 1})", R"({"a":})", R"({a: 1})", R"({"a": 1 "b": 2})",
                                 R"({"a": 1 [2]})", R"(["a": 1])", R"({]})", R"("a")", "1", ""}) {
    INFO(text);
    CHECK_THROWS_AS(
        [&] {
          const JsonParts parts(text);
          parts.each_member(parts.whole(), [](std::string_view, const JsonParts::Part&) {});
        }(),
        std::runtime_error);
  }
}
