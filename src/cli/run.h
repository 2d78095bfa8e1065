#pragma once

#include <functional>
#include <istream>
#include <ostream>
#include <string>
#include <vector>

namespace brimwright::cli {

/// Where the program stands.
struct Surroundings {
  /// The folder that holds `moulds` and `meshes`; may be empty.
  std::string shipped;
  std::istream* in = nullptr;  // what "-" reads
  bool colours = false;        // `out` is a terminal that shows them
  /// Is told how far a search is, 0 to 1; may be empty.
  std::function<void(double)> progress = {};
};

/// The program: `arguments` without its own name, documents to `out`, complaints to `err`.
///
/// 0: done; 1: something in the input needs correcting, one line on `err`; 2: an internal error.
int run(const std::vector<std::string>& arguments, const Surroundings& around, std::ostream& out,
        std::ostream& err);

}  // namespace brimwright::cli
