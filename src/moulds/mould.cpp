#include "moulds/mould.h"

namespace brimwright::moulds {

std::string name_of(Way way) {
  switch (way) {
    case Way::dimensions:
      return "dimensions";
    case Way::mesh:
      return "mesh";
    case Way::water:
      return "water";
  }
  return {};
}

}  // namespace brimwright::moulds
