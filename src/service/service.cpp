#include "service/service.h"

#include "chemistry/fats.h"
#include "geometry/mesh_file.h"
#include "moulds/mould_file.h"
#include "planning/plan.h"
#include "reports/catalogue_report.h"
#include "reports/gauge_report.h"
#include "reports/plan_report.h"
#include "service/lye_gate.h"
#include "service/run_file.h"
#include "units/fields.h"
#include "units/reading.h"
#include "units/user_error.h"

#include <algorithm>
#include <exception>
#include <filesystem>

namespace brimwright::service {
namespace {

constexpr auto command_line = "command line";

bool is_mould_file(const std::string& path) {
  return std::filesystem::path(path).extension() == ".json";
}

moulds::Mould mould_file(const GaugeRequest& request, const moulds::Library& library) {
  for (const auto& [option, value] :
       {std::pair{"--unit", request.unit}, {"--up", request.up}, {"--role", request.role}})
    if (value)
      throw UserError({command_line, option,
                       "goes with a mesh, and " + request.file + " is a mould file",
                       "leave it out; the mould file says it under \"mesh\""});
  return moulds::read_mould(request.file, library);
}

/// The roles of a mesh this version measures. A body taken for a cavity would give its silicone's
/// volume, a plausible wrong number, so the role must be said.
void require_cavity_role(const GaugeRequest& request) {
  const std::string remedy =
      "say --role cavity if the mesh is the hollow itself or the finished piece";
  if (!request.role)
    throw UserError({command_line, "--role", "is not given for " + request.file, remedy});
  if (*request.role == "body" || *request.role == "skin")
    throw UserError({command_line, "--role", "a mould's " + *request.role + " is not measured yet",
                     "give the cavity itself as a closed mesh, with --role cavity"});
  if (*request.role != "cavity")
    throw UserError({command_line, "--role", "\"" + *request.role + "\" is no role", remedy});
}

moulds::Mould mesh(const GaugeRequest& request) {
  geometry::MeshReading reading;
  if (request.unit) reading.unit = geometry::length_unit(*request.unit, {command_line, "--unit"});
  if (request.up) reading.up = geometry::axis(*request.up, {command_line, "--up"});
  require_cavity_role(request);
  return moulds::mould_of_mesh(request.file, reading);
}

std::string gauged(const GaugeRequest& request, Form form, const moulds::Library& library) {
  const auto mould = is_mould_file(request.file) ? mould_file(request, library) : mesh(request);
  std::vector<Length> depths;
  for (const auto& text : request.depths) {
    const Place where{command_line, "--depth"};
    depths.push_back(read_length(text, where));
    if (depths.back() > mould.curve.height())
      throw UserError(where, "\"" + text + "\" is deeper than the cavity",
                      "it is " + reports::depth_text(mould.curve.height()) + " deep");
  }
  return form == Form::json ? reports::gauge_json(mould, depths)
                            : reports::gauge_text(mould, depths);
}

std::int64_t pieces_from(const std::string& typed) {
  const Place where{command_line, "--sell"};
  const double number = read_number(typed, where);
  if (number < 1 || number > 1e6 ||
      number != static_cast<double>(static_cast<std::int64_t>(number)))
    throw UserError(where, "\"" + typed + "\" is no number of pieces",
                    "give a whole number, 1 or more");
  return static_cast<std::int64_t>(number);
}

std::string planned(const PlanRequest& request, Form form, const moulds::Library& library) {
  std::optional<std::int64_t> sell;
  if (request.sell) sell = pieces_from(*request.sell);
  const planning::Run run = read_run(request.file, library, sell);
  const planning::Plan plan = planning::plan(run);
  pass_lye_gate(run.pour.formula, plan.pour.batter.weighing);
  if (plan.pipe) pass_lye_gate(run.pipe->formula, plan.pipe->batter.weighing);
  return form == Form::json ? reports::plan_json(run, plan) : reports::plan_text(run, plan);
}

std::vector<std::string> shipped_mould_files(const moulds::Library& library) {
  std::vector<std::string> files;
  std::error_code none;
  for (const auto& entry : std::filesystem::directory_iterator(library.shipped + "/moulds", none))
    if (entry.path().extension() == ".json") files.push_back(entry.path().string());
  std::sort(files.begin(), files.end());
  return files;
}

reports::Catalogue catalogue(const ListRequest& request, const moulds::Library& library) {
  reports::Catalogue shown;
  const std::string what = request.what.value_or("");
  if (what.empty() || what == "moulds")
    for (const auto& file : shipped_mould_files(library)) {
      const std::string id = std::filesystem::path(file).stem().string();
      if (!request.name || *request.name == id)
        shown.moulds.push_back({"moulds/" + id + ".json", moulds::read_mould(file, library)});
    }
  if (what.empty() || what == "fats")
    for (const auto& fat : chemistry::shipped_fats())
      if (!request.name || *request.name == fat.id) shown.fats.push_back(fat);
  return shown;
}

std::vector<std::string> names_of(const std::string& what, const moulds::Library& library) {
  if (what == "fats") return chemistry::fat_ids();
  std::vector<std::string> names;
  for (const auto& file : shipped_mould_files(library))
    names.push_back(std::filesystem::path(file).stem().string());
  return names;
}

std::string listed(const ListRequest& request, Form form, const moulds::Library& library) {
  const Place where{command_line, "list"};
  if (request.what && *request.what != "moulds" && *request.what != "fats")
    throw UserError(where, "\"" + *request.what + "\" is no list", "list moulds, or list fats");
  const auto shown = catalogue(request, library);
  if (request.name && shown.moulds.empty() && shown.fats.empty()) {
    const auto near = nearest_name(*request.name, names_of(*request.what, library));
    throw UserError(
        where, "\"" + *request.name + "\" is not among the " + *request.what,
        near ? "did you mean \"" + *near + "\"?" : "list " + *request.what + " shows all of them");
  }
  return form == Form::json ? reports::catalogue_json(shown)
                            : reports::catalogue_text(shown, request.name.has_value());
}

std::string document_for(const Request& request, const moulds::Library& library) {
  if (const auto* gauge = std::get_if<GaugeRequest>(&request.what))
    return gauged(*gauge, request.form, library);
  if (const auto* plan = std::get_if<PlanRequest>(&request.what))
    return planned(*plan, request.form, library);
  return listed(std::get<ListRequest>(request.what), request.form, library);
}

}  // namespace

Reply answer(const Request& request, const moulds::Library& library) {
  try {
    return {0, document_for(request, library), ""};
  } catch (const UserError& error) {
    return {1, "", error.what()};
  } catch (const std::exception& error) {
    return {2, "", std::string("a fault of brimwright itself, please report it: ") + error.what()};
  }
}

}  // namespace brimwright::service
