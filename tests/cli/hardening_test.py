"""The programs read strangers' meshes: what their build must have, read from the binaries themselves."""
import platform
import subprocess
import sys


def told(*words):
    return subprocess.run(words, capture_output=True, text=True, check=True).stdout


def look_at(program):
    def require(truth, what):
        if not truth:
            sys.exit(f"{program}: {what}")

    def readelf(*words):
        return told("readelf", "--wide", *words, program)

    dynamic = readelf("--dynamic")
    segments = readelf("--program-headers")
    symbols = readelf("--dyn-syms")

    # Linking: nothing that a stray write could redirect stays writable, and no address is fixed.
    require("DYN (" in readelf("--file-header") and "(FLAGS_1)" in dynamic and "PIE" in dynamic,
            "its code lies at a fixed address: it is not linked with -pie")
    require("BIND_NOW" in dynamic or "NOW" in dynamic.split("(FLAGS_1)")[1].splitlines()[0],
            "its calls into libraries are bound late and stay writable: -z now is missing")
    require("GNU_RELRO" in segments, "its tables stay writable: -z relro is missing")
    stack = next(line for line in segments.splitlines() if "GNU_STACK" in line)
    require("RWE" not in stack, "its stack can be run as code")

    # Compiling: what an overrun meets.
    require("__stack_chk_fail" in symbols, "no function guards its stack: -fstack-protector-strong")
    fortified = [line for line in symbols.splitlines() if "_chk@" in line]
    require("__glibcxx_assert_fail" in symbols,
            "no container checks its index: -D_GLIBCXX_ASSERTIONS")
    if platform.machine() == "x86_64":
        require("endbr64" in told("objdump", "--disassemble=main", program),
                "jumps may land anywhere: -fcf-protection is missing")
    print(f"{program}: bound at once, read-only after, no fixed address, guarded stacks, "
          f"{len(fortified)} checked calls, checked containers")
    return len(fortified)


# The smallest have no call whose buffer's size the compiler knows; all are compiled alike.
if sum(look_at(program) for program in sys.argv[1:]) == 0:
    sys.exit("no call checks its buffer's size: -D_FORTIFY_SOURCE")
