#include "reports/piece_picture.h"

#include "reports/picture_sheet.h"
#include "reports/side_view.h"
#include "reports/svg_drawing.h"
#include "units/printing.h"
#include "units/wording.h"

#include <algorithm>
#include <array>
#include <optional>
#include <utility>

namespace brimwright::reports {
namespace {

// Room on the sheet, in millimetres.
constexpr double left_room = 22, label_room = 62;
constexpr double drawing_room = sheet_width - left_room - label_room;
constexpr double row = 5;

/// A loaf is seen from the end at which its bars are cut off, so that it shows what a bar does.
bool is_seen_from_the_end(const planning::Plan& plan) {
  return plan.cut && plan.cut->along == planning::Axis::x;
}

planning::PieceModel seen_from_the_end(planning::PieceModel model) {
  for (auto& part : model.parts)
    for (auto& solid : part.solids)
      for (auto& v : solid.vertices_mm) v = {v[1], -v[0], v[2]};
  return model;
}

class Picture {
 public:
  Picture(const planning::PieceModel& model, const planning::Plan& plan)
      : model_(is_seen_from_the_end(plan) ? seen_from_the_end(model) : model),
        plan_(plan),
        view_(side_view_of(model_)),
        sheet_{.prefix = "piece", .title = "Piece: " + plan.name} {
    title_ = broken(plan.name, title_size, sheet_width);
    collect_legend();
    choose_ratio();
  }

  Drawing drawing() {
    sheet_.width_mm = sheet_width;
    sheet_.height_mm = height_for(ratio_);
    sheet_.rectangle({0, 0}, sheet_.width_mm, sheet_.height_mm, Look::paper);
    double y = 0;
    for (const auto& line : title_)
      sheet_.words({0, y += 6.5}, line, {.size_mm = title_size, .bold = true});
    sheet_.words(
        {0, y + 5},
        plan_.cut ? "The loaf from the front, before it is cut" : "One piece from the front",
        {.size_mm = caption_size});
    draw_parts();
    draw_lines();
    draw_sizes();
    legend();
    footer();
    return std::move(sheet_);
  }

 private:
  double wide() const { return view_.across[1] - view_.across[0]; }
  double tall() const { return view_.up[1] - view_.up[0]; }
  double view_top() const { return 6.5 * static_cast<double>(title_.size()) + 14; }
  double view_height(int ratio) const {
    return std::max(tall() / ratio, label_pitch * static_cast<double>(model_.parts.size() + 2));
  }
  double legend_top(int ratio) const { return view_top() + view_height(ratio) + 16; }
  double footer_top(int ratio) const {
    return legend_top(ratio) + row * static_cast<double>(legend_.size()) + 3;
  }
  double height_for(int ratio) const { return footer_top(ratio) + 14; }

  void choose_ratio() {
    // ISO 5455:1979, reduction scales
    for (const int ratio : {1, 2, 5, 10, 20, 50, 100}) {
      ratio_ = ratio;
      if (wide() / ratio <= drawing_room && height_for(ratio) <= sheet_height) return;
    }
  }

  double left() const { return left_room + (drawing_room - wide() / ratio_) / 2; }
  double right() const { return left() + wide() / ratio_; }
  double bottom() const { return view_top() + (view_height(ratio_) + tall() / ratio_) / 2; }
  PaperPoint on_paper(const std::array<double, 2>& p) const {
    return {left() + (p[0] - view_.across[0]) / ratio_, bottom() - (p[1] - view_.up[0]) / ratio_};
  }
  double paper_z(Length height) const { return on_paper({0, height / millimetre})[1]; }
  std::vector<PaperLine> on_paper(const std::vector<SideLine>& lines) const {
    std::vector<PaperLine> paper;
    for (const auto& line : lines) {
      paper.emplace_back();
      for (const auto& p : line) paper.back().push_back(on_paper(p));
    }
    return paper;
  }

  void collect_legend() {
    // A plan lists the batters as one part each; layers of the base share the first's mass.
    const auto& parts = plan_.piece.parts;
    for (std::size_t i = 0; i < model_.parts.size(); ++i)
      legend_.push_back({model_.parts[i].is_buried ? Look::hidden : hatching(i),
                         std::to_string(i + 1) + ". " + model_.parts[i].name});
    for (const auto& part : parts)
      legend_.push_back(
          {std::nullopt, part.name + ": " + fixed_grams(part.fresh) + " fresh" +
                             (part.cured ? ", " + fixed_grams(*part.cured) + " cured" : "")});
    legend_.push_back(
        {std::nullopt,
         (plan_.cut ? "One bar on average: " : "One piece: ") + fixed_grams(plan_.piece.fresh) +
             " fresh" +
             (plan_.piece.cured ? ", " + fixed_grams(*plan_.piece.cured) + " cured" : "")});
    if (!model_.is_topping_shape_known)
      legend_.push_back(
          {std::nullopt, "The topping is left out: its volume is known, its shape is not."});
  }

  void draw_parts() {
    for (std::size_t i = 0; i < model_.parts.size(); ++i) {
      const auto borders = on_paper(view_.seen[i]);
      if (!borders.empty()) {
        sheet_.closed_lines(borders, Look::paper);
        sheet_.closed_lines(borders, hatching(i));
      }
    }
    for (const auto& crease : on_paper(view_.creases)) sheet_.open_line(crease, Look::crease);
    for (const auto& part : view_.hidden)
      if (!part.empty()) sheet_.closed_lines(on_paper(part), Look::hidden);
  }

  void draw_lines() {
    std::vector<Label> labels;
    const auto level = [&](Length height, const std::string& text, Look look) {
      const double y = paper_z(height);
      sheet_.line({left() - 2, y}, {right() + 2, y}, look);
      labels.push_back({.place = {right() + 3, y}, .text = text + " " + in_both(height)});
    };
    level(model_.pour_line, "pour line", Look::pour);
    if (model_.brim > model_.pour_line) level(model_.brim, "brim", Look::mark);
    for (std::size_t i = 0; i < model_.parts.size(); ++i)
      if (const auto place = place_of(i))
        labels.push_back({.place = *place, .text = label_for(i), .dotted = true});
    set_labels(sheet_, labels, right() + 10, view_top(), view_top() + view_height(ratio_));
  }

  std::string label_for(std::size_t i) const {
    const double room = sheet_width - right() - 10 - width_of("10. \u2026", label_size);
    const auto lines = broken(model_.parts[i].name, label_size, room);
    return std::to_string(i + 1) + ". " + (lines.empty() ? "" : lines.front()) +
           (lines.size() > 1 ? "\u2026" : "");
  }

  /// A place within what is seen of a part: at half its border's height, a little in from the
  /// right.
  std::optional<PaperPoint> place_of(std::size_t i) const {
    const auto& lines = model_.parts[i].is_buried ? view_.hidden[i] : view_.seen[i];
    const SideLine* largest = nullptr;
    double area = 0;
    for (const auto& line : lines) {
      double sum = 0;
      for (std::size_t k = 0; k < line.size(); ++k) {
        const auto &a = line[k], &b = line[(k + 1) % line.size()];
        sum += a[0] * b[1] - a[1] * b[0];
      }
      if (std::abs(sum) <= area) continue;
      area = std::abs(sum);
      largest = &line;
    }
    if (largest == nullptr) return std::nullopt;
    double low = (*largest)[0][1], high = low;
    for (const auto& p : *largest) {
      low = std::min(low, p[1]);
      high = std::max(high, p[1]);
    }
    const double z = (low + high) / 2;
    double furthest = view_.across[0];
    for (std::size_t k = 0; k < largest->size(); ++k) {
      const auto &a = (*largest)[k], &b = (*largest)[(k + 1) % largest->size()];
      if (std::min(a[1], b[1]) > z || std::max(a[1], b[1]) < z || a[1] == b[1]) continue;
      furthest = std::max(furthest, a[0] + (z - a[1]) / (b[1] - a[1]) * (b[0] - a[0]));
    }
    auto place = on_paper({furthest, z});
    place[0] -= 1.2;
    return place;
  }

  void draw_sizes() {
    dimension_upright(sheet_, bottom() - tall() / ratio_, bottom(), left() - 9, left() - 2,
                      in_both(tall() * millimetre));
    dimension_across(sheet_, left(), right(), bottom() + 7, bottom(), in_both(wide() * millimetre));
  }

  void legend() {
    double y = legend_top(ratio_);
    for (const auto& [look, text] : legend_) {
      if (look) sheet_.rectangle({0, y}, 9, 3.6, *look);
      sheet_.words({11, y + 2.9}, text, {.size_mm = label_size});
      y += row;
    }
  }

  void footer() {
    const double top = footer_top(ratio_);
    sheet_.words({0, top + 3},
                 "Scale 1:" + std::to_string(ratio_) +
                     (ratio_ == 1 ? ". True size when printed at 100 %: the bars are then 50 mm "
                                    "and 2 in long."
                                  : ". When printed at 100 % the bars are 50 mm and 2 in long and "
                                    "stand for what is written."),
                 {.size_mm = label_size});
    scale_bars(sheet_, {0, top + 6.5}, ratio_);
  }

  const planning::PieceModel model_;
  const planning::Plan& plan_;
  SideView view_;
  Drawing sheet_;
  std::vector<std::string> title_;
  std::vector<std::pair<std::optional<Look>, std::string>> legend_;
  int ratio_ = 1;
};

}  // namespace

std::string piece_picture_svg(const planning::PieceModel& model, const planning::Plan& plan) {
  return svg_of(Picture(model, plan).drawing());
}

}  // namespace brimwright::reports
