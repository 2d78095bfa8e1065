#pragma once

#include <cstdint>
#include <string>

namespace SQLite {
class Database;
}

namespace brimwright::records {

class Records;

/// Keeps `text` for good, deflated, and once only however often it is kept; its hash, by which it
/// is found again. Within an act.
std::string keep_document(Records& records, const std::string& text);

/// The same where the hash is known.
void put_document(SQLite::Database& connection, const std::string& hash, const std::string& text);

/// The text of that hash. UserError where the records have it damaged or not at all.
std::string document(const Records& records, const std::string& hash);

/// What was deflated, into `text`; false where `packed` is no text of that length.
bool inflate(const std::string& packed, std::int64_t length, std::string& text);
[[noreturn]] void refuse_damaged(const Records& records);

}  // namespace brimwright::records
