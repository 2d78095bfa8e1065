#include "helpers/pdf/pango_text.h"

#include <pango/pangocairo.h>

namespace brimwright::helpers {

std::string as_utf8(const std::string& text) {
  gchar* valid = g_utf8_make_valid(text.data(), static_cast<gssize>(text.size()));
  std::string copy(valid);
  g_free(valid);
  return copy;
}

}  // namespace brimwright::helpers
