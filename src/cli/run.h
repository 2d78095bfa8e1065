#pragma once

#include <functional>
#include <ostream>
#include <string>
#include <vector>

namespace brimwright::cli {

/// The program: `arguments` without its own name, documents to `out`, complaints to `err`.
/// `shipped` is the folder that holds `moulds` and `meshes`; may be empty.
///
/// `progress` is told how far a search is, 0 to 1; it may be empty.
///
/// 0: done; 1: the input wants mending, one line on `err`; 2: a fault of ours.
int run(const std::vector<std::string>& arguments, const std::string& shipped, std::ostream& out,
        std::ostream& err, const std::function<void(double)>& progress = {});

}  // namespace brimwright::cli
