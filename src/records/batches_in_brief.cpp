#include "records/batches_in_brief.h"

#include "records/database.h"
#include "records/records.h"
#include "records/rows.h"
#include "units/letters.h"

#include <algorithm>
#include <numeric>

namespace brimwright::records {

BatchesInBrief batches_in_brief(const Records& records) {
  return told(records.path(), [&] {
    Rows rows(records.database().connection(),
              "SELECT id, code, number, begun_on, plan, sources FROM batch ORDER BY id");
    BatchesInBrief batches;
    while (rows.next())
      batches.all.push_back({.id = std::string(rows.text(0)),
                             .code = std::string(rows.text(1)),
                             .number = rows.number(2),
                             .begun_on = std::string(rows.text(3)),
                             .plan = batches.plans.place_of(rows.text(4)),
                             .sources = batches.sources.place_of(rows.text(5))});
    return batches;
  });
}

std::vector<std::size_t> by_day(const std::vector<BatchInBrief>& batches) {
  std::vector<std::size_t> places(batches.size());
  std::iota(places.begin(), places.end(), std::size_t{0});
  std::sort(places.begin(), places.end(), [&](std::size_t a, std::size_t b) {
    const BatchInBrief &one = batches[a], &other = batches[b];
    if (one.begun_on != other.begun_on) return one.begun_on < other.begun_on;
    return in_small_letters(one.code) < in_small_letters(other.code);
  });
  return places;
}

}  // namespace brimwright::records
