#pragma once

#include "moulds/library.h"
#include "records/batches.h"
#include "records/notes.h"
#include "records/records.h"
#include "service/lot_taking.h"
#include "service/requests.h"
#include "units/remark.h"

#include <string>
#include <vector>

namespace brimwright::service {

/// Whether lots are taken anew when that is noted: "weighed." and a row's key, or how many of a
/// bought decoration were used.
bool takes_lots(const std::string& key);

/// Takes anew from lots what a batch is noted to have weighed or counted by `keys`, or what was
/// planned where that was taken back. Within an act. Tells of lots that
/// were passed over. Question where the records have too little.
std::vector<Remark> use_as_weighed(records::Records& records, const records::Batch& batch,
                                   const std::vector<std::string>& keys, const std::string& run,
                                   const moulds::Library& library, const LotWishes& wishes,
                                   const UserTerms& terms);

/// What comes of a batch's lye where it is noted to have been weighed otherwise than planned; empty
/// where nothing is. A danger where the soap may be lye-heavy, and where that cannot be told, since
/// the run is another by now.
struct AsWeighed {
  std::vector<Remark> remarks = {};
  /// Those of more alkali than planned, and of what may be lye-heavy: to be asked about.
  std::vector<std::string> more_lye = {};
};
AsWeighed as_weighed(const records::Records& records, const records::Batch& batch,
                     const records::Notes& notes, const std::string& run,
                     const moulds::Library& library, const Caller& caller);

}  // namespace brimwright::service
