// Times putting work on days: a thousand pieces over six moulds and sixty days, forward, back and
// parted; then an order of five runs asked of the service in one process, as the server answers it.
// Prints medians of the thread's processor time, and whether what was found is proved. A word: how
// often each is asked.
#include "days/schedule.h"
#include "planning/measure_memory.h"
#include "service/service.h"

#include <unistd.h>

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <filesystem>
#include <fstream>
#include <functional>
#include <string>
#include <vector>

namespace {

namespace fs = std::filesystem;
using namespace brimwright;
using namespace brimwright::days;
using namespace std::chrono;

const fs::path source = BRIMWRIGHT_SOURCE_DIR;

double now_ms() {
  timespec time{};
  clock_gettime(CLOCK_THREAD_CPUTIME_ID, &time);
  return static_cast<double>(time.tv_sec) * 1e3 + static_cast<double>(time.tv_nsec) / 1e6;
}

double median_ms(int times, const std::function<void()>& work) {
  std::vector<double> taken;
  for (int i = 0; i < times; ++i) {
    const double begun = now_ms();
    work();
    taken.push_back(now_ms() - begun);
  }
  std::sort(taken.begin(), taken.end());
  return taken[taken.size() / 2];
}

/// 84 batches of twelve in three kinds of mould, two of each, with casts, a rack and lead times; on
/// five days of the week twelve hours, so that two months hold them.
struct Large {
  Studio studio;
  Delivery delivery{.name = "a thousand pieces", .lines = {}};

  Large() {
    for (const std::size_t day : {1U, 2U, 3U, 4U, 5U}) studio.calendar.making[day] = hours(12);
    studio.calendar.small_jobs[6] = true;
    for (int kind = 0; kind < 3; ++kind)
      studio.moulds.push_back({.name = "mould", .owned = 2, .cavities = 6});
    studio.trays = {{.name = "tray", .is_counted = true, .sets_in = minutes(40)}};
    studio.batches_a_day = 4;
    studio.whippings_a_day = 4;
    studio.rack_places = 1200;
    studio.cast_ahead_at_most = 10;
    studio.each_tray_fill = minutes(10);
    studio.each_piece_packed = seconds(40);
    for (std::size_t kind = 0; kind < 3; ++kind) {
      Line line{.name = "line", .batches = {}};
      line.unmould_after = hours(24 + 12 * static_cast<int>(kind));
      line.cure_days = 28;
      line.is_chilled = kind == 0;
      line.make_lead = 5;
      for (int number = 1; number <= 28; ++number)
        line.batches.push_back({.number = number,
                                .filled = {{kind, 12}},
                                .pieces = 12,
                                .sold = 12,
                                .work = minutes(100),
                                .whippings = 1,
                                .fills = {{0, 1}}});
      delivery.lines.push_back(line);
    }
  }
};

void time_large(int times) {
  const Large large;
  const Day from = sys_days(year(2026) / 9 / 1);
  std::optional<Schedule> promise;
  std::vector<Delivery> all = {large.delivery};
  const double forward =
      median_ms(times, [&] { promise = earliest_promise(large.studio, all, from); });
  const auto last =
      std::max_element(promise->batches.begin(), promise->batches.end(),
                       [](const auto& a, const auto& b) { return a.poured < b.poured; });
  std::printf("%-52s %8.2f ms  poured within %d days, %s\n",
              "1,008 pieces over six moulds, forward", forward,
              static_cast<int>((last->poured - from).count()),
              promise->is_proved ? "proved" : "not proved");
  all.front().due = promise->due.front() + std::chrono::days(10);
  LatestStart latest;
  const double back = median_ms(times, [&] { latest = latest_start(large.studio, all, from); });
  std::printf("%-52s %8.2f ms  %s\n", "back from a due day", back,
              latest.schedule && latest.schedule->is_proved ? "proved" : "not proved");
  all.front().due = promise->due.front() - std::chrono::days(7);
  Parted part;
  const double parts = median_ms(times, [&] { part = parted(large.studio, all, 0, from); });
  std::printf("%-52s %8.2f ms  %lld of %lld pieces\n", "a week too short", parts,
              static_cast<long long>(part.pieces_kept), static_cast<long long>(part.pieces));
}

void write(const fs::path& path, const std::string& text) { std::ofstream(path) << text; }

void time_order(int times) {
  const fs::path folder = fs::temp_directory_path() / ("days" + std::to_string(getpid()));
  fs::create_directories(folder);
  for (const auto& entry : fs::directory_iterator(source / "examples"))
    if (entry.path().extension() == ".json") fs::copy(entry.path(), folder);
  std::string lines;
  for (const auto& [name, pieces] :
       {std::pair{"spring_cups", 24}, {"plain_bars", 36}, {"tray_cups", 24}, {"tilted_loaf", 13}}) {
    lines += std::string(lines.empty() ? "" : ", ") + R"({ "run": ")" + name +
             R"(.run.json", "pieces": )" + std::to_string(pieces) + " }";
  }
  fs::copy(folder / "plain_bars.run.json", folder / "more_bars.run.json");
  lines += R"(, { "run": "more_bars.run.json", "pieces": 24 })";
  write(folder / "five.order.json",
        R"({ "schema": "brimwright.order/1", "due": "2027-02-20", "lines": [)" + lines + "] }");
  write(folder / "studio.json",
        R"({ "schema": "brimwright.studio/1", "currency": "EUR",
             "work": { "paid_an_hour": "15", "each_batch": "2 h", "each_piece_packed": "1 min", "each_tray_fill": "10 min" },
             "days": { "making": { "tuesday": "7 h", "friday": "7 h", "saturday": "5 h" }, "pots_owned": 2, "rack_places": 400 } })");
  service::MeasureMemory memory;
  moulds::Library library{.shipped = source.string(), .folders = {}};
  service::Request request{
      .what = service::DaysRequest{.files = {(folder / "five.order.json").string()},
                                   .from = "2026-10-01"},
      .form = service::Form::json};
  service::Reply reply;
  const auto ask = [&] { reply = service::answer(request, library, {.memory = &memory}); };
  ask();  // what is measured is remembered from here on
  std::printf("%-52s %8.2f ms  %s\n", "an order of five runs, warm", median_ms(times, ask),
              reply.complaint.empty() ? "answered" : reply.complaint.c_str());
  fs::remove_all(folder);
}

}  // namespace

int main(int count, char** words) {
  const int times = count > 1 ? std::atoi(words[1]) : 5;
  time_large(times);
  time_order(times);
}
