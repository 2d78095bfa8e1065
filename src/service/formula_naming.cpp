#include "service/formula_naming.h"

#include "chemistry/user_fats.h"

namespace brimwright::service {

chemistry::Formula read_formula_named_in(const Fields& section, const moulds::Library& library) {
  const Fields file =
      Fields::read(library.resolve(section.text("formula"), section.place("formula")));
  const auto own_fats = chemistry::fats_file_named_in(file);
  if (!own_fats) return chemistry::read_formula(file);
  const Fields fats = Fields::read(library.resolve(*own_fats, file.place("fats_from")));
  return chemistry::read_formula(file, chemistry::FatTable(chemistry::read_user_fats(fats)));
}

}  // namespace brimwright::service
