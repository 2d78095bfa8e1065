#include "reports/mould_picture.h"

#include "moulds/mould_solid.h"
#include "reports/mould_views.h"
#include "reports/picture_sheet.h"
#include "reports/svg_drawing.h"
#include "units/printing.h"
#include "units/wording.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <stdexcept>
#include <utility>

namespace brimwright::reports {
namespace {

using Anchor = Lettering::Anchor;

// Room on the sheet, in millimetres.
constexpr double left_room = 26, label_room = 54;  // for upright dimensions, for labels
constexpr double drawing_room = sheet_width - left_room - label_room;
constexpr double row = 5;             // of the legend
constexpr double dimension_row = 6;   // across, with its text
constexpr double least_section = 30;  // so that upright dimensions have room for their text

void check(const moulds::Mould& mould, const MouldPicture& what) {
  const auto is_inside = [&](Length depth) {
    return depth >= Length() && depth <= mould.curve.height() * (1 + 1e-9);
  };
  bool sound = !what.pour_line || is_inside(*what.pour_line);
  for (const auto& layer : what.layers)
    sound = sound && is_inside(layer.from) && is_inside(layer.to) && layer.from <= layer.to;
  for (const Length depth : what.depths) sound = sound && is_inside(depth);
  if (!sound) throw std::logic_error("a picture shows depths within its cavity");
}

/// A line of the legend; a layer's shows its hatching.
struct LegendRow {
  std::optional<Look> look;
  std::string text;
};

class Picture {
 public:
  Picture(const moulds::Mould& mould, const MouldPicture& what)
      : mould_(mould),
        what_(what),
        solid_(moulds::solid_of(mould, 192)),
        views_(views_of(solid_)),
        sheet_{.prefix = what.prefix, .title = "Mould: " + mould.name},
        height_(mould.curve.height()) {
    title_ = broken(mould.name, title_size, sheet_width);
    subtitle_ = broken(subtitle(), caption_size, sheet_width);
    collect_legend();
    choose_ratio();
  }

  Drawing drawing() {
    sheet_.width_mm = sheet_width;
    sheet_.height_mm = height_for(ratio_);
    sheet_.rectangle({0, 0}, sheet_.width_mm, sheet_.height_mm, Look::paper);
    heading();
    section();
    plan();
    legend();
    footer();
    return std::move(sheet_);
  }

 private:
  std::string subtitle() const {
    std::string text = mould_.description;
    if (mould_.cavities > 1)
      text += (text.empty() ? "" : "; ") + std::string("one of ") +
              std::to_string(mould_.cavities) + " cavities";
    return text;
  }

  // What stands in the legend.

  void collect_legend() {
    for (std::size_t i = 0; i < what_.layers.size(); ++i) {
      const auto& layer = what_.layers[i];
      add_legend(hatching(i),
                 std::to_string(i + 1) + ". " + layer.name + ": " + in_both(layer.to - layer.from) +
                     " thick, " +
                     (layer.from > Length() ? "from " + in_both(layer.from) : "from the floor") +
                     " to " + in_both(layer.to) + ", " +
                     short_ml(held(layer.to) - held(layer.from)));
    }
    if (what_.pour_line)
      add_legend(std::nullopt,
                 "To the pour line " + short_ml(held(*what_.pour_line)) + "; headspace " +
                     in_both(height_ - *what_.pour_line) + ", " +
                     short_ml(held(height_) - held(*what_.pour_line)) + "; 1 mm at the line is " +
                     fixed_ml(mould_.curve.free_surface(*what_.pour_line) * millimetre, 2));
    add_legend(std::nullopt, "To the brim " + short_ml(held(height_)) + " (" +
                                 fixed(held(height_) / us_fluid_ounce, 2) + " US fl oz)");
    if (std::abs(mould_.detail_factor - 1) > 5e-4)
      add_legend(std::nullopt, "Volumes are as weighed with water, " +
                                   trimmed(mould_.detail_factor, 3) +
                                   " times what the drawn shape holds");
  }

  void add_legend(std::optional<Look> look, const std::string& text) {
    bool is_first = true;
    for (const std::string& line : broken(text, label_size, sheet_width - 12)) {
      legend_.push_back({is_first ? look : std::nullopt, line});
      is_first = false;
    }
  }

  Volume held(Length depth) const { return mould_.curve.volume_below(depth); }

  // Where things stand on the sheet.

  double on_paper(double mm, int ratio) const { return mm / ratio; }
  double across_on_paper(int ratio) const {
    return on_paper(views_.across[1] - views_.across[0], ratio);
  }
  double away_on_paper(int ratio) const { return on_paper(views_.away[1] - views_.away[0], ratio); }
  double up_on_paper(int ratio) const { return on_paper(views_.up[1] - views_.up[0], ratio); }

  double heading_height() const {
    return 6.5 * static_cast<double>(title_.size()) + 4.5 * static_cast<double>(subtitle_.size());
  }
  double brim_rows() const {
    return views_.brim_reaches.empty() ? 0 : views_.brim_reaches.size() == 2 ? 2 : 1;
  }
  double section_height(int ratio) const {
    const double labels = label_pitch * static_cast<double>(labels_count());
    return std::max({up_on_paper(ratio), least_section, labels});
  }
  std::size_t labels_count() const {
    return 1 + (what_.pour_line ? 1 : 0) + what_.layers.size() + what_.depths.size();
  }
  double section_top() const { return heading_height() + 9 + dimension_row * brim_rows(); }
  double plan_top(int ratio) const {
    return section_top() + section_height(ratio) + dimension_row + 14;
  }
  double plan_height(int ratio) const { return std::max(away_on_paper(ratio), least_section); }
  double legend_top(int ratio) const { return plan_top(ratio) + plan_height(ratio) + 14; }
  double footer_top(int ratio) const {
    return legend_top(ratio) + row * static_cast<double>(legend_.size()) + 2;
  }
  double height_for(int ratio) const { return footer_top(ratio) + 14; }

  /// The first scale that fits. Where labels and legend alone take more than a page, the drawing
  /// takes no more than its least room.
  void choose_ratio() {
    // ISO 5455:1979, reduction scales
    constexpr std::array ratios = {1, 2, 5, 10, 20, 50, 100, 200, 500, 1000};
    const double tallest = std::max(sheet_height, height_for(ratios.back()));
    for (const int ratio : ratios) {
      ratio_ = ratio;
      if (across_on_paper(ratio) <= drawing_room && height_for(ratio) <= tallest) return;
    }
  }

  double left() const { return left_room + (drawing_room - across_on_paper(ratio_)) / 2; }
  double right() const { return left() + across_on_paper(ratio_); }
  double paper_x(double across) const {
    return left() + on_paper(across - views_.across[0], ratio_);
  }
  double section_bottom() const {
    return section_top() + (section_height(ratio_) + up_on_paper(ratio_)) / 2;
  }
  double paper_z(double up) const { return section_bottom() - on_paper(up - views_.up[0], ratio_); }
  double paper_depth(Length depth) const { return paper_z(views_.up[0] + depth / millimetre); }
  double plan_back() const {
    return plan_top(ratio_) + (plan_height(ratio_) - away_on_paper(ratio_)) / 2;
  }
  double paper_y(double away) const {
    return plan_back() + on_paper(views_.away[1] - away, ratio_);
  }

  std::vector<PaperLine> section_on_paper() const {
    std::vector<PaperLine> lines;
    for (const ViewLine& line : views_.section) {
      PaperLine paper;
      for (const auto& p : line) paper.push_back({paper_x(p[0]), paper_z(p[1])});
      lines.push_back(std::move(paper));
    }
    return lines;
  }
  std::vector<PaperLine> plan_on_paper(const ViewLines& plan) const {
    std::vector<PaperLine> lines;
    for (const ViewLine& line : plan) {
      PaperLine paper;
      for (const auto& p : line) paper.push_back({paper_x(p[0]), paper_y(p[1])});
      lines.push_back(std::move(paper));
    }
    return lines;
  }

  // The views.

  void heading() {
    double y = 0;
    for (const std::string& line : title_)
      sheet_.words({0, y += 6.5}, line, {.size_mm = title_size, .bold = true});
    for (const std::string& line : subtitle_)
      sheet_.words({0, y += 4.5}, line, {.size_mm = caption_size});
  }

  void section() {
    caption("Section A\u2013A", section_top());
    fill_section();
    draw_wall();
    level_line(height_, Look::fine, 3);
    if (what_.pour_line) level_line(*what_.pour_line, Look::pour, 2);
    for (const Length depth : what_.depths) level_line(depth, Look::mark, 1);
    const double half_label = label_size / 2;
    set_labels(sheet_, section_labels(), right() + 12, section_top() + half_label,
               section_top() + section_height(ratio_) - half_label);
    section_dimensions();
  }

  void caption(const std::string& text, double top) {
    sheet_.words({0, top - 2}, text, {.size_mm = caption_size, .bold = true});
  }

  void fill_section() {
    const auto lines = section_on_paper();
    const auto fill = [&](Length from, Length to, std::size_t index) {
      const double top = paper_depth(to);
      sheet_.rectangle_inside(lines, {left() - 1, top}, across_on_paper(ratio_) + 2,
                              paper_depth(from) - top, hatching(index));
    };
    for (std::size_t i = 0; i < what_.layers.size(); ++i)
      fill(what_.layers[i].from, what_.layers[i].to, i);
    if (what_.layers.empty() && what_.pour_line) fill(Length(), *what_.pour_line, 0);
  }

  /// The section's outline without its opening.
  void draw_wall() {
    const double fair = 1e-6 * (views_.up[1] - views_.up[0]);
    for (const ViewLine& line : views_.section) {
      const auto is_brim = [&](std::size_t i) {
        return std::abs(line[i % line.size()][1] - views_.up[1]) <= fair &&
               std::abs(line[(i + 1) % line.size()][1] - views_.up[1]) <= fair;
      };
      std::size_t start = 0;
      while (start < line.size() && !is_brim(start)) ++start;
      PaperLine wall;
      for (std::size_t i = start + 1; i <= start + line.size(); ++i) {
        const auto& p = line[i % line.size()];
        wall.push_back({paper_x(p[0]), paper_z(p[1])});
        if (!is_brim(i) && i < start + line.size()) continue;
        if (start == line.size()) wall.push_back(wall.front());  // closed all round
        if (wall.size() > 1) sheet_.open_line(wall, Look::wall);
        wall.clear();
      }
    }
  }

  void level_line(Length depth, Look look, double beyond) {
    const double y = paper_depth(depth);
    sheet_.line({left() - beyond, y}, {right() + beyond, y}, look);
  }

  std::vector<Label> section_labels() const {
    std::vector<Label> labels = {label_at(height_, "brim " + in_both(height_))};
    if (what_.pour_line) {
      labels.push_back(label_at(*what_.pour_line, "pour line " + in_both(*what_.pour_line)));
      labels.back().bold = true;
    }
    for (const Length depth : what_.depths)
      labels.push_back(label_at(depth, in_both(depth) + ": " + short_ml(held(depth))));
    for (std::size_t i = 0; i < what_.layers.size(); ++i) {
      const auto& layer = what_.layers[i];
      const Length middle = (layer.from + layer.to) / 2;
      const std::string number = std::to_string(i + 1) + ". ";
      const double room = sheet_width - right() - 12 - width_of(number, label_size);
      const auto lines = broken(layer.name, label_size, room);
      Label label{.place = {right_wall_at(middle) - 1.5, paper_depth(middle)},
                  .text = number + (lines.empty() ? "" : lines.front()),
                  .dotted = true};
      if (lines.size() > 1) label.text += "\u2026";
      labels.push_back(std::move(label));
    }
    return labels;
  }

  Label label_at(Length depth, std::string text) const {
    return {.place = {right() + 3, paper_depth(depth)}, .text = std::move(text)};
  }

  /// The furthest right that the section reaches at a depth, on paper.
  double right_wall_at(Length depth) const {
    const double z = views_.up[0] + depth / millimetre;
    double furthest = views_.across[0];
    for (const ViewLine& line : views_.section)
      for (std::size_t i = 0; i < line.size(); ++i) {
        const auto &a = line[i], &b = line[(i + 1) % line.size()];
        if (std::min(a[1], b[1]) > z || std::max(a[1], b[1]) < z) continue;
        const double share = a[1] == b[1] ? 0 : (z - a[1]) / (b[1] - a[1]);
        furthest = std::max(furthest, a[0] + share * (b[0] - a[0]));
      }
    return paper_x(furthest);
  }

  void section_dimensions() {
    const double top = paper_depth(height_), bottom = paper_depth(Length());
    dimension_upright(sheet_, top, bottom, left() - 17, left() - 3, in_both(height_));
    if (what_.pour_line)
      dimension_upright(sheet_, paper_depth(*what_.pour_line), bottom, left() - 8, left() - 2,
                        in_both(*what_.pour_line));
    const auto& brim = views_.brim_reaches;
    double y = top - 3;
    if (brim.size() == 2) {
      across_at(brim[0].to, brim[1].from, y, top);
      y -= dimension_row;
    }
    if (!brim.empty()) across_at(brim.front().from, brim.back().to, y, top);
    const auto& floor = views_.floor_reaches;
    if (!floor.empty())
      across_at(floor.front().from, floor.back().to, bottom + dimension_row, bottom);
  }

  void across_at(double from, double to, double y, double from_y) {
    dimension_across(sheet_, paper_x(from), paper_x(to), y, from_y,
                     in_both((to - from) * millimetre));
  }

  void plan() {
    caption("From above", plan_top(ratio_));
    if (what_.pour_line) {
      const auto line = plan_on_paper(plan_at(solid_, *what_.pour_line));
      sheet_.closed_lines(line, hatching(top_layer()));
      sheet_.closed_lines(line, Look::pour);
    }
    sheet_.closed_lines(plan_on_paper(views_.floor), Look::fine);
    if (!views_.widest.empty()) sheet_.closed_lines(plan_on_paper(views_.widest), Look::hidden);
    sheet_.closed_lines(plan_on_paper(views_.brim), Look::wall);
    cutting_line();
    const double front = paper_y(views_.away[0]), back = paper_y(views_.away[1]);
    across_at(views_.across[0], views_.across[1], front + dimension_row + 1, front);
    dimension_upright(sheet_, back, front, left() - 17, left() - 3,
                      in_both((views_.away[1] - views_.away[0]) * millimetre));
  }

  std::size_t top_layer() const { return what_.layers.empty() ? 0 : what_.layers.size() - 1; }

  /// Where the section is taken, with arrows the way it is looked.
  void cutting_line() {
    const double y = paper_y(views_.cut);
    sheet_.line({left() - 7, y}, {right() + 7, y}, Look::chain);
    for (const double x : {left() - 7, right() + 7}) {
      sheet_.line({x, y}, {x, y - 3}, Look::fine);
      sheet_.closed_lines({{{x - 0.8, y - 2.5}, {x + 0.8, y - 2.5}, {x, y - 4.5}}}, Look::black);
      sheet_.words({x, y + 3.5}, "A",
                   {.size_mm = caption_size, .anchor = Anchor::middle, .bold = true});
    }
  }

  void legend() {
    double y = legend_top(ratio_);
    for (const LegendRow& line : legend_) {
      if (line.look) sheet_.rectangle({0, y}, 9, 3.6, *line.look);
      sheet_.words({11, y + 2.9}, line.text, {.size_mm = label_size});
      y += row;
    }
  }

  void footer() {
    const double top = footer_top(ratio_);
    const std::string scale = "Scale 1:" + std::to_string(ratio_) + ". ";
    sheet_.words({0, top + 3},
                 scale + (ratio_ == 1 ? "True size when printed at 100 %: the bars are "
                                        "then 50 mm and 2 in long."
                                      : "When printed at 100 % the bars are 50 mm and 2 "
                                        "in long and stand for what is written."),
                 {.size_mm = label_size});
    scale_bars(sheet_, {0, top + 6.5}, ratio_);
  }

  const moulds::Mould& mould_;
  const MouldPicture& what_;
  geometry::TriangleMesh solid_;
  MouldViews views_;
  Drawing sheet_;
  Length height_;
  std::vector<std::string> title_, subtitle_;
  std::vector<LegendRow> legend_;
  int ratio_ = 1;  // lengths in life to lengths on paper
};

}  // namespace

Drawing mould_picture(const moulds::Mould& mould, const MouldPicture& what) {
  check(mould, what);
  return Picture(mould, what).drawing();
}

std::string mould_picture_svg(const moulds::Mould& mould, const MouldPicture& what) {
  return svg_of(mould_picture(mould, what));
}

}  // namespace brimwright::reports
