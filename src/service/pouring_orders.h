#pragma once

#include "moulds/library.h"
#include "units/remark.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::service {

/// An order that pours a run together with others, from a base of which a batch for that run is
/// still to be begun.
struct PouringOrder {
  std::string file, whom_for, word;    // for whom may be empty
  std::vector<std::string> others;     // the runs it is poured together with, by their names
  std::optional<std::int64_t> number;  // of that batch; nothing where none of the base was begun
};

struct PouringOrders {
  std::vector<PouringOrder> all = {};
  std::vector<Remark> remarks = {};  // of orders that cannot be read
};

/// The orders in the folder of the run in `file` that do so on `day`. An order is past that when it
/// was due before, and where fewer than two of these lines are left to make: what is left is then
/// begun as a batch of its run.
PouringOrders pouring_orders(const std::string& file, const std::string& day,
                             const moulds::Library& library);

/// "the order for a market pours this run together with Plain bars (A), and its base has not been
/// begun", of the first of them, with the others named.
std::string pouring_words(const std::vector<PouringOrder>& orders);

}  // namespace brimwright::service
