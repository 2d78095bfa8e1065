#include "chemistry/salts.h"

#include "units/fields.h"
#include "units/letters.h"
#include "units/printing.h"
#include "units/wording.h"

#include <algorithm>

namespace brimwright::embedded {
std::string_view salts_json();
}

namespace brimwright::chemistry {
namespace {

Substance read_substance(const Fields& entry, const Fields& sources) {
  Substance substance;
  substance.names = entry.texts("names");
  substance.density = entry.number("g_per_ml") * gram_per_millilitre;
  const Fields source = sources.object(entry.text("source"));
  substance.source = source.text("document");
  substance.read = source.truth("read");
  substance.remark = entry.optional_text("remark").value_or("");
  substance.into_cooled_lye = entry.has("into_cooled_lye") && entry.truth("into_cooled_lye");
  substance.usual = entry.number("usual_percent_of_fats") * percent;
  return substance;
}

std::vector<Substance> read_substances() {
  const Fields file = Fields::parse(embedded::salts_json(), "data/salts.json");
  std::vector<Substance> substances;
  for (const Fields& entry : file.objects("substances"))
    substances.push_back(read_substance(entry, file.object("sources")));
  return substances;
}

}  // namespace

const std::vector<Substance>& known_substances() {
  static const std::vector<Substance> substances = read_substances();
  return substances;
}

const Substance* find_substance(const std::string& given) {
  const std::string name = in_small_letters(given);
  const Substance* found = nullptr;
  std::size_t longest = 0;
  for (const Substance& substance : known_substances())
    for (const std::string& words : substance.names)
      if (words.size() > longest && has_words(name, words)) {
        found = &substance;
        longest = words.size();
      }
  return found;
}

std::optional<Density> known_density(const Additive& additive) {
  if (additive.kind == AdditiveKind::fragrance) return std::nullopt;
  const Substance* substance = find_substance(additive.name);
  return substance ? std::optional(substance->density) : std::nullopt;
}

std::vector<Remark> substance_remarks(const Formula& formula, const Proportions& per_fat) {
  std::vector<Remark> remarks;
  for (std::size_t i = 0; i < formula.additives.size(); ++i) {
    const Additive& additive = formula.additives[i];
    if (additive.kind != AdditiveKind::additive || additive.liquid) continue;
    const Substance* substance = find_substance(additive.name);
    if (substance == nullptr) continue;
    if (!substance->remark.empty())
      remarks.push_back({Severity::note, additive.name + " " + substance->remark});
    const Share used = Share::of_one(per_fat.additives[i]);
    if (substance->usual > Share() && used.of_one() > substance->usual.of_one() * (1 + 1e-9))
      remarks.push_back({Severity::note, additive.name + " makes up " + in_percent(used, 2) +
                                             " of the fats; up to " +
                                             in_percent(substance->usual, 2) +
                                             " is usual (common practice)."});
  }
  return remarks;
}

}  // namespace brimwright::chemistry
