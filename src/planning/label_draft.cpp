#include "planning/label_draft.h"

#include "chemistry/fragrance_allergens.h"
#include "planning/ingredient_list.h"
#include "planning/run.h"
#include "planning/scales.h"
#include "planning/tally.h"
#include "units/printing.h"
#include "units/rounded_text.h"
#include "units/wording.h"

#include <algorithm>
#include <cmath>

namespace brimwright::planning {
namespace {

/// Cured base for each unit of depth at the pour line: of a cut loaf that of the bar with most of
/// the top.
Quantity<-1, 1> cured_for_each_depth(const Plan& plan) {
  const auto& base = plan.pour.batter;
  const double cured = base.cure ? base.cure->cured / base.cure->fresh : 1;
  const double of_top =
      plan.cut ? *std::max_element(plan.cut->top.begin(), plan.cut->top.end()) : 1;
  return of_top * cured * base.density * plan.pour.surface;
}

std::optional<LightestPiece> lightest_piece(const Run& run, const Plan& plan) {
  const PieceSpread& spread = run.label->weight_spread;
  const Mass about = plan.piece.cured.value_or(plan.piece.fresh);
  const Mass step = on_fine_scale(run.scales, about).step;
  if (!spread.weighed_pieces.empty())
    return lightest_of(spread.weighed_pieces, step, run.place("/label/weighed_pieces"));
  if (!plan.piece.cured) return std::nullopt;
  const Place where = run.place("/label");
  if (!plan.cut)
    return lightest_of(*plan.piece.cured, cured_for_each_depth(plan), spread, step, where);
  const Mass lightest = *plan.piece.bars[plan.piece.lightest_bar].cured;
  return lightest_of(lightest, *plan.piece.cured, cured_for_each_depth(plan), spread, step, where);
}

void caution_on_pieces_not_as_planned(const LabelDraft& draft, const Plan& plan,
                                      std::vector<Remark>& remarks) {
  if (!draft.held || !plan.piece.cured) return;
  const Mass planned = *plan.piece.cured, weighed = draft.lightest->mean;
  // 3 %: what mould, density and cure may be off together: common practice, no source.
  if (abs(weighed - planned) <= 0.03 * planned) return;
  remarks.push_back({Severity::caution, "The pieces you weighed are " + in_grams(weighed) +
                                            " on average, the plan expects " + in_grams(planned) +
                                            " cured: were they of this mould, line and formula?"});
}

/// Soap goes on drying after it is sold.
void caution_on_drying_on(const LabelDraft& draft, const Run& run, const Plan& plan,
                          std::vector<Remark>& remarks) {
  Mass still_to_lose;
  bool is_known = plan.pour.batter.cure && plan.pour.batter.cure->curve;
  if (is_known) still_to_lose += plan.pour.batter.cure->cured - plan.pour.batter.cure->curve->end;
  if (run.pipe) {
    const auto& cure = plan.pipe->batter.cure;
    is_known = is_known && cure && cure->curve;
    if (is_known) still_to_lose += cure->cured - cure->curve->end;
  }
  if (!is_known) {
    remarks.push_back({Severity::note,
                       "Soap goes on drying on the shelf: weigh again before you sell pieces that "
                       "have been stored for long."});
    return;
  }
  const Mass in_the_end = draft.lightest->mass - still_to_lose;
  if (in_the_end >= draft.net->stated) return;
  remarks.push_back({Severity::caution,
                     "After the cure a piece still loses " + in_grams(still_to_lose) +
                         ": the lightest would end at " + in_grams(in_the_end) + ", below the " +
                         in_grams(draft.net->stated) + " stated. Cure longer, or state less."});
}

void check_what_she_states(const LabelOrder& order, LabelDraft& draft) {
  if (!order.printed_weight) return;
  const Mass states = *order.printed_weight;
  auto& remarks = draft.remarks;
  if (states <= draft.lightest->mass) return;
  const auto tolerance = draft.market == Market::EU ? tolerable_negative_error(states)
                                                    : maximum_allowable_variation(states);
  const std::string head = "Your label states " + in_grams(states) + ". ";
  if (states > draft.lightest->mean)
    remarks.push_back({Severity::caution, head + "The pieces weigh " +
                                              in_grams(draft.lightest->mean) +
                                              " on average, which does not reach it."});
  else if (tolerance && draft.lightest->mass < states - *tolerance)
    remarks.push_back({Severity::caution,
                       head + "The lightest piece of " + in_grams(draft.lightest->mass) +
                           " is short by more than the " + in_grams(*tolerance) + " allowed."});
  else
    remarks.push_back({Severity::note, head + "The lightest piece is short of it, within what is "
                                              "allowed for a single one; the mean reaches it."});
}

/// Pieces weighed against what is stated, hers or the one drafted.
std::optional<PacksHeld> pieces_held(const LabelOrder& order, const LabelDraft& draft) {
  const Mass stated = order.printed_weight.value_or(draft.net->stated);
  const auto tolerance = draft.market == Market::EU ? tolerable_negative_error(stated)
                                                    : maximum_allowable_variation(stated);
  if (order.weight_spread.weighed_pieces.empty() || !tolerance) return std::nullopt;
  return held_against(draft.market, stated, order.weight_spread.weighed_pieces);
}

void draft_net_quantity(LabelDraft& draft, const Run& run, const Plan& plan) {
  draft.lightest = lightest_piece(run, plan);
  if (!draft.lightest) {
    draft.remarks.push_back(
        {Severity::caution,
         "No net weight: the cured weight is not known. Give \"water_lost_in_cure\" or \"drying\" "
         "in each formula, or weigh finished pieces."});
    return;
  }
  const LabelOrder& order = *run.label;
  draft.net = net_quantity(order.market, draft.lightest->mass, order.e_mark, run.place("/label"));
  draft.held = pieces_held(order, draft);
  check_what_she_states(order, draft);
  caution_on_pieces_not_as_planned(draft, plan, draft.remarks);
  caution_on_drying_on(draft, run, plan, draft.remarks);
  draft.remarks.insert(draft.remarks.end(), draft.net->remarks.begin(), draft.net->remarks.end());
}

void caution_on_what_is_not_given(const LabelDraft& draft, std::vector<Remark>& remarks) {
  std::string unnamed;
  for (const auto& ingredient : draft.as_saponified.ingredients)
    if (!ingredient.is_inci) unnamed += (unnamed.empty() ? "" : ", ") + ingredient.name;
  if (!unnamed.empty())
    remarks.push_back({Severity::caution, "No INCI name or composition is given for " + unnamed +
                                              ": put it in as \"inci\", from its supplier."});
}

void caution_on_silent_fragrances(const chemistry::Formula& formula, std::vector<Remark>& remarks) {
  for (const auto& additive : formula.additives)
    if (additive.kind == chemistry::AdditiveKind::fragrance && additive.label.allergens.empty())
      remarks.push_back({Severity::caution,
                         formula.name + ": no allergens are given for " + additive.name +
                             ". Put them in from its supplier's document: each one above 0.01 % of "
                             "the soap is named on an EU label."});
}

std::string joined(const std::vector<std::string>& names) {
  std::string text;
  for (const auto& name : names) text += (text.empty() ? "" : ", ") + name;
  return text;
}

/// Names of the allergens that `tells`.
template <class Tells>
std::string names_of(const std::vector<AllergenAmount>& allergens, const Tells& tells) {
  std::vector<std::string> names;
  for (const auto& allergen : allergens)
    if (tells(allergen)) names.push_back(allergen.name);
  return joined(names);
}

void note_law_of_allergens(const LabelDraft& draft, std::vector<Remark>& remarks) {
  if (draft.allergens.empty()) return;
  if (draft.market == Market::US) {
    remarks.push_back(
        {Severity::note,
         "The allergens named are those of the EU's list: the US has none of its own yet, though "
         "its law of 2022 (MoCRA) orders one (not checked at the source)."});
    return;
  }
  const auto& law = chemistry::fragrance_allergens();
  std::string text = "Allergens are named as Regulation (EC) 1223/2009, Annex III, orders: above " +
                     trimmed(law.named_above_rinsed_off.in_percent(), 4) +
                     " % of what is rinsed off, as soap is (" +
                     trimmed(law.named_above_left_on.in_percent(), 4) + " % of what is left on).";
  const auto is_new = [](const AllergenAmount& allergen) {
    const auto* listed = chemistry::listed_allergen(allergen.name);
    return allergen.is_to_be_named && listed && listed->is_new;
  };
  if (const std::string added = names_of(draft.allergens, is_new); !added.empty())
    text += " New by (EU) 2023/1545: " + added +
            ". Without these names a soap may be placed on the market until " + law.placed_until +
            ", and be sold until " + law.available_until + ".";
  remarks.push_back({Severity::note, text});
}

void caution_on_unknown_allergens(const LabelDraft& draft, std::vector<Remark>& remarks) {
  const std::string unknown = names_of(draft.allergens, [](const AllergenAmount& allergen) {
    return allergen.is_unknown && !chemistry::prohibited_fragrance(allergen.name);
  });
  if (unknown.empty()) return;
  remarks.push_back(
      {Severity::caution,
       unknown + ": not on the EU's list of fragrance allergens as it is kept here. Named all the "
                 "same, to be safe, above that share; check the name against the supplier's "
                 "document, or put \"listed\": false beside it."});
}

void caution_on_what_the_list_forbids(const LabelDraft& draft, std::vector<Remark>& remarks) {
  if (draft.market != Market::EU) return;
  for (const auto& allergen : draft.allergens) {
    if (const auto* prohibited = chemistry::prohibited_fragrance(allergen.name))
      remarks.push_back({Severity::caution, allergen.name +
                                                " is prohibited in cosmetics in the EU "
                                                "since " +
                                                prohibited->since +
                                                ": ask its supplier for a fragrance without it."});
    const auto* listed = chemistry::listed_allergen(allergen.name);
    if (!listed || !listed->most || !(allergen.share > *listed->most)) continue;
    remarks.push_back(
        {Severity::caution, allergen.name + " makes up " +
                                rounded_text(allergen.share.in_percent(), 3, Rounded::up) +
                                " % of the piece; Regulation (EC) 1223/2009, Annex III, entry " +
                                std::to_string(listed->entry) + ", allows at most " +
                                trimmed(listed->most->in_percent(), 4) + " %."});
  }
}

void caution_on_unnamed_extracts(const Run& run, const Plan& plan, std::vector<Remark>& remarks) {
  if (run.label->market != Market::EU) return;
  for (const auto& extract : unnamed_extracts(run, plan))
    remarks.push_back(
        {Severity::caution, extract.fragrance + " goes as Parfum, but an EU label names " +
                                extract.name +
                                " itself: if it is that, give its INCI name as \"inci\" (or its "
                                "share among the \"allergens\")."});
}

void remark_on_conventions(const LabelDraft& draft, bool is_cured, std::vector<Remark>& remarks) {
  remarks.push_back(
      {Severity::note,
       "As finished soap: each fat under its soap's name, the superfat with it, as nobody knows "
       "which fat stays; glycerol formed and water left counted; by the weight of the " +
           std::string(is_cured ? "cured piece." : "fresh piece, as the cure is not known.") +
           " As weighed in: what went in, by its weight then, which is how Regulation (EC) "
           "1223/2009, Art. 19 (1) (g), wants it ordered (not checked at the source). Below 1 % "
           "any order will do, and colours may come last."});
  remarks.push_back({Severity::note,
                     "Most INCI names here are not checked at the source: check each in the "
                     "glossary of common ingredient names (Implementing Decision (EU) 2025/1175, "
                     "which replaced 2022/677) or CosIng."});
  if (draft.market == Market::US)
    remarks.push_back(
        {Severity::note,
         "A piece that is mostly alkali salts of fatty acids, cleans by them, and is labelled and "
         "sold only as soap is not a cosmetic in the US (21 CFR 701.20). With any cosmetic claim "
         "it "
         "needs this list, with plants in English (21 CFR 701.3, not checked at the source)."});
}

}  // namespace

LabelDraft label_draft(const Run& run, const Plan& plan) {
  using enum chemistry::InciConvention;
  LabelDraft draft;
  draft.market = run.label->market;
  draft.remarks.push_back({Severity::caution,
                           "A draft, not a label: a licensed safety assessor and the law where you "
                           "sell have the last word."});
  draft_net_quantity(draft, run, plan);
  draft.as_saponified = ingredient_list(run, plan, as_saponified, draft.market);
  draft.as_charged = ingredient_list(run, plan, as_charged, draft.market);
  draft.allergens = allergens_of(run, plan, draft.market);
  caution_on_what_is_not_given(draft, draft.remarks);
  caution_on_silent_fragrances(run.pour.formula, draft.remarks);
  if (run.pipe) caution_on_silent_fragrances(run.pipe->formula, draft.remarks);
  caution_on_unnamed_extracts(run, plan, draft.remarks);
  caution_on_unknown_allergens(draft, draft.remarks);
  caution_on_what_the_list_forbids(draft, draft.remarks);
  note_law_of_allergens(draft, draft.remarks);
  remark_on_conventions(draft, plan.piece.cured.has_value(), draft.remarks);
  return draft;
}

}  // namespace brimwright::planning
