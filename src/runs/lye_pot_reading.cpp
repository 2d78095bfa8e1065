#include "runs/lye_pot_reading.h"

#include "planning/usual_bench.h"

namespace brimwright::runs {

std::optional<planning::PotQuestion> read_lye_pot(const Fields& run) {
  const auto fields = run.optional_object("lye_pot");
  if (!fields) return std::nullopt;
  planning::PotQuestion question{fields->place(), {}};
  if (fields->has("pot_tare")) {
    question.pot_tare = fields->positive_mass("pot_tare");
    planning::usual_bench().ask(*fields, "pot_tare", "empty pot", *question.pot_tare);
  }
  const bool shared = !fields->spelling().is_earlier() || fields->truth("shared");
  fields->refuse_unknown();
  if (shared) return question;
  if (question.pot_tare)
    throw UserError(fields->place("pot_tare"), "is given for a pot that is not shared",
                    "say \"shared\": true, or leave \"lye_pot\" out");
  return std::nullopt;
}

}  // namespace brimwright::runs
