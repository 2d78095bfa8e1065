#include "records/documents.h"

#include "records/content_hash.h"
#include "records/database.h"
#include "records/records.h"
#include "units/user_error.h"

#include <zlib.h>

#include <cstdint>
#include <new>
#include <stdexcept>

namespace brimwright::records {
namespace {

constexpr std::int64_t longest = 256u << 20;

std::string deflated(const std::string& text) {
  uLongf length = ::compressBound(text.size());
  std::string packed(length, '\0');
  const int done =
      ::compress2(reinterpret_cast<Bytef*>(packed.data()), &length,
                  reinterpret_cast<const Bytef*>(text.data()), text.size(), Z_DEFAULT_COMPRESSION);
  if (done != Z_OK) throw std::bad_alloc();
  packed.resize(length);
  return packed;
}

}  // namespace

std::string inflated(const std::string& packed, std::int64_t length) {
  if (length < 0 || length > longest) return "";
  std::string text(static_cast<std::size_t>(length), '\0');
  uLongf found = text.size();
  const int done = ::uncompress(reinterpret_cast<Bytef*>(text.data()), &found,
                                reinterpret_cast<const Bytef*>(packed.data()), packed.size());
  return done == Z_OK && found == text.size() ? text : "";
}

void refuse_damaged(const Records& records) {
  throw UserError({records.path(), ""}, "is damaged: a frozen plan in it cannot be read",
                  "keep it, and put a backup in its place");
}

void put_document(SQLite::Database& connection, const std::string& hash, const std::string& text) {
  SQLite::Statement has(connection, "SELECT 1 FROM document WHERE hash = ?");
  SQLite::bind(has, hash);
  if (has.executeStep()) return;
  const std::string packed = deflated(text);
  SQLite::Statement put(connection, "INSERT INTO document (hash, length, packed) VALUES (?, ?, ?)");
  put.bind(1, hash);
  put.bind(2, static_cast<std::int64_t>(text.size()));
  put.bind(3, packed.data(), static_cast<int>(packed.size()));
  put.exec();
}

std::string keep_document(Records& records, const std::string& text) {
  if (text.size() > static_cast<std::size_t>(longest))
    throw std::runtime_error("a document is too long to be kept");
  std::string hash = content_hash(text);
  told(records.path(), [&] { put_document(records.database().connection(), hash, text); });
  return hash;
}

std::string document(const Records& records, const std::string& hash) {
  return told(records.path(), [&] {
    SQLite::Statement find(records.database().connection(),
                           "SELECT length, packed FROM document WHERE hash = ?");
    SQLite::bind(find, hash);
    std::string text;
    if (find.executeStep())
      text = inflated(find.getColumn(1).getString(), find.getColumn(0).getInt64());
    if (text.empty() || content_hash(text) != hash) refuse_damaged(records);
    return text;
  });
}

}  // namespace brimwright::records
