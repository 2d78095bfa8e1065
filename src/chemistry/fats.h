#pragma once

#include "chemistry/fat.h"

#include <string>
#include <string_view>
#include <vector>

namespace brimwright::chemistry {

/// The shipped table (src/chemistry/data/fats.json), in its order.
const std::vector<Fat>& shipped_fats();
/// The shipped fat of that id, or nullptr.
const Fat* find_fat(std::string_view id);
/// All shipped ids, for hints.
std::vector<std::string> fat_ids();

/// The fats that a formula may name: the shipped ones and the maker's own.
class FatTable {
 public:
  FatTable() : fats_(shipped_fats()) {}
  /// With the maker's own, each in place of the shipped one whose id it has.
  explicit FatTable(const std::vector<Fat>& users_own);

  const std::vector<Fat>& fats() const { return fats_; }  // shipped ones first
  const Fat* find(std::string_view id) const;             // or nullptr
  std::vector<std::string> ids() const;

 private:
  std::vector<Fat> fats_;
};
/// The shipped fats alone.
const FatTable& shipped_table();

}  // namespace brimwright::chemistry
