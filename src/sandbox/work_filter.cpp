#include "sandbox/work_filter.h"

#include <seccomp.h>
#include <sys/mman.h>
#include <sys/prctl.h>

#include <array>
#include <cerrno>

namespace brimwright::sandbox {
namespace {

// What memory, exceptions, clocks and sorting in the C and C++ libraries come to.
constexpr std::array free_of_harm = {
    SCMP_SYS(brk),    SCMP_SYS(munmap),      SCMP_SYS(mremap),         SCMP_SYS(madvise),
    SCMP_SYS(futex),  SCMP_SYS(sched_yield), SCMP_SYS(clock_gettime),  SCMP_SYS(gettimeofday),
    SCMP_SYS(time),   SCMP_SYS(getrandom),   SCMP_SYS(sysinfo),        SCMP_SYS(sched_getaffinity),
    SCMP_SYS(getpid), SCMP_SYS(gettid),      SCMP_SYS(rt_sigprocmask), SCMP_SYS(rt_sigreturn),
    SCMP_SYS(exit),   SCMP_SYS(exit_group)};

constexpr int last_descriptor = 3;  // nowhere, three times, and the pipe to the parent

bool add_rules(scmp_filter_ctx filter) {
  int fault = 0;
  for (const int call : free_of_harm) fault |= seccomp_rule_add(filter, SCMP_ACT_ALLOW, call, 0);
  for (const int call : {SCMP_SYS(write), SCMP_SYS(writev)})
    fault |=
        seccomp_rule_add(filter, SCMP_ACT_ALLOW, call, 1, SCMP_A0(SCMP_CMP_LE, last_descriptor, 0));
  // Memory of its own, none of it a file's, and none of it to be run.
  for (const int call : {SCMP_SYS(mmap), SCMP_SYS(mmap2)})
    fault |=
        seccomp_rule_add(filter, SCMP_ACT_ALLOW, call, 2, SCMP_A2(SCMP_CMP_MASKED_EQ, PROT_EXEC, 0),
                         SCMP_A3(SCMP_CMP_MASKED_EQ, MAP_ANONYMOUS, MAP_ANONYMOUS));
  fault |= seccomp_rule_add(filter, SCMP_ACT_ALLOW, SCMP_SYS(mprotect), 1,
                            SCMP_A2(SCMP_CMP_MASKED_EQ, PROT_EXEC, 0));
  return fault == 0;
}

[[maybe_unused]] Confinement filtered() {
  // EINVAL: the kernel was built without filters.
  if (::prctl(PR_GET_SECCOMP, 0, 0, 0, 0) < 0 && errno == EINVAL) return Confinement::not_known;
  const scmp_filter_ctx filter = seccomp_init(SCMP_ACT_KILL_PROCESS);
  if (filter == nullptr) return Confinement::refused;
  const int fault = add_rules(filter) ? seccomp_load(filter) : -ECANCELED;
  seccomp_release(filter);
  if (fault == 0) return Confinement::confined;
  return fault == -ENOSYS || fault == -EINVAL ? Confinement::not_known : Confinement::refused;
}

}  // namespace

Confinement confine_this_process() {
  if (::prctl(PR_SET_NO_NEW_PRIVS, 1, 0, 0, 0) != 0) return Confinement::refused;
#ifdef __SANITIZE_ADDRESS__
  return Confinement::not_built_in;
#else
  return filtered();
#endif
}

}  // namespace brimwright::sandbox
