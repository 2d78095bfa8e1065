#pragma once

#include "learning/batch_facts.h"
#include "learning/figures.h"
#include "learning/learned.h"
#include "units/question.h"

#include <chrono>
#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::reports {

/// How a value was taken from batches, as its file tells.
struct Taking {
  std::size_t batches = 0;
  std::string on;                          // ISO 8601
  std::optional<std::string> before = {};  // what stood there; nothing where nothing did
  std::size_t steps = 1;                   // takings, one after the other, that can be undone
};

/// Where a figure stands in a file, or would: empty where there is no place for it.
struct StandsIn {
  std::string file = {};
  std::optional<std::string> says = {};  // as it stands there
  std::string would_say = {};            // once it is taken
  std::optional<Taking> taken = {};      // where what stands there was
  bool is_taken = false;                 // this very figure
  struct Refused {
    std::string problem, remedy;
  };
  std::optional<Refused> refused = {};  // why it cannot be taken
};

/// What taking a figure would make of the plan.
struct Effect {
  std::string of;  // "base to mix"
  learning::Value now, then;
};

/// A learned figure by its name, which taking it asks for: "volume", "pot".
struct NamedFigure {
  std::string name;
  learning::Figure figure;
  StandsIn in = {};
  std::vector<Effect> effects = {};
  std::string no_plan = {};  // why there would be no plan with it
};

/// What batches tell for the next plan.
struct LearnedReport {
  std::string source, run;  // the file, and its name; a studio's batches are of all its runs
  std::size_t batches = 0;
  /// Batches left out where the formula or the mould was another then.
  std::size_t earlier = 0;
  std::vector<int> years;  // in which batches were made, each once
  std::vector<NamedFigure> figures;
  std::vector<learning::Untold> untold;
  std::vector<learning::Contradiction> contradictions;
};

/// The name of a figure; `others` are told apart by what they belong to.
std::string figure_name(const learning::FigureId& id);
/// "volume of a cavity", "left in the pot".
std::string figure_words(const learning::FigureId& id);
/// "+0.8 mm", "25.3 g": as it is shown, and of what is written in a file, as it stands there.
std::string value_words(const learning::Value& value);

/// Why batches cannot tell it, and what to note next time.
std::string untold_text(const learning::Untold& untold);
/// What contradicts what, and in which batch.
std::string contradiction_text(const learning::Contradiction& contradiction);

std::string learned_text(const LearnedReport& report, const UserTerms& terms);
std::string learned_json(const LearnedReport& report);
/// Plan against actual, batch by batch over the days they were made on, one strip for each figure:
/// SVG.
std::string learned_picture(const LearnedReport& report);

/// A year of a run, or of all runs of a studio.
struct YearReport {
  std::string name;  // whose
  std::chrono::year year;
  std::vector<learning::BatchFacts> batches;  // of that year
  std::vector<learning::BatchByBatch> told;   // likewise
};
/// Each batch against its own plan over the days of the year, one strip for each thing that was
/// planned; runs are told apart by their marks: SVG.
std::string year_picture(const YearReport& report);

}  // namespace brimwright::reports
