#include "chemistry/atomic_weights.h"

#include "units/fields.h"

namespace brimwright::embedded {
std::string_view lye_json();
}

namespace brimwright::chemistry {

const AtomicWeights& atomic_weights() {
  static const AtomicWeights read = [] {
    const Fields weights = Fields::parse(embedded::lye_json(), "data/lye.json")
                               .object("molar_masses_g_mol")
                               .object("atomic_weights");
    return AtomicWeights{weights.number("H"), weights.number("C"), weights.number("O")};
  }();
  return read;
}

}  // namespace brimwright::chemistry
