#include "planning/cautions.h"

#include <algorithm>

namespace brimwright::planning {
namespace {

bool always(const Run&) { return true; }
bool is_decorated(const Run& run) { return run.pipe.has_value() || !run.perch.empty(); }
bool has_loose_parts(const Run& run) { return !run.perch.empty(); }

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

struct Row {
  Topic topic;
  const char* text;
  bool (*applies)(const Run&);
};

// Common practice, no source, where a line names none.
constexpr Row table[] = {
    {Topic::lye,
     "Lye burns skin and eyes. Goggles, gloves, long sleeves, fresh air; children and animals out. "
     "Add the alkali to the water, never water to alkali. On skin: rinse long with water; in eyes: "
     "rinse at once and get help.",
     always},
    {Topic::heat,
     "Lye grows hot as it dissolves and can boil up: cold water, a tall vessel half full at most, "
     "a little alkali at a time.",
     always},
    {Topic::aluminium,
     "Never aluminium, zinc or tin: lye eats them and sets hydrogen free. Stainless steel, or "
     "plastic that stands the heat (PP, HDPE).",
     always},
    {Topic::dust, "Powders: a mask on, poured low and slowly, away from the fan.", has_powders},
    {Topic::allergens,
     "Fragrance and essential oils can make skin allergic: gloves on, no more than the supplier's "
     "document allows in each part, and its allergens on the label.",
     is_scented},
    {Topic::look_alike,
     "A piece that looks, smells or is packed like food may be eaten by a child; the EU forbids "
     "selling one that can be taken for food (Directive 87/357/EEC, since 2024 in Regulation (EU) "
     "2023/988; from memory). Mind the rules where you sell.",
     is_decorated},
    {Topic::small_parts,
     "A decoration that comes off can be swallowed: pull at each kind before you sell it, and say "
     "on the label that it is soap.",
     has_loose_parts},
    {Topic::test,
     "Check these weights with a second source before a first making, and test a cured piece "
     "before you sell. Local rules on chemicals, cosmetics and labels come first.",
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
    if (row.applies(run)) cautions.push_back({{Severity::caution, row.text}, row.topic});
  return cautions;
}

}  // namespace brimwright::planning
