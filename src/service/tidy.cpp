#include "service/tidy.h"

#include "chemistry/user_fats.h"
#include "moulds/mould_file.h"
#include "planning/tips.h"
#include "runs/named_files.h"
#include "runs/order_file.h"
#include "runs/run_file.h"
#include "schemas/kinds.h"
#include "schemas/tidying.h"
#include "units/fields.h"
#include "units/shown_text.h"
#include "units/wording.h"

namespace brimwright::service {
namespace {

/// Has the file's own reader look at all of it.
void read_as(const Schema& kind, const std::string& text, const std::string& file,
             const moulds::Library& library) {
  const Fields fields = Fields::parse(text, file);
  if (&kind == &schemas::run()) (void)runs::read_run(fields, library, {});
  if (&kind == &schemas::formula()) (void)runs::read_formula(fields, library);
  if (&kind == &schemas::mould()) (void)moulds::read_mould(fields, library);
  if (&kind == &schemas::tips()) (void)planning::read_tips(fields);
  if (&kind == &schemas::fats()) (void)chemistry::read_user_fats(fields);
  if (&kind == &schemas::order()) (void)runs::read_order(fields, library);
}

const Schema& kind_of(const Fields& fields) { return *schemas::kind_called(fields.text("schema")); }

std::string done_to(const schemas::Tidied& tidied, bool has_new_id) {
  const std::string id = has_new_id ? "given an id" : "";
  if (tidied.is_as_before) return id.empty() ? "up to date" : id;
  return "version " + std::to_string(tidied.from_version) + " is now version " +
         std::to_string(tidied.version) +
         (tidied.keys_renamed == 0
              ? ""
              : ", " + counted(tidied.keys_renamed, "key renamed", "keys renamed")) +
         (id.empty() ? "" : ", " + id);
}

}  // namespace

Reply tidied_up(const TidyRequest& request, const UserTerms& terms,
                const moulds::Library& library) {
  if (request.files.empty())
    throw UserError(terms.place("file"), "is missing", "name the files to tidy");
  Reply reply;
  for (const std::string& file : request.files) {
    const std::string text = text_of_file(file);
    schemas::Tidied tidied = schemas::tidied(text, file);
    const Schema& kind = kind_of(Fields::parse(text, file));
    read_as(kind, text, file, library);
    const bool wants_id = &kind == &schemas::run() || &kind == &schemas::order();
    if (wants_id) tidied.text = schemas::with_id(tidied.text, schemas::new_id(), file);
    const bool has_new_id = wants_id && !Fields::parse(text, file).has("id");
    reply.document += on_one_line(file) + ": " + done_to(tidied, has_new_id) + "\n";
    if (tidied.text == text) continue;
    read_as(kind, tidied.text, file, library);
    reply.files.push_back({file, std::move(tidied.text)});
  }
  return reply;
}

}  // namespace brimwright::service
