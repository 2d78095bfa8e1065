#include "service/notes_reading.h"

#include "schemas/kinds.h"
#include "units/fields.h"
#include "units/written_number.h"

#include <cstdint>
#include <utility>

namespace brimwright::service {
namespace {

constexpr std::int64_t most_pieces = 1'000'000;

records::Note typed_note(const std::string& typed, const UserTerms& terms) {
  const Place where = terms.place("set");
  const std::size_t sign = typed.find('=');
  const std::string key(without_blanks(std::string_view(typed).substr(0, sign)));
  if (sign == std::string::npos || key.empty())
    throw UserError(where, quoted(typed) + " does not say what is noted of which blank",
                    "write it such as base.made=\"1766 g\"");
  return {key, typed.substr(sign + 1), {where.file, where.field + " " + key}};
}

/// A number of pieces may stand without quotes.
std::string value_in(const Fields& notes, const std::string& key) {
  if (notes.is_null(key)) return "";
  if (notes.is_text(key)) return notes.text(key);
  return std::to_string(notes.whole_number(key, 0, most_pieces));
}

void read_file(const std::string& path, NotesAsked& asked) {
  const Fields fields = Fields::read(path);
  fields.of(schemas::notes());
  asked.batch_code = fields.optional_name("batch_code");
  asked.batch_code_at = fields.place("batch_code");
  const Fields notes = fields.object("notes");
  for (const std::string& key : notes.keys())
    asked.changes.push_back({key, value_in(notes, key), notes.place(key)});
  if (fields.is_text("confirmed"))
    asked.confirmed.push_back(fields.text("confirmed"));
  else
    for (std::string& value : fields.texts("confirmed"))
      asked.confirmed.push_back(std::move(value));
  fields.refuse_unknown();
}

}  // namespace

NotesAsked notes_asked(const NoteRequest& request, const UserTerms& terms) {
  NotesAsked asked{.confirmed = request.confirmed};
  for (const std::string& typed : request.set) asked.changes.push_back(typed_note(typed, terms));
  if (request.notes) read_file(*request.notes, asked);
  if (!request.confirmed.empty() && asked.changes.empty() && !request.begin)
    throw UserError(terms.place("confirmed"), "does nothing alone",
                    "give it with the value that it confirms, " + terms.say({"set", "KEY=VALUE"}));
  return asked;
}

}  // namespace brimwright::service
