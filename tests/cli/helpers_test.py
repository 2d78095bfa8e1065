"""The helper programs as they are installed, as they are missing, and as they must not be believed.

Installed into a folder of its own, the program plans, reads every kind of mesh and prints a PDF; copied somewhere
alone it refuses what it has no helper for, by name, and does all else; and a helper that dies, hangs, talks without
end or sends what nobody asked for costs the file that it was given, and nothing more."""
import json
import os
import shutil
import stat
import subprocess
import sys
import tempfile

# Sheets of the same moment, whenever they are printed.
os.environ["SOURCE_DATE_EPOCH"] = "1780170360"

root, program, build = sys.argv[1:4]
failures = []
folder = tempfile.mkdtemp()

# A box of 60 x 40 x 25 mm, 60 ml: by its corners and its six sides.
CORNERS = [(x, y, z) for x in (0, 60) for y in (0, 40) for z in (0, 25)]
SIDES = [(0, 1, 3, 2), (4, 6, 7, 5), (0, 4, 5, 1), (2, 3, 7, 6), (0, 2, 6, 4), (1, 5, 7, 3)]


def check(condition, what):
    if not condition:
        failures.append(what)


def write(name, text):
    path = os.path.join(folder, name)
    with open(path, "w") as file:
        file.write(text)
    return path


def stl(boxes):
    facets = []
    for shift in boxes:
        for a, b, c, d in SIDES:
            for three in ((a, b, c), (a, c, d)):
                corners = "".join("vertex {} {} {}\n".format(*(x + shift for x in CORNERS[i])) for i in three)
                facets.append(f"facet normal 0 0 0\nouter loop\n{corners}endloop\nendfacet\n")
    return "solid box\n" + "".join(facets) + "endsolid box\n"


meshes = {
    "OBJ": write("box.obj", "".join("v {} {} {}\n".format(*c) for c in CORNERS) +
                 "".join("f {} {} {} {}\n".format(*(i + 1 for i in side)) for side in SIDES)),
    "OFF": write("box.off", "OFF\n8 6 0\n" + "".join("{} {} {}\n".format(*c) for c in CORNERS) +
                 "".join("4 {} {} {} {}\n".format(*side) for side in SIDES)),
    "text STL": write("box.stl", stl([0])),
}
overlapping = write("two.stl", stl([0, 15]))


def run(at, *words, cwd=None):
    return subprocess.run([at, *words], cwd=cwd or folder, capture_output=True, text=True, timeout=60)


def gauge(at, mesh):
    return run(at, "gauge", mesh, "--unit", "mm", "--role", "cavity", "--json")


def brimful_ml(done):
    return json.loads(done.stdout)["total_ml"] if done.returncode == 0 else done.stderr


def refused(done, what, *said):
    check(done.returncode == 1 and done.stdout == "" and done.stderr.count("\n") == 1 and
          all(words in done.stderr for words in said), f"{what}: {done.returncode} {done.stdout[:200]!r} {done.stderr!r}")


# Installed, the tree out of reach: bin, libexec and share stand for themselves.
prefix = os.path.join(folder, "usr")
subprocess.run(["cmake", "--install", build, "--prefix", prefix], check=True, capture_output=True)
installed = os.path.join(prefix, "bin", "brimwright")
check(sorted(os.listdir(os.path.join(prefix, "bin"))) == ["brimwright"], "bin holds more than the program")
for kind, mesh in meshes.items():
    found = brimful_ml(gauge(installed, mesh))
    check(found == 60, f"{kind} as installed: {found}")
check(gauge(installed, overlapping).returncode == 0, "a union as installed")
order = os.path.join(prefix, "share", "brimwright", "examples", "spring_cups.run.json")
check(run(installed, "plan", order).returncode == 0, "a plan as installed")
pdf = os.path.join(folder, "sheet.pdf")
done = run(installed, "sheet", order, "--pdf", pdf)
check(done.returncode == 0 and os.path.exists(pdf), f"a PDF as installed: {done.stderr!r}")

# Alone.
alone_folder = os.path.join(folder, "alone")
os.mkdir(alone_folder)
alone = shutil.copy(program, os.path.join(alone_folder, "brimwright"))
for kind, mesh in meshes.items():
    refused(gauge(alone, mesh), f"{kind} alone", os.path.basename(mesh), f"is {kind} ",
            f"the helper program brimwright-import, which is not installed beside {alone}", "binary STL")
order = f"{root}/examples/spring_cups.run.json"
check(run(alone, "plan", order).stdout == run(program, "plan", order).stdout != "", "a plan alone differs")
check(run(alone, "sheet", order).stdout == run(program, "sheet", order).stdout != "", "a sheet alone differs")
pdf = os.path.join(folder, "alone.pdf")
refused(run(alone, "sheet", order, "--pdf", pdf), "a PDF alone",
        f"the helper program brimwright-pdf, which is not installed beside {alone}", "HTML")
check(not os.path.exists(pdf), "a PDF that could not be made was begun")
tray = f"{root}/meshes/six_pocket_tray.stl"
check(run(alone, "gauge", tray, "--unit", "mm", "--json").stdout ==
      run(program, "gauge", tray, "--unit", "mm", "--json").stdout != "", "a binary STL alone differs")

# Beside helpers that are not what they should be. Only the importer's own is there for the overlapping boxes.
shutil.copy(os.path.join(os.path.dirname(program), "brimwright-import"), alone_folder)
refused(gauge(alone, overlapping), "a union alone", "overlap",
        f"the helper program brimwright-unite, which is not installed beside {alone}")
os.remove(os.path.join(alone_folder, "brimwright-import"))


def helper(name, script):
    path = os.path.join(alone_folder, name)
    with open(path, "w") as file:
        file.write("#!/bin/sh\n" + script + "\n")
    os.chmod(path, stat.S_IRWXU)
    return path


for what, script, said in [
        ("ends at once", "exit 0", "is not a sound OBJ file"),
        ("fails", "exit 1", "is not a sound OBJ file"),
        ("dies", "kill -SEGV $$", "is not a sound OBJ file"),
        ("sends garbage", "head -c 100000 /dev/urandom >&3", "is not a sound OBJ file"),
        ("sends huge counts", "printf '\\377\\377\\377\\377\\377\\377\\377\\177%.0s' 1 2 3 4 5 6 >&3",
         "is not a sound OBJ file"),
        ("says that the system would not confine it", "exit 5", "the system could not sandbox its reader"),
        ("says that it has no memory", "exit 4", "takes more than 2 GiB of memory"),
        ("hangs", "exec sleep 60", "takes too long to read")]:
    helper("brimwright-import", script)
    refused(gauge(alone, meshes["OBJ"]), f"a helper that {what}", said)
os.chmod(helper("brimwright-import", "exit 0"), stat.S_IRUSR)
refused(gauge(alone, meshes["OBJ"]), "a helper that may not be run",
        "brimwright-import, which is not installed")
for script in ("exit 0", "exit 1", "echo no PDF >&3", "kill -SEGV $$"):
    helper("brimwright-pdf", script)
    done = run(alone, "sheet", order, "--pdf", pdf)
    check(done.returncode == 2 and done.stdout == "" and "PDF" in done.stderr and not os.path.exists(pdf),
          f"a PDF by a helper that does {script}: {done.returncode} {done.stderr!r}")

shutil.rmtree(folder)
print("\n".join(failures) or "helper programs work installed, are missed by name, and are not believed")
sys.exit(1 if failures else 0)
