#pragma once

#include "planning/run.h"
#include "trade/fraction.h"
#include "trade/pricing.h"
#include "units/money.h"
#include "units/share.h"

#include <chrono>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::costing {

/// What a material is paid for: a pack's price and what it holds.
struct UnitPrice {
  Money paid;
  trade::Fraction holds;  // grams, or pieces of what is counted
  bool is_counted = false;
};

/// What her time costs, and how much of it goes where.
struct Work {
  Money an_hour;
  std::chrono::seconds each_batch{}, each_piece_made{}, each_tray_fill{}, each_piece_packed{};
};

struct Overhead {
  Money each_batch, each_piece_made;
};

/// A way of selling and how its price comes about: "retail" by a margin of 60 %.
struct SellingWay {
  std::string name;
  trade::Asking asking;
};

/// All that a studio says of what its soap costs and is sold for.
struct Selling {
  Currency currency = {};
  std::map<std::string, UnitPrice> prices;     // by the name that costs go by
  std::map<std::string, Share> waste;          // of a material, on top of what is used
  std::vector<planning::Packaging> packaging;  // the run's own, or else the studio's
  std::optional<Work> work;
  std::optional<Overhead> overhead;
  std::optional<trade::Tax> tax;
  std::optional<trade::Fees> fees;
  std::vector<SellingWay> ways;
  std::vector<Money> endings;
  std::vector<std::string> letterhead;  // above an offer, line by line
};

}  // namespace brimwright::costing
