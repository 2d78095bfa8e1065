#pragma once

#include "reports/quote_table.h"

#include <cstddef>
#include <functional>
#include <string>
#include <utility>
#include <vector>

namespace brimwright::reports {

using Cell = std::function<std::string(std::size_t)>;

/// Rows of a table, a cell for each of its columns.
class Rows {
 public:
  explicit Rows(std::size_t columns) : columns_(columns) {}

  void add(const std::string& name, const Cell& cell, bool is_sum = false) {
    rows_.push_back({name, {}, is_sum});
    for (std::size_t i = 0; i < columns_; ++i) rows_.back().cells.push_back(cell(i));
  }
  void head(const std::string& name) { rows_.push_back({name}); }
  std::vector<QuoteRow> take() { return std::move(rows_); }

 private:
  std::size_t columns_;
  std::vector<QuoteRow> rows_;
};

}  // namespace brimwright::reports
