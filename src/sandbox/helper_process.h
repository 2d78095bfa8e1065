#pragma once

#include "sandbox/work_limits.h"

#include <initializer_list>
#include <string>
#include <string_view>

namespace brimwright::sandbox {

/// `limited` by the helper program at `path`, whose own word for the job is `job`. It gets nothing
/// of this process but its two ends and the environment: no files, no handlers, nowhere to print.
WorkReport worked_by(const std::string& path, std::string_view job,
                     std::initializer_list<std::string_view> bytes, const WorkLimits& limits);

}  // namespace brimwright::sandbox
