#include "moulds/mesh_cavity.h"
#include "reports/gauge_report.h"
#include "reports/text_table.h"
#include "units/bounded_text.h"
#include "units/printing.h"
#include "units/shown_text.h"
#include "units/wording.h"

namespace brimwright::reports {
namespace {

using moulds::HollowGroup;
using moulds::Mould;
using Side = TextTable::Side;

std::string line(const std::string& text) { return wrapped(text, "  ", "  "); }

std::string measured_line(const moulds::Measurement& measured) {
  std::string text = "by " + moulds::name_of(measured.way) + " " + fixed_ml(measured.brimful);
  if (measured.spread)
    text += " (weighings within " + fixed(measured.spread->in_percent(), 1) + " %)";
  return text;
}

/// Every tenth of the depth, or the depths asked for as far as they reach.
std::vector<Length> dip_depths(const geometry::LevelCurve& curve,
                               const std::vector<Length>& asked) {
  std::vector<Length> depths;
  for (const Length depth : asked)
    if (depth <= curve.height()) depths.push_back(depth);
  if (asked.empty())
    for (int tenth = 1; tenth <= 10; ++tenth) depths.push_back(tenth / 10.0 * curve.height());
  return depths;
}

std::string us_fl_oz(Volume volume) {
  return fixed(volume / us_fluid_ounce, volume < 3 * millilitre ? 4 : 2);
}

std::string dip_stick(const geometry::LevelCurve& curve, const std::vector<Length>& asked) {
  TextTable table({Side::right, Side::right, Side::right, Side::right, Side::right});
  table.row({"depth", "below the brim", "holds", "US fl oz", "1 mm here is"});
  table.rule();
  for (const auto& [depth, held, surface] : curve.levels(dip_depths(curve, asked)))
    table.row({fixed_mm(depth), fixed_mm(curve.height() - depth), fixed_ml(held), us_fl_oz(held),
               fixed_ml(surface * millimetre, 2)});
  return table.text();
}

std::string holds_line(const geometry::LevelCurve& curve, const std::string& what) {
  const Volume brimful = curve.brimful();
  return line(what + " holds " + fixed_ml(brimful) + " to the brim (" + us_fl_oz(brimful) +
              " US fl oz), " + depth_text(curve.height()) + " deep.");
}

std::string group_line(const moulds::MeshCavities& found, const HollowGroup& group) {
  std::string text =
      found.survey.hollows.size() > 1 ? moulds::numbers_text(group.members) + ": " : "";
  text += counted(static_cast<std::int64_t>(group.members.size()), "cavity", "cavities") + " of " +
          fixed_ml(group.most);
  if (group.members.size() > 1) {
    const double spread = group.spread().in_percent();
    text += spread < 0.05 ? ", all alike" : ", within " + fixed(spread, 1) + " %";
  }
  const auto& hollow = found.survey.hollows[group.typical];
  return line(text + "; floor at " + fixed(hollow.floor_mm, 1) + " mm, brim at " +
              fixed(hollow.brim_mm, 1) + " mm in the mesh, opening " +
              fixed(hollow.opening / square_centimetre, 1) + " cm².");
}

/// What a mesh holds where it is more than one cavity: each kind with a dip stick of its own.
std::string groups_text(const GaugeFindings& findings) {
  const auto& found = *findings.mould.found;
  std::string text;
  for (const HollowGroup& group : found.groups) {
    const auto& curve = found.survey.hollows[group.typical].curve;
    text += group_line(found, group) + holds_line(curve, "Each") + "\n" +
            dip_stick(curve, findings.depths) + "\n";
  }
  for (const auto& basin : found.survey.basins)
    text += line("Filled past the walls between them, cavities " +
                 moulds::numbers_text(basin.pockets) + " hold " + fixed_ml(basin.brimful) +
                 " together, spilling at " + fixed(basin.brim_mm, 1) + " mm.");
  return text;
}

std::string cavities_text(const GaugeFindings& findings) {
  const Mould& mould = findings.mould;
  std::string text;
  if (mould.found && mould.found->one)
    text += line("Cavity " + std::to_string(*mould.found->one + 1) + " of " +
                 std::to_string(mould.found->survey.hollows.size()) + ", alone.");
  text += holds_line(mould.curve, mould.cavities == 1
                                      ? std::string("One cavity")
                                      : std::to_string(mould.cavities) + " cavities, each");
  if (mould.cavities > 1)
    text += line("All of them: " + fixed_ml(mould.cavities * mould.curve.brimful()) + ".");
  if (!findings.ways)
    for (const auto& measured : mould.measurements) text += line(measured_line(measured));
  return text + "\n" + dip_stick(mould.curve, findings.depths);
}

std::string fit_text(const FitFinding& finding) {
  const auto& fit = finding.fit;
  std::string text = "\nTO HOLD " + fixed_ml(finding.wish.pour) + "\n";
  text += line("Scale " + at_least(100 * fit.across, 2) + " % across and " +
               at_least(100 * fit.depth, 2) + " % in depth: " + fixed_mm(fit.length) + " x " +
               fixed_mm(fit.width) + " x " + fixed_mm(fit.height) + " inside, " +
               fixed_ml(fit.brimful) + " to the brim.");
  if (finding.wish.headspace > Length())
    text += line("That leaves " + depth_text(finding.wish.headspace) + " below the brim.");
  return text;
}

std::string casting_text(const CastingFinding& finding) {
  const auto& need = finding.need;
  std::string text = "\nTO CAST A MOULD ROUND IT\n";
  text += line("Box inside " + fixed_mm(need.length) + " x " + fixed_mm(need.width) + " x " +
               fixed_mm(need.height) + "; the master displaces " + fixed_ml(need.master) + ".");
  text += line("Silicone or plaster: " + at_least(need.material / millilitre, 1) + " ml" +
               (finding.density ? ", " + at_least(need.material * *finding.density / gram, 0) +
                                      " g at " + fixed_g_per_ml(*finding.density, 2)
                                : "; multiply by its density for the weight to mix") +
               ". Add what stays in the mixing cup.");
  return text;
}

/// The depth rounded down and what is left to the brim rounded up, so that either, typed back,
/// holds no more than the pour.
std::string pour_text(const PourFinding& finding, const Mould& mould) {
  std::string text = "\nPOURED " + at_most(finding.pour / millilitre, 2) + " ml INTO ONE CAVITY\n";
  return text + line("It stands " + at_most_text(finding.depth) + " deep, " +
                     at_least_text(mould.curve.height() - finding.depth) + " below the brim. " +
                     "1 mm more or less there is " +
                     fixed_ml(mould.curve.free_surface(finding.depth) * millimetre, 2) + ".");
}

std::string tilt_text(const TiltFinding& finding) {
  std::string text = "\nTILTED BY " + trimmed(finding.tilt.angle.degrees(), 2) + "°\n";
  text +=
      line("Poured " + at_most_text(finding.mark) + " up the low wall: " + fixed_ml(finding.pour) +
           ". It spills at " + at_most_text(finding.brim) + ", with " +
           at_most(finding.most / millilitre, 1) + " ml.");
  if (finding.pools > 1)
    text += line("! At that mark the liquid lies in " + std::to_string(finding.pools) +
                 " separate pools: poured into one of them, it rises higher there.");
  text += line("Set level again, a second pour covers it at " + at_least_text(finding.covered_at) +
               " deep.");
  if (finding.second.empty()) return text;
  TextTable table({Side::right, Side::right});
  table.row({"second pour to", "takes"});
  for (const auto& [depth, volume] : finding.second)
    table.row({fixed_mm(depth) + " deep", fixed_ml(volume)});
  return text + table.text();
}

}  // namespace

bool shows_each_hollow(const Mould& mould) {
  return mould.is_mesh_alone && !mould.found->one && mould.found->survey.hollows.size() > 1;
}

std::string depth_text(Length depth) {
  return trimmed(depth / millimetre, 1) + " mm (" + in_inches(depth) + ")";
}

std::string gauge_text(const GaugeFindings& findings) {
  const Mould& mould = findings.mould;
  std::string text = on_one_line(mould.name) + "\n";  // may be a file's
  if (!mould.description.empty()) text += line(on_one_line(mould.description));
  if (!mould.note.empty()) text += line(mould.note);
  text += "\n";
  text += shows_each_hollow(mould) ? groups_text(findings) : cavities_text(findings);
  if (findings.ways) text += ways_text(*findings.ways);
  if (findings.fit) text += fit_text(*findings.fit);
  if (findings.casting) text += casting_text(*findings.casting);
  if (findings.pour) text += pour_text(*findings.pour, mould);
  if (findings.tilt) text += tilt_text(*findings.tilt);
  if (findings.packing) text += packing_text(*findings.packing);
  if (!findings.written.empty()) text += "\n";
  for (const auto& file : findings.written) text += line("Written: " + on_one_line(file));
  if (!mould.remarks.empty()) text += "\n";
  for (const auto& remark : mould.remarks)
    text += wrapped(remark.text, remark.severity == Severity::note ? " - " : " ! ", "   ");
  return text;
}

}  // namespace brimwright::reports
