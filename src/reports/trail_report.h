#pragma once

#include "records/batch_cost.h"
#include "records/batches.h"
#include "records/lot_use.h"
#include "records/lots.h"
#include "records/pieces.h"
#include "trade/fraction.h"

#include <cstdint>
#include <string>
#include <vector>

namespace brimwright::reports {

/// From lots over batches and their pieces to orders, and back.
struct Trail {
  /// A lot, what it was made of and what was made of it.
  struct LotPart {
    records::StandingLot of;
    std::string shown = {};  // the material, to people
    struct Other {
      std::string code, material;
      std::int64_t whole;
      bool is_pieces;
    };
    std::vector<Other> made_of = {}, made_into = {};
    std::vector<records::LotChange> counts = {};
  };
  /// A row that a batch weighed, and the lots it is from.
  struct Row {
    records::Weighed weighed;
    struct From {
      std::string code, make;
      std::int64_t whole;
    };
    std::vector<From> from = {};
    std::int64_t unknown = 0;
  };
  struct BatchPart {
    records::Batch batch;
    std::vector<Row> rows = {};  // of what is asked about a lot, those it is in
    bool has_all_rows = false;
    records::PaidCost cost = {};          // of all rows, and of its part of the base
    std::string base = {};                // the code of the base that it was poured from
    trade::Fraction of_base = 0;          // its part of that
    std::vector<std::string> lines = {};  // of a base: the codes of what was poured from it
    records::PieceCount count = {};
    std::vector<records::PieceChange> went = {};
  };
  /// What may hold what was asked about too, since nobody knows its lot.
  struct Gap {
    std::string batch, run, shown;
  };

  std::string asked, is, day;  // is: "lot", "batch" or "order"
  std::vector<LotPart> lots = {};
  std::vector<BatchPart> batches = {};
  std::vector<Gap> gaps = {};
};

std::string trail_text(const Trail& trail);
std::string trail_json(const Trail& trail);

}  // namespace brimwright::reports
