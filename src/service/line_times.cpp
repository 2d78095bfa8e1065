#include "service/line_times.h"

#include "planning/hours_in_mould.h"
#include "units/user_error.h"
#include "units/wording.h"

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::service {
namespace {

using std::chrono::ceil;
using std::chrono::floor;
using std::chrono::hours;
using std::chrono::minutes;

Place place_in(const chemistry::Formula& formula, const char* pointer) {
  return {formula.file, formula.spelling.pointer(pointer)};
}

std::vector<const chemistry::Formula*> formulas_of(const planning::Run& run) {
  std::vector<const chemistry::Formula*> formulas = {&run.pour.formula};
  if (run.pipe) formulas.push_back(&run.pipe->formula);
  return formulas;
}

/// The longest of the parts, in whole days.
int cure_days(const planning::Run& run) {
  int longest = 0;
  for (const auto* formula : formulas_of(run)) {
    if (!formula->cure)
      throw UserError(place_in(*formula, "/cure"), "is missing, so nothing made of it gets a day",
                      "give how long it cures, such as \"35 days\"");
    longest = std::max(longest, static_cast<int>(ceil<std::chrono::days>(*formula->cure).count()));
  }
  return longest;
}

minutes unmould_after(const planning::Run& run) {
  const auto given = planning::hours_in_mould(run);
  if (!given)
    throw UserError(place_in(run.pour.formula, "/unmould_after"),
                    "is missing, and " + run.pour.mould.file + " does not give it either",
                    "give how long the soap stays in the mould, such as \"24 h\", in one of them");
  return *given;
}

std::optional<minutes> cut_within(const planning::Run& run, minutes unmould) {
  if (!run.cut) return std::nullopt;
  std::optional<minutes> shortest;
  const chemistry::Formula* of = nullptr;
  for (const auto* formula : formulas_of(run))
    if (formula->cut_within && (!shortest || *formula->cut_within < *shortest)) {
      shortest = formula->cut_within;
      of = formula;
    }
  if (!shortest) return std::nullopt;
  const auto refuse = [&](const std::string& problem) {
    throw UserError(place_in(*of, "/cut_within"), problem,
                    "give a longer time, or a shorter one in the mould");
  };
  const std::string then = in_hours(unmould) + " in the mould";
  if (*shortest < unmould) refuse("is over before it has been " + then);
  const bool is_same_day = *shortest < hours(24);
  if (!is_same_day && ceil<std::chrono::days>(unmould) > floor<std::chrono::days>(*shortest))
    refuse("leaves no whole day after " + then);
  return shortest;
}

/// The knife comes in time for each by itself; here for all of them at once.
void refuse_no_day_to_cut(const DayLine& line, const days::Line& days) {
  if (!days.cut_within) return;
  const bool is_same_day = *days.cut_within < hours(24);
  if (*days.cut_within >= days.unmould_after &&
      (is_same_day ||
       ceil<std::chrono::days>(days.unmould_after) <= floor<std::chrono::days>(*days.cut_within)))
    return;
  throw UserError(line.parts.front().run->place("/pour/formula"),
                  "is poured together with what stays longer in its mould than it may wait to "
                  "be cut",
                  "pour it by itself");
}

}  // namespace

void set_times(days::Line& line, const DayLine& of) {
  for (const DayPart& part : of.parts) {
    const planning::Run& run = *part.run;
    const minutes unmould = unmould_after(run);
    line.unmould_after = std::max(line.unmould_after, unmould);
    if (const auto within = cut_within(run, unmould))
      line.cut_within = std::min(line.cut_within.value_or(*within), *within);
    line.is_cut |= run.cut.has_value();
    line.cure_days = std::max(line.cure_days, cure_days(run));
  }
  refuse_no_day_to_cut(of, line);
}

}  // namespace brimwright::service
