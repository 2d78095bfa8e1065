#pragma once

#include "units/spelling.h"

#include <string_view>

namespace brimwright::schemas {

// The kinds of file that a maker writes and the one that the program keeps for her, each at today's
// version, with the keys that the version before it called otherwise. The JSON Schemas beside this
// file describe today's.

const Schema& run();
const Schema& formula();
const Schema& mould();
const Schema& tips();
const Schema& fats();
const Schema& studio();
const Schema& order();
const Schema& bench();  // a batch that is being weighed; no tidying
const Schema& notes();  // of one batch, read once; no tidying

/// The kind of hers whose today's or previous version is called `version` ("brimwright.run/1");
/// none for any other text.
const Schema* kind_called(std::string_view version);

}  // namespace brimwright::schemas
