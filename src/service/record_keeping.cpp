#include "service/record_keeping.h"

#include "records/exchange.h"
#include "records/overview.h"
#include "records/records.h"
#include "reports/records_report.h"

#include <filesystem>

namespace brimwright::service {
namespace {

namespace fs = std::filesystem;

/// What is there to be exported or backed up.
const records::Records& needed(const std::optional<records::Records>& records,
                               const std::string& folder) {
  if (records) return *records;
  throw UserError({folder, ""}, "has no records",
                  "name the folder of runs whose batches were noted");
}

void check_folder(const std::string& folder, const UserTerms& terms) {
  std::error_code none;
  if (!fs::is_directory(folder, none))
    throw UserError(terms.place("folder"), "\"" + folder + "\" is no folder",
                    "name the folder that the runs are in");
}

void check_backup(const RecordsRequest& request, const UserTerms& terms) {
  if (request.backup && fs::path(*request.backup).extension() != ".sqlite")
    throw UserError(terms.place("backup"), "\"" + *request.backup + "\" does not end in .sqlite",
                    "give a name that ends so");
}

}  // namespace

Reply record_keeping(const RecordsRequest& request, const Request& asked, const Caller& caller) {
  check_folder(request.folder, asked.terms);
  check_backup(request, asked.terms);
  Reply reply;
  reports::RecordsReport report{.path = (fs::path(request.folder) / records::file_name).string(),
                                .look_alikes = records::look_alikes(request.folder)};
  caller.tell_read({report.path, request.import.value_or(report.path)});
  if (request.import) {
    records::import_records(request.folder, *request.import);
    report.done.push_back("Imported: " + *request.import);
  }
  const auto records = records::Records::in(request.folder);
  if (request.backup) {
    needed(records, request.folder).back_up(*request.backup);
    report.done.push_back("Written: " + *request.backup);
  }
  for (const WantedFile& file : request.files) {
    reply.files.push_back({file.name, records::exported(needed(records, request.folder))});
    report.done.push_back("Written: " + file.name);
  }
  if (records) report.overview = records::overview_of(*records);
  reply.document =
      asked.form == Form::json ? reports::records_json(report) : reports::records_text(report);
  return reply;
}

}  // namespace brimwright::service
