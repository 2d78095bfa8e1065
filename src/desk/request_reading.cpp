#include "desk/request_reading.h"

#include "units/printing.h"
#include "units/user_error.h"

#include <utility>

namespace brimwright::desk {
namespace {

std::string word(const Fields& fields, const char* key) {
  return fields.is_text(key) ? fields.text(key) : exact(fields.number(key));
}

std::optional<std::string> optional_word(const Fields& fields, const char* key) {
  if (!fields.has(key) || fields.is_null(key)) return std::nullopt;
  return word(fields, key);
}

/// "explain": a figure's name, or true for all of them.
std::optional<std::string> figures_asked(const Fields& fields) {
  if (!fields.has("explain") || fields.is_null("explain")) return std::nullopt;
  if (fields.is_text("explain")) return fields.text("explain");
  return fields.truth("explain") ? std::optional(std::string()) : std::nullopt;
}

std::optional<std::string> optional_document(const Fields& fields, const char* key) {
  if (!fields.has(key) || fields.is_null(key)) return std::nullopt;
  return fields.object(key).json();
}

/// A run or an order that is to be read in place of what is in its file.
std::optional<std::string> sent_text(const Fields& fields) {
  const auto run = optional_document(fields, "run"), order = optional_document(fields, "order");
  if (run && order)
    throw UserError(fields.place("order"), "stands beside a run", "give one of the two");
  return run ? run : order;
}

bool flag(const Fields& fields, const char* key) { return fields.has(key) && fields.truth(key); }

}  // namespace

service::PlanRequest plan_request(const Fields& fields, const PathFor& path_for) {
  service::PlanRequest request;
  request.text = sent_text(fields);
  request.sell = optional_word(fields, "sell");
  request.cut_open = flag(fields, "cut-open");
  request.weighed = fields.texts("weighed");
  request.added = fields.texts("added");
  request.purity = fields.texts("purity");
  request.batch = optional_word(fields, "batch");
  request.explain = figures_asked(fields);
  request.file = path_for(fields.text("file"), request.text.has_value());
  fields.refuse_unknown();
  return request;
}

service::GaugeRequest gauge_request(const Fields& fields, const PathFor& path_for) {
  service::GaugeRequest request;
  request.text = optional_document(fields, "mould");
  request.depths = fields.texts("depth");
  if (fields.has("batches-of")) request.batches_of = path_for(fields.text("batches-of"), true);
  using Word = std::optional<std::string> service::GaugeRequest::*;
  using Asked = service::GaugeRequest;
  for (const auto& [key, member] : {std::pair<const char*, Word>{"unit", &Asked::unit},
                                    {"up", &Asked::up},
                                    {"role", &Asked::role},
                                    {"cavity", &Asked::cavity},
                                    {"fit-volume", &Asked::fit_volume},
                                    {"fit-mass", &Asked::fit_mass},
                                    {"density", &Asked::density},
                                    {"below-brim", &Asked::below_brim},
                                    {"cast-wall", &Asked::cast_wall},
                                    {"cast-base", &Asked::cast_base},
                                    {"cast-density", &Asked::cast_density},
                                    {"tilt", &Asked::tilt},
                                    {"low-side", &Asked::low_side},
                                    {"mark", &Asked::mark},
                                    {"pour", &Asked::pour}})
    request.*member = optional_word(fields, key);
  request.inspect = flag(fields, "inspect");
  request.on_board = flag(fields, "on-board");
  request.fit_depth_only = flag(fields, "fit-depth-only");
  request.cast_hung = flag(fields, "cast-hung");
  request.cut_open = flag(fields, "cut-open");
  request.file = path_for(fields.text("file"), request.text.has_value());
  fields.refuse_unknown();
  return request;
}

service::QuoteRequest quote_request(const Fields& fields, const PathFor& path_for) {
  service::QuoteRequest request;
  request.text = sent_text(fields);
  request.sell = optional_word(fields, "sell");
  request.times = optional_word(fields, "times");
  request.way = fields.optional_text("way");
  request.margin = optional_word(fields, "margin");
  request.markup = optional_word(fields, "markup");
  request.price = optional_word(fields, "price");
  request.file = path_for(fields.text("file"), request.text.has_value());
  fields.refuse_unknown();
  return request;
}

service::BuyRequest buy_request(const Fields& fields, const PathFor& path_for) {
  service::BuyRequest request;
  for (const std::string& file : fields.texts("files"))
    request.files.push_back(path_for(file, false));
  fields.refuse_unknown();
  if (request.files.empty())
    throw UserError(fields.place("files"), "names nothing to buy for", "name a run or an order");
  return request;
}

service::DaysRequest days_request(const Fields& fields, const PathFor& path_for) {
  service::DaysRequest request;
  request.text = sent_text(fields);
  request.due = optional_word(fields, "due");
  request.from = optional_word(fields, "from");
  if (const auto since = fields.optional_object("since")) {
    request.since = since->text("name");
    request.since_text = since->text("text");
    since->refuse_unknown();
  }
  request.files = {path_for(fields.text("file"), request.text.has_value())};
  fields.refuse_unknown();
  return request;
}

service::LearnRequest learn_request(const Fields& fields, const PathFor& path_for) {
  service::LearnRequest request;
  request.file = path_for(fields.text("file"), false);
  request.year = optional_word(fields, "year");
  fields.refuse_unknown();
  return request;
}

service::ListRequest list_request(const Fields& fields) {
  service::ListRequest request;
  request.what = fields.optional_text("what");
  request.name = fields.optional_text("name");
  fields.refuse_unknown();
  return request;
}

}  // namespace brimwright::desk
