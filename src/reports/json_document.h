#pragma once

#include <nlohmann/json_fwd.hpp>

#include <string>
#include <utility>
#include <vector>

namespace brimwright::reports {

/// `json` as a document that ends its last line. A name of a file need not be UTF-8, which JSON has
/// to be: what is not becomes U+FFFD.
std::string json_document(const nlohmann::ordered_json& json);

/// A list that is so long that keeping all of it as JSON takes longer than writing it: each entry
/// becomes text as soon as it is put.
class LongList {
 public:
  /// That stands under `key` of a document, or of an entry of another list.
  explicit LongList(std::string key) : key_(std::move(key)) {}

  /// With `lists` in the entry, which has null under their keys.
  void put(const nlohmann::ordered_json& entry, const std::vector<LongList>& lists = {});

  const std::string& key() const { return key_; }
  std::string text() const;

 private:
  std::string key_, entries_;
};
/// The same document as though the lists stood in `json`, which has null under their keys.
std::string json_document(const nlohmann::ordered_json& json, const std::vector<LongList>& lists);

}  // namespace brimwright::reports
