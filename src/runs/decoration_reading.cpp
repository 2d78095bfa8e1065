#include "runs/decoration_reading.h"

#include "chemistry/alkali_names.h"
#include "planning/embed_solid.h"
#include "planning/usual_bench.h"
#include "runs/level_reading.h"
#include "runs/named_files.h"
#include "units/learned_values.h"
#include "units/wording.h"

namespace brimwright::runs {
namespace {

using namespace planning;

InMould in_mould(const Fields& fields, const moulds::Library& library, const Studio& studio) {
  InMould made{.mould = read_mould_named_in(fields, library, studio),
               .fill = read_fill_level(fields, "fill")};
  if (fields.choice("cast_as", {"one cast", "two halves"}) == "two halves")
    made.form = CastForm::two_halves;
  return made;
}

Rod rod(const Fields& fields) {
  const Rod result{fields.positive_length("diameter", "12 mm"),
                   fields.positive_length("length", "60 mm")};
  fields.refuse_unknown();
  return result;
}

Drizzle drizzle(const Fields& fields) {
  const Drizzle result{fields.positive_area("area"), fields.positive_length("thickness", "2 mm")};
  usual_bench().ask(fields, "area", "drizzle's area", result.area);
  usual_bench().ask(fields, "thickness", "drizzle's thickness", result.thickness);
  fields.refuse_unknown();
  return result;
}

/// Only counted: nothing is known of its shape.
Bought bought(const Fields& fields) {
  Bought result;
  if (fields.has("weighs")) {
    result.weighs = fields.positive_mass("weighs", "1.2 g");
    usual_bench().ask_found(fields, "decoration on top", *result.weighs, in_grams(*result.weighs));
  }
  fields.has("confirmed");
  fields.refuse_unknown();
  return result;
}

std::variant<InMould, Rod, Drizzle, Bought> cast_as(const Fields& fields,
                                                    const moulds::Library& library,
                                                    const Studio& studio) {
  const int ways = int{fields.has("mould")} + int{fields.has("rod")} + int{fields.has("drizzle")} +
                   int{fields.has("bought")};
  if (ways != 1)
    throw UserError(fields.place(),
                    ways == 0 ? "does not say what it is made in" : "is made in more than one way",
                    "give one of \"mould\" (with \"fill\" and " + fields.quoted("cast_as") +
                        "), \"rod\", \"drizzle\" or \"bought\"");
  if (fields.has("bought")) return bought(fields.object("bought"));
  if (fields.has("rod")) return rod(fields.object("rod"));
  if (fields.has("drizzle")) return drizzle(fields.object("drizzle"));
  return in_mould(fields, library, studio);
}

Turned turned(const Fields& section) {
  Turned result;
  const auto turn = section.optional_object("turn");
  if (!turn) return result;
  if (turn->has("x")) result.x = turn->turn("x");
  if (turn->has("y")) result.y = turn->turn("y");
  if (turn->has("z")) result.z = turn->turn("z");
  turn->refuse_unknown();
  return result;
}

OnTop on_top(const Fields& fields) {
  OnTop result{
      .pressed_in = fields.length("pressed_in"), .peak_flat = {}, .turned = turned(fields)};
  if (fields.has("peak_flat")) result.peak_flat = fields.positive_length("peak_flat");
  fields.refuse_unknown();
  return result;
}

BuriedAt buried_at(const Fields& fields) {
  const BuriedAt at{fields.signed_length("x"), fields.signed_length("y"), fields.length("height"),
                    turned(fields)};
  fields.refuse_unknown();
  return at;
}

geometry::Lying lying(const Fields& fields) {
  const std::string said = fields.choice("arrange", {"level", "layered", "free"});
  return said == "level"     ? geometry::Lying::level
         : said == "layered" ? geometry::Lying::layered
                             : geometry::Lying::free;
}

Buried buried(const Fields& fields) {
  Buried result{.places = {}, .cover = fields.length("cover")};
  result.pressed_in =
      fields.choice("placed", {"before the pour", "pressed in after"}) == "pressed in after";
  if (fields.has("arrange") == fields.has("places"))
    throw UserError(fields.place(),
                    fields.has("arrange") ? "names places and asks for them too" : "has no places",
                    "give either \"places\" or " + fields.quoted("arrange") +
                        ": \"level\", \"layered\" or \"free\"");
  if (fields.has("arrange")) {
    result.places = FindPlaces{lying(fields)};
  } else {
    std::vector<BuriedAt> places;
    for (const auto& place : fields.objects("places")) places.push_back(buried_at(place));
    result.places = std::move(places);
  }
  fields.refuse_unknown();
  return result;
}

Where where(const Fields& fields) {
  const auto top = fields.optional_object("on_top");
  const auto inside = fields.optional_object("buried");
  if (top && inside)
    throw UserError(fields.place(), "is both on top and buried",
                    "keep \"on_top\" or \"buried\", not both");
  if (top) return on_top(*top);
  if (inside) return buried(*inside);
  return {};
}

/// "per_piece" or "per_cast", which are one and the same unless the cast is cut.
void read_count(Decoration& decoration, const Fields& fields, bool is_cut) {
  const bool by_piece = fields.has("per_piece");
  if (by_piece == fields.has("per_cast"))
    throw UserError(fields.place(), by_piece ? "gives its number twice" : "gives no number",
                    "give \"per_piece\", or \"per_cast\" for what is set into a whole loaf");
  const std::int64_t count = fields.whole_number(by_piece ? "per_piece" : "per_cast", 1, 1000);
  (by_piece && is_cut ? decoration.per_piece : decoration.per_cast) = count;
  if (by_piece && is_cut && std::holds_alternative<Buried>(decoration.where))
    throw UserError(fields.place("per_piece"), "counts by the bar what is buried in the loaf",
                    "give \"per_cast\", how many a whole loaf holds");
}

/// What is melted, and how it is cast.
void read_casting(Decoration& decoration, const Fields& fields) {
  decoration.density = fields.density("density");
  decoration.melt_loss = fields.share("melt_loss", Share{}, 50 * percent);
  decoration.left_in_jug = fields.mass("left_in_jug", "3 g");
  usual_bench().ask(fields, "density", "decoration's density", decoration.density);
  usual_bench().ask(fields, "melt_loss", "melt loss", decoration.melt_loss);
  usual_bench().ask(fields, "left_in_jug", "left in the jug", decoration.left_in_jug);
  if (!fields.has("time_per_tray_fill")) return;
  decoration.time_per_tray_fill = fields.positive_short_time("time_per_tray_fill", "10 min");
  usual_bench().ask(fields, "time_per_tray_fill", "tray fill", *decoration.time_per_tray_fill);
}

/// Of what is bought neither melt nor shape is known.
void refuse_casting(const Fields& fields) {
  for (const auto* key : {"fill", "cast_as", "moulds_owned", "density", "melt_loss", "left_in_jug",
                          "time_per_tray_fill", "on_top", "buried"})
    if (fields.has(key))
      throw UserError(fields.place(key), "is of a decoration that is cast, and this one is bought",
                      "leave it out: what is bought is only counted");
}

}  // namespace

Decoration read_decoration(const Fields& fields, bool is_cut, const moulds::Library& library,
                           const Studio& studio) {
  fields.may_hold({"name",    "material",  "mould",     "moulds_owned", "fill",
                   "cast_as", "rod",       "drizzle",   "per_piece",    "per_cast",
                   "density", "spares",    "melt_loss", "left_in_jug",  "time_per_tray_fill",
                   "on_top",  "buried",    "inci",      "allergens",    "document",
                   "bought",  "confirmed", "learned"});
  chemistry::refuse_alkali(fields.name("name"), fields.place("name"));
  chemistry::refuse_alkali(fields.name("material"), fields.place("material"));
  Decoration result{.name = fields.name("name"),
                    .material = fields.name("material"),
                    .made = cast_as(fields, library, studio),
                    .density = {},
                    .spares = fields.share("spares", Share{}, whole),
                    .melt_loss = {},
                    .left_in_jug = {}};
  if (is_bought(result))
    refuse_casting(fields);
  else
    read_casting(result, fields);
  result.where = where(fields);
  read_count(result, fields, is_cut);
  result.label = chemistry::read_label_data(fields);
  tell_learned(fields, result.name);
  const bool is_coat = std::holds_alternative<Drizzle>(result.made);
  if (is_coat && result.where.index() != 0)
    throw UserError(fields.place(), "is a drizzle, which lies on the surface it covers",
                    "leave out \"on_top\" and \"buried\"");
  fields.refuse_unknown();
  return result;
}

void ask_for_decoration(const Fields& fields, const Run& run, std::size_t index) {
  const Decoration& decoration = run.decorations[index];
  if (is_bought(decoration)) return;
  const Mass each = embed_volume(run, index) * decoration.density;
  const bool is_in_a_loaf = run.cut || std::holds_alternative<Buried>(decoration.where);
  usual_bench().ask_found(fields, is_in_a_loaf ? "decoration" : "decoration on top", each,
                          in_grams(each));
}

}  // namespace brimwright::runs
