#pragma once

#include "chemistry/fat.h"
#include "moulds/mould.h"
#include "planning/tips.h"

#include <string>
#include <vector>

namespace brimwright::reports {

struct ShippedMould {
  std::string path;  // as a run names it
  moulds::Mould mould;
};
struct Catalogue {
  std::vector<ShippedMould> moulds;
  std::vector<chemistry::Fat> fats;
  std::vector<planning::Tip> tips = {};
};

/// What ships, a line each, or with everything known and its sources when `in_full`.
std::string catalogue_text(const Catalogue& catalogue, bool in_full);
std::string catalogue_json(const Catalogue& catalogue);

}  // namespace brimwright::reports
