#include "service/day_batches.h"

#include <algorithm>
#include <cstdint>
#include <variant>

namespace brimwright::service {
namespace {

using std::chrono::seconds;

/// Beside what each batch takes: for the pieces, and for what is melted and run over them.
seconds work_on(const planning::Batch& batch, const planning::Run& run,
                const runs::StudioDays& studio) {
  seconds work = batch.pieces * studio.each_piece_made;
  for (const auto& decoration : run.decorations)
    if (std::holds_alternative<planning::Drizzle>(decoration.made)) work += studio.each_tray_fill;
  return work;
}

int whippings_of(const planning::Batch& batch) {
  std::int64_t count = 0;
  for (const auto& whipping : batch.whippings) count += whipping.count;
  return static_cast<int>(count);
}

/// Runs that are poured together share moulds of one kind.
void fill(days::Batch& to, std::size_t mould, std::int64_t casts) {
  const auto known =
      std::find_if(to.filled.begin(), to.filled.end(),
                   [&](const days::Filled& filled) { return filled.mould == mould; });
  if (known == to.filled.end())
    to.filled.push_back({mould, casts});
  else
    known->casts += casts;
}

/// A batch of a plan's, on top of what `to` has already.
void add(days::Batch& to, const planning::Run& run, const planning::Plan& plan,
         const planning::Batch& batch, std::size_t mould, const runs::StudioDays& studio,
         Trays& trays) {
  fill(to, mould, batch.casts);
  to.pieces += batch.pieces;
  to.work += work_on(batch, run, studio);
  to.whippings += whippings_of(batch);
  add_fills(to, run, plan, batch.pieces, trays);
}

void in_order_of_making(std::vector<days::Batch>& batches) {
  std::sort(batches.begin(), batches.end(),
            [](const auto& a, const auto& b) { return a.number < b.number; });
}

/// What is sold of each batch: of all pieces, as they come.
void share_sold(std::vector<days::Batch>& batches, std::int64_t sell) {
  std::int64_t all = 0, made = 0, sold = 0;
  for (const auto& batch : batches) all += batch.pieces;
  for (auto& batch : batches) {
    made += batch.pieces;
    batch.sold = sell * made / all - sold;
    sold += batch.sold;
  }
}

std::int64_t sell_of(const DayLine& line) {
  std::int64_t sell = 0;
  for (const DayPart& part : line.parts) sell += part.plan->pieces.sell;
  return sell;
}

/// The batches of a base that is poured for several runs.
std::vector<days::Batch> together_batches(const DayLine& line,
                                          const std::vector<std::size_t>& moulds,
                                          const runs::StudioDays& studio, Trays& trays) {
  const planning::Together& together = *line.together;
  std::vector<days::Batch> batches;
  for (std::size_t b = 0; b < together.batches.size(); ++b) {
    days::Batch one{.filled = {}, .work = studio.each_batch};
    std::size_t part = 0;
    for (std::size_t l = 0; l < line.parts.size(); ++l) {
      const auto& parts = together.batches[b].parts;
      if (part < parts.size() && parts[part].line == l)
        add(one, *line.parts[l].run, *line.parts[l].plan,
            line.parts[l].plan->batches[parts[part++].batch], moulds[l], studio, trays);
      else
        fill(one, moulds[l], 0);  // this batch has nothing of it
    }
    for (const std::int64_t number : together.plan.batches[b].numbers) {
      batches.push_back(one);
      batches.back().number = number;
    }
  }
  in_order_of_making(batches);
  share_sold(batches, sell_of(line));
  return batches;
}

}  // namespace

std::vector<days::Batch> day_batches(const planning::Run& run, const planning::Plan& plan,
                                     std::size_t mould, const runs::StudioDays& studio,
                                     Trays& trays) {
  std::vector<days::Batch> batches;
  for (const auto& batch : plan.batches) {
    days::Batch one{.filled = {}, .work = studio.each_batch};
    add(one, run, plan, batch, mould, studio, trays);
    for (const std::int64_t number : batch.numbers) {
      batches.push_back(one);
      batches.back().number = number;
    }
  }
  in_order_of_making(batches);
  share_sold(batches, plan.pieces.sell);
  return batches;
}

std::vector<days::Batch> day_batches(const DayLine& line, const std::vector<std::size_t>& moulds,
                                     const runs::StudioDays& studio, Trays& trays) {
  const DayPart& first = line.parts.front();
  return line.together ? together_batches(line, moulds, studio, trays)
                       : day_batches(*first.run, *first.plan, moulds.front(), studio, trays);
}

}  // namespace brimwright::service
