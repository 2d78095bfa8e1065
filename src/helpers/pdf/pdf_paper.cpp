#include "helpers/pdf/pdf_paper.h"

#include "helpers/pdf/drawing_on_paper.h"
#include "helpers/pdf/pango_text.h"

#include <cairo-pdf.h>
#include <pango/pangocairo.h>

#include <algorithm>
#include <stdexcept>

namespace brimwright::helpers {
namespace {

constexpr double points_per_mm = 72 / 25.4;

struct Closing {
  void operator()(cairo_surface_t* surface) const { cairo_surface_destroy(surface); }
  void operator()(cairo_t* pen) const { cairo_destroy(pen); }
  void operator()(PangoLayout* layout) const { g_object_unref(layout); }
  void operator()(PangoFontDescription* font) const { pango_font_description_free(font); }
};
template <class T>
using Held = std::unique_ptr<T, Closing>;

cairo_status_t append(void* to, const unsigned char* data, unsigned int length) {
  static_cast<std::string*>(to)->append(reinterpret_cast<const char*>(data), length);
  return CAIRO_STATUS_SUCCESS;
}

/// ISO 8601, as cairo reads it: "2026-05-30T19:46:00".
std::string created(std::string printed_at) {
  constexpr std::size_t between = 10;
  if (printed_at.size() != 16 || printed_at[between] != ' ') return "2000-01-01T00:00:00Z";
  printed_at[between] = 'T';
  return printed_at + ":00";
}

/// Tells what cairo 1.16 does not: the language, that the structure's marks hold, and that a window
/// is headed by the title. The catalogue is the last object before the table of places, so that no
/// place moves but the table's own; where a cairo writes otherwise, the file stays as it is.
std::string completed(std::string pdf) {
  const std::string catalog = "<< /Type /Catalog";
  const auto at = pdf.rfind(catalog), table = pdf.rfind("\nxref\n"),
             start = pdf.rfind("startxref\n");
  if (at == std::string::npos || table == std::string::npos || start == std::string::npos ||
      at > table || pdf.find(" obj\n", at) < table)
    return pdf;
  std::string told = "\n   /Lang (en)\n   /ViewerPreferences << /DisplayDocTitle true >>";
  if (pdf.find("/MarkInfo", at) > table) told += "\n   /MarkInfo << /Marked true >>";
  const auto place = table + 1 + told.size();
  pdf.replace(start, std::string::npos, "startxref\n" + std::to_string(place) + "\n%%EOF\n");
  pdf.insert(at + catalog.size(), told);
  return pdf;
}

}  // namespace

struct PdfPaper::Parts {
  std::string bytes;
  Held<cairo_surface_t> surface;
  Held<cairo_t> pen;

  Held<PangoLayout> layout(const std::string& text, double width_mm, const Type& type,
                           double points) const {
    Held<PangoLayout> layout(pango_cairo_create_layout(pen.get()));
    // Unhinted, so that a screen's settings do not move a letter.
    Held<PangoFontDescription> font(pango_font_description_from_string("Sans"));
    pango_font_description_set_absolute_size(font.get(), points * PANGO_SCALE);
    if (type.bold) pango_font_description_set_weight(font.get(), PANGO_WEIGHT_BOLD);
    pango_layout_set_font_description(layout.get(), font.get());
    pango_layout_set_width(
        layout.get(),
        type.is_one_line ? -1 : static_cast<int>(width_mm * points_per_mm * PANGO_SCALE));
    pango_layout_set_wrap(layout.get(), PANGO_WRAP_WORD_CHAR);
    const std::string valid = as_utf8(text);
    pango_layout_set_text(layout.get(), valid.data(), static_cast<int>(valid.size()));
    return layout;
  }

  Held<PangoLayout> fitting(const std::string& text, double width_mm, const Type& type) const {
    Held<PangoLayout> set = layout(text, width_mm, type, type.points);
    if (!type.is_one_line) return set;
    const double width = size(set.get()).width_mm;
    if (width <= width_mm) return set;
    return layout(text, width_mm, type,
                  std::max(type.points / 2, type.points * width_mm / width * 0.99));
  }

  struct Size {
    double width_mm, height_mm;
  };
  static Size size(PangoLayout* layout) {
    int width = 0, height = 0;
    pango_layout_get_size(layout, &width, &height);
    return {width / (PANGO_SCALE * points_per_mm), height / (PANGO_SCALE * points_per_mm)};
  }
};

PdfPaper::PdfPaper(double width_mm, double height_mm, const std::string& title,
                   const std::string& printed_at)
    : parts_(std::make_unique<Parts>()) {
  parts_->surface.reset(cairo_pdf_surface_create_for_stream(
      append, &parts_->bytes, width_mm * points_per_mm, height_mm * points_per_mm));
  auto* surface = parts_->surface.get();
  cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_TITLE, as_utf8(title).c_str());
  // Cairo would put the present moment; the same sheet is the same bytes whenever it is made.
  cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_CREATE_DATE,
                                 created(printed_at).c_str());
  parts_->pen.reset(cairo_create(surface));
  cairo_set_source_rgb(parts_->pen.get(), 0, 0, 0);
  cairo_font_options_t* options = cairo_font_options_create();
  cairo_font_options_set_hint_style(options, CAIRO_HINT_STYLE_NONE);
  cairo_font_options_set_hint_metrics(options, CAIRO_HINT_METRICS_OFF);
  cairo_surface_set_fallback_resolution(surface, 300, 300);
  cairo_set_font_options(parts_->pen.get(), options);
  cairo_font_options_destroy(options);
  cairo_scale(parts_->pen.get(), points_per_mm, points_per_mm);
}

PdfPaper::~PdfPaper() = default;

PdfPaper::Tagged::Tagged(PdfPaper& paper, const char* tag) : paper_(paper), tag_(tag) {
  cairo_tag_begin(paper_.parts_->pen.get(), tag_, "");
}
PdfPaper::Tagged::~Tagged() { cairo_tag_end(paper_.parts_->pen.get(), tag_); }

void PdfPaper::next_page() { cairo_show_page(parts_->pen.get()); }

void PdfPaper::move_origin(double x, double y) { cairo_translate(parts_->pen.get(), x, y); }

double PdfPaper::height_of(const std::string& text, double width_mm, const Type& type) const {
  return Parts::size(parts_->fitting(text, width_mm, type).get()).height_mm;
}

void PdfPaper::words(double x, double y, double width_mm, const std::string& text,
                     const Type& type) {
  cairo_t* pen = parts_->pen.get();
  const auto layout = parts_->fitting(text, width_mm, type);
  const double spare = width_mm - Parts::size(layout.get()).width_mm;
  if (type.side != Side::left) x += type.side == Side::right ? spare : spare / 2;
  cairo_save(pen);
  cairo_translate(pen, x, y);
  cairo_scale(pen, 1 / points_per_mm, 1 / points_per_mm);
  pango_cairo_show_layout(pen, layout.get());
  cairo_restore(pen);
  cairo_new_path(pen);
}

void PdfPaper::line(double x1, double y1, double x2, double y2, double thickness_mm) {
  cairo_t* pen = parts_->pen.get();
  cairo_set_line_width(pen, thickness_mm);
  cairo_move_to(pen, x1, y1);
  cairo_line_to(pen, x2, y2);
  cairo_stroke(pen);
}

void PdfPaper::box(double x, double y, double width_mm, double height_mm, double thickness_mm) {
  cairo_t* pen = parts_->pen.get();
  cairo_set_line_width(pen, thickness_mm);
  cairo_rectangle(pen, x, y, width_mm, height_mm);
  cairo_stroke(pen);
}

void PdfPaper::fill(double x, double y, double width_mm, double height_mm, double grey) {
  cairo_t* pen = parts_->pen.get();
  cairo_set_source_rgb(pen, grey, grey, grey);
  cairo_rectangle(pen, x, y, width_mm, height_mm);
  cairo_fill(pen);
  cairo_set_source_rgb(pen, 0, 0, 0);
}

void PdfPaper::drawing(double x, double y, const reports::Drawing& drawing) {
  cairo_t* pen = parts_->pen.get();
  cairo_save(pen);
  cairo_translate(pen, x, y);
  draw(pen, drawing);
  cairo_restore(pen);
}

std::string PdfPaper::bytes() {
  cairo_show_page(parts_->pen.get());
  parts_->pen.reset();
  cairo_surface_finish(parts_->surface.get());
  if (cairo_surface_status(parts_->surface.get()) != CAIRO_STATUS_SUCCESS)
    throw std::runtime_error("the PDF could not be made");
  return completed(std::move(parts_->bytes));
}

}  // namespace brimwright::helpers
