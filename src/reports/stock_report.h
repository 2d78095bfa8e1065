#pragma once

#include "records/batches.h"
#include "records/lots.h"
#include "records/pieces.h"
#include "units/remark.h"

#include <optional>
#include <string>
#include <vector>

namespace brimwright::reports {

/// What is there of a studio's lots and pieces on a day.
struct Stock {
  struct Material {
    std::string material;                         // as weighings call it
    std::string shown;                            // to people
    std::vector<records::StandingLot> lots = {};  // in the order in which they are taken
  };
  struct Pieces {
    records::Batch batch;
    records::PieceCount count;
    std::optional<std::string> cures_until = {};  // a day still to come
    bool is_for_sale = false;
    std::string why_not = {};
  };

  /// What is called how there.
  struct Names {
    std::string currency = {};  // its code, or nothing
    std::vector<std::string> materials = {}, made_ahead = {}, sellers = {};
  };

  std::string folder;
  std::string day;
  bool has_records = false;
  std::vector<std::string> done = {};  // what was recorded just now, a sentence each
  std::vector<Material> materials = {};
  std::vector<Pieces> pieces = {};
  std::vector<std::string> not_counted = {};  // of the studio's "have", what no lot has yet
  std::vector<Remark> notes = {};
  std::optional<Names> names = {};
};

std::string stock_text(const Stock& stock);
std::string stock_json(const Stock& stock);

/// "800 g of 5 kg, best before 2027-03-01, bought 2026-10-01 of Oil mill".
std::string lot_words(const records::StandingLot& of, const std::string& day);
/// "5 kg", "2 x 5 kg".
std::string packs_words(const records::Lot& lot);
/// "12 made, 1 rejected, 4 sold: 7 there".
std::string count_words(const records::PieceCount& count);

}  // namespace brimwright::reports
