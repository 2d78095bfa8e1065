#pragma once

#include "trade/amount.h"

#include <string>

namespace brimwright::trade {

/// What must be there is shown up, what is there down: "1234 g", "12.5 g", "50 pieces".
std::string amount_shown_up(const Amount& amount);
std::string amount_shown_down(const Amount& amount);
/// What is there, in kilograms where it is one or more: "9.5 kg", "800.0 g", "50 pieces".
std::string stock_size(const Amount& amount);
/// "2.5 kg", "453.59 g": what a pack holds; "50 pieces".
std::string pack_size(const Amount& amount);

}  // namespace brimwright::trade
