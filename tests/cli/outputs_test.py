"""What the program writes replaces none of what it reads, ends as its kind does, and goes into devices and pipes."""
import os
import re
import shutil
import subprocess
import sys
import tempfile
import threading

root, program = sys.argv[1:3]
failures = []


def check(condition, what):
    if not condition:
        failures.append(what)


def run(*words, cwd, **more):
    return subprocess.run([program, *words], cwd=cwd, capture_output=True, timeout=60, **more)


def scene():
    """A folder of her own: a run, its mould, formula and own fats, a mesh; nothing of it is the catalogue's."""
    folder = tempfile.mkdtemp()
    for name in ("spring_cups.run.json", "meadow_base.formula.json", "cloud_topping.formula.json"):
        shutil.copy(f"{root}/examples/{name}", folder)
    shutil.copy(f"{root}/moulds/fluted_cup_small.json", f"{folder}/cup.json")
    shutil.copy(f"{root}/meshes/twisted_cup.stl", f"{folder}/w.stl")
    with open(f"{folder}/spring_cups.run.json") as file:
        text = file.read()
    with open(f"{folder}/spring_cups.run.json", "w") as file:
        file.write(re.sub(r'"mould": "[^"]*twisted_cup.json"', '"mould": "cup.json"', text))
    return folder


def contents(folder):
    found = {}
    for name in sorted(os.listdir(folder)):
        if os.path.isfile(f"{folder}/{name}"):
            with open(f"{folder}/{name}", "rb") as file:
                found[name] = file.read()
    return found


def refused(what, words, said, make=None):
    folder = scene()
    if make:
        make(folder)
    before = contents(folder)
    done = run(*words, cwd=folder)
    line = done.stderr.decode()
    check(done.returncode == 1, f"{what}: exit {done.returncode}, {line!r}")
    check(done.stdout == b"", f"{what}: printed something")
    check(line.count("\n") == 1 and line.startswith("command line: ") and re.search(said, line), f"{what}: {line!r}")
    check(contents(folder) == before, f"{what}: files were changed")
    shutil.rmtree(folder)


mesh = ("gauge", "w.stl", "--unit", "mm", "--role", "cavity")
run_file = "spring_cups.run.json"
reads = "is the same file as .*, which this command reads; give another name"

# An output that is its own input, under its name, another name, a link to it.
refused("a mesh written over itself", (*mesh, "--write", "w.stl"), f"--write: .*{reads}")
refused("a mesh written over itself through dots", (*mesh, "--write", "./w.stl"), f"--write: .*{reads}")
for kind, link in (("symbolic link", os.symlink), ("hard link", os.link)):
    for option, target, ending in (("--picture", run_file, "svg"), ("--picture", "cup.json", "svg"), ("--picture", "meadow_base.formula.json", "svg"),
                                   ("--label", "cloud_topping.formula.json", "txt"), ("--piece", "cup.json", "glb"),
                                   ("--piece", run_file, "stl"), ("--piece", "cup.json", "svg")):
        refused(f"{option} by a {kind} to {target}", ("plan", run_file, option, f"a.{ending}"), f"{option}: .*{reads}",
                lambda folder, link=link, target=target, ending=ending: link(f"{folder}/{target}", f"{folder}/a.{ending}"))
    for option, ending in (("--html", "html"), ("--pdf", "pdf")):
        refused(f"{option} by a {kind} to the formula", ("sheet", run_file, option, f"a.{ending}"), f"{option}: .*{reads}",
                lambda folder, link=link, ending=ending: link(f"{folder}/meadow_base.formula.json", f"{folder}/a.{ending}"))
    for option, ending in (("--picture", "svg"), ("--glb", "glb"), ("--write", "stl")):
        refused(f"{option} by a {kind} to the mould", ("gauge", "cup.json", option, f"a.{ending}"), f"{option}: .*{reads}",
                lambda folder, link=link, ending=ending: link(f"{folder}/cup.json", f"{folder}/a.{ending}"))
    refused(f"--picture by a {kind} to the embed", ("gauge", f"{root}/moulds/loaf_short.json", "--embed", "cup.json", "--cover", "60 mm",
                                                   "--library", ".", "--picture", "a.svg"), f"--picture: .*{reads}",
            lambda folder, link=link: link(f"{folder}/cup.json", f"{folder}/a.svg"))
refused("a shipped mould by a link", ("gauge", "cup.json", "--picture", "a.svg"), "--picture: .*a built-in file",
        lambda folder: os.symlink(f"{root}/moulds/round_cup.json", f"{folder}/a.svg"))

# Two outputs that are one file, also while it is not there.
for first, second in (("a.svg", "a.svg"), ("a.svg", "./a.svg"), ("a.svg", "sub/../a.svg")):
    refused(f"{first} and {second}", ("plan", run_file, "--picture", first, "--piece", second), "is written by --piece already|is written by --picture already",
            lambda folder: os.mkdir(f"{folder}/sub"))
refused("one file by two links", ("plan", run_file, "--picture", "a.svg", "--piece", "b.svg"), "is written by .* already",
        lambda folder: (open(f"{folder}/a.svg", "w").close(), os.symlink("a.svg", f"{folder}/b.svg")))

# An ending that does not fit; capitals are no difference.
for option, name, ending in (("--picture", "r.json", ".svg"), ("--picture", "picture", ".svg"), ("--glb", "a.svg", ".glb"), ("--write", "w.obj", ".stl")):
    refused(f"{option} {name}", ("gauge", "cup.json", option, name), rf"{option}: .*does not end in \{ending}; {option} writes .*; give a name that ends so")
for option, name, ending in (("--picture", "a.png", ".svg"), ("--label", run_file, ".txt"), ("--label", "", ".txt")):
    refused(f"{option} {name}", ("plan", run_file, option, name), rf"{option}: .*does not end in \{ending}")
for option, name, ending in (("--html", run_file, ".html"), ("--pdf", "a.html", ".pdf"), ("--html", "a.pdf", ".html")):
    refused(f"{option} {name}", ("sheet", run_file, option, name), rf"{option}: .*does not end in \{ending}")

# All are looked at before the first is written.
for name, said in (("no/b.pdf", "folder is not there"), ("b.pdf/", "does not end in|is a folder"), ("d.pdf", "is a folder"),
                   ("gone.pdf", "is a link to nothing"), ("x" * 300 + ".pdf", "name that is too long")):
    refused(f"a second output {name[:20]}", ("sheet", run_file, "--html", "a.html", "--pdf", name), f"--pdf: .*({said})",
            lambda folder: (os.mkdir(f"{folder}/d.pdf"), os.symlink("nowhere", f"{folder}/gone.pdf")))

# What is written to and never replaced.
folder = scene()
done = run("sheet", run_file, "--html", "A.HTML", "--pdf", "a.Pdf", cwd=folder)
check(done.returncode == 0 and os.path.exists(f"{folder}/A.HTML") and os.path.exists(f"{folder}/a.Pdf"), f"capitals: {done.stderr}")
plain = run("plan", run_file, "--label", "label.txt", cwd=folder)
with open(f"{folder}/label.txt", "rb") as file:
    label = file.read()
check(plain.returncode == 0 and len(label) > 100, f"a label: {plain.stderr}")
both = run("plan", run_file, "--label", "/dev/stdout", cwd=folder)
check(both.returncode == 0 and both.stdout == label + plain.stdout, f"a label to standard output: {both.stderr}")
with open(f"{folder}/out.log", "wb") as out:
    number = os.fstat(out.fileno()).st_ino
    subprocess.run([program, "plan", run_file, "--label", "/dev/stdout"], cwd=folder, stdout=out, timeout=60)
check(os.stat(f"{folder}/out.log").st_ino == number, "a redirected file was replaced")
with open(f"{folder}/out.log", "rb") as file:
    check(file.read() == label + plain.stdout, "a redirected file does not hold the label and then the plan")
check(run("gauge", "cup.json", "--picture", "/dev/null", cwd=folder).returncode == 0, "/dev/null")
check(not os.path.isfile("/dev/null"), "/dev/null was replaced")
full = run("gauge", "cup.json", "--picture", "/dev/full", cwd=folder)
check(full.returncode == 1 and b"cannot be written to" in full.stderr, f"a full device: {full.stderr}")
os.mkfifo(f"{folder}/pipe")
got = []
reader = threading.Thread(target=lambda: got.append(open(f"{folder}/pipe", "rb").read()))
reader.start()
piped = run("plan", run_file, "--label", "pipe", cwd=folder)
reader.join(timeout=30)
check(piped.returncode == 0 and got == [label], f"a pipe: {piped.stderr}")
# A link to a file of her own that is no input is followed, and stays a link.
open(f"{folder}/old.svg", "w").close()
os.symlink("old.svg", f"{folder}/link.svg")
check(run("gauge", "cup.json", "--picture", "link.svg", cwd=folder).returncode == 0, "a link to an old picture")
check(os.path.islink(f"{folder}/link.svg") and os.path.getsize(f"{folder}/old.svg") > 1000, "the link was replaced")
check(run("gauge", "cup.json", "--picture", "link.svg", cwd=folder).returncode == 0, "the same again")
shutil.rmtree(folder)

print("\n".join(failures) or "all cases as they should be")
sys.exit(bool(failures))
