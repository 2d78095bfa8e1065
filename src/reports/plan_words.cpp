#include "reports/plan_words.h"

#include "reports/text_table.h"
#include "units/printing.h"

namespace brimwright::reports {

std::string density_text(Density density) {
  return fixed(density / gram_per_millilitre, 3) + " g/ml";
}

std::string title(const std::string& left, const std::string& right) {
  const std::size_t used = shown_width(left) + shown_width(right);
  const std::size_t gap = used + 2 < page_width ? page_width - used : 2;
  return left + std::string(gap, ' ') + right + "\n";
}

std::string line(const std::string& text) { return wrapped(text, "  ", "    "); }

std::string minutes(std::chrono::seconds time) {
  return trimmed(static_cast<double>(time.count()) / 60, 1) + " min";
}

}  // namespace brimwright::reports
