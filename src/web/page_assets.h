#pragma once

#include <span>
#include <string_view>

namespace brimwright::web {

/// A file of the page as it was bundled, gzipped when the program was built.
struct PageAsset {
  std::string_view path;  // "/page.js"; the page itself is "/"
  std::string_view type;
  std::string_view gzipped;
};

std::span<const PageAsset> page_assets();

}  // namespace brimwright::web
