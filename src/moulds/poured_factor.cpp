#include "moulds/poured_factor.h"

namespace brimwright::moulds {

double poured_factor(const Mould& mould) {
  if (mould.measurements.empty()) return 1;  // one that was never read from a file
  return mould.curve.brimful() / mould.measurements.front().brimful;
}

}  // namespace brimwright::moulds
