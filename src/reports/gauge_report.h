#pragma once

#include "moulds/mould.h"

#include <string>
#include <vector>

namespace brimwright::reports {

/// A mould's measure for people: volumes by each way it was measured, and a dip-stick table.
std::string gauge_text(const moulds::Mould& mould, const std::vector<Length>& depths);

/// The same as one JSON document, schema brimwright.gauge/1: one entry for each cavity.
std::string gauge_json(const moulds::Mould& mould, const std::vector<Length>& depths);

/// "38 mm (1 1/2 in)".
std::string depth_text(Length depth);

}  // namespace brimwright::reports
