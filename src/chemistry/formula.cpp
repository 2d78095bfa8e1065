#include "chemistry/formula.h"

namespace brimwright::chemistry {

std::string name_of(AdditiveKind kind) {
  switch (kind) {
    case AdditiveKind::fragrance:
      return "fragrance";
    case AdditiveKind::colour:
      return "colour";
    case AdditiveKind::additive:
      break;
  }
  return "additive";
}

std::string name_of(GoesInto where) {
  switch (where) {
    case GoesInto::lye:
      return "lye";
    case GoesInto::fats:
      return "fats";
    case GoesInto::batter:
      break;
  }
  return "batter";
}

}  // namespace brimwright::chemistry
