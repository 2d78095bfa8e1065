#pragma once

#include "units/user_error.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>

namespace brimwright::records {

class Records;

// What a batch is called on its sheet and on the labels of its pieces: "2026-12-01A", or as she
// likes. Never given twice, whoever had it before; capitals are no difference.

inline constexpr std::size_t longest_batch_code = 40;

/// A code as typed, its blanks made single. UserError for what no label holds: more than 40
/// characters, anything but letters and digits of ASCII, blanks and - . _ / + #.
std::string read_batch_code(const std::string& typed, const Place& where);

/// The code that waits for the next making of batch `number` of `run`, since its sheet was printed.
std::optional<std::string> reserved_code(const Records& records, const std::string& run,
                                         std::int64_t number);

/// Whether it was ever given.
bool was_given(const Records& records, const std::string& code);

// What follows belongs within an act.

/// Codes that wait for batches of `from` wait for those of `to` from now on, a run under its new
/// name; but for a batch of which one waits there already.
void keep_reserved(Records& records, const std::string& from, const std::string& to);

/// The same, given now where none waits: `wanted`, or the day and the first letter that is free.
/// UserError at `where` for one that is given already.
std::string reserve_code(Records& records, const std::string& run, std::int64_t number,
                         const std::string& day, const std::optional<std::string>& wanted,
                         const Place& where);

/// The code that a batch begins with: `wanted`, else the reserved one, else the next of the day.
/// None is reserved for that batch of the run afterwards.
std::string taken_code(Records& records, const std::string& run, std::int64_t number,
                       const std::string& day, const std::optional<std::string>& wanted,
                       const Place& where);

/// Gives `wanted` to a batch that has another code, which stays given.
void give_code(Records& records, const std::string& run, std::int64_t number,
               const std::string& day, const std::string& wanted, const Place& where);

}  // namespace brimwright::records
