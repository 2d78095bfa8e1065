#pragma once

#include "reports/drawing.h"
#include "units/remark.h"

#include <cstdint>
#include <string>
#include <variant>
#include <vector>

namespace brimwright::reports {

// A sheet for the bench, before it is on any kind of paper: blocks one below the other, in words
// and finished numbers.

/// A part of the work: "POUR", with what it makes beside it.
struct SheetHeading {
  std::string text, aside;
};
/// A step in it: "Fats, melted together".
struct SheetStep {
  std::string text;
};
/// A sentence; an `order` is what the hands do next, and has a box to tick.
struct SheetWords {
  std::string text;
  bool is_order = false;
};
struct SheetWarning {
  Severity severity;
  std::string text;
};

/// What to do in an accident, in a box that is found at a glance, with room for the numbers to
/// call.
struct SheetFirstAid {
  std::string title;
  struct Line {
    std::string what, to_do;
  };
  std::vector<Line> lines;
  std::vector<std::string> numbers;  // to be filled in by hand: "Emergency"
  std::string source;
};

/// One thing to weigh: a box to tick, the weight to be read from two metres, a box for its lot.
struct WeighRow {
  std::string name, note;
  std::string weight, beside;  // in the unit that the scale shows, and in the other
  std::string running;         // what the vessel's contents weigh then; empty: nothing to add up
  bool has_lot = true;
};
struct WeighList {
  std::vector<WeighRow> rows;
};

/// Boxes numbered from 1, one to tick for each time.
struct SheetCounts {
  std::string label;
  std::int64_t count = 0;
};
/// Cells; the first row heads them, and one row may be marked.
struct SheetGrid {
  std::vector<std::vector<std::string>> rows;
  std::size_t marked = 0;  // 0: none
};
/// Something to fill in by hand.
struct SheetBlank {
  std::string what, unit, planned;
};
struct SheetBlanks {
  std::vector<SheetBlank> blanks;
};
/// Never scaled.
struct SheetDrawing {
  Drawing drawing;
};

/// A new page with a title of its own.
struct SheetPage {
  std::string title, subtitle;
};

using SheetBlock =
    std::variant<SheetPage, SheetHeading, SheetStep, SheetWords, SheetWarning, SheetFirstAid,
                 WeighList, SheetCounts, SheetGrid, SheetBlanks, SheetDrawing>;

struct Sheet {
  std::string title, subtitle;
  std::vector<SheetBlock> blocks;
};

enum class Paper { A4, Letter };

}  // namespace brimwright::reports
