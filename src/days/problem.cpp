#include "days/problem.h"

#include <algorithm>
#include <numeric>
#include <utility>

namespace brimwright::days {
namespace {

using std::chrono::days;
using std::chrono::duration_cast;
using std::chrono::minutes;
using std::chrono::seconds;

bool is_cut_same_day(const Line& line) { return line.cut_within && *line.cut_within < days(1); }

// Lye solution that is closed keeps longer; common practice, no source.
constexpr int most_nights_chilled = 4;

/// The last day she is there before `day`, which is not long before.
bool has_evening(const Span& span, int day) {
  return span.last_in(day - 1) >= std::max(0, day - most_nights_chilled);
}

Pouring pouring(const Line& line, const Span& span, int day) {
  Pouring pouring{.is_allowed = true, .unmould = day, .free = day + 1, .ready = 0};
  if (!is_cut_same_day(line)) {
    const int nights = static_cast<int>(std::chrono::ceil<days>(line.unmould_after).count());
    pouring.unmould = span.next_in(day + std::max(nights, 1));
    pouring.free = pouring.unmould;
    if (line.cut_within)
      pouring.is_allowed =
          pouring.unmould <= day + static_cast<int>(duration_cast<days>(*line.cut_within).count());
  }
  if (line.is_chilled && !has_evening(span, day)) pouring.is_allowed = false;
  pouring.ready = std::max(day + line.cure_days, pouring.unmould);
  return pouring;
}

seconds packing_time(const Delivery& delivery, const Studio& studio) {
  std::int64_t sold = delivery.ready;
  for (const Line& line : delivery.lines)
    for (const Batch& batch : line.batches) sold += batch.sold;
  return sold * studio.each_piece_packed;
}

seconds longest_work(const std::vector<Delivery>& deliveries) {
  seconds longest{};
  for (const Delivery& delivery : deliveries)
    for (const Line& line : delivery.lines)
      for (const Batch& batch : line.batches) longest = std::max(longest, batch.work);
  return longest;
}

}  // namespace

int there_from(const Span& span, int begin, const Lead& lead) {
  return lead ? span.next_open(begin) + *lead : begin;
}

Problem::Problem(const Studio& studio, const std::vector<Delivery>& deliveries, const Span& span,
                 int begin, std::vector<int> due)
    : studio_(&studio),
      span_(&span),
      begin_(begin),
      due_(std::move(due)),
      packed_from_(deliveries.size(), -1) {
  for (int day = 0; day < span.size(); ++day)
    hours_.push_back(day < begin ? seconds{} : span.hours(day));
  end_ = due_.empty() ? begin : *std::max_element(due_.begin(), due_.end());
  pack(deliveries);
  if (is_hopeless_) return;
  const seconds longest = longest_work(deliveries);
  for (std::size_t d = 0; d < deliveries.size(); ++d)
    for (std::size_t l = 0; l < deliveries[d].lines.size(); ++l) {
      LineRules rules{.line = &deliveries[d].lines[l], .delivery = d, .number = l};
      add_line(deliveries[d], rules, longest);
    }
}

void Problem::pack(const std::vector<Delivery>& deliveries) {
  std::vector<std::size_t> latest_first(deliveries.size());
  std::iota(latest_first.begin(), latest_first.end(), 0);
  std::stable_sort(latest_first.begin(), latest_first.end(),
                   [this](std::size_t a, std::size_t b) { return due_[a] > due_[b]; });
  for (const std::size_t d : latest_first) {
    seconds left = packing_time(deliveries[d], *studio_);
    int day = due_[d];
    while (--day >= begin_) {
      if (span_->hours(day).count() == 0) continue;
      auto& hours = hours_[static_cast<std::size_t>(day)];
      const seconds taken = std::min(left, hours);
      if (left.count() > 0 && taken.count() == 0) continue;
      packing_.push_back({d, day, taken});
      hours -= taken;
      left -= taken;
      if (left.count() == 0) break;
    }
    packed_from_[d] = day;
    const auto& ready_on = deliveries[d].ready_on;
    if (ready_on && day < span_->at(*ready_on)) is_hopeless_ = true;
    if (day < begin_ || day < there_from(*span_, begin_, deliveries[d].pack_lead))
      is_hopeless_ = true;
  }
}

void Problem::add_line(const Delivery& delivery, const LineRules& given, seconds longest) {
  LineRules rules = given;
  const Line& line = *rules.line;
  rules.is_cut_same_day = is_cut_same_day(line);
  rules.waits_idle = rules.is_cut_same_day && *line.cut_within - line.unmould_after < longest;
  rules.first_cast = there_from(*span_, begin_, line.cast_lead);
  const int there = std::max(begin_, there_from(*span_, begin_, line.make_lead));
  for (int day = 0; day < end_; ++day) {
    rules.on.push_back(pouring(line, *span_, day));
    rules.on.back().shares_lye =
        line.lye && has_evening(*span_, day) && span_->last_in(day - 1) >= there;
  }
  const std::size_t known = batches_.size();
  lines_.push_back(std::move(rules));
  for (std::size_t b = 0; b < line.batches.size(); ++b) {
    const auto same =
        std::find_if(batches_.begin() + static_cast<std::ptrdiff_t>(known), batches_.end(),
                     [&](const Alike& alike) { return are_alike(alike.batch, line.batches[b]); });
    if (same != batches_.end())
      same->numbers.push_back(b);
    else
      add_alike({.line = lines_.size() - 1, .batch = line.batches[b], .numbers = {b}},
                lines_.back());
  }
  (void)delivery;
}

void Problem::add_alike(Alike alike, const LineRules& rules) {
  const Line& line = *rules.line;
  const int there = there_from(*span_, begin_, line.make_lead);
  const int packed = packed_from_[rules.delivery];
  alike.busy = alike.batch.work;
  if (rules.waits_idle) alike.busy += line.unmould_after;
  alike.least_busy = alike.busy - (line.lye ? studio_->each_lye : seconds{});
  alike.first = there;
  if (line.is_chilled)
    while (alike.first < end_ && span_->last_in(alike.first - 1) < std::max(there, begin_))
      ++alike.first;
  if (!alike.batch.fills.empty()) alike.first = std::max(alike.first, rules.first_cast + 1);
  alike.last = std::min(packed, end_ - 1);
  while (alike.last >= alike.first && rules.on[static_cast<std::size_t>(alike.last)].ready > packed)
    --alike.last;
  if (alike.first > alike.last) is_hopeless_ = true;
  batches_.push_back(std::move(alike));
}

}  // namespace brimwright::days
