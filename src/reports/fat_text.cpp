#include "reports/fat_text.h"

#include "chemistry/fat_density.h"
#include "chemistry/theoretical_value.h"
#include "reports/text_table.h"
#include "units/printing.h"
#include "units/wording.h"

namespace brimwright::reports {
namespace {

using chemistry::Citation;
using chemistry::Fat;
using Side = TextTable::Side;

std::string paragraph(const std::string& text) { return wrapped(text, "  ", "    "); }

std::string read_or_remembered(bool read) {
  return read ? "read in the source" : "not checked at the source";
}

/// The data's "from memory" in the listing's own word.
std::string in_plain_words(std::string note) {
  const std::string remembered = "from memory";
  for (auto at = note.find(remembered); at != std::string::npos; at = note.find(remembered))
    note.replace(at, remembered.size(), "unchecked");
  return note;
}

std::string from(const Citation& citation) {
  const bool is_derived = citation.source.starts_with("computed from");  // not read anywhere
  return citation.source + (is_derived ? "" : "; " + read_or_remembered(citation.read)) +
         (citation.also.empty() ? "" : ". Also: " + in_plain_words(citation.also));
}

std::string value_text(chemistry::SaponificationValue value) {
  return trimmed(value.mg_koh_per_g(), 2);
}

std::string density_range(const chemistry::FatDensity& density) {
  const double low = density.low / gram_per_millilitre;
  const double high = density.high / gram_per_millilitre;
  const std::string from_low = fixed(low, 3), to_high = fixed(high, 3);
  return from_low == to_high ? from_low : from_low + " to " + to_high;
}

std::string names_table(const Fat& fat) {
  TextTable table({Side::left, Side::left});
  table.row({"named in a formula as", fat.id});
  table.row({"kind", fat.kind});
  table.row({"INCI name", fat.inci + (fat.inci_read ? "" : " *")});
  if (fat.slow) {
    table.row({"in soap", "stays " + fat.inci});
  } else {
    table.row({"as sodium soap", fat.inci_sodium_soap + " *"});
    table.row({"as potassium soap", fat.inci_potassium_soap + " *"});
  }
  if (!fat.lot.empty()) table.row({"lot", fat.lot});
  return table.text();
}

std::string figures_table(const Fat& fat) {
  const auto& sv = fat.saponification;
  TextTable table({Side::left, Side::left});
  table.row({"saponification value, mg KOH/g",
             range_text(sv.low.mg_koh_per_g(), sv.high.mg_koh_per_g(), 2) +
                 (sv.low == sv.high ? "" : ", used: " + value_text(sv.typical))});
  if (const auto& iodine = fat.iodine_value)
    table.row({"iodine value, g I2/100 g", range_text(iodine->first, iodine->second, 2)});
  if (const auto& melts = fat.melting_range_c)
    table.row({"melts at, °C", range_text(melts->first, melts->second, 1)});
  if (fat.density)
    table.row({"density at " + trimmed(fat.density->at.celsius(), 1) + " °C, g/ml",
               density_range(*fat.density)});
  if (fat.unsaponifiable_most)
    table.row({"unsaponifiable, at most", in_percent(*fat.unsaponifiable_most, 2)});
  if (fat.mean_molar_mass_g_per_mol)
    table.row({"mean molar mass, g/mol", trimmed(*fat.mean_molar_mass_g_per_mol, 2)});
  return table.text();
}

std::string fatty_acid_table(const chemistry::FattyAcidProfile& profile) {
  TextTable table({Side::left, Side::left, Side::right});
  table.row({"Fatty acid", "", "% of all"});
  table.rule();
  for (const auto& range : profile.acids)
    table.row({range.acid.name, chemistry::common_name(range.acid),
               range_text(range.low.in_percent(), range.high.in_percent(), 2) +
                   (range.read ? "" : " *")});
  return table.text();
}

std::string theory_paragraph(const Fat& fat) {
  const auto theory = chemistry::theoretical_value(fat);
  if (!theory)
    return paragraph(fat.kind == "wax_ester"
                         ? "Theory: none. It is a wax and no fat: there are no triglycerides' "
                           "fatty acids to check the value against."
                         : "Theory: no fatty acids are known to check the value against.");
  const auto& pure = theory->pure;
  std::string text =
      std::string("Theory: ") +
      (fat.kind == "wax_ester" ? "its mean molar mass calls" : "its fatty acids call") + " for " +
      range_text(pure.low.mg_koh_per_g(), pure.high.mg_koh_per_g(), 1) +
      " mg KOH/g by molar masses alone";
  if (pure.low != pure.high)
    text += ", " + trimmed(pure.typical.mg_koh_per_g(), 1) + " in the middle of their ranges";
  if (theory->unsaponifiable > Share())
    text += "; from " + trimmed(theory->least.mg_koh_per_g(), 1) + " on with " +
            trimmed(theory->unsaponifiable.in_percent(), 2) + " % unsaponifiable" +
            (theory->unsaponifiable_assumed ? " (assumed)" : "");
  const auto disagreement = chemistry::profile_disagreement(fat, fat.saponification);
  return paragraph(text + ". " +
                   (disagreement ? disagreement->text : "The value above agrees with it."));
}

std::string saponification_paragraphs(const Fat& fat) {
  // With the governing document's own range: the one above reaches over all others as well.
  std::string of_document;
  if (!fat.saponification_readings.empty()) {
    const auto& governing = fat.saponification_readings.front();
    of_document = range_text(*governing.low, *governing.high, 2) + " mg KOH/g, ";
  }
  const bool read =
      fat.saponification_readings.empty() || fat.saponification_readings.front().from.read;
  std::string text =
      paragraph("Saponification value: " + of_document +
                from({fat.saponification_source, read, fat.saponification_also}) + ".");
  return text + paragraph("Value used: " + fat.typical_chosen + ".");
}

std::string slow_paragraphs(const chemistry::SlowToSaponify& slow) {
  return paragraph("In the pot: lye attacks it slowly, if at all: " + slow.how + " (" +
                   from(slow.how_from) + ").") +
         paragraph(
             "Sure to react: its free acids alone, from " + value_text(slow.sure) +
             " mg KOH/g on (" + from(slow.acids_from) +
             "). The range reaches down to that, and a plan says what superfat is left then.");
}

std::string density_paragraph(const Fat& fat) {
  const auto slope = chemistry::density_slope_of(fat);
  const std::string per_kelvin = trimmed(-(slope.per_kelvin / gram_per_millilitre), 5) +
                                 " g/ml lighter for each kelvin warmer (" + slope.from.source +
                                 (slope.from.read ? ")" : "; unchecked)");
  if (fat.density)
    return paragraph("Density: " + fat.density->source + "; " +
                     read_or_remembered(fat.density->read) + ". Molten, it is " + per_kelvin + ".");
  return paragraph(
      "Density: none published; estimated from the saponification and iodine values "
      "(Lund's relation), " +
      per_kelvin + ".");
}

std::string listed(const std::vector<std::string>& names) {
  std::string all;
  for (const std::string& name : names) all += (all.empty() ? "" : ", ") + name;
  return all;
}

/// Without a point at the end where the text has its own.
std::string sentence(const std::string& text) { return text.ends_with(".") ? text : text + "."; }

std::string sources(const Fat& fat) {
  std::string text = saponification_paragraphs(fat);
  if (fat.slow) text += slow_paragraphs(*fat.slow);
  if (fat.iodine_value) text += paragraph("Iodine value: " + from(fat.iodine_value_from) + ".");
  if (fat.melting_range_c) text += paragraph("Melting: " + from(fat.melting_range_from) + ".");
  text += density_paragraph(fat);
  if (fat.unsaponifiable_most)
    text += paragraph("Unsaponifiable: " + from(fat.unsaponifiable_from) + ".");
  if (fat.mean_molar_mass_g_per_mol)
    text += paragraph("Molar mass: " + from(fat.mean_molar_mass_from) + ".");
  if (fat.fatty_acids)
    text += paragraph(
        "Fatty acids: " + fat.fatty_acids->source + "; " +
        (fat.fatty_acids->read() ? "read in the source." : "those marked * are unchecked."));
  if (fat.slow)
    text += paragraph("Name on a label: " + fat.inci +
                      ", also where soaps are listed as what they became; nobody knows how much "
                      "of it is soap.");
  else
    text += paragraph("Names on a label (* unchecked), and how sure they are: sodium soap " +
                      fat.inci_sodium_soap_confidence + "; potassium soap " +
                      fat.inci_potassium_soap_confidence + ".");
  if (!fat.also_called.empty()) text += paragraph("Also called: " + listed(fat.also_called) + ".");
  if (!fat.note.empty()) text += paragraph(sentence("Note: " + fat.note));
  return text;
}

}  // namespace

std::string range_text(double low, double high, int decimals) {
  const std::string from_low = trimmed(low, decimals), to_high = trimmed(high, decimals);
  return from_low == to_high ? from_low : from_low + " to " + to_high;
}

std::string fat_in_full(const Fat& fat) {
  return fat.name + "\n" + names_table(fat) + "\n" + figures_table(fat) +
         (fat.fatty_acids ? "\n" + fatty_acid_table(*fat.fatty_acids) : "") + "\n" +
         theory_paragraph(fat) + sources(fat);
}

}  // namespace brimwright::reports
