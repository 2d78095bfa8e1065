#include "reports/svg_drawing.h"

#include "units/printing.h"
#include "units/shown_text.h"

#include <algorithm>
#include <cstdint>
#include <optional>
#include <string_view>

namespace brimwright::reports {
namespace {

std::string number(double value) { return trimmed(value, 3); }

std::string attribute(const char* name, double value) {
  return std::string(" ") + name + "=\"" + number(value) + "\"";
}

std::string path_of(const PaperLine& points) {
  std::string path;
  for (const PaperPoint& p : points)
    path += (path.empty() ? "M" : "L") + number(p[0]) + " " + number(p[1]);
  return path;
}

std::string path_of(const std::vector<PaperLine>& lines) {
  std::string path;
  for (const PaperLine& line : lines) path += path_of(line) + "Z";
  return path;
}

/// XML 1.0, production 2.
bool is_allowed(std::uint32_t code) {
  return code == 0x9 || code == 0xA || code == 0xD || (code >= 0x20 && code <= 0xD7FF) ||
         (code >= 0xE000 && code <= 0xFFFD) || (code >= 0x10000 && code <= 0x10FFFF);
}

std::size_t count_of_characters(std::string_view text) {
  return static_cast<std::size_t>(
      std::count_if(text.begin(), text.end(), [](char c) { return (c & 0xC0) != 0x80; }));
}

/// The start of `text` that is at least one character and, beyond that, no wider than `width`.
std::string_view that_fits(std::string_view text, double size_mm, double width_mm) {
  std::size_t end = 0;
  do {
    ++end;
    while (end < text.size() && (text[end] & 0xC0) == 0x80) ++end;
  } while (end < text.size() && width_of(std::string(text.substr(0, end + 1)), size_mm) < width_mm);
  return text.substr(0, end);
}

}  // namespace

std::string xml_escaped(const std::string& text) {
  constexpr const char* unknown = "\xEF\xBF\xBD";  // U+FFFD
  std::string escaped;
  for (std::string_view rest = text; !rest.empty();) {
    const auto [bytes, number] = first_character(rest);
    const std::string_view shown = rest.substr(0, bytes);
    rest.remove_prefix(bytes);
    if (!number || !is_allowed(*number))
      escaped += unknown;
    else if (shown == "&")
      escaped += "&amp;";
    else if (shown == "<")
      escaped += "&lt;";
    else if (shown == ">")
      escaped += "&gt;";
    else if (shown == "\"")
      escaped += "&quot;";
    else
      escaped += shown;
  }
  return escaped;
}

double width_of(const std::string& text, double size_mm) {
  constexpr double character = 0.56;  // of the size; measured over labels set in common sans serifs
  return character * size_mm * static_cast<double>(count_of_characters(text));
}

std::vector<std::string> broken(const std::string& text, double size_mm, double width_mm) {
  std::vector<std::string> lines;
  std::string line;
  std::string_view rest = text;
  while (!rest.empty()) {
    const std::size_t end = std::min(rest.find(' '), rest.size());
    std::string_view word = rest.substr(0, end);
    rest.remove_prefix(std::min(end + 1, rest.size()));
    if (word.empty()) continue;
    const std::string longer = line + (line.empty() ? "" : " ") + std::string(word);
    if (width_of(longer, size_mm) <= width_mm) {
      line = longer;
      continue;
    }
    if (!line.empty()) lines.push_back(std::move(line));
    while (width_of(std::string(word), size_mm) > width_mm && count_of_characters(word) > 1) {
      const std::string_view start = that_fits(word, size_mm, width_mm);
      lines.emplace_back(start);
      word.remove_prefix(start.size());
    }
    line = word;
  }
  if (!line.empty()) lines.push_back(std::move(line));
  return lines;
}

std::string SvgDrawing::shape(const std::string& element, const std::string& look) const {
  return "<" + element + " class=\"" + prefix_ + "-" + look + "\"";
}

void SvgDrawing::line(PaperPoint from, PaperPoint to, const std::string& look) {
  open_line({from, to}, look);
}

void SvgDrawing::open_line(const PaperLine& points, const std::string& look) {
  body_ += shape("path", look) + " d=\"" + path_of(points) + "\"/>\n";
}

void SvgDrawing::closed_lines(const std::vector<PaperLine>& lines, const std::string& look) {
  body_ += shape("path", look) + " fill-rule=\"evenodd\" d=\"" + path_of(lines) + "\"/>\n";
}

void SvgDrawing::rectangle(PaperPoint corner, double width_mm, double height_mm,
                           const std::string& look) {
  body_ += shape("rect", look) + attribute("x", corner[0]) + attribute("y", corner[1]) +
           attribute("width", width_mm) + attribute("height", height_mm) + "/>\n";
}

void SvgDrawing::rectangle_inside(const std::vector<PaperLine>& lines, PaperPoint corner,
                                  double width_mm, double height_mm, const std::string& look) {
  const std::string clip = prefix_ + "-clip-" + std::to_string(++clips_);
  definitions_ += "<clipPath id=\"" + clip + "\"><path clip-rule=\"evenodd\" d=\"" +
                  path_of(lines) + "\"/></clipPath>\n";
  body_ += "<g clip-path=\"url(#" + clip + ")\">";
  rectangle(corner, width_mm, height_mm, look);
  body_ += "</g>\n";
}

void SvgDrawing::circle(PaperPoint middle, double radius_mm, const std::string& look) {
  body_ += shape("circle", look) + attribute("cx", middle[0]) + attribute("cy", middle[1]) +
           attribute("r", radius_mm) + "/>\n";
}

void SvgDrawing::words(PaperPoint at, const std::string& text, const Lettering& lettering) {
  using Anchor = Lettering::Anchor;
  body_ += shape("text", "words") + attribute("font-size", lettering.size_mm);
  if (lettering.upward)
    body_ += " transform=\"translate(" + number(at[0]) + " " + number(at[1]) + ") rotate(-90)\"";
  else
    body_ += attribute("x", at[0]) + attribute("y", at[1]);
  if (lettering.anchor != Anchor::start)
    body_ += std::string(" text-anchor=\"") +
             (lettering.anchor == Anchor::middle ? "middle" : "end") + "\"";
  if (lettering.bold) body_ += " font-weight=\"bold\"";
  body_ += ">" + xml_escaped(text) + "</text>\n";
}

void SvgDrawing::style(const std::string& look, const std::string& declarations) {
  styles_ += "." + prefix_ + "-" + look + "{" + declarations + "}\n";
}

void SvgDrawing::pattern(const std::string& look, double tile_mm, const std::string& drawn) {
  const std::string size = number(tile_mm);
  definitions_ += "<pattern id=\"" + prefix_ + "-pattern-" + look +
                  "\" patternUnits=\"userSpaceOnUse\" width=\"" + size + "\" height=\"" + size +
                  "\">" + drawn + "</pattern>\n";
  style(look, "fill:url(#" + prefix_ + "-pattern-" + look + ");stroke:#000;stroke-width:0.18");
}

std::string SvgDrawing::file(double width_mm, double height_mm, const std::string& title) const {
  const std::string width = number(width_mm), height = number(height_mm);
  return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
         "<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" role=\"img\" width=\"" +
         width + "mm\" height=\"" + height + "mm\" viewBox=\"0 0 " + width + " " + height +
         "\">\n<title>" + xml_escaped(title) + "</title>\n<style>\n" + styles_ +
         "</style>\n<defs>\n" + definitions_ + "</defs>\n" + body_ + "</svg>\n";
}

}  // namespace brimwright::reports
