#include "records/note_values.h"

#include "units/reading.h"
#include "units/written_number.h"

#include <string_view>

namespace brimwright::records {
namespace {

constexpr std::int64_t most_pieces = 1'000'000;

}  // namespace

std::optional<std::string> weighing_day(const std::string& key) {
  constexpr std::string_view beginning = "cured.";
  if (!key.starts_with(beginning)) return std::nullopt;
  return key.substr(beginning.size());
}

std::int64_t read_count(const std::string& value, const Place& where) {
  const std::string text = plain(value);
  Text rest{text};
  const std::string digits(rest.digits());
  if (digits.empty() || digits.size() > 7 || !rest.rest.empty() || std::stoll(digits) > most_pieces)
    throw UserError(where, quoted(value) + " is not a number of pieces", "give a whole number");
  return std::stoll(digits);
}

Length read_signed_length(const std::string& value, const Place& where) {
  std::string text = plain(value);
  const bool is_negative = text.starts_with('-');
  if (is_negative || text.starts_with('+')) text.erase(0, 1);
  const Length size = read_length(text, where, "-1.5 mm");
  return is_negative ? -size : size;
}

Weighing read_weighing(const std::string& value, const std::string& day, const Place& where) {
  const std::string text = plain(value);
  Text rest{text};
  const std::string digits(rest.digits());
  rest.skip_blanks();
  for (const std::string_view word : {"pieces", "piece", "bars", "bar"})
    if (rest.rest.starts_with(word)) {
      rest.rest.remove_prefix(word.size());
      rest.skip_blanks();
      if (rest.rest.starts_with(',') || rest.rest.starts_with(':')) rest.rest.remove_prefix(1);
      rest.skip_blanks();
      const std::string together(rest.rest);
      const Weighing weighing{day, read_count(digits, where), together,
                              read_mass(together, where, "1040 g")};
      if (weighing.pieces < 1 || !(weighing.together > Mass{}))
        throw UserError(where, quoted(value) + " is nothing on a scale",
                        "write it such as 12 pieces, 1040 g");
      return weighing;
    }
  throw UserError(where, quoted(value) + " does not say how many pieces weigh how much together",
                  "write it such as 12 pieces, 1040 g");
}

}  // namespace brimwright::records
