#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace brimwright {

// Names, paths and values come from files and keyboards and may hold anything; these make them fit
// to be shown.

/// `text` as it may reach a terminal: line ends and tabs stay, every other control code (C0, DEL,
/// C1) and every mark that turns the writing direction (U+202A to U+202E, U+2066 to U+2069) is
/// written out, as in "\x1b" or "\u202e"; bytes that are not UTF-8 become U+FFFD.
std::string for_terminal(std::string_view text);
/// The same, with line ends, tabs and Unicode's line separators written out too.
std::string on_one_line(std::string_view text);

/// `text` whole if it has at most `most` characters; else its beginning and its end with an
/// ellipsis between them, `most` characters in all. Nothing is cut within a character.
std::string shortened(std::string_view text, std::size_t most);

/// A character of a text: how many bytes it takes, at least 1, and its number (code point); none if
/// those bytes are not UTF-8.
struct Character {
  std::size_t bytes;
  std::optional<std::uint32_t> number;
};
/// The character that `text`, which is not empty, begins with (RFC 3629).
Character first_character(std::string_view text);

/// Characters (code points) of UTF-8 text.
std::size_t characters_in(std::string_view text);

}  // namespace brimwright
