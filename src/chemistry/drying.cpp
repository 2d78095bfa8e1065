#include "chemistry/drying.h"

#include "units/printing.h"

#include <chrono>

namespace brimwright::chemistry {
namespace {

double in_days(std::chrono::minutes time) { return static_cast<double>(time.count()) / (24 * 60); }

std::vector<CureWeighing> read_weighings(const Fields& drying) {
  std::vector<CureWeighing> weighings;
  for (const Fields& entry : drying.objects("weighings")) {
    const CureWeighing weighing{in_days(entry.duration("after", "7 days")),
                                entry.positive_mass("mass", "96.2 g")};
    if (!weighings.empty() && weighing.day <= weighings.back().day)
      throw UserError(entry.place("after"),
                      "is day " + trimmed(weighing.day, 2) + ", not after day " +
                          trimmed(weighings.back().day, 2),
                      "list the weighings in order of time, each day once");
    weighings.push_back(weighing);
    entry.refuse_unknown();
  }
  if (weighings.size() < 3)
    throw UserError(drying.place("weighings"),
                    "has " + std::to_string(weighings.size()) + " of the 3 weighings needed",
                    "weigh the piece at least three times while it cures, or give " +
                        drying.quoted("water_lost_in_the_end") + " and " +
                        drying.quoted("time_to_63_percent"));
  return weighings;
}

DryingLaw read_law(const Fields& drying) {
  const DryingLaw law{drying.share("water_lost_in_the_end", Share(), whole, "85 %"),
                      in_days(drying.duration("time_to_63_percent", "12 days"))};
  if (!(law.time_constant_days > 0))
    throw UserError(drying.place("time_to_63_percent"), "is zero",
                    "give the days after which 63 % of the water that leaves is gone");
  return law;
}

}  // namespace

std::optional<Drying> read_drying(const Fields& formula) {
  const auto fields = formula.optional_object("drying");
  if (!fields) return std::nullopt;
  if (formula.has("water_lost_in_cure"))
    throw UserError(fields->place(), "stands beside \"water_lost_in_cure\"",
                    "keep one of the two: both give what is lost in the cure");
  if (!formula.has("cure"))
    throw UserError(formula.place("cure"), "is missing",
                    "give how long the soap cures, such as \"35 days\": \"drying\" needs it");
  if (fields->has("weighings") &&
      (fields->has("water_lost_in_the_end") || fields->has("time_to_63_percent")))
    throw UserError(fields->place(), "gives the drying twice",
                    "give either \"weighings\", or " + fields->quoted("water_lost_in_the_end") +
                        " with " + fields->quoted("time_to_63_percent"));
  const Drying drying =
      fields->has("weighings") ? Drying(read_weighings(*fields)) : Drying(read_law(*fields));
  fields->refuse_unknown();
  return drying;
}

}  // namespace brimwright::chemistry
