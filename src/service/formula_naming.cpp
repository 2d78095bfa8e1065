#include "service/formula_naming.h"

namespace brimwright::service {

chemistry::Formula read_formula_named_in(const Fields& section, const moulds::Library& library) {
  const Fields file =
      Fields::read(library.resolve(section.text("formula"), section.place("formula")));
  return chemistry::read_formula(file);
}

}  // namespace brimwright::service
