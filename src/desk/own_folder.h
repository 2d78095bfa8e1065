#pragma once

#include <cstdint>
#include <string>
#include <utility>

namespace brimwright::desk {

/// The program's own folder in the one that is served, `.brimwright`. Nothing in it is listed among
/// her files. It is made when there is something to keep; no link is followed on the way into it.
class OwnFolder {
 public:
  explicit OwnFolder(std::string served) : served_(std::move(served)) {}

  /// How a folder or file in it is told of: ".brimwright/bench".
  static std::string told(const std::string& part);
  /// Its path. UserError where something other than a folder stands on the way to it; the last part
  /// is not looked at.
  std::string path(const std::string& part) const;
  bool has_folder(const std::string& part) const;
  /// A folder in it, made if it is not there, so that it outlives a power cut.
  std::string made(const std::string& part) const;
  /// How often something was kept there, as far as that is known. Never throws.
  std::string changes() const;

 private:
  std::string served_;
};

/// For as long as this lives, nobody else changes what is kept in a folder: no other thread, and no
/// other program that serves it. UserError where another does not come to an end.
class AloneInFolder {
 public:
  explicit AloneInFolder(const OwnFolder& folder);
  ~AloneInFolder();
  AloneInFolder(const AloneInFolder&) = delete;
  AloneInFolder& operator=(const AloneInFolder&) = delete;

  /// From now on OwnFolder::changes() is another.
  void tell_change() const;

 private:
  int lock_;
};

/// So that the names of the files in it outlive a power cut.
void flush_folder(const std::string& folder);
/// Gives a file another name, if nothing has that yet, for good: both folders are flushed. 0, or
/// the error.
int move_file(const std::string& from, const std::string& to);

}  // namespace brimwright::desk
