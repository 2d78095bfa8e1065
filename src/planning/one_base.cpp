#include "planning/one_base.h"

#include "units/wording.h"
#include "units/written_number.h"

#include <algorithm>
#include <string>

namespace brimwright::planning {
namespace {

[[noreturn]] void refuse(const TogetherLine& line, const std::string& problem,
                         const std::string& remedy) {
  throw UserError(line.where, problem, remedy + ", or give this line another word");
}

std::string of_run(const TogetherLine& line) { return quoted(line.run.name); }

void require_same_formula(const TogetherLine& first, const TogetherLine& line) {
  if (line.run.pour.formula.file == first.run.pour.formula.file) return;
  refuse(line,
         of_run(line) + " is of the base " + quoted(line.run.pour.formula.name) + ", and " +
             of_run(first) + " of " + quoted(first.run.pour.formula.name) +
             ", which is another formula's file",
         "pour together what is of one formula");
}

bool is_same(const std::optional<chemistry::FatBlend>& a,
             const std::optional<chemistry::FatBlend>& b) {
  if (!a || !b) return a.has_value() == b.has_value();
  return a->name == b->name && a->of_fats == b->of_fats;
}

/// Of one formula each takes what stands ready, or is weighed singly and dry.
void require_same_made_ahead(const TogetherLine& first, const TogetherLine& line) {
  const auto &one = first.run.pour.formula, &other = line.run.pour.formula;
  bool is_alike = is_same(one.blend, other.blend);
  for (std::size_t k = 0; k < one.alkalis.size(); ++k) {
    const auto &a = one.alkalis[k].solution, &b = other.alkalis[k].solution;
    is_alike = is_alike && a.has_value() == b.has_value() && (!a || a->name == b->name);
  }
  if (!is_alike)
    refuse(line, of_run(line) + " takes other lye or fats that stand ready than " + of_run(first),
           "say the same of \"lye_from\" and \"blend\" in both runs");
}

bool is_same(const std::optional<chemistry::HeatQuestion>& a,
             const std::optional<chemistry::HeatQuestion>& b) {
  const auto one = a.value_or(chemistry::HeatQuestion{}),
             other = b.value_or(chemistry::HeatQuestion{});
  return one.room_at == other.room_at && one.water_at == other.water_at &&
         one.ice_share == other.ice_share && one.lye_used_at == other.lye_used_at &&
         one.fats_at == other.fats_at && one.batter_below == other.batter_below &&
         one.cooled_in == other.cooled_in;
}

bool is_same(const Scale& a, const Scale& b) { return a.step == b.step && a.most == b.most; }

void require_same_bench(const TogetherLine& first, const TogetherLine& line) {
  const Run &one = first.run, &other = line.run;
  const auto differs = [&](const std::string& what, const std::string& remedy) {
    refuse(line, of_run(line) + " has " + what + " than " + of_run(first), remedy);
  };
  if (one.from_studio.file != other.from_studio.file)
    differs("another studio", "pour together what is made in one studio");
  if (!is_same(one.scales.large, other.scales.large) ||
      !is_same(one.scales.fine, other.scales.fine))
    differs("other scales", "weigh both on the same scales");
  if (one.pour.losses.pot != other.pour.losses.pot)
    differs("other losses in the pot", "say the same of \"pot\" in both runs");
  if (one.pots.holds != other.pots.holds || one.pots.lye_jug != other.pots.lye_jug)
    differs("other pots", "mix both in the same pot");
  if (!is_same(one.pour.temperatures, other.pour.temperatures))
    differs("other temperatures of its base", "say the same of \"temperatures\" in both runs");
}

/// Their cavities are filled at the same time.
void require_same_moulds_owned(const std::vector<TogetherLine>& before, const TogetherLine& line) {
  for (const TogetherLine& other : before) {
    const auto &one = other.run.pour.mould, &its = line.run.pour.mould;
    if (one.file != its.file || one.owned == its.owned) continue;
    refuse(line,
           of_run(line) + " counts " + counted(its.owned, "mould") + " " + quoted(its.name) +
               ", and " + of_run(other) + " " + std::to_string(one.owned),
           "say the same of \"moulds_owned\" in both runs");
  }
}

void refuse_ties_to_topping(const TogetherLine& line) {
  if (line.run.lye_pot)
    refuse(line,
           of_run(line) +
               " makes one lye solution for base and topping, and a base that is poured "
               "together has one of its own",
           "take \"lye_pot\" out of that run");
  if (!line.run.bottles.empty())
    refuse(line,
           of_run(line) +
               " divides a bottle over the batters of one run, and a base that is "
               "poured together is of several",
           "take \"bottles\" out of that run");
}

}  // namespace

void refuse_other_base(const std::vector<TogetherLine>& lines) {
  std::vector<TogetherLine> before;
  for (const TogetherLine& line : lines) {
    refuse_ties_to_topping(line);
    require_same_formula(lines.front(), line);
    require_same_made_ahead(lines.front(), line);
    require_same_bench(lines.front(), line);
    require_same_moulds_owned(before, line);
    before.push_back(line);
  }
}

Run shared_base(const std::vector<TogetherLine>& lines) {
  const Run& first = lines.front().run;
  Run base{.file = lines.front().where.file,
           .name = first.pour.formula.name,
           .sell = 0,
           .spoilage = {},
           .pour = {.mould = first.pour.mould,
                    .formula = first.pour.formula,
                    .line = BelowBrim{},
                    .layers = {},
                    .losses = first.pour.losses,
                    .temperatures = first.pour.temperatures},
           .pipe = {},
           .decorations = {},
           .cut = {},
           .dust = {},
           .scales = first.scales,
           .money = {},
           .pots = first.pots,
           .from_studio = first.from_studio};
  base.pour.mould.remarks.clear();
  auto& losses = base.pour.losses;
  for (const TogetherLine& line : lines) {
    base.sell += line.sell;
    const auto& layers = line.run.pour.layers;  // whose colours are stirred in at the same bench
    base.pour.layers.insert(base.pour.layers.end(), layers.begin(), layers.end());
    losses.overpour = std::max(losses.overpour, line.run.pour.losses.overpour);
    losses.jugs = std::max(losses.jugs, line.run.pour.losses.jugs);
  }
  return base;
}

}  // namespace brimwright::planning
