#pragma once

#include "reports/drawing.h"

#include <memory>
#include <string>

namespace brimwright::helpers {

/// A PDF under construction, page after page, in millimetres from the upper left corner of the
/// page. Black.
class PdfPaper {
 public:
  enum class Side { left, middle, right };
  struct Type {
    double points = 10;
    bool bold = false;
    Side side = Side::left;
    bool is_one_line = false;  // made smaller until it fits, down to half its size
  };

  /// `printed_at` as "2026-05-30 19:46", or empty.
  PdfPaper(double width_mm, double height_mm, const std::string& title,
           const std::string& printed_at);
  ~PdfPaper();
  PdfPaper(const PdfPaper&) = delete;
  PdfPaper& operator=(const PdfPaper&) = delete;

  /// Until it goes, all that is drawn is of this part of the document's structure: "H1", "P",
  /// "Table" (ISO 32000-1, 14.8.4), for those who have it read to them.
  class Tagged {
   public:
    Tagged(PdfPaper& paper, const char* tag);
    ~Tagged();
    Tagged(const Tagged&) = delete;
    Tagged& operator=(const Tagged&) = delete;

   private:
    PdfPaper& paper_;
    const char* tag_;
  };

  void next_page();
  /// Further places are measured from there.
  void move_origin(double x, double y);
  /// How high `text` stands when broken into lines of that width.
  double height_of(const std::string& text, double width_mm, const Type& type) const;
  void words(double x, double y, double width_mm, const std::string& text, const Type& type);
  void line(double x1, double y1, double x2, double y2, double thickness_mm);
  void box(double x, double y, double width_mm, double height_mm, double thickness_mm);
  void fill(double x, double y, double width_mm, double height_mm, double grey);

  void drawing(double x, double y, const reports::Drawing& drawing);

  std::string bytes();  ///< the whole file; nothing may be drawn after

 private:
  struct Parts;
  std::unique_ptr<Parts> parts_;
};

}  // namespace brimwright::helpers
