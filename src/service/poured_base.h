#pragma once

#include "moulds/library.h"
#include "planning/run.h"
#include "planning/together.h"
#include "records/batches.h"
#include "reports/together_report.h"
#include "runs/order_file.h"
#include "service/freezing.h"
#include "service/requests.h"

#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

namespace brimwright::service {

/// The lines of an order that one base is mixed for, planned with it and as they are kept with its
/// batches.
struct PouredBase {
  struct Line {
    std::string file;         // its run's
    std::string answer = {};  // JSON
    std::vector<records::Source> sources = {};
  };
  std::string word;
  planning::Together together;
  std::vector<planning::Run> runs;  // of its lines
  std::vector<Line> lines;          // as Together::lines
  std::string answer;               // JSON, of the base alone
  std::vector<records::Source> sources = {};

  /// It refers to this.
  reports::PouredTogether told() const;

  /// A batch of a line that is poured from one of the base.
  struct Poured {
    std::size_t line;
    std::int64_t number;  // of that line's batches
    Mass takes;
  };
  std::vector<Poured> poured_from(std::int64_t number) const;
  /// Of the base's batch of that number its place in Together::batches.
  std::size_t size_of(std::int64_t number) const;
};

/// The words that two lines of the order at least have, each once.
std::vector<std::string> shared_words(const runs::Order& order);

/// What of `order` is left to make beside pieces that are ready `today`, and of that the base of
/// the lines with that word. UserError where it cannot be planned, where its files changed
/// meanwhile, and where fewer than two lines are left.
PouredBase poured_base(const std::string& order, const std::string& word, const std::string& today,
                       const moulds::Library& library, const Caller& caller);

}  // namespace brimwright::service
