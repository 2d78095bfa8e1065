#include "runs/named_files.h"

#include "chemistry/fats.h"
#include "chemistry/formula_file.h"
#include "chemistry/user_fats.h"
#include "moulds/mould_file.h"

#include <cstdint>

namespace brimwright::runs {

moulds::Mould read_mould_named_in(const Fields& section, const moulds::Library& library,
                                  const Studio& studio) {
  const std::string file = library.resolve(section.text("mould"), section.place("mould"));
  moulds::Mould mould = moulds::read_mould(file, library);
  constexpr std::int64_t most_moulds = 1000;  // beyond any studio
  if (section.has("moulds_owned"))
    mould.owned = static_cast<int>(section.whole_number("moulds_owned", 1, most_moulds));
  else
    mould.owned = studio.owned(file, library).value_or(mould.owned);
  return mould;
}

chemistry::Formula read_formula_named_in(const Fields& section, const moulds::Library& library) {
  return read_formula(
      Fields::read(library.resolve(section.text("formula"), section.place("formula"))), library);
}

chemistry::Formula read_formula(const Fields& file, const moulds::Library& library) {
  const auto own_fats = chemistry::fats_file_named_in(file);
  if (!own_fats) return chemistry::read_formula(file);
  const Fields fats = Fields::read(library.resolve(*own_fats, file.place("own_fats")));
  return chemistry::read_formula(file, chemistry::FatTable(chemistry::read_user_fats(fats)));
}

}  // namespace brimwright::runs
