// Times what is learned from ten thousand batches: of a studio as chance makes it, with thirty
// moulds and as many formulas, and of one that makes the same thing for ever. Prints medians of the
// thread's processor time. A word: how often each is asked.
#include "learning/centre.h"
#include "learning/drying_fit.h"
#include "learning/learned.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <functional>
#include <random>
#include <string>
#include <vector>

namespace {

using namespace brimwright;
using namespace brimwright::learning;

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

std::vector<BatchFacts> many_batches(int count, int kinds) {
  std::mt19937_64 random(1);
  const auto near = [&](double value, double off) {
    return std::normal_distribution<double>(value, off)(random);
  };
  std::vector<BatchFacts> batches;
  for (int i = 0; i < count; ++i) {
    const std::string number = std::to_string(i % kinds);
    BatchFacts batch;
    batch.code = "2026-03-01 " + std::to_string(i);
    batch.date = std::chrono::sys_days(std::chrono::year(2026) / 1 / 1) + std::chrono::days(i / 5);
    BaseFacts base{.formula = "formulas/base_number_" + number + ".json",
                   .density_planned = 1.02 * gram_per_millilitre,
                   .overpour_planned = 1 * percent,
                   .pot_planned = 20 * gram,
                   .jugs_planned = 20 * gram,
                   .test_piece_planned = Mass{},
                   .lost_planned = 80 * gram,
                   .made = near(4340, 20) * gram,
                   .left_over = near(40, 3) * gram,
                   .in_pot = near(25, 3) * gram,
                   .in_jugs = near(35, 3) * gram,
                   .overpoured = near(40, 5) * gram};
    if (i % 9 != 0) base.cup = near(1.05, 0.01) * gram_per_millilitre;
    base.moulds.push_back({.mould = "moulds/cavity_number_" + number + ".json",
                           .volume_each = 96 * millilitre,
                           .surface = 40 * square_centimetre,
                           .casts = 40,
                           .line = LineReached{near(0, 1) * millimetre}});
    batch.base = base;
    batch.toppings.push_back({.formula = "formulas/whip.json",
                              .topping = "runs/number_" + number + ".run.json",
                              .tip = "star 8 x 16 mm",
                              .hand = "",
                              .density_planned = 0.55 * gram_per_millilitre,
                              .visible_planned = 20 * millilitre,
                              .in_headspace_planned = 10 * millilitre,
                              .fills_headspace = 50 * percent,
                              .by_moves = 16 * millilitre,
                              .bowl_and_whisk_planned = 10 * gram,
                              .bag_planned = 10 * gram,
                              .tip_planned = Mass{},
                              .each_bag_change_planned = Mass{},
                              .lost_planned = 20 * gram,
                              .made = near(670, 10) * gram,
                              .left_over = near(50, 5) * gram,
                              .in_bowl_and_whisk = near(10, 1) * gram,
                              .in_bag = near(10, 1) * gram,
                              .cup = near(0.5, 0.02) * gram_per_millilitre,
                              .piped = 40});
    for (const TimeOf of :
         {TimeOf::batch, TimeOf::piece_made, TimeOf::tray_fill, TimeOf::piece_packed})
      batch.times.push_back({of, Minutes(90), Minutes(std::round(near(100, 10)))});
    CureFacts cure{.formula = base.formula, .sold_on_day = 35, .water = 28 * percent};
    for (const double day : {1, 4, 9, 16, 24, 30, 35})
      cure.weighings.push_back({day, near(100 + 20 * std::exp(-day / 11), 0.2) * gram});
    batch.cure = cure;
    batches.push_back(std::move(batch));
  }
  return batches;
}

void time_batches(int times, int kinds) {
  const std::vector<BatchFacts> batches = many_batches(10'000, kinds);
  Learned learned;
  const double taken = median_ms(times, [&] { learned = learned_from(batches); });
  std::printf("10,000 batches, %2d moulds and formulas: %7.2f ms  %zu figures\n", kinds, taken,
              learned.figures.size());
}

}  // namespace

int main(int count, char** words) {
  const int times = count > 1 ? std::atoi(words[1]) : 7;
  time_batches(times, 30);
  time_batches(times, 1);
  std::mt19937_64 random(1);
  std::vector<double> values(1'000'000);
  for (double& value : values) value = std::normal_distribution<double>()(random);
  std::printf("centre and interval of 1,000,000 values: %7.2f ms\n",
              median_ms(times, [&] { (void)centre_of(values); }));
}
