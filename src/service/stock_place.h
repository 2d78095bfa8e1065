#pragma once

#include "moulds/library.h"
#include "runs/studio_file.h"
#include "runs/supplies.h"
#include "units/user_error.h"

#include <string>

namespace brimwright::service {

/// Whose stock is asked about: a folder with its records and its studio.
struct StockPlace {
  std::string folder;
  runs::Studio studio;
  runs::Supplies supplies;
};

/// The place that `file` means: a folder, or that of a studio's, a run's or an order's file.
StockPlace stock_place(const std::string& file, const moulds::Library& library);

}  // namespace brimwright::service
