#include "reports/picture_sheet.h"
#include "reports/quote_report.h"
#include "reports/svg_drawing.h"
#include "units/printing.h"

#include <algorithm>
#include <cmath>

namespace brimwright::reports {
namespace {

using Anchor = Lettering::Anchor;

// Room on paper, in millimetres.
constexpr double left = 24, right = 6, top = 16, curve_high = 80, between = 22;
constexpr double bar = 9, bar_pitch = 14, legend_row = 6;
constexpr double wide = sheet_width - left - right;

double coins_of(const trade::ExactMoney& money) { return money.coins.convert_to<double>(); }

/// 1, 2 or 5 times a power of ten, so that `most` has about `marks` of it.
double round_step(double most, double marks) {
  const double rough = most / marks, power = std::pow(10, std::floor(std::log10(rough)));
  for (const double step : {1.0, 2.0, 5.0})
    if (step * power >= rough) return step * power;
  return 10 * power;
}

class Picture {
 public:
  explicit Picture(const QuoteReport& report) : report_(report), where_{report.run.file, ""} {
    for (const auto& number : report.quote.numbers) printed_.push_back(printed(number, where_));
    most_pieces_ = report.quote.costs.back().sell;
    for (const auto& [sell, each] : report.quote.costs)
      highest_ = std::max(highest_, coins_of(each));
    // The first few pieces bear a whole batch each: they would press the rest flat.
    const auto& costs = report.quote.costs;
    const double middle = coins_of(costs[costs.size() / 2].each);
    highest_ = std::max(1.0, std::min(highest_, 4 * middle));  // a coin, were all of it for nothing
  }

  Drawing drawing() {
    const auto bars = static_cast<double>(printed_.size());
    const auto parts = static_cast<double>(printed_.front().parts.size());
    sheet_ = {.prefix = "cost",
              .title = "What a piece costs: " + report_.run.name,
              .width_mm = sheet_width,
              .height_mm = top + curve_high + between + bars * bar_pitch + parts * legend_row + 6};
    sheet_.rectangle({0, 0}, sheet_.width_mm, sheet_.height_mm, Look::paper);
    words({0, 6}, "Cost of a piece against the pieces sold", Anchor::start, true);
    axes();
    curve();
    where_it_goes();
    return std::move(sheet_);
  }

 private:
  double x_of(std::int64_t sell) const {
    return left + wide * static_cast<double>(sell) / static_cast<double>(most_pieces_);
  }
  double y_of(double coins) const {
    return top + curve_high * (1 - std::min(coins, highest_) / highest_);
  }
  void words(PaperPoint at, const std::string& text, Anchor anchor, bool bold = false) {
    sheet_.words(at, text, {.size_mm = label_size, .anchor = anchor, .bold = bold});
  }
  std::string money(double coins) const {
    return amount_text({static_cast<std::int64_t>(std::llround(coins)), report_.selling.currency});
  }

  void axes() {
    const double foot = top + curve_high;
    sheet_.line({left, foot}, {left + wide, foot}, Look::crease);
    sheet_.line({left, top}, {left, foot}, Look::crease);
    const double step = round_step(highest_, 5);
    for (double coins = 0; coins <= highest_; coins += step) {
      sheet_.line({left, y_of(coins)}, {left + wide, y_of(coins)}, Look::fine);
      words({left - 2, y_of(coins) + 1}, money(coins), Anchor::end);
    }
    const auto pieces =
        static_cast<std::int64_t>(std::max(1.0, round_step(static_cast<double>(most_pieces_), 8)));
    for (std::int64_t sell = pieces; sell <= most_pieces_; sell += pieces) {
      sheet_.line({x_of(sell), foot}, {x_of(sell), foot + 1.5}, Look::crease);
      words({x_of(sell), foot + 5}, std::to_string(sell), Anchor::middle);
    }
    words({left - 2, top - 4}, report_.selling.currency.code + " a piece", Anchor::start);
    words({left + wide, foot + 10}, "pieces sold", Anchor::end);
  }

  /// Each number by itself, so that a step is upright and a gap is open.
  void curve() {
    PaperLine line;
    std::int64_t before = 0;
    for (const auto& [sell, each] : report_.quote.costs) {
      const double y = y_of(coins_of(each));
      if (sell != before + 1) flush(line);
      line.push_back({x_of(sell - 1), y});
      line.push_back({x_of(sell), y});
      before = sell;
    }
    flush(line);
    for (const auto& number : report_.quote.numbers) {
      const PaperPoint at{x_of(number.pieces.sell), y_of(coins_of(number.each))};
      sheet_.circle(at, 1.2, Look::black);
      words({at[0], at[1] - 2.5},
            std::to_string(number.pieces.sell) + ": " + money(coins_of(number.each)),
            number.pieces.sell * 10 > most_pieces_ * 9 ? Anchor::end : Anchor::middle, true);
    }
  }

  void flush(PaperLine& line) {
    if (!line.empty()) sheet_.open_line(std::move(line), Look::wall);
    line.clear();
  }

  /// A bar a number of pieces, all of them as long as the dearest piece costs.
  void where_it_goes() {
    double y = top + curve_high + between;
    words({0, y - 4}, "Where the money of a piece goes", Anchor::start, true);
    std::int64_t dearest = 1;
    for (const auto& cost : printed_) dearest = std::max(dearest, cost.each.coins);
    for (std::size_t i = 0; i < printed_.size(); ++i, y += bar_pitch) {
      words({left - 2, y + bar / 2 + 1},
            std::to_string(report_.quote.numbers[i].pieces.sell) + " pieces", Anchor::end);
      double x = left;
      for (std::size_t k = 0; k < printed_[i].parts.size(); ++k) {
        const double long_mm = wide * static_cast<double>(printed_[i].parts[k].each.coins) /
                               static_cast<double>(dearest);
        if (long_mm > 0) sheet_.rectangle({x, y}, long_mm, bar, hatching(k));
        x += long_mm;
      }
    }
    for (std::size_t k = 0; k < printed_.front().parts.size(); ++k, y += legend_row) {
      sheet_.rectangle({left, y}, 8, 4, hatching(k));
      std::string told;
      for (const auto& cost : printed_)
        told += (told.empty() ? "" : ", ") + amount_text(cost.parts[k].each);
      words({left + 11, y + 3}, name_of(printed_.front().parts[k].part) + ": " + told,
            Anchor::start);
    }
  }

  const QuoteReport& report_;
  Place where_;
  std::vector<PrintedCost> printed_;
  std::int64_t most_pieces_ = 1;
  double highest_ = 1;
  Drawing sheet_;
};

}  // namespace

Drawing quote_picture(const QuoteReport& report) { return Picture(report).drawing(); }

std::string quote_picture_svg(const QuoteReport& report) { return svg_of(quote_picture(report)); }

}  // namespace brimwright::reports
