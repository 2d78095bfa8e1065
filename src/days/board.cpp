#include "days/board.h"

#include <algorithm>
#include <array>
#include <limits>

namespace brimwright::days {
namespace {

using std::chrono::seconds;

constexpr int no_limit = std::numeric_limits<int>::max();

std::size_t at(int day) { return static_cast<std::size_t>(day); }

int moulds_for(std::int64_t casts, const Mould& mould) {
  return static_cast<int>((casts + mould.cavities - 1) / mould.cavities);
}

void append(std::string& state, std::int64_t number) {
  state += std::to_string(number);
  state += ' ';
}

}  // namespace

Board::Board(const Problem& problem)
    : problem_(&problem),
      days_(at(problem.end()) + 1,
            DayUse{.sharing = std::vector<int>(problem.studio().lyes.size())}),
      casts_(problem.lines().size()),
      moulds_(problem.studio().moulds.size(), std::vector<int>(at(problem.end()) + 1)),
      rack_(at(problem.end()) + 1),
      casting_([this](std::size_t tray, int day) { return room_in_tray(tray, day); },
               [this](int day) { return room_for_casts(day); }) {
  constexpr std::size_t few_trays = 3;
  have_one_first_cast_ = problem.studio().trays.size() <= few_trays;
  for (const Alike& alike : problem.batches()) {
    auto& casts = casts_[alike.line];
    if (casts.size() < alike.batch.filled.size())
      casts.resize(alike.batch.filled.size(), std::vector<std::int64_t>(at(problem.end()) + 1));
    left_.push_back(static_cast<int>(alike.numbers.size()));
    all_left_ += left_.back();
    if (alike.batch.fills.empty()) continue;
    const int first = std::max(problem.lines()[alike.line].first_cast, problem.begin());
    have_one_first_cast_ &= !has_fills_ || first == first_cast_;
    first_cast_ = first;
    has_fills_ = true;
  }
}

int Board::room_in_tray(std::size_t tray, int day) const {
  const Tray& of = problem_->studio().trays[tray];
  const seconds hours = problem_->span().hours(day);
  if (hours.count() == 0) return 0;
  if (!of.is_counted) return no_limit;
  if (!of.sets_in || of.sets_in->count() == 0) return 1;
  return std::max(1, static_cast<int>(hours / *of.sets_in));
}

int Board::room_for_casts(int day) const {
  const seconds each = problem_->studio().each_tray_fill;
  if (problem_->span().hours(day).count() == 0) return 0;
  if (each.count() == 0) return no_limit;
  return static_cast<int>((problem_->hours(day) - days_[at(day)].busy) / each);
}

bool Board::fits_in_hours(const Alike& alike, int day) const {
  if (problem_->span().hours(day).count() == 0) return false;
  const DayUse& use = days_[at(day)];
  const seconds hours = problem_->hours(day);
  if (use.busy + alike.busy - saved_by_one_more(alike, day) > hours) return false;
  const LineRules& rules = problem_->lines()[alike.line];
  if (!rules.is_cut_same_day) return true;
  const seconds wait = rules.waits_idle ? seconds{} : seconds(rules.line->unmould_after);
  return use.busy_cut_same_day + alike.busy + std::max(use.longest_wait, wait) <= hours;
}

seconds Board::saved_by_one_more(const Alike& alike, int day) const {
  const auto& lye = problem_->lines()[alike.line].line->lye;
  if (!lye || !on(alike, day).shares_lye) return {};
  const bool fills_up = days_[at(day)].sharing[*lye] % problem_->studio().lyes[*lye].batches_in_pot;
  return fills_up ? problem_->studio().each_lye : seconds{};
}

bool Board::fits_in_vessels(const Alike& alike, int day) const {
  const DayUse& use = days_[at(day)];
  const Studio& studio = problem_->studio();
  return use.batches + 1 <= studio.batches_a_day.value_or(no_limit) &&
         use.whippings + alike.batch.whippings <= studio.whippings_a_day.value_or(no_limit);
}

bool Board::fits_on_rack(const Alike& alike, int day) const {
  const auto& places = problem_->studio().rack_places;
  if (!places) return true;
  const Pouring& pouring = on(alike, day);
  const int end = std::min(pouring.ready, problem_->end());
  for (int t = pouring.unmould; t < end; ++t)
    if (rack_[at(t)] + alike.batch.pieces > *places) return false;
  return alike.batch.pieces <= *places;
}

int Board::moulds_more(const Alike& alike, std::size_t part, int day) const {
  const auto& [kind, more] = alike.batch.filled[part];
  const Mould& mould = problem_->studio().moulds[kind];
  const std::int64_t casts = casts_[alike.line][part][at(day)];
  return moulds_for(casts + more, mould) - moulds_for(casts, mould);
}

bool Board::has_moulds(const Alike& alike, int day) const {
  const auto& moulds = problem_->studio().moulds;
  std::vector<int> more(moulds.size());
  for (std::size_t part = 0; part < alike.batch.filled.size(); ++part)
    more[alike.batch.filled[part].mould] += moulds_more(alike, part, day);
  const int end = std::min(on(alike, day).free, problem_->end());
  for (std::size_t kind = 0; kind < moulds.size(); ++kind) {
    if (more[kind] == 0) continue;
    if (more[kind] > moulds[kind].owned) return false;
    for (int t = day; t < end; ++t)
      if (moulds_[kind][at(t)] + more[kind] > moulds[kind].owned) return false;
  }
  return true;
}

bool Board::cast_for(const Alike& alike, int day) {
  const int first_cast = problem_->lines()[alike.line].first_cast;
  const int first = std::max(first_cast, day - problem_->studio().cast_ahead_at_most.value_or(day));
  for (const Fills& fills : alike.batch.fills)
    for (int i = 0; i < fills.count; ++i)
      if (!casting_.add({.tray = fills.tray,
                         .first = std::max(first, problem_->begin()),
                         .last = day - 1,
                         .batch = poured_.size()}))
        return false;
  return true;
}

void Board::put(const Alike& alike, int day, int sign) {
  const Pouring& pouring = on(alike, day);
  const LineRules& rules = problem_->lines()[alike.line];
  DayUse& use = days_[at(day)];
  const auto& lye = pouring.shares_lye ? rules.line->lye : std::nullopt;
  if (lye && sign < 0) --use.sharing[*lye];
  use.busy += sign * (alike.busy - saved_by_one_more(alike, day));
  if (lye && sign > 0) ++use.sharing[*lye];
  if (rules.is_cut_same_day) use.busy_cut_same_day += sign * alike.busy;
  use.batches += sign;
  use.whippings += sign * alike.batch.whippings;
  for (std::size_t part = 0; part < alike.batch.filled.size(); ++part) {
    const auto& [kind, more] = alike.batch.filled[part];
    auto& casts = casts_[alike.line][part][at(day)];
    if (sign < 0) casts -= more;
    const int moulds = sign * moulds_more(alike, part, day);
    if (sign > 0) casts += more;
    for (int t = day; t < std::min(pouring.free, problem_->end()); ++t)
      moulds_[kind][at(t)] += moulds;
  }
  for (int t = pouring.unmould; t < std::min(pouring.ready, problem_->end()); ++t)
    rack_[at(t)] += sign * alike.batch.pieces;
}

bool Board::pour(std::size_t which, int day) {
  const Alike& alike = problem_->batches()[which];
  if (left_[which] == 0 || day < alike.first || day > alike.last) return false;
  if (!on(alike, day).is_allowed || !fits_in_hours(alike, day) || !fits_in_vessels(alike, day) ||
      !has_moulds(alike, day) || !fits_on_rack(alike, day))
    return false;
  auto before = casting_.fillings();
  if (has_fills_ && !cast_for(alike, day)) {
    casting_.restore(std::move(before));
    return false;
  }
  put(alike, day, 1);
  DayUse& use = days_[at(day)];
  waits_before_.push_back(use.longest_wait);
  const LineRules& rules = problem_->lines()[alike.line];
  if (rules.is_cut_same_day && !rules.waits_idle)
    use.longest_wait = std::max(use.longest_wait, seconds(rules.line->unmould_after));
  fillings_before_.push_back(std::move(before));
  poured_.push_back({which, day});
  --left_[which];
  --all_left_;
  return true;
}

void Board::undo() {
  const auto [which, day] = poured_.back();
  poured_.pop_back();
  put(problem_->batches()[which], day, -1);
  days_[at(day)].longest_wait = waits_before_.back();
  waits_before_.pop_back();
  casting_.restore(std::move(fillings_before_.back()));
  fillings_before_.pop_back();
  ++left_[which];
  ++all_left_;
}

int Board::first_cast_for(int day) const {
  return std::max(problem_->begin(), day - problem_->studio().cast_ahead_at_most.value_or(day));
}

std::chrono::seconds Board::hours_for_casts_before(int day) const {
  const int first = first_cast_for(day);
  seconds hours{};
  for (int t = first; t < day; ++t) hours += problem_->hours(t) - days_[at(t)].busy;
  for (const auto& filling : casting_.fillings())
    if (filling.first >= first) hours -= problem_->studio().each_tray_fill;  // it cannot go earlier
  return hours;
}

int Board::fillings_before(std::size_t tray, int day) const {
  const int first = first_cast_for(day);
  std::int64_t room = 0;
  for (int t = first; t < day; ++t) room += room_in_tray(tray, t);
  for (const auto& filling : casting_.fillings())
    if (filling.tray == tray && filling.first >= first) --room;
  return static_cast<int>(std::min<std::int64_t>(room, no_limit));
}

/// Where whatever is still to be cast may be on any day before, all that matters is how many
/// fillings of each set of trays these days still take: what can be cast at once is then cast
/// (fillings that find a place are the independent sets of a matroid, of which this is the rank).
void Board::append_room_for_casts(std::string& state, int day) const {
  std::vector<int> wanted(problem_->studio().trays.size());
  for (std::size_t i = 0; i < left_.size(); ++i)
    for (const Fills& fills : problem_->batches()[i].batch.fills)
      wanted[fills.tray] += left_[i] * fills.count;
  const auto room = [&](unsigned trays) {
    Casting casting = casting_;
    int count = 0;
    for (std::size_t tray = 0; tray < wanted.size(); ++tray)
      for (int i = 0; (trays >> tray & 1U) != 0 && i < wanted[tray]; ++i)
        count += casting.add({.tray = tray, .first = first_cast_, .last = day - 1, .batch = 0});
    return count;
  };
  const unsigned all = (1U << wanted.size()) - 1;
  int sum = 0;
  for (const int one : wanted) sum += one;
  const int most = room(all);
  append(state, most);
  for (unsigned trays = 1; trays < all && most < sum; ++trays) append(state, room(trays));
  state += '/';
}

/// Which days before still take casts, and which of those there could move to make room.
void Board::append_casting(std::string& state, int day) const {
  if (!problem_->studio().cast_ahead_at_most && have_one_first_cast_) {
    append_room_for_casts(state, day);
    return;
  }
  int first = first_cast_for(day);
  for (bool grows = true; grows;) {
    grows = false;
    for (const auto& filling : casting_.fillings())
      if (filling.last >= first && filling.first < first) {
        first = filling.first;
        grows = true;
      }
  }
  std::vector<std::array<int, 3>> movable;
  for (const auto& filling : casting_.fillings())
    if (filling.last >= first)
      movable.push_back({static_cast<int>(filling.tray), filling.first, filling.last});
  std::sort(movable.begin(), movable.end());
  for (const auto& filling : movable)
    for (const int number : filling) append(state, number);
  state += '/';
  for (int t = first; t < day; ++t) append(state, room_for_casts(t));
  state += '/';
}

std::string Board::state(int day) const {
  std::string state;
  append(state, day);
  for (const int left : left_) append(state, left);
  if (has_fills_) append_casting(state, day);
  for (const auto& kind : moulds_) {
    for (int t = day; t < problem_->end() && kind[at(t)] > 0; ++t) append(state, kind[at(t)]);
    state += '/';
  }
  if (problem_->studio().rack_places)
    for (int t = day; t < problem_->end(); ++t) append(state, rack_[at(t)]);
  return state;
}

}  // namespace brimwright::days
