#include "units/nearest_name.h"

#include "units/letters.h"

#include <algorithm>
#include <cstddef>
#include <utility>

namespace brimwright {
namespace {

constexpr std::size_t longest_slip = 100;

/// Letters to put in, take out, change or swap with their neighbour.
std::size_t edit_distance(std::string_view a, std::string_view b) {
  std::vector<std::size_t> before_last(b.size() + 1), last(b.size() + 1), row(b.size() + 1);
  for (std::size_t j = 0; j <= b.size(); ++j) row[j] = j;
  for (std::size_t i = 1; i <= a.size(); ++i) {
    before_last = std::exchange(last, row);
    row[0] = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      row[j] =
          std::min({last[j] + 1, row[j - 1] + 1, last[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1)});
      if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
        row[j] = std::min(row[j], before_last[j - 2] + 1);
    }
  }
  return row[b.size()];
}

/// As names are compared: capitals and the mark between words are no slip.
std::string folded(std::string_view name) {
  std::string out = in_small_letters(std::string(name));
  std::replace_if(
      out.begin(), out.end(), [](char c) { return c == ' ' || c == '-'; }, '_');
  return out;
}

}  // namespace

std::optional<std::string> nearest_name(std::string_view wrong,
                                        const std::vector<std::string>& known) {
  std::optional<std::string> best;
  if (wrong.size() > longest_slip) return best;
  std::size_t least = std::max<std::size_t>(1, wrong.size() / 3) + 1;
  for (const auto& name : known) {
    if (name.size() >= wrong.size() + least) continue;  // so many letters short
    const std::size_t distance = edit_distance(folded(wrong), folded(name));
    if (distance < least) {
      least = distance;
      best = name;
    }
  }
  return best;
}

}  // namespace brimwright
