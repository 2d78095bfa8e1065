#include "geometry/files/zip_archive.h"

#include "units/letters.h"
#include "units/user_error.h"

#include <zlib.h>

#include <algorithm>
#include <bit>
#include <cstring>
#include <type_traits>

namespace brimwright::geometry {
namespace {

// Signatures, sizes and places of fields: PKWARE APPNOTE 6.3,
// sections 4.3.7, 4.3.12, 4.3.16, 4.5.3.
constexpr std::uint32_t end_signature = 0x06054b50;
constexpr std::uint32_t entry_signature = 0x02014b50;
constexpr std::uint32_t local_signature = 0x04034b50;
constexpr std::uint64_t end_size = 22;
constexpr std::uint64_t entry_size = 46;
constexpr std::uint64_t local_size = 30;
constexpr std::uint32_t in_extra_field = 0xffffffff;
constexpr std::uint16_t long_sizes_id = 1;
constexpr std::uint16_t encrypted_flag = 1;
constexpr std::uint32_t stored = 0;
constexpr std::uint32_t deflated = 8;

constexpr std::uint64_t most_unpacked = std::uint64_t{512} << 20;  // our own bounds
constexpr std::uint64_t most_expansion = 1000;
static_assert(std::endian::native == std::endian::little);

}  // namespace

void ZipArchive::refuse(const std::string& problem) const {
  throw UserError(
      {.file = file_, .field = "", .problem = problem, .remedy = "copy or export it again"});
}

template <class Number>
Number ZipArchive::number_at(std::uint64_t at) const {
  static_assert(std::is_unsigned_v<Number>);
  if (at > bytes_.size() || bytes_.size() - at < sizeof(Number)) refuse("is a package cut short");
  Number number;
  std::memcpy(&number, bytes_.data() + at, sizeof number);
  return number;
}

ZipArchive::ZipArchive(std::string_view bytes, std::string file)
    : bytes_(bytes), file_(std::move(file)) {
  const std::uint64_t end = end_record();
  const auto entries = number_at<std::uint16_t>(end + 10);
  const auto start = number_at<std::uint32_t>(end + 16);
  if (entries == 0xffff || start == in_extra_field) refuse("is a package of too many parts");
  std::uint64_t total = 0;
  std::uint64_t at = start;
  for (int i = 0; i < entries; ++i) {
    at = take_entry(at);
    total += entries_.back().size;
    if (total > most_unpacked) refuse("would unpack to more than 512 MiB");
  }
  sort_by_name();
}

/// So that 65 thousand names are told apart, and found, without comparing each with each.
void ZipArchive::sort_by_name() {
  std::sort(entries_.begin(), entries_.end(), [this](const Entry& a, const Entry& b) {
    ++names_compared_;
    return a.name < b.name;
  });
  const auto twice =
      std::adjacent_find(entries_.begin(), entries_.end(),
                         [](const Entry& a, const Entry& b) { return a.name == b.name; });
  if (twice != entries_.end()) refuse("is a package that names one part twice");
}

/// The record at the archive's end; a comment of up to 65535 bytes may follow it.
std::uint64_t ZipArchive::end_record() const {
  if (bytes_.size() < end_size) refuse("is not a package (zip archive)");
  const std::uint64_t last = bytes_.size() - end_size;
  const std::uint64_t first = last > 0xffff ? last - 0xffff : 0;
  for (std::uint64_t at = last + 1; at-- > first;) {
    if (number_at<std::uint32_t>(at) == end_signature &&
        at + end_size + number_at<std::uint16_t>(at + 20) == bytes_.size()) {
      return at;
    }
  }
  refuse("is not a package (zip archive), or one cut short");
}

/// Takes the entry of the central directory at `at`; returns where the next one starts.
std::uint64_t ZipArchive::take_entry(std::uint64_t at) {
  if (number_at<std::uint32_t>(at) != entry_signature) refuse("is a broken package");
  Entry entry;
  if ((number_at<std::uint16_t>(at + 8) & encrypted_flag) != 0) refuse("is an encrypted package");
  entry.method = number_at<std::uint16_t>(at + 10);
  entry.checksum = number_at<std::uint32_t>(at + 16);
  entry.packed_size = number_at<std::uint32_t>(at + 20);
  entry.size = number_at<std::uint32_t>(at + 24);
  const auto name_size = number_at<std::uint16_t>(at + 28);
  const auto extra_size = number_at<std::uint16_t>(at + 30);
  const auto comment_size = number_at<std::uint16_t>(at + 32);
  entry.header_at = number_at<std::uint32_t>(at + 42);
  const std::uint64_t extra_at = at + entry_size + name_size;
  if (extra_at + extra_size > bytes_.size()) refuse("is a package cut short");
  entry.name = in_small_letters(std::string(bytes_.substr(at + entry_size, name_size)));
  take_long_sizes(entry, extra_at, extra_size);
  check_size(entry);
  entries_.push_back(std::move(entry));
  return extra_at + extra_size + comment_size;
}

/// Sizes that do not fit 32 bits, or were not known in time, stand in an extra field.
void ZipArchive::take_long_sizes(Entry& entry, std::uint64_t at, std::uint64_t size) const {
  const std::uint64_t end = at + size;
  while (at + 4 <= end) {
    const auto id = number_at<std::uint16_t>(at);
    const auto length = number_at<std::uint16_t>(at + 2);
    if (id == long_sizes_id) {
      std::uint64_t field = at + 4;
      for (std::uint64_t* number : {&entry.size, &entry.packed_size, &entry.header_at}) {
        if (*number != in_extra_field) continue;
        *number = number_at<std::uint64_t>(field);
        field += sizeof(std::uint64_t);
      }
      return;
    }
    at += 4 + std::uint64_t{length};
  }
}

void ZipArchive::check_size(const Entry& entry) const {
  if (entry.size > most_unpacked) refuse("would unpack to more than 512 MiB");
  if (entry.packed_size > bytes_.size()) refuse("is a package cut short");
  if (entry.size > most_expansion * std::max<std::uint64_t>(entry.packed_size, 1))
    refuse("would unpack to more than 1000 times its size");
}

const ZipArchive::Entry* ZipArchive::find(std::string_view name) const {
  const std::string small = in_small_letters(std::string(name));
  const auto found = std::lower_bound(
      entries_.begin(), entries_.end(), small,
      [](const Entry& entry, const std::string& wanted) { return entry.name < wanted; });
  return found != entries_.end() && found->name == small ? &*found : nullptr;
}

bool ZipArchive::has(std::string_view name) const { return find(name) != nullptr; }

std::string_view ZipArchive::packed(const Entry& entry) const {
  if (number_at<std::uint32_t>(entry.header_at) != local_signature) refuse("is a broken package");
  const std::uint64_t start = entry.header_at + local_size +
                              number_at<std::uint16_t>(entry.header_at + 26) +
                              number_at<std::uint16_t>(entry.header_at + 28);
  if (start > bytes_.size() || bytes_.size() - start < entry.packed_size)
    refuse("is a package cut short");
  return bytes_.substr(start, entry.packed_size);
}

std::string ZipArchive::unpacked(std::string_view name) const {
  const Entry* entry = find(name);
  if (entry == nullptr) refuse("is a package without its part " + std::string(name));
  const std::string_view from = packed(*entry);
  std::string text(entry->size, '\0');
  if (entry->method == stored) {
    if (entry->packed_size != entry->size) refuse("is a broken package");
    text = from;
  } else if (entry->method == deflated) {
    z_stream stream{};
    if (inflateInit2(&stream, -MAX_WBITS) != Z_OK) refuse("cannot be unpacked");
    stream.next_in = reinterpret_cast<Bytef*>(const_cast<char*>(from.data()));
    stream.avail_in = static_cast<uInt>(from.size());
    stream.next_out = reinterpret_cast<Bytef*>(text.data());
    stream.avail_out = static_cast<uInt>(text.size());
    const int end = inflate(&stream, Z_FINISH);
    inflateEnd(&stream);
    if (end != Z_STREAM_END || stream.avail_out != 0) refuse("is a broken package");
  } else {
    refuse("is a package packed in a way not known here");
  }
  const auto checksum = crc32_z(0, reinterpret_cast<const Bytef*>(text.data()), text.size());
  if (checksum != entry->checksum) refuse("is a package whose contents are damaged");
  return text;
}

}  // namespace brimwright::geometry
