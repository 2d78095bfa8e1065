#include "reports/days_report.h"
#include "reports/lye_report.h"
#include "reports/plan_words.h"
#include "reports/text_table.h"
#include "units/shown_text.h"
#include "units/wording.h"

#include <algorithm>
#include <string>

namespace brimwright::reports {
namespace {

using days::Day;

std::string names_of(const DaysReport& report) {
  std::string names;
  for (const auto& asked : report.asked) names += (names.empty() ? "" : " + ") + asked.name;
  return names;
}

std::string kept_text(const DaysReport& report) {
  std::string text = line("Begin on " + weekday_and_date(report.schedule.begin) + " at the latest" +
                          (report.schedule.is_proved ? " (proved: a later start does not keep it)."
                                                     : " (found, not proved latest)."));
  text += line("Begun on " + weekday_and_date(report.from) + ", all of it can be ready by " +
               weekday_and_date(report.promise) +
               (report.is_promise_proved ? "." : " (found, not proved earliest)."));
  return text;
}

std::string late_text(const DaysReport& report) {
  std::string text;
  for (const auto& asked : report.asked) {
    if (!asked.is_late) {
      text += line(asked.name + " is kept: " + counted(asked.pieces, "piece") + " for " +
                   weekday_and_date(*asked.due) + ".");
      continue;
    }
    text +=
        line((asked.in_time == 0
                  ? "THE DUE DAY CANNOT BE KEPT: none of the " + counted(asked.pieces, "piece")
                  : "THE DUE DAY CANNOT BE KEPT: " + std::to_string(asked.in_time) + " of " +
                        counted(asked.pieces, "piece")) +
             " of " + asked.name + " by " + weekday_and_date(*asked.due) +
             (asked.in_time == 0 ? ", all on " : ", the rest on ") + weekday_and_date(*asked.rest) +
             (report.is_parting_proved ? " (proved: no more in time, and no earlier)."
                                       : " (found; more may be possible)."));
  }
  return text;
}

std::string answer_text(const DaysReport& report) {
  if (report.is_due) return report.is_kept ? kept_text(report) : late_text(report);
  return line("Begun on " + weekday_and_date(report.from) + ", promise it for " +
              weekday_and_date(report.promise) +
              (report.is_promise_proved ? " (proved: no earlier day can be kept)."
                                        : " (found, not proved earliest)."));
}

std::string listed(const std::vector<std::string>& names) {
  std::string text;
  for (const auto& name : names) text += (text.empty() ? "" : ", ") + name;
  return text;
}

/// ", in 3 batches. The moulds have 12 cavities to fill at a time.", where there are several.
std::string batches_text(const DaysReport::Line& line) {
  if (line.batches < 2) return "";
  std::string text = ", in " + std::to_string(line.batches) + " batches.";
  for (const std::string& limit : line.batch_limits) text += " " + limit;
  return text;
}

std::string asked_text(const DaysReport& report) {
  std::string text;
  for (const auto& asked : report.asked) {
    for (const std::string& words : ready_words(asked.ready)) text += line(words);
    for (const auto& one : asked.lines)
      text +=
          line(one.name + (one.files.size() > 1 ? ", poured together: " : ": ") +
               counted(one.sell, "piece") + " to sell, " + std::to_string(one.make) +
               " to make, in " + listed(one.moulds) + " (" + on_one_line(listed(one.files)) +
               (asked.is_order ? ", of " + on_one_line(asked.file) : "") + ")" + batches_text(one));
    if (asked.due && asked.last_making_day && !asked.is_late)
      text += line("Last day to pour any of it for " + weekday_and_date(*asked.due) + ": " +
                   weekday_and_date(*asked.last_making_day));
  }
  return text;
}

std::string strip_text(const DaysReport& report) {
  std::string text;
  Day day;
  bool is_first = true;
  for (const DayEntry& entry : entries_of(report)) {
    if (is_first || entry.day != day) text += "\n" + weekday_and_date(entry.day) + "\n";
    is_first = false;
    day = entry.day;
    const std::string time =
        entry.time.count() > 0 ? " [" + in_minutes(entry.time) + "]" : std::string();
    text += wrapped(entry.text + time, "  [ ] ", "      ");
    if (!entry.caution.empty()) text += wrapped(entry.caution, "      ! ", "        ");
  }
  return text;
}

/// Of the lyes that are weighed: before all else.
std::string dangers_text(const DaysReport& report) {
  std::string text;
  for (const DaysReport::Lye& lye : report.lyes)
    for (const Remark& remark : remarks_of(lye))
      if (remark.severity == Severity::danger) text += wrapped(remark.text, "!! ", "   ");
  return text.empty() ? "" : text + "\n";
}

std::string lyes_text(const DaysReport& report) {
  std::string text;
  for (const DaysReport::Lye& lye : report.lyes) {
    text +=
        "\n" + line("ONE POT OF LYE SOLUTION, made on " + weekday_and_date(lye.made) + ", for " +
                    (lye.of == planning::PotOfBatch::For::topping ? "the toppings of " : "") +
                    whom_for(lye, report));
    text += pot_text(lye.pot, lye.heat);
    for (const Remark& remark : remarks_of(lye))
      if (remark.severity != Severity::danger)
        text += wrapped(remark.text, remark.severity == Severity::note ? "  " : "  ! ", "    ");
  }
  return text.empty() ? ""
                      : text + line(
                                   "They take the place of the lye solutions of these batches' own "
                                   "plans and sheets: make these or those, not both.");
}

std::string what_if_text(const DaysReport& report) {
  if (report.what_ifs.empty())
    return "\nWhat sets the date\n" +
           line(std::string("No wider limit that was tried makes it earlier: "
                            "the time to ") +
                (report.schedule.batches.empty() ? "" : "cure and to ") + "pack does.");
  std::string text = report.is_due && !report.is_kept ? "\nWhat would help, each planned\n"
                                                      : "\nWhat limits it, each planned\n";
  for (const auto& one : report.what_ifs) {
    std::string told = one.text + ": ";
    if (one.keeps && !report.is_kept) told += "keeps the due day; ";
    told += one.keeps ? "begin on " + weekday_and_date(*one.start) + " at the latest"
                      : "ready by " + weekday_and_date(*one.promise);
    text += wrapped(told + (one.is_proved ? "" : " (found, not proved)"), "  ", "    ");
  }
  return text;
}

std::string extras_text(const DaysReport& report) {
  std::string text;
  for (std::size_t i = 0; i < report.extras.size(); ++i) {
    const auto& first = report.extras[i];
    const auto fills = [](const DaysReport::Extra& one) {
      return counted(one.cavities, "cavity", "cavities") + " of " + one.mould;
    };
    std::string told = fills(first);
    for (; i + 1 < report.extras.size() && report.extras[i + 1].run == first.run &&
           report.extras[i + 1].batch == first.batch;
         ++i)
      told += ", or " + fills(report.extras[i + 1]);
    text += wrapped("Batch " + std::to_string(first.batch) + " of " + first.run +
                        ": what is left fills " + told + ".",
                    "  ", "    ");
  }
  return text.empty() ? "" : "\nExtras, from base that is left over (not counted above)\n" + text;
}

std::string notes_text(const DaysReport& report) {
  std::vector<Remark> all = report.notes;
  for (const DayLack& lack : report.lacks) all.push_back({lack.severity, words_with_keys(lack)});
  std::string text = all.empty() ? "" : "\nNotes\n";
  for (const Remark& note : all)
    text += wrapped(note.text, note.severity == Severity::note ? "  " : "  ! ", "    ");
  return text;
}

}  // namespace

std::string days_text(const DaysReport& report) {
  std::string when = report.is_due ? "due " : "from " + weekday_and_date(report.from);
  if (report.is_due) {
    Day first = *report.asked.front().due, last = first;
    for (const auto& asked : report.asked) {
      first = std::min(first, *asked.due);
      last = std::max(last, *asked.due);
    }
    when += weekday_and_date(first) + (first == last ? "" : " to " + weekday_and_date(last));
  }
  std::string text = dangers_text(report) + title(names_of(report), when);
  text += answer_text(report) + asked_text(report) + strip_text(report) + lyes_text(report) +
          what_if_text(report) + extras_text(report);
  return text + notes_text(report);
}

std::string words_with_keys(const DayLack& lack) {
  std::string keys;
  for (const std::string& key : lack.keys) keys += (keys.empty() ? " (\"" : ", \"") + key + "\"";
  return lack.what + (keys.empty() ? "" : keys + ")") + ": " + lack.then;
}

std::string words_of(const DayLack& lack) { return lack.what + ": " + lack.then; }

}  // namespace brimwright::reports
