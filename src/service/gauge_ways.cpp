#include "service/gauge_ways.h"

#include "learning/learned.h"
#include "moulds/measured_ways.h"
#include "moulds/poured_factor.h"
#include "records/records.h"
#include "reports/learned_report.h"
#include "service/learned_batches.h"
#include "service/run_planning.h"
#include "units/fields.h"
#include "units/printing.h"
#include "units/reading.h"
#include "units/wording.h"

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <utility>

namespace brimwright::service {
namespace {

namespace fs = std::filesystem;

std::string folder_of(const std::string& file) {
  const auto folder = fs::path(file).parent_path();
  return folder.empty() ? "." : folder.string();
}

/// The batches that were poured into the mould, the last one last.
struct Poured {
  std::vector<learning::BatchFacts> facts = {};
  const learning::FilledMould* last = nullptr;
};

Poured poured_into(const std::string& file, const std::string& mould,
                   const std::string& batches_of) {
  Poured poured;
  const auto records = records::Records::in(folder_of(batches_of));
  if (!records) return poured;
  RenamedFiles renamed(*records, folder_of(batches_of), {file});
  poured.facts = learned_batches(kept_batches(*records), nullptr, &renamed).facts;
  for (const auto& batch : poured.facts)
    if (batch.base)
      for (const auto& filled : batch.base->moulds)
        if (filled.mould == mould) poured.last = &filled;
  return poured;
}

bool is_run(const std::string& file) {
  std::error_code none;
  if (!fs::is_regular_file(file, none)) return false;
  const Fields fields = Fields::read(file);
  return fields.is_text("schema") && fields.text("schema").starts_with("brimwright.run/");
}

struct Line {
  std::optional<Length> below_brim = {};
  std::string whose = {};
};

Line line_of(const GaugeRequest& request, const UserTerms& terms, const moulds::Mould& mould,
             const Poured& poured, const moulds::Library& library, const Caller& caller) {
  if (request.below_brim)
    return {read_length(*request.below_brim, terms.place("below-brim")), "as asked"};
  if (is_run(*request.batches_of)) {
    const std::optional<std::string> none;
    const planning::Run run = told_run({*request.batches_of, none, none}, terms, library, caller);
    std::error_code error;
    if (!fs::equivalent(run.pour.mould.file, mould.file, error)) return {};
    return {gated_plan(run, measured_run(run, caller)).pour.headspace, "that of the run"};
  }
  if (poured.last != nullptr && poured.last->below_brim)
    return {poured.last->below_brim, "that of the last batch"};
  return {};
}

/// How much of the mould's height is left free, held against a curve of its own height.
std::optional<Volume> at_line(const geometry::LevelCurve& curve,
                              const std::optional<Length>& below_brim) {
  if (!below_brim || *below_brim >= curve.height()) return std::nullopt;
  return curve.volume_below(curve.height() - *below_brim);
}

reports::WayFinding measured(const moulds::MeasuredWay& way, const Line& line) {
  reports::WayFinding finding{.by = moulds::name_of(way.way),
                              .brimful = way.curve.brimful(),
                              .at_line = at_line(way.curve, line.below_brim),
                              .rests_on = way.rests_on};
  if (way.low && way.high) {
    const double part = finding.at_line ? *finding.at_line / finding.brimful : 1;
    finding.low = part * *way.low;
    finding.high = part * *way.high;
  }
  return finding;
}

const learning::Figure* volume_error(const learning::Learned& learned, const std::string& mould) {
  for (const auto& figure : learned.figures)
    if (figure.id == learning::FigureId{learning::Kind::volume_error, learning::OfMould{mould}})
      return &figure;
  return nullptr;
}

/// Moulds are measured anew: what batches said of another is nothing to this one.
bool is_as_measured_then(const learning::FilledMould& then, const moulds::Mould& mould) {
  const Volume now = mould.curve.brimful() / moulds::poured_factor(mould);
  constexpr double as_good_as_same = 0.005;  // common practice, no source
  return std::abs(*then.brimful / now - 1) <= as_good_as_same;
}

void tell_batches(reports::WaysFinding& all, const Poured& poured, const moulds::Mould& mould,
                  const std::string& name) {
  if (poured.last == nullptr) return;
  if (poured.last->brimful && !is_as_measured_then(*poured.last, mould)) {
    all.remarks.emplace_back(
        "The batches were poured while the mould was measured otherwise: they are not counted.");
    return;
  }
  const learning::Learned learned = learning::learned_from(poured.facts);
  const learning::Figure* const figure = volume_error(learned, name);
  if (figure == nullptr) {
    for (const auto& untold : learned.untold)
      if (untold.id == learning::FigureId{learning::Kind::volume_error, learning::OfMould{name}})
        all.remarks.push_back(reports::untold_text(untold));
    all.remarks.emplace_back("What batches say is shown once three of them tell it.");
    return;
  }
  if (!all.below_brim) return;
  const geometry::LevelCurve curve = mould.curve.holding(1 / moulds::poured_factor(mould));
  const Length depth = curve.height() - *all.below_brim;
  const Volume held = curve.volume_below(depth);
  const auto with = [&](const learning::Value& error) {
    return held + std::get<Length>(error) * curve.free_surface(depth);
  };
  const Volume told = with(figure->value);
  const auto* interval = std::get_if<learning::Interval>(&figure->spread.is);
  all.ways.push_back(
      {.by = "batches",
       .brimful = told / held * curve.brimful(),
       .at_line = told,
       .low = with(figure->spread.low),
       .high = with(figure->spread.high),
       .rests_on = counted(static_cast<std::int64_t>(figure->values.size()), "batch", "batches") +
                   (interval != nullptr ? ", so that the true figure lies there 19 times of 20"
                                        : ", from the least to the greatest")});
}

std::string because_of(moulds::Way way, std::size_t ways) {
  if (way == moulds::Way::water) return "The plan uses water: where it was weighed, it decides.";
  if (ways == 1)
    return "The plan uses the " + moulds::name_of(way) + ", the only way it was measured.";
  return "The plan uses the " + moulds::name_of(way) + "; the dimensions are a check of it.";
}

/// "poured_factor" stands over all measures.
void use_factor(reports::WaysFinding& all, const moulds::Mould& mould, const Fields& fields) {
  const double factor = moulds::poured_factor(mould);
  const bool is_taken = fields.optional_object("learned").has_value();
  const std::string way = moulds::name_of(mould.measurements.front().way);
  all.ways.push_back({.by = is_taken ? "batches, as taken" : "your own factor",
                      .brimful = mould.curve.brimful(),
                      .at_line = at_line(mould.curve, all.below_brim),
                      .rests_on = {},
                      .is_used = true});
  all.used_because = "The plan uses " + trimmed(factor, 4) + " times what was measured by " + way +
                     ": the mould's file has that as its \"poured_factor\"" +
                     (is_taken ? ", taken from batches." : ".");
}

}  // namespace

std::optional<reports::WaysFinding> ways_of(const GaugeRequest& request, const UserTerms& terms,
                                            const moulds::Mould& mould,
                                            const moulds::Library& library, const Caller& caller) {
  if (!request.batches_of || mould.is_mesh_alone) return std::nullopt;
  const Fields fields =
      request.text ? Fields::parse(*request.text, request.file) : Fields::read(request.file);
  const std::string name = fs::path(request.file).filename().generic_string();
  const Poured poured = poured_into(request.file, name, *request.batches_of);
  const Line line = line_of(request, terms, mould, poured, library, caller);
  reports::WaysFinding all{.below_brim = line.below_brim, .line_of = line.whose};
  const auto ways = moulds::measured_ways(fields, mould);
  for (const auto& way : ways) all.ways.push_back(measured(way, line));
  const bool has_factor = std::abs(moulds::poured_factor(mould) - 1) > 1e-9;
  if (!has_factor && !all.ways.empty()) {
    all.ways.front().is_used = true;
    all.used_because = because_of(ways.front().way, ways.size());
  }
  tell_batches(all, poured, mould, name);
  if (has_factor) use_factor(all, mould, fields);
  return all;
}

}  // namespace brimwright::service
