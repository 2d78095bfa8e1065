#pragma once

#include "days/calendar.h"

#include <chrono>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::days {

// What is to be put into days, in plain numbers. Nothing here knows how any of them came about.

/// Moulds of one kind and its like, all free at first.
struct Mould {
  std::string name;
  int owned = 1;
  std::int64_t cavities = 1;  // in each
};

/// Trays of one kind, all filled at once.
struct Tray {
  std::string name;
  bool is_counted = true;  // where it is not known how many there are, time alone limits
  std::optional<std::chrono::seconds> sets_in = {};  // without it, one filling a day
};

/// Lye solution of one kind, of which one pot may do for several batches of a day.
struct Lye {
  int batches_in_pot = 1;  // at most
};

/// What limits the work of a day, and what the work takes.
struct Studio {
  Calendar calendar;
  std::vector<Mould> moulds;
  std::vector<Tray> trays = {};
  std::vector<Lye> lyes = {};
  std::chrono::seconds each_lye{};  // of a batch's work, less than all of it
  std::optional<int> batches_a_day = {}, whippings_a_day = {};  // by pots and bowls
  std::optional<std::int64_t> rack_places = {};                 // pieces that cure at once
  std::optional<int> cast_ahead_at_most = {};                   // days before the batch it is for
  std::chrono::seconds each_tray_fill{}, each_piece_packed{};
};

/// Fillings of a tray that a batch needs.
struct Fills {
  std::size_t tray = 0;  // of the studio's
  int count = 0;

  bool operator==(const Fills&) const = default;
};

/// Cavities that a batch fills, of one kind of mould.
struct Filled {
  std::size_t mould = 0;  // of the studio's
  std::int64_t casts = 0;

  bool operator==(const Filled&) const = default;
};

/// What is mixed, poured, whipped and piped in one go.
struct Batch {
  std::int64_t number = 0;     // of its run's batches, from 1 on
  std::vector<Filled> filled;  // by kind of mould, the same kinds in all batches of a line
  std::int64_t pieces = 0;     // that cure
  std::int64_t sold = 0;       // of these
  std::chrono::seconds work{};
  int whippings = 0;
  std::vector<Fills> fills = {};
};

/// Whether it makes no difference to the days which of the two is made.
inline bool are_alike(const Batch& one, const Batch& other) {
  return one.filled == other.filled && one.pieces == other.pieces && one.sold == other.sold &&
         one.work == other.work && one.whippings == other.whippings && one.fills == other.fills;
}

/// Days from ordering to having what is to be bought; nothing where nothing is.
using Lead = std::optional<int>;

/// Batches of one kind of piece, or of several that are poured together.
struct Line {
  std::string name;
  std::vector<Batch> batches;
  std::chrono::minutes unmould_after{};
  /// The longest that a cast may wait for the knife; below a day, it is cut the day it is poured.
  std::optional<std::chrono::minutes> cut_within = {};
  bool is_cut = false;
  int cure_days = 0;        // counted from the day it is poured
  bool is_chilled = false;  // fats or lye stand cold the evening before
  Lead make_lead = {}, cast_lead = {};
  std::optional<std::size_t> lye = {};  // of the studio's; without it, each batch has its own
};

/// Lines that are handed over together.
struct Delivery {
  std::size_t asked = 0;  // which of those that are asked about it is, or is a part of
  std::string name;
  std::vector<Line> lines;
  std::optional<Day> due = {};
  Lead pack_lead = {};
  bool is_rest = false;              // what could not be in time with the rest of it
  std::int64_t ready = 0;            // pieces that are made already, packed with the others
  std::optional<Day> ready_on = {};  // the day on which all of these are ready, if still to come
};

}  // namespace brimwright::days
