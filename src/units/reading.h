#pragma once

#include "units/angle.h"
#include "units/quantity.h"
#include "units/rate.h"
#include "units/share.h"
#include "units/temperature.h"
#include "units/user_error.h"

#include <chrono>
#include <string_view>
#include <variant>

namespace brimwright {

// Reading what a person wrote. A number may be "12", "0.5", "1,5", "1/2", "2 1/4" or "2-1/4"; a
// comma that could be a thousands mark ("1,500") is refused. A unit is always needed, by its sign
// or its name ("mm", "millimetres"), in small letters or large; a mass or a time may be in several
// ("1 lb 4 oz", "1 h 30 min"), each once and the larger first. A pair of quotes around it all does
// not count. Nothing depends on the locale. Each throws UserError at `where` with the remedy for
// that kind of quantity, and `example` where one is given; negative, non-finite and absurd values
// (a mould of 20 m) are refused too. Zero is accepted here.

Length read_length(std::string_view text, const Place& where,
                   std::string_view example = "5 mm");  // mm cm m in ft, also 2"
Volume read_volume(
    std::string_view text, const Place& where,
    std::string_view example = "450 ml");  // ml cl l cm3 cc in3 "fl oz" (US) tsp tbsp cup
Mass read_mass(std::string_view text, const Place& where,
               std::string_view example = "450 g");  // mg g kg oz lb, also "1 lb 4 oz"
/// A mass over a volume: "1.02 g/ml", "990 kg/m3", "2.5 g/tsp", "2.5 g per tsp".
Density read_density(std::string_view text, const Place& where);
Temperature read_temperature(std::string_view text,
                             const Place& where);             // "49 °C", "120 °F", "120 F"
Angle read_angle(std::string_view text, const Place& where);  // "3°", "3 deg"
Area read_area(std::string_view text, const Place& where);    // mm2 cm2 in2
AreaDensity read_area_density(std::string_view text, const Place& where);  // mg/cm2 g/m2 g/cm2
Share read_share(std::string_view text, const Place& where, std::string_view example = "5 %");
std::chrono::minutes read_duration(std::string_view text, const Place& where,
                                   std::string_view example = "36 h");  // min h days weeks
/// What a hand does in seconds or minutes: "20 s", "25 min", "1.5 h".
std::chrono::seconds read_short_time(std::string_view text, const Place& where,
                                     std::string_view example = "20 s");
/// "2 % of fats", "3 % of batter", "8 g/kg of oils", "1 oz per lb of fats", "1 tsp/lb of batter",
/// "1 tsp ppo" (per pound of oils). The basis is never guessed.
Rate read_rate(std::string_view text, const Place& where);

/// So much of one thing, by weight or in spoons.
using Measure = std::variant<Mass, Volume>;
/// "1 tsp in 1 tbsp of oil": what is stirred in, and what it is stirred into.
struct Stirred {
  Measure what, into;
};
Stirred read_stirred(std::string_view text, const Place& where);

/// A day, as ISO 8601 writes it: "2026-11-14". No other order of day and month is guessed at.
std::chrono::year_month_day read_date(std::string_view text, const Place& where);

/// A plain number without a unit, for options such as a count; same number forms as above.
double read_number(std::string_view text, const Place& where);

}  // namespace brimwright
