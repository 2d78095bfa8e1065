#pragma once

// The room's table of contents: quantities, money, shares, reading and printing them, UserError.

#include "units/angle.h"
#include "units/fields.h"
#include "units/money.h"
#include "units/printing.h"
#include "units/quantity.h"
#include "units/rate.h"
#include "units/reading.h"
#include "units/remark.h"
#include "units/rounded_text.h"
#include "units/rounding.h"
#include "units/share.h"
#include "units/shown_text.h"
#include "units/temperature.h"
#include "units/user_error.h"
#include "units/water.h"
#include "units/weight_text.h"
