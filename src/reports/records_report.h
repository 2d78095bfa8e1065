#pragma once

#include "records/overview.h"

#include <optional>
#include <string>
#include <vector>

namespace brimwright::reports {

/// What `records` tells of a folder.
struct RecordsReport {
  std::string path;                                // of the file, there or not
  std::optional<records::Overview> overview = {};  // nothing where there are no records
  std::vector<std::string> look_alikes = {};
  std::vector<std::string> done = {};  // in sentences
};
std::string records_text(const RecordsReport& report);
std::string records_json(const RecordsReport& report);  // schema brimwright.records_overview/1

}  // namespace brimwright::reports
