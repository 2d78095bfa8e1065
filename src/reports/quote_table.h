#pragma once

#include <string>
#include <vector>

namespace brimwright::reports {

struct QuoteRow {
  std::string name;
  std::vector<std::string> cells = {};  // none: `name` heads the rows below
  bool is_sum = false;                  // of the rows above
};

struct QuoteTable {
  std::string title;
  std::vector<std::string> heads;  // of the columns, the names' first
  std::vector<QuoteRow> rows;
  bool needs_heads = false;  // they are not those of the table above
};

}  // namespace brimwright::reports
