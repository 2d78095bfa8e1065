#pragma once

#include "reports/quote_report.h"
#include "reports/quote_table.h"

#include <cstddef>
#include <string>
#include <vector>

namespace brimwright::reports {

/// What is laid out now, in whole packs, of `columns` purchases from `from` on, and what is left of
/// these packs.
std::vector<QuoteTable> purchase_tables(const std::vector<Buying>& purchases, std::size_t from,
                                        std::size_t columns, const costing::Selling& selling,
                                        const std::vector<std::string>& heads);

/// What the sums to lay out leave out, or take for more than is known.
std::vector<std::string> purchase_remarks(const std::vector<Buying>& purchases);

}  // namespace brimwright::reports
