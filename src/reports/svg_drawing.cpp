#include "reports/svg_drawing.h"

#include "reports/xml_text.h"
#include "units/printing.h"

#include <string>
#include <vector>

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

/// One that is level or upright is told by its end's one number.
std::string short_path_of(const PaperLine& points) {
  const auto &from = points.front(), &to = points.back();
  if (from[1] == to[1]) return path_of(PaperLine{from}) + "H" + number(to[0]);
  if (from[0] == to[0]) return path_of(PaperLine{from}) + "V" + number(to[1]);
  return path_of(points);
}

std::string tile_of(const Hatching& hatching) {
  std::string tile, path;
  for (const PaperPoint& dot : hatching.dots)
    tile += "<circle" + attribute("cx", dot[0]) + attribute("cy", dot[1]) +
            attribute("r", hatching_dot_mm) + "/>";
  for (const PaperLine& line : hatching.lines) path += short_path_of(line);
  if (!path.empty())
    tile += "<path d=\"" + path + "\" fill=\"none\" stroke=\"#000\"" +
            attribute("stroke-width", hatching_line_mm) + "/>";
  return tile;
}

/// A drawing's file while it is written.
class Svg {
 public:
  explicit Svg(const Drawing& drawing) : drawing_(drawing) {
    style("words", "font-family:Helvetica,Arial,'Liberation Sans',sans-serif;fill:#000");
    for (const LookDrawn& look : looks()) define(look);
    for (const Mark& mark : drawing.marks) std::visit([this](const auto& its) { add(its); }, mark);
  }

  std::string file() const {
    const std::string width = number(drawing_.width_mm), height = number(drawing_.height_mm);
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
           "<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" role=\"img\" width=\"" +
           width + "mm\" height=\"" + height + "mm\" viewBox=\"0 0 " + width + " " + height +
           "\">\n<title>" + xml_escaped(drawing_.title) + "</title>\n<style>\n" + styles_ +
           "</style>\n<defs>\n" + definitions_ + "</defs>\n" + body_ + "</svg>\n";
  }

 private:
  void style(const std::string& look, const std::string& declarations) {
    styles_ += "." + drawing_.prefix + "-" + look + "{" + declarations + "}\n";
  }

  void define(const LookDrawn& look) {
    if (look.fill == LookDrawn::Fill::hatching) define_tile(look);
    style(look.name, "fill:" + fill_of(look) + ";" + stroke_of(look));
  }

  void define_tile(const LookDrawn& look) {
    const std::string size = number(look.hatching.tile_mm);
    definitions_ += "<pattern id=\"" + tile_name(look) +
                    "\" patternUnits=\"userSpaceOnUse\" width=\"" + size + "\" height=\"" + size +
                    "\">" + tile_of(look.hatching) + "</pattern>\n";
  }

  std::string tile_name(const LookDrawn& look) const {
    return drawing_.prefix + "-pattern-" + look.name;
  }

  std::string fill_of(const LookDrawn& look) const {
    switch (look.fill) {
      case LookDrawn::Fill::none:
        return "none";
      case LookDrawn::Fill::black:
        return "#000";
      case LookDrawn::Fill::white:
        return "#fff";
      case LookDrawn::Fill::hatching:
        break;
    }
    return "url(#" + tile_name(look) + ")";
  }

  static std::string stroke_of(const LookDrawn& look) {
    if (look.line_mm == 0) return "stroke:none";
    std::string stroke = "stroke:#000;stroke-width:" + number(look.line_mm);
    if (look.joins_are_round) stroke += ";stroke-linejoin:round";
    for (std::size_t i = 0; i < look.dashes_mm.size(); ++i)
      stroke += (i == 0 ? ";stroke-dasharray:" : " ") + number(look.dashes_mm[i]);
    return stroke;
  }

  std::string shape(const std::string& element, const std::string& look) const {
    return "<" + element + " class=\"" + drawing_.prefix + "-" + look + "\"";
  }
  std::string shape(const std::string& element, Look look) const {
    return shape(element, drawn(look).name);
  }

  void add(const OpenLine& line) {
    body_ += shape("path", line.look) + " d=\"" + path_of(line.points) + "\"/>\n";
  }

  void add(const ClosedLines& area) {
    body_ +=
        shape("path", area.look) + " fill-rule=\"evenodd\" d=\"" + path_of(area.lines) + "\"/>\n";
  }

  void add(const Rectangle& box) {
    const std::string rectangle = shape("rect", box.look) + attribute("x", box.corner[0]) +
                                  attribute("y", box.corner[1]) + attribute("width", box.width_mm) +
                                  attribute("height", box.height_mm) + "/>\n";
    if (box.inside.empty()) {
      body_ += rectangle;
      return;
    }
    const std::string clip = drawing_.prefix + "-clip-" + std::to_string(++clips_);
    definitions_ += "<clipPath id=\"" + clip + "\"><path clip-rule=\"evenodd\" d=\"" +
                    path_of(box.inside) + "\"/></clipPath>\n";
    body_ += "<g clip-path=\"url(#" + clip + ")\">" + rectangle + "</g>\n";
  }

  void add(const Circle& circle) {
    body_ += shape("circle", circle.look) + attribute("cx", circle.middle[0]) +
             attribute("cy", circle.middle[1]) + attribute("r", circle.radius_mm) + "/>\n";
  }

  void add(const DrawnWords& words) {
    using Anchor = Lettering::Anchor;
    const auto& [at, text, lettering] = words;
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

  const Drawing& drawing_;
  std::string styles_, definitions_, body_;
  int clips_ = 0;
};

}  // namespace

std::string svg_of(const Drawing& drawing) { return Svg(drawing).file(); }

}  // namespace brimwright::reports
