#pragma once

#include "planning/weighing.h"
#include "reports/csv_table.h"
#include "reports/ready_report.h"
#include "reports/sheet_blocks.h"
#include "reports/together_report.h"
#include "trade/amount.h"
#include "trade/amount_text.h"
#include "trade/buying.h"
#include "units/remark.h"
#include "units/share.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::reports {

/// What runs need together and what to buy for them.
struct Buying {
  struct Run {
    std::string file, name;
    std::int64_t sell, make;
    std::string order = {};  // the file of the one that it is a line of
  };
  /// A material, by weight or by the piece: what is used of it and lost, and what it is covered by.
  struct Material {
    std::string name;   // as packs and prices call it
    std::string shown;  // to people
    trade::Amount used;
    Share waste;
    trade::Amount needed;  // with waste
    trade::Amount have;    // of the shelf
    trade::Amount to_buy;
    trade::Amount bought;
    std::vector<planning::MadeOf> made_of = {};  // where she makes it ahead, and buys none
    std::optional<trade::Amount> to_make = {};   // of that, instead of buying it
    bool is_unpriced = false;                    // it must be bought, and no pack of it is listed
    bool is_from_tap = false;                    // water that nobody sells her

    trade::Amount left() const {  // when all is made
      return (have + to_make.value_or(bought)).less(needed);
    }
  };
  /// How far the shelf alone reaches, for a single run.
  struct Stock {
    struct Limit {
      std::string name, shown;
      trade::Amount needed, have;
    };
    std::int64_t pieces = 0;  // saleable, that can be made; 0: none
    std::int64_t batches = 0;
    /// The next number above that could be planned, and what is short for it; absent where the
    /// whole run can be made.
    std::optional<std::int64_t> short_for = {};
    std::vector<Limit> limited_by = {};
  };

  /// Lines of an order that are poured together, and the order's file.
  struct Together {
    std::string order;
    PouredTogether lines;
  };

  std::string studio;
  std::vector<Run> runs;
  std::vector<Together> together = {};
  std::vector<ReadyOrder> ready = {};  // of each order
  std::vector<Material> materials;
  std::vector<trade::Pack> packs;  // by the materials' names
  std::vector<trade::Seller> sellers;
  trade::Purchase purchase;
  std::vector<Remark> notes;
  std::optional<Stock> stock;
};

std::string buying_text(const Buying& buying);
std::string buying_json(const Buying& buying);
/// A line a pack that is bought, then one for each seller's postage (reports/csv_table.h).
std::string buying_csv(const Buying& buying, DecimalMark mark);
/// To take along: a section a seller, each pack with a box to tick.
Sheet buying_sheet(const Buying& buying, const std::string& printed_at);

using trade::amount_shown_down;
using trade::amount_shown_up;
using trade::pack_size;
/// That water is from the tap, where it has no price and no pack.
std::string tap_words();
/// What people call a material of the list.
std::string shown_as(const Buying& buying, const std::string& material);
/// "Olive oil", or "Goldmill olive, in place of Olive oil".
std::string shown_as(const Buying& buying, const trade::Pack& pack);
/// The latter of all goods by weight that are bought in place of a material, each once.
std::vector<std::string> makes_bought(const Buying& buying);

}  // namespace brimwright::reports
