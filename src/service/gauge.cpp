#include "service/gauge.h"

#include "geometry/files/mesh_writing.h"
#include "geometry/sections/filled_part.h"
#include "moulds/mesh_cavity.h"
#include "moulds/mould_file.h"
#include "moulds/mould_solid.h"
#include "reports/mould_picture.h"
#include "runs/level_reading.h"
#include "service/cut_open.h"
#include "service/gauge_embeds.h"
#include "service/gauge_ways.h"
#include "units/bounded_text.h"
#include "units/printing.h"
#include "units/reading.h"

#include <cmath>
#include <filesystem>

namespace brimwright::service {
namespace {

using moulds::Mould;
using reports::GaugeFindings;

// So fine that flat facets cost less than 1e-5 of a round cavity.
constexpr int fine_facets = 720;

// What a printed or cast cavity needs: round walls short by 0.005 % of what they should hold.
constexpr int facets_to_print = 360;

bool is_mould_file(const std::string& path) {
  return std::filesystem::path(path).extension() == ".json";
}

void refuse_mesh_options(const GaugeRequest& request, const UserTerms& terms) {
  for (const auto& [name, is_given] : {std::pair{"unit", request.unit.has_value()},
                                       {"up", request.up.has_value()},
                                       {"role", request.role.has_value()},
                                       {"cavity", request.cavity.has_value()},
                                       {"on-board", request.on_board}})
    if (is_given)
      throw UserError(terms.place(name),
                      "is only for a mesh, and " + request.file + " is a mould file",
                      "leave it out; the mould file gives it under \"mesh\"");
}

Mould measured(const GaugeRequest& request, const UserTerms& terms,
               const moulds::Library& library) {
  if (request.text || is_mould_file(request.file)) {
    refuse_mesh_options(request, terms);
    return moulds::read_mould(
        request.text ? Fields::parse(*request.text, request.file) : Fields::read(request.file),
        library);
  }
  moulds::SurveyWishes wishes;
  if (request.unit) wishes.reading.unit = geometry::length_unit(*request.unit, terms.place("unit"));
  if (request.up && request.up->find(',') != std::string::npos)
    wishes.reading.straight_up = geometry::direction(*request.up, terms.place("up"));
  else if (request.up)
    wishes.reading.up = geometry::axis(*request.up, terms.place("up"));
  if (request.role) wishes.role = moulds::role(*request.role, terms.place("role"));
  wishes.on_board = request.on_board;
  if (wishes.on_board && wishes.role && *wishes.role != moulds::Role::body)
    throw UserError(terms.place("on-board"),
                    "only goes with a mould's body, not with a " + *request.role,
                    "leave it out, or give " + terms.say({"role", "body"}));
  return moulds::mould_of_mesh(request.file, wishes, terms, library, request.cavity);
}

/// What is asked of one cavity is refused where a mesh has unlike ones and nobody said which.
void refuse_unlike_cavities(const GaugeRequest& request, const UserTerms& terms,
                            const Mould& mould) {
  if (!mould.is_mesh_alone || mould.found->one || mould.found->groups.size() < 2) return;
  for (const auto& [name, is_given] : {std::pair{"fit-volume", request.fit_volume.has_value()},
                                       {"fit-mass", request.fit_mass.has_value()},
                                       {"cast-wall", request.cast_wall.has_value()},
                                       {"cast-base", request.cast_base.has_value()},
                                       {"tilt", request.tilt.has_value()},
                                       {"pour", request.pour.has_value()},
                                       {"embed", request.embed.has_value()},
                                       {"picture", wants(request.files, FileKind::picture)},
                                       {"glb", wants(request.files, FileKind::glb)},
                                       {"stl", wants(request.files, FileKind::stl)}})
    if (is_given)
      throw UserError(terms.place(name),
                      "does not say which cavity it is for, and " + request.file +
                          " has unlike ones (" + moulds::listed(mould.found->groups) + ")",
                      "give its number with " + terms.say({"cavity"}));
}

/// Whether a length, as typed, is the other as this program shows it (reports::depth_text).
bool is_shown_as(Length typed, Length other) {
  const double sixteenths = typed / inch * 16;
  const bool is_in_sixteenths = std::abs(sixteenths - std::round(sixteenths)) < 1e-9;
  return trimmed(typed / millimetre, 1) == trimmed(other / millimetre, 1) ||
         (is_in_sixteenths && in_inches(typed) == in_inches(other));
}

/// The deepest of the cavities shown.
Length deepest(const Mould& mould) {
  Length depth = mould.curve.height();
  if (reports::shows_each_hollow(mould))
    for (const auto& hollow : mould.found->survey.hollows)
      depth = std::max(depth, hollow.curve.height());
  return depth;
}

std::vector<Length> depths_asked(const GaugeRequest& request, const UserTerms& terms,
                                 const Mould& mould) {
  std::vector<Length> depths;
  for (const auto& text : request.depths) {
    const Length most = deepest(mould);
    Length depth = read_length(text, terms.place("depth"));
    // A depth read off this program's own rounded figure is the brim, not above it.
    if (depth > most && is_shown_as(depth, most)) depth = most;
    if (depth > most)
      throw UserError(terms.place("depth"), "\"" + text + "\" is deeper than the cavity",
                      "give at most " + at_most_text(most) + ", the brim");
    depths.push_back(depth);
  }
  return depths;
}

Length headspace(const GaugeRequest& request, const UserTerms& terms, const Mould& mould) {
  if (!request.below_brim) return {};
  const Length length = read_length(*request.below_brim, terms.place("below-brim"));
  if (length >= mould.curve.height())
    throw UserError(
        terms.place("below-brim"), "leaves nothing to fill",
        "give less than " + at_most_text(mould.curve.height()) + ", which is the cavity's depth");
  return length;
}

std::optional<reports::FitFinding> fit(const GaugeRequest& request, const UserTerms& terms,
                                       const Mould& mould) {
  if (!request.fit_volume && !request.fit_mass) {
    if (request.fit_depth_only)
      throw UserError(
          terms.place("fit-depth-only"), "does not say what the cavity is to hold",
          "give " + terms.say({"fit-volume"}) + " or " + terms.say({"fit-mass"}) + " as well");
    return std::nullopt;
  }
  const std::string name = request.fit_volume ? "fit-volume" : "fit-mass";
  moulds::FitWish wish;
  if (request.fit_volume && request.fit_mass)
    throw UserError(terms.place("fit-mass"),
                    "gives the same as " + terms.say({"fit-volume"}) + " again",
                    "keep one of the two");
  if (request.fit_volume) {
    wish.pour = read_volume(*request.fit_volume, terms.place(name));
  } else {
    if (!request.density)
      throw UserError(terms.place("density"), "is missing",
                      "give the batter's, such as \"1.01 g/ml\": a mass alone is no volume");
    const Density batter = read_density(*request.density, terms.place("density"));
    if (!(batter > Density()))
      throw UserError(terms.place("density"), "is zero",
                      "give the batter's, such as \"1.01 g/ml\"");
    wish.pour = read_mass(*request.fit_mass, terms.place(name)) / batter;
  }
  wish.headspace = headspace(request, terms, mould);
  if (request.fit_depth_only) wish.stretch = moulds::Stretch::depth_only;
  return reports::FitFinding{wish, moulds::fit_for(mould, wish, terms.place(name))};
}

/// What a mould is cast round: the mesh as it stands, or the solid of a shape's cavity.
geometry::TriangleMesh master_of(const Mould& mould) {
  return moulds::solid_of(mould, fine_facets);
}

std::optional<reports::CastingFinding> casting(const GaugeRequest& request, const UserTerms& terms,
                                               const Mould& mould) {
  if (!request.cast_wall && !request.cast_base) return std::nullopt;
  for (const auto& [name, value] :
       {std::pair{"cast-wall", request.cast_wall}, {"cast-base", request.cast_base}})
    if (!value)
      throw UserError(terms.place(name), "is missing",
                      "give both " + terms.say({"cast-wall"}) + " and " + terms.say({"cast-base"}));
  moulds::CastingBox box{.wall = read_length(*request.cast_wall, terms.place("cast-wall")),
                         .base = read_length(*request.cast_base, terms.place("cast-base"))};
  if (request.cast_hung) box.master = moulds::CastingBox::Master::hung;
  reports::CastingFinding finding{
      box, moulds::casting_need(master_of(mould), box, terms.place("cast-wall")), {}};
  if (request.cast_density)
    finding.density = read_density(*request.cast_density, terms.place("cast-density"));
  return finding;
}

std::optional<reports::PourFinding> pour(const GaugeRequest& request, const UserTerms& terms,
                                         const Mould& mould) {
  if (!request.pour || request.tilt) return std::nullopt;
  const Volume volume = read_volume(*request.pour, terms.place("pour"));
  if (!(volume > Volume()))
    throw UserError(terms.place("pour"), "is zero", "give a volume above zero, such as \"80 ml\"");
  if (volume > mould.curve.brimful())
    throw UserError(terms.place("pour"), "\"" + *request.pour + "\" spills",
                    "one cavity holds at most " + at_most(mould.curve.brimful() / millilitre, 2) +
                        " ml, to the brim");
  return reports::PourFinding{volume, mould.curve.depth_at(volume)};
}

std::optional<reports::TiltFinding> tilt(const GaugeRequest& request, const UserTerms& terms,
                                         const GaugeFindings& findings) {
  if (!request.tilt) return std::nullopt;
  if (request.mark.has_value() == request.pour.has_value())
    throw UserError(terms.place("tilt"), "needs to know how far it is poured",
                    "give either " + terms.say({"mark"}) + " (how far up the low wall) or " +
                        terms.say({"pour"}) + " (a volume)");
  const auto solid = moulds::solid_of(findings.mould, fine_facets);
  const double holding = moulds::holding_of(findings.mould, solid);
  const geometry::Tilt tilt{
      read_angle(*request.tilt, terms.place("tilt")),
      runs::read_low_side(request.low_side.value_or("+x"), terms.place("low-side"))};
  check(tilt, terms.place("tilt"));
  const geometry::TiltedPour pour(solid, tilt);
  Length mark;
  Volume poured;  // in the solid; under a level overhang one mark stands for many volumes
  if (request.mark) {
    mark = geometry::reachable(pour, read_length(*request.mark, terms.place("mark")),
                               terms.place("mark"));
    poured = pour.volume_at(mark);
  } else {
    poured = read_volume(*request.pour, terms.place("pour")) / holding;
    if (poured > pour.most())
      throw UserError(terms.place("pour"), "\"" + *request.pour + "\" spills over the low brim",
                      "it holds at most " + at_most(holding * pour.most() / millilitre, 2) +
                          " ml at that angle");
    mark = pour.mark_for(poured);
  }
  const geometry::PourOverLayer over(solid, pour, poured);
  reports::TiltFinding finding{.tilt = tilt,
                               .mark = mark,
                               .brim = pour.brim(),
                               .pour = holding * poured,
                               .most = holding * pour.most(),
                               .pools = pour.pools_with(poured),
                               .covered_at = over.covered_at(),
                               .second = {}};
  for (const Length depth : findings.depths)
    finding.second.emplace_back(depth, holding * over.volume_below(depth));
  return finding;
}

std::string one_of(const std::vector<const char*>& members, const UserTerms& terms) {
  std::string list;
  for (std::size_t i = 0; i < members.size(); ++i) {
    if (i > 0) list += i + 1 < members.size() ? ", " : " or ";
    list += terms.say({members[i]});
  }
  return list;
}

void refuse_options_without_use(const GaugeRequest& request, const UserTerms& terms) {
  struct Row {
    const char* name;
    bool is_given, is_used;
    std::vector<const char*> needs;  // one of them
  };
  const bool fits = request.fit_volume || request.fit_mass;
  const bool glb = wants(request.files, FileKind::glb);
  const bool compares = request.batches_of && request.file.ends_with(".json");
  const bool draws = glb || wants(request.files, FileKind::picture);
  for (const Row& row :
       {Row{"density", request.density.has_value(), request.fit_mass.has_value(), {"fit-mass"}},
        Row{"below-brim",
            request.below_brim.has_value(),
            fits || draws || request.embed || compares,
            {"fit-volume", "fit-mass", "embed", "picture", "glb"}},
        Row{"cut-open", request.cut_open, glb, {"glb"}},
        Row{"cover", request.cover.has_value(), request.embed.has_value(), {"embed"}},
        Row{"lying", request.lying.has_value(), request.embed.has_value(), {"embed"}},
        Row{"cast-density",
            request.cast_density.has_value(),
            request.cast_wall.has_value(),
            {"cast-wall"}},
        Row{"cast-hung", request.cast_hung, request.cast_wall.has_value(), {"cast-wall"}},
        Row{"mark", request.mark.has_value(), request.tilt.has_value(), {"tilt"}},
        Row{"low-side", request.low_side.has_value(), request.tilt.has_value(), {"tilt"}}}) {
    if (!row.is_given || row.is_used) continue;
    throw UserError(terms.place(row.name), "does nothing alone",
                    "give it together with " + one_of(row.needs, terms));
  }
}

/// All parts are closed; the cavity is a wall to look past, and gets no cap.
void cut_open(std::vector<geometry::ColouredPart>& parts) {
  std::vector<const geometry::TriangleMesh*> all;
  for (const auto& part : parts) all.push_back(&part.mesh);
  const auto knife = knife_through(all);
  for (auto& [name, mesh, colour] : parts)
    mesh = name == "cavity" ? rear_of_wall(mesh, knife) : geometry::part_above(mesh, knife);
}

std::string stl_of(const GaugeFindings& findings) {
  auto solid = moulds::solid_of(findings.mould, facets_to_print);
  if (findings.fit) solid = moulds::scaled(std::move(solid), findings.fit->fit);
  return geometry::binary_stl_of(solid);
}

std::string glb_of(const GaugeRequest& request, const UserTerms& terms,
                   const GaugeFindings& findings) {
  const auto solid = moulds::solid_of(findings.mould);
  const Length line = findings.mould.curve.height() - headspace(request, terms, findings.mould);
  const std::array<float, 4> batter = {0.96f, 0.87f, 0.70f, 1}, wall = {0.6f, 0.6f, 0.65f, 0.3f};
  std::vector<geometry::ColouredPart> parts = {{"fill", geometry::filled_part(solid, line), batter},
                                               {"cavity", solid, wall}};
  if (findings.packing)
    for (const auto& embed : findings.packing->solids)
      parts.push_back({findings.packing->embed, embed, {0.35f, 0.55f, 0.85f, 1}});
  if (findings.packing) parts[0].rgba[3] = 0.4f;  // so that they show through
  if (request.cut_open) cut_open(parts);
  return geometry::glb_of(parts);
}

std::string picture_of(const GaugeRequest& request, const UserTerms& terms,
                       const GaugeFindings& findings) {
  reports::MouldPicture picture;
  if (request.below_brim)
    picture.pour_line = findings.mould.curve.height() - headspace(request, terms, findings.mould);
  picture.depths = findings.depths;
  return reports::mould_picture_svg(findings.mould, picture);
}

std::string bytes_of(FileKind kind, const GaugeRequest& request, const UserTerms& terms,
                     const GaugeFindings& findings) {
  if (kind == FileKind::stl) return stl_of(findings);
  if (kind == FileKind::glb) return glb_of(request, terms, findings);
  if (kind == FileKind::picture) return picture_of(request, terms, findings);
  throw std::logic_error("a file that no gauge makes");
}

/// Who asked for one file knows which: what is remarked of it begins with its bare name.
void shorten_remarks(std::vector<Remark>& remarks, const std::string& file) {
  for (auto& [severity, text] : remarks)
    if (text.starts_with(file))
      text.replace(0, file.size(), std::filesystem::path(file).filename().string());
}

}  // namespace

Gauged gauged(const GaugeRequest& request, const UserTerms& terms, const moulds::Library& given,
              const Caller& caller) {
  refuse_options_without_use(request, terms);
  moulds::Library library = given;
  library.named = std::make_shared<std::vector<std::string>>(1, request.file);
  GaugeFindings findings{.mould = measured(request, terms, library),
                         .depths = {},
                         .fit = {},
                         .casting = {},
                         .pour = {},
                         .tilt = {},
                         .packing = {},
                         .written = {}};
  shorten_remarks(findings.mould.remarks, request.file);
  caller.tell_read(*library.named);  // before what takes long
  refuse_unlike_cavities(request, terms, findings.mould);
  findings.depths = depths_asked(request, terms, findings.mould);
  findings.ways = ways_of(request, terms, findings.mould, library, caller);
  findings.fit = fit(request, terms, findings.mould);
  findings.casting = casting(request, terms, findings.mould);
  findings.pour = pour(request, terms, findings.mould);
  findings.tilt = tilt(request, terms, findings);
  const Length line = findings.mould.curve.height() - headspace(request, terms, findings.mould);
  findings.packing =
      embeds_that_fit(request, terms, findings.mould, line, library, caller.progress);
  caller.tell_read(*library.named);  // the embed's files are known now
  std::vector<MadeFile> files;
  for (const auto& [kind, name] : request.files) {
    files.push_back({name, bytes_of(kind, request, terms, findings)});
    findings.written.push_back(name);
  }
  return {std::move(findings), std::move(files)};
}

}  // namespace brimwright::service
