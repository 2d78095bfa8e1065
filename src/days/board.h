#pragma once

#include "days/casting.h"
#include "days/problem.h"

#include <chrono>
#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

namespace brimwright::days {

/// A batch put on a day; `alike` is the problem's.
struct Poured {
  std::size_t alike;
  int day;
};

/// What is put on days so far, and what still fits. Batches are put on in the order of their days.
class Board {
 public:
  explicit Board(const Problem& problem);
  Board(const Board&) = delete;
  Board& operator=(const Board&) = delete;

  /// Puts one more of these batches on the day, with the decorations that are cast for it; false,
  /// and nothing is changed, where something stands against that.
  bool pour(std::size_t alike, int day);
  /// Takes away what was poured last.
  void undo();

  const std::vector<Poured>& poured() const { return poured_; }
  int left(std::size_t alike) const { return left_[alike]; }
  int all_left() const { return all_left_; }
  const Casting& casting() const { return casting_; }
  Casting& casting() { return casting_; }

  /// Room that days before `day` still have for casts of what is poured from it on, at most: hours,
  /// and fillings of a tray.
  std::chrono::seconds hours_for_casts_before(int day) const;
  int fillings_before(std::size_t tray, int day) const;
  /// Fillings of a tray on one day, by itself.
  int room_in(std::size_t tray, int day) const { return room_in_tray(tray, day); }

  /// All that decides what can follow from that day on.
  std::string state(int day) const;

 private:
  bool fits_in_hours(const Alike& alike, int day) const;
  bool fits_in_vessels(const Alike& alike, int day) const;
  bool fits_on_rack(const Alike& alike, int day) const;
  bool has_moulds(const Alike& alike, int day) const;
  bool cast_for(const Alike& alike, int day);
  /// Of its work on that day what a lye of its own would take, where the pot of others does.
  std::chrono::seconds saved_by_one_more(const Alike& alike, int day) const;
  /// Moulds that are filled by one batch more on that day, for its part of that place.
  int moulds_more(const Alike& alike, std::size_t part, int day) const;
  void put(const Alike& alike, int day, int sign);
  int room_for_casts(int day) const;
  int room_in_tray(std::size_t tray, int day) const;
  int first_cast_for(int day) const;
  void append_casting(std::string& state, int day) const;
  void append_room_for_casts(std::string& state, int day) const;

  struct DayUse {
    std::chrono::seconds busy{}, busy_cut_same_day{}, longest_wait{};
    int batches = 0, whippings = 0;
    std::vector<int> sharing = {};  // batches, by the kind of their lye
  };
  const Pouring& on(const Alike& alike, int day) const {
    return problem_->lines()[alike.line].on[static_cast<std::size_t>(day)];
  }

  const Problem* problem_;
  std::vector<DayUse> days_;
  std::vector<std::vector<std::vector<std::int64_t>>> casts_;  // of a line's part, by day
  std::vector<std::vector<int>> moulds_;                       // in use of a kind, by day
  std::vector<std::int64_t> rack_;                             // by day
  Casting casting_;
  std::vector<Poured> poured_;
  std::vector<std::chrono::seconds> waits_before_;  // longest wait of the day before each pour
  std::vector<std::vector<Casting::Filling>> fillings_before_;
  std::vector<int> left_;
  int all_left_ = 0;
  bool has_fills_ = false, have_one_first_cast_ = true;
  int first_cast_ = 0;
};

}  // namespace brimwright::days
