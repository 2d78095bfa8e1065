#pragma once

#include "reports/buying_report.h"

#include <string>

namespace brimwright::reports {

// What a purchase is told with, on a terminal and on paper.

/// "27.50 EUR"
std::string money_words(const Money& sum);
/// "May bars: 24 pieces to sell, 26 to make"
std::string run_words(const Buying::Run& run);
/// "Oil mill (there in 5 days)"
std::string seller_words(const trade::Delivery& delivery, const Buying& buying);
/// "postage 6.90 EUR"; empty where the packs name no seller.
std::string postage_words(const trade::Delivery& delivery, const Buying& buying);
/// Goods, and postage as far as it is known.
Money paid_for(const trade::Delivery& delivery);
/// She makes some of it ahead, of what is needed for it.
bool is_to_be_made(const Buying::Material& material);
/// Nothing of it is bought or made: the shelf has it.
bool is_of_shelf(const Buying::Material& material);

}  // namespace brimwright::reports
