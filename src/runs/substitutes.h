#pragma once

#include "planning/run.h"
#include "units/fields.h"

#include <map>
#include <string>
#include <vector>

namespace brimwright::runs {

/// The material that goods of another make serve as, and where the studio says so.
struct ServesAs {
  std::string material;
  Place where;
};
/// By what the goods are called where they are listed.
using Substitutes = std::map<std::string, ServesAs>;

/// A studio's "serves_as". `listed`: what it lists under packs, prices and have.
///
/// UserError for what is listed nowhere; for goods that serve as themselves, in a circle, or as
/// what serves as something else; and for two that are by their names not one material: another fat
/// is another formula with another lye.
Substitutes read_substitutes(const Fields& section, const std::vector<std::string>& listed);

/// UserError where goods and what they serve as are two fats of `runs` with other saponification
/// values, or a fat and something else.
void refuse_other_goods(const Substitutes& substitutes,
                        const std::vector<const planning::Run*>& runs);

}  // namespace brimwright::runs
