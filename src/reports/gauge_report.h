#pragma once

#include "geometry/levels/tilted_pour.h"
#include "moulds/casting_box.h"
#include "moulds/fit.h"
#include "moulds/mould.h"
#include "reports/packing_report.h"
#include "reports/ways_report.h"
#include "units/quantity.h"

#include <optional>
#include <string>
#include <vector>

namespace brimwright::reports {

/// The mould scaled to a wish.
struct FitFinding {
  moulds::FitWish wish;
  moulds::Fit fit;
};

/// What it takes to cast a mould round the mesh.
struct CastingFinding {
  moulds::CastingBox box;
  moulds::CastingNeed need;
  std::optional<Density> density;  // of the silicone or plaster
};

/// A volume poured into one cavity, the mould level.
struct PourFinding {
  Volume pour;
  Length depth;  // at which it stands
};

/// A pour into the tilted mould, and second pours over it once it has set and stands level.
struct TiltFinding {
  geometry::Tilt tilt;
  Length mark, brim;  // how far up the low wall it stands, and where it would spill
  Volume pour, most;  // that pour, and the most it holds before it spills
  std::size_t pools = 1;
  Length covered_at;                              // depth at which a second pour just covers it
  std::vector<std::pair<Length, Volume>> second;  // second pours up to the depths asked for
};

/// Everything that was asked of one mould.
struct GaugeFindings {
  moulds::Mould mould;
  std::vector<Length> depths;
  std::optional<FitFinding> fit;
  std::optional<CastingFinding> casting;
  std::optional<PourFinding> pour;
  std::optional<TiltFinding> tilt;
  std::optional<PackingFinding> packing;
  std::vector<std::string> written;  // files
  std::optional<WaysFinding> ways = {};
};

/// For people: volumes by each way they were measured, alike hollows together, a dip-stick table.
std::string gauge_text(const GaugeFindings& findings);

/// One JSON document, schema brimwright.gauge/1: one entry for each cavity.
std::string gauge_json(const GaugeFindings& findings);

/// Whether each hollow of a mesh is shown for itself. A mould file shows its cavities instead:
/// those that are filled, as water corrected them.
bool shows_each_hollow(const moulds::Mould& mould);

/// "38 mm (1 1/2 in)", both to the nearest.
std::string depth_text(Length depth);

}  // namespace brimwright::reports
