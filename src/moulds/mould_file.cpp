#include "moulds/mould_file.h"

#include "moulds/mesh_cavity.h"
#include "moulds/mesh_memory.h"
#include "moulds/mesh_reading.h"
#include "moulds/shape.h"
#include "moulds/shape_curve.h"
#include "moulds/shape_reading.h"
#include "moulds/usual_moulds.h"
#include "moulds/water_weighing.h"
#include "schemas/kinds.h"
#include "units/learned_values.h"
#include "units/printing.h"
#include "units/wording.h"

#include <cmath>
#include <filesystem>
#include <optional>
#include <utility>

namespace brimwright::moulds {
namespace {

using geometry::LevelCurve;

/// Apart by more than this, two ways of measuring are both shown; so are rounds of water.
constexpr double fair_agreement = 0.03;  // common practice, no source
/// A detail factor beyond these is a slip, not flutes or lettering.
constexpr double least_detail = 0.5, most_detail = 2;  // common practice, no source

constexpr Volume small_cavity = 1 * millilitre, large_cavity = 20 * litre;

/// A cavity's curve as dimensions or mesh give it, before water has its word.
struct Dry {
  LevelCurve curve;
  Length floor;
  std::string description;
  std::vector<Measurement> measurements;  // most trusted first
  std::vector<Remark> remarks;
  std::optional<Shape> shape = {};
  std::shared_ptr<const geometry::TriangleMesh> mesh = {};
  std::shared_ptr<const MeshCavities> found = {};
};

/// Cups that hold a cast by widening downward exist, but two swapped measures are commoner.
std::vector<Remark> remarks_on(const Shape& shape) {
  const auto narrows = [](Length floor, Length brim) { return floor > brim; };
  bool swapped = false;
  if (const auto* cup = std::get_if<Frustum>(&shape))
    swapped = narrows(cup->floor_diameter, cup->brim_diameter);
  if (const auto* cup = std::get_if<FlutedCup>(&shape))
    swapped = narrows(cup->floor_diameter, cup->brim_diameter);
  if (const auto* ring = std::get_if<TurnedRing>(&shape))
    swapped = narrows(ring->outer_floor_diameter, ring->outer_brim_diameter) ||
              narrows(ring->post_brim_diameter, ring->post_floor_diameter);
  if (!swapped) return {};
  return {{Severity::caution,
           "The cavity is narrower at the brim than at the floor, so the soap would not come out; "
           "check whether floor and brim measures are swapped."}};
}

Dry of_dimensions(const Shape& shape) {
  LevelCurve curve = level_curve(shape);
  const Volume brimful = curve.brimful();
  return {.curve = std::move(curve),
          .floor = {},
          .description = described(shape),
          .measurements = {{.way = Way::dimensions, .brimful = brimful}},
          .remarks = remarks_on(shape),
          .shape = shape};
}

Dry of_mesh(MeshCavities mesh, const UserTerms& terms) {
  const Hollow& hollow = mesh.typical();
  return {.curve = hollow.curve,
          .floor = hollow.floor_mm * millimetre,
          .description = mesh.description,
          .measurements = {{.way = Way::mesh, .brimful = hollow.curve.brimful()}},
          .remarks = remarks_in(terms, mesh.survey.remarks),
          .shape = {},
          .mesh = typical_solid(mesh),
          .found = std::make_shared<const MeshCavities>(std::move(mesh))};
}

/// The mesh's curve where there is one, with the dimensions as the second opinion.
Dry read_dry(const std::optional<Shape>& shape, const std::optional<Fields>& mesh,
             const Library& library) {
  if (!mesh) return of_dimensions(*shape);
  Dry cavity = of_mesh(read_mesh_cavities(*mesh, library), terms_of_mesh(*mesh));
  if (shape) {
    const Dry second = of_dimensions(*shape);
    cavity.description += "; " + second.description;
    cavity.shape = shape;
    cavity.measurements.push_back(second.measurements.front());
    cavity.remarks.insert(cavity.remarks.end(), second.remarks.begin(), second.remarks.end());
  }
  return cavity;
}

void check_detail_factor(double factor, const WaterWeighing& water, const Dry& dry, Volume weighed,
                         Volume expected) {
  if (factor >= least_detail && factor <= most_detail) return;
  throw UserError({water.place.file, water.place.field + "/weighings"},
                  "by water a cavity holds " + short_ml(weighed) + ", " + trimmed(factor, 2) +
                      " times the " + short_ml(expected) + " of its " +
                      name_of(dry.measurements.front().way),
                  "check whether one cavity or all were weighed (\"weighed_in\"), the line filled "
                  "to (\"filled_to\"), and the units");
}

/// Water / dry, and the water's measurement put first.
double let_water_decide(Dry& dry, const WaterWeighing& water, int cavities, const Fields& fields) {
  const Volume weighed = water.volume_each(cavities);
  const Volume expected = dry.curve.volume_below(water.depth_in(dry.curve));
  const double factor = weighed / expected;
  check_detail_factor(factor, water, dry, weighed, expected);
  usual_moulds().ask_found(
      fields, "water against measures", factor,
      trimmed(factor, 2) + " times the " + name_of(dry.measurements.front().way));
  dry.curve = dry.curve.holding(factor);
  dry.measurements.insert(
      dry.measurements.begin(),
      {.way = Way::water, .brimful = dry.curve.brimful(), .spread = water.spread()});
  return factor;
}

void remark_on_spread(const std::vector<Measurement>& measurements, std::vector<Remark>& remarks) {
  for (const Measurement& found : measurements)
    if (found.spread && found.spread->of_one() > fair_agreement)
      remarks.push_back({Severity::caution, "The water weighings differ by " +
                                                fixed_percent(*found.spread) +
                                                " among themselves; weigh again."});
}

void remark_on_disagreement(const std::vector<Measurement>& measurements,
                            std::vector<Remark>& remarks) {
  for (std::size_t i = 0; i < measurements.size(); ++i)
    for (std::size_t j = i + 1; j < measurements.size(); ++j) {
      const auto& [trusted, other] = std::pair(measurements[i], measurements[j]);
      const double apart = trusted.brimful / other.brimful - 1;
      if (std::abs(apart) <= fair_agreement) continue;
      remarks.push_back(
          {Severity::caution,
           "By " + name_of(trusted.way) + " a cavity holds " + short_ml(trusted.brimful) +
               " to the brim, by " + name_of(other.way) + " " + short_ml(other.brimful) + ": " +
               fixed_percent(Share::of_one(std::abs(apart))) + (apart > 0 ? " more" : " less") +
               ". The " + name_of(measurements.front().way) + " figure is used."});
    }
}

void remark_on_size(Volume brimful, std::vector<Remark>& remarks) {
  if (brimful < small_cavity)
    remarks.push_back({Severity::caution, "One cavity holds only " + in_ml(brimful, 4) +
                                              "; check the unit it was measured in."});
  if (brimful > large_cavity)
    remarks.push_back({Severity::caution, "One cavity holds " + fixed(brimful / litre, 1) +
                                              " litres; check the unit it was measured in."});
}

void check_ways(const Fields& fields, bool has_cavity, bool has_water) {
  if (has_cavity) return;
  if (has_water)
    throw UserError(
        fields.place("shape"),
        "is missing: water alone gives what the cavity holds, but not what it holds to a pour line",
        "add the shape's rough measures; the water then corrects them");
  throw UserError(fields.place("shape"), "is missing, and so is \"mesh\"",
                  "give the cavity's inside measures as \"shape\", or a file as \"mesh\"");
}

/// What a cavity takes by batches / what was measured: beyond these it is a slip, of the measures
/// or of the notes.
constexpr double least_poured = 0.7, most_poured = 1.4;  // common practice, no source

double read_poured_factor(const Fields& fields) {
  if (!fields.has("poured_factor")) return 1;
  const double factor = fields.number("poured_factor");
  if (!(factor >= least_poured && factor <= most_poured))
    throw UserError(fields.place("poured_factor"), "is not between 0.7 and 1.4",
                    "give what one cavity takes by your batches / what it holds as measured, or "
                    "measure the mould anew");
  return factor;
}

/// What a mould file says beside its measures.
struct Heading {
  std::string name;
  std::string note;
  std::optional<int> cavities;  // not needed where a mesh shows them
  int owned;
  std::optional<std::chrono::minutes> unmould_after;
  bool bends;  // away from the cast
};

int count(const Fields& fields, const char* key) {
  return static_cast<int>(fields.whole_number(key, 1, 1000));
}

Heading read_heading(const Fields& fields) {
  fields.of(schemas::mould());
  fields.may_hold({"$schema", "schema", "name", "note", "cavities", "owned", "unmould_after",
                   "bends", "shape", "mesh", "water", "poured_factor", "learned"});
  fields.optional_text("$schema");  // for editors
  Heading heading{.name = fields.name("name"),
                  .note = fields.optional_text("note").value_or(""),
                  .cavities = {},
                  .owned = fields.has("owned") ? count(fields, "owned") : 1,
                  .unmould_after = {},
                  .bends = fields.has("bends") && fields.truth("bends")};
  if (fields.has("cavities")) heading.cavities = count(fields, "cavities");
  if (fields.has("unmould_after")) heading.unmould_after = fields.duration("unmould_after");
  return heading;
}

/// A mould's body or skin shows its cavities, and so do several separate solids; one solid does not
/// tell how many of its kind the mould has.
void settle_count(Heading& heading, const Dry& dry, const Fields& fields) {
  const bool shows_all =
      dry.found && (dry.found->survey.role != Role::cavity || dry.found->count() > 1);
  if (!shows_all && !heading.cavities)
    throw UserError(fields.place("cavities"), "is missing", "give how many the mould has");
  if (!shows_all) return;
  const int shown = dry.found->count();
  if (heading.cavities && *heading.cavities != shown)
    throw UserError(
        fields.place("cavities"),
        "is " + std::to_string(*heading.cavities) + ", but the mesh has " + std::to_string(shown),
        "leave it out, or check the mesh");
  heading.cavities = shown;
}

/// Silicone lets go of what a stiff mould holds fast.
void remark_on_undercuts(const MeshCavities* found, bool bends, std::vector<Remark>& remarks) {
  if (!found || !found->survey.undercuts) return;
  if (bends)
    remarks.push_back({Severity::note, *found->survey.undercuts + "; bend the mould away there."});
  else
    remarks.push_back(
        {Severity::caution, *found->survey.undercuts +
                                "; the soap would not come out of a stiff mould there (if "
                                "yours bends, put \"bends\": true in its mould file)."});
}

Mould assembled(const std::string& file, Heading heading, Dry dry, double detail_factor) {
  Mould mould{.file = file,
              .name = std::move(heading.name),
              .description = std::move(dry.description),
              .note = std::move(heading.note),
              .cavities = *heading.cavities,
              .owned = heading.owned,
              .unmould_after = heading.unmould_after,
              .curve = std::move(dry.curve),
              .detail_factor = detail_factor,
              .measurements = std::move(dry.measurements),
              .floor = dry.floor,
              .remarks = std::move(dry.remarks),
              .is_mesh_alone = false,
              .found = std::move(dry.found),
              .shape = std::move(dry.shape),
              .mesh = std::move(dry.mesh)};
  remark_on_undercuts(mould.found.get(), heading.bends, mould.remarks);
  remark_on_spread(mould.measurements, mould.remarks);
  remark_on_disagreement(mould.measurements, mould.remarks);
  remark_on_size(mould.curve.brimful(), mould.remarks);
  return mould;
}

}  // namespace

Mould read_mould(const std::string& path, const Library& library) {
  return read_mould(library.document(path), library);
}

Mould read_mould(const Fields& fields, const Library& library) {
  Heading heading = read_heading(fields);
  const auto shape_fields = fields.optional_object("shape");
  const auto mesh = fields.optional_object("mesh");
  const auto water_fields = fields.optional_object("water");
  const double poured_factor = read_poured_factor(fields);
  tell_learned(fields);
  fields.refuse_unknown();
  check_ways(fields, shape_fields || mesh, water_fields.has_value());

  std::optional<Shape> shape;
  std::optional<WaterWeighing> water;
  if (shape_fields) shape = read_shape(*shape_fields);
  if (water_fields) water = read_water(*water_fields);
  Dry dry = read_dry(shape, mesh, library);
  settle_count(heading, dry, fields);
  const double detail_factor =
      water ? let_water_decide(dry, *water, *heading.cavities, *water_fields) : 1;
  if (poured_factor != 1) dry.curve = dry.curve.holding(poured_factor);
  Mould mould = assembled(fields.file(), std::move(heading), std::move(dry), detail_factor);
  mould.remarks.insert(mould.remarks.end(), fields.said().begin(), fields.said().end());
  return mould;
}

Mould mould_of_mesh(const std::string& path, const SurveyWishes& wishes, const UserTerms& terms,
                    const Library& library, const std::optional<std::string>& cavity) {
  MeshCavities cavities = measured_mesh(path, wishes, library);
  if (cavity) take_one(cavities, *cavity, terms);
  Heading heading{.name = std::filesystem::path(path).stem().string(),
                  .note = {},
                  .cavities = cavities.count(),
                  .owned = 1,
                  .unmould_after = {},
                  .bends = false};
  Mould mould = assembled(path, std::move(heading), of_mesh(std::move(cavities), terms), 1);
  mould.is_mesh_alone = true;
  return mould;
}

}  // namespace brimwright::moulds
