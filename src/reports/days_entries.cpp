#include "reports/days_report.h"
#include "reports/plan_words.h"
#include "units/letters.h"
#include "units/printing.h"
#include "units/shown_text.h"
#include "units/weight_text.h"
#include "units/wording.h"

#include <algorithm>
#include <array>
#include <map>
#include <tuple>
#include <utility>

namespace brimwright::reports {
namespace {

using Act = DayEntry::Act;
using days::Day;

constexpr auto cooled_lye =
    "Cooled lye solution: closed, marked as caustic, in a locked fridge of its own, never one for "
    "food.";

constexpr auto standing_lye =
    "Lye solution that stands: closed, marked as caustic, locked away, never beside food.";

/// Used colder than the room; nothing is known of it else.
bool is_kept_cold(const DaysReport::Lye& lye) {
  return lye.of != planning::PotOfBatch::For::base ||
         (lye.used_at && *lye.used_at < Temperature::in_celsius(20));
}

std::string numbers(const std::vector<std::int64_t>& batches, std::size_t of) {
  std::string text = batches.size() == 1 ? "batch " : "batches ";
  for (std::size_t i = 0; i < batches.size(); ++i)
    text += (i == 0 ? "" : i + 1 == batches.size() ? " and " : ", ") + std::to_string(batches[i]);
  return text + " of " + std::to_string(of);
}

/// A seller's name in letters that may stand in a key.
std::string key_part(const std::string& name) {
  std::string part;
  for (const char c : in_small_letters(name))
    if (is_letter(c) || (c >= '0' && c <= '9')) part += c;
  return part.empty() ? "shop" : part;
}

class Entries {
 public:
  explicit Entries(const DaysReport& report) : report_(report) {
    for (const auto& delivery : report.deliveries)
      for (std::size_t l = 0; l < delivery.lines.size(); ++l)
        batches_of_[{delivery.asked, l}] += delivery.lines[l].batches.size();
  }

  std::vector<DayEntry> all() {
    orders();
    casts();
    lyes();
    batches();
    packing();
    due_days();
    std::stable_sort(entries_.begin(), entries_.end(), [](const DayEntry& a, const DayEntry& b) {
      return std::pair(a.day, a.act) < std::pair(b.day, b.act);
    });
    return std::move(entries_);
  }

  std::string whom_for(const DaysReport::Lye& lye) const {
    std::map<std::pair<std::size_t, std::size_t>, std::vector<std::int64_t>> numbers_of;
    std::map<std::pair<std::size_t, std::size_t>, const Scheduled*> first;
    for (const std::size_t b : lye.batches()) {
      const Scheduled& one = report_.schedule.batches[b];
      numbers_of[{one.delivery, one.line}].push_back(batch(one).number);
      first.emplace(std::pair(one.delivery, one.line), &one);
    }
    std::string text;
    for (const auto& [line, numbers] : numbers_of)
      text += (text.empty() ? "" : "; ") + which(*first.at(line), numbers);
    return text;
  }

 private:
  using Scheduled = days::ScheduledBatch;

  const days::Delivery& delivery(const Scheduled& one) const {
    return report_.deliveries[one.delivery];
  }
  const days::Batch& batch(const Scheduled& one) const {
    return delivery(one).lines[one.line].batches[one.batch];
  }
  const DaysReport::Line& line(const Scheduled& one) const {
    return report_.asked[delivery(one).asked].lines[one.line];
  }
  std::size_t batches_of(const Scheduled& one) const {
    return batches_of_.at({delivery(one).asked, one.line});
  }
  std::string which(const Scheduled& one, const std::vector<std::int64_t>& numbers_of) const {
    const std::size_t of = batches_of(one);
    return line(one).name + (of == 1 ? "" : ", " + numbers(numbers_of, of));
  }
  std::string key(const char* act, const Scheduled& one) const {
    return std::string(act) + "-" + std::to_string(one.line + 1) + "-" +
           std::to_string(batch(one).number);
  }

  void orders() {
    std::map<std::string, int> known;
    for (const auto& one : report_.ordering) {
      const std::string key = "order-" + (one.is_unlisted ? "unlisted" : key_part(one.seller));
      const int number = ++known[key];
      std::string what;
      for (const auto& material : one.materials) what += (what.empty() ? "" : ", ") + material;
      entries_.push_back(
          {.day = one.ordered,
           .act = Act::order,
           .asked = one.asked,
           .key = key + (number == 1 ? "" : "-" + std::to_string(number)),
           .text = (one.seller.empty() ? "Buy " : "Order from " + one.seller + ": ") + what +
                   " (needed on " + weekday_and_date(one.needed) + ")"});
    }
  }

  /// One pot for several batches of a day, weighed out and made on the evening before.
  void lyes() {
    using For = planning::PotOfBatch::For;
    for (std::size_t i = 0; i < report_.lyes.size(); ++i) {
      const DaysReport::Lye& lye = report_.lyes[i];
      const auto batches = lye.batches();
      const Scheduled& one = report_.schedule.batches[batches.front()];
      const bool is_of_topping = lye.of == For::topping;
      DayEntry told{.day = lye.made,
                    .act = Act::chill,
                    .asked = delivery(one).asked,
                    .key = key(is_of_topping ? "lye-topping" : "lye", one),
                    .text = {},
                    .files = {},
                    .caution = is_kept_cold(lye) ? cooled_lye : standing_lye,
                    .lye = i};
      for (const std::size_t b : batches)
        for (const std::string& file : line(report_.schedule.batches[b]).files)
          if (std::find(told.files.begin(), told.files.end(), file) == told.files.end())
            told.files.push_back(file);
      told.text = "In the evening, for " + weekday_and_date(one.poured) +
                  ": weigh out and make one lye solution, " +
                  on_scale(lye.pot.lye, lye.pot.lye_step, Rounded::up) + ", together for " +
                  (is_of_topping ? "the toppings of " : "") + whom_for(lye);
      entries_.push_back(std::move(told));
    }
  }

  /// What is cast in one kind of tray on one day, for a line.
  void casts() {
    using Where = std::tuple<Day, std::size_t, std::size_t, std::size_t>;  // day, asked, line, tray
    std::map<Where, std::vector<const days::ScheduledCasts*>> groups;
    for (const auto& cast : report_.schedule.casts) {
      const Scheduled& one = report_.schedule.batches[cast.batch];
      groups[{cast.day, delivery(one).asked, one.line, cast.tray}].push_back(&cast);
    }
    std::map<std::string, int> parts;
    for (const auto& [where, casts] : groups) cast(std::get<3>(where), casts, parts);
  }

  void cast(std::size_t tray, const std::vector<const days::ScheduledCasts*>& casts,
            std::map<std::string, int>& parts) {
    const auto batch_of = [this](const days::ScheduledCasts* one) -> const Scheduled& {
      return report_.schedule.batches[one->batch];
    };
    const days::ScheduledCasts* first =
        *std::min_element(casts.begin(), casts.end(), [&](const auto* a, const auto* b) {
          return batch(batch_of(a)).number < batch(batch_of(b)).number;
        });
    const Scheduled& one = batch_of(first);
    DayEntry told{.day = first->day,
                  .act = Act::cast,
                  .asked = delivery(one).asked,
                  .key = key("cast", one) + "-" + std::to_string(tray + 1),
                  .text = {},
                  .files = line(one).files};
    if (const int part = ++parts[told.key]; part > 1) told.key += "-" + std::to_string(part);
    int count = 0;
    for (const auto* cast : casts) {
      told.batches.push_back(batch(batch_of(cast)).number);
      count += cast->count;
    }
    std::sort(told.batches.begin(), told.batches.end());
    told.text = "Cast beforehand: " + report_.studio.trays[tray].name + ", " +
                counted(count, "filling") + ", for " + which(one, told.batches);
    told.time = count * report_.studio.each_tray_fill;
    entries_.push_back(std::move(told));
  }

  /// The batches of a line that have the same act on the same day stand together.
  template <class DayOf>
  std::map<std::pair<std::pair<std::size_t, std::size_t>, Day>, std::vector<const Scheduled*>>
  together(DayOf day_of) const {
    std::map<std::pair<std::pair<std::size_t, std::size_t>, Day>, std::vector<const Scheduled*>>
        groups;
    for (const auto& one : report_.schedule.batches)
      if (const std::optional<Day> day = day_of(one))
        groups[{{delivery(one).asked, one.line}, *day}].push_back(&one);
    for (auto& [group, ones] : groups)
      std::stable_sort(ones.begin(), ones.end(), [this](const Scheduled* a, const Scheduled* b) {
        return batch(*a).number < batch(*b).number;
      });
    return groups;
  }

  DayEntry entry(Day day, Act act, const char* name, const std::vector<const Scheduled*>& ones) {
    DayEntry entry{.day = day,
                   .act = act,
                   .asked = delivery(*ones.front()).asked,
                   .key = key(name, *ones.front()),
                   .text = {},
                   .files = line(*ones.front()).files};
    for (const Scheduled* one : ones) {
      entry.batches.push_back(batch(*one).number);
      entry.pieces += batch(*one).pieces;
      if (act != Act::make) continue;
      entry.time += batch(*one).work;
      if (one->takes_lye_of_another) entry.time -= report_.studio.each_lye;
    }
    return entry;
  }

  void batches() {
    const auto chilled = [this](const Scheduled& one) {
      return delivery(one).lines[one.line].is_chilled ? one.chilled : std::nullopt;
    };
    for (const auto& [group, ones] : together(chilled)) {
      DayEntry told = entry(group.second, Act::chill, "chill", ones);
      told.text = "In the evening, for " + weekday_and_date(ones.front()->poured) +
                  ": weigh out, and set fats or lye solution cold, " +
                  which(*ones.front(), told.batches);
      told.caution = cooled_lye;
      entries_.push_back(std::move(told));
    }
    for (const auto& [group, ones] :
         together([](const auto& one) { return std::optional(one.poured); })) {
      DayEntry told = entry(group.second, Act::make, "make", ones);
      told.text = "Make " + which(*ones.front(), told.batches) + ": " +
                  counted(told.pieces, "piece") + moulds_for(ones);
      entries_.push_back(std::move(told));
    }
    for (const auto& [group, ones] :
         together([](const auto& one) { return std::optional(one.unmoulded); })) {
      const bool is_fresh = ones.front()->unmoulded == ones.front()->poured;
      DayEntry told =
          entry(group.second, is_fresh ? Act::unmould_fresh : Act::unmould, "unmould", ones);
      const days::Line& of = delivery(*ones.front()).lines[ones.front()->line];
      told.text =
          std::string(of.is_cut ? "Unmould and cut " : "Unmould ") +
          which(*ones.front(), told.batches) + ", " + in_hours(of.unmould_after) +
          " after the pour" +
          (of.is_cut && of.cut_within ? " and within " + in_hours(*of.cut_within) + " of it" : "");
      entries_.push_back(std::move(told));
    }
    for (const auto& [group, ones] :
         together([](const auto& one) { return std::optional(one.cured); })) {
      DayEntry told = entry(group.second, Act::cured, "cured", ones);
      const days::Line& of = delivery(*ones.front()).lines[ones.front()->line];
      told.text = "Cured: " + which(*ones.front(), told.batches) + ", " +
                  counted(of.cure_days, "day") + " from the pour";
      entries_.push_back(std::move(told));
    }
  }

  /// ", 2 moulds of Plain bar", for what is poured that day.
  std::string moulds_for(const std::vector<const Scheduled*>& ones) const {
    std::string text;
    const std::size_t parts = batch(*ones.front()).filled.size();
    for (std::size_t part = 0; part < parts; ++part) {
      const auto& mould = report_.studio.moulds[batch(*ones.front()).filled[part].mould];
      std::int64_t casts = 0;
      for (const Scheduled* one : ones) casts += batch(*one).filled[part].casts;
      const std::int64_t moulds = (casts + mould.cavities - 1) / mould.cavities;
      if (moulds > 0) text += ", " + counted(moulds, "mould") + " of " + mould.name;
    }
    return text;
  }

  std::int64_t sold(const days::Delivery& delivery) const {
    std::int64_t sold = delivery.ready;
    for (const auto& line : delivery.lines)
      for (const auto& batch : line.batches) sold += batch.sold;
    return sold;
  }

  /// ", 12 of them made already (Plain bars, batch 2026-10-20A)".
  std::string of_stock(const days::Delivery& delivery) const {
    if (delivery.ready == 0) return "";
    std::string from;
    for (const ReadyLine& line : report_.asked[delivery.asked].ready.lines)
      if (!line.batches.empty())
        from += (from.empty() ? "" : "; ") + line.name + ", " + batches_words(line.batches);
    return (delivery.ready == sold(delivery)
                ? std::string(", all made already (")
                : ", " + std::to_string(delivery.ready) + " of them made already (") +
           from + ")";
  }

  /// "December market", or of one that is parted "December market, first part".
  std::string whom(std::size_t d) const {
    const auto& delivery = report_.deliveries[d];
    const auto parts =
        std::count_if(report_.deliveries.begin(), report_.deliveries.end(),
                      [&](const days::Delivery& other) { return other.asked == delivery.asked; });
    std::string name = report_.asked[delivery.asked].name;
    if (parts == 1) return name;
    return name + (delivery.is_rest ? ", the rest" : ", what is in time");
  }
  std::string part_of_key(std::size_t d) const { return report_.deliveries[d].is_rest ? "2" : "1"; }

  void packing() {
    std::map<std::size_t, int> all, so_far;
    for (const auto& one : report_.schedule.packing) ++all[one.delivery];
    for (const auto& one : report_.schedule.packing) {
      const int part = ++so_far[one.delivery];
      const std::int64_t pieces = sold(report_.deliveries[one.delivery]);
      entries_.push_back(
          {.day = one.day,
           .act = Act::pack,
           .asked = report_.deliveries[one.delivery].asked,
           .key = "pack-" + part_of_key(one.delivery) + "-" + std::to_string(part),
           .text = "Pack " + counted(pieces, "piece") + " for " + whom(one.delivery) +
                   of_stock(report_.deliveries[one.delivery]) +
                   (all[one.delivery] == 1 ? ""
                                           : ", day " + std::to_string(part) + " of " +
                                                 std::to_string(all[one.delivery])),
           .pieces = pieces,
           .time = one.time});
    }
  }

  void due_days() {
    for (std::size_t d = 0; d < report_.deliveries.size(); ++d)
      entries_.push_back({.day = report_.schedule.due[d],
                          .act = Act::due,
                          .asked = report_.deliveries[d].asked,
                          .key = "due-" + part_of_key(d),
                          .text = std::string(report_.deliveries[d].due ? "Due: " : "Ready: ") +
                                  whom(d) + ", " + counted(sold(report_.deliveries[d]), "piece"),
                          .pieces = sold(report_.deliveries[d])});
  }

  const DaysReport& report_;
  std::map<std::pair<std::size_t, std::size_t>, std::size_t> batches_of_;
  std::vector<DayEntry> entries_;
};

}  // namespace

std::string name_of(DayEntry::Act act) {
  switch (act) {
    case Act::order:
      return "order";
    case Act::cast:
      return "cast";
    case Act::chill:
      return "chill";
    case Act::make:
      return "make";
    case Act::unmould:
    case Act::unmould_fresh:
      return "unmould";
    case Act::cured:
      return "cured";
    case Act::pack:
      return "pack";
    case Act::due:
      return "due";
  }
  return "";
}

std::string weekday_and_date(Day day) {
  constexpr std::array names = {"Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"};
  return std::string(names[std::chrono::weekday(day).c_encoding()]) + " " +
         iso_date(std::chrono::year_month_day(day));
}

std::string whom_for(const DaysReport::Lye& lye, const DaysReport& report) {
  return Entries(report).whom_for(lye);
}

std::vector<DayEntry> entries_of(const DaysReport& report) { return Entries(report).all(); }

}  // namespace brimwright::reports
