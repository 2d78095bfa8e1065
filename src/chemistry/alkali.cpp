#include "chemistry/alkali.h"

namespace brimwright::chemistry {

std::string formula_of(Alkali alkali) {
  return alkali == Alkali::sodium_hydroxide ? "NaOH" : "KOH";
}

}  // namespace brimwright::chemistry
