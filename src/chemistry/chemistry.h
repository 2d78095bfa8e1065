#pragma once

// The room's table of contents: fats and alkalis -> formula -> batter -> superfat.

#include "chemistry/alkali.h"
#include "chemistry/batter.h"
#include "chemistry/fats.h"
#include "chemistry/formula.h"
#include "chemistry/lye.h"
#include "chemistry/superfat.h"
