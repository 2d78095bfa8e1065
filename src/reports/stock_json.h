#pragma once

#include "records/lots.h"
#include "records/pieces.h"
#include "units/remark.h"

#include <nlohmann/json_fwd.hpp>

#include <cstdint>
#include <string>
#include <vector>

namespace brimwright::reports {

// What answers about lots and pieces have in common.

/// {"g": 800.0} or {"pieces": 12}.
nlohmann::ordered_json amount_json(std::int64_t whole, bool is_pieces);
nlohmann::ordered_json lot_json(const records::StandingLot& of, const std::string& day);
nlohmann::ordered_json count_json(const records::PieceCount& count);
nlohmann::ordered_json notes_json(const std::vector<Remark>& notes);

}  // namespace brimwright::reports
