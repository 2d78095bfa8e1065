#include "planning/decoration_workings.h"

#include "units/printing.h"
#include "units/rounding.h"
#include "units/weight_text.h"

#include <string>

namespace brimwright::planning {
namespace {

constexpr auto the_run = "the run";

std::string or_unknown(const std::optional<Length>& length) {
  return length && is_finite(*length) ? in_figures(*length) : "none";
}

Working casts_working(const Decoration& decoration, const DecorationTally& tally,
                      const Pieces& pieces) {
  const bool is_each = decoration.per_piece > 0;
  const std::int64_t of = is_each ? pieces.make : pieces.casts;
  const std::int64_t each = is_each ? decoration.per_piece : decoration.per_cast;
  return {.of = "casts",
          .formula = "casts = those in or on the pieces × (1 + spares)",
          .with = {{is_each ? "on each piece" : "in each cast", std::to_string(each), the_run},
                   {is_each ? "pieces" : "casts", std::to_string(of)},
                   {"spares", in_figures(decoration.spares), the_run}},
          .sum = std::to_string(of) + " × " + std::to_string(each) + " × (1 + " +
                 in_figures(decoration.spares) + ")",
          .rounded = to_whole(Rounded::up),
          .comes_to = std::to_string(tally.casts)};
}

Working mass_each(const Decoration& decoration, const DecorationTally& tally) {
  return {.of = "mass_each_g",
          .formula = "each weighs = its volume × density of the set material",
          .with = {{"volume", in_figures(tally.volume_each)},
                   {"density", in_figures(decoration.density), the_run}},
          .sum = in_figures(tally.volume_each) + " × " + in_figures(decoration.density),
          .comes_to = in_figures(tally.mass_each)};
}

Working melt_working(const Decoration& decoration, const DecorationTally& tally,
                     const Scales& scales) {
  return {
      .of = "make_g",
      .formula =
          "melt = (casts × mass of one + what is left in the jug × tray fills) ÷ (1 − melt loss)",
      .with = {{"casts", std::to_string(tally.casts)},
               {"mass of one", in_figures(tally.mass_each)},
               {"tray fills", std::to_string(tally.tray_fills),
                std::to_string(tally.cavity_fills) + " cavities filled"},
               {"left in the jug", in_figures(decoration.left_in_jug), the_run},
               {"melt loss", in_figures(decoration.melt_loss), the_run}},
      .sum = "(" + std::to_string(tally.casts) + " × " + in_figures(tally.mass_each) + " + " +
             in_figures(decoration.left_in_jug) + " × " + std::to_string(tally.tray_fills) +
             ") ÷ (1 − " + in_figures(decoration.melt_loss) + ")",
      .rounded = to_step(Rounded::up, scales.large.step),
      .comes_to = on_scale(tally.make, scales.large.step)};
}

std::vector<Working> bought_workings(const Decoration& decoration, const DecorationTally& tally,
                                     const Pieces& pieces, const Scales& scales) {
  std::vector<Working> all{casts_working(decoration, tally, pieces),
                           {.of = "make_g",
                            .formula = "nothing is melted of what is bought",
                            .sum = "0 g",
                            .comes_to = on_scale(tally.make, scales.large.step)}};
  if (!(tally.mass_each > Mass{})) return all;
  const std::string each = in_figures(tally.mass_each);
  all.push_back({.of = "mass_each_g",
                 .formula = "each weighs what the run says",
                 .with = {{"one weighs", each, the_run}},
                 .sum = each,
                 .comes_to = each});
  return all;
}

std::vector<Working> tray_workings(const Decoration& decoration, const DecorationTally& tally) {
  const auto* cast = std::get_if<InMould>(&decoration.made);
  if (cast == nullptr) return {};
  const std::int64_t hollows = std::int64_t{cast->mould.cavities} * cast->mould.owned;
  return {{.of = "tray_fills",
           .formula = "tray fills = cavities to fill ÷ cavities of all trays owned",
           .with = {{"cavities to fill", std::to_string(tally.cavity_fills),
                     cast->form == CastForm::two_halves ? "two halves make one" : "one each"},
                    {"hollows", std::to_string(hollows), cast->mould.name}},
           .sum = std::to_string(tally.cavity_fills) + " ÷ " + std::to_string(hollows),
           .rounded = to_whole(Rounded::up),
           .comes_to = std::to_string(tally.tray_fills)}};
}

const std::string& as_drawn() {
  static const std::string source =
      "measured between the facets of mould and embed as they are drawn";
  return source;
}

Working seat_working(const OnTop& on_top, const DecorationFit& fit) {
  return {.of = "on_top",
          .formula =
              "it sticks out by its height less what is pressed in; it rests on a circle as large "
              "as its section at that depth",
          .with = {{"pressed in", in_figures(on_top.pressed_in), the_run},
                   {"of it below the top", in_figures(fit.sunk)},
                   {"sticks out by", in_figures(*fit.stands_proud)},
                   {"rests on a circle of", in_figures(*fit.contact)},
                   {"flat of the peak", or_unknown(fit.peak_flat), "by the topping's shape"}},
          .sources = {as_drawn()}};
}

Working buried_working(const Buried& buried, const DecorationFit& fit) {
  Working working{.of = "buried",
                  .formula =
                      "cover = least distance between the surfaces of the embed and of wall, "
                      "floor, pour line or next embed; displaced = its volume below the line",
                  .with = {{"cover wanted", in_figures(buried.cover), the_run},
                           {"displaced, all", in_figures(fit.displaced)}},
                  .sources = {as_drawn()}};
  for (std::size_t i = 0; i < fit.embeds.size(); ++i) {
    const PlacedEmbed& embed = fit.embeds[i];
    working.with.push_back({"embed " + std::to_string(i + 1),
                            "floor " + or_unknown(embed.floor_cover) + ", wall " +
                                or_unknown(embed.wall_cover) + ", line " +
                                in_figures(embed.line_cover),
                            "next one " + or_unknown(embed.apart)});
  }
  return working;
}

}  // namespace

std::vector<Working> decoration_workings(const Run& run, const Plan& plan, std::size_t index) {
  const Decoration& decoration = run.decorations[index];
  const DecorationTally& tally = plan.decorations[index];
  if (tally.is_bought) return bought_workings(decoration, tally, plan.pieces, run.scales);
  std::vector<Working> all{casts_working(decoration, tally, plan.pieces),
                           mass_each(decoration, tally),
                           melt_working(decoration, tally, run.scales)};
  append_at(all, "", tray_workings(decoration, tally));
  if (const auto* on_top = std::get_if<OnTop>(&decoration.where))
    all.push_back(seat_working(*on_top, tally.fit));
  if (const auto* buried = std::get_if<Buried>(&decoration.where))
    all.push_back(buried_working(*buried, tally.fit));
  return all;
}

Working dust_working(const Dusting& dusting, const DustTally& dust) {
  if (std::holds_alternative<Mass>(dusting.per_piece))
    return {.of = "each_g",
            .formula = "used up for a piece, as the run gives it",
            .with = {{"for a piece", in_figures(dust.each), the_run}},
            .sum = in_figures(dust.each),
            .comes_to = in_figures(dust.each)};
  const auto& by_area = std::get<DustByArea>(dusting.per_piece);
  const std::string on_covered_surface =
      trimmed(by_area.on_covered_surface * square_centimetre / milligram, 5) + " mg/cm²";
  return {.of = "each_g",
          .formula =
              "used up for a piece = exposed surface × share covered × what lies on it ÷ share "
              "that sticks",
          .with = {{"exposed surface", in_figures(*dust.exposed), "of topping and decoration"},
                   {"covered", in_figures(by_area.coverage), the_run},
                   {"lies on it", on_covered_surface, the_run},
                   {"sticks", in_figures(by_area.share_that_sticks), the_run}},
          .sum = in_figures(*dust.exposed) + " × " + in_figures(by_area.coverage) + " × " +
                 on_covered_surface + " ÷ " + in_figures(by_area.share_that_sticks),
          .comes_to = in_figures(dust.each)};
}

Working dust_to_weigh(const DustTally& dust, std::int64_t pieces, const Scales& scales) {
  const std::string each = trimmed(dust.each / milligram, 4) + " mg";
  return {.of = "g",
          .formula = "powder = used up for a piece × pieces",
          .with = {{"for a piece", each}, {"pieces", std::to_string(pieces)}},
          .sum = each + " × " + std::to_string(pieces),
          .rounded = to_step(Rounded::up, scales.fine.step),
          .comes_to = on_scale(dust.make, scales.fine.step)};
}

}  // namespace brimwright::planning
