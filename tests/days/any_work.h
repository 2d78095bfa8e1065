#pragma once

#include "days/schedule.h"

#include <random>
#include <vector>

/// A studio, what it is to make, and the day it begins.
struct AnyWork {
  brimwright::days::Studio studio;
  std::vector<brimwright::days::Delivery> deliveries;
  brimwright::days::Day from;
};

/// As chance makes it of that number: one or two deliveries, each without a due day, of batches no
/// more than `most_batches` and moulds no more than `most_moulds` altogether. Every limit is there
/// or not, and every figure is small, so that limits meet.
AnyWork any_work(unsigned number, int most_batches, int most_moulds);
