#pragma once

#include "days/work.h"
#include "planning/together.h"
#include "reports/ready_report.h"
#include "service/order_planning.h"
#include "service/run_planning.h"

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace brimwright::service {

/// A run of what is to be put into days, planned for so many pieces.
struct DayPart {
  std::string file;
  const planning::Run* run;
  const planning::Measured* measured;
  const planning::Plan* plan;
};
/// What is made in batches of its own: a run, or several that are poured together.
struct DayLine {
  std::vector<DayPart> parts;
  const planning::Together* together = nullptr;  // of its parts, in their order
  days::Lead make_lead = {}, cast_lead = {};

  std::string name() const;
};
/// An order with its runs, or a run by itself.
struct DayFile {
  std::string file, id, name;
  bool is_order = false;
  std::optional<days::Day> due = {};
  Place due_at = {};
  std::vector<DayLine> lines = {};  // of what stands below
  days::Lead pack_lead = {};
  std::unique_ptr<PlannedRun> alone = {};
  OrderedRuns runs = {};
  std::unique_ptr<PlannedOrder> order = {};
  /// Of an order: what is made already; `lines` and `runs` are of the rest.
  reports::ReadyOrder ready = {};
  std::vector<std::unique_ptr<planning::Run>> of_stock = {};  // of whose pieces none is made

  Materials materials() const;
  /// The files of all its runs.
  std::vector<std::string> run_files() const;
  /// Each run with its pieces that are made or from stock.
  std::vector<std::pair<const planning::Run*, std::int64_t>> packed() const;
};

}  // namespace brimwright::service
