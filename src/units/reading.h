#pragma once

#include "units/angle.h"
#include "units/quantity.h"
#include "units/rate.h"
#include "units/share.h"
#include "units/temperature.h"
#include "units/user_error.h"

#include <chrono>
#include <string_view>

namespace brimwright {

// Reading what a person wrote. A number may be "12", "0.5", "1,5", "1/2" or "2 1/4"; a comma that
// could be a thousands mark ("1,500") is refused. A unit is always needed; a mass or a time may be
// in several ("1 lb 4 oz", "1 h 30 min"), each once and the larger first. Nothing depends on the
// locale. Each throws UserError at `where` with the remedy for that kind of quantity; negative,
// non-finite and absurd values (a mould of 20 m) are refused too. Zero is accepted here.

Length read_length(std::string_view text, const Place& where);  // mm cm m in ft, also 2"
Volume read_volume(std::string_view text,
                   const Place& where);  // ml cl l cm3 in3 "fl oz" (US) tsp tbsp cup
Mass read_mass(std::string_view text, const Place& where);        // mg g kg oz lb, also "1 lb 4 oz"
Density read_density(std::string_view text, const Place& where);  // g/ml g/cm3 kg/l kg/m3
Temperature read_temperature(std::string_view text,
                             const Place& where);             // "49 °C", "120 °F", "120 F"
Angle read_angle(std::string_view text, const Place& where);  // "3°", "3 deg"
Area read_area(std::string_view text, const Place& where);    // mm2 cm2 in2
AreaDensity read_area_density(std::string_view text, const Place& where);       // mg/cm2 g/m2 g/cm2
Share read_share(std::string_view text, const Place& where);                    // "5 %"
std::chrono::minutes read_duration(std::string_view text, const Place& where);  // min h days weeks
/// What a hand does in seconds or minutes: "20 s", "25 min", "1.5 h".
std::chrono::seconds read_short_time(std::string_view text, const Place& where);
/// "2 % of fats", "3 % of batter", "8 g/kg of fats", "1 tsp/lb of batter". The basis is never
/// guessed.
Rate read_rate(std::string_view text, const Place& where);

/// A day, as ISO 8601 writes it: "2026-11-14". No other order of day and month is guessed at.
std::chrono::year_month_day read_date(std::string_view text, const Place& where);

/// A plain number without a unit, for options such as a count; same number forms as above.
double read_number(std::string_view text, const Place& where);

}  // namespace brimwright
