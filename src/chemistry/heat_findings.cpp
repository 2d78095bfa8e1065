#include "chemistry/heat_findings.h"

#include "chemistry/crystallisation.h"
#include "units/printing.h"
#include "units/share_of.h"

#include <algorithm>

namespace brimwright::chemistry {
namespace {

constexpr Temperature assumed_room = Temperature::in_celsius(20);

std::optional<Temperature> optional_temperature(const Fields& bench, std::string_view key,
                                                double least_c, double most_c) {
  if (!bench.has(key)) return std::nullopt;
  const Temperature t = bench.temperature(key);
  if (t.celsius() < least_c || t.celsius() > most_c)
    throw UserError(
        bench.place(key), "is " + in_both_scales(t),
        "give a temperature from " + trimmed(least_c, 0) + " to " + trimmed(most_c, 0) + " °C");
  return t;
}

std::optional<Surroundings> read_surroundings(const Fields& bench) {
  if (!bench.has("cooled_in")) return std::nullopt;
  const std::string where = bench.choice("cooled_in", {"ice bath", "cold water", "fridge", "room"});
  if (where == "ice bath") return Surroundings::ice_bath;
  if (where == "cold water") return Surroundings::cold_water;
  return where == "fridge" ? Surroundings::fridge : Surroundings::room;
}

void refuse_limit_without_temperatures(const HeatQuestion& question, const Fields& bench) {
  if (!question.batter_below || (question.lye_used_at && question.fats_at)) return;
  const std::string missing = question.lye_used_at ? "fats_at" : "lye_used_at";
  throw UserError(bench.place(missing),
                  "is missing, and " + bench.quoted("batter_below") + " cannot be checked",
                  "give the temperatures of lye solution and fats when they are mixed");
}

void refuse_colder_than_its_bath(const HeatQuestion& question, const Fields& bench) {
  if (!question.lye_used_at || !question.cooled_in) return;
  const Temperature around = temperature_of(*question.cooled_in);
  if (question.lye_used_at->celsius() >= around.celsius() + 1) return;
  throw UserError(bench.place("lye_used_at"),
                  "is " + in_both_scales(*question.lye_used_at) + ", which " +
                      name_of(*question.cooled_in) + " of " + in_both_scales(around) +
                      " does not reach",
                  "cool it in something colder, or use it warmer");
}

std::string on_what_grounds(const HeatFindings& findings) {
  return "water at " + in_both_scales(findings.water_at) +
         (findings.is_of_solution ? ", solution at " : ", alkali at ") +
         in_both_scales(findings.alkali_at) + (findings.assumed ? " (20 °C assumed)" : "");
}

/// Of alkali that is dissolved already: what is left is the heat of dilution.
std::string on_dilution(const HeatFindings& findings) {
  const std::string slowly = " Pour the strong solution into the water slowly, stirring.";
  if (!findings.is_of_solution)
    return "the lye solution heats up as the dry alkali dissolves and the KOH solution is diluted; "
           "how far is not known here. Add the dry alkali in portions, to cold water." +
           slowly;
  if (!findings.is_peak_known)
    return "diluted, the KOH solution warms; how far is not known here." + slowly;
  return "diluted, the lye solution may warm to " + in_both_scales(findings.peak.peak) + " (" +
         on_what_grounds(findings) +
         "). A high estimate: all at once, no heat lost to pot and air." + slowly;
}

void remark_on_peak(HeatFindings& findings, const std::string& name, const LyeCharge& lye) {
  if (findings.is_of_solution || !findings.is_peak_known) {
    findings.remarks.push_back({Severity::note, name + ": " + on_dilution(findings)});
    return;
  }
  const PeakTemperature& peak = findings.peak;
  const bool koh = std::any_of(lye.alkalis.begin(), lye.alkalis.end(), [](const auto& one) {
    return one.alkali == Alkali::potassium_hydroxide && one.pure > Mass();
  });
  const std::string doubt =
      "A high estimate: all the alkali at once, no heat lost to pot and air" +
      std::string(
          koh ? "; for KOH from its heat at great dilution, so the real lye solution stays cooler."
              : ".");
  const std::string grounds = " (" + on_what_grounds(findings) + "). " + doubt;
  if (peak.boils)
    findings.remarks.push_back(
        {Severity::danger, name + ": the fresh lye solution may boil, at " +
                               in_both_scales(peak.boiling) + grounds +
                               " Add the alkali in small portions to cold water or ice, "
                               "and keep your face away."});
  else if (peak.near_boiling())
    findings.remarks.push_back(
        {Severity::caution, name + ": the fresh lye solution may reach " +
                                in_both_scales(peak.peak) + ", near its boiling point of " +
                                in_both_scales(peak.boiling) + grounds +
                                " Add the alkali in portions, to cold water or ice."});
  else
    findings.remarks.push_back({Severity::note, name + ": the fresh lye solution may reach " +
                                                    in_both_scales(peak.peak) + grounds});
  if (peak.ice_left)
    findings.remarks.push_back({Severity::note, name + ": the alkali's heat does not melt all the "
                                                       "ice; wait until none is left before "
                                                       "you pour."});
}

/// "9 to 54 min", "3 to 11 h": an estimate is not told to the minute.
std::string in_words(const CoolingTime& time) {
  const auto shortest = time.shortest.count(), longest = time.longest.count();
  if (longest <= 120) return std::to_string(shortest) + " to " + std::to_string(longest) + " min";
  const auto hours = [](auto minutes) {
    return trimmed(static_cast<double>(minutes) / 60, minutes < 90 ? 1 : 0);
  };
  return hours(shortest) + " to " + hours(longest) + " h";
}

/// Hot lye steams and warms what lies beside it.
std::string before_the_fridge(const HeatFindings& findings) {
  const bool in_fridge =
      std::any_of(findings.cooling.begin(), findings.cooling.end(),
                  [](const CoolingTime& time) { return time.where == Surroundings::fridge; });
  if (!in_fridge || findings.peak.peak <= cool_enough_to_close()) return "";
  return " Put it into the fridge only once it has cooled in the room; the time includes that.";
}

std::vector<Surroundings> places_to_cool(const HeatQuestion& question) {
  // Lye that is used warmer than the room is never cold enough for a fridge.
  const Surroundings slower =
      *question.lye_used_at < cool_enough_to_close() ? Surroundings::fridge : Surroundings::room;
  if (!question.cooled_in) return {Surroundings::ice_bath, slower};
  return {question.cooled_in == Surroundings::fridge ? slower : *question.cooled_in};
}

void tell_cooling(HeatFindings& findings, const HeatQuestion& question, const LyeCharge& lye) {
  if (!question.lye_used_at || !findings.is_peak_known) return;
  const std::vector<Surroundings> places = places_to_cool(question);
  for (const Surroundings where : places)
    if (const auto time = cooling_time(lye, findings.peak.peak, *question.lye_used_at, where))
      findings.cooling.push_back(*time);
  if (findings.cooling.empty()) return;
  std::string times;
  for (const CoolingTime& time : findings.cooling)
    times += (times.empty() ? "" : ", ") + in_words(time) + " in " + name_of(time.where);
  findings.remarks.push_back(
      {Severity::note, "To cool the lye solution from " + in_both_scales(findings.peak.peak) +
                           " to " + in_both_scales(*question.lye_used_at) + ": " + times +
                           ". Estimated for a jug as deep as it is wide, from stirred in steel to "
                           "left alone in plastic; stir it now and then." +
                           before_the_fridge(findings)});
}

void remark_on_pour(HeatFindings& findings, const HeatQuestion& question, const std::string& name) {
  if (!findings.at_pour) return;
  const std::string meets = name + ": lye solution at " + in_both_scales(*question.lye_used_at) +
                            " and fats at " + in_both_scales(*question.fats_at) + " mix to about " +
                            in_both_scales(*findings.at_pour);
  const std::string then = "; saponification then warms the batter further.";
  if (!question.batter_below) {
    findings.pour_remarks.push_back({Severity::note, meets + then});
    return;
  }
  const bool stays = *findings.at_pour < *question.batter_below;
  const std::string limit = in_both_scales(*question.batter_below);
  findings.pour_remarks.push_back(
      stays ? Remark{Severity::note, meets + ", below the limit of " + limit + then}
            : Remark{Severity::caution, meets + ", not below the limit of " + limit +
                                            ": chill the lye solution or the fats further" + then});
}

/// Of a lye of both alkalis either has less to settle, so the curve of one is a cautious one; what
/// mends the higher of them mends the other too.
void remark_on_crystals(HeatFindings& findings, const HeatQuestion& question,
                        const LyeCharge& lye) {
  if (!question.lye_used_at) return;
  std::optional<Alkali> first;
  std::optional<Temperature> highest;
  for (const ChargedAlkali& one : lye.alkalis) {
    const auto begins = crystallises_at(one.alkali, lye.strength());
    if (!(one.pure > Mass()) || !begins || (highest && *begins <= *highest)) continue;
    first = one.alkali;
    highest = begins;
  }
  if (!first) return;
  if (const auto remark = crystallisation(*first, lye.strength(), *question.lye_used_at))
    findings.remarks.push_back(*remark);
}

}  // namespace

bool HeatQuestion::is_lye_chilled() const {
  return lye_used_at && *lye_used_at < room_at.value_or(assumed_room);
}

HeatQuestion read_heat_question(const Fields& bench) {
  HeatQuestion question;
  question.room_at = optional_temperature(bench, "room_at", -10, 45);
  question.water_at = optional_temperature(bench, "water_at", 0, 95);
  if (bench.has("ice_share")) question.ice_share = bench.share("ice_share", Share(), whole, "50 %");
  question.lye_used_at = optional_temperature(bench, "lye_used_at", -20, 100);
  question.fats_at = optional_temperature(bench, "fats_at", -20, 100);
  question.batter_below = optional_temperature(bench, "batter_below", 0, 100);
  question.cooled_in = read_surroundings(bench);
  bench.refuse_unknown();
  refuse_limit_without_temperatures(question, bench);
  refuse_colder_than_its_bath(question, bench);
  return question;
}

HeatFindings heat_findings(const HeatQuestion& question, const std::string& name, LyeCharge lye,
                           Mass plain_water, const FatsCharge& fats) {
  const Mass ice = question.ice_share * plain_water;
  lye.water -= ice;
  lye.ice += ice;
  HeatFindings findings;
  findings.alkali_at = question.room_at.value_or(assumed_room);
  findings.water_at = question.water_at.value_or(findings.alkali_at);
  findings.assumed = !question.room_at;
  findings.is_peak_known = knows_peak_of(lye);
  findings.is_of_solution =
      std::all_of(lye.alkalis.begin(), lye.alkalis.end(),
                  [](const ChargedAlkali& one) { return one.is_dissolved(); });
  findings.peak = peak_of(lye, findings.water_at, findings.alkali_at);
  if (question.lye_used_at && question.fats_at)
    findings.at_pour = mixed_temperature(lye, *question.lye_used_at, fats, *question.fats_at);
  remark_on_peak(findings, name, lye);
  tell_cooling(findings, question, lye);
  remark_on_crystals(findings, question, lye);
  remark_on_pour(findings, question, name);
  return findings;
}

}  // namespace brimwright::chemistry
