#include "service/order_rest.h"

#include "reports/plan_words.h"
#include "runs/days_reading.h"
#include "runs/studio_file.h"
#include "service/order_planning.h"
#include "units/reading.h"
#include "units/shown_text.h"
#include "units/wording.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <utility>
#include <vector>

namespace brimwright::service {
namespace {

constexpr int most_tries = 300;  // of one piece fewer taken, one after the other

runs::Order left_of(const runs::Order& order, const reports::ReadyOrder& ready) {
  runs::Order rest = order;
  rest.lines.clear();
  for (std::size_t i = 0; i < order.lines.size(); ++i) {
    runs::OrderLine line = order.lines[i];
    line.pieces = ready.lines[i].to_make();
    if (line.pieces > 0) rest.lines.push_back(std::move(line));
  }
  return rest;
}

/// Puts one piece of the last batch back.
void put_back(reports::ReadyLine& line) {
  reports::ReadyBatch& last = line.batches.back();
  const std::int64_t before = last.pieces--;
  if (last.pieces == 0) return line.batches.pop_back();
  if (!last.cost) return;
  for (auto& sum : last.cost->sums)
    sum.coins *= trade::Fraction(last.pieces) / trade::Fraction(before);
}

/// Lines that are planned together, and how few of their pieces can be made.
class Unit {
 public:
  Unit(const runs::Order& order, std::vector<std::size_t> lines, reports::ReadyOrder& ready,
       const moulds::Library& library, const Caller& caller)
      : order_(order), lines_(std::move(lines)), ready_(ready) {
    runs::Order part = order;
    part.lines.clear();
    for (const std::size_t i : lines_) part.lines.push_back(order.lines[i]);
    runs_ = ordered_runs(part, library, caller);
  }

  void take_what_can_be() {
    if (is_nothing() || can_be_made()) return;
    const std::string why = why_not_;
    const reports::ReadyOrder all = ready_;
    for (int tries = 0; tries < most_tries && give_one_back(); ++tries)
      if (can_be_made()) return note(all, why);
    for (const std::size_t i : lines_) ready_.lines[i].batches.clear();
    plan();  // what cannot be made at all is told as ever
    note(all, why);
  }

 private:
  bool is_nothing() const {
    return std::all_of(lines_.begin(), lines_.end(),
                       [&](std::size_t i) { return ready_.lines[i].to_make() == 0; });
  }

  bool can_be_made() {
    try {
      plan();
      return true;
    } catch (const UserError& error) {
      why_not_ = error.parts().problem;
      return false;
    }
  }

  void plan() {
    OrderedRuns wanted;
    std::vector<std::size_t> from;
    for (std::size_t k = 0; k < lines_.size(); ++k) {
      runs_[k]->line.pieces = ready_.lines[lines_[k]].to_make();
      if (runs_[k]->line.pieces == 0) continue;
      wanted.push_back(std::move(runs_[k]));
      from.push_back(k);
    }
    const auto put_home = [&] {
      for (std::size_t k = 0; k < from.size(); ++k) runs_[from[k]] = std::move(wanted[k]);
    };
    try {
      planned_order(wanted, 1);
    } catch (...) {
      put_home();
      throw;
    }
    put_home();
  }

  /// Of the line that takes most.
  bool give_one_back() {
    const auto most = *std::max_element(lines_.begin(), lines_.end(), [&](auto a, auto b) {
      return ready_.lines[a].taken() < ready_.lines[b].taken();
    });
    if (ready_.lines[most].taken() == 0) return false;
    put_back(ready_.lines[most]);
    return true;
  }

  void note(const reports::ReadyOrder& all, const std::string& why) {
    for (const std::size_t i : lines_) {
      const auto& line = ready_.lines[i];
      const std::int64_t left = all.lines[i].taken() - line.taken();
      if (left > 0)
        ready_.notes.push_back(
            {Severity::note, on_one_line(line.name) + ": " + std::to_string(left) +
                                 " more of those that are ready are left, as just " +
                                 std::to_string(all.lines[i].to_make()) +
                                 " cannot be made: " + why + "."});
    }
  }

  const runs::Order& order_;
  std::vector<std::size_t> lines_;
  reports::ReadyOrder& ready_;
  OrderedRuns runs_;
  std::string why_not_;
};

/// The lines that are planned as one: each by itself, those with one word together.
std::vector<std::vector<std::size_t>> units_of(const runs::Order& order) {
  std::vector<std::vector<std::size_t>> units;
  std::map<std::string, std::size_t> known;
  for (std::size_t i = 0; i < order.lines.size(); ++i) {
    const std::string& word = order.lines[i].together;
    const auto [unit, is_new] = known.try_emplace(word, units.size());
    if (word.empty() || is_new)
      units.push_back({i});
    else
      units[unit->second].push_back(i);
    if (word.empty()) known.erase(word);
  }
  return units;
}

std::optional<runs::StudioDays> days_of(const runs::Order& order, const moulds::Library& library) {
  try {
    const auto studio = runs::studio_for(order.lines.front().run, library);
    if (!studio.fields()) return std::nullopt;
    return runs::read_days(studio);
  } catch (const UserError&) {
    return std::nullopt;  // days tell what is wrong with them
  }
}

}  // namespace

RestOfOrder rest_of(const runs::Order& order, std::int64_t times, const ReadyBy& by,
                    const moulds::Library& library, const Caller& caller) {
  RestOfOrder rest{.ready = ready_for(order, times, by, library), .order = order};
  for (const auto& lines : units_of(order))
    if (std::any_of(lines.begin(), lines.end(),
                    [&](std::size_t i) { return rest.ready.lines[i].taken() > 0; }))
      Unit(order, lines, rest.ready, library, caller).take_what_can_be();
  rest.order = left_of(order, rest.ready);
  return rest;
}

ReadyBy ready_by(const runs::Order& order, std::optional<days::Day> due, const std::string& today,
                 const moulds::Library& library) {
  if (!due && order.due) due = days::Day(*order.due);
  if (!due || today.empty()) return {today, today};
  const days::Day from = read_date(today, {});
  std::int64_t pieces = 0;
  for (const runs::OrderLine& line : order.lines) pieces += line.pieces;
  const auto studio = days_of(order, library);
  days::Day day = *due;
  std::chrono::seconds left = studio ? pieces * studio->each_piece_packed : std::chrono::seconds{};
  while (--day > from) {
    if (!studio) break;
    const auto hours = studio->calendar.hours(day);
    if (hours.count() == 0) continue;
    left -= std::min(left, hours);
    if (left.count() == 0) break;
  }
  const days::Day last = std::max(day, from);
  return {today, reports::iso_date(std::chrono::year_month_day(last))};
}

}  // namespace brimwright::service
