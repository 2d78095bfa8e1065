#pragma once

#include "costing/selling.h"
#include "moulds/library.h"
#include "planning/run.h"
#include "runs/studio_file.h"
#include "units/fields.h"

#include <optional>
#include <string>
#include <vector>

namespace brimwright::runs {

/// What the studio of `run` says of packaging, work, overhead, waste, tax, fees and prices, with
/// the run's own prices of materials; its own packaging stands in place of the studio's. UserError
/// with file and field for anything wrong; where neither run nor studio names a currency; and where
/// they name two.
costing::Selling read_selling(const planning::Run& run, const moulds::Library& library);

/// A margin or a markup as typed, "40 %": nothing below zero, and no margin of the whole price.
trade::Asking read_margin(const std::string& typed, const Place& where);
trade::Asking read_markup(const std::string& typed, const Place& where);
/// A price that is set, above zero.
trade::Asking read_set_price(const std::string& typed, const Currency& currency,
                             const Place& where);

}  // namespace brimwright::runs
