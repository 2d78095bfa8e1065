#include "service/passing_folder.h"

#include "units/user_error.h"

#include <cstdlib>
#include <filesystem>

namespace brimwright::service {

namespace fs = std::filesystem;

PassingFolder::PassingFolder() {
  std::error_code none;
  path_ = (fs::temp_directory_path(none) / "brimwright-XXXXXX").string();
  if (::mkdtemp(path_.data()) == nullptr)
    throw UserError({path_, ""}, "cannot be made for a while", "check that there is room");
}

PassingFolder::~PassingFolder() {
  std::error_code none;
  fs::remove_all(path_, none);
}

}  // namespace brimwright::service
