#pragma once

#include <cstddef>
#include <functional>
#include <vector>

namespace brimwright::days {

/// Fillings of trays, each put on one of its days, so many of a tray and so many of all on a day.
/// A new one moves earlier ones where it has to, so that it is placed whenever all can be: an
/// augmenting path (Ford and Fulkerson 1956) in the network of fillings, trays' days and days.
class Casting {
 public:
  struct Filling {
    std::size_t tray;
    int first, last;  // days on which it may be
    int day = -1;     // on which it is
    std::size_t batch;
  };
  /// How many fit on a day: of that tray, and of all.
  using Room = std::function<int(std::size_t tray, int day)>;
  using RoomForAll = std::function<int(int day)>;

  Casting(Room of_tray, RoomForAll of_all)
      : of_tray_(std::move(of_tray)), of_all_(std::move(of_all)) {}

  /// Whether there is room; nothing is changed where there is none.
  bool add(const Filling& filling);

  const std::vector<Filling>& fillings() const { return fillings_; }
  /// Back to what `fillings` was.
  void restore(std::vector<Filling> fillings) { fillings_ = std::move(fillings); }
  /// Moves each to the last day that has room, as long as nothing else has to move.
  void delay();

 private:
  struct Seen;
  bool place(std::size_t filling, Seen& seen);
  bool make_room(std::size_t filling, int day, Seen& seen);
  int count(std::size_t tray, int day) const;
  int count(int day) const;

  Room of_tray_;
  RoomForAll of_all_;
  std::vector<Filling> fillings_;
};

}  // namespace brimwright::days
