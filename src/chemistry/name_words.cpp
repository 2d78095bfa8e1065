#include "chemistry/name_words.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <optional>

namespace brimwright::chemistry {
namespace {

/// Takes one code point off the front of `text`; nothing for a byte that begins none.
std::optional<std::uint32_t> take_code_point(std::string_view& text) {
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
  const unsigned char lead = byte(0);
  const std::size_t length = lead < 0x80             ? 1
                             : (lead & 0xE0) == 0xC0 ? 2
                             : (lead & 0xF0) == 0xE0 ? 3
                             : (lead & 0xF8) == 0xF0 ? 4
                                                     : 0;
  std::uint32_t code = length < 2 ? lead : lead & (0xFFU >> (length + 1));
  bool sound = length > 0 && length <= text.size();
  for (std::size_t i = 1; sound && i < length; ++i) {
    sound = (byte(i) & 0xC0) == 0x80;
    code = (code << 6) | (byte(i) & 0x3FU);
  }
  text.remove_prefix(sound ? length : 1);
  if (!sound) return std::nullopt;
  return code;
}

struct Fold {
  std::uint32_t from, to;
  std::string_view as;
};

// The letters of the languages of Western and Central Europe, then Greek and Cyrillic ones that
// look like Latin ones: Unicode 15, Latin-1 Supplement, Latin Extended-A, Greek, Cyrillic.
constexpr std::array folds = {
    Fold{0xC0, 0xC5, "a"},   Fold{0xC6, 0xC6, "ae"},     Fold{0xC7, 0xC7, "c"},
    Fold{0xC8, 0xCB, "e"},   Fold{0xCC, 0xCF, "i"},      Fold{0xD1, 0xD1, "n"},
    Fold{0xD2, 0xD6, "o"},   Fold{0xD8, 0xD8, "o"},      Fold{0xD9, 0xDC, "u"},
    Fold{0xDD, 0xDD, "y"},   Fold{0xDF, 0xDF, "ss"},     Fold{0xE0, 0xE5, "a"},
    Fold{0xE6, 0xE6, "ae"},  Fold{0xE7, 0xE7, "c"},      Fold{0xE8, 0xEB, "e"},
    Fold{0xEC, 0xEF, "i"},   Fold{0xF1, 0xF1, "n"},      Fold{0xF2, 0xF6, "o"},
    Fold{0xF8, 0xF8, "o"},   Fold{0xF9, 0xFC, "u"},      Fold{0xFD, 0xFD, "y"},
    Fold{0xFF, 0xFF, "y"},   Fold{0x100, 0x105, "a"},    Fold{0x106, 0x10D, "c"},
    Fold{0x10E, 0x111, "d"}, Fold{0x112, 0x11B, "e"},    Fold{0x11C, 0x123, "g"},
    Fold{0x128, 0x131, "i"}, Fold{0x139, 0x142, "l"},    Fold{0x143, 0x148, "n"},
    Fold{0x14C, 0x151, "o"}, Fold{0x152, 0x153, "oe"},   Fold{0x154, 0x159, "r"},
    Fold{0x15A, 0x161, "s"}, Fold{0x162, 0x167, "t"},    Fold{0x168, 0x173, "u"},
    Fold{0x179, 0x17E, "z"}, Fold{0x1E9E, 0x1E9E, "ss"}, Fold{0x391, 0x391, "a"},
    Fold{0x39A, 0x39A, "k"}, Fold{0x39D, 0x39D, "n"},    Fold{0x39F, 0x39F, "o"},
    Fold{0x397, 0x397, "h"}, Fold{0x410, 0x410, "a"},    Fold{0x415, 0x415, "e"},
    Fold{0x41A, 0x41A, "k"}, Fold{0x41D, 0x41D, "h"},    Fold{0x41E, 0x41E, "o"},
    Fold{0x421, 0x421, "c"}, Fold{0x430, 0x430, "a"},    Fold{0x435, 0x435, "e"},
    Fold{0x43E, 0x43E, "o"}, Fold{0x441, 0x441, "c"}};

bool is_figure(char c) { return c >= '0' && c <= '9'; }

/// Accents that follow their letter, and marks that are not seen at all.
bool is_unseen(std::uint32_t code) {
  return (code >= 0x300 && code <= 0x36F) || code == 0xAD || (code >= 0x200B && code <= 0x200F) ||
         code == 0x2060 || code == 0xFEFF;
}

/// Small and raised figures, and letters and figures of full width, as plain ones.
std::uint32_t plain(std::uint32_t code) {
  if (code >= 0xFF01 && code <= 0xFF5E) return code - 0xFF01 + '!';
  if (code >= 0x2080 && code <= 0x2089) return code - 0x2080 + '0';
  if (code == 0xB2 || code == 0xB3) return code - 0xB0 + '0';
  return code;
}

bool is_sign(std::uint32_t code) {
  return (code >= 0x80 && code < 0xC0) || code == 0xD7 || code == 0xF7 ||
         (code >= 0x2000 && code < 0x2C00) || (code >= 0x3000 && code <= 0x3020);
}

/// The letters or the figure that `code` stands for; nothing if it parts words.
std::string letters_of(std::uint32_t given) {
  const std::uint32_t code = plain(given);
  if (code < 0x80) {
    const char c = static_cast<char>(code >= 'A' && code <= 'Z' ? code - 'A' + 'a' : code);
    return (c >= 'a' && c <= 'z') || is_figure(c) ? std::string(1, c) : "";
  }
  for (const Fold& fold : folds)
    if (code >= fold.from && code <= fold.to) return std::string(fold.as);
  if (is_sign(code)) return "";
  return "\x01" + std::to_string(code) + ";";  // another script's letter is only like itself
}

/// "ae", "oe" and "ue" are also how umlauts are written where there are none on the keys.
std::string without_umlauts(const std::string& word) {
  std::string out;
  for (const char c : word) {
    const bool after_vowel =
        !out.empty() && (out.back() == 'a' || out.back() == 'o' || out.back() == 'u');
    if (c != 'e' || !after_vowel) out += c;
  }
  return out;
}

std::string joined(const std::vector<std::string>& words) {
  std::string all;
  for (const std::string& word : words) all += word;
  return all;
}

/// What may stand at a word's end in the plural, in five languages.
constexpr std::array<std::string_view, 5> plurals = {"", "s", "es", "n", "en"};

}  // namespace

std::vector<std::string> words_of(std::string_view name) {
  std::vector<std::string> words;
  std::string word;
  const auto end_word = [&] {
    if (!word.empty()) words.push_back(without_umlauts(word));
    word.clear();
  };
  while (!name.empty()) {
    const auto code = take_code_point(name);
    if (code && is_unseen(*code)) continue;
    const std::string letters = code ? letters_of(*code) : "";
    const bool other_kind =
        !letters.empty() && !word.empty() && is_figure(word.back()) != is_figure(letters[0]);
    if (letters.empty() || other_kind) end_word();
    word += letters;
  }
  end_word();
  return words;
}

void PhraseBook::add(std::string_view phrase, std::size_t entry) {
  const std::string words = joined(words_of(phrase));
  whole_.emplace(words, entry);
  longest_ = std::max(longest_, words.size() + plurals.back().size());
  if (phrase.ends_with('*')) beginnings_.emplace_back(words, entry);
  if (phrase.starts_with('*')) endings_.emplace_back(words, entry);
}

void PhraseBook::add_whole(const std::vector<std::string>& words, std::size_t begin,
                           std::vector<Hit>& found) const {
  std::string so_far;
  const std::size_t before = found.size();
  for (std::size_t i = begin; i < words.size() && so_far.size() <= longest_; ++i) {
    so_far += words[i];
    for (const std::string_view plural : plurals) {
      if (!so_far.ends_with(plural)) continue;
      const auto at = whole_.find(so_far.substr(0, so_far.size() - plural.size()));
      if (at == whole_.end()) continue;
      found.push_back({begin, i + 1, at->second});
      break;
    }
  }
  std::reverse(found.begin() + static_cast<std::ptrdiff_t>(before), found.end());
}

std::vector<PhraseBook::Hit> PhraseBook::hits(const std::vector<std::string>& words) const {
  std::vector<Hit> found;
  for (std::size_t i = 0; i < words.size(); ++i) {
    add_whole(words, i, found);
    for (const auto& [beginning, entry] : beginnings_)
      if (words[i].size() > beginning.size() && words[i].starts_with(beginning))
        found.push_back({i, i + 1, entry});
    for (const auto& [ending, entry] : endings_)
      for (const std::string_view plural : plurals)
        if (words[i].size() > ending.size() + plural.size() &&
            words[i].ends_with(ending + std::string(plural)))
          found.push_back({i, i + 1, entry});
  }
  return found;
}

Cover::Cover(const std::vector<PhraseBook::Hit>& hits, std::size_t words) : reach_(words) {
  for (const auto& hit : hits) reach_[hit.first] = std::max(reach_[hit.first], hit.end);
  for (std::size_t i = 1; i < words; ++i) reach_[i] = std::max(reach_[i], reach_[i - 1]);
}

namespace {

template <std::size_t N>
bool is_one_of(const std::array<std::string_view, N>& list, std::string_view word) {
  return std::find(list.begin(), list.end(), word) != list.end();
}

/// "Lye-free", "lye-free soap base"; not "lye, free of carbonate" nor "lye - free delivery".
bool is_denied_after(const std::vector<std::string>& words, std::size_t end) {
  constexpr std::array<std::string_view, 5> free = {"free", "frei", "freie", "freies", "less"};
  constexpr std::array<std::string_view, 11> of_what = {"soap",     "soaps", "base",    "melt",
                                                        "glycerin", "bar",   "shampoo", "fragrance",
                                                        "scent",    "seife", "rohseife"};
  if (end >= words.size() || !is_one_of(free, words[end])) return false;
  return end + 1 == words.size() || is_one_of(of_what, words[end + 1]);
}

bool is_denied_before(const std::vector<std::string>& words, std::size_t first) {
  constexpr std::array<std::string_view, 9> without = {"no",  "non",   "without", "ohne", "sans",
                                                       "sin", "senza", "kein",    "keine"};
  constexpr std::array<std::string_view, 8> free_of = {
      "freeof", "freefrom", "freivon", "exemptde", "exemptsde", "librede", "privodi", "libredi"};
  if (first >= 1 && is_one_of(without, words[first - 1])) return true;
  return first >= 2 && is_one_of(free_of, words[first - 2] + words[first - 1]);
}

}  // namespace

bool is_denied(const std::vector<std::string>& words, const PhraseBook::Hit& hit) {
  const std::string& last = words[hit.end - 1];
  const bool denies_itself = last.size() > 4 && (last.ends_with("frei") || last.ends_with("free"));
  return denies_itself || is_denied_after(words, hit.end) || is_denied_before(words, hit.first);
}

}  // namespace brimwright::chemistry
