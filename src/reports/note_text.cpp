#include "reports/note_report.h"
#include "reports/text_table.h"
#include "units/shown_text.h"
#include "units/wording.h"

#include <algorithm>

namespace brimwright::reports {
namespace {

using Side = TextTable::Side;

/// "2026-12-01A  batch 1, begun on 2026-12-01, 24 pieces"
std::string head_of(const NotedBatch& noted) {
  const std::string which = "batch " + std::to_string(noted.number);
  if (!noted.batch)
    return which + ", not begun" +
           (noted.reserved ? "; its code will be " + *noted.reserved : std::string());
  const auto& batch = *noted.batch;
  std::string begun = batch.code + "  " + which + ", begun on " + batch.begun_on;
  if (!noted.lines.empty()) return begun;
  return begun + ", " + counted(batch.pieces, "piece", "pieces") +
         (noted.poured_from.empty() ? "" : ", poured from " + noted.poured_from);
}

std::string lines_of(const NotedBatch& noted) {
  std::string text;
  for (const auto& line : noted.lines)
    text += wrapped(on_one_line("Poured from it: " + line.code + " of " + line.run_name + ", " +
                                counted(line.pieces, "piece", "pieces") +
                                ". Note what became of "
                                "them with " +
                                line.run_file + "."),
                    "  ", "    ");
  return text;
}

std::string sale_line(const NotedBatch& noted) {
  if (!noted.batch || !noted.lines.empty()) return "";
  return noted.for_sale.is
             ? "  Its pieces may be sold.\n"
             : wrapped("Not for sale: the batch " + on_one_line(noted.for_sale.why_not) + ".", "  ",
                       "  ");
}

std::string noted_value(const records::Blank& blank, const NotedBatch& noted) {
  return on_one_line(noted.notes.text(blank.key).value_or(""));
}

std::string weighed(const records::Weighing& weighing) {
  return counted(weighing.pieces, "piece", "pieces") + ", " + on_one_line(weighing.written);
}

/// A row each, under the heading of what it is of.
std::string rows_of(const NotedBatch& noted, bool is_form) {
  TextTable table({Side::left, Side::left, Side::left, Side::left});
  table.row({"key", "what", "planned", "noted"});
  table.rule();
  std::size_t rows = 0;
  for (const auto& blank : noted.blanks) {
    const std::string value = noted_value(blank, noted);
    const bool is_weighing = blank.kind == "weighing";
    if (!is_form && value.empty() && !(is_weighing && !noted.weighings.empty())) continue;
    ++rows;
    const std::string what = blank.of.empty() || blank.words.find(blank.of) != std::string::npos
                                 ? blank.words
                                 : blank.of + ": " + blank.words;
    table.row({blank.key + (is_weighing ? ".DATE" : ""), on_one_line(what), blank.planned, value});
    if (is_weighing)
      for (const auto& weighing : noted.weighings)
        table.row({"cured." + weighing.day, "", "", weighed(weighing)});
  }
  return rows == 0 ? "  Nothing is noted of it yet.\n" : table.text();
}

/// With what it is weighed into, where something else of the batch is called so too.
std::string weighed_words(const records::Blank& row, const std::vector<records::Blank>& all) {
  const auto alike = std::count_if(
      all.begin(), all.end(), [&](const records::Blank& one) { return one.words == row.words; });
  return on_one_line(alike == 1 ? row.words : row.words + " (" + row.of + ")");
}

/// What was weighed where it was not what was planned, and all that may be, where all is shown.
std::string weighed_rows(const NotedBatch& noted, bool is_form) {
  TextTable table({Side::left, Side::left, Side::left, Side::left});
  table.row({"weighed", "planned", "really", "key"});
  table.rule();
  bool has_any = false;
  for (const auto& row : noted.rows) {
    const std::string value = noted_value(row, noted);
    if (!is_form && value.empty()) continue;
    has_any = true;
    table.row({weighed_words(row, noted.rows), row.planned, value, row.key});
  }
  return has_any ? "\n" + table.text() : "";
}

std::string remarks_text(const std::vector<Remark>& remarks) {
  std::string text;
  for (const auto& remark : remarks)
    text += wrapped(remark.text,
                    remark.severity == Severity::danger    ? "!! "
                    : remark.severity == Severity::caution ? " ! "
                                                           : " - ",
                    "   ");
  return text;
}

/// Batches of the run that nobody has begun, in a sentence.
std::string left_to_begin(const NoteReport& report) {
  if (report.is_form || !report.in_all) return "";
  std::string numbers;
  for (std::int64_t number = 1; number <= *report.in_all; ++number)
    if (std::none_of(report.batches.begin(), report.batches.end(), [&](const NotedBatch& noted) {
          return noted.number == number && noted.batch;
        }))
      numbers += (numbers.empty() ? "" : ", ") + std::to_string(number);
  if (numbers.empty()) return "";
  return wrapped("Not begun: batch " + numbers + " of " + std::to_string(*report.in_all) + ".", "",
                 "  ");
}

}  // namespace

std::string note_text(const NoteReport& report) {
  std::string text;
  for (const std::string& done : report.done) text += wrapped(on_one_line(done), "", "  ");
  text += remarks_text(report.remarks);
  if (!report.done.empty()) return text;
  text += on_one_line(report.run) + "\n";
  if (report.batches.empty()) text += "  No batch of it has been begun.\n";
  for (const NotedBatch& noted : report.batches)
    text += "\n" + head_of(noted) + "\n" + lines_of(noted) + rows_of(noted, report.is_form) +
            weighed_rows(noted, report.is_form) + remarks_text(noted.as_weighed) + sale_line(noted);
  const std::string left = left_to_begin(report);
  return text + (left.empty() ? "" : "\n" + left);
}

}  // namespace brimwright::reports
