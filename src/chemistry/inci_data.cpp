#include "chemistry/inci_data.h"

#include "units/fields.h"

#include <algorithm>
#include <array>
#include <stdexcept>
#include <utility>

namespace brimwright::embedded {
std::string_view inci_json();
}

namespace brimwright::chemistry {
namespace {

constexpr std::array<std::pair<std::string_view, std::string_view>, 4> greek = {
    {{"\u03b1", "alpha"}, {"\u03b2", "beta"}, {"\u03b3", "gamma"}, {"\u03b4", "delta"}}};

/// "(Palm)" at the front of `text`; empty where no bracket opens there or none closes it.
std::string_view bracketed(std::string_view text) {
  if (!text.starts_with('(')) return {};
  const auto end = text.find(')');
  return end == std::string_view::npos ? std::string_view{} : text.substr(0, end + 1);
}

std::string key_of(std::string_view name, bool with_brackets) {
  std::string key;
  while (!name.empty()) {
    std::size_t taken = with_brackets ? 0 : bracketed(name).size();
    for (const auto& [letter, word] : greek)
      if (taken == 0 && name.starts_with(letter)) {
        key += word;
        taken = letter.size();
      }
    if (taken == 0) {
      const char c = name.front();
      if (c != ' ' && c != '-') key += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
      taken = 1;
    }
    name.remove_prefix(taken);
  }
  return key;
}

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

std::string inci_key(std::string_view name) {
  const std::string key = key_of(name, false);
  return key.empty() ? key_of(name, true) : key;  // all of it in brackets
}

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
