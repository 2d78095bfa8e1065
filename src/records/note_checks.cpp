#include "records/note_checks.h"

#include "records/note_values.h"
#include "units/fields.h"
#include "units/letters.h"
#include "units/printing.h"
#include "units/question.h"
#include "units/reading.h"
#include "units/shown_text.h"
#include "units/wording.h"
#include "units/written_number.h"

#include <algorithm>
#include <chrono>
#include <set>
#include <utility>

namespace brimwright::records {
namespace {

constexpr std::size_t longest_text = 1'000;
const Place nowhere{"", ""};

/// A number that values of one kind are compared by.
double size_of(const std::string& kind, const std::string& value, const Place& where) {
  if (kind == "mass") return read_mass(value, where).base();
  if (kind == "volume") return read_volume(value, where, "120 ml").base();
  if (kind == "temperature") return read_temperature(value, where).celsius();
  if (kind == "minutes")
    return static_cast<double>(read_short_time(value, where, "12 min").count());
  if (kind == "length") return read_signed_length(value, where).base();
  return static_cast<double>(read_count(value, where));
}

bool is_number(const std::string& kind) {
  return kind != "date" && kind != "choice" && kind != "text" && kind != "weighing";
}

std::string list_of(const std::vector<std::string>& choices) {
  std::string list;
  for (const std::string& choice : choices) list += (list.empty() ? "" : " or ") + choice;
  return list;
}

std::string read_choice(const Blank& blank, const Note& change) {
  std::string value = in_small_letters(plain(change.value));
  if (std::find(blank.choices.begin(), blank.choices.end(), value) != blank.choices.end())
    return value;
  throw UserError(change.where, "is " + quoted(change.value) + ", which is none of what it may be",
                  "give " + list_of(blank.choices));
}

std::string read_text(const Note& change) {
  if (on_one_line(change.value) != change.value)
    throw UserError(change.where, "has a line end or something else in it that cannot be printed",
                    "write it on one line");
  if (characters_in(change.value) > longest_text)
    throw UserError(change.where, "is longer than " + std::to_string(longest_text) + " characters",
                    "write it shorter");
  return change.value;
}

}  // namespace

NoteChecks::NoteChecks(const Batch& batch, const std::vector<Blank>& blanks, Notes before,
                       const Noting& noting)
    : batch_(batch), blanks_(blanks), notes_(std::move(before)), noting_(noting) {}

std::vector<Note> NoteChecks::checked(const std::vector<Note>& changes) {
  std::set<std::string> keys;
  std::vector<Note> kept = changes;
  for (Note& change : kept) {
    if (!keys.insert(change.key).second)
      throw UserError(change.where, "is given twice", "give it once");
    change.value = checked_value(change);
    if (change.value.empty())
      notes_.all.erase(change.key);
    else
      notes_.all[change.key] = {change.value, noting_.noted_at};
  }
  for (const std::string& value : noting_.confirmed)
    if (std::none_of(kept.begin(), kept.end(),
                     [&](const Note& change) { return plain(change.value) == plain(value); }))
      throw UserError(noting_.confirmed_at, quoted(value) + " is none of the values that are noted",
                      "write the very value that was checked, or leave it out");
  for (const Note& change : kept) {
    if (weighing_day(change.key)) continue;
    check_cup(blank_of(change), change);
    check_ready(change);
    for (const Blank& blank : blanks_)
      if (!blank.not_above.empty() && (blank.key == change.key || blank.not_above == change.key))
        check_against_other(blank, change);
  }
  return kept;
}

const Blank& NoteChecks::blank_of(const Note& change) const {
  const std::string key = weighing_day(change.key) ? "cured" : change.key;
  const Blank* blank = find_blank(blanks_, key);
  if (blank != nullptr && (blank->kind != "weighing" || key != change.key)) return *blank;
  if (blank != nullptr)
    throw UserError(change.where, "needs its day",
                    "write cured." + noting_.today + "=\"12 pieces, 1040 g\"");
  std::vector<std::string> known;
  for (const Blank& one : blanks_) known.push_back(one.key);
  const auto near = nearest_name(change.key, known);
  throw UserError(
      change.where, "is nothing that is noted of this batch",
      near ? "did you mean " + *near + "?" : "brimwright note lists all that are, of one batch");
}

/// As it is kept; empty where it is taken back.
std::string NoteChecks::checked_value(const Note& change) const {
  const Blank& blank = blank_of(change);
  std::string value(without_blanks(change.value));
  if (const auto day = weighing_day(change.key)) {
    check_date({.key = "cured", .kind = "date"}, {change.key, *day, change.where});
    if (!value.empty()) check_weighing(blank, change, read_weighing(value, *day, change.where));
    return value;
  }
  if (value.empty()) return "";
  if (blank.kind == "text") return read_text({change.key, value, change.where});
  if (blank.kind == "choice") return read_choice(blank, change);
  if (blank.kind == "date") {
    check_date(blank, change);
    return plain(value);
  }
  check_size(blank, change);
  return value;
}

void NoteChecks::ask(const Note& change, const std::string& problem) const {
  for (const std::string& value : noting_.confirmed)
    if (plain(value) == plain(change.value)) return;
  throw Question({.file = change.where.file,
                  .field = change.where.field,
                  .asks = "confirmed",
                  .problem = problem,
                  .remedy = Words("correct it, or if it is so, give ") +
                            Answer{"confirmed", "\"" + on_one_line(change.value) + "\""} +
                            " with it",
                  .choices = {{{{"confirmed", change.value}}}}});
}

void NoteChecks::check_size(const Blank& blank, const Note& change) const {
  const double size = size_of(blank.kind, change.value, change.where);
  if (!blank.cup_holds.empty() || !blank.cup_holds_key.empty()) return;  // by its density
  const bool is_below = !blank.least.empty() && size < size_of(blank.kind, blank.least, nowhere);
  const bool is_above = !blank.most.empty() && size > size_of(blank.kind, blank.most, nowhere);
  if (!is_below && !is_above) return;
  const std::string usual = blank.least.empty()  ? "at most " + blank.most
                            : blank.most.empty() ? "at least " + blank.least
                                                 : blank.least + " to " + blank.most;
  ask(change, "is " + quoted(change.value) + ", where " + usual + " is usual" +
                  (blank.planned.empty() ? "" : " and " + blank.planned + " is planned"));
}

void NoteChecks::check_cup(const Blank& blank, const Note& change) const {
  const Blank* cup = &blank;
  for (const Blank& one : blanks_)
    if (one.cup_holds_key == change.key) cup = &one;
  if (cup->cup_holds.empty() && cup->cup_holds_key.empty()) return;
  const auto net = notes_.mass(cup->key);
  const auto holds = cup->cup_holds.empty() ? notes_.volume(cup->cup_holds_key)
                                            : read_volume(cup->cup_holds, nowhere);
  if (!net || !holds || !(*holds > Volume{})) return;
  const Density density = *net / *holds;
  if (density >= read_density(cup->least, nowhere) && density <= read_density(cup->most, nowhere))
    return;
  ask(change, "makes " + in_g_per_ml(density, 2) + " of a cup of " + in_ml(*holds) + ", where " +
                  cup->least + " to " + cup->most + " is usual; take the empty cup off its weight");
}

void NoteChecks::check_date(const Blank& blank, const Note& change) const {
  (void)read_date(change.value, change.where);
  const std::string day = plain(change.value);
  if (day < batch_.begun_on)
    throw UserError(change.where, "is before the batch was begun, on " + batch_.begun_on,
                    "check the date");
  if (blank.key != "ready_on" && day > noting_.today)
    throw UserError(change.where, "is " + day + ", which is still to come",
                    "note it when it has happened");
}

void NoteChecks::check_weighing(const Blank& blank, const Note& change,
                                const Weighing& weighing) const {
  if (blank.most.empty()) return;
  const Mass each = weighing.together * (1.0 / static_cast<double>(weighing.pieces));
  if (each <= read_mass(blank.most, nowhere)) return;
  ask(change, "makes " + in_grams(each) + " a piece, which is more than the " + blank.most +
                  " that it weighed fresh by the plan");
}

/// What is left over of what was made, as noted or else as planned.
void NoteChecks::check_against_other(const Blank& blank, const Note& change) const {
  const auto mine = notes_.text(blank.key);
  if (!mine) return;
  const Blank* other = find_blank(blanks_, blank.not_above);
  if (other == nullptr || !is_number(other->kind)) return;
  const std::string theirs = notes_.text(other->key).value_or(other->planned);
  if (theirs.empty() ||
      size_of(blank.kind, *mine, nowhere) <= size_of(other->kind, theirs, nowhere))
    return;
  ask(change, (blank.key == change.key ? "is " : blank.key + " is ") + quoted(*mine) +
                  ", more than " + other->key + ", " + theirs);
}

/// Nothing is offered for sale without a test that was passed.
void NoteChecks::check_ready(const Note& change) const {
  if (change.key != "ready_on" || change.value.empty()) return;
  const auto tested = notes_.text("tested");
  if (!tested)
    throw UserError(change.where, "cannot be noted: the batch has no test result",
                    "note tested=pass first, with tested_how");
  if (tested != "pass")
    throw UserError(change.where, "cannot be noted: its test says " + *tested,
                    "keep it until a test is passed, and note that first");
  if (notes_.text("held_back"))
    throw UserError(change.where, "cannot be noted: the batch is held back",
                    "take that back first, with held_back=");
  ask_about_cure(blank_of(change), change);
}

void NoteChecks::ask_about_cure(const Blank& ready, const Note& change) const {
  if (ready.least.empty()) return;
  const std::chrono::sys_days begun = read_date(batch_.begun_on, nowhere);
  const auto cure = std::chrono::ceil<std::chrono::days>(read_duration(ready.least, nowhere));
  if (std::chrono::sys_days(read_date(change.value, change.where)) < begun + cure)
    ask(change, "is " + plain(change.value) + ", and a batch begun on " + batch_.begun_on +
                    " is to cure for " + ready.least);
}

}  // namespace brimwright::records
