#pragma once

#include "days/schedule.h"

#include <optional>
#include <vector>

// A second scheduler, which goes through every way there is. It is written from the rules and not
// from the code, day by day of the calendar, and takes as long as it takes.

/// Whether all can be made from `from` on, each delivery for its day.
bool is_possible(const brimwright::days::Studio& studio,
                 const std::vector<brimwright::days::Delivery>& deliveries,
                 brimwright::days::Day from, const std::vector<brimwright::days::Day>& due);

/// What the rules have against a schedule; empty where they have nothing.
std::string complaint_about(const brimwright::days::Schedule& schedule,
                            const brimwright::days::Studio& studio,
                            const std::vector<brimwright::days::Delivery>& deliveries,
                            brimwright::days::Day from);
