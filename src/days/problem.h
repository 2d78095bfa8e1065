#pragma once

#include "days/span.h"
#include "days/work.h"

#include <chrono>
#include <cstddef>
#include <vector>

namespace brimwright::days {

/// What follows where a line is poured on a day, all by place in the span.
struct Pouring {
  bool is_allowed = false;  // the knife can come in time
  int unmould = 0;          // cut as well
  int free = 0;             // the mould can be filled again
  int ready = 0;            // cured
  bool shares_lye = false;  // with other batches of the day: it can be made on the evening before
};

/// A line of a delivery with the rules for its days.
struct LineRules {
  const Line* line = nullptr;
  std::size_t delivery = 0, number = 0;  // of the delivery, in it
  std::vector<Pouring> on = {};          // by day
  bool is_cut_same_day = false;
  /// No work of the day may be longer than the knife can wait, or nothing is begun meanwhile.
  bool waits_idle = false;
  int first_cast = 0;
};

/// Batches that are all alike.
struct Alike {
  std::size_t line = 0;               // of the problem's
  Batch batch = {};                   //
  std::vector<std::size_t> numbers;   // which of the line's
  std::chrono::seconds busy{};        // what it takes of a day
  std::chrono::seconds least_busy{};  // where another batch's lye does for it too
  int first = 0, last = -1;           // days on which it may be poured
};

/// Time for packing, kept free before a due day.
struct Packing {
  std::size_t delivery;
  int day;
  std::chrono::seconds time;
};

/// Whether all of it can be made from the day `begin` on, each delivery packed before its due day.
///
/// What is no choice is settled here: packing takes the last hours before each due day, the latest
/// due day first, and all of a delivery has cured, or is ready, by then; a delivery that takes no
/// time to pack is packed on the last making day. What is to be bought is ordered on the first day
/// that is no day off. A cast is unmoulded, and cut, on the first day she is there once its hours
/// are over, which are counted from the hour it was poured, so that 24 hours are over on the next
/// day; its mould can be filled again on that day, but never twice on one. What is chilled before
/// it is poured is set cold on the last day before on which she is there, and stands so for a few
/// nights at most. Batches of a day whose lye is of one kind share it where it can be made on such
/// a day, the materials there: one pot for as many as it holds, each but the first of a pot saving
/// the time of a lye.
class Problem {
 public:
  /// `due` are places in `span`, one a delivery. The studio and the deliveries must outlive this.
  Problem(const Studio& studio, const std::vector<Delivery>& deliveries, const Span& span,
          int begin, std::vector<int> due);

  const Studio& studio() const { return *studio_; }
  const Span& span() const { return *span_; }
  int begin() const { return begin_; }
  int end() const { return end_; }  // the last due day
  /// Hours of a day that packing leaves.
  std::chrono::seconds hours(int day) const { return hours_[static_cast<std::size_t>(day)]; }
  const std::vector<LineRules>& lines() const { return lines_; }
  const std::vector<Alike>& batches() const { return batches_; }
  const std::vector<Packing>& packing() const { return packing_; }
  /// Some batch has no day, or a delivery no time to be packed.
  bool is_hopeless() const { return is_hopeless_; }

 private:
  void pack(const std::vector<Delivery>& deliveries);
  void add_line(const Delivery& delivery, const LineRules& rules, std::chrono::seconds longest);
  void add_alike(Alike alike, const LineRules& rules);

  const Studio* studio_;
  const Span* span_;
  int begin_, end_ = 0;
  std::vector<int> due_, packed_from_;
  std::vector<std::chrono::seconds> hours_;
  std::vector<LineRules> lines_;
  std::vector<Alike> batches_;
  std::vector<Packing> packing_;
  bool is_hopeless_ = false;
};

/// The day on which what is ordered as soon as can be is there, of what has that lead.
int there_from(const Span& span, int begin, const Lead& lead);

}  // namespace brimwright::days
