#include "service/explaining.h"

#include "planning/workings.h"
#include "reports/workings_report.h"
#include "units/fields.h"
#include "units/user_error.h"

#include <vector>

namespace brimwright::service {
namespace {

std::vector<Working> named(const std::vector<Working>& all, const std::string& name) {
  std::vector<Working> found;
  for (const Working& one : all)
    if (name.empty() || one.of == name || one.of.starts_with(name + ".")) found.push_back(one);
  return found;
}

[[noreturn]] void refuse_unknown(const std::vector<Working>& all, const std::string& name,
                                 const Place& where) {
  std::vector<std::string> names;
  for (const Working& one : all) names.push_back(one.of);
  const auto nearest = nearest_name(name, names);
  throw UserError(where, "\"" + name + "\" is not a figure of this plan",
                  nearest
                      ? "did you mean \"" + *nearest + "\"? Without a name the figures are listed"
                      : "without a name the figures are listed");
}

}  // namespace

std::string explained(const PlanRequest& request, const Request& whole, const planning::Run& run,
                      const planning::Plan& plan) {
  const std::vector<Working> all = planning::workings_of(run, plan);
  const std::vector<Working> asked = named(all, *request.explain);
  if (asked.empty()) refuse_unknown(all, *request.explain, whole.terms.place("explain"));
  if (whole.form == Form::json) return reports::workings_json(run.name, asked);
  return request.explain->empty() ? reports::workings_list(asked) : reports::workings_text(asked);
}

}  // namespace brimwright::service
