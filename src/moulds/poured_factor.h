#pragma once

#include "moulds/mould.h"

namespace brimwright::moulds {

/// What a cavity takes by her batches / what it holds as measured: the mould file's
/// "poured_factor", 1 where it has none. The mould's curve is as measured, times it.
double poured_factor(const Mould& mould);

}  // namespace brimwright::moulds
