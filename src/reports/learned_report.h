#pragma once

#include "learning/figures.h"
#include "learning/learned.h"
#include "units/question.h"

#include <cstddef>
#include <string>
#include <vector>

namespace brimwright::reports {

/// A learned figure by its name, which taking it asks for: "volume", "pot".
struct NamedFigure {
  std::string name;
  learning::Figure figure;
};

/// What batches tell for the next plan.
struct LearnedReport {
  std::string source, run;  // the file, and its name; a studio's batches are of all its runs
  std::size_t batches = 0;
  /// Batches left out where the formula or the mould was another then.
  std::size_t earlier = 0;
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

std::string learned_text(const LearnedReport& report, const UserTerms& terms);
std::string learned_json(const LearnedReport& report);
/// Plan against actual, batch by batch over the days they were made on, one strip for each figure:
/// SVG.
std::string learned_picture(const LearnedReport& report);

}  // namespace brimwright::reports
