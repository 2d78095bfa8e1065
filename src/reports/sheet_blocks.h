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

/// One thing to weigh: a box to tick, its name and weight to be read from two metres, a box for its
/// lot.
struct WeighRow {
  std::string name, note;
  std::string weight, beside;  // in the unit that the scale shows, and in the other
  std::string running;         // what the vessel's contents weigh then; empty: nothing to add up
  bool has_lot = true;
  bool keeps_next = false;  // a layer and its colours are on one page
};
/// A vessel: what is read before it is weighed into, its rows, and what is read after.
struct WeighList {
  std::vector<WeighRow> rows;
  std::string title = {};
  std::vector<SheetWords> before = {}, after = {};
  bool stays_whole = false;  // on one page, as a lye is; without that title and column heads stand
                             // again where it goes on
  std::string tare_unit = {};  // of a blank for what the empty vessel weighs; empty: no blank
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
  bool has_boxes = false;  // to tick, before each row but the first
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
  std::string foot = {};        // of each page: when, from which file and by what it was printed
  std::string printed_at = {};  // "2026-05-30 19:46"; may be empty
};

enum class Paper { A4, Letter };

}  // namespace brimwright::reports
