#pragma once

#include "sandbox/work_limits.h"

#include <initializer_list>
#include <string>
#include <string_view>

namespace brimwright::sandbox {

/// What is done by a helper program, because it reads what strangers wrote with a library that may
/// crash, hang or eat memory over it, or because few need the libraries that it takes.
enum class Job { import_mesh, unite_solids, draw_sheet };

/// Has `job` done on `bytes`, the pieces one after the other, by its helper program: a process of
/// its own, started anew each time, that has only so much memory and time. Whatever the work does
/// to itself ends that process alone, and it ends with the thread that waits for it.
///
/// std::runtime_error when the system has no process or descriptor left.
WorkReport limited(Job job, std::initializer_list<std::string_view> bytes,
                   const WorkLimits& limits);

bool has_helper(Job job);

/// "the helper program brimwright-import, which is not installed beside /usr/bin/brimwright": for
/// work that ended as `no_helper`.
std::string missing_helper(Job job);

}  // namespace brimwright::sandbox
