#pragma once

#include "units/share.h"

#include <optional>
#include <string_view>

namespace brimwright::chemistry {

/// What the name of an alkali tells of how it is bought.
enum class AlkaliForm {
  dry,       // "NaOH", "caustic soda 99 %", "KOH flakes 90 %"
  solution,  // "NaOH 50 %", "Kalilauge", "caustic soda, liquid"
  either,    // "soda lye", "KOH 70 %", "NaOH 50": the one weighs twice the other
};

/// Of a name that names NaOH or KOH. A percentage up to what stays dissolved is a strength, one
/// that dry goods are sold with a purity (KOH flakes 85 to 95 %, NaOH 95 to 100 %: common practice,
/// no source), and what lies between may be either.
AlkaliForm form_of_alkali(std::string_view name);

/// The purity that the name of a dry alkali states: "KOH 90 %", "KOH flakes, 85-90 %", "NaOH 99".
struct StatedPurity {
  Share low, high;
};
std::optional<StatedPurity> stated_purity(std::string_view name);

/// Whether `name` is a word for alkali that tells neither which it is nor in what form: "lye",
/// "caustic flakes".
bool is_any_alkali(std::string_view name);

}  // namespace brimwright::chemistry
