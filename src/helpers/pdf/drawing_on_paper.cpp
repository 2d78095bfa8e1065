#include "helpers/pdf/drawing_on_paper.h"

#include "helpers/pdf/pango_text.h"

#include <cairo.h>
#include <pango/pangocairo.h>

#include <cmath>
#include <memory>
#include <variant>

namespace brimwright::helpers {
namespace {

using reports::Look;
using reports::LookDrawn;
using reports::PaperLine;

struct Closing {
  void operator()(cairo_surface_t* surface) const { cairo_surface_destroy(surface); }
  void operator()(cairo_pattern_t* pattern) const { cairo_pattern_destroy(pattern); }
  void operator()(cairo_t* pen) const { cairo_destroy(pen); }
  void operator()(PangoLayout* layout) const { g_object_unref(layout); }
  void operator()(PangoFontDescription* font) const { pango_font_description_free(font); }
};
template <class T>
using Held = std::unique_ptr<T, Closing>;

constexpr double quarter_turn = 1.5707963267948966;  // pi / 2
constexpr double full_turn = 4 * quarter_turn;
constexpr double mitre_limit = 4;  // where SVG cuts a pointed corner off

void follow(cairo_t* pen, const PaperLine& line) {
  cairo_new_sub_path(pen);
  for (const auto& [x, y] : line) cairo_line_to(pen, x, y);
}

void follow_round(cairo_t* pen, const std::vector<PaperLine>& lines) {
  for (const PaperLine& line : lines) {
    follow(pen, line);
    cairo_close_path(pen);
  }
}

/// One tile, to be laid side by side: lines that run over its edge are cut there. Drawn in
/// thousandths of a millimetre, as cairo takes a tile's sides for whole numbers.
Held<cairo_pattern_t> tiles_of(const reports::Hatching& hatching) {
  constexpr double per_mm = 1000;
  const cairo_rectangle_t tile{0, 0, hatching.tile_mm * per_mm, hatching.tile_mm * per_mm};
  const Held<cairo_surface_t> surface(
      cairo_recording_surface_create(CAIRO_CONTENT_COLOR_ALPHA, &tile));
  const Held<cairo_t> pen(cairo_create(surface.get()));
  cairo_scale(pen.get(), per_mm, per_mm);
  cairo_set_line_width(pen.get(), reports::hatching_line_mm);
  for (const PaperLine& line : hatching.lines) follow(pen.get(), line);
  cairo_stroke(pen.get());
  for (const auto& [x, y] : hatching.dots) {
    cairo_new_sub_path(pen.get());
    cairo_arc(pen.get(), x, y, reports::hatching_dot_mm, 0, full_turn);
  }
  cairo_fill(pen.get());
  Held<cairo_pattern_t> pattern(cairo_pattern_create_for_surface(surface.get()));
  cairo_pattern_set_extend(pattern.get(), CAIRO_EXTEND_REPEAT);
  cairo_matrix_t matrix;
  cairo_matrix_init_scale(&matrix, per_mm, per_mm);
  cairo_pattern_set_matrix(pattern.get(), &matrix);
  return pattern;
}

class Printer {
 public:
  explicit Printer(cairo_t* pen) : pen_(pen) {
    for (const LookDrawn& look : reports::looks())
      tiles_.push_back(look.fill == LookDrawn::Fill::hatching ? tiles_of(look.hatching) : nullptr);
  }

  void draw(const reports::OpenLine& line) {
    follow(pen_, line.points);
    finish(line.look);
  }

  void draw(const reports::ClosedLines& area) {
    follow_round(pen_, area.lines);
    finish(area.look);
  }

  void draw(const reports::Rectangle& box) {
    cairo_save(pen_);
    if (!box.inside.empty()) {
      follow_round(pen_, box.inside);
      cairo_clip(pen_);
    }
    cairo_rectangle(pen_, box.corner[0], box.corner[1], box.width_mm, box.height_mm);
    finish(box.look);
    cairo_restore(pen_);
  }

  void draw(const reports::Circle& circle) {
    cairo_new_sub_path(pen_);
    cairo_arc(pen_, circle.middle[0], circle.middle[1], circle.radius_mm, 0, full_turn);
    finish(circle.look);
  }

  void draw(const reports::DrawnWords& words) {
    constexpr double points_per_mm = 72 / 25.4;
    const auto& [at, text, lettering] = words;
    const Held<PangoLayout> layout = set(text, lettering.size_mm * points_per_mm, lettering.bold);
    int width = 0;
    pango_layout_get_size(layout.get(), &width, nullptr);
    cairo_save(pen_);
    cairo_translate(pen_, at[0], at[1]);
    if (lettering.upward) cairo_rotate(pen_, -quarter_turn);
    cairo_scale(pen_, 1 / points_per_mm, 1 / points_per_mm);
    cairo_set_source_rgb(pen_, 0, 0, 0);
    cairo_move_to(pen_, -share_before(lettering.anchor) * width / PANGO_SCALE,
                  -static_cast<double>(pango_layout_get_baseline(layout.get())) / PANGO_SCALE);
    pango_cairo_show_layout(pen_, layout.get());
    cairo_restore(pen_);
    cairo_new_path(pen_);
  }

 private:
  static double share_before(reports::Lettering::Anchor anchor) {
    using Anchor = reports::Lettering::Anchor;
    return anchor == Anchor::start ? 0 : anchor == Anchor::middle ? 0.5 : 1;
  }

  Held<PangoLayout> set(const std::string& text, double points, bool is_bold) const {
    Held<PangoLayout> layout(pango_cairo_create_layout(pen_));
    // Letters stand where the font has them, not at whole points.
    pango_context_set_round_glyph_positions(pango_layout_get_context(layout.get()), FALSE);
    pango_layout_context_changed(layout.get());
    const Held<PangoFontDescription> font(
        pango_font_description_from_string("Helvetica,Arial,Liberation Sans,Sans"));
    pango_font_description_set_absolute_size(font.get(), points * PANGO_SCALE);
    if (is_bold) pango_font_description_set_weight(font.get(), PANGO_WEIGHT_BOLD);
    pango_layout_set_font_description(layout.get(), font.get());
    pango_layout_set_single_paragraph_mode(layout.get(), TRUE);
    const std::string valid = as_utf8(text);
    pango_layout_set_text(layout.get(), valid.data(), static_cast<int>(valid.size()));
    return layout;
  }

  /// Fills the path, then draws its line.
  void finish(Look look) {
    fill(look);
    stroke(reports::drawn(look));
    cairo_new_path(pen_);
    cairo_set_source_rgb(pen_, 0, 0, 0);
  }

  void fill(Look look) {
    const LookDrawn& how = reports::drawn(look);
    if (how.fill == LookDrawn::Fill::none) return;
    const double light = how.fill == LookDrawn::Fill::white ? 1 : 0;
    if (how.fill == LookDrawn::Fill::hatching)
      cairo_set_source(pen_, tiles_[static_cast<std::size_t>(look)].get());
    else
      cairo_set_source_rgb(pen_, light, light, light);
    cairo_fill_preserve(pen_);
  }

  void stroke(const LookDrawn& how) {
    if (how.line_mm == 0) return;
    cairo_set_source_rgb(pen_, 0, 0, 0);
    cairo_set_line_width(pen_, how.line_mm);
    cairo_set_line_join(pen_, how.joins_are_round ? CAIRO_LINE_JOIN_ROUND : CAIRO_LINE_JOIN_MITER);
    cairo_set_dash(pen_, how.dashes_mm.data(), static_cast<int>(how.dashes_mm.size()), 0);
    cairo_stroke_preserve(pen_);
  }

  cairo_t* pen_;
  std::vector<Held<cairo_pattern_t>> tiles_;
};

}  // namespace

void draw(cairo_t* pen, const reports::Drawing& drawing) {
  cairo_save(pen);
  cairo_set_miter_limit(pen, mitre_limit);
  cairo_set_fill_rule(pen, CAIRO_FILL_RULE_EVEN_ODD);
  Printer printer(pen);
  for (const reports::Mark& mark : drawing.marks)
    std::visit([&](const auto& its) { printer.draw(its); }, mark);
  cairo_restore(pen);
}

}  // namespace brimwright::helpers
