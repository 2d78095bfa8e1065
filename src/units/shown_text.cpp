#include "units/shown_text.h"

#include <array>
#include <charconv>
#include <cstdint>

namespace brimwright {
namespace {

constexpr std::string_view replacement = "\uFFFD";

bool is_continuation(char c) { return (static_cast<unsigned char>(c) & 0xc0) == 0x80; }

/// How many bytes `lead` announces, and the bits of the number that it holds itself.
struct Lead {
  std::size_t bytes;
  std::uint32_t bits;
  std::uint32_t least;  // below it the form is overlong
};
std::optional<Lead> lead_of(unsigned char lead) {
  if (lead < 0x80) return Lead{1, lead, 0};
  if ((lead & 0xe0) == 0xc0) return Lead{2, lead & 0x1fu, 0x80};
  if ((lead & 0xf0) == 0xe0) return Lead{3, lead & 0x0fu, 0x800};
  if ((lead & 0xf8) == 0xf0) return Lead{4, lead & 0x07u, 0x10000};
  return std::nullopt;
}

}  // namespace

Character first_character(std::string_view text) {
  const auto lead = lead_of(static_cast<unsigned char>(text.front()));
  if (!lead || lead->bytes > text.size()) return {1, std::nullopt};
  std::uint32_t number = lead->bits;
  for (std::size_t i = 1; i < lead->bytes; ++i) {
    if (!is_continuation(text[i])) return {1, std::nullopt};
    number = number << 6 | (static_cast<unsigned char>(text[i]) & 0x3fu);
  }
  const bool is_surrogate = number >= 0xd800 && number <= 0xdfff;
  if (number < lead->least || number > 0x10ffff || is_surrogate) return {1, std::nullopt};
  return {lead->bytes, number};
}

namespace {

bool is_control(std::uint32_t number) {
  return number < 0x20 || (number >= 0x7f && number <= 0x9f);
}
bool turns_direction(std::uint32_t number) {
  return (number >= 0x202a && number <= 0x202e) || (number >= 0x2066 && number <= 0x2069);
}
bool ends_line(std::uint32_t number) {
  return number == '\n' || number == '\t' || number == 0x2028 || number == 0x2029;
}

/// "\x1b" or "\u202e".
std::string written_out(std::uint32_t number) {
  std::array<char, 8> digits{};
  const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), number, 16).ptr;
  const std::string hex(digits.data(), end);
  const std::size_t width = number <= 0xff ? 2 : 4;
  return (width == 2 ? "\\x" : "\\u") + std::string(width - hex.size(), '0') + hex;
}

enum class Lines { stay, written_out };

std::string shown(std::string_view text, Lines lines) {
  std::string out;
  out.reserve(text.size());
  while (!text.empty()) {
    const auto [bytes, number] = first_character(text);
    const bool stays = number && lines == Lines::stay && (*number == '\n' || *number == '\t');
    const bool is_line_end = number && lines == Lines::written_out && ends_line(*number);
    if (!number)
      out += replacement;
    else if (!stays && (is_line_end || is_control(*number) || turns_direction(*number)))
      out += written_out(*number);
    else
      out += text.substr(0, bytes);
    text.remove_prefix(bytes);
  }
  return out;
}

/// Where in `text` the character number `index` begins.
std::size_t start_of(std::string_view text, std::size_t index) {
  std::size_t at = 0;
  for (; index > 0 && at < text.size(); --index) at += first_character(text.substr(at)).bytes;
  return at;
}

}  // namespace

std::string for_terminal(std::string_view text) { return shown(text, Lines::stay); }

std::string on_one_line(std::string_view text) { return shown(text, Lines::written_out); }

std::size_t characters_in(std::string_view text) {
  std::size_t count = 0;
  for (; !text.empty(); ++count) text.remove_prefix(first_character(text).bytes);
  return count;
}

std::string shortened(std::string_view text, std::size_t most) {
  constexpr std::string_view ellipsis = " … ";
  constexpr std::size_t ellipsis_characters = 3;
  if (text.size() <= most) return std::string(text);
  const std::size_t count = characters_in(text);
  if (count <= most) return std::string(text);
  const std::size_t kept = most > ellipsis_characters ? most - ellipsis_characters : 0;
  const std::size_t in_front = kept - kept / 3;  // the beginning tells most
  return std::string(text.substr(0, start_of(text, in_front))) + std::string(ellipsis) +
         std::string(text.substr(start_of(text, count - kept / 3)));
}

}  // namespace brimwright
