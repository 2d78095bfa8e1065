#include "runs/named_files.h"

#include "chemistry/fats.h"
#include "chemistry/formula_file.h"
#include "chemistry/user_fats.h"
#include "moulds/mould_file.h"
#include "units/learned_values.h"
#include "units/wording.h"

#include <cstdint>
#include <filesystem>

namespace brimwright::runs {
namespace {

/// How many are owned is the studio's to say: a mould's file may be lent, copied or built in.
void note_count_of_mould_file(moulds::Mould& mould, const std::string& name,
                              const std::optional<int>& by_studio, const Studio& studio) {
  if (by_studio == mould.owned) return;
  const std::string stated = std::to_string(mould.owned);
  const std::string counts =
      counted(by_studio.value_or(mould.owned), "mould") + " of \"" + mould.name + "\" counted, as ";
  const std::string of_studio = std::filesystem::path(studio.fields()->file()).filename().string();
  mould.remarks.push_back(
      {Severity::note,
       counts + (by_studio ? of_studio + " says, not the " + stated +
                                 " that the mould's own file states (\"owned\")."
                           : "its own file states (\"owned\"). To have your studio say it, write "
                             "\"moulds_owned\": { \"" +
                                 name + "\": " + stated + " } in " + of_studio + ".")});
}

}  // namespace

moulds::Mould read_mould_named_in(const Fields& section, const moulds::Library& library,
                                  const Studio& studio) {
  const std::string file = library.resolve(section.text("mould"), section.place("mould"));
  const Fields fields = library.document(file);
  moulds::Mould mould = moulds::read_mould(fields, library);
  constexpr std::int64_t most_moulds = 1000;  // beyond any studio
  if (section.has("moulds_owned")) {
    mould.owned = static_cast<int>(section.whole_number("moulds_owned", 1, most_moulds));
    return mould;
  }
  const auto by_studio = studio.owned(file, library);
  if (studio.fields() && fields.has("owned"))
    note_count_of_mould_file(mould, section.text("mould"), by_studio, studio);
  mould.owned = by_studio.value_or(mould.owned);
  return mould;
}

chemistry::Formula read_formula_named_in(const Fields& section, const moulds::Library& library) {
  const Fields file =
      library.document(library.resolve(section.text("formula"), section.place("formula")));
  chemistry::Formula formula = read_formula(file, library);
  tell_learned(file);
  for (const Remark& remark : file.said())
    if (remark.severity == Severity::note)
      section.say({remark.severity, formula.name + ": " + remark.text});
  return formula;
}

chemistry::Formula read_formula(const Fields& file, const moulds::Library& library) {
  const auto own_fats = chemistry::fats_file_named_in(file);
  if (!own_fats) return chemistry::read_formula(file);
  const Fields fats = library.document(library.resolve(*own_fats, file.place("own_fats")));
  return chemistry::read_formula(file, chemistry::FatTable(chemistry::read_user_fats(fats)));
}

}  // namespace brimwright::runs
