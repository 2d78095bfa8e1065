#include "records/records.h"

#include "records/database.h"
#include "records/half_made.h"
#include "units/letters.h"
#include "units/user_error.h"

#include <fcntl.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cstring>
#include <filesystem>

namespace brimwright::records {

namespace fs = std::filesystem;

namespace {

std::string path_in(const std::string& folder) {
  return (fs::path(folder.empty() ? "." : folder) / file_name).string();
}

bool is_there(const std::string& path) {
  std::error_code none;
  return fs::exists(fs::symlink_status(path, none));
}

void flush(const std::string& path) {
  const int file = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
  if (file < 0) return;
  ::fsync(file);
  ::close(file);
}

UserError not_made(const std::string& path, int error) {
  return {{path, ""},
          std::string("cannot be made: ") + std::strerror(error),
          "check that you may write to its folder and that there is room"};
}

/// Makes the file `path` by `work` on another beside it, which then gets its name: there is never a
/// file of that name that is half made. The error, where somebody was faster or it cannot be.
template <class Work>
int made_whole(const std::string& path, Work work) {
  const std::string beside = name_while_made(path);
  const int file = ::open(beside.c_str(), O_CREAT | O_EXCL | O_RDWR | O_CLOEXEC, 0666);
  if (file < 0) return errno;
  ::close(file);
  int error = 0;
  try {
    work(beside);
    flush(beside);
    if (::link(beside.c_str(), path.c_str()) != 0) error = errno;
  } catch (...) {
    ::unlink(beside.c_str());
    throw;
  }
  ::unlink(beside.c_str());
  flush(fs::path(path).parent_path().empty() ? "." : fs::path(path).parent_path().string());
  return error;
}

void begin(const std::string& path, const std::string& vfs) {
  const int error = made_whole(path, [&](const std::string& file) { make_database(file, vfs); });
  if (error != 0 && error != EEXIST) throw not_made(path, error);
}

}  // namespace

Records::Records(std::string path, std::unique_ptr<Database> database)
    : path_(std::move(path)), database_(std::move(database)) {}
Records::Records(Records&&) noexcept = default;
Records& Records::operator=(Records&&) noexcept = default;
Records::~Records() = default;

std::optional<Records> Records::in(const std::string& folder) {
  const std::string path = path_in(folder);
  if (!is_there(path)) return std::nullopt;
  return Records(path, std::make_unique<Database>(path));
}

Records Records::kept_in(const std::string& folder) { return kept_in(folder, ""); }

Records Records::kept_in(const std::string& folder, const std::string& vfs) {
  const std::string path = path_in(folder);
  if (!is_there(path)) begin(path, vfs);
  return {path, std::make_unique<Database>(path, vfs)};
}

Records Records::rehearsed_in(const std::string& folder) {
  const std::string path = path_in(folder);
  return {path, std::make_unique<Database>(Database::in_memory(path))};
}

Records Records::filled(const std::string& folder,
                        const std::function<void(const std::string& file)>& fill) {
  const std::string path = path_in(folder);
  const auto refuse = [&] {
    throw UserError({path, ""}, "is there already, and nothing is written over it",
                    "name a folder that has no records");
  };
  if (is_there(path)) refuse();
  const int error = made_whole(path, fill);
  if (error == EEXIST) refuse();
  if (error != 0) throw not_made(path, error);
  return {path, std::make_unique<Database>(path)};
}

std::int64_t Records::version() const {
  return told(path_, [&] {
    return database_->connection()
        .execAndGet("SELECT coalesce(max(number), 0) FROM act")
        .getInt64();
  });
}

void Records::back_up(const std::string& path) const {
  if (is_there(path))
    throw UserError({path, ""}, "is there already", "give the backup a name that no file has");
  const int error = made_whole(path, [&](const std::string& file) {
    told(path, [&] {
      SQLite::Database copy(file, SQLite::OPEN_READWRITE);
      SQLite::Backup backup(copy, database_->connection());
      backup.executeStep(-1);
    });
  });
  if (error != 0) throw not_made(path, error);
}

std::vector<std::string> look_alikes(const std::string& folder) {
  std::vector<std::string> found;
  std::error_code none;
  for (fs::directory_iterator at(folder.empty() ? "." : folder, none);
       !none && at != fs::directory_iterator(); at.increment(none)) {
    const std::string name = at->path().filename().string();
    const std::string small = in_small_letters(name);
    if (name != file_name && small.starts_with("records") && small.find(".sqlite") != small.npos &&
        small.find("-journal") == small.npos && at->is_regular_file(none))
      found.push_back(name);
  }
  std::sort(found.begin(), found.end());
  return found;
}

}  // namespace brimwright::records
