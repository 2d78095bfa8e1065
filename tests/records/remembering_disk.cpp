#include "remembering_disk.h"

#include <sqlite3.h>

#include <algorithm>
#include <fstream>
#include <map>
#include <stdexcept>

namespace brimwright {
namespace {

namespace fs = std::filesystem;

/// One open file: SQLite's part first, then the usual VFS' own, which lies behind it.
struct OpenFile {
  sqlite3_file base;
  const char* path;
  sqlite3_file* usual() { return reinterpret_cast<sqlite3_file*>(this + 1); }
};

sqlite3_vfs* usual = nullptr;
sqlite3_vfs vfs;
std::vector<DiskAct> remembered;

OpenFile& own(sqlite3_file* file) { return *reinterpret_cast<OpenFile*>(file); }
sqlite3_file* of(sqlite3_file* file) { return own(file).usual(); }

std::string name_of(const char* path) { return fs::path(path).filename().string(); }

int close_file(sqlite3_file* file) { return of(file)->pMethods->xClose(of(file)); }
int read(sqlite3_file* file, void* to, int length, sqlite3_int64 at) {
  return of(file)->pMethods->xRead(of(file), to, length, at);
}
int write(sqlite3_file* file, const void* bytes, int length, sqlite3_int64 at) {
  const int result = of(file)->pMethods->xWrite(of(file), bytes, length, at);
  if (result == SQLITE_OK)
    remembered.push_back(
        {DiskAct::What::write, name_of(own(file).path), at,
         std::string(static_cast<const char*>(bytes), static_cast<std::size_t>(length))});
  return result;
}
int truncate(sqlite3_file* file, sqlite3_int64 length) {
  const int result = of(file)->pMethods->xTruncate(of(file), length);
  if (result == SQLITE_OK)
    remembered.push_back({DiskAct::What::truncate, name_of(own(file).path), length});
  return result;
}
int sync(sqlite3_file* file, int flags) {
  const int result = of(file)->pMethods->xSync(of(file), flags);
  if (result == SQLITE_OK) remembered.push_back({DiskAct::What::sync, name_of(own(file).path)});
  return result;
}
int file_size(sqlite3_file* file, sqlite3_int64* size) {
  return of(file)->pMethods->xFileSize(of(file), size);
}
int lock(sqlite3_file* file, int how) { return of(file)->pMethods->xLock(of(file), how); }
int unlock(sqlite3_file* file, int how) { return of(file)->pMethods->xUnlock(of(file), how); }
int is_reserved(sqlite3_file* file, int* result) {
  return of(file)->pMethods->xCheckReservedLock(of(file), result);
}
int control(sqlite3_file* file, int what, void* argument) {
  return of(file)->pMethods->xFileControl(of(file), what, argument);
}
int sector_size(sqlite3_file* file) { return of(file)->pMethods->xSectorSize(of(file)); }
int characteristics(sqlite3_file* file) {
  return of(file)->pMethods->xDeviceCharacteristics(of(file));
}

/// Version 1: no shared memory and no mapped pages, so that every change comes by xWrite.
sqlite3_io_methods own_methods() {
  sqlite3_io_methods methods{};
  methods.iVersion = 1;
  methods.xClose = close_file;
  methods.xRead = read;
  methods.xWrite = write;
  methods.xTruncate = truncate;
  methods.xSync = sync;
  methods.xFileSize = file_size;
  methods.xLock = lock;
  methods.xUnlock = unlock;
  methods.xCheckReservedLock = is_reserved;
  methods.xFileControl = control;
  methods.xSectorSize = sector_size;
  methods.xDeviceCharacteristics = characteristics;
  return methods;
}
const sqlite3_io_methods methods = own_methods();

int open_file(sqlite3_vfs*, const char* path, sqlite3_file* file, int flags, int* opened) {
  OpenFile& opening = own(file);
  opening.path = path;
  const int result = usual->xOpen(usual, path, opening.usual(), flags, opened);
  opening.base.pMethods = result == SQLITE_OK ? &methods : nullptr;
  return result;
}
int remove_file(sqlite3_vfs*, const char* path, int is_synced) {
  const int result = usual->xDelete(usual, path, is_synced);
  if (result == SQLITE_OK) remembered.push_back({DiskAct::What::remove, name_of(path)});
  return result;
}

bool is_journal(const std::string& file) { return file.ends_with("-journal"); }

void write_into(std::string& content, std::size_t at, const std::string& bytes) {
  content.resize(std::max(content.size(), at + bytes.size()), '\0');
  content.replace(at, bytes.size(), bytes);
}

bool keeps_unsynced(Left left, const std::string& file) {
  if (left == Left::records_only) return !is_journal(file);
  if (left == Left::journal_only) return is_journal(file);
  return left != Left::none;
}

}  // namespace

RememberingDisk::RememberingDisk(Under whom) {
  usual = sqlite3_vfs_find(nullptr);
  vfs = *usual;
  vfs.pNext = nullptr;
  vfs.zName = name;
  vfs.szOsFile = static_cast<int>(sizeof(OpenFile)) + usual->szOsFile;
  vfs.xOpen = open_file;
  vfs.xDelete = remove_file;
  remembered.clear();
  const int is_default = whom == Under::all ? 1 : 0;
  if (sqlite3_vfs_register(&vfs, is_default) != SQLITE_OK)
    throw std::runtime_error("no VFS registered");
}
RememberingDisk::~RememberingDisk() { sqlite3_vfs_unregister(&vfs); }

const std::vector<DiskAct>& RememberingDisk::acts() const { return remembered; }

FilesOnDisk files_in(const fs::path& folder) {
  FilesOnDisk files;
  for (const auto& entry : fs::directory_iterator(folder)) {
    std::ifstream file(entry.path(), std::ios::binary);
    files[entry.path().filename()] = {std::istreambuf_iterator<char>(file), {}};
  }
  return files;
}

void cut_off(const std::vector<DiskAct>& acts, std::size_t count, Left left, FilesOnDisk files,
             const fs::path& to) {
  std::map<std::string, std::size_t> synced;  // how many acts of it are certain
  for (std::size_t i = 0; i < count; ++i)
    if (acts[i].what == DiskAct::What::sync) synced[acts[i].file] = i;
  for (std::size_t i = 0; i < count; ++i) {
    const DiskAct& act = acts[i];
    const auto certain = synced.find(act.file);
    const bool is_certain = certain != synced.end() && i <= certain->second;
    if (!is_certain && !keeps_unsynced(left, act.file)) continue;
    std::string& content = files[act.file];
    const bool is_torn = left == Left::half_of_last && i + 1 == count;
    if (act.what == DiskAct::What::write)
      write_into(content, static_cast<std::size_t>(act.at),
                 is_torn ? act.bytes.substr(0, act.bytes.size() / 2) : act.bytes);
    if (act.what == DiskAct::What::truncate) content.resize(static_cast<std::size_t>(act.at), '\0');
    if (act.what == DiskAct::What::remove) files.erase(act.file);
  }
  for (const auto& [name, content] : files) std::ofstream(to / name, std::ios::binary) << content;
}

}  // namespace brimwright
