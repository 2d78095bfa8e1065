#include "service/stocking.h"

#include "records/act.h"
#include "records/half_made.h"
#include "records/lots.h"
#include "records/records.h"
#include "reports/stock_report.h"
#include "schemas/tidying.h"
#include "service/lot_reading.h"
#include "service/material_names.h"
#include "service/piece_acts.h"
#include "service/recorded_stock.h"
#include "service/rehearsal.h"
#include "service/stock_place.h"
#include "trade/amount_text.h"
#include "units/written_number.h"

#include <algorithm>
#include <optional>
#include <set>

namespace brimwright::service {
namespace {

using records::Lot;
using records::Records;
using records::StandingLot;
using reports::Stock;

bool acts(const StockRequest& request) {
  return request.bought || request.made || request.take_have || !request.counted.empty() ||
         !request.sold.empty() || !request.given.empty() || !request.spoilt.empty() ||
         !request.counted_pieces.empty();
}

/// What tells more of an act, without one.
void refuse_alone(const StockRequest& request, const UserTerms& terms) {
  const auto refuse = [&](bool is_said, const char* member, const char* with) {
    if (is_said)
      throw UserError(terms.place(member), "does nothing alone",
                      "give it together with " + terms.say({with}));
  };
  const bool has_lot = request.bought || request.made;
  refuse(request.pack && !has_lot, "pack", "bought");
  refuse(request.packs && !has_lot, "packs", "bought");
  refuse(request.price && !has_lot, "price", "bought");
  refuse(request.seller && !has_lot, "seller", "bought");
  refuse(request.lot && !has_lot, "lot", "bought");
  refuse(request.best_before && !has_lot, "best-before", "bought");
  refuse(!request.of.empty() && !request.made, "of", "made");
  refuse(request.on && !acts(request), "on", "bought");
  refuse(request.why && !acts(request), "why", "counted");
  if (request.why) refuse_unprintable(*request.why, terms.place("why"), 200);
  const bool goes_to_somebody = !request.sold.empty() || !request.given.empty();
  refuse(request.order && !goes_to_somebody, "order", "sold");
  refuse(request.whom && !goes_to_somebody, "for", "sold");
  if (request.bought && request.made)
    throw UserError(terms.place("made"), "is another lot than the one that was bought",
                    "record one after the other");
  if (request.made && (request.price || request.seller))
    throw UserError(
        terms.place(request.price ? "price" : "seller"), "is of what is bought, and this is made",
        "it costs what it is made of: name that with " + terms.say({"of", "LOT=AMOUNT"}));
}

/// What an act touched: of that alone the answer tells.
struct Done {
  std::vector<std::string> sentences;
  std::set<std::string> materials, batches;
};

std::string name_of(const Lot& lot) {
  return lot.make.empty() ? shown_material(lot.material) : lot.make;
}

/// "3.2 kg are left".
std::string left_words(std::int64_t left, bool is_pieces) {
  const std::int64_t there = std::max<std::int64_t>(left, 0);
  return trade::stock_size(is_pieces ? trade::Amount::pieces(there)
                                     : trade::Amount::micrograms(there)) +
         " are left";
}

class Acting {
 public:
  Acting(const StockRequest& request, const StockPlace& place, const moulds::Library& library,
         Records& records, const UserTerms& terms)
      : request_(request),
        place_(place),
        library_(library),
        records_(records),
        terms_(terms),
        names_(place, library) {}

  Done done() {
    if (request_.bought || request_.made) add();
    for (const std::string& typed : request_.counted) count(typed);
    if (request_.take_have) take_have();
    auto pieces = change_pieces(request_, records_, library_, terms_);
    for (std::string& sentence : pieces.sentences) done_.sentences.push_back(std::move(sentence));
    done_.batches.insert(pieces.batches.begin(), pieces.batches.end());
    return std::move(done_);
  }

 private:
  void add() {
    const ToldLot told = read_lot(request_, place_, names_, records_, terms_);
    records::add_lot(records_, told.lot);
    for (const auto& [lot, amount] : told.sources) {
      records::use_for_lot(records_, lot, amount, told.lot);
      done_.materials.insert(lot.material);
    }
    std::string sentence = (told.lot.origin == Lot::Origin::made ? "Made: " : "Bought: ") +
                           reports::packs_words(told.lot) + " of " + name_of(told.lot) + ", lot " +
                           told.lot.code;
    if (!request_.lot) sentence += " (a code of your own: write it on the pack)";
    sentence += ", on " + told.lot.bought_on;
    if (told.lot.paid)
      sentence += ", " + amount_text(*told.lot.paid) + " " + told.lot.paid->currency.code +
                  (told.lot.packs == 1 ? "" : " in all");
    else if (told.lot.origin == Lot::Origin::bought)
      sentence += ", without a price";
    if (told.lot.origin == Lot::Origin::made && told.sources.empty())
      sentence += ", of lots that are unknown";
    say(sentence + ".", told.lot.material);
  }

  void count(const std::string& typed) {
    const auto [lots, amount] =
        read_amount_of_lot(typed, names_, records_, terms_.place("counted"));
    std::int64_t left = 0;
    for (const StandingLot& one : lots) left += one.left;
    check_seen(request_, left,
               "of lot " + lots.front().lot.code + " of " + name_of(lots.front().lot) + " " +
                   left_words(left, amount.is_pieces()));
    records::count_lots(records_, lots, amount, day_of_act(request_, terms_),
                        request_.why.value_or(""));
    say("Counted: " + trade::pack_size(amount) + " of " + name_of(lots.front().lot) + ", lot " +
            lots.front().lot.code + ".",
        lots.front().lot.material);
  }

  void take_have() {
    const std::string day = day_of_act(request_, terms_);
    for (const std::string& listed : have_left_out(place_.supplies, names_, records_)) {
      const runs::OnShelf& shelf = place_.supplies.have.at(listed);
      const auto named = names_.named(listed, shelf.where);
      Lot lot{.id = schemas::new_id(),
              .code = records::own_code(records_),
              .material = named.material,
              .make = named.make,
              .origin = Lot::Origin::before_records,
              .bought_on = day,
              .best_before = {},
              .pack = trade::pack_size(shelf.amount),
              .holds = shelf.amount,
              .paid = {}};
      records::add_lot(records_, lot);
      say("Taken over: " + lot.pack + " of " + name_of(lot) + ", lot " + lot.code +
              " (a code of your own: write it on the pack).",
          lot.material);
    }
    if (done_.sentences.empty())
      done_.sentences.emplace_back("There is nothing under \"have\" to take over any more.");
  }

  void say(const std::string& sentence, const std::string& material) {
    done_.sentences.push_back(sentence);
    done_.materials.insert(material);
  }

  const StockRequest& request_;
  const StockPlace& place_;
  const moulds::Library& library_;
  Records& records_;
  const UserTerms& terms_;
  MaterialNames names_;
  Done done_;
};

std::optional<Done> act_on(Records& records, const StockRequest& request, const StockPlace& place,
                           const moulds::Library& library, const UserTerms& terms) {
  if (!acts(request)) return std::nullopt;
  records::Act act(records, request.act.empty() ? schemas::new_id() : request.act, request.now,
                   "stock", "{}");
  if (act.was_done_before()) return std::nullopt;
  Done done = Acting(request, place, library, records, terms).done();
  act.done();
  return done;
}

void add_lots(Stock& stock, const std::vector<StandingLot>& lots) {
  for (const StandingLot& one : lots) {
    if (one.left == 0) continue;
    if (stock.materials.empty() || stock.materials.back().material != one.lot.material)
      stock.materials.push_back(
          {.material = one.lot.material, .shown = shown_material(one.lot.material)});
    stock.materials.back().lots.push_back(one);
  }
}

void note_past(Stock& stock) {
  for (const auto& material : stock.materials)
    for (const StandingLot& one : material.lots)
      if (one.left > 0 && one.lot.is_past(stock.day))
        stock.notes.push_back(
            {Severity::caution, "Lot " + one.lot.code + " of " + name_of(one.lot) +
                                    " is past its best-before day, " + *one.lot.best_before +
                                    ": no batch takes it unless you choose it."});
}

/// What may be typed of materials.
reports::Stock::Names names_of(const StockPlace& place, const std::optional<Records>& records,
                               const moulds::Library& library) {
  reports::Stock::Names names{
      .materials = MaterialNames(place, library).offered(),
      .made_ahead = {place.supplies.made_ahead.begin(), place.supplies.made_ahead.end()}};
  std::set<std::string> sellers;
  for (const auto& seller : place.supplies.sellers) sellers.insert(seller.name);
  if (records) {
    names.currency = currency_of(place, *records).code;
    for (const StandingLot& one : records::standing_lots(*records))
      if (!one.lot.seller.empty()) sellers.insert(one.lot.seller);
  } else {
    names.currency = place.supplies.currency.code;
  }
  names.sellers = {sellers.begin(), sellers.end()};
  return names;
}

void tell_of(Stock& stock, const Records& records, const std::optional<Done>& done) {
  stock.has_records = true;
  if (!done) {
    add_lots(stock, records::standing_lots(records));
    stock.pieces = pieces_in(records, stock.day);
    return;
  }
  stock.done = done->sentences;
  for (const std::string& material : done->materials)
    add_lots(stock, records::lots_of(records, {material}));
  if (done->batches.empty()) return;
  for (auto& one : pieces_in(records, stock.day))
    if (done->batches.contains(one.batch.code)) stock.pieces.push_back(std::move(one));
}

}  // namespace

Reply stocked(const StockRequest& request, const Request& asked, const moulds::Library& library,
              const Caller&) {
  refuse_alone(request, asked.terms);
  const StockPlace place = stock_place(request.file, library);
  Stock stock{.folder = place.folder, .day = request.today};
  auto records = Records::in(place.folder);
  if (!records && acts(request)) {
    rehearse(place.folder,
             [&](Records& none) { act_on(none, request, place, library, asked.terms); });
    records = Records::kept_in(place.folder);
  }
  if (records) {
    const auto done = act_on(*records, request, place, library, asked.terms);
    tell_of(stock, *records, done);
    note_past(stock);
    if (!place.supplies.have.empty()) {
      const MaterialNames names(place, library);
      stock.not_counted = have_left_out(place.supplies, names, *records);
      if (auto note = note_on_have(stock.not_counted, asked.terms))
        stock.notes.push_back(std::move(*note));
    }
  } else {
    for (const auto& [listed, shelf] : place.supplies.have)
      if (shelf.amount.whole() > 0) stock.not_counted.push_back(listed);
  }
  if (request.with_names) stock.names = names_of(place, records, library);
  for (const std::string& name : records::look_alikes(place.folder)) {
    if (records::is_half_made(name)) continue;
    stock.notes.push_back(
        {Severity::caution, brimwright::quoted(name) +
                                " looks like a copy of the records that another program made: "
                                "nothing in it is counted."});
  }
  return {.document =
              asked.form == Form::json ? reports::stock_json(stock) : reports::stock_text(stock)};
}

}  // namespace brimwright::service
