#pragma once

#include "learning/batch_facts.h"
#include "records/notes.h"

#include <nlohmann/json_fwd.hpp>

#include <cstddef>
#include <string>
#include <vector>

namespace brimwright::service {

/// What was noted of a batch that has a base, into `facts`, which are those of its plan: `pour` are
/// what the plan took for granted of it, `batch` is the batch in the plan's answer.
void note_facts(learning::BatchFacts& facts, const nlohmann::json& pour,
                const nlohmann::json& batch, const records::Notes& notes,
                const std::vector<records::Weighing>& weighings);

/// The blank of `batch` in a plan's answer, or nullptr.
const nlohmann::json* find_planned_blank(const nlohmann::json& batch, const std::string& key);
/// What the keys of a run's decorations begin with, by their place: "decoration-1.".
std::string decoration_key(std::size_t place);

}  // namespace brimwright::service
