#pragma once

#include "learning/batch_facts.h"
#include "service/planned_scales.h"
#include "units/quantity.h"

#include <cstddef>
#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::service {

/// A line about the planned one, and what a cavity holds to it, as measured.
struct PlannedLevel {
  double off_mm;
  Volume volume_each;
  Area surface;
};

/// A weigh-cup's blank: what the cup holds, or the blank that says so.
struct PlannedCup {
  std::string key = {};
  std::optional<Volume> holds = {};
  std::string holds_key = {};
};

/// Batches of a plan that are alike, before anything is noted of one. The names in it are those of
/// files, without their folders.
struct PlannedBatch {
  std::vector<std::int64_t> numbers;
  learning::BatchFacts facts;
  std::vector<PlannedCup> cups;
  bool is_beside_base = false;  // its base was mixed for several
  PlannedScales scales = {};
};

/// What a plan took for granted, as its answer keeps it, and what its batches are.
struct PlannedFacts {
  std::string run;
  std::string formula, mould;  // of the base
  double computed_g_per_ml = 0, measured_brimful_ml = 0;
  std::optional<double> topping_sized_by_ml = {};
  std::vector<PlannedLevel> levels = {};
  std::vector<PlannedBatch> batches = {};
};

/// Nothing where the answer is of a program that kept no assumptions yet.
std::shared_ptr<const PlannedFacts> planned_facts(const std::string& plan_answer);

/// A base that was mixed for several runs.
struct PlannedBase {
  std::vector<std::int64_t> numbers;
  Mass lost;
  PlannedScales scales = {};
};

std::vector<PlannedBase> planned_bases(const std::string& plan_answer);

/// The batch of that number, or nullptr.
const PlannedBatch* planned_batch(const PlannedFacts& plan, std::int64_t number);
learning::BatchFacts facts_of_plan(const PlannedFacts& plan, std::int64_t number);

/// What the keys of a run's decorations begin with, by their place: "decoration-1.".
std::string decoration_key(std::size_t place);

}  // namespace brimwright::service
