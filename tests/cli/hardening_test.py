"""The program reads strangers' meshes: what its build must have, read from the binary itself."""
import platform
import subprocess
import sys

program = sys.argv[1]


def told(*words):
    result = subprocess.run(["readelf", "--wide", *words, program], capture_output=True, text=True,
                            check=True)
    return result.stdout


def require(truth, what):
    if not truth:
        sys.exit(f"{program}: {what}")


dynamic = told("--dynamic")
segments = told("--program-headers")
symbols = told("--dyn-syms")
header = told("--file-header")

# Linking: nothing that a stray write could redirect stays writable, and no address is fixed.
require("DYN (" in header and "(FLAGS_1)" in dynamic and "PIE" in dynamic,
        "its code lies at a fixed address: it is not linked with -pie")
require("BIND_NOW" in dynamic or "NOW" in dynamic.split("(FLAGS_1)")[1].splitlines()[0],
        "its calls into libraries are bound late and stay writable: -z now is missing")
require("GNU_RELRO" in segments, "its tables stay writable: -z relro is missing")
stack = next(line for line in segments.splitlines() if "GNU_STACK" in line)
require("RWE" not in stack, "its stack can be run as code")

# Compiling: what an overrun meets.
require("__stack_chk_fail" in symbols, "no function guards its stack: -fstack-protector-strong")
fortified = [line for line in symbols.splitlines() if "_chk@" in line]
require(fortified, "no call checks its buffer's size: -D_FORTIFY_SOURCE")
require("__glibcxx_assert_fail" in symbols,
        "no container checks its index: -D_GLIBCXX_ASSERTIONS")
if platform.machine() == "x86_64":
    code = subprocess.run(["objdump", "--disassemble=main", program], capture_output=True,
                          text=True, check=True).stdout
    require("endbr64" in code, "jumps may land anywhere: -fcf-protection is missing")

print(f"bound at once, read-only after, no fixed address, guarded stacks, "
      f"{len(fortified)} checked calls, checked containers")
