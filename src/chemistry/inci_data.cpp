#include "chemistry/inci_data.h"

#include "chemistry/inci_name.h"
#include "units/fields.h"

#include <algorithm>
#include <stdexcept>

namespace brimwright::embedded {
std::string_view inci_json();
}

namespace brimwright::chemistry {
namespace {

InciData read_inci_data() {
  const Fields file = Fields::parse(embedded::inci_json(), "data/inci.json");
  const Fields names = file.object("names");
  const Fields masses = file.object("molar_masses");
  InciData data{.water = names.text("water"),
                .fragrance = names.text("fragrance"),
                .glycerol = names.text("glycerol"),
                .wax_alcohols = names.text("wax_alcohols"),
                .salt = names.text("salt"),
                .sodium_hydroxide = names.text("NaOH"),
                .potassium_hydroxide = names.text("KOH"),
                .glycerol_g_per_mol = masses.number("glycerol_g_per_mol"),
                .water_g_per_mol = masses.number("water_g_per_mol"),
                .acids = {},
                .usual_by_key = {},
                .english = {}};
  for (const Fields& name : file.object("written_otherwise").objects("names")) {
    const std::string usual = name.text("name"), english = name.text("in_english");
    data.english.emplace(usual, english);
    for (const std::string& other : name.texts("also"))
      data.usual_by_key.emplace(inci_key(other), usual);
    data.usual_by_key.emplace(inci_key(english), usual);
    data.usual_by_key.emplace(inci_key(usual), usual);
  }
  for (const Fields& acid : file.objects("acids"))
    data.acids.push_back({acid.text("acid"), acid.text("inci"), acid.text("sodium_salt"),
                          acid.text("potassium_salt"), acid.number("acid_share")});
  return data;
}

}  // namespace

std::string InciData::usual(const std::string& name) const {
  const auto at = usual_by_key.find(inci_key(name));
  return at == usual_by_key.end() ? name : at->second;
}

std::string InciData::in_english(const std::string& name) const {
  const auto at = english.find(name);
  return at == english.end() ? name : at->second;
}

const AcidNames& InciData::acid(std::string_view name) const {
  const auto at =
      std::find_if(acids.begin(), acids.end(), [&](const AcidNames& a) { return a.acid == name; });
  if (at == acids.end())
    throw std::logic_error("data/inci.json has no names for " + std::string(name));
  return *at;
}

const InciData& inci_data() {
  static const InciData data = read_inci_data();
  return data;
}

}  // namespace brimwright::chemistry
