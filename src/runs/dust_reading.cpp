#include "runs/dust_reading.h"

#include "chemistry/alkali_names.h"
#include "planning/usual_bench.h"

namespace brimwright::runs {
namespace {

using namespace planning;

DustByArea dust_by_area(const Fields& fields) {
  const DustByArea dust{fields.positive_area_density("on_covered_surface"),
                        fields.share("coverage", 1 * percent, whole, "60 %"),
                        fields.share("share_that_sticks", 1 * percent, whole, "50 %")};
  usual_bench().ask(fields, "on_covered_surface", "dust on a surface", dust.on_covered_surface);
  return dust;
}

Mass dust_by_mass(const Fields& fields) {
  const Mass dust = fields.positive_mass("per_piece", "0.1 g");
  usual_bench().ask(fields, "per_piece", "dust on a piece", dust);
  return dust;
}

}  // namespace

Dusting read_dusting(const Fields& fields) {
  chemistry::refuse_alkali(fields.name("name"), fields.place("name"));
  Dusting dusting{.name = fields.name("name"), .per_piece = Mass{}};
  const bool by_area = fields.has("on_covered_surface");
  if (by_area == fields.has("per_piece"))
    throw UserError(fields.place(), by_area ? "gives its amount twice" : "gives no amount",
                    "give \"per_piece\", or " + fields.quoted("on_covered_surface") + " with " +
                        fields.quoted("coverage") + " and " + fields.quoted("share_that_sticks"));
  if (by_area)
    dusting.per_piece = dust_by_area(fields);
  else
    dusting.per_piece = dust_by_mass(fields);
  dusting.label = chemistry::read_label_data(fields);
  fields.refuse_unknown();
  return dusting;
}

}  // namespace brimwright::runs
