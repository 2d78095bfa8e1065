#pragma once

#include "records/lot_use.h"
#include "records/lots.h"
#include "records/records.h"
#include "service/material_names.h"
#include "service/requests.h"
#include "service/stock_place.h"

#include <cstdint>
#include <string>
#include <vector>

namespace brimwright::service {

/// A lot as it is told of: bought or made.
struct ToldLot {
  records::Lot lot;
  struct Source {
    records::Lot lot;
    trade::Amount amount;
  };
  std::vector<Source> sources = {};  // of one she made
};

/// Reads the lot that `request` tells of. Within the act that adds it. UserError for what cannot
/// be; a Question that asks "confirmed" for what is far from usual or there already.
ToldLot read_lot(const StockRequest& request, const StockPlace& place, const MaterialNames& names,
                 const records::Records& records, const UserTerms& terms);

/// "CO-117=1.2 kg": so much of the lot of that code. Where lots of several materials have it, one
/// is named before: "olive:12=1.2 kg".
struct ToldAmount {
  std::vector<records::StandingLot> lots;  // all of that code and material
  trade::Amount amount;
};
ToldAmount read_amount_of_lot(const std::string& typed, const MaterialNames& names,
                              const records::Records& records, const Place& where);

/// The day of an act: as typed, or today. UserError for one that is to come.
std::string day_of_act(const StockRequest& request, const UserTerms& terms);

/// UserError for what is to be kept and cannot be printed on one line, or is longer than `most`
/// characters.
void refuse_unprintable(const std::string& text, const Place& where, std::size_t most = 60);

/// Asks for "seen" where `now` is not what was in sight; `there` tells it in words.
void check_seen(const StockRequest& request, std::int64_t now, const std::string& there);

/// What all lots and packs so far are paid in; without a code where nothing has a price.
Currency currency_of(const StockPlace& place, const records::Records& records);

/// Asks what to make of `value`, until she says that it is meant.
void ask(const StockRequest& request, const Place& where, const std::string& value,
         const std::string& problem, const std::string& remedy);

}  // namespace brimwright::service
