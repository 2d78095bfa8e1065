#pragma once

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::records {

class Database;

/// How the file of a folder's records is called.
inline constexpr auto file_name = "records.sqlite";

/// What really happened in a studio: its batches, lots and pieces, in one SQLite file in its
/// folder.
///
/// Whoever opens it gets sound records of today's version or a UserError that names the file: of a
/// newer program, of another program, damaged, locked for longer than some seconds, not to be read.
/// Records of an earlier version are brought to today's first, in one step or not at all. After a
/// crash the whole file is checked. What an act (act.h) has acknowledged outlives the end of the
/// process and a power cut; several programs may use one file at once.
class Records {
 public:
  /// Those of `folder`; nothing where it has none. Never makes a file.
  static std::optional<Records> in(const std::string& folder);
  /// Those of `folder`, begun where it has none.
  static Records kept_in(const std::string& folder);

  /// `vfs` is SQLite's name of what stands between it and the disk; only tests give one.
  static Records kept_in(const std::string& folder, const std::string& vfs);

  /// Empty ones in memory alone, which complain as though they were in `folder`: to try there what
  /// would begin its records.
  static Records rehearsed_in(const std::string& folder);

  /// Begun in `folder` with what `fill` makes of the empty file that it is given. UserError where
  /// the folder has records; where `fill` throws, nothing is there afterwards.
  static Records filled(const std::string& folder,
                        const std::function<void(const std::string& file)>& fill);

  Records(Records&&) noexcept;
  Records& operator=(Records&&) noexcept;
  ~Records();

  const std::string& path() const { return path_; }
  /// For this room alone.
  Database& database() const { return *database_; }

  /// Another with every act, of this program or others: what was read before it is as good after
  /// it.
  std::int64_t version() const;
  /// A whole copy as of now in `path`, a file that is not there yet, while others go on writing; by
  /// SQLite's own way. UserError where it cannot be written.
  void back_up(const std::string& path) const;

 private:
  Records(std::string path, std::unique_ptr<Database> database);

  std::string path_;
  std::unique_ptr<Database> database_;
};

/// Files beside the records that look as though a service that copies folders had made them when
/// two machines wrote at once, or like a copy by hand: "records (conflicted copy).sqlite". What
/// stands in them is in no answer, so they are named.
std::vector<std::string> look_alikes(const std::string& folder);

}  // namespace brimwright::records
