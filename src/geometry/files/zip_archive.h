#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace brimwright::geometry {

/// The contents of a zip archive (PKWARE APPNOTE 6.3), as far as 3MF packages need them.
class ZipArchive {
 public:
  /// Reads the central directory. UserError naming `file` for what is no zip archive, is cut short,
  /// is encrypted, names an entry twice, or would unpack to more than 512 MiB or 1000 times its
  /// size.
  ZipArchive(std::string_view bytes, std::string file);

  bool has(std::string_view name) const;
  /// The unpacked bytes of an entry, by its name without a leading slash, upper and lower case
  /// alike as the packaging standard has it. UserError if it is not there or broken.
  std::string unpacked(std::string_view name) const;
  /// The work that reading the directory took, for tests.
  std::size_t names_compared() const { return names_compared_; }

 private:
  struct Entry {
    std::string name;  // in small letters
    std::uint32_t method = 0;
    std::uint32_t checksum = 0;
    std::uint64_t packed_size = 0;
    std::uint64_t size = 0;
    std::uint64_t header_at = 0;
  };

  [[noreturn]] void refuse(const std::string& problem) const;
  template <class Number>
  Number number_at(std::uint64_t at) const;
  std::uint64_t end_record() const;
  std::uint64_t take_entry(std::uint64_t at);
  void take_long_sizes(Entry& entry, std::uint64_t extra_at, std::uint64_t extra_size) const;
  void check_size(const Entry& entry) const;
  std::string_view packed(const Entry& entry) const;
  void sort_by_name();
  const Entry* find(std::string_view name) const;

  std::string_view bytes_;
  std::string file_;
  std::vector<Entry> entries_;  // by name
  std::size_t names_compared_ = 0;
};

}  // namespace brimwright::geometry
