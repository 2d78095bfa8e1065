#pragma once

#include <cstddef>
#include <cstdint>
#include <limits>
#include <string>
#include <vector>

namespace brimwright::trade {

/// Numbers 0 or 1 for `costs.size()` columns that keep to all rows, at least cost.
struct IntegerProgram {
  static constexpr double no_limit = std::numeric_limits<double>::infinity();

  struct Term {
    std::size_t column;
    double factor;
  };
  /// least <= sum of the terms <= most
  struct Row {
    double least = -no_limit;
    double most = no_limit;
    std::vector<Term> terms = {};
  };

  std::vector<double> costs;
  std::vector<Row> rows;
};

struct Solved {
  std::vector<bool>
      is_taken;  ///< of each column; empty where nothing that keeps to the rows is known
  double bound = -IntegerProgram::no_limit;  ///< no sum that keeps to the rows is below it
};

/// Solves by branch and bound, at most `most_nodes` of them. Whether what is taken keeps to the
/// rows is true to a millionth only, as is the bound: for the caller to look at in whole numbers.
/// Safe in several threads at once. std::runtime_error where the solver gives up with a fault.
Solved solved(const IntegerProgram& program, int most_nodes);

}  // namespace brimwright::trade
