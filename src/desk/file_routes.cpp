#include "desk/answers.h"
#include "desk/desk.h"
#include "desk/desk_parts.h"

#include <nlohmann/json.hpp>

namespace brimwright::desk {

using Json = nlohmann::ordered_json;

DeskAnswer Desk::rename(const DeskRequest& request, Budget) const {
  const Fields fields = fields_of(request);
  const std::string name = fields.text("file"), to = fields.text("to");
  fields.refuse_unknown();
  const auto [renamed_in, is_cut] = workspace_.rename(name, to);
  bench_.rename(name, to);
  return {json_answer({{"file", to}, {"renamed_in", renamed_in}, {"cut", is_cut}})};
}

DeskAnswer Desk::copy(const DeskRequest& request, Budget) const {
  const Fields fields = fields_of(request);
  const std::string name = fields.text("file"), to = fields.text("to");
  fields.refuse_unknown();
  const auto made = workspace_.copy(name, to);
  return {json_answer({{"file", to}, {"version", made.version}, {"text", made.text}})};
}

DeskAnswer Desk::remove(const DeskRequest& request, Budget) const {
  const Fields fields = fields_of(request);
  const std::string name = fields.text("file");
  const bool even_so = fields.has("even_so") && fields.truth("even_so");
  fields.refuse_unknown();
  try {
    return {json_answer({{"removed", workspace_.remove(name, even_so)}})};
  } catch (const StillNamed& error) {
    Json json = Json::parse(complaint(error).body);
    json["used_by"] = error.by();
    return {json_answer(json, 409)};
  }
}

DeskAnswer Desk::restore(const DeskRequest& request, Budget) const {
  const Fields fields = fields_of(request);
  const std::string removed = fields.text("removed");
  fields.refuse_unknown();
  return {json_answer({{"file", workspace_.restore(removed)}})};
}

DeskAnswer Desk::removed(const DeskRequest&, Budget) const {
  return {json_answer({{"removed", workspace_.removed()}})};
}

DeskAnswer Desk::forget(const DeskRequest& request, Budget) const {
  const Fields fields = fields_of(request);
  const std::string removed = fields.text("removed");
  fields.refuse_unknown();
  workspace_.forget(removed);
  return {json_answer({{"removed", workspace_.removed()}})};
}

}  // namespace brimwright::desk
