#pragma once

// The room's table of contents: a run with its moulds and formulas -> a plan.

#include "planning/bench_heat.h"
#include "planning/lye_pot.h"
#include "planning/plan.h"
#include "planning/run.h"
#include "planning/weighing.h"
