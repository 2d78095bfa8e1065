#include "service/requests.h"

#include <algorithm>

namespace brimwright::service {

bool wants(const std::vector<WantedFile>& files, FileKind kind) {
  return std::any_of(files.begin(), files.end(),
                     [kind](const WantedFile& file) { return file.kind == kind; });
}

}  // namespace brimwright::service
