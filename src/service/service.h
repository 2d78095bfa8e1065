#pragma once

#include "moulds/library.h"
#include "service/requests.h"

namespace brimwright::service {

// The one door behind every user interface: a request in, a document and files' bytes out. No
// sockets; nothing is read but what a request names, the shipped catalogue and the records beside
// it, and nothing is written but these records.

Reply answer(const Request& request, const moulds::Library& library, const Caller& caller = {});

/// What can be done here of what needs a helper program.
struct Abilities {
  bool makes_pdf;
  bool imports_meshes;  // of all kinds; without it, binary STL alone is read
};
Abilities abilities();

}  // namespace brimwright::service
