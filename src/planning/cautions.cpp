#include "planning/cautions.h"

#include <algorithm>
#include <cstddef>
#include <iterator>
#include <optional>

namespace brimwright::planning {
namespace {

bool always(const Run&) { return true; }
bool is_piped(const Run& run) { return run.pipe.has_value(); }
bool is_decorated(const Run& run) { return run.pipe.has_value() || !run.decorations.empty(); }
bool has_loose_parts(const Run& run) { return !run.decorations.empty(); }
bool is_cast(const Run& run) {
  return !std::all_of(run.decorations.begin(), run.decorations.end(), is_bought);
}

bool has(const chemistry::Formula& formula, chemistry::AdditiveKind kind) {
  return std::any_of(formula.additives.begin(), formula.additives.end(),
                     [&](const auto& additive) { return additive.kind == kind; });
}

bool has_in_any_batter(const Run& run, chemistry::AdditiveKind kind) {
  return has(run.pour.formula, kind) || (run.pipe && has(run.pipe->formula, kind));
}

bool is_scented(const Run& run) {
  return has_in_any_batter(run, chemistry::AdditiveKind::fragrance);
}

bool has_powders(const Run& run) {
  return !run.dust.empty() || has_in_any_batter(run, chemistry::AdditiveKind::colour) ||
         std::any_of(run.pour.layers.begin(), run.pour.layers.end(),
                     [](const Layer& layer) { return !layer.colours.empty(); });
}

bool is_chilled(const std::optional<chemistry::HeatQuestion>& temperatures) {
  return temperatures && temperatures->is_lye_chilled();
}

/// Made ahead: shared by two batters, or used colder than the room.
bool has_lye_that_waits(const Run& run) {
  return run.lye_pot || is_chilled(run.pour.temperatures) ||
         (run.pipe && is_chilled(run.pipe->temperatures));
}

bool takes_solution(const chemistry::Formula& formula) {
  return std::any_of(formula.alkalis.begin(), formula.alkalis.end(),
                     [](const auto& alkali) { return alkali.solution.has_value(); });
}

/// Also what stands ready for many runs.
bool has_lye_that_stands(const Run& run) {
  return has_lye_that_waits(run) || takes_solution(run.pour.formula) ||
         (run.pipe && takes_solution(run.pipe->formula));
}

struct Row {
  Topic topic;
  const char* text;
  bool (*applies)(const Run&);
};

// Common practice, no source, where a line names none.
constexpr Row table[] = {
    {Topic::lye,
     "Lye burns skin and eyes. Wear goggles, gloves, long sleeves, closed shoes; fresh air, "
     "running water at hand; keep children and animals out. Alkali into water, never water onto "
     "alkali.",
     always},
    {Topic::heat,
     "Lye solution heats up as alkali dissolves and can boil over: cold water, a tall vessel half "
     "full at most, a little alkali at a time.",
     always},
    // Aluminium, magnesium, zinc, tin, chromium, bronze, brass, copper, galvanised ware: a caustic
    // soda producer's page as a tank seller quotes it, read.
    {Topic::aluminium,
     "Fresh lye in stainless steel or polypropylene (PP); HDPE only for cold lye; no glass. Never "
     "aluminium, brass, bronze, copper, zinc or galvanised ware, tin, magnesium or chrome: lye "
     "corrodes them and gives off hydrogen, which burns. Check foil and whisks.",
     always},
    {Topic::aluminium,
     "Piping tips and whisk too: none of aluminium or brass, none tinned or chromed.", is_piped},
    {Topic::chilled_lye, "Cover hot lye loosely until it is as cool as the room.",
     has_lye_that_waits},
    {Topic::chilled_lye,
     "Then close it, mark it CAUSTIC with the date, keep it upright, locked away. Never in a "
     "fridge with food.",
     has_lye_that_stands},
    // Caustic soda and glycol are to be kept apart: read, as for the metals.
    {Topic::melting, "Hot melt-and-pour scalds. Never put it into lye: it contains glycol.",
     is_cast},
    {Topic::whipping, "The whisk throws specks at face height: goggles, bowl guard, low speed.",
     is_piped},
    {Topic::whipping,
     "Raw topping looks like cream: let nobody taste it. Never use its tools for food again.",
     is_piped},
    {Topic::dust, "Powders: wear a dust mask, pour slowly from low down, away from the fan.",
     has_powders},
    {Topic::allergens,
     "Fragrance and essential oils can make skin allergic: wear gloves, use no more than the "
     "supplier's document allows in each part, and name its allergens on the label.",
     is_scented},
    {Topic::look_alike,
     "A piece that looks, smells or is packed like food may be eaten by a child; the EU forbids "
     "selling one that can be taken for food (Directive 87/357/EEC, since 2024 in Regulation (EU) "
     "2023/988; not checked at the source). Follow the rules where you sell.",
     is_decorated},
    {Topic::small_parts,
     "A decoration that comes off can be swallowed: tug at a few of each kind before you sell, and "
     "say on the label that it is soap.",
     has_loose_parts},
    // ISO 456 (free caustic alkali in soaps): its summary read. The drop on the cut: from memory.
    {Topic::test,
     "Curing does not fix lye-heavy soap: throw it away, or let someone who knows how rework it "
     "with weighed fats. In doubt, drop 1 % phenolphthalein in alcohol on a fresh cut: pink is "
     "free alkali. pH strips tell little; never test with the tongue. Laboratories: ISO 456.",
     always},
    {Topic::test,
     "Check these weights with a second source before the first batch, test a cured piece before "
     "you sell. Local rules and your alkali's safety data sheet come before all of this.",
     always},
};

}  // namespace

std::string name_of(Topic topic) {
  switch (topic) {
    case Topic::lye:
      return "lye";
    case Topic::heat:
      return "heat";
    case Topic::aluminium:
      return "aluminium";
    case Topic::chilled_lye:
      return "chilled lye";
    case Topic::melting:
      return "melting";
    case Topic::whipping:
      return "whipping";
    case Topic::look_alike:
      return "look-alike";
    case Topic::small_parts:
      return "small parts";
    case Topic::dust:
      return "dust";
    case Topic::allergens:
      return "allergens";
    case Topic::test:
      return "test";
    case Topic::plan:
      break;
  }
  return "plan";
}

std::vector<Caution> bench_cautions(const Run& run) {
  std::vector<Caution> cautions;
  for (const Row& row : table)
    if (row.applies(run))
      cautions.push_back({{Severity::caution, row.text}, row.topic, true, Concern::any_work});
  return cautions;
}

namespace {

/// What is read first.
constexpr Concern told_first[] = {Concern::superfat, Concern::todays_batch, Concern::data,
                                  Concern::label_and_cost, Concern::any_work};

std::ptrdiff_t rank_of(Concern concern) {
  return std::find(std::begin(told_first), std::end(told_first), concern) - std::begin(told_first);
}

}  // namespace

void put_in_order(std::vector<Caution>& cautions) {
  std::stable_sort(cautions.begin(), cautions.end(), [](const Caution& a, const Caution& b) {
    if (a.severity != b.severity) return a.severity > b.severity;
    return rank_of(a.concern) < rank_of(b.concern);
  });
}

// Regulation (EC) No 1272/2008 (CLP), Annex IV, for skin corrosion 1A to 1C: P301, P303, P305 and
// P310 read in part 1 as adopted; P330, P331, P361, P353, P351 and P338 and how they combine from
// memory. Brushing off, 20 minutes, held lids and vinegar: common practice of safety data sheets,
// from memory.
const std::vector<FirstAid>& first_aid() {
  static const std::vector<FirstAid> lines = {
      {"Eyes", "Water at once, lids held open, lenses out, until help takes over."},
      {"Skin, hair",
       "Brush off dry alkali. Splashed clothes off at once, under running water. Rinse at least 20 "
       "minutes. Never vinegar or any acid."},
      {"Swallowed", "Rinse the mouth. No vomiting."},
      {"Call at once", "Eyes, swallowed or a burn: emergency number or poison centre."}};
  return lines;
}

std::string first_aid_source() {
  return "After P301+P330+P331, P303+P361+P353, P305+P351+P338, P310 of Regulation (EC) No "
         "1272/2008, Annex IV (partly not checked at the source). Local rules and your alkali's "
         "safety data sheet come first.";
}

}  // namespace brimwright::planning
