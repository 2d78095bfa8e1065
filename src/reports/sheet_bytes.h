#pragma once

#include "reports/sheet_blocks.h"
#include "sandbox/job_bytes.h"

namespace brimwright::reports {

// A sheet as bytes, for the helper program that prints it as PDF; see sandbox/job_bytes.h.

struct PrintedSheet {
  Sheet sheet;
  Paper paper = Paper::A4;
};

using sandbox::Like;

void pass(auto& bytes, Like<OpenLine> auto& its) { bytes(its.look, its.points); }
void pass(auto& bytes, Like<ClosedLines> auto& its) { bytes(its.look, its.lines); }
void pass(auto& bytes, Like<Rectangle> auto& its) {
  bytes(its.look, its.corner, its.width_mm, its.height_mm, its.inside);
}
void pass(auto& bytes, Like<Circle> auto& its) { bytes(its.look, its.middle, its.radius_mm); }
void pass(auto& bytes, Like<Lettering> auto& its) {
  bytes(its.size_mm, its.anchor, its.bold, its.upward);
}
void pass(auto& bytes, Like<DrawnWords> auto& its) { bytes(its.at, its.text, its.lettering); }
void pass(auto& bytes, Like<Drawing> auto& its) {
  bytes(its.prefix, its.title, its.width_mm, its.height_mm, its.marks);
}

void pass(auto& bytes, Like<SheetPage> auto& its) { bytes(its.title, its.subtitle); }
void pass(auto& bytes, Like<SheetHeading> auto& its) { bytes(its.text, its.aside); }
void pass(auto& bytes, Like<SheetStep> auto& its) { bytes(its.text); }
void pass(auto& bytes, Like<SheetWords> auto& its) { bytes(its.text, its.is_order); }
void pass(auto& bytes, Like<SheetWarning> auto& its) { bytes(its.severity, its.text); }
void pass(auto& bytes, Like<SheetFirstAid::Line> auto& its) { bytes(its.what, its.to_do); }
void pass(auto& bytes, Like<SheetFirstAid> auto& its) {
  bytes(its.title, its.lines, its.numbers, its.source);
}
void pass(auto& bytes, Like<WeighRow> auto& its) {
  bytes(its.name, its.note, its.weight, its.beside, its.running, its.has_lot, its.keeps_next);
}
void pass(auto& bytes, Like<WeighList> auto& its) {
  bytes(its.rows, its.title, its.before, its.after, its.stays_whole, its.tare_unit);
}
void pass(auto& bytes, Like<SheetCounts> auto& its) { bytes(its.label, its.count); }
void pass(auto& bytes, Like<SheetGrid> auto& its) { bytes(its.rows, its.marked, its.has_boxes); }
void pass(auto& bytes, Like<SheetBlank> auto& its) { bytes(its.what, its.unit, its.planned); }
void pass(auto& bytes, Like<SheetBlanks> auto& its) { bytes(its.blanks); }
void pass(auto& bytes, Like<SheetDrawing> auto& its) { bytes(its.drawing); }
void pass(auto& bytes, Like<Sheet> auto& its) {
  bytes(its.title, its.subtitle, its.blocks, its.foot, its.printed_at);
}
void pass(auto& bytes, Like<PrintedSheet> auto& its) { bytes(its.sheet, its.paper); }

}  // namespace brimwright::reports
