#include "units/nearest_name.h"

#include "units/letters.h"

#include <algorithm>
#include <cstddef>

namespace brimwright {
namespace {

constexpr std::size_t longest_slip = 100;

std::size_t edit_distance(std::string_view a, std::string_view b) {
  std::vector<std::size_t> row(b.size() + 1);
  for (std::size_t j = 0; j <= b.size(); ++j) row[j] = j;
  for (std::size_t i = 1; i <= a.size(); ++i) {
    std::size_t diagonal = row[0];
    row[0] = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const std::size_t above = row[j];
      row[j] = std::min({above + 1, row[j - 1] + 1, diagonal + (a[i - 1] == b[j - 1] ? 0 : 1)});
      diagonal = above;
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
