#include "reports/note_report.h"
#include "reports/note_table.h"
#include "reports/text_table.h"
#include "units/shown_text.h"
#include "units/wording.h"

#include <algorithm>
#include <map>

namespace brimwright::reports {
namespace {

constexpr auto first_of_cure = "unmoulded_on";  // from there on it is cure, test and sale

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

std::string in_width(const std::string& line) {
  return shown_width(line) <= page_width ? line + "\n" : wrapped(line, "", "  ");
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

/// Sheet and label of a batch that is made once more carry it, and not the code that it has.
std::string reserved_line(const NotedBatch& noted) {
  if (!noted.batch || !noted.reserved) return "";
  return wrapped("Reserved for its next making: " + *noted.reserved + ".", "  ", "    ");
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

/// What her hands are at, as its blanks follow one another.
std::string part_of(const records::Blank& blank, bool is_cure) {
  static const std::map<std::string, std::string> parts = {
      {"day_before", "Cast beforehand"}, {"base_mixed", "Mixing"}, {"poured", "Pouring"},
      {"topping_mixed", "Mixing"},       {"whipped", "Whipping"},  {"piped", "Piping"},
      {"afterwards", "Pieces and time"}};
  if (is_cure) return "Cure and test";
  const auto part = parts.find(blank.when);
  if (part == parts.end()) return blank.of;
  return part->second + (blank.of.empty() ? "" : ": " + blank.of);
}

/// Under the heading of what it is of: "base: made in all" is "made in all".
std::string what_of(const records::Blank& blank) {
  const std::string of = blank.of + ": ";
  return on_one_line(blank.words.starts_with(of) ? blank.words.substr(of.size()) : blank.words);
}

/// All blanks, or those alone of which something is noted.
std::string blanks_of(const NotedBatch& noted, bool is_form) {
  std::vector<NoteRow> rows;
  bool is_cure = false;
  for (const auto& blank : noted.blanks) {
    is_cure |= blank.key == first_of_cure;
    const std::string value = noted_value(blank, noted);
    const bool is_weighing = blank.kind == "weighing";
    if (!is_form && value.empty() && !(is_weighing && !noted.weighings.empty())) continue;
    const std::string part = on_one_line(part_of(blank, is_cure));
    rows.push_back(
        {part, blank.key + (is_weighing ? ".DATE" : ""), what_of(blank), blank.planned, value});
    if (is_weighing)
      for (const auto& weighing : noted.weighings)
        rows.push_back({part, "cured." + weighing.day, "", "", weighed(weighing)});
  }
  return rows.empty() ? "  Nothing is noted of it yet.\n"
                      : note_table(rows, {"key", "what", "planned", "noted"});
}

/// What was weighed where it was not what was planned, and all that may be, where all is shown.
std::string weighed_rows(const NotedBatch& noted, bool is_form) {
  std::vector<NoteRow> rows;
  for (const auto& row : noted.rows) {
    const std::string value = noted_value(row, noted);
    if (is_form || !value.empty())
      rows.push_back({on_one_line(row.of), row.key, on_one_line(row.words), row.planned, value});
  }
  return rows.empty() ? "" : "\n" + note_table(rows, {"key", "weighed", "planned", "really"});
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
    text += "\n" + in_width(head_of(noted)) + lines_of(noted) + blanks_of(noted, report.is_form) +
            weighed_rows(noted, report.is_form) + remarks_text(noted.as_weighed) +
            sale_line(noted) + reserved_line(noted);
  const std::string left = left_to_begin(report);
  return text + (left.empty() ? "" : "\n" + left);
}

}  // namespace brimwright::reports
