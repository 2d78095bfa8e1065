#include "reports/mould_picture.h"

#include "moulds/mould_file.h"
#include "reports/picture_sheet.h"
#include "reports/xml_text.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <charconv>
#include <cmath>
#include <filesystem>
#include <set>
#include <stdexcept>
#include <string>
#include <vector>

namespace brimwright::reports {
namespace {

namespace fs = std::filesystem;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;

const fs::path shipped = BRIMWRIGHT_SOURCE_DIR;

moulds::Mould catalogue_mould(const std::string& name) {
  return moulds::read_mould((shipped / "moulds" / (name + ".json")).string(),
                            {.shipped = shipped.string(), .folders = {}});
}

MouldPicture three_layers(const moulds::Mould& mould) {
  const Length height = mould.curve.height();
  return {.pour_line = 0.9 * height,
          .layers = {{"white", Length(), 0.3 * height},
                     {"rose & \"gold\" <fine>", 0.3 * height, 0.35 * height},
                     {"charcoal", 0.35 * height, 0.9 * height}},
          .depths = {0.25 * height, 0.5 * height}};
}

/// A tag as it stands: "rect", its attributes in order.
struct Tag {
  std::string name;
  std::vector<std::pair<std::string, std::string>> attributes;

  std::string operator[](const std::string& wanted) const {
    for (const auto& [key, value] : attributes)
      if (key == wanted) return value;
    return {};
  }
};

/// Reads XML by its rules for nesting, attributes and references alone; throws where one is broken.
std::vector<Tag> tags_of(const std::string& xml) {
  std::vector<Tag> tags;
  std::vector<std::string> open;
  std::size_t at = xml.starts_with("<?xml") ? xml.find("?>") + 2 : 0;
  const auto check_text = [](const std::string& text) {
    for (std::size_t i = text.find('&'); i != std::string::npos; i = text.find('&', i + 1)) {
      const std::string name = text.substr(i + 1, text.find(';', i) - i - 1);
      if (!std::set<std::string>{"amp", "lt", "gt", "quot"}.contains(name))
        throw std::runtime_error("reference " + name);
    }
    if (text.find('<') != std::string::npos) throw std::runtime_error("bare <");
  };
  while (at < xml.size()) {
    const std::size_t start = std::min(xml.find('<', at), xml.size());
    check_text(xml.substr(at, start - at));
    if (start == xml.size()) break;
    const std::size_t end = xml.find('>', start);
    std::string inside = xml.substr(start + 1, end - start - 1);
    at = end + 1;
    if (inside.starts_with('/')) {
      if (open.empty() || open.back() != inside.substr(1)) throw std::runtime_error("</" + inside);
      open.pop_back();
      continue;
    }
    const bool is_whole = inside.ends_with('/');
    if (is_whole) inside.pop_back();
    Tag tag{.name = inside.substr(0, inside.find(' ')), .attributes = {}};
    for (std::size_t i = tag.name.size(); i < inside.size();) {
      const std::size_t equals = inside.find("=\"", i);
      if (equals == std::string::npos) throw std::runtime_error("attribute in " + inside);
      const std::size_t close = inside.find('"', equals + 2);
      if (close == std::string::npos) throw std::runtime_error("quote in " + inside);
      tag.attributes.emplace_back(inside.substr(i + 1, equals - i - 1),
                                  inside.substr(equals + 2, close - equals - 2));
      check_text(tag.attributes.back().second);
      i = close + 1;
    }
    if (!is_whole) open.push_back(tag.name);
    tags.push_back(std::move(tag));
  }
  if (!open.empty()) throw std::runtime_error("open " + open.back());
  return tags;
}

std::vector<double> numbers_in(const std::string& text) {
  std::vector<double> numbers;
  for (const char* at = text.data(); at < text.data() + text.size();) {
    double number = 0;
    const auto [end, error] = std::from_chars(at, text.data() + text.size(), number);
    if (error == std::errc()) numbers.push_back(number);
    at = error == std::errc() ? end : at + 1;
  }
  return numbers;
}

/// Lowest and highest x and y of a path's points.
struct Extent {
  double left = 1e9, right = -1e9, top = 1e9, bottom = -1e9;
};

Extent extent_of(const std::vector<Tag>& tags, const std::string& look, std::size_t which) {
  std::size_t seen = 0;
  for (const Tag& tag : tags) {
    if (tag["class"] != "mould-" + look || seen++ != which) continue;
    Extent extent;
    const auto numbers = numbers_in(tag["d"]);
    for (std::size_t i = 0; i + 1 < numbers.size(); i += 2) {
      extent.left = std::min(extent.left, numbers[i]);
      extent.right = std::max(extent.right, numbers[i]);
      extent.top = std::min(extent.top, numbers[i + 1]);
      extent.bottom = std::max(extent.bottom, numbers[i + 1]);
    }
    return extent;
  }
  throw std::runtime_error("no " + look);
}

}  // namespace

TEST_CASE("every mould of the catalogue has a picture that is sound XML and fits A4 and Letter",
          "[reports][picture]") {
  for (const auto& entry : fs::directory_iterator(shipped / "moulds")) {
    if (entry.path().extension() != ".json") continue;
    CAPTURE(entry.path().string());
    const moulds::Mould mould = catalogue_mould(entry.path().stem().string());
    const std::string svg = mould_picture_svg(mould, three_layers(mould));
    const auto tags = tags_of(svg);
    REQUIRE(tags.front().name == "svg");
    const auto box = numbers_in(tags.front()["viewBox"]);
    REQUIRE(box.size() == 4);
    // A4 is 210 x 297 mm (ISO 216), Letter 8.5 x 11 in; less 10 mm on each side.
    CHECK(box[2] <= std::min(210.0, 8.5 * 25.4) - 20);
    CHECK(box[3] <= std::min(297.0, 11 * 25.4) - 20);
    // A unit of the picture is a millimetre of paper.
    CHECK(numbers_in(tags.front()["width"]).front() == box[2]);
    CHECK(tags.front()["width"].ends_with("mm"));
    CHECK(numbers_in(tags.front()["height"]).front() == box[3]);
    for (const Tag& tag : tags)
      if (tag.name == "path" && tag["class"] != "")
        for (const double number : numbers_in(tag["d"])) CHECK((number > -2 && number < 259));
    CHECK(mould_picture_svg(mould, three_layers(mould)) == svg);
  }
}

TEST_CASE("a bar that fits the page is drawn in true size", "[reports][picture]") {
  // lettered_bar.json: 78 x 52 mm at the brim, 26 mm deep, draft 2 degrees: 2 x 26 x tan 2 = 1.816
  // mm shorter at the floor.
  const moulds::Mould bar = catalogue_mould("lettered_bar");
  MouldPicture what;
  what.pour_line = 23 * millimetre;
  const std::string svg = mould_picture_svg(bar, what);
  const auto tags = tags_of(svg);
  const Extent section = extent_of(tags, "wall", 0), plan = extent_of(tags, "wall", 1);
  CHECK_THAT(section.right - section.left, WithinAbs(78, 2e-3));
  CHECK_THAT(section.bottom - section.top, WithinAbs(26, 2e-3));
  CHECK_THAT(plan.right - plan.left, WithinAbs(78, 2e-3));
  CHECK_THAT(plan.bottom - plan.top, WithinAbs(52, 2e-3));
  CHECK_THAT(plan.left, WithinAbs(section.left, 1e-9));
  const Extent pour = extent_of(tags, "pour", 0);
  CHECK_THAT(section.bottom - pour.bottom, WithinAbs(23, 2e-3));
  CHECK_THAT(svg, Contains("Scale 1:1. True size when printed at 100 %"));
  // 78 / 25.4 = 3.07 in, 76.184 mm = 3.00 in, 26 mm = 1.02 in, to the sixteenth.
  CHECK_THAT(svg, Contains(">78 mm (3 1/16 in)<") && Contains(">76.2 mm (3 in)<"));
  CHECK_THAT(svg, Contains(">brim 26 mm (1 in)<") && Contains(">52 mm (2 1/16 in)<"));
  CHECK_THAT(svg, Contains("headspace 3 mm (1/8 in)"));
}

TEST_CASE("a loaf that does not fit is drawn at half size, and says so", "[reports][picture]") {
  const moulds::Mould loaf = catalogue_mould("loaf_short");  // 190 x 74 mm, 68 mm high
  const std::string svg = mould_picture_svg(loaf, {});
  const Extent section = extent_of(tags_of(svg), "wall", 0);
  CHECK_THAT(section.right - section.left, WithinAbs(95, 2e-3));
  CHECK_THAT(section.bottom - section.top, WithinAbs(34, 2e-3));
  CHECK_THAT(svg, Contains("Scale 1:2. ") && Contains(">100 mm<") && Contains(">4 in<"));
  CHECK_THAT(svg, !Contains("True size"));
}

TEST_CASE("the scale bars are as long on paper as they say", "[reports][picture]") {
  const auto tags = tags_of(mould_picture_svg(catalogue_mould("plain_bar"), {}));
  double first = 0, second = 0;
  for (const Tag& tag : tags) {
    if (tag.name != "rect" || tag["height"] != "1.6") continue;
    const double width = numbers_in(tag["width"]).front();
    (numbers_in(tag["x"]).front() < 90 ? first : second) += width;
  }
  CHECK_THAT(first, WithinAbs(50, 1e-9));
  CHECK_THAT(second, WithinAbs(2 * 25.4, 1e-9));
}

TEST_CASE("layers lie in the section from and to where they were poured", "[reports][picture]") {
  const moulds::Mould bar = catalogue_mould("lettered_bar");
  const MouldPicture what{
      .pour_line = 20 * millimetre,
      .layers = {{"white", Length(), 12 * millimetre}, {"rose", 12 * millimetre, 20 * millimetre}},
      .depths = {}};
  const auto tags = tags_of(mould_picture_svg(bar, what));
  const double floor = extent_of(tags, "wall", 0).bottom;
  std::vector<std::array<double, 2>> found;  // from and to, above the floor, in the order of layers
  for (const Tag& tag : tags) {
    if (tag.name != "rect" || !tag["class"].starts_with("mould-hatch")) continue;
    const double top = numbers_in(tag["y"]).front(), tall = numbers_in(tag["height"]).front();
    if (found.size() < 2) found.push_back({floor - top - tall, floor - top});
  }
  REQUIRE(found.size() == 2);
  CHECK_THAT(found[0][0], WithinAbs(0, 2e-3));
  CHECK_THAT(found[0][1], WithinAbs(12, 2e-3));
  CHECK_THAT(found[1][0], WithinAbs(12, 2e-3));
  CHECK_THAT(found[1][1], WithinAbs(20, 2e-3));
}

TEST_CASE("eight layers have eight hatchings, told apart without colour", "[reports][picture]") {
  const moulds::Mould bar = catalogue_mould("plain_bar");
  MouldPicture what;
  for (int i = 0; i < 8; ++i)
    what.layers.push_back(
        {"layer " + std::to_string(i), 2.0 * i * millimetre, 2.0 * (i + 1) * millimetre});
  const std::string svg = mould_picture_svg(bar, what);
  std::set<std::string> patterns, used;
  for (std::size_t at = svg.find("<pattern"); at != std::string::npos;
       at = svg.find("<pattern", at + 1)) {
    const std::size_t drawn = svg.find('>', at);
    patterns.insert(svg.substr(drawn, svg.find("</pattern>", drawn) - drawn));
  }
  for (const Tag& tag : tags_of(svg))
    if (tag["class"].starts_with("mould-hatch")) used.insert(tag["class"]);
  CHECK(patterns.size() == 8);
  CHECK(used.size() == 8);
  // Black and white are the only colours in the file.
  for (std::size_t at = svg.find('#'); at != std::string::npos; at = svg.find('#', at + 1)) {
    const std::string colour = svg.substr(at + 1, 3);
    CHECK((colour == "000" || colour == "fff" || colour.starts_with("mou")));
  }
}

TEST_CASE("labels stand clear of each other and beside the drawing", "[reports][picture]") {
  const moulds::Mould ring = catalogue_mould("half_ring_tray");  // 12 mm deep
  MouldPicture what = three_layers(ring);
  for (int i = 1; i <= 9; ++i) what.depths.push_back((5 + 0.1 * i) * millimetre);
  const std::string svg = mould_picture_svg(ring, what);
  std::vector<double> heights;
  for (const Tag& tag : tags_of(svg)) {
    if (tag.name != "text" || tag["transform"] != "" || tag["text-anchor"] != "") continue;
    const double x = numbers_in(tag["x"]).front();
    if (x > 100) heights.push_back(numbers_in(tag["y"]).front());
  }
  std::sort(heights.begin(), heights.end());
  REQUIRE(heights.size() >= 16);  // brim, pour line, three layers, eleven depths
  for (std::size_t i = 1; i < 16; ++i) CHECK(heights[i] - heights[i - 1] > 4.39);
}

TEST_CASE("names cannot break the picture or reach out of it", "[reports][picture]") {
  moulds::Mould mould = catalogue_mould("plain_bar");
  mould.name = "</text><script>alert(\"1\")</script> & \xC3\x96l \x01\xFF\xC0\x80";
  MouldPicture what = three_layers(mould);
  what.layers[0].name = std::string(400, 'w') + "]]><!--";
  const std::string svg = mould_picture_svg(mould, what);
  for (const Tag& tag : tags_of(svg)) CHECK(tag.name != "script");
  CHECK_THAT(svg, Contains("&lt;script&gt;alert(&quot;1&quot;)&lt;/script&gt; &amp; \xC3\x96l"));
  CHECK(svg.find('\x01') == std::string::npos);
  CHECK(svg.find('\xFF') == std::string::npos);
  // Bytes that are not UTF-8, one by one: 0xFF, and the overlong 0xC0 0x80.
  CHECK(xml_escaped("\xFF\xC0\x80") == "\xEF\xBF\xBD\xEF\xBF\xBD\xEF\xBF\xBD");
  // Half a surrogate pair, no character, byte by byte as well (The Unicode Standard, 3.9,
  // substitution of maximal subparts: 0xED 0xA0 begins none); the euro sign.
  CHECK(xml_escaped("\xED\xA0\x80 \xE2\x82\xAC") ==
        "\xEF\xBF\xBD\xEF\xBF\xBD\xEF\xBF\xBD \xE2\x82\xAC");
}

TEST_CASE("two pictures on one page keep their names apart", "[reports][picture]") {
  const moulds::Mould bar = catalogue_mould("plain_bar");
  MouldPicture what = three_layers(bar);
  what.prefix = "second";
  for (const Tag& tag : tags_of(mould_picture_svg(bar, what))) {
    for (const char* name : {"class", "id"})
      if (!tag[name].empty()) CHECK(tag[name].starts_with("second-"));
    if (!tag["clip-path"].empty()) CHECK(tag["clip-path"].starts_with("url(#second-"));
  }
}

TEST_CASE("the numbers in a picture are the mould's own", "[reports][picture]") {
  // lettered_bar.json: water found more or less than the dimensions; the volumes shown follow it.
  const moulds::Mould bar = catalogue_mould("lettered_bar");
  REQUIRE(bar.detail_factor != 1);
  const std::string svg = mould_picture_svg(bar, {.pour_line = 23 * millimetre});
  const double ml = bar.curve.volume_below(23 * millimetre) / millilitre;
  // The weighings' mean, 85.53 g of water at 20 degrees (0.99820 g/ml, Kell 1975) to 3 mm below the
  // brim, is 85.7 ml.
  CHECK_THAT(ml, WithinAbs(85.69, 0.02));
  CHECK_THAT(svg, Contains("To the pour line 85.7 ml"));
  CHECK_THAT(svg, Contains("Volumes are as weighed with water"));
}

TEST_CASE("a picture is not asked for depths outside its cavity", "[reports][picture]") {
  const moulds::Mould bar = catalogue_mould("plain_bar");
  const Length above = bar.curve.height() + 1 * millimetre;
  CHECK_THROWS_AS(mould_picture_svg(bar, {.pour_line = above}), std::logic_error);
  CHECK_THROWS_AS(mould_picture_svg(bar, {.depths = {-1 * millimetre}}), std::logic_error);
  CHECK_THROWS_AS(mould_picture_svg(bar, {.layers = {{"x", 5 * millimetre, 2 * millimetre}}}),
                  std::logic_error);
  CHECK_NOTHROW(mould_picture_svg(bar, {.pour_line = bar.curve.height()}));
}

TEST_CASE("lines of words are broken where they must be", "[reports][picture]") {
  const double room = width_of("twelve chars", 3);
  CHECK(broken("one two three four", 3, room) == std::vector<std::string>{"one two", "three four"});
  for (const std::string& line : broken(std::string(50, 'm') + " n", 3, room))
    CHECK(width_of(line, 3) <= room);
  CHECK(broken("", 3, room).empty());
}

}  // namespace brimwright::reports
