#pragma once

#include "days/work.h"
#include "moulds/library.h"
#include "reports/days_report.h"
#include "runs/days_reading.h"
#include "service/order_planning.h"
#include "service/run_planning.h"

#include <map>
#include <memory>
#include <string>
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

  Materials materials() const;
};

/// The trays known so far, each with its file.
struct Trays {
  std::vector<days::Tray> all;
  std::vector<std::string> files;
};

/// The studio and the work in plain numbers, and what is to be noted about them.
struct DayWork {
  days::Studio studio;
  std::vector<days::Delivery> deliveries;
  std::vector<Remark> notes;
  std::map<std::string, std::size_t> moulds;  // the studio's, by file
  Trays trays;                                // the studio's
};

/// UserError where a formula has no cure, where neither it nor the mould says how long a soap stays
/// in the mould, where that and the time for the knife leave no day, and where two runs count the
/// same mould in two ways.
///
/// A mould that the studio owns and no run uses counts with the run's own where it is like it: as
/// many cavities, of which each holds the same at every depth, within 1 %.
DayWork day_work(const std::vector<DayFile>& files, const runs::StudioDays& studio,
                 const moulds::Library& library);

/// The batches of a plan of one run, which fills moulds of that kind.
std::vector<days::Batch> day_batches(const planning::Run& run, const planning::Plan& plan,
                                     std::size_t mould, const runs::StudioDays& studio,
                                     Trays& trays);

}  // namespace brimwright::service
