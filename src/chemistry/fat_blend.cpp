#include "chemistry/fat_blend.h"

#include "chemistry/fat_search.h"
#include "chemistry/proportions.h"
#include "chemistry/share_sum.h"
#include "units/advice_text.h"
#include "units/letters.h"
#include "units/wording.h"
#include "units/written_number.h"

#include <algorithm>

namespace brimwright::chemistry {
namespace {

// Shares of shares in binary fractions; far below what any scale shows.
constexpr double none = 1e-9;

/// The formula's fat that `part` means, by its index.
std::size_t fat_of(const StandingBlend::Part& part, const StandingBlend& standing,
                   const Formula& formula, const Place& where) {
  const auto meant = fats_named(part.fat);
  for (std::size_t j = 0; j < formula.fats.size(); ++j) {
    const Fat& fat = formula.fats[j].fat;
    const bool is_named =
        fat.id == part.fat || in_small_letters(fat.name) == in_small_letters(part.fat);
    if (is_named || (meant.size() == 1 && meant.front()->id == fat.id)) return j;
  }
  throw UserError(where,
                  quoted(standing.name) + " holds " + quoted(part.fat) + ", and " +
                      quoted(formula.name) + " has none of it",
                  "take a blend of the formula's own fats, or leave it out and weigh them singly");
}

/// The most of the blend that each fat's share has room for, and which of them that is.
std::pair<Share, std::size_t> room_for(const FatBlend& blend, const Formula& formula) {
  std::pair<Share, std::size_t> room{whole, 0};
  for (std::size_t j = 0; j < blend.parts.size(); ++j) {
    if (!(blend.parts[j] > Share())) continue;
    const double most = formula.fats[j].share.of_one() / blend.parts[j].of_one();
    if (most < room.first.of_one()) room = {Share::of_one(most), j};
  }
  return room;
}

/// What first disperses colours is taken from an oil that is weighed by itself.
void refuse_oil_in_blend(const Formula& formula, const Place& where) {
  const Proportions per_fat = proportions(formula);
  for (std::size_t j = 0; j < formula.fats.size(); ++j) {
    const Share beside = outside_blend(formula, j);
    if (per_fat.set_aside[j] <= beside.of_one() + none) continue;
    throw UserError(where,
                    "leaves " + in_percent(beside, 2) + " of the fats as " +
                        formula.fats[j].fat.name + " beside it, and the colours are dispersed in " +
                        in_percent(Share::of_one(per_fat.set_aside[j]), 2),
                    "take less of the blend, or disperse them with \"from\": \"extra\"");
  }
}

}  // namespace

StandingBlend read_fat_blend(const Fields& fields, const std::string& name) {
  StandingBlend standing{name, {}};
  Share sum;
  for (const Fields& entry : fields.objects("fats")) {
    StandingBlend::Part part{entry.name("fat"), entry.share("share", Share(), whole, "50 %"),
                             entry.place("fat")};
    for (const auto& other : standing.parts)
      if (other.fat == part.fat)
        throw UserError(part.where, quoted(part.fat) + " appears twice in the blend",
                        "add its shares together in one entry");
    if (!(part.share > Share()))
      throw UserError(entry.place("share"), "is 0 %", "leave out a fat that is not in it");
    entry.refuse_unknown();
    sum = sum + part.share;
    standing.parts.push_back(std::move(part));
  }
  if (standing.parts.size() < 2)
    throw UserError(fields.place("fats"), "is no blend of fats",
                    "list two fats or more with their shares of the blend");
  refuse_wrong_sum(sum, "the fats of the blend", fields.place("fats"));
  if (fields.has("made_on")) (void)fields.date("made_on");
  (void)fields.optional_name("from");
  (void)fields.optional_text("note");
  fields.refuse_unknown();
  // Up to a hundredth of a per cent may be missing, as of three thirds.
  for (auto& part : standing.parts) part.share = Share::of_one(part.share.of_one() / sum.of_one());
  return standing;
}

void take_blend(Formula& formula, const StandingBlend& standing, std::optional<Share> share,
                const Place& where) {
  FatBlend blend{standing.name, {}, std::vector<Share>(formula.fats.size())};
  for (const auto& part : standing.parts) {
    Share& known = blend.parts[fat_of(part, standing, formula, where)];
    if (known > Share())
      throw UserError(part.where, quoted(part.fat) + " is a fat of the blend by another name too",
                      "add its shares together in one entry");
    known = part.share;
  }
  const auto [most, scarcest] = room_for(blend, formula);
  blend.of_fats = share.value_or(most);
  if (blend.of_fats > Share::of_one(most.of_one() + none))
    throw UserError(where,
                    "asks for " + in_percent(blend.of_fats, 2) + " of the fats as " +
                        quoted(standing.name) + ", and " + quoted(formula.name) +
                        " has too little " + formula.fats[scarcest].fat.name + " for that (" +
                        in_percent(formula.fats[scarcest].share, 2) + ")",
                    "take at most " + most_text(most));
  blend.of_fats = std::min(blend.of_fats, most);
  formula.blend = std::move(blend);
  refuse_oil_in_blend(formula, where);
}

Share outside_blend(const Formula& formula, std::size_t fat) {
  const Share share = formula.fats[fat].share;
  if (!formula.blend) return share;
  const double in_blend = formula.blend->of_fats.of_one() * formula.blend->parts[fat].of_one();
  const double beside = share.of_one() - in_blend;
  return beside > none ? Share::of_one(beside) : Share();
}

std::vector<Remark> blend_notes(const Formula& formula) {
  std::vector<Remark> notes;
  if (!formula.blend) return notes;
  for (std::size_t j = 0; j < formula.fats.size(); ++j)
    if (formula.fats[j].from_supplier && formula.blend->parts[j] > Share())
      notes.push_back({Severity::note,
                       formula.name + ": the supplier's saponification value of " +
                           formula.fats[j].fat.name + " is used for what is in \"" +
                           formula.blend->name +
                           "\" too. If the blend was made of another lot, leave the value out."});
  return notes;
}

}  // namespace brimwright::chemistry
