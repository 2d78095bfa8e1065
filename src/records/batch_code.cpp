#include "records/batch_code.h"

#include "records/database.h"
#include "records/records.h"
#include "units/letters.h"

#include <algorithm>

namespace brimwright::records {
namespace {

bool is_of_a_code(char c) {
  return is_letter(c) || (c >= '0' && c <= '9') ||
         std::string_view(" -._/+#").find(c) != std::string_view::npos;
}

/// "A" to "Z", then "AA", "AB" ...
std::string letters_of(std::int64_t number) {
  std::string letters;
  for (; number > 0; number = (number - 1) / 26)
    letters.insert(letters.begin(), static_cast<char>('A' + (number - 1) % 26));
  return letters;
}

std::string next_of(Records& records, const std::string& day) {
  for (std::int64_t i = 1;; ++i) {
    std::string code = day + letters_of(i);
    if (!was_given(records, code)) return code;
  }
}

/// What has the code, for people.
std::string holder_of(Records& records, const std::string& code) {
  SQLite::Statement find(records.database().connection(),
                         "SELECT begun_on, run_name, number FROM batch WHERE code = ?");
  SQLite::bind(find, code);
  if (!find.executeStep()) return "was given to another batch";
  return "is the code of batch " + std::to_string(find.getColumn(2).getInt64()) + " of \"" +
         find.getColumn(1).getString() + "\", begun on " + find.getColumn(0).getString();
}

void refuse_given(Records& records, const std::string& code, const Place& where) {
  if (was_given(records, code))
    throw UserError(where, "\"" + code + "\" " + holder_of(records, code),
                    "give one that no batch ever had");
}

void give(Records& records, const std::string& code, const std::string& run, std::int64_t number,
          const std::string& day, bool is_reserved) {
  SQLite::Statement put(
      records.database().connection(),
      "INSERT INTO code (code, run, number, given_on, reserved) VALUES (?, ?, ?, ?, ?)");
  SQLite::bind(put, code, run, number, day, is_reserved ? 1 : 0);
  put.exec();
}

bool is_same(const std::string& one, const std::string& other) {
  return in_small_letters(one) == in_small_letters(other);
}

}  // namespace

bool was_given(const Records& records, const std::string& code) {
  return told(records.path(), [&] {
    SQLite::Statement find(records.database().connection(), "SELECT 1 FROM code WHERE code = ?");
    SQLite::bind(find, code);
    return find.executeStep();
  });
}

std::string read_batch_code(const std::string& typed, const Place& where) {
  std::string code;
  for (const char c : typed)
    if (c != ' ' || (!code.empty() && code.back() != ' ')) code += c;
  if (code.ends_with(' ')) code.pop_back();
  if (code.empty()) throw UserError(where, "is empty", "give a code such as 2026-12-01A");
  if (code.size() > longest_batch_code)
    throw UserError(where, "is longer than " + std::to_string(longest_batch_code) + " characters",
                    "give a shorter one, such as 2026-12-01A");
  if (!std::all_of(code.begin(), code.end(), is_of_a_code))
    throw UserError(where, "has something in it that not every label and search shows alike",
                    "give one of letters a to z, digits, blanks and - . _ / + #");
  return code;
}

std::optional<std::string> reserved_code(const Records& records, const std::string& run,
                                         std::int64_t number) {
  return told(records.path(), [&]() -> std::optional<std::string> {
    SQLite::Statement find(
        records.database().connection(),
        "SELECT code FROM code WHERE run = ? AND number = ? AND reserved = 1 ORDER BY code");
    SQLite::bind(find, run, number);
    if (!find.executeStep()) return std::nullopt;
    return find.getColumn(0).getString();
  });
}

void keep_reserved(Records& records, const std::string& from, const std::string& to) {
  told(records.path(), [&] {
    SQLite::Statement put(records.database().connection(),
                          "UPDATE code SET run = ?2 WHERE run = ?1 AND reserved = 1 AND NOT EXISTS "
                          "(SELECT 1 FROM code AS own WHERE own.run = ?2 AND own.number = "
                          "code.number AND own.reserved = 1)");
    SQLite::bind(put, from, to);
    put.exec();
  });
}

std::string reserve_code(Records& records, const std::string& run, std::int64_t number,
                         const std::string& day, const std::optional<std::string>& wanted,
                         const Place& where) {
  return told(records.path(), [&] {
    const auto reserved = reserved_code(records, run, number);
    if (reserved && wanted && !is_same(*reserved, *wanted))
      throw UserError(where, "does not fit: " + *reserved + " is reserved for this batch already",
                      "leave it out, or give it when the batch is begun");
    if (reserved) return *reserved;
    if (wanted) refuse_given(records, *wanted, where);
    std::string code = wanted ? *wanted : next_of(records, day);
    give(records, code, run, number, day, true);
    return code;
  });
}

std::string taken_code(Records& records, const std::string& run, std::int64_t number,
                       const std::string& day, const std::optional<std::string>& wanted,
                       const Place& where) {
  return told(records.path(), [&] {
    const auto reserved = reserved_code(records, run, number);
    const bool is_reserved = reserved && (!wanted || is_same(*wanted, *reserved));
    if (wanted && !is_reserved) refuse_given(records, *wanted, where);
    std::string code = is_reserved ? *reserved : wanted ? *wanted : next_of(records, day);
    if (!is_reserved) give(records, code, run, number, day, false);
    SQLite::Statement used(
        records.database().connection(),
        "UPDATE code SET reserved = 0 WHERE run = ? AND number = ? AND reserved = 1");
    SQLite::bind(used, run, number);
    used.exec();
    return code;
  });
}

void give_code(Records& records, const std::string& run, std::int64_t number,
               const std::string& day, const std::string& wanted, const Place& where) {
  told(records.path(), [&] {
    refuse_given(records, wanted, where);
    give(records, wanted, run, number, day, false);
  });
}

}  // namespace brimwright::records
