#pragma once

#include "records/batch_cost.h"
#include "reports/sheet_blocks.h"
#include "units/remark.h"

#include <nlohmann/json_fwd.hpp>

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::reports {

/// Pieces of a batch that are taken for an order.
struct ReadyBatch {
  std::string code;
  std::int64_t pieces = 0;
  std::optional<std::string> ready_on = {};  // a day still to come
  /// What went into them did cost, by its lots; nothing where what was weighed was not recorded.
  std::optional<records::PaidCost> cost = {};
};

/// Pieces of a batch that would be taken, had its files not changed since: they are another soap.
struct MadeOtherwise {
  std::string code;
  std::int64_t pieces = 0;
  std::vector<std::string> files = {};  // that changed
};

/// A line of an order beside the records: what of it is with the customer, what is taken of pieces
/// that are made, and what is left to make.
struct ReadyLine {
  std::string run, name;  // the run's file, and what it calls itself
  std::int64_t wanted = 0, delivered = 0;
  std::vector<ReadyBatch> batches = {};
  std::vector<MadeOtherwise> otherwise = {};  // not taken

  std::int64_t delivered_of_it() const;  // as many as were wanted at the most
  std::int64_t taken() const;
  std::int64_t to_make() const;  // saleable
  std::int64_t to_pack() const;  // made and taken
};

/// An order beside the records.
struct ReadyOrder {
  std::string file;
  std::vector<ReadyLine> lines = {};  // the order's, in its order
  std::vector<Remark> notes = {};     // what is not counted, and why

  bool is_nothing_to_make() const;
  bool is_of_records() const;  // anything of it is delivered or taken
  std::int64_t taken() const;
  /// What the materials of all that is taken did cost.
  records::PaidCost cost() const;
  /// Of the batches whose cost nobody recorded, by their codes.
  std::vector<std::string> costs_unknown() const;
};

/// "Plain bars: 12 of 24 stand ready (batch 2026-10-20A), 12 to make."; empty where nothing is
/// taken and nothing delivered.
std::string ready_words(const ReadyLine& line);
/// Those of all lines.
std::vector<std::string> ready_words(const ReadyOrder& order);
/// "batch 2026-10-20A", "batches 2026-10-20A (8) and 2026-11-02B (4)".
std::string batches_words(const std::vector<ReadyBatch>& batches);
/// "6.00 EUR, without what is unpriced: Lavender oil (lot L3)."; to stand behind what did cost it.
std::string paid_words(const records::PaidCost& cost);
/// "What went into the 12 that stand ready did cost 6.00 EUR by its lots ..."; empty where none
/// are taken.
std::string ready_cost_words(const ReadyOrder& order);

nlohmann::ordered_json ready_json(const ReadyOrder& order);
/// What to take from the rack, a box a batch; nothing where none is taken.
std::vector<SheetBlock> ready_blocks(const ReadyOrder& order);

}  // namespace brimwright::reports
