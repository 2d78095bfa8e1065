#include "records/documents.h"

#include "records/content_hash.h"
#include "records/database.h"
#include "records/records.h"
#include "units/user_error.h"

#include <libdeflate.h>

#include <cstdint>
#include <memory>
#include <new>
#include <stdexcept>

namespace brimwright::records {
namespace {

constexpr std::int64_t longest = 256u << 20;

template <class Thing>
auto checked(Thing* made, void (*free)(Thing*)) {
  if (made == nullptr) throw std::bad_alloc();
  return std::unique_ptr<Thing, void (*)(Thing*)>(made, free);
}

/// In zlib's format (RFC 1950).
std::string deflated(const std::string& text) {
  constexpr int usual_level = 6;
  const auto compressor =
      checked(::libdeflate_alloc_compressor(usual_level), ::libdeflate_free_compressor);
  std::string packed(::libdeflate_zlib_compress_bound(compressor.get(), text.size()), '\0');
  packed.resize(::libdeflate_zlib_compress(compressor.get(), text.data(), text.size(),
                                           packed.data(), packed.size()));
  if (packed.empty()) throw std::logic_error("a text was not deflated within its bound");
  return packed;
}

}  // namespace

bool inflate(const std::string& packed, std::int64_t length, std::string& text) {
  if (length < 1 || length > longest) return false;
  text.resize(static_cast<std::size_t>(length));
  const auto decompressor =
      checked(::libdeflate_alloc_decompressor(), ::libdeflate_free_decompressor);
  const auto done = ::libdeflate_zlib_decompress(decompressor.get(), packed.data(), packed.size(),
                                                 text.data(), text.size(), nullptr);
  return done == LIBDEFLATE_SUCCESS;
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
    const bool is_there = find.executeStep() && inflate(find.getColumn(1).getString(),
                                                        find.getColumn(0).getInt64(), text);
    if (!is_there || content_hash(text) != hash) refuse_damaged(records);
    return text;
  });
}

}  // namespace brimwright::records
