#include "service/run_records.h"

#include "records/batch_code.h"
#include "units/fields.h"

#include <algorithm>
#include <filesystem>
#include <system_error>

namespace brimwright::service {

namespace fs = std::filesystem;

namespace {

fs::path whole_path(const fs::path& path) {
  std::error_code error;
  fs::path found = fs::weakly_canonical(fs::absolute(path, error), error);
  return error ? path : found;
}

bool is_built_in(const fs::path& folder, const moulds::Library& library) {
  if (library.shipped.empty()) return false;
  const fs::path shipped = whole_path(library.shipped);
  for (const char* name : {"examples", "moulds", "meshes"})
    if (whole_path(folder) == shipped / name) return true;
  return false;
}

std::string id_in(const fs::path& path) try {
  const Fields fields = Fields::read(path.string());
  return fields.has("id") ? fields.uuid("id") : "";
} catch (const UserError&) {
  return "";
}

RunRecords records_beside(const std::string& file, const moulds::Library& library) {
  const fs::path path(file);
  const std::string folder = path.has_parent_path() ? path.parent_path().string() : ".";
  if (is_built_in(folder, library))
    throw UserError({file, ""}, "is a built-in example, beside which nothing is recorded",
                    "copy it into a folder of your own first");
  return {.folder = folder, .file = path.filename().string(), .id = "", .name = ""};
}

}  // namespace

std::string RunRecords::key() const { return keys().front(); }

std::vector<std::string> RunRecords::keys() const {
  const std::string of = word.empty() ? "" : "#" + word;
  if (id.empty()) return {"file:" + file + of};
  return {id + of, "file:" + file + of};
}

RunRecords run_records(const std::string& file, const moulds::Library& library) {
  RunRecords run = records_beside(file, library);
  const Fields fields = Fields::read(file);
  if (fields.has("id")) run.id = fields.uuid("id");
  run.name = fields.optional_name("name").value_or(run.file);
  return run;
}

RunRecords poured_records(const runs::Order& order, const std::string& word,
                          const moulds::Library& library) {
  RunRecords base = records_beside(order.file, library);
  base.id = order.id;
  base.word = word;
  base.name = "Poured together (" + word + ")";
  return base;
}

std::vector<records::Batch> batches_of(const records::Records& records, const RunRecords& run) {
  std::vector<records::Batch> all;
  for (const std::string& key : run.keys())
    for (records::Batch& batch : records::batches_of(records, key)) all.push_back(std::move(batch));
  std::stable_sort(all.begin(), all.end(), [](const records::Batch& a, const records::Batch& b) {
    return a.begun_on < b.begun_on;
  });
  return all;
}

std::optional<records::Batch> newest_batch(const records::Records& records, const RunRecords& run,
                                           std::int64_t number) {
  for (const std::string& key : run.keys())
    if (auto batch = records::newest_batch(records, key, number)) return batch;
  return std::nullopt;
}

std::optional<std::string> reserved_code(const records::Records& records, const RunRecords& run,
                                         std::int64_t number) {
  for (const std::string& key : run.keys())
    if (auto code = records::reserved_code(records, key, number)) return code;
  return std::nullopt;
}

void keep_reserved(records::Records& records, const RunRecords& run) {
  for (const std::string& key : run.keys())
    if (key != run.key()) records::keep_reserved(records, key, run.key());
}

void refuse_shared_id(const records::Records& records, const RunRecords& run) {
  if (run.id.empty()) return;
  for (const records::Batch& batch : records::batches_of(records, run.key()))
    if (batch.run_file != run.file && id_in(fs::path(run.folder) / batch.run_file) == run.id)
      throw UserError({run.file, "/id"},
                      "is the id of \"" + batch.run_file + "\" too, of which a batch is recorded",
                      "give one of the two files another id: take \"id\" out of the copy, and "
                      "brimwright tidy gives it a new one");
}

}  // namespace brimwright::service
