#include "service/name_gate.h"

#include "units/printing.h"
#include "units/user_error.h"

#include <string>

namespace brimwright::service {
namespace {

/// Small letters, one blank for whatever else stands between them, blanks at both ends. Accents are
/// taken off the two-byte letters of Western Europe; a combining mark is two bytes that part
/// nothing.
std::string plain(std::string_view name) {
  constexpr std::string_view bare =
      "aaaaaaaceeeeiiiidnooooo ouuuuypsaaaaaaaceeeeiiiidnooooo ouuuuypy";
  std::string out = " ";
  for (std::size_t i = 0; i < name.size(); ++i) {
    const auto byte = static_cast<unsigned char>(name[i]);
    const auto next = i + 1 < name.size() ? static_cast<unsigned char>(name[i + 1]) : 0;
    char c = ' ';
    if (byte == 0xC3 && next >= 0x80 && next < 0xC0) {
      c = bare[next - 0x80];
      ++i;
    } else if (byte == 0xCC || byte == 0xCD) {
      ++i;
      continue;
    } else if (byte >= 'A' && byte <= 'Z') {
      c = static_cast<char>(byte - 'A' + 'a');
    } else if (byte >= 'a' && byte <= 'z') {
      c = static_cast<char>(byte);
    }
    if (c != ' ' || out.back() != ' ') out += c;
  }
  return out.back() == ' ' ? out : out + ' ';
}

bool has(const std::string& text, std::string_view part) {
  return text.find(part) != std::string::npos;
}

constexpr std::string_view lyes[] = {"naoh",
                                     "sodium hydroxide",
                                     "potassium hydroxide",
                                     "caustic soda",
                                     "caustic potash",
                                     "lye",
                                     "soda ash",
                                     "washing soda",
                                     "sodium carbonate",
                                     "potassium carbonate",
                                     "calcium hydroxide",
                                     "natriumhydroxid",
                                     "kaliumhydroxid",
                                     "atznatron",
                                     "aetznatron",
                                     "natronlauge",
                                     "kalilauge",
                                     "atzkali",
                                     "aetzkali",
                                     "waschsoda",
                                     "pottasche",
                                     "soude caustique",
                                     "lessive de soude",
                                     "hydroxyde de sodium",
                                     "hydroxyde de potassium",
                                     "cristaux de soude",
                                     "sosa caustica",
                                     "hidroxido de sodio",
                                     "hidroxido de potasio",
                                     "soda caustica",
                                     "idrossido di sodio",
                                     "idrossido di potassio"};

/// "Lye-free", "no lye", "lye soap": `before` and `after` are the plain text on either side.
bool is_harmless_beside(const std::string& before, const std::string& after) {
  for (const std::string_view harmless : {" free soap ", " free base ", " soap "})
    if (after.starts_with(harmless)) return true;
  if (after == " free " || after == " frei ") return true;
  for (const std::string_view denial : {" no ", " non ", " without ", " ohne ", " sans ", " sin ",
                                        " senza ", " free of ", " free from "})
    if (before.ends_with(denial)) return true;
  return false;
}

/// KOH in capitals: "Koh Samui" is an island.
bool says_koh(std::string_view name) {
  const auto is_letter = [&](std::size_t i) {
    return i < name.size() &&
           ((name[i] >= 'a' && name[i] <= 'z') || (name[i] >= 'A' && name[i] <= 'Z'));
  };
  for (auto at = name.find("KOH"); at != std::string_view::npos; at = name.find("KOH", at + 1))
    if ((at == 0 || !is_letter(at - 1)) && !is_letter(at + 3) &&
        !is_harmless_beside(plain(name.substr(0, at)), plain(name.substr(at + 3))))
      return plain(name.substr(at + 3)).find("samui") == std::string::npos;
  return false;
}

void refuse_lye(const std::string& name, const Place& where) {
  if (!is_lye_by_name(name)) return;
  throw UserError(where, "\"" + name + "\" is an alkali by its name, and was not counted as one",
                  "nothing is shown; list alkali only under the formula's \"alkali\"");
}

/// mg KOH that a gram of a thing of this name may take up at most. From 12 % of acetic and 9 % of
/// citric acid by molar masses (60.052, 192.123, KOH 56.105 g/mol) and a little; common practice,
/// no source. Pure oxalic acid, which takes the most, has 1246.
double most_mg_koh_per_g(const std::string& name) {
  const std::string words = plain(name);
  for (const std::string_view vinegar :
       {" vinegar ", "essig ", " vinaigre ", " vinagre ", " aceto "})
    if (has(words, vinegar)) return 113;
  for (const std::string_view juice : {" juice ", "saft ", " jus ", " zumo ", " jugo ", " succo "})
    if (has(words, juice)) return 85;
  return 1250;
}

void refuse_too_sour(const chemistry::Additive& additive, const Place& where) {
  const auto& acid = additive.contains_acid;
  if (!acid) return;
  const double mg = acid->share.of_one() * acid->koh_g_per_g * 1000;
  const double most = acid->confirmed ? 1250 : most_mg_koh_per_g(additive.name);
  if (mg <= most) return;
  throw UserError(where,
                  "\"" + additive.name + "\" is counted as using up " + trimmed(mg, 1) +
                      " mg KOH/g, where at most " + trimmed(most, 0) + " is possible",
                  "nothing is shown; give the acid in it as the bottle states it");
}

void look_at(const chemistry::Formula& formula, const planning::Weighing& weighing) {
  for (const auto& ingredient : weighing.ingredients)
    if (ingredient.role != planning::Role::alkali) refuse_lye(ingredient.name, {formula.file, ""});
  for (const auto& additive : formula.additives) {
    refuse_lye(additive.name, {formula.file, "/additives"});
    refuse_too_sour(additive, {formula.file, "/additives"});
  }
}

}  // namespace

bool is_lye_by_name(std::string_view name) {
  const std::string words = plain(name);
  for (const std::string_view lye : lyes) {
    const std::string whole = " " + std::string(lye) + " ";
    for (auto at = words.find(whole); at != std::string::npos; at = words.find(whole, at + 1))
      if (!is_harmless_beside(words.substr(0, at + 1), words.substr(at + whole.size() - 1)))
        return true;
  }
  return says_koh(name);
}

void pass_name_gate(const planning::Run& run, const planning::Plan& plan) {
  look_at(run.pour.formula, plan.pour.batter.weighing);
  if (run.pipe) look_at(run.pipe->formula, plan.pipe->batter.weighing);
  for (const auto& layer : run.pour.layers)
    for (const auto& colour : layer.colours) refuse_lye(colour.name, run.place("/pour/layers"));
}

}  // namespace brimwright::service
