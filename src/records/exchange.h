#pragma once

#include <string>

namespace brimwright::records {

class Records;

/// Everything in the records as JSON, schema brimwright.records/1: each table's rows by its key,
/// one a line, frozen documents as their text. The same records are the same bytes.
std::string exported(const Records& records);

/// Begins records in `folder` with what was exported into `file`; exported again, they are the same
/// bytes. UserError where the folder has records, and naming the row for what does not belong there
/// or contradicts itself; then the folder still has none.
void import_records(const std::string& folder, const std::string& file);

}  // namespace brimwright::records
