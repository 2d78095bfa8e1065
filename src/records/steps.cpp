#include "records/database.h"

#include <string_view>

namespace brimwright::embedded {
std::string_view records_version_1();
std::string_view records_version_2();
}  // namespace brimwright::embedded

namespace brimwright::records {

/// What is here once is never changed: files of that version are in the world.
const std::vector<std::string>& steps() {
  static const std::vector<std::string> all = {std::string(embedded::records_version_1()),
                                               std::string(embedded::records_version_2())};
  return all;
}

int newest_version() { return static_cast<int>(steps().size()); }

}  // namespace brimwright::records
