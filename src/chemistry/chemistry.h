#pragma once

// The room's table of contents: fats and alkalis -> formula -> batter -> superfat.

#include "chemistry/alkali.h"
#include "chemistry/batter.h"
#include "chemistry/crystallisation.h"
#include "chemistry/fats.h"
#include "chemistry/formula.h"
#include "chemistry/heat_findings.h"
#include "chemistry/liquids.h"
#include "chemistry/lye.h"
#include "chemistry/lye_enthalpy.h"
#include "chemistry/salts.h"
#include "chemistry/superfat.h"
