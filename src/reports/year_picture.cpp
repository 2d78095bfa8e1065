#include "learning/learned.h"
#include "reports/learned_report.h"
#include "reports/picture_sheet.h"
#include "reports/svg_drawing.h"
#include "units/printing.h"
#include "units/shown_text.h"
#include "units/wording.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <map>
#include <type_traits>
#include <utility>

namespace brimwright::reports {
namespace {

using namespace learning;
using Anchor = Lettering::Anchor;
using std::chrono::sys_days;

// Room on paper, in millimetres.
constexpr double left = 58, right = 26, wide = sheet_width - left - right;
constexpr double top = 20, strip_high = 18, strip_room = 26, mark_size = 0.9;

/// A batch's difference from its plan, in the unit of its strip.
struct Difference {
  sys_days day;
  std::string run;
  double off;
};
struct StripOfYear {
  std::string words, unit;
  std::vector<Difference> differences;
};

double number_of(const Value& value) {
  return std::visit(
      [](const auto& v) {
        using V = std::decay_t<decltype(v)>;
        if constexpr (std::is_same_v<V, Share>)
          return v.in_percent();
        else if constexpr (std::is_same_v<V, Factor>)
          return v.factor;
        else if constexpr (std::is_same_v<V, Minutes>)
          return v.count();
        else if constexpr (std::is_same_v<V, Length>)
          return v / millimetre;
        else if constexpr (std::is_same_v<V, Mass>)
          return v / gram;
        else
          return v.base();
      },
      value);
}

/// What is of another size in each run is told in per cent of its plan.
bool is_in_percent_of_plan(const Value& value) {
  return std::holds_alternative<Density>(value) || std::holds_alternative<Volume>(value) ||
         std::holds_alternative<Factor>(value) || std::holds_alternative<Minutes>(value);
}

const char* unit_of(const Value& value) {
  if (is_in_percent_of_plan(value)) return "%";
  if (std::holds_alternative<Length>(value)) return "mm of pour line";
  if (std::holds_alternative<Mass>(value)) return "g";
  return "points of %";
}

double off_plan(const Value& value, const Value& planned) {
  const double off = number_of(value) - number_of(planned);
  return is_in_percent_of_plan(value) ? 100 * off / number_of(planned) : off;
}

/// Of whatever mould, formula or tip: they stand in one strip.
std::string words_of(const FigureId& id) {
  const std::string words = figure_words(id);
  return words.substr(0, std::min(words.find(" ("), words.find(", as ")));
}

std::string run_of(const YearReport& report, const std::string& code) {
  for (const BatchFacts& batch : report.batches)
    if (batch.code == code) return batch.run;
  return {};
}

/// The pieces first, then each figure in the order of its kind; without a plan's own value, none.
std::vector<StripOfYear> strips_of(const YearReport& report) {
  std::vector<StripOfYear> strips{
      {.words = "sound pieces", .unit = "more or fewer than planned", .differences = {}}};
  for (const BatchFacts& batch : report.batches)
    if (batch.pieces_made && batch.pieces_planned)
      strips.front().differences.push_back(
          {batch.date, batch.run,
           static_cast<double>(*batch.pieces_made - batch.rejects.value_or(0) -
                               *batch.pieces_planned)});
  for (const BatchByBatch& one : report.told) {
    const std::string words = words_of(one.id);
    for (const BatchValue& value : one.values) {
      if (!value.planned) continue;
      if (is_in_percent_of_plan(value.value) && number_of(*value.planned) == 0) continue;
      if (strips.back().words != words)
        strips.push_back({.words = words, .unit = unit_of(value.value), .differences = {}});
      strips.back().differences.push_back(
          {value.date, run_of(report, value.code), off_plan(value.value, *value.planned)});
    }
  }
  std::erase_if(strips, [](const StripOfYear& strip) { return strip.differences.empty(); });
  return strips;
}

class Year {
 public:
  explicit Year(const YearReport& report)
      : first_(report.year / 1 / 1), last_(report.year / 12 / 31), strips_(strips_of(report)) {
    for (const StripOfYear& strip : strips_)
      for (const Difference& one : strip.differences) marks_.emplace(one.run, marks_.size());
    sheet_ = {.prefix = "year",
              .title = "Plan against actual, " + std::to_string(static_cast<int>(report.year)) +
                       ": " + report.name,
              .width_mm = sheet_width,
              .height_mm = top + static_cast<double>(strips_.size()) * strip_room + 12 +
                           6 * static_cast<double>(marks_.size())};
  }

  Drawing drawing() {
    sheet_.rectangle({0, 0}, sheet_.width_mm, sheet_.height_mm, Look::paper);
    words({0, 6}, sheet_.title, Anchor::start, true);
    if (strips_.empty()) {
      words({0, 14}, "No batch of that year has notes that its plan can be held against.",
            Anchor::start);
      return std::move(sheet_);
    }
    words({0, 11.5},
          "Each mark is a batch: above the line more than its own plan said, below less.",
          Anchor::start);
    double y = top;
    for (const StripOfYear& strip : strips_) {
      draw(strip, y);
      y += strip_room;
    }
    months(y - strip_room + strip_high);
    legend(y);
    return std::move(sheet_);
  }

 private:
  void words(PaperPoint at, const std::string& text, Anchor anchor, bool bold = false) {
    sheet_.words(at, text, {.size_mm = label_size, .anchor = anchor, .bold = bold});
  }

  double x_of(sys_days day) const {
    return left + wide * static_cast<double>((day - first_).count()) /
                      static_cast<double>((last_ - first_).count());
  }

  void draw(const StripOfYear& strip, double y) {
    double most = 0;
    for (const Difference& one : strip.differences) most = std::max(most, std::abs(one.off));
    const double scale = most > 0 ? 1.12 * most : 1;
    const double middle = y + strip_high / 2;
    const auto at = [&](double off) { return middle - strip_high / 2 * off / scale; };
    for (unsigned month = 2; month <= 12; ++month) {
      const double x =
          x_of(std::chrono::year_month_day(first_).year() / std::chrono::month(month) / 1);
      sheet_.line({x, y}, {x, y + strip_high}, Look::fine);
    }
    sheet_.line({left, y}, {left, y + strip_high}, Look::fine);
    sheet_.line({left + wide, y}, {left + wide, y + strip_high}, Look::fine);
    sheet_.line({left, middle}, {left + wide, middle}, Look::wall);
    for (const Difference& one : strip.differences)
      mark({x_of(one.day), at(one.off)}, marks_.at(one.run));
    words({0, middle - 1}, shortened(strip.words, 38), Anchor::start);
    words({0, middle + 3}, strip.unit, Anchor::start);
    words({left + wide + 2, middle + 1}, "as planned", Anchor::start);
    if (most == 0) return;
    words({left + wide + 2, at(most) + 1}, "+" + trimmed(most, most < 10 ? 1 : 0), Anchor::start);
    words({left + wide + 2, at(-most) + 1}, "-" + trimmed(most, most < 10 ? 1 : 0), Anchor::start);
  }

  /// Filled and open, round, square, pointed up and down; then again from the first.
  void mark(PaperPoint at, std::size_t index) {
    const auto shape = [this, index, at, x = at[0], y = at[1]](double size, Look look) {
      switch (index / 2 % 4) {
        case 0:
          return sheet_.circle(at, size, look);
        case 1:
          return sheet_.rectangle({x - size, y - size}, 2 * size, 2 * size, look);
        case 2:
          return sheet_.closed_lines(
              {{{x - size, y + size}, {x + size, y + size}, {x, y - size}, {x - size, y + size}}},
              look);
        default:
          return sheet_.closed_lines(
              {{{x - size, y - size}, {x + size, y - size}, {x, y + size}, {x - size, y - size}}},
              look);
      }
    };
    shape(mark_size, Look::black);
    if (index % 2 == 1) shape(0.55 * mark_size, Look::white);
  }

  void months(double y) {
    constexpr std::array<const char*, 12> names = {"Jan", "Feb", "Mar", "Apr", "May", "Jun",
                                                   "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};
    for (unsigned month = 0; month < 12; ++month)
      words({left + wide * (month + 0.5) / 12, y + 5}, names[month], Anchor::middle);
  }

  void legend(double y) {
    y += 4;
    for (const auto& [run, index] : marks_) {
      const double line = y + 6 * static_cast<double>(index);
      mark({left + 1, line}, index);
      words({left + 4, line + 1}, run, Anchor::start);
    }
  }

  sys_days first_, last_;
  std::vector<StripOfYear> strips_;
  std::map<std::string, std::size_t> marks_;  // of runs, by the order in which they come
  Drawing sheet_;
};

}  // namespace

std::string year_picture(const YearReport& report) { return svg_of(Year(report).drawing()); }

}  // namespace brimwright::reports
