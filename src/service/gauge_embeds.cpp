#include "service/gauge_embeds.h"

#include "geometry/sections/filled_part.h"
#include "moulds/mould_file.h"
#include "moulds/mould_solid.h"
#include "planning/embed_solid.h"
#include "units/reading.h"

namespace brimwright::service {
namespace {

geometry::Lying lying(const std::string& said, const UserTerms& terms) {
  if (said == "level") return geometry::Lying::level;
  if (said == "layered") return geometry::Lying::layered;
  if (said == "free") return geometry::Lying::free;
  throw UserError(terms.place("lying"), "\"" + said + "\" is not a way to lie",
                  "give level, layered or free");
}

/// The embed as a run's decoration is, cast full and about its middle.
geometry::TriangleMesh cast_full(const moulds::Mould& mould) {
  return *planning::embed_solid({.name = mould.name,
                                 .material = "",
                                 .made = planning::InMould{mould, planning::BelowBrim{}},
                                 .density = {},
                                 .spares = {},
                                 .melt_loss = {},
                                 .left_in_jug = {}});
}

}  // namespace

std::optional<reports::PackingFinding> embeds_that_fit(const GaugeRequest& request,
                                                       const UserTerms& terms,
                                                       const moulds::Mould& mould, Length line,
                                                       const moulds::Library& library,
                                                       const geometry::Progress& progress) {
  if (!request.embed) return std::nullopt;
  if (!request.cover)
    throw UserError(
        terms.place("cover"), "is missing",
        "give the least batter between an embed and wall, pour line or the next, such as \"5 mm\"");
  const auto embed =
      moulds::read_mould(library.resolve(*request.embed, terms.place("embed")), library);
  reports::PackingFinding finding;
  finding.embed = embed.name;
  finding.lying = lying(request.lying.value_or("free"), terms);
  finding.cover = read_length(*request.cover, terms.place("cover"));
  finding.line = line;
  const geometry::PackingTask task{.hollow = geometry::filled_part(moulds::solid_of(mould), line),
                                   .body = cast_full(embed),
                                   .cover = finding.cover,
                                   .apart = finding.cover,
                                   .lying = finding.lying};
  finding.packing = geometry::packed(task, progress);
  for (const auto& place : finding.packing.places)
    finding.solids.push_back(geometry::placed(task.body, place));
  finding.displaced = static_cast<double>(finding.packing.places.size()) * embed.curve.brimful();
  if (finding.packing.places.empty()) {
    const double scale = geometry::largest_scale_that_fits(task);
    if (scale > 0) finding.would_fit = scale;
  }
  return finding;
}

}  // namespace brimwright::service
