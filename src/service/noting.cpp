#include "service/noting.h"

#include "reports/note_report.h"
#include "service/note_desk.h"

namespace brimwright::service {

Reply noted(const NoteRequest& request, const Request& asked, const moulds::Library& library,
            const Caller& caller, const ShownBatch& shown) {
  NoteDesk desk(request, asked.terms, library, caller, shown);
  if (desk.begins_records()) NoteDesk(request, asked.terms, library, caller, shown).rehearse();
  const reports::NoteReport report = desk.report();
  return {.document =
              asked.form == Form::json ? reports::note_json(report) : reports::note_text(report)};
}

}  // namespace brimwright::service
