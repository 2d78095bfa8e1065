#include "runs/scales_reading.h"

#include "planning/usual_bench.h"
#include "units/complaint_facts.h"
#include "units/reading.h"

#include <string>
#include <string_view>

namespace brimwright::runs {
namespace {

using planning::usual_bench;

planning::Scale scale(const Fields& fields, std::string_view step) {
  const planning::Scale result{fields.positive_mass("step", "1 g"),
                               fields.positive_mass("most", "5 kg")};
  if (result.most < 10 * result.step)
    throw UserError(fields.place(), "weighs less than ten of its own steps",
                    fields.quoted("step") + " is the step of the display, " +
                        fields.quoted("most") + " the most it weighs");
  usual_bench().ask(fields, "step", step, result.step);
  usual_bench().ask(fields, "most", "scale's most", result.most);
  fields.refuse_unknown();
  return result;
}

/// The step tells which of two scales is fine; what they hold may have changed places alone.
void ask_for_swapped_scales(const Fields& fields, const planning::Scales& scales) {
  const std::string shown = fields.object("large").text("most");
  const bool is_confirmed = fields.confirms(shown);
  if (scales.large.most >= scales.fine.most || is_confirmed) return;
  throw UserErrorWithFacts(
      fields.place("large"),
      "weighs at most \"" + shown + "\", less than the fine scale, which is far from usual",
      "are the two " + fields.object("large").quoted("most") +
          " swapped? If it is right, put \"confirmed\": \"" + shown +
          "\" beside \"large\" and \"fine\"",
      {.keeps = {{.at = fields.place("confirmed").field, .figure = shown}}});
}

}  // namespace

planning::Scales read_scales(const Fields& run) {
  const Fields scales = run.object("scales");
  const planning::Scales result{scale(scales.object("large"), "scale's step"),
                                scale(scales.object("fine"), "fine scale's step")};
  if (result.fine.step > result.large.step)
    throw UserError(scales.place("fine"), "has a coarser step than the large scale",
                    "swap the two; with one scale only, give it in both places");
  ask_for_swapped_scales(scales, result);
  scales.refuse_unknown();
  return result;
}

}  // namespace brimwright::runs
