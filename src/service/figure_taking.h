#pragma once

#include "learning/figures.h"
#include "moulds/library.h"
#include "planning/run.h"
#include "service/requests.h"

#include <optional>
#include <string>

namespace brimwright::service {

/// Where a run has its figures: in its own file, its studio's, its mould's, its formula's.
struct FigureFiles {
  std::string run = {};     // empty for a studio alone
  std::string studio = {};  // empty where there is none
  std::string mould = {}, base_formula = {};
  std::string tip = {};         // its name, where the topping has moves of one
  bool is_hand_of_tip = false;  // a file of tips says its correction
};
FigureFiles figure_files(const planning::Run& run, const moulds::Library& library);

/// The file with `figure`, called `name`, where a typed one would stand, and beside it how many
/// batches told it, `today`, and what stood there. UserError at the member "take" where there is no
/// place for it, or it stands in a built-in file.
MadeFile taken(const std::string& name, const learning::Figure& figure, const FigureFiles& files,
               const std::string& today, const UserTerms& terms, const moulds::Library& library);

/// The file with what stood there before. UserError at the member "undo" where nothing was taken,
/// or it was written anew since.
MadeFile undone(const std::string& name, const FigureFiles& files, const UserTerms& terms,
                const moulds::Library& library);

}  // namespace brimwright::service
