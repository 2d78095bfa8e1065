#include "chemistry/fat_reading.h"

#include "chemistry/acid_names.h"
#include "chemistry/acid_reading.h"
#include "chemistry/alkali_data.h"
#include "chemistry/alkali_names.h"
#include "chemistry/fat_search.h"
#include "chemistry/known_ranges.h"
#include "units/letters.h"
#include "units/printing.h"

#include <algorithm>
#include <cmath>

namespace brimwright::chemistry {
namespace {

/// Within the fat's published range, widened by `margin` of its ends.
bool is_near(double mg_koh_per_g, const SaponificationRange& published, double margin) {
  return mg_koh_per_g >= published.low.mg_koh_per_g() * (1 - margin) &&
         mg_koh_per_g <= published.high.mg_koh_per_g() * (1 + margin);
}

/// NaOH values lie at 0.713 of the KOH values: where no triglyceride's KOH value lies (the shipped
/// ones begin at 160), or, for the fats of short chains, well outside this fat's own range but on
/// it once divided by 0.713.
bool looks_like_a_naoh_value(double value, const Fat& fat) {
  if (fat.kind == "triglyceride" && value >= 100 && value <= 150) return true;
  // A wax's range is wide already, of bees of all the world.
  return !is_near(value, fat.titrated(), fat.slow ? 0.05 : 0.10) &&
         is_near(value / per_koh(Alkali::sodium_hydroxide), fat.titrated(), 0.05);
}

/// 0.134 or 0.190 are grams of alkali for a gram of fat: which alkali, the fat's own range tells.
[[noreturn]] void challenge_grams_per_gram(double value, const Fat& fat, const Place& where) {
  const double typical = fat.titrated().typical.mg_koh_per_g();
  const double as_koh = value * 1000;
  const double as_naoh = as_koh / per_koh(Alkali::sodium_hydroxide);
  const bool is_naoh = std::abs(as_naoh - typical) < std::abs(as_koh - typical);
  throw UserError(
      where,
      exact(value) + " looks like grams of " + (is_naoh ? "NaOH" : "KOH") + " for a gram of fat",
      "give milligrams of KOH for a gram of fat (ISO 3657): that value would be " +
          trimmed(is_naoh ? as_naoh : as_koh, 1));
}

SaponificationValue checked(double value, const Fat& fat, const Place& where) {
  if (value >= 0.05 && value <= 0.4) challenge_grams_per_gram(value, fat, where);
  if (looks_like_a_naoh_value(value, fat))
    throw UserError(where, exact(value) + " looks like a NaOH value, not a KOH value",
                    "give milligrams of KOH for a gram of fat (ISO 3657): that value would be " +
                        trimmed(value / per_koh(Alkali::sodium_hydroxide), 1));
  // A maker's own fat may lie outside what the shipped ones span (triglycerides of caprylic acid).
  const double least = std::min(80.0, fat.titrated().low.mg_koh_per_g() * 0.9);
  const double most = std::max(300.0, fat.saponification.high.mg_koh_per_g() * 1.1);
  if (value < least || value > most)
    throw UserError(where, exact(value) + " lies where no fat's saponification value does",
                    "give milligrams of KOH for a gram of fat, " + trimmed(least, 0) + " to " +
                        trimmed(most, 0) + ", as the supplier's analysis states it");
  return SaponificationValue::mg_koh_per_g(value);
}

SaponificationRange read_saponification(const Fields& entry, const Fat& fat) {
  const std::string key = "saponification_value";
  const auto read = [&](const Fields& from, std::string_view name) {
    return checked(from.number(name), fat, from.place(name));
  };
  if (!entry.is_object(key)) {
    const SaponificationValue value = read(entry, key);
    return {value, value, value};
  }
  const Fields range = entry.object(key);
  const SaponificationRange values{read(range, "low"), read(range, "typical"), read(range, "high")};
  range.refuse_unknown();
  if (values.low > values.typical || values.typical > values.high)
    throw UserError(range.place(), "its low, typical and high are out of order",
                    "give them in ascending order");
  return values;
}

/// Of this lot, if the formula gives one.
void read_suppliers_value(const Fields& entry, FormulaFat& fat) {
  const std::string key = "saponification_value";
  fat.from_supplier = entry.has(key);
  if (!fat.from_supplier) {
    if (entry.has("confirmed"))
      throw UserError(entry.place("confirmed"), "confirms a value that is not there",
                      "give the supplier's \"saponification_value\" beside it, or leave it out");
    return;
  }
  fat.confirmed = entry.confirms_value_of(key);
  fat.stated_at = entry.place(key);
  fat.saponification = spanning(read_saponification(entry, fat.fat), known_ranges_of_lot(fat.fat));
  fat.taken_as_exact = fat.saponification.low == fat.saponification.high;
  // However much an analyst finds in it, in the pot a slow wax may not take more than that.
  if (fat.fat.slow) fat.saponification.low = std::min(fat.saponification.low, fat.fat.slow->sure);
}

}  // namespace

Fat read_fat_id(const Fields& fields, std::string_view key, const FatTable& table) {
  const std::string given = fields.text(key);
  if (const Fat* fat = table.find(given)) return *fat;
  refuse_alkali(given, fields.place(key));
  if (const auto acid = acid_hint(given); acid && acid->is_chemical)
    throw UserError(fields.place(key), "\"" + given + "\" is an acid, not a fat",
                    "list it under \"additives\" and give there what it takes up: " +
                        acid_hint_in_words(given));
  const std::string meant = which_fat(given, table);
  throw UserError(fields.place(key), "\"" + given + "\" is not a fat known here",
                  !meant.empty() ? meant
                                 : "name one of the built-in fats, such as \"olive\" or "
                                   "\"coconut\", or describe your own in a file that " +
                                       fields.spelling().quoted("/own_fats") + " names");
}

FormulaFat read_formula_fat(const Fields& entry, const FatTable& table) {
  FormulaFat fat;
  fat.fat = read_fat_id(entry, "fat", table);
  fat.share = entry.share("share", Share(), whole, "40 %");
  if (!(fat.share > Share()))
    throw UserError(entry.place("share"), "is 0 %", "leave a fat out that does not take part");
  fat.saponification = fat.fat.saponification;
  read_suppliers_value(entry, fat);
  fat.lot = entry.optional_name("lot").value_or(fat.fat.lot);
  entry.refuse_unknown();
  return fat;
}

}  // namespace brimwright::chemistry
