#include "reports/learned_report.h"
#include "reports/picture_sheet.h"
#include "reports/svg_drawing.h"
#include "units/printing.h"

#include <algorithm>
#include <chrono>
#include <type_traits>
#include <utility>

namespace brimwright::reports {
namespace {

using namespace learning;
using Anchor = Lettering::Anchor;

// Room on paper, in millimetres.
constexpr double left = 62, right = 22, wide = sheet_width - left - right;
constexpr double top = 20, strip_high = 20, strip_room = 28, dot = 0.8;

double number_of(const Value& value) {
  return std::visit(
      [](const auto& v) {
        using V = std::decay_t<decltype(v)>;
        if constexpr (std::is_same_v<V, Share>)
          return v.of_one();
        else if constexpr (std::is_same_v<V, Factor>)
          return v.factor;
        else if constexpr (std::is_same_v<V, Minutes>)
          return v.count();
        else
          return v.base();
      },
      value);
}

std::string day_text(std::chrono::sys_days day) {
  const std::chrono::year_month_day date(day);
  const auto two = [](unsigned number) {
    return (number < 10 ? "0" : "") + std::to_string(number);
  };
  return std::to_string(static_cast<int>(date.year())) + "-" +
         two(static_cast<unsigned>(date.month())) + "-" + two(static_cast<unsigned>(date.day()));
}

class Strips {
 public:
  explicit Strips(const LearnedReport& report) : report_(report) {
    for (const NamedFigure& named : report.figures)
      for (const BatchValue& value : named.figure.values) {
        first_ = std::min(first_, std::chrono::sys_days(value.date));
        last_ = std::max(last_, std::chrono::sys_days(value.date));
      }
  }

  Drawing drawing() {
    const auto strips = static_cast<double>(report_.figures.size());
    sheet_ = {.prefix = "learned",
              .title = "Plan against actual: " + report_.run,
              .width_mm = sheet_width,
              .height_mm = top + strips * strip_room + 18};
    sheet_.rectangle({0, 0}, sheet_.width_mm, sheet_.height_mm, Look::paper);
    words({0, 6}, sheet_.title, Anchor::start, true);
    if (report_.figures.empty())
      words({0, 14}, "Three batches are needed before a figure is shown.", Anchor::start);
    double y = top;
    for (const NamedFigure& named : report_.figures) {
      strip(named.figure, y);
      y += strip_room;
    }
    if (!report_.figures.empty()) legend(y);
    return std::move(sheet_);
  }

 private:
  /// What lies between `low` and `high` stands between the strip's foot and head.
  struct Scale {
    double low, high, y;
    double at(double number) const { return y + strip_high * (1 - (number - low) / (high - low)); }
  };

  void words(PaperPoint at, const std::string& text, Anchor anchor, bool bold = false) {
    sheet_.words(at, text, {.size_mm = label_size, .anchor = anchor, .bold = bold});
  }

  double x_of(std::chrono::sys_days day) const {
    const auto days = static_cast<double>((last_ - first_).count());
    return days > 0 ? left + wide * static_cast<double>((day - first_).count()) / days
                    : left + wide / 2;
  }

  static Scale scale_of(const Figure& figure, double y) {
    double low = number_of(figure.spread.low), high = number_of(figure.spread.high);
    const auto hold = [&](double number) {
      low = std::min(low, number);
      high = std::max(high, number);
    };
    for (const BatchValue& value : figure.values) hold(number_of(value.value));
    if (figure.used_now) hold(number_of(*figure.used_now));
    const double room = high > low ? 0.06 * (high - low) : 0.5;
    return {low - room, high + room, y};
  }

  void strip(const Figure& figure, double y) {
    const Scale scale = scale_of(figure, y);
    const double low = scale.at(number_of(figure.spread.low));
    const double high = scale.at(number_of(figure.spread.high));
    const double value = scale.at(number_of(figure.value));
    sheet_.rectangle({left, high}, wide, std::max(low - high, 0.1), hatching(0));
    sheet_.line({left, value}, {left + wide, value}, Look::wall);
    words({left + wide + 2, value + 1}, value_words(figure.value), Anchor::start, true);
    if (figure.used_now) {
      const double used = scale.at(number_of(*figure.used_now));
      sheet_.line({left, used}, {left + wide, used}, Look::hidden);
      words({left - 2, used + 1}, value_words(*figure.used_now), Anchor::end);
    }
    for (const BatchValue& one : figure.values)
      sheet_.circle({x_of(one.date), scale.at(number_of(one.value))}, dot, Look::black);
    name(figure, y);
  }

  /// In two lines where one is too short: what it is, and of which file.
  void name(const Figure& figure, double y) {
    const std::string text = figure_words(figure.id);
    const auto bracket = text.find(" (");
    words({0, y + 2}, text.substr(0, std::min(bracket, std::size_t{44})), Anchor::start);
    if (bracket != std::string::npos) words({0, y + 6}, text.substr(bracket + 1), Anchor::start);
  }

  void legend(double y) {
    words({left, y}, day_text(first_), Anchor::start);
    words({left + wide, y}, day_text(last_), Anchor::end);
    sheet_.circle({left + 1, y + 6}, dot, Look::black);
    words({left + 4, y + 7}, "a batch", Anchor::start);
    sheet_.line({left + 24, y + 6}, {left + 32, y + 6}, Look::wall);
    words({left + 34, y + 7}, "what they tell together", Anchor::start);
    sheet_.line({left + 74, y + 6}, {left + 82, y + 6}, Look::hidden);
    words({left + 84, y + 7}, "plan", Anchor::start);
    sheet_.rectangle({left, y + 9.5}, 8, 3, hatching(0));
    words({left + 10, y + 12}, "where the true figure is likely to lie", Anchor::start);
  }

  const LearnedReport& report_;
  std::chrono::sys_days first_ = std::chrono::sys_days::max();
  std::chrono::sys_days last_ = std::chrono::sys_days::min();
  Drawing sheet_;
};

}  // namespace

std::string learned_picture(const LearnedReport& report) {
  return svg_of(Strips(report).drawing());
}

}  // namespace brimwright::reports
