#include "desk/answers.h"
#include "desk/desk.h"
#include "desk/desk_parts.h"
#include "desk/record_version.h"
#include "units/present_moment.h"

#include <nlohmann/json.hpp>

#include <cmath>
#include <utility>

namespace brimwright::desk {

using Json = nlohmann::ordered_json;

namespace {

/// The page's own words for what the command line is told by options.
UserTerms stock_terms() {
  UserTerms terms = page_terms();
  terms.say = [say = terms.say](const Answer& answer) {
    if (answer.member == "confirmed") return std::string("that it is so");
    if (answer.member == "take-have") return std::string("that it is to be taken over");
    if (answer.value.empty()) return "\"" + answer.member + "\"";
    return say(answer);
  };
  return terms;
}

std::vector<std::string> texts_at(const Fields& fields, const char* key) {
  return fields.has(key) ? fields.texts(key) : std::vector<std::string>();
}

/// {"g": 3200} or {"pieces": 12}, as stock is told of.
std::int64_t whole_of(const Fields& amount) {
  constexpr double most_grams = 1e9, micrograms = 1e6;
  constexpr std::int64_t most_pieces = 1'000'000'000;
  if (amount.has("pieces")) return amount.whole_number("pieces", -most_pieces, most_pieces);
  const double grams = amount.number("g");
  if (std::abs(grams) > most_grams)
    throw UserError(amount.place("g"), "is more than any lot", "look again");
  return std::llround(grams * micrograms);
}

void read_lot(const Fields& fields, service::StockRequest& request) {
  request.bought = fields.optional_text("bought");
  request.made = fields.optional_text("made");
  request.of = texts_at(fields, "of");
  request.pack = fields.optional_text("pack");
  request.packs = fields.optional_text("packs");
  request.price = fields.optional_text("price");
  request.seller = fields.optional_text("seller");
  request.lot = fields.optional_text("lot");
  request.best_before = fields.optional_text("best-before");
  request.counted = texts_at(fields, "counted");
  request.take_have = fields.has("take-have") && fields.truth("take-have");
}

void read_pieces(const Fields& fields, service::StockRequest& request) {
  request.sold = texts_at(fields, "sold");
  request.given = texts_at(fields, "given");
  request.spoilt = texts_at(fields, "spoilt");
  request.counted_pieces = texts_at(fields, "counted-pieces");
  request.whom = fields.optional_text("for");
}

service::StockRequest stock_in(const std::string& folder) {
  service::StockRequest request{.file = folder};
  request.now = present_moment_with_offset();
  request.today = request.now.substr(0, 10);
  return request;
}

}  // namespace

/// The version is of before what it is the version of.
DeskAnswer Desk::stock(const DeskRequest& request, Budget budget) const {
  const std::string version = record_version(workspace_.folder());
  service::StockRequest asked = stock_in(workspace_.folder());
  asked.with_names = request.query.contains("names");
  const HttpAnswer answer = served({std::move(asked), service::Form::json, stock_terms()}, budget);
  if (answer.status != 200) return {answer};
  return {json_answer({{"version", version}, {"stock", Json::parse(answer.body)}})};
}

DeskAnswer Desk::change_stock(const DeskRequest& request, Budget budget) const {
  const Fields fields = fields_of(request);
  service::StockRequest asked = stock_in(workspace_.folder());
  asked.act = fields.uuid("act");
  read_lot(fields, asked);
  read_pieces(fields, asked);
  if (const auto order = fields.optional_text("order")) asked.order = path_for(*order, false);
  asked.on = fields.optional_text("on");
  asked.why = fields.optional_text("why");
  asked.confirmed = texts_at(fields, "confirmed");
  if (const auto seen = fields.optional_object("seen")) asked.seen = whole_of(*seen);
  fields.refuse_unknown();
  const HttpAnswer answer = served({std::move(asked), service::Form::json, stock_terms()}, budget);
  if (answer.status != 200) return {answer};
  return {json_answer({{"stock", Json::parse(answer.body)}})};
}

DeskAnswer Desk::trail(const DeskRequest& request, Budget budget) const {
  const std::string version = record_version(workspace_.folder());
  const service::TrailRequest asked_of{.file = workspace_.folder(),
                                       .what = asked(request, "of"),
                                       .no_file = true,
                                       .today = present_moment().substr(0, 10)};
  const HttpAnswer answer = served({asked_of, service::Form::json, stock_terms()}, budget);
  if (answer.status != 200) return {answer};
  return {json_answer({{"version", version}, {"trail", Json::parse(answer.body)}})};
}

}  // namespace brimwright::desk
