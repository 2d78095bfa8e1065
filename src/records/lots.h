#pragma once

#include "trade/amount.h"
#include "trade/fraction.h"
#include "units/money.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::records {

class Records;

/// A delivery of one material, all its packs together: what came, what she made of other lots, or
/// what stood there before anything was recorded. Its code is the supplier's, or hers where he has
/// none; another delivery may have the same.
struct Lot {
  enum class Origin { bought, made, before_records };
  std::string id = {};  // the asker's, never another lot's
  std::string code = {};
  std::string material = {};  // as weighings call it: a fat's id, "NaOH", an additive's name
  std::string make = {};  // of goods that serve as the material: what they are called themselves
  Origin origin = Origin::bought;
  std::string seller = {};
  std::string bought_on = {};  // or made on, or first counted on: an ISO 8601 day, as all here
  std::optional<std::string> best_before = {};
  std::int64_t packs = 1;
  std::string pack = {};                           // as typed
  trade::Amount holds = trade::Amount::pieces(0);  // all packs
  std::optional<Money> paid = {};                  // for all packs; nothing where no price is known

  bool is_past(const std::string& day) const { return best_before && *best_before < day; }
};

/// A lot and what is left of it, in what `holds` counts: below 0 where she took more than was
/// recorded.
struct StandingLot {
  Lot lot;
  std::int64_t left = 0;

  trade::Amount there() const;  // nothing where it is below 0
};

/// Whether `a` is taken before `b`: the one that is best before an earlier day, one without such a
/// day after those with; then the older one.
bool goes_before(const Lot& a, const Lot& b);

/// All lots of which something is left, or too much was taken, by material, each in the order in
/// which they are taken.
std::vector<StandingLot> standing_lots(const Records& records);
/// Those of these materials, or of goods that are called so themselves, in that order.
std::vector<StandingLot> lots_of(const Records& records, const std::vector<std::string>& materials);
/// Those with that code, however it is written in small letters and large, in that order.
std::vector<StandingLot> lots_called(const Records& records, const std::string& code);
std::optional<StandingLot> lot_of_id(const Records& records, const std::string& id);
/// What lots are of: every material and make, each once.
std::vector<std::string> materials_of_lots(const Records& records);

/// A code that no lot has, of her own: "L1", "L2".
std::string own_code(const Records& records);

/// Of a lot: taken for a batch or for another lot, or corrected.
struct LotChange {
  enum class What { used, counted };
  std::string lot = {};
  What what = What::used;
  std::int64_t whole = 0;  // added to what is left
  std::string day = {};
  std::string batch = {}, row = {};  // of what was weighed
  std::string made = {};             // the lot that was made of it
  std::string why = {};
};
std::vector<LotChange> changes_of_lot(const Records& records, const std::string& lot);
/// What other lots a lot was made of.
std::vector<LotChange> sources_of_lot(const Records& records, const std::string& lot);

// What follows belongs within an act.

void add_lot(Records& records, const Lot& lot);

/// Corrects what is left of `lots`, all of one code and material, to what was counted of them
/// together: what is missing is taken off in the order in which they are taken, what is there
/// beyond is added to the last.
void count_lots(Records& records, const std::vector<StandingLot>& lots, trade::Amount counted,
                const std::string& day, const std::string& why);

/// Takes so much of `of` for the lot that was made of it.
void use_for_lot(Records& records, const Lot& of, trade::Amount amount, const Lot& made);

}  // namespace brimwright::records
