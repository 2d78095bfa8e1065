#include "reports/days_report.h"
#include "reports/picture_sheet.h"
#include "reports/plan_words.h"
#include "reports/svg_drawing.h"
#include "units/wording.h"

#include <algorithm>
#include <map>

namespace brimwright::reports {
namespace {

using Anchor = Lettering::Anchor;
using days::Day;

// Room on paper, in millimetres.
constexpr double left = 44, right = 4, wide = sheet_width - left - right;
constexpr double top = 20, hours_high = 14, row = 7, bar_high = 4.2, legend_row = 6;
constexpr double dot = 0.8, ring = 1.6;

class Strip {
 public:
  explicit Strip(const DaysReport& report) : report_(report), entries_(entries_of(report)) {
    first_ = entries_.front().day;
    last_ = entries_.back().day;
    for (const DayEntry& entry : entries_) used_[entry.day] += entry.time;
    for (const auto& hours : report.studio.calendar.making)
      longest_ = std::max(longest_, std::chrono::seconds(hours));
  }

  Drawing drawing() {
    const auto rows = static_cast<double>(report_.schedule.batches.size());
    bottom_ = top + hours_high + 3 + rows * row;
    sheet_ = {.prefix = "days",
              .title = "Days from " + weekday_and_date(first_) + " to " + weekday_and_date(last_),
              .width_mm = sheet_width,
              .height_mm = bottom_ + 12 + 3 * legend_row};
    sheet_.rectangle({0, 0}, sheet_.width_mm, sheet_.height_mm, Look::paper);
    words({0, 6}, sheet_.title, Anchor::start, true);
    days_off();
    axis();
    hours();
    batches();
    due_days();
    legend();
    return std::move(sheet_);
  }

 private:
  double day_width() const { return wide / static_cast<double>((last_ - first_).count() + 1); }
  double x_of(Day day) const {
    return left + day_width() * static_cast<double>((day - first_).count());
  }
  void words(PaperPoint at, const std::string& text, Anchor anchor, bool bold = false) {
    sheet_.words(at, text, {.size_mm = label_size, .anchor = anchor, .bold = bold});
  }
  template <class Work>
  void each_day(Work work) {
    for (Day day = first_; day <= last_; day += std::chrono::days(1)) work(day);
  }

  void days_off() {
    each_day([this](Day day) {
      if (report_.studio.calendar.is_off(day))
        sheet_.rectangle({x_of(day), top}, day_width(), bottom_ - top, hatching(0));
    });
  }

  /// Mondays are marked with their dates, as close as these can be read.
  void axis() {
    constexpr double date_room = 19;
    double free_from = left;
    each_day([&](Day day) {
      if (std::chrono::weekday(day) != std::chrono::Monday) return;
      sheet_.line({x_of(day), top - 2}, {x_of(day), bottom_}, Look::fine);
      if (x_of(day) < free_from || x_of(day) + date_room > sheet_width) return;
      words({x_of(day) + 0.5, top - 3}, iso_date(std::chrono::year_month_day(day)), Anchor::start);
      free_from = x_of(day) + date_room;
    });
    sheet_.line({left, top}, {left + wide, top}, Look::crease);
    sheet_.line({left, bottom_}, {left + wide, bottom_}, Look::crease);
  }

  /// A day's hours as an open bar, what is used of them filled.
  void hours() {
    const double foot = top + hours_high;
    words({0, foot - 1}, "hours, used and free", Anchor::start);
    if (longest_.count() == 0) return;
    const auto high = [&](std::chrono::seconds time) {
      return (hours_high - 1) * static_cast<double>(time.count()) /
             static_cast<double>(longest_.count());
    };
    each_day([&](Day day) {
      const auto hours = report_.studio.calendar.hours(day);
      if (hours.count() == 0) return;
      const double x = x_of(day) + 0.1 * day_width(), width = 0.8 * day_width();
      sheet_.rectangle({x, foot - high(hours)}, width, high(hours), Look::white);
      if (const auto used = used_.find(day); used != used_.end() && used->second.count() > 0)
        sheet_.rectangle({x, foot - high(used->second)}, width, high(used->second), Look::black);
    });
  }

  void batches() {
    double y = top + hours_high + 3;
    for (std::size_t b = 0; b < report_.schedule.batches.size(); ++b, y += row) {
      const auto& one = report_.schedule.batches[b];
      const auto& delivery = report_.deliveries[one.delivery];
      const auto& batch = delivery.lines[one.line].batches[one.batch];
      words({0, y + 3.4},
            shortened_name(report_.asked[delivery.asked].lines[one.line].name) + " " +
                std::to_string(batch.number),
            Anchor::start);
      bar(one.poured, std::max(one.unmoulded, one.poured + std::chrono::days(1)), y, hatching(3));
      if (one.unmoulded < one.cured) bar(one.unmoulded, one.cured, y, hatching(1));
      if (one.chilled) mark(*one.chilled, y, false);
      for (const auto& cast : report_.schedule.casts)
        if (cast.batch == b) mark(cast.day, y, true);
    }
  }

  static std::string shortened_name(const std::string& name) {
    constexpr std::size_t longest = 24;
    std::size_t end = std::min(longest, name.size());
    while (end > 0 && end < name.size() && (static_cast<unsigned char>(name[end]) & 0xC0U) == 0x80U)
      --end;
    return name.substr(0, end) + (end < name.size() ? "…" : "");
  }

  void bar(Day from, Day to, double y, Look look) {
    sheet_.rectangle({x_of(from), y + 0.4}, x_of(to) - x_of(from), bar_high, look);
  }

  /// A ring and a dot in it, so that both can be told on one day.
  void mark(Day day, double y, bool is_cast) {
    const PaperPoint middle{x_of(day) + day_width() / 2, y + 0.4 + bar_high / 2};
    sheet_.circle(middle, is_cast ? dot : ring, is_cast ? Look::black : Look::white);
  }

  void due_days() {
    for (std::size_t d = 0; d < report_.deliveries.size(); ++d) {
      const double x = x_of(report_.schedule.due[d]);
      sheet_.line({x, top}, {x, bottom_ + 2}, Look::wall);
      words({x, bottom_ + 5},
            (report_.deliveries[d].due ? "due " : "ready ") +
                weekday_and_date(report_.schedule.due[d]).substr(4),
            Anchor::end);
    }
  }

  void legend() {
    double y = bottom_ + 10;
    const auto box = [&](double x, Look look, const std::string& text) {
      sheet_.rectangle({x, y}, 6, bar_high, look);
      words({x + 8, y + 3.4}, text, Anchor::start);
    };
    box(0, hatching(3), "in the mould");
    box(46, hatching(1), "curing");
    box(92, hatching(0), "day off");
    y += legend_row;
    const auto sign = [&](double x, double radius, Look look, const std::string& text) {
      sheet_.circle({x + 3, y + bar_high / 2}, radius, look);
      words({x + 8, y + 3.4}, text, Anchor::start);
    };
    sign(0, dot, Look::black, "decorations cast beforehand");
    sign(92, ring, Look::white, "weighed out and set to chill");
  }

  const DaysReport& report_;
  std::vector<DayEntry> entries_;
  std::map<Day, std::chrono::seconds> used_;
  std::chrono::seconds longest_{};
  Day first_, last_;
  double bottom_ = 0;
  Drawing sheet_;
};

}  // namespace

Drawing days_drawing(const DaysReport& report) { return Strip(report).drawing(); }

std::string days_picture(const DaysReport& report) { return svg_of(days_drawing(report)); }

}  // namespace brimwright::reports
