#pragma once

#include "moulds/library.h"
#include "service/requests.h"
#include "service/shown_batch.h"

namespace brimwright::service {

/// Notes what happened to a batch, or tells what is noted. What is answered as done is on the disk;
/// with a complaint nothing is changed.
Reply noted(const NoteRequest& request, const Request& asked, const moulds::Library& library,
            const Caller& caller, const ShownBatch& shown = {});

}  // namespace brimwright::service
