#pragma once

#include "geometry/files/input_file.h"
#include "geometry/files/mapped_file.h"

#include <cstddef>
#include <cstdint>
#include <memory>
#include <span>
#include <string>
#include <vector>

namespace brimwright::geometry {

/// The facets of a binary STL, block by block.
///
/// A large file is mapped, if that is safe; else it is read block by block into one small buffer,
/// since fresh memory for the whole would cost several times the reading.
class StlBlocks {
 public:
  /// UserError for what bytes_of and stl_kind refuse, for a text STL and for one without facets.
  explicit StlBlocks(const std::string& path);

  std::uint32_t facets() const { return facets_; }
  std::size_t blocks() const { return (facets_ + block_facets - 1) / block_facets; }
  /// The bytes of one block's facets; they may come to stand in `buffer`. By several threads, each
  /// with a buffer of its own.
  std::span<const char> block(std::size_t number, std::vector<char>& buffer) const;

  /// Refuses the first facet with a corner that is not a number, if there is one.
  void refuse_not_finite() const;

  static constexpr std::size_t block_facets = 2048;  // 100 kB: within a second cache

 private:
  std::string path_;
  InputFile file_;
  std::uint32_t facets_ = 0;
  std::unique_ptr<const MappedFile> map_;
};

}  // namespace brimwright::geometry
