#pragma once

#include "moulds/mould.h"
#include "reports/drawing.h"
#include "units/quantity.h"

#include <optional>
#include <string>
#include <vector>

namespace brimwright::reports {

/// What a picture of a mould shows beside the cavity. Depths are above the cavity's lowest point
/// and lie within it; std::logic_error otherwise.
struct MouldPicture {
  struct Layer {
    std::string name;
    Length from, to;
  };

  std::optional<Length> pour_line = {};
  std::vector<Layer> layers = {};   // lowest first
  std::vector<Length> depths = {};  // marked, with what the cavity holds up to there
  std::string prefix = "mould";     // of the file's names; another for each picture on an HTML page
};

/// One cavity drawn for print, in black and white: the section where it is widest and the plan,
/// to scale, with brim, pour line, layers in hatchings of their own, dimensions in millimetres and
/// inches, what it holds, and scale bars.
///
/// At most 190 mm by 259 mm, which A4 and US Letter both have within margins of 10 mm, unless there
/// are more layers and depths than a page can list. True size
/// when printed at 100 % if it fits so, otherwise at the first scale of ISO 5455 that does (1:2,
/// 1:5, 1:10 and so on), and says which. The same bytes for the same mould.
Drawing mould_picture(const moulds::Mould& mould, const MouldPicture& what);

/// The same as an SVG.
std::string mould_picture_svg(const moulds::Mould& mould, const MouldPicture& what);

}  // namespace brimwright::reports
