#include "days/span.h"

#include <algorithm>

namespace brimwright::days {
namespace {

/// For each day the first day from it on that `holds`, or the number of days.
std::vector<int> nexts(const std::vector<bool>& holds) {
  std::vector<int> next(holds.size());
  int found = static_cast<int>(holds.size());
  for (std::size_t i = holds.size(); i-- > 0;) {
    if (holds[i]) found = static_cast<int>(i);
    next[i] = found;
  }
  return next;
}

/// For each day the last day up to it that `holds`, or -1.
std::vector<int> lasts(const std::vector<bool>& holds) {
  std::vector<int> last(holds.size());
  int found = -1;
  for (std::size_t i = 0; i < holds.size(); ++i) {
    if (holds[i]) found = static_cast<int>(i);
    last[i] = found;
  }
  return last;
}

}  // namespace

Span::Span(const Calendar& calendar, Day first, int days) : first_(first) {
  std::vector<bool> is_in, is_open;
  for (int i = 0; i < days; ++i) {
    hours_.push_back(calendar.hours(day(i)));
    is_in.push_back(calendar.is_in(day(i)));
    is_open.push_back(!calendar.is_off(day(i)));
  }
  next_in_ = nexts(is_in);
  last_in_ = lasts(is_in);
  next_open_ = nexts(is_open);
  last_open_ = lasts(is_open);
}

int Span::next_in(int at) const {
  return at >= size() ? size() : next_in_[static_cast<std::size_t>(std::max(at, 0))];
}

int Span::last_in(int at) const {
  return at < 0 ? -1 : last_in_[static_cast<std::size_t>(std::min(at, size() - 1))];
}

int Span::next_open(int at) const {
  return at >= size() ? size() : next_open_[static_cast<std::size_t>(std::max(at, 0))];
}

int Span::last_open(int at) const {
  return at < 0 ? -1 : last_open_[static_cast<std::size_t>(std::min(at, size() - 1))];
}

}  // namespace brimwright::days
