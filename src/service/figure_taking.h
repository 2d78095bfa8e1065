#pragma once

#include "learning/figures.h"
#include "moulds/library.h"
#include "planning/run.h"
#include "reports/learned_report.h"
#include "service/requests.h"

#include <optional>
#include <string>
#include <vector>

namespace brimwright::service {

/// Where a run has its figures: in its own file, its studio's, its mould's, its formula's.
struct FigureFiles {
  std::string run = {};     // empty for a studio alone
  std::string studio = {};  // empty where there is none
  std::string mould = {}, base_formula = {};
  std::string tip = {};         // its name, where the topping has moves of one
  bool is_hand_of_tip = false;  // a file of tips says its correction
  bool has_trials = false;      // of its topping, in whose place a volume stands
  /// Of a topping that is measured by its outline alone what that encloses: its share that is soap
  /// says what a topping holds.
  std::optional<Volume> outline = {};
  std::vector<std::string> decorations = {};  // by their places; "" of what is bought
};
FigureFiles figure_files(const planning::Run& run, const moulds::Library& library);

/// The file with `figure`, called `name`, where a typed one would stand, and beside it how many
/// batches told it, `today`, and what stood there. UserError at the member "take" where there is no
/// place for it, or it stands in a built-in file.
MadeFile taken(const std::string& name, const learning::Figure& figure, const FigureFiles& files,
               const std::string& today, const UserTerms& terms, const moulds::Library& library);

/// How that figure stands in its file today, and what taking it would make of it.
reports::StandsIn stands_in(const std::string& name, const learning::Figure& figure,
                            const FigureFiles& files, const moulds::Library& library);

/// A file with what stood there before the last taking, and what that is.
struct Undone {
  MadeFile file;
  std::optional<std::string> says = {};             // nothing where nothing stood there
  std::optional<reports::Taking> still_taken = {};  // where that was taken as well
};
/// UserError at the member "undo" where nothing was taken, or it was written anew since.
Undone undone(const std::string& name, const FigureFiles& files, const UserTerms& terms,
              const moulds::Library& library);

}  // namespace brimwright::service
