#pragma once

#include <ctime>
#include <string>

namespace brimwright::desk {

/// A moment by this machine's clock, with its offset from UTC, as RFC 3339 writes it:
/// "2026-11-14T09:30:05+01:00".
std::string moment_in_words(std::time_t moment);
std::string now_in_words();
/// Whether `text` is of that form.
bool is_moment(const std::string& text);

}  // namespace brimwright::desk
