#pragma once

namespace brimwright::sandbox {

enum class Confinement {
  confined,      // by the filter
  not_built_in,  // sanitizers ask the system for more than any list of ours
  not_known,     // to this system's kernel, which has no such filter
  refused        // the kernel has it and will not set it
};

/// Sets a filter (seccomp) on what this process may ask of the system from now on: memory, the
/// time, writing to what it has open among the first four descriptors, and its end. Anything else,
/// such as opening a file, a socket, another program or a signal to another process, ends it at
/// once. There is no way back. It can gain no rights by it or after it (no_new_privs), whatever
/// comes of the filter.
Confinement confine_this_process();

}  // namespace brimwright::sandbox
