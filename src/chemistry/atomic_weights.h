#pragma once

namespace brimwright::chemistry {

/// Standard atomic weights (IUPAC/CIAAW 2021, abridged), in g/mol, as data/lye.json holds them.
struct AtomicWeights {
  double hydrogen = 0, carbon = 0, oxygen = 0;
};
const AtomicWeights& atomic_weights();

}  // namespace brimwright::chemistry
