#pragma once

#include "planning/weighed_lye.h"
#include "service/requests.h"

namespace brimwright::service {

/// What a request says of lye already weighed: "base NaOH 96 g", "topping 2 KOH 12.5 g"; of fats
/// added to mend it: "base olive 14 g"; of a bag's purity: "NaOH 97 %", "KOH 88 % to 92 %".
/// UserError at the member for what is none of these, or said twice.
planning::LyeStory read_lye_story(const PlanRequest& request, const UserTerms& terms);

}  // namespace brimwright::service
