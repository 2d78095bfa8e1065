#include "service/stock_place.h"

#include "units/fields.h"

#include <filesystem>
#include <string_view>

namespace brimwright::service {
namespace {

namespace fs = std::filesystem;

bool is_studio(const Fields& document) {
  constexpr std::string_view any_version = "brimwright.studio/";
  return document.is_text("schema") && document.text("schema").starts_with(any_version);
}

std::string folder_of(const std::string& file) {
  const std::string folder = fs::path(file).parent_path().string();
  return folder.empty() ? "." : folder;
}

runs::Studio studio_in(const std::string& file, const moulds::Library& library) {
  std::error_code none;
  if (fs::is_directory(file, none))
    return runs::studio_for((fs::path(file) / "studio.json").string(), library);
  const Fields document = library.document(file);
  if (library.studio.empty() && is_studio(document)) {
    if (library.named) library.named->push_back(file);
    return runs::Studio(document);
  }
  return runs::studio_for(file, library);
}

}  // namespace

StockPlace stock_place(const std::string& file, const moulds::Library& library) {
  std::error_code none;
  StockPlace place{.folder = fs::is_directory(file, none) ? file : folder_of(file),
                   .studio = studio_in(file, library),
                   .supplies = {}};
  place.supplies = *runs::supplies_of(place.studio, library);
  return place;
}

}  // namespace brimwright::service
