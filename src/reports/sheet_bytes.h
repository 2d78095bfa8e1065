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

template <class Bytes>
void pass(Bytes& bytes, Like<OpenLine> auto& its) {
  bytes(its.look, its.points);
}
template <class Bytes>
void pass(Bytes& bytes, Like<ClosedLines> auto& its) {
  bytes(its.look, its.lines);
}
template <class Bytes>
void pass(Bytes& bytes, Like<Rectangle> auto& its) {
  bytes(its.look, its.corner, its.width_mm, its.height_mm, its.inside);
}
template <class Bytes>
void pass(Bytes& bytes, Like<Circle> auto& its) {
  bytes(its.look, its.middle, its.radius_mm);
}
template <class Bytes>
void pass(Bytes& bytes, Like<Lettering> auto& its) {
  bytes(its.size_mm, its.anchor, its.bold, its.upward);
}
template <class Bytes>
void pass(Bytes& bytes, Like<DrawnWords> auto& its) {
  bytes(its.at, its.text, its.lettering);
}
template <class Bytes>
void pass(Bytes& bytes, Like<Drawing> auto& its) {
  bytes(its.prefix, its.title, its.width_mm, its.height_mm, its.marks);
}

template <class Bytes>
void pass(Bytes& bytes, Like<SheetPage> auto& its) {
  bytes(its.title, its.subtitle);
}
template <class Bytes>
void pass(Bytes& bytes, Like<SheetHeading> auto& its) {
  bytes(its.text, its.aside);
}
template <class Bytes>
void pass(Bytes& bytes, Like<SheetStep> auto& its) {
  bytes(its.text);
}
template <class Bytes>
void pass(Bytes& bytes, Like<SheetWords> auto& its) {
  bytes(its.text, its.is_order);
}
template <class Bytes>
void pass(Bytes& bytes, Like<SheetWarning> auto& its) {
  bytes(its.severity, its.text);
}
template <class Bytes>
void pass(Bytes& bytes, Like<SheetFirstAid::Line> auto& its) {
  bytes(its.what, its.to_do);
}
template <class Bytes>
void pass(Bytes& bytes, Like<SheetFirstAid> auto& its) {
  bytes(its.title, its.lines, its.numbers, its.source);
}
template <class Bytes>
void pass(Bytes& bytes, Like<WeighRow> auto& its) {
  bytes(its.name, its.note, its.weight, its.beside, its.running, its.has_lot);
}
template <class Bytes>
void pass(Bytes& bytes, Like<WeighList> auto& its) {
  bytes(its.rows);
}
template <class Bytes>
void pass(Bytes& bytes, Like<SheetCounts> auto& its) {
  bytes(its.label, its.count);
}
template <class Bytes>
void pass(Bytes& bytes, Like<SheetGrid> auto& its) {
  bytes(its.rows, its.marked);
}
template <class Bytes>
void pass(Bytes& bytes, Like<SheetBlank> auto& its) {
  bytes(its.what, its.unit, its.planned);
}
template <class Bytes>
void pass(Bytes& bytes, Like<SheetBlanks> auto& its) {
  bytes(its.blanks);
}
template <class Bytes>
void pass(Bytes& bytes, Like<SheetDrawing> auto& its) {
  bytes(its.drawing);
}
template <class Bytes>
void pass(Bytes& bytes, Like<Sheet> auto& its) {
  bytes(its.title, its.subtitle, its.blocks);
}
template <class Bytes>
void pass(Bytes& bytes, Like<PrintedSheet> auto& its) {
  bytes(its.sheet, its.paper);
}

}  // namespace brimwright::reports
