#include "helpers/pdf/sheet_printing.h"

#include "helpers/pdf/pdf_paper.h"
#include "helpers/pdf/sheet_pages.h"

#include <algorithm>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace brimwright::helpers {
namespace {

using namespace reports;  // the blocks of a sheet

using Side = PdfPaper::Side;
using Type = PdfPaper::Type;

// In millimetres; a mould's picture is made for margins of 10.
constexpr double margin = 10;
constexpr double a4_width = 210, a4_height = 297;              // ISO 216
constexpr double letter_width = 215.9, letter_height = 279.4;  // 8 1/2 in x 11 in
constexpr double box = 7;                                      // to be ticked with a wet hand
constexpr double beside_box = box + 3;
// Capitals of 24 points are 6 mm high, 1/340 of two metres: twice what a sharp eye needs at 5
// minutes of arc (ISO 8596), for glasses that are steamed up.
constexpr Type weight_type{.points = 24, .bold = true, .side = Side::right, .is_one_line = true};
// Small letters of 20 points are 3.7 mm high: 6 minutes of arc at two metres.
constexpr Type name_type{.points = 20};

bool is_warning(const SheetBlock& block) { return std::holds_alternative<SheetWarning>(block); }

/// Turns blocks into strips, one kind after the other.
class Strips {
 public:
  Strips(PdfPaper& paper, double width, double height)
      : paper_(paper), width_(width), height_(height) {}

  std::vector<Strip> of(const Sheet& sheet) {
    title(sheet.title, sheet.subtitle);
    for (std::size_t i = 0; i < sheet.blocks.size(); ++i) {
      std::visit([this](const auto& its) { set(its); }, sheet.blocks[i]);
      // Of several cautions the last stays with its work; all of them would leave half a page bare.
      if (is_warning(sheet.blocks[i]) && i + 1 < sheet.blocks.size() &&
          is_warning(sheet.blocks[i + 1]))
        strips_.back().keeps_next = false;
    }
    return std::move(strips_);
  }

 private:
  using Tagged = PdfPaper::Tagged;

  void add(double height, std::function<void(double)> draw, bool keeps_next = false) {
    strips_.push_back({height, std::move(draw), keeps_next});
  }

  /// Words as a part of the document's structure.
  void say(const char* tag, double x, double y, double room, const std::string& text,
           const Type& type) {
    const Tagged tagged(paper_, tag);
    paper_.words(x, y, room, text, type);
  }

  /// A paragraph with room above it.
  void paragraph(const std::string& text, const Type& type, double above, bool keeps_next = false,
                 const char* tag = "P") {
    const double height = paper_.height_of(text, width_, type);
    add(
        above + height,
        [this, text, type, above, tag](double y) { say(tag, 0, y + above, width_, text, type); },
        keeps_next);
  }

  void title(const std::string& title, const std::string& subtitle) {
    paragraph(title, {.points = 22, .bold = true}, 0, true, "H1");
    paragraph(subtitle, {.points = 12}, 1, true);
  }

  void set(const SheetPage& page) {
    const std::size_t first = strips_.size();
    title(page.title, page.subtitle);
    strips_[first].starts_page = true;
  }

  void set(const SheetHeading& heading) {
    constexpr double above = 5.5, height = 8.5;
    add(
        above + height + 1,
        [this, heading](double y) {
          const Tagged tagged(paper_, "H2");
          paper_.line(0, y + above - 1, width_, y + above - 1, 1.2);
          paper_.words(0, y + above, width_ - 55, heading.text,
                       {.points = 18, .bold = true, .is_one_line = true});
          paper_.words(width_ - 53, y + above + 1, 53, heading.aside,
                       {.points = 14, .side = Side::right, .is_one_line = true});
        },
        true);
  }

  void set(const SheetStep& step) { paragraph(step.text, step_type, 3.5, true, "H3"); }

  void set(const SheetWords& words) {
    if (!words.is_order) return paragraph(words.text, {.points = 10.5}, 1.5);
    const Type type{.points = 15, .bold = true};
    const double room = width_ - beside_box;
    const double height = std::max(box, paper_.height_of(words.text, room, type));
    add(height + 3, [this, words, type, room](double y) {
      const Tagged tagged(paper_, "P");
      paper_.box(0.3, y + 1.8, box, box, 0.6);
      paper_.words(beside_box, y + 2, room, words.text, type);
    });
  }

  void set(const SheetWarning& warning) {
    if (warning.severity == Severity::danger) return danger(warning.text);
    const bool is_note = warning.severity == Severity::note;
    const Type type{.points = is_note ? 9.0 : 10.5, .bold = !is_note};
    const double left = is_note ? 4 : 8, room = width_ - left;
    const double height = paper_.height_of(warning.text, room, type);
    add(
        height + 2,
        [this, text = warning.text, is_note, type, left, room, height](double y) {
          const Tagged tagged(paper_, "P");
          if (is_note) {
            paper_.words(0, y + 1, left, "\u2013", type);
          } else {
            paper_.fill(0, y + 1, 1.5, height, 0);
            paper_.words(3.5, y + 1, 4, "!", {.points = 13, .bold = true});
          }
          paper_.words(left, y + 1, room, text, type);
        },
        !is_note);
  }

  void danger(const std::string& text) {
    const Type type{.points = 16, .bold = true};
    const std::string said = "DANGER  " + text;
    const double room = width_ - 8, height = paper_.height_of(said, room, type);
    add(height + 10, [this, said, type, room, height](double y) {
      const Tagged tagged(paper_, "P");
      paper_.box(1, y + 3, width_ - 2, height + 5, 1.6);
      paper_.words(4, y + 5.5, room, said, type);
    });
  }

  // First aid: a frame, the cross that marks it anywhere (ISO 7010-E003), what and what to do.

  void set(const SheetFirstAid& aid) {
    constexpr double inside = 4, what_room = 32, above = 3.5, head = 11, gap = 0.5;
    const Type what{.points = 12, .bold = true}, to_do{.points = 12}, small{.points = 8};
    const double room = width_ - 2 * inside - what_room;
    std::vector<double> heights;
    double height = head;
    for (const auto& line : aid.lines) {
      heights.push_back(std::max(paper_.height_of(line.what, what_room, what),
                                 paper_.height_of(line.to_do, room, to_do)));
      height += heights.back() + gap;
    }
    height += paper_.height_of(aid.source, width_ - 2 * inside, small) + 2;
    add(above + height, [=, this](double y) {
      paper_.box(0.6, y + above, width_ - 1.2, height, 1.2);
      head_of_first_aid(aid, inside, y + above + 2);
      double down = y + above + head;
      for (std::size_t i = 0; i < aid.lines.size(); ++i) {
        const Tagged tagged(paper_, "P");
        paper_.words(inside, down, what_room, aid.lines[i].what, what);
        paper_.words(inside + what_room, down, room, aid.lines[i].to_do, to_do);
        down += heights[i] + gap;
      }
      say("P", inside, down + 0.5, width_ - 2 * inside, aid.source, small);
    });
  }

  /// The cross, the title, and beside it blanks for the numbers to call.
  void head_of_first_aid(const SheetFirstAid& aid, double inside, double y) {
    constexpr double size = 7.5, title_room = 38;
    paper_.fill(inside + size / 3, y, size / 3, size, 0);
    paper_.fill(inside, y + size / 3, size, size / 3, 0);
    say("H2", inside + size + 2, y, title_room, aid.title,
        {.points = 16, .bold = true, .is_one_line = true});
    const double from = inside + size + title_room + 4;
    const double room = (width_ - inside - from) / static_cast<double>(aid.numbers.size());
    constexpr double name_room = 25;
    for (std::size_t i = 0; i < aid.numbers.size(); ++i) {
      const Tagged tagged(paper_, "P");
      const double x = from + room * static_cast<double>(i);
      paper_.words(x, y + 3, name_room, aid.numbers[i], {.points = 10, .is_one_line = true});
      paper_.line(x + name_room + 1, y + 7, x + room - 2, y + 7, 0.3);
    }
  }

  // Weights: box, name with its note, weight, ounces over the vessel's sum, lot.

  static constexpr double name_at = beside_box, lot_room = 27, sum_room = 25, weight_room = 46,
                          between = 2;
  double lot_at() const { return width_ - lot_room; }
  double sum_at() const { return lot_at() - between - sum_room; }
  double weight_at() const { return sum_at() - between - weight_room; }

  void set(const WeighList& list) {
    const std::size_t first = strips_.size();
    ++tables_;
    vessel(list, "");
    for (const auto& words : list.before) set(words);
    heads(list);
    const std::size_t first_row = strips_.size();
    for (const auto& row : list.rows) weigh(row);
    const std::size_t last_row = strips_.size() - 1;
    repeat_heads(list, first_row, last_row);
    for (const auto& words : list.after) set(words);
    keep_together(list, first, first_row, last_row);
  }

  /// Title, and a blank for what the empty vessel weighs.
  void vessel(const WeighList& list, const std::string& said_after) {
    if (list.title.empty()) return;
    constexpr double above = 3.5, tare_room = 58;
    const std::string title = list.title + said_after;
    const double room = width_ - (list.tare_unit.empty() ? 0 : tare_room + 2);
    const double height = paper_.height_of(title, room, step_type);
    add(
        above + height,
        [=, this, unit = list.tare_unit](double y) {
          say("H3", 0, y + above, room, title, step_type);
          if (!unit.empty()) tare(width_ - tare_room, y + above + height, unit);
        },
        true);
  }

  void tare(double x, double foot, const std::string& unit) {
    constexpr double what_room = 24, unit_room = 5;
    const Type small{.points = 8.5, .is_one_line = true};
    const Tagged tagged(paper_, "P");
    paper_.words(x, foot - 4, what_room, "empty vessel", small);
    paper_.line(x + what_room, foot - 0.5, width_ - unit_room - 1, foot - 0.5, 0.3);
    paper_.words(width_ - unit_room, foot - 4, unit_room, unit, small);
  }

  void heads(const WeighList& list) {
    const bool sums = std::any_of(list.rows.begin(), list.rows.end(),
                                  [](const WeighRow& row) { return !row.running.empty(); });
    const bool lots = std::any_of(list.rows.begin(), list.rows.end(),
                                  [](const WeighRow& row) { return row.has_lot; });
    add(
        4.5,
        [this, sums, lots](double y) {
          const Type small{.points = 8.5}, right{.points = 8.5, .side = Side::right};
          const Tagged row(paper_, "TR");
          say("TH", weight_at(), y + 0.5, weight_room, "weigh", right);
          if (sums) say("TH", sum_at(), y + 0.5, sum_room, "running total", right);
          if (lots) say("TH", lot_at(), y + 0.5, lot_room, "lot", small);
        },
        true);
    strips_.back().table = tables_;
  }

  void weigh(const WeighRow& row) {
    const Type note{.points = 10.5};
    const double room = weight_at() - name_at - between;
    const double name_height = paper_.height_of(row.name, room, name_type);
    const double note_height = row.note.empty() ? 0 : paper_.height_of(row.note, room, note);
    const double height = std::max(12.0, name_height + note_height + 1.5);
    add(
        height,
        [=, this](double y) {
          const Tagged tagged(paper_, "TR");
          {
            const Tagged cell(paper_, "TD");
            paper_.box(0.3, y + (height - box) / 2, box, box, 0.6);
            const double top = y + (height - name_height - note_height) / 2;
            paper_.words(name_at, top, room, row.name, name_type);
            if (!row.note.empty()) paper_.words(name_at, top + name_height, room, row.note, note);
          }
          figures(row, y, height);
          paper_.line(0, y + height, width_, y + height, 0.15);
        },
        row.keeps_next);
    strips_.back().table = tables_;
  }

  void figures(const WeighRow& row, double y, double height) {
    const double weight_height = paper_.height_of(row.weight, weight_room, weight_type);
    say("TD", weight_at(), y + (height - weight_height) / 2, weight_room, row.weight, weight_type);
    const Type ounces{.points = 11, .side = Side::right, .is_one_line = true},
        sum{.points = 12, .bold = true, .side = Side::right, .is_one_line = true};
    const double middle = y + height / 2;
    {
      const Tagged cell(paper_, "TD");
      paper_.words(sum_at(), row.running.empty() ? middle - 2.5 : middle - 5.3, sum_room,
                   row.beside, ounces);
      if (!row.running.empty()) paper_.words(sum_at(), middle - 0.3, sum_room, row.running, sum);
    }
    if (row.has_lot) paper_.box(lot_at(), middle - 4.5, lot_room - 0.3, 9, 0.3);
  }

  /// Title and column heads above any row but the first that begins a page.
  void repeat_heads(const WeighList& list, std::size_t first_row, std::size_t last_row) {
    std::vector<Strip> list_so_far;
    std::swap(list_so_far, strips_);
    vessel(list, ", continued");
    heads(list);
    std::swap(list_so_far, strips_);
    const auto head = std::make_shared<const std::vector<Strip>>(std::move(list_so_far));
    for (std::size_t i = first_row + 1; i <= last_row; ++i) strips_[i].again = head;
  }

  /// Lye on one page with all that is read at it; of other lists no row alone, and none that is
  /// shorter than half a page in two parts.
  void keep_together(const WeighList& list, std::size_t first, std::size_t first_row,
                     std::size_t last_row) {
    if (!list.after.empty()) strips_[last_row].keeps_next = true;
    if (list.stays_whole || height_of(first, last_row) < height_ / 2) {
      const std::size_t last = list.stays_whole ? strips_.size() - 1 : last_row;
      for (std::size_t i = first; i < last; ++i) strips_[i].keeps_next = true;
    } else if (last_row > first_row) {
      strips_[first_row].keeps_next = strips_[last_row - 1].keeps_next = true;
    }
  }

  double height_of(std::size_t first, std::size_t last) const {
    double height = 0;
    for (std::size_t i = first; i <= last; ++i) height += strips_[i].height;
    return height;
  }

  // Things to count, to look up and to fill in.

  void set(const SheetCounts& counts) {
    paragraph(counts.label + ": " + std::to_string(counts.count), {.points = 12, .bold = true}, 2.5,
              true);
    constexpr double pitch = 10.5;
    constexpr std::int64_t most = 200;  // boxes; more are no help
    if (counts.count > most) return;
    const auto in_row = static_cast<std::int64_t>((width_ + pitch - box) / pitch);
    for (std::int64_t first = 1; first <= counts.count; first += in_row) {
      const std::int64_t last = std::min(counts.count, first + in_row - 1);
      add(box + 2.5, [this, first, last](double y) {
        for (std::int64_t i = first; i <= last; ++i) {
          const double x = 0.3 + pitch * static_cast<double>(i - first);
          const Tagged tagged(paper_, "P");
          paper_.box(x, y + 1.5, box, box, 0.5);
          paper_.words(x, y + 3.2, box, std::to_string(i), {.points = 8, .side = Side::middle});
        }
      });
    }
  }

  void set(const SheetGrid& grid) {
    ++tables_;
    for (std::size_t i = 0; i < grid.rows.size(); ++i) {
      const bool is_marked = i > 0 && i == grid.marked;
      const Type type{.points = i == 0 ? 9.0 : 13.0,
                      .bold = i == 0 || is_marked,
                      .side = Side::left,
                      .is_one_line = true};
      add(
          i == 0 ? 6 : 7,
          [this, cells = grid.rows[i], type, is_marked, has_boxes = grid.has_boxes, i](double y) {
            const Tagged row(paper_, "TR");
            constexpr double small_box = 5;
            const double from = has_boxes ? small_box + 1 : 0;
            const double room = (width_ - from) / static_cast<double>(cells.size());
            if (has_boxes && i > 0) paper_.box(0.3, y + 1, small_box, small_box, 0.5);
            for (std::size_t c = 0; c < cells.size(); ++c)
              say(i == 0 ? "TH" : "TD", from + 2 + room * static_cast<double>(c),
                  y + (i == 0 ? 1 : 1.2), room - 4, cells[c], type);
            const double height = i == 0 ? 6 : 7;
            if (is_marked) paper_.box(0.3, y + 0.3, width_ - 0.6, height - 0.6, 0.7);
            paper_.line(0, y + height, width_, y + height, i == 0 ? 0.4 : 0.15);
          },
          i + 1 < grid.rows.size());
      strips_.back().table = tables_;
    }
  }

  /// Two beside one another, down the left side first.
  void set(const SheetBlanks& blanks) {
    const std::size_t rows = (blanks.blanks.size() + 1) / 2;
    for (std::size_t i = 0; i < rows; ++i)
      add(blank_height, [this, blanks, rows, i](double y) {
        this->blank(blanks.blanks[i], 0, y);
        if (i + rows < blanks.blanks.size())
          this->blank(blanks.blanks[i + rows], width_ / 2 + 2, y);
      });
  }

  static constexpr double blank_height = 8.8;

  void blank(const SheetBlank& blank, double x, double y) {
    constexpr double what_room = 44, unit_room = 8;
    const double to = width_ / 2 - 2 - unit_room, foot = y + blank_height;
    const bool is_planned = !blank.planned.empty();
    const Tagged tagged(paper_, "P");
    paper_.words(x, foot - (is_planned ? 8.6 : 5), what_room, blank.what,
                 {.points = 10.5, .is_one_line = true});
    if (is_planned)
      paper_.words(x, foot - 4.4, what_room, "planned " + blank.planned,
                   {.points = 9, .is_one_line = true});
    paper_.line(x + what_room + 1, foot - 0.5, x + to, foot - 0.5, 0.3);
    paper_.words(x + to + 1, foot - 5, unit_room, blank.unit,
                 {.points = 11.5, .is_one_line = true});
  }

  void set(const SheetDrawing& drawing) {
    const Drawing& its = drawing.drawing;
    add(its.height_mm, [this, its](double y) {
      const Tagged tagged(paper_, "Figure");
      paper_.drawing((width_ - its.width_mm) / 2, y, its);
    });
  }

  static constexpr Type step_type{.points = 14, .bold = true};

  PdfPaper& paper_;
  double width_, height_;  // of what a page holds
  std::vector<Strip> strips_;
  std::size_t tables_ = 0;
};

}  // namespace

std::string printed(const Sheet& sheet, Paper size) {
  const double page_width = size == Paper::A4 ? a4_width : letter_width;
  const double page_height = size == Paper::A4 ? a4_height : letter_height;
  const double width = page_width - 2 * margin, height = page_height - 2 * margin;
  PdfPaper paper(page_width, page_height, sheet.title, sheet.printed_at);
  paper.move_origin(margin, margin);
  Strips setting(paper, width, height);  // the strips draw by it
  const auto strips = setting.of(sheet);
  const auto pages = laid_on_pages(strips, height);
  for (std::size_t page = 0; page < pages.size(); ++page) {
    if (page > 0) paper.next_page();
    draw(pages[page], paper);
    const std::string number = std::to_string(page + 1) + " / " + std::to_string(pages.size());
    paper.words(0, height + 2, width * 0.6, sheet.foot, {.points = 8, .is_one_line = true});
    paper.words(width * 0.6, height + 2, width * 0.4, sheet.title + "   " + number,
                {.points = 9, .side = Side::right, .is_one_line = true});
  }
  return paper.bytes();
}

}  // namespace brimwright::helpers
