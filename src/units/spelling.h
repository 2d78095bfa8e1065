#pragma once

#include <span>
#include <string>
#include <string_view>

namespace brimwright {

/// A key that was called otherwise, or was asked for, in the version of a schema before today's.
struct EarlierKey {
  /// The object it stands in, as a pointer of that version; * stands for any one place or name:
  /// "/perch/*/on_top".
  std::string_view object;
  std::string_view was;
  std::string_view is;  // empty: it is asked for no longer
  std::string_view only =
      {};  // of one asked for no longer: the only value that said nothing, as JSON
  std::string_view otherwise = {};  // what to do about any other value
};

/// A kind of file: the name of its schema, its version today, and what the one before called
/// otherwise.
struct Schema {
  std::string_view name;  // "brimwright.run"
  int version = 1;
  std::span<const EarlierKey> earlier = {};

  std::string today() const;     // "brimwright.run/2"
  std::string previous() const;  // "brimwright.run/1", empty for a first version
  /// What became of `key` of the earlier version in the object at `pattern`; none where nothing
  /// did.
  const EarlierKey* earlier_key(std::string_view pattern, std::string_view key) const;
};

/// How one file spells the keys of its schema: by today's names, or by those of the version before.
class Spelling {
 public:
  /// Of a file of today's version.
  Spelling() = default;
  Spelling(const Schema& schema, bool is_earlier)
      : renamed_(schema.earlier), is_earlier_(is_earlier) {}

  bool is_earlier() const { return is_earlier_; }
  /// How the file itself spells today's `key` in the object at `pattern` (a pointer of the earlier
  /// version, its places in lists as *).
  std::string_view own(std::string_view pattern, std::string_view key) const;
  /// The earlier version's name of a key that the file itself spells so.
  std::string_view earlier(std::string_view pattern, std::string_view own_key) const;
  /// What the file should have called the key that it spells as the other version does; empty if
  /// neither knows it.
  std::string_view meant(std::string_view pattern, std::string_view own_key) const;
  /// Today's `pointer` ("/decorations/0/fill") as the file itself would write it.
  std::string pointer(std::string_view pointer) const;
  /// The last name of it, in quotes.
  std::string quoted(std::string_view pointer) const;

 private:
  std::span<const EarlierKey> renamed_ = {};
  bool is_earlier_ = false;
};

/// `pattern` one object further in: at `key`, or * for a number (a place in a list).
std::string further_in(std::string_view pattern, std::string_view key);

}  // namespace brimwright
