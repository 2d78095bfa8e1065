#include "reports/together_report.h"

#include "reports/batch_sheet.h"
#include "reports/vessel_filling.h"
#include "reports/weigh_out.h"
#include "units/printing.h"
#include "units/rounding.h"
#include "units/share_of.h"
#include "units/weight_text.h"
#include "units/wording.h"
#include "units/written_number.h"

#include <algorithm>
#include <utility>

namespace brimwright::reports {
namespace {

using planning::TogetherPart;

/// "Spring cups, Plain bars and Bowls".
std::string listed(const std::vector<std::string>& names) {
  std::string text;
  for (std::size_t i = 0; i < names.size(); ++i)
    text += (i == 0 ? "" : i + 1 == names.size() ? " and " : ", ") + names[i];
  return text;
}

/// Base that a line takes of all batches.
Mass taken_by(std::size_t line, const planning::Together& together) {
  Mass sum;
  for (std::size_t b = 0; b < together.batches.size(); ++b)
    for (const TogetherPart& part : together.batches[b].parts)
      if (part.line == line)
        sum += static_cast<double>(together.plan.batches[b].count()) * part.takes;
  return sum;
}

/// Poured straight out of the pot, down: all lines together never ask for more than there is.
Vessel plain_pour(const std::string& key, const planning::Run& run, const planning::Batch& batch) {
  Filling filling(
      {.key = key, .kind = Vessel::Kind::layers, .title = "", .batter = planning::BatterRole::base},
      {});
  const Mass step = run.scales.large.step;
  const Mass poured = batch.pour.batter.in_pieces * (1 + run.pour.losses.overpour.of_one());
  filling.put({.key = "plain",
               .name = "Plain",
               .role = WeighOutRow::Role::batter,
               .mass = rounded_down(poured, step),
               .step = step,
               .towards = Rounded::down});
  return filling.filled();
}

Vessel jugs_of(const std::string& key, const planning::Run& run, const planning::Batch& batch,
               Mass whole_base) {
  Vessel jugs =
      batch.pour.layers.empty() ? plain_pour(key, run, batch) : jugs_of_layers(key, run, batch);
  const Mass step = run.scales.large.step;
  const auto& pour = batch.pour;
  jugs.title = "For " + run.name + ": " + casts_on_sheet(batch.casts, run) + ", " +
               on_display(pour.batter.mass_each, step) + " each, to " +
               in_mm(run.pour.mould.curve.height() - pour.poured_to) + " below the brim";
  for (WeighOutRow& row : jugs.rows)
    if (row.role == WeighOutRow::Role::batter)
      note(row, fixed_percent(Share::of_one(row.mass / whole_base)) + " of the base");
  const Mass test = run.pour.losses.test_piece;
  if (test > Mass{})
    jugs.words.push_back({"For its test piece besides: " + on_display(test, step) + "."});
  return jugs;
}

bool is_any_shared(const planning::Together& together) {
  return std::any_of(together.batches.begin(), together.batches.end(),
                     [](const planning::TogetherBatch& batch) { return batch.parts.size() > 1; });
}

}  // namespace

std::string together_words(const PouredTogether& of) {
  const auto& plan = of.planned->plan;
  std::vector<std::string> names, parts;
  Mass all;
  for (std::size_t i = 0; i < of.lines.size(); ++i) all += taken_by(i, *of.planned);
  for (std::size_t i = 0; i < of.lines.size(); ++i) {
    const planning::Run& run = *of.lines[i].run;
    names.push_back(run.name);
    parts.push_back(run.name + " " + fixed_percent(Share::of_one(taken_by(i, *of.planned) / all)));
  }
  return "Poured together (" + of.word + "): " + listed(names) + " from one base, " +
         brimwright::quoted(plan.name) + ", " +
         on_display(plan.pour.batter.weighing.batter, of.planned->run.scales.large.step) + " in " +
         counted(plan.pieces.batches, "batch", "batches") +
         (is_any_shared(*of.planned) ? "" : "; no two of them share one") +
         ". What base and batches cost is shared by the base that each takes: " + listed(parts) +
         ".";
}

std::vector<Vessel> weigh_out(const PouredTogether& of, std::size_t batch) {
  const auto& together = *of.planned;
  const planning::Batch& base = together.plan.batches[batch];
  auto vessels = weigh_out(together.run, together.plan, base);
  for (const TogetherPart& part : together.batches[batch].parts) {
    const planning::Run& run = *of.lines[part.line].run;
    const auto& own = together.lines[part.line].batches[part.batch];
    const std::string key = free_key(base_key() + ".layers." + key_part(run.name), vessels);
    vessels.push_back(jugs_of(key, run, own, base.pour.batter.weighing.batter));
  }
  return vessels;
}

}  // namespace brimwright::reports
