#include "service/piece_acts.h"

#include "records/batches.h"
#include "records/notes.h"
#include "records/pieces.h"
#include "records/poured_from.h"
#include "reports/plan_words.h"
#include "service/lot_reading.h"
#include "service/ordered.h"
#include "units/fields.h"
#include "units/nearest_name.h"
#include "units/reading.h"
#include "units/wording.h"
#include "units/written_number.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <filesystem>
#include <optional>

namespace brimwright::service {
namespace {

using records::Batch;
using records::PieceChange;
using records::Records;
using What = PieceChange::What;

struct Told {
  Batch batch;
  std::int64_t pieces = 0;
};

Batch batch_told(const std::string& code, const Records& records, const Place& where) {
  if (const auto batch = records::batch_called(records, code)) {
    std::string lines;
    for (const auto& line : records::poured_of(records, batch->id))
      if (const auto its = records::batch_of_id(records, line.batch))
        lines += (lines.empty() ? "" : ", ") + its->code;
    if (lines.empty()) return *batch;
    throw UserError(where, brimwright::quoted(code) + " is a base, and has no pieces of its own",
                    "name the batch that was poured from it: " + lines);
  }
  std::vector<std::string> codes;
  for (const Batch& one : records::batches(records)) codes.push_back(one.code);
  const auto near = nearest_name(code, codes);
  throw UserError(where, brimwright::quoted(code) + " is no batch in the records",
                  near ? "did you mean " + brimwright::quoted(*near) + "?"
                       : "name one by its code, as its sheet has it");
}

/// "2026-12-01A=12".
Told read_told(const std::string& typed, std::int64_t least, const Records& records,
               const Place& where) {
  const auto equals = typed.rfind('=');
  if (equals == std::string::npos || equals == 0 || equals + 1 == typed.size())
    throw UserError(where, brimwright::quoted(typed) + " names no batch and number of pieces",
                    "write both, such as \"2026-12-01A=12\"");
  const double count = read_number(typed.substr(equals + 1), where);
  if (count != std::floor(count) || count < static_cast<double>(least) || count > 1e6)
    throw UserError(where, brimwright::quoted(typed) + " is not a number of pieces",
                    "write a whole number behind the batch, " + std::to_string(least) + " or more");
  return {batch_told(std::string(without_blanks(typed.substr(0, equals))), records, where),
          static_cast<std::int64_t>(count)};
}

/// For whom pieces are sold or given.
struct ForWhom {
  std::string id, name;
};

ForWhom for_whom(const StockRequest& request, const moulds::Library& library,
                 const UserTerms& terms) {
  if (request.order && request.whom)
    throw UserError(terms.place("for"), "is named beside an order, which says for whom it is",
                    "leave one of the two out");
  if (request.whom) {
    refuse_unprintable(*request.whom, terms.place("for"));
    return {"", std::string(without_blanks(*request.whom))};
  }
  if (!request.order) return {};
  const auto order = order_in(*request.order, std::nullopt, library);
  if (!order)
    throw UserError({*request.order, ""}, "is no order",
                    "name an order's file, or say for whom with " + terms.say({"for", "NAME"}));
  const std::string file = std::filesystem::path(*request.order).filename().string();
  return {order->id.empty() ? "file:" + file : order->id,
          order->whom_for.empty() ? file : order->whom_for};
}

/// How long the formulas cure that a batch was made of, as they were frozen; nothing where none
/// says.
std::optional<std::chrono::minutes> cure_of(const Records& records, const Batch& batch) {
  std::optional<std::chrono::minutes> longest;
  for (const auto& source : records::sources_of(records, batch)) {
    if (!source.text || !source.path.ends_with(".json")) continue;
    try {
      const Fields document = Fields::parse(*source.text, source.path);
      const bool is_formula =
          document.is_text("schema") && document.text("schema").starts_with("brimwright.formula/");
      if (!is_formula || !document.is_text("cure")) continue;
      const auto cure = document.duration("cure", "28 days");
      longest = std::max(longest.value_or(cure), cure);
    } catch (const UserError&) {
      continue;  // it was read when it was planned
    }
  }
  return longest;
}

std::string days_later(const std::string& day, std::chrono::minutes time) {
  const std::chrono::sys_days from = read_date(day, {});
  const auto until = from + std::chrono::ceil<std::chrono::days>(time);
  return reports::iso_date(std::chrono::year_month_day(until));
}

class Changing {
 public:
  Changing(const StockRequest& request, Records& records, const UserTerms& terms)
      : request_(request), records_(records), terms_(terms), day_(day_of_act(request, terms)) {}

  void change(const std::vector<std::string>& all, What what, const char* member,
              const ForWhom& whom) {
    const Place where = terms_.place(member);
    for (const std::string& typed : all) {
      const Told told = read_told(typed, what == What::counted ? 0 : 1, records_, where);
      const auto notes = records::notes_of(records_, told.batch);
      const auto count = records::pieces_of(records_, told.batch, notes);
      if (!count.is_known)
        throw UserError(where, "nobody noted how many pieces of " + told.batch.code + " were made",
                        "note pieces.made of that batch first");
      check_seen(request_, count.there(),
                 "of " + told.batch.code + " " + counted(count.there(), "piece") + " are there");
      if (what == What::counted) {
        put(told, what, told.pieces - count.there(), {});
        say(told, "counted: " + std::to_string(told.pieces) + " there");
        continue;
      }
      if (told.pieces > count.there())
        throw UserError(where,
                        "of " + told.batch.code + " " + std::to_string(count.there()) +
                            " are there, and " + std::to_string(told.pieces) + " are to go",
                        "look at the number, or count them first");
      if (what != What::spoilt) look_at_test(told, what, notes, where, typed);
      put(told, what, -told.pieces, what == What::spoilt ? ForWhom{} : whom);
      say(told,
          name_of(what) + (whom.name.empty() || what == What::spoilt ? "" : " for " + whom.name));
    }
  }
  PiecesDone done() { return std::move(done_); }

 private:
  /// Nothing is sold that was not tested and passed; what is given away so is asked about, and so
  /// is what still cures.
  void look_at_test(const Told& told, What what, const records::Notes& notes, const Place& where,
                    const std::string& typed) const {
    const auto for_sale = records::for_sale(notes, day_);
    if (for_sale.is) return look_at_cure(told, where, typed);
    const std::string problem = told.batch.code + " is not for sale: " + for_sale.why_not;
    if (what == What::given)
      return ask(request_, where, typed, problem, "give away what is safe alone");
    throw UserError(where, problem, "note its test and the day it is ready first");
  }

  void look_at_cure(const Told& told, const Place& where, const std::string& typed) const {
    const auto until = Cures(records_).until(told.batch);
    if (until && *until > day_)
      ask(request_, where, typed,
          told.batch.code + " cures until " + *until + " by the formulas it was made by",
          "keep it until then, or correct the day on which it is ready");
  }

  void put(const Told& told, What what, std::int64_t pieces, const ForWhom& whom) {
    records::change_pieces(records_, {.batch = told.batch.id,
                                      .what = what,
                                      .pieces = pieces,
                                      .day = day_,
                                      .of_order = whom.id,
                                      .of_order_name = whom.name,
                                      .why = request_.why.value_or("")});
  }

  void say(const Told& told, const std::string& what) {
    done_.sentences.push_back(counted(told.pieces, "piece") + " of " + told.batch.code + " (" +
                              told.batch.run_name + ") " + what + ".");
    done_.batches.push_back(told.batch.code);
  }

  const StockRequest& request_;
  Records& records_;
  const UserTerms& terms_;
  std::string day_;
  PiecesDone done_;
};

}  // namespace

std::optional<std::string> Cures::until(const Batch& batch) {
  const auto [cure, is_new] = known_.try_emplace(batch.sources);
  if (is_new) cure->second = cure_of(records_, batch);
  return cure->second ? std::optional(days_later(batch.begun_on, *cure->second)) : std::nullopt;
}

PiecesDone change_pieces(const StockRequest& request, Records& records,
                         const moulds::Library& library, const UserTerms& terms) {
  const ForWhom whom = for_whom(request, library, terms);
  Changing changing(request, records, terms);
  changing.change(request.counted_pieces, What::counted, "counted-pieces", {});
  changing.change(request.sold, What::sold, "sold", whom);
  changing.change(request.given, What::given, "given", whom);
  changing.change(request.spoilt, What::spoilt, "spoilt", {});
  return changing.done();
}

std::vector<reports::Stock::Pieces> pieces_in(const Records& records, const std::string& day) {
  const auto notes = records::all_piece_notes(records);
  const auto changed = records::changed_pieces(records);
  Cures cures(records);
  const auto bases = records::all_bases(records);
  static const records::Notes none;
  std::vector<reports::Stock::Pieces> all;
  for (Batch& batch : records::batches(records)) {
    if (bases.contains(batch.id)) continue;
    const auto its = notes.find(batch.id);
    const records::Notes& noted = its == notes.end() ? none : its->second;
    const auto change = changed.find(batch.id);
    reports::Stock::Pieces pieces{
        .batch = {},
        .count = records::with_notes(
            change == changed.end() ? records::PieceCount() : change->second, noted)};
    if (pieces.count.is_known && pieces.count.there() == 0) continue;
    const auto for_sale = records::for_sale(noted, day);
    pieces.is_for_sale = for_sale.is && pieces.count.is_known && pieces.count.there() > 0;
    pieces.why_not = for_sale.why_not;
    if (auto until = cures.until(batch); until && *until > day)
      pieces.cures_until = std::move(until);
    pieces.batch = std::move(batch);
    all.push_back(std::move(pieces));
  }
  return all;
}

}  // namespace brimwright::service
