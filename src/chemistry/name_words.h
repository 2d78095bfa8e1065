#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <unordered_map>
#include <utility>
#include <vector>

namespace brimwright::chemistry {

/// A name as bare words, in one spelling: "Ätz-Natron 50%" -> "atznatron" as "atz", "natron", "50".
///
/// Small letters without accents, however they are coded (composed, decomposed, full width, Greek
/// and Cyrillic letters that look Latin); "ae", "oe" and "ue" as "a", "o" and "u", so that "aetz"
/// is "atz"; "ß" as "ss"; figures apart from letters, small ones ("Na₂CO₃") as plain ones; all else
/// parts words. Bytes that are no UTF-8 part words too.
std::vector<std::string> words_of(std::string_view name);

/// Phrases that are looked for in names, each with an entry's number.
///
/// A phrase is found by whole words, wherever its own words are parted or written together:
/// "caustic soda" in "Caustic-soda beads" and "CAUSTICSODA", not in "encaustic soda". The last word
/// may have a plural's ending (-s, -es, -n, -en). A phrase that begins or ends in "*" is also found
/// as the end or the beginning of one longer word: "*saft" in "Zitronensaft".
class PhraseBook {
 public:
  struct Hit {
    std::size_t first, end;  // the name's words from `first` to before `end`
    std::size_t entry;
  };

  void add(std::string_view phrase, std::size_t entry);
  /// All finds, in the order of the name; of those that begin at one word the longest first.
  std::vector<Hit> hits(const std::vector<std::string>& words) const;

 private:
  void add_whole(const std::vector<std::string>& words, std::size_t begin,
                 std::vector<Hit>& found) const;

  std::unordered_map<std::string, std::size_t> whole_;
  std::vector<std::pair<std::string, std::size_t>> beginnings_, endings_;
  std::size_t longest_ = 0;
};

/// Whether a find lies within one of others: "potash" in "potash alum". Asked in constant time,
/// however long the name.
class Cover {
 public:
  Cover(const std::vector<PhraseBook::Hit>& hits, std::size_t words);
  bool holds(const PhraseBook::Hit& hit) const { return reach_[hit.first] >= hit.end; }

 private:
  std::vector<std::size_t> reach_;  // of the finds that begin at a word or before it
};

/// True if `hit` is denied: "lye-free", "laugenfrei", "sans soude", "free of lye"; not in "lye,
/// free of carbonate" or "free-flowing lye".
bool is_denied(const std::vector<std::string>& words, const PhraseBook::Hit& hit);

}  // namespace brimwright::chemistry
