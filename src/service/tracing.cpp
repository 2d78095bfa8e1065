#include "service/tracing.h"

#include "records/batch_cost.h"
#include "records/batches.h"
#include "records/lot_use.h"
#include "records/lots.h"
#include "records/notes.h"
#include "records/pieces.h"
#include "records/poured_from.h"
#include "records/records.h"
#include "reports/trail_report.h"
#include "service/material_names.h"
#include "service/ordered.h"
#include "service/stock_place.h"
#include "units/nearest_name.h"
#include "units/question.h"
#include "units/written_number.h"

#include <algorithm>
#include <array>
#include <filesystem>
#include <optional>
#include <set>
#include <string_view>
#include <utility>

namespace brimwright::service {
namespace {

namespace fs = std::filesystem;

using records::Batch;
using records::LotChange;
using records::Records;
using records::StandingLot;
using reports::Trail;

class Following {
 public:
  explicit Following(const Records& records) : records_(records) {}

  /// A lot, and what it is in.
  void from_lot(const StandingLot& lot) {
    if (!add_lot(lot)) return;
    for (const LotChange& change : records::changes_of_lot(records_, lot.lot.id)) {
      if (!change.batch.empty()) add_with_lines(change.batch);
      if (!change.made.empty())
        if (const auto made = records::lot_of_id(records_, change.made)) from_lot(*made);
    }
  }

  /// A batch, with the base that it was poured from, and the lots that are in it.
  void from_batch(const std::string& id) {
    add_with_lines(id);
    whole_.insert(id);
    if (const auto poured = records::poured_from(records_, id)) {
      batches_.insert(poured->base);
      add_lots_of(poured->base);
      whole_.insert(poured->base);
    }
    add_lots_of(id);
  }

  void finish(Trail& trail) {
    trail.lots = std::move(lots_);
    for (const std::string& id : batches_)
      if (const auto batch = records::batch_of_id(records_, id))
        trail.batches.push_back(part_of(*batch));
    std::sort(trail.batches.begin(), trail.batches.end(), [](const auto& a, const auto& b) {
      return std::tie(a.batch.begun_on, a.batch.code) < std::tie(b.batch.begun_on, b.batch.code);
    });
  }

  /// Batches that weighed a material of a lot that nobody knows, since that lot was there.
  void add_gaps(Trail& trail, const std::vector<StandingLot>& lots) const {
    std::set<std::string> known;
    for (const StandingLot& one : lots)
      for (const auto& gap : records::unknown_lots(records_, one.lot.material, one.lot.bought_on))
        if (const auto batch = records::batch_of_id(records_, gap.batch);
            batch && known.insert(gap.batch + gap.row).second)
          trail.gaps.push_back({batch->code, batch->run_name, shown_material(one.lot.material)});
  }

 private:
  /// What is in a base is in all that was poured from it.
  void add_with_lines(const std::string& id) {
    batches_.insert(id);
    for (const auto& line : records::poured_of(records_, id)) batches_.insert(line.batch);
  }
  void add_lots_of(const std::string& id) {
    for (const auto& row : records::used_by(records_, id))
      for (const LotChange& take : row.takes)
        if (const auto lot = records::lot_of_id(records_, take.lot)) back_from_lot(*lot);
  }

  bool add_lot(const StandingLot& lot) {
    if (!known_.insert(lot.lot.id).second) return false;
    Trail::LotPart part{.of = lot, .shown = shown_material(lot.lot.material)};
    for (const LotChange& source : records::sources_of_lot(records_, lot.lot.id))
      add_other(part.made_of, source.lot, -source.whole);
    for (LotChange& change : records::changes_of_lot(records_, lot.lot.id)) {
      if (!change.made.empty()) add_other(part.made_into, change.made, -change.whole);
      if (change.what == LotChange::What::counted) part.counts.push_back(std::move(change));
    }
    lots_.push_back(std::move(part));
    return true;
  }

  void add_other(std::vector<Trail::LotPart::Other>& others, const std::string& id,
                 std::int64_t whole) const {
    if (const auto lot = records::lot_of_id(records_, id))
      others.push_back(
          {lot->lot.code, shown_material(lot->lot.material), whole, lot->lot.holds.is_pieces()});
  }

  void back_from_lot(const StandingLot& lot) {
    if (!add_lot(lot)) return;
    for (const LotChange& source : records::sources_of_lot(records_, lot.lot.id))
      if (const auto of = records::lot_of_id(records_, source.lot)) back_from_lot(*of);
  }

  Trail::BatchPart part_of(const Batch& batch) const {
    const auto rows = records::used_by(records_, batch.id);
    Trail::BatchPart part{
        .batch = batch,
        .has_all_rows = whole_.contains(batch.id),
        .cost = records::cost_of(records_, rows),
        .count = records::pieces_of(records_, batch, records::notes_of(records_, batch)),
        .went = records::changes_of_pieces(records_, batch.id)};
    for (const auto& row : rows)
      if (part.has_all_rows || is_asked_about(row)) part.rows.push_back(row_of(row));
    for (const auto& line : records::poured_of(records_, batch.id))
      if (const auto its = records::batch_of_id(records_, line.batch))
        part.lines.push_back(its->code);
    add_base(part);
    return part;
  }

  void add_base(Trail::BatchPart& part) const {
    const auto poured = records::poured_from(records_, part.batch.id);
    const auto base = poured ? records::batch_of_id(records_, poured->base) : std::nullopt;
    if (!base) return;
    part.base = base->code;
    part.of_base = records::part_of_base(records_, *poured);
    if (part.has_all_rows)
      part.cost.add(
          records::cost_of(records_, records::used_by(records_, base->id)).times(part.of_base));
  }

  bool is_asked_about(const records::RowUse& row) const {
    return std::any_of(row.takes.begin(), row.takes.end(),
                       [&](const LotChange& take) { return known_.contains(take.lot); });
  }

  Trail::Row row_of(const records::RowUse& use) const {
    Trail::Row row{.weighed = use.weighed, .unknown = use.unknown()};
    for (const LotChange& take : use.takes)
      if (const auto lot = records::lot_of_id(records_, take.lot))
        row.from.push_back({lot->lot.code, lot->lot.make, -take.whole});
    return row;
  }

  const Records& records_;
  std::set<std::string> known_, batches_, whole_;
  std::vector<Trail::LotPart> lots_;
};

bool follow_lot(Trail& trail, const Records& records) {
  const auto lots = records::lots_called(records, trail.asked);
  if (lots.empty()) return false;
  Following following(records);
  for (const StandingLot& one : lots) following.from_lot(one);
  following.finish(trail);
  following.add_gaps(trail, lots);
  return true;
}

bool follow_batch(Trail& trail, const Records& records) {
  const auto batch = records::batch_called(records, trail.asked);
  if (!batch) return false;
  Following following(records);
  following.from_batch(batch->id);
  following.finish(trail);
  return true;
}

/// An order's file is known by the id in it.
std::string order_id(const std::string& what, const moulds::Library& library) {
  std::error_code none;
  if (!fs::is_regular_file(what, none)) return what;
  const auto order = order_in(what, std::nullopt, library);
  if (!order) throw UserError({what, ""}, "is no order", "name an order, a lot or a batch");
  return order->id.empty() ? "file:" + fs::path(what).filename().string() : order->id;
}

bool follow_order(Trail& trail, const Records& records, const std::string& id) {
  const auto changes = records::changes_of_order(records, id);
  if (changes.empty()) return false;
  Following following(records);
  for (const auto& change : changes) following.from_batch(change.batch);
  following.finish(trail);
  for (auto& part : trail.batches)
    std::erase_if(part.went, [&](const records::PieceChange& went) {
      return went.of_order != id && went.of_order_name != changes.front().of_order_name;
    });
  return true;
}

constexpr std::array<std::string_view, 3> kinds = {"lot", "batch", "order"};

/// Looks for what was asked about as each kind of thing that it may be.
class Finding {
 public:
  Finding(const TrailRequest& request, const Records& records, const moulds::Library& library)
      : request_(request), records_(records), library_(library) {}

  /// "lot A1" is that lot, and "A1" whatever is called so.
  Trail found(const std::string& what) const {
    for (const std::string_view kind : kinds)
      if (what.starts_with(kind) && what.size() > kind.size() && what[kind.size()] == ' ') {
        const std::string rest(without_blanks(std::string_view(what).substr(kind.size())));
        if (auto trail = as(kind, rest)) return std::move(*trail);
        if (kind == "order" && request_.no_file) refuse_unsold();
      }
    return of_any_kind(what);
  }

 private:
  std::optional<Trail> as(std::string_view kind, const std::string& called) const {
    Trail trail{.asked = called, .is = std::string(kind), .day = request_.today};
    const bool is_there = kind == "lot"     ? follow_lot(trail, records_)
                          : kind == "batch" ? follow_batch(trail, records_)
                                            : follow_order(trail, records_, order(called));
    return is_there ? std::optional(std::move(trail)) : std::nullopt;
  }
  std::string order(const std::string& called) const {
    return request_.no_file ? called : order_id(called, library_);
  }

  Trail of_any_kind(const std::string& called) const {
    std::vector<Trail> all;
    for (const std::string_view kind : kinds) {
      // A file that is no order may be called as a lot is.
      if (!all.empty() && kind == "order" && fs::exists(called)) continue;
      if (auto trail = as(kind, called)) all.push_back(std::move(*trail));
    }
    if (all.empty()) refuse(called);
    if (all.size() > 1) ask(all);
    return std::move(all.front());
  }

  [[noreturn]] void ask(const std::vector<Trail>& all) const {
    std::string problem = brimwright::quoted(all.front().asked) + " is ";
    Words remedy = "say which: ";
    std::vector<Choice> choices;
    for (const Trail& one : all) {
      const bool is_first = &one == &all.front();
      const Answer answer{"what", brimwright::quoted(one.is + " " + one.asked)};
      problem += (is_first ? "" : " and ") + with_article(one.is);
      remedy += (is_first ? Words() : Words(" or ")) + answer;
      choices.push_back({.answers = {{"what", one.is + " " + one.asked}}});
    }
    throw Question({.file = records_.path(),
                    .field = "",
                    .asks = "what",
                    .problem = problem,
                    .remedy = remedy,
                    .choices = std::move(choices)});
  }
  static std::string with_article(const std::string& kind) {
    return (kind == "order" ? "an " : "a ") + kind;
  }

  [[noreturn]] void refuse_unsold() const {
    throw UserError({records_.path(), ""}, "has no pieces that were sold to this order",
                    "record them on the shelf when they go");
  }

  [[noreturn]] void refuse(const std::string& called) const {
    std::vector<std::string> known;
    for (const Batch& batch : records::batches(records_)) known.push_back(batch.code);
    for (const StandingLot& one : records::standing_lots(records_)) known.push_back(one.lot.code);
    const auto near = nearest_name(called, known);
    throw UserError({records_.path(), ""},
                    "has no lot, batch or sold order " + brimwright::quoted(called),
                    near ? "did you mean " + brimwright::quoted(*near) + "?"
                         : "name a lot or a batch by its code, or an order that got pieces");
  }

  const TrailRequest& request_;
  const Records& records_;
  const moulds::Library& library_;
};

}  // namespace

Reply traced(const TrailRequest& request, const Request& asked, const moulds::Library& library,
             const Caller&) {
  const StockPlace place = stock_place(request.file, library);
  const auto records = Records::in(place.folder);
  if (!records)
    throw UserError({place.folder, ""}, "has no records, so nothing can be followed",
                    "record lots and batches there first");
  const Trail trail =
      Finding(request, *records, library).found(std::string(without_blanks(request.what)));
  return {.document =
              asked.form == Form::json ? reports::trail_json(trail) : reports::trail_text(trail)};
}

}  // namespace brimwright::service
