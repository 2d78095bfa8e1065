#pragma once

#include "moulds/library.h"
#include "runs/order_file.h"

#include <optional>
#include <string>
#include <vector>

namespace brimwright::service {

/// The order in `file`, or in `text` as though it stood there; nothing where that is something
/// else.
std::optional<runs::Order> order_in(const std::string& file, const std::optional<std::string>& text,
                                    const moulds::Library& library);

/// The studio's file for all of these runs; empty where none of them has one. UserError where not
/// all have the same.
std::string studio_of_all(const std::vector<std::string>& runs, const moulds::Library& library);

/// By which path ever a file is named.
std::string one_name_of(const std::string& file);

}  // namespace brimwright::service
