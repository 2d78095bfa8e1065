#include "days/casting.h"

#include <algorithm>
#include <set>
#include <utility>

namespace brimwright::days {

/// What was tried for the filling that is being added.
struct Casting::Seen {
  std::set<std::pair<std::size_t, int>> trays;  // of a tray, on a day
  std::set<int> days;                           // that were full
  std::set<std::size_t> fillings;               // on their way
};

int Casting::count(std::size_t tray, int day) const {
  return static_cast<int>(std::count_if(
      fillings_.begin(), fillings_.end(),
      [&](const Filling& filling) { return filling.day == day && filling.tray == tray; }));
}

int Casting::count(int day) const {
  return static_cast<int>(
      std::count_if(fillings_.begin(), fillings_.end(),
                    [&](const Filling& filling) { return filling.day == day; }));
}

/// Makes room for one more of that tray on that day, by moving others away.
bool Casting::make_room(std::size_t filling, int day, Seen& seen) {
  const std::size_t tray = fillings_[filling].tray;
  const bool tray_is_full = count(tray, day) >= of_tray_(tray, day);
  if (!tray_is_full && count(day) < of_all_(day)) return true;
  if (!tray_is_full && !seen.days.insert(day).second) return false;
  for (std::size_t other = 0; other < fillings_.size(); ++other) {
    if (fillings_[other].day != day || seen.fillings.contains(other)) continue;
    if (tray_is_full && fillings_[other].tray != tray) continue;
    if (place(other, seen)) return true;
  }
  return false;
}

/// Puts it on another day than it is on.
bool Casting::place(std::size_t filling, Seen& seen) {
  const auto [tray, first, last, now, batch] = fillings_[filling];
  seen.fillings.insert(filling);
  for (int day = first; day <= last; ++day) {
    if (day == now || of_tray_(tray, day) == 0 || of_all_(day) == 0) continue;
    if (!seen.trays.insert({tray, day}).second) continue;
    if (!make_room(filling, day, seen)) continue;
    fillings_[filling].day = day;
    return true;
  }
  return false;
}

bool Casting::add(const Filling& filling) {
  fillings_.push_back(filling);
  fillings_.back().day = -1;
  Seen seen;
  const std::vector<Filling> before = fillings_;
  if (place(fillings_.size() - 1, seen)) return true;
  fillings_ = before;
  fillings_.pop_back();
  return false;
}

void Casting::delay() {
  std::vector<std::size_t> latest_first;
  for (std::size_t i = 0; i < fillings_.size(); ++i) latest_first.push_back(i);
  std::stable_sort(latest_first.begin(), latest_first.end(), [this](std::size_t a, std::size_t b) {
    return fillings_[a].last > fillings_[b].last;
  });
  for (const std::size_t i : latest_first) {
    Filling& filling = fillings_[i];
    for (int day = filling.last; day > filling.day; --day)
      if (count(filling.tray, day) < of_tray_(filling.tray, day) && count(day) < of_all_(day))
        filling.day = day;
  }
}

}  // namespace brimwright::days
