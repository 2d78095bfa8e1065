#pragma once

// The room's table of contents: mould files and shapes -> cavities -> level curves.

#include "moulds/casting_box.h"
#include "moulds/fit.h"
#include "moulds/library.h"
#include "moulds/mould.h"
#include "moulds/mould_file.h"
#include "moulds/mould_solid.h"
#include "moulds/shape.h"
