#pragma once

// The room's table of contents.
#include "web/serve.h"   // the command
#include "web/server.h"  // the server, and what may be asked of it
#include "web/worker.h"  // the process behind it
