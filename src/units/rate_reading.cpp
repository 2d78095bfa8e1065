#include "units/reading.h"
#include "units/unit_names.h"

#include <algorithm>
#include <array>
#include <optional>
#include <string>

namespace brimwright {
namespace {

/// A rate's unit and what it is a share of: "%" and "fats" of "% of the oils". The trade's "ppo" is
/// per pound of oils.
struct UnitAndBasis {
  std::string unit, basis;
};
std::optional<UnitAndBasis> unit_and_basis(const std::string& rest) {
  const std::string key = unit_key(rest);
  constexpr std::string_view per_pound_of_oils = " ppo", of = " of ", the = "the ";
  if (key.ends_with(per_pound_of_oils))
    return UnitAndBasis{key.substr(0, key.size() - per_pound_of_oils.size()) + " per lb", "oils"};
  const auto at = key.find(of);
  if (at == std::string::npos) return std::nullopt;
  const std::string basis = key.substr(at + of.size());
  return UnitAndBasis{key.substr(0, at), basis.starts_with(the) ? basis.substr(the.size()) : basis};
}

/// By mass ("%", "g/kg", "oz per lb"), or by the spoon ("tsp/lb").
std::optional<std::variant<Share, SpecificVolume>> amount_of(double number,
                                                             const std::string& unit) {
  if (is_per_cent(unit)) return Share::of_one(number / 100);
  const auto each = quotient_in(unit);
  const Mass* of = each ? find_unit(masses(), each->under) : nullptr;
  if (of == nullptr) return std::nullopt;
  if (const Mass* mass = find_unit(masses(), each->over))
    return Share::of_one(number * (*mass / *of));
  if (const Volume* volume = find_unit(volumes(), each->over)) return number * (*volume / *of);
  return std::nullopt;
}

}  // namespace

Rate read_rate(std::string_view given, const Place& where) {
  const std::string examples =
      "\"2 % of fats\", \"3 % of batter\", \"8 g/kg of fats\" or \"1 tsp/lb of fats\"";
  const auto [number, rest] = number_and_word(given, where, examples);
  const auto said = unit_and_basis(rest);
  if (!said)
    throw UserError(where, quoted(given) + " does not say of what", "write it as " + examples);
  Rate rate;
  const std::array<std::string_view, 4> fats = {"fats", "fat", "oils", "oil"};
  if (said->basis == "batter")
    rate.of = RateBasis::batter;
  else if (std::find(fats.begin(), fats.end(), said->basis) == fats.end())
    throw UserError(where, quoted(given) + " is a share of " + quoted(said->basis),
                    "say \"of fats\" or \"of batter\"");
  const auto amount = amount_of(number, said->unit);
  if (!amount)
    throw UserError(where,
                    quoted(given) + " has a unit not known for a rate: " + quoted(said->unit),
                    "write it as " + examples);
  rate.amount = *amount;
  rate.written = plain(given);
  const Share* share = std::get_if<Share>(&rate.amount);
  if (share != nullptr && share->of_one() > 1)
    throw UserError(where, quoted(given) + " is more than the whole",
                    "check the number and its unit");
  return rate;
}

namespace {

constexpr std::string_view stirred_example = "\"1 tsp in 1 tbsp\" or \"5 g in 15 g\"";

/// By weight or in spoons, whichever its unit says.
Measure measure_of(const std::string& part, std::string_view given, const Place& where) {
  const auto [number, unit] = number_and_word(part, where, std::string(stirred_example));
  const Mass* mass = find_unit(masses(), unit);
  const Volume* volume = find_unit(volumes(), unit);
  if (mass == nullptr && volume == nullptr)
    throw UserError(
        where,
        quoted(given) + (unit.empty() ? " lacks a unit"
                                      : " has a unit that is not known here: " + quoted(unit)),
        "write it as " + std::string(stirred_example));
  if (!(number > 0))
    throw UserError(where, quoted(given) + " holds nothing of one of the two",
                    "write it as " + std::string(stirred_example));
  if (mass != nullptr) return number * *mass;
  return number * *volume;
}

}  // namespace

Stirred read_stirred(std::string_view given, const Place& where) {
  const std::string clean = plain(given);
  // "1 in" is no length here: nothing is stirred by the inch.
  constexpr std::string_view into = " in ";
  const auto at = clean.find(into);
  if (at == std::string::npos)
    throw UserError(where, quoted(given) + " does not say how much is stirred into how much",
                    "write it as " + std::string(stirred_example));
  std::string oil = clean.substr(at + into.size());
  for (const std::string_view end : {" of oil", " of fat", " oil"})
    if (oil.ends_with(end)) {
      oil.erase(oil.size() - end.size());
      break;
    }
  return {measure_of(clean.substr(0, at), given, where), measure_of(oil, given, where)};
}

}  // namespace brimwright
