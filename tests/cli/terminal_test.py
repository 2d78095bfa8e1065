"""The terminal understands: help in 80 columns, suggestions for slips, completions that bash takes, "-" for a pipe, complaints
as JSON, a plan in brief, and colours where somebody sees them."""
import json
import os
import pty
import re
import shutil
import subprocess
import sys
import tempfile

root, program = os.path.abspath(sys.argv[1]), os.path.abspath(sys.argv[2])
failures = []
COMMANDS = ("gauge", "plan", "sheet", "list", "tidy", "init", "serve", "completions", "help")


def run(*words, cwd=root, given=None, env=None, program=program):
    return subprocess.run([program, *words], cwd=cwd, input=given, capture_output=True, text=True, timeout=120,
                          env={**os.environ, **(env or {})})


def check(condition, what):
    if not condition:
        failures.append(what)


# ---- help

bare = run()
check(bare.returncode == 0 and bare.stderr == "" and bare.stdout == run("--help").stdout, "brimwright alone is its help")
check(run("help").stdout == bare.stdout, "brimwright help")
helps = {(): bare.stdout}
for command in COMMANDS:
    helps[command,] = run(command, "--help").stdout
    check(re.search(rf"^  {command} +\w", bare.stdout, re.M), f"{command} stands in the help")
    if command != "help":
        check(run("help", command).stdout == helps[command,], f"help {command}")
for words, text in helps.items():
    check(text.endswith("\n") and "Usage: brimwright" in text, f"{words}: no help: {text[:80]!r}")
    failures += [f"{words} --help: over 80 columns: {line}" for line in text.splitlines() if len(line) > 80]
check("worker" not in bare.stdout, "the help shows what serve starts for itself")

# ---- suggestions: what is typed, and what is meant

folder = tempfile.mkdtemp()
shutil.copytree(f"{root}/examples", f"{folder}/examples")
RUN = "examples/plain_bars.run.json"
for words, meant in (
        (("plam", RUN), 'did you mean "plan"?'),
        (("guage", "x.stl"), 'did you mean "gauge"?'),
        (("help", "shet"), 'did you mean "sheet"?'),
        (("plan", RUN, "--sel", "4"), '--sel: is not an option here; did you mean "--sell"?'),
        (("plan", "--jsn", RUN), 'did you mean "--json"?'),
        (("plan", "--breif"), 'did you mean "--brief"?'),
        (("gauge", "moulds/plain_bar.json", "--fit-mas=95 g"), 'did you mean "--fit-mass"?'),
        (("gauge", "moulds/plain_bar.json", "--prop", "12 deg"), "--prop: is not an option here; brimwright gauge --help"),
        (("--verson",), 'did you mean "--version"?'),
        (("plan", "examples/plain_bar.run.json"), 'did you mean "examples/plain_bars.run.json"?'),
        (("sheet", "examples/spring_cup.run.json"), 'did you mean "examples/spring_cups.run.json"?'),
        (("list", "mould"), 'did you mean "moulds"?'),
        (("list", "tips", "round 8mm"), 'did you mean "round 8 mm"?'),
        (("list", "moulds", "plain_bra"), 'did you mean "plain_bar"?'),
        (("list", "fats", "coconutt"), 'did you mean "coconut"?'),
        (("completions", "bsah"), 'did you mean "bash"?'),
        (("brew",), "brimwright --help lists them"),
        (("plan", "nothing_like_it.json"), "there is no such file; check the name"),
        (("plan",), "brimwright plan --help shows how")):
    done = run(*words, cwd=folder)
    check(done.returncode == 1 and done.stdout == "" and done.stderr.count("\n") == 1 and meant in done.stderr,
          f"{words}: exit {done.returncode}: {done.stderr!r} lacks {meant!r}")

with open(f"{folder}/{RUN}") as file:
    slip = json.load(file)
slip["pour"]["formula"] = "meadow_bas.formula.json"
with open(f"{folder}/examples/slip.run.json", "w") as file:
    json.dump(slip, file)
done = run("plan", "examples/slip.run.json", cwd=folder)
check('did you mean "meadow_base.formula.json"?' in done.stderr, f"a file that a run names: {done.stderr}")

# ---- completions and the manual page

scripts = {shell: run("completions", shell).stdout for shell in ("bash", "zsh", "fish", "man")}
for words, text in helps.items():
    for name in re.findall(r"^  (?:-\w, )?--([a-z-]+)", text, re.M):
        for shell, spelt in (("bash", f"--{name}"), ("zsh", f"--{name}"), ("fish", f" -l {name}"),
                             ("man", f"--{name}".replace("-", r"\-"))):
            check(spelt in scripts[shell], f"--{name} of {words} is not in {shell}")

with open(f"{folder}/brimwright.bash", "w") as file:
    file.write(scripts["bash"])
os.mkdir(f"{folder}/typed")
for name in ("cup.json", "cup.stl", "CUP2.STL", "cup.txt"):
    open(f"{folder}/typed/{name}", "w").close()
os.mkdir(f"{folder}/typed/cups")
ASK = """source "$1/brimwright.bash"; cd "$1/typed"; shift
COMP_WORDS=("$@"); COMP_CWORD=$(($# - 1)); _brimwright; printf '%s\\n' "${COMPREPLY[@]}" """
for typed, offered in (
        (["pl"], {"plan"}),
        (["--ver"], {"--version"}),
        (["plan", "--s"], {"--sell", "--studio"}),
        (["plan", "c"], {"cup.json", "cups"}),
        (["gauge", "c"], {"cup.json", "cup.stl", "cups"}),
        (["gauge", "C"], {"CUP2.STL"}),
        (["gauge", "--unit", ""], {"mm", "cm", "m", "in"}),
        (["gauge", "--unit", "=", "c"], {"cm"}),
        (["gauge", "--depth", "2 cm", "--role", "b"], {"body"}),
        (["gauge", "cup.json", "--library", "c"], {"cups"}),
        (["plan", "cup.json", "--sell", "4", "x"], {""}),
        (["tidy", "cup.json", "c"], {"cup.json", "cups"}),
        (["sheet", "--paper", "L"], {"Letter"}),
        (["list", ""], {"moulds", "fats", "tips"}),
        (["help", "sh"], {"sheet"}),
        (["completions", "z"], {"zsh"})):
    done = subprocess.run(["bash", "-c", ASK, "bash", folder, "brimwright", *typed], capture_output=True, text=True)
    check(set(done.stdout.rstrip("\n").split("\n")) == offered and not done.stderr,
          f"bash, {typed}: {done.stdout!r}, not {offered}: {done.stderr}")
# In zsh one word alone in brackets at the end of a pattern says what the files are to be like, and is no part of their name.
check(not re.search(r"\*\.\(\w+\)", scripts["zsh"]), "zsh: an ending alone in brackets")
for shell, ending in (("bash", "bash"), ("zsh", "zsh"), ("fish", "fish")):
    with open(f"{folder}/script.{ending}", "w") as file:
        file.write(scripts[shell])
    if shutil.which(shell):
        done = subprocess.run([shell, "-n", f"{folder}/script.{ending}"], capture_output=True, text=True)
        check(done.returncode == 0 and not done.stderr, f"{shell} -n: {done.stderr}")
check(scripts["man"].startswith(".TH BRIMWRIGHT 1"), "the manual page has its title")
if shutil.which("groff"):
    done = subprocess.run(["groff", "-man", "-Tutf8", "-ww", "-z"], input=scripts["man"], capture_output=True, text=True)
    check(done.returncode == 0 and not done.stderr, f"groff: {done.stderr}")
    page = subprocess.run(["groff", "-man", "-Tascii"], input=scripts["man"], capture_output=True, text=True).stdout
    check("brimwright gauge moulds/plain_bar.json --tilt" in re.sub(r"\x1b\[[0-9;]*m|.\x08", "", page), "the page shows the examples")

# ---- standard input and output

for words, name in ((("plan", "-"), RUN), (("sheet", "-"), RUN), (("gauge", "-"), "moulds/plain_bar.json")):
    with open(f"{root}/{name}") as file:
        document = file.read()
    folder_of = f"{root}/examples" if name == RUN else root
    piped = run(*words, cwd=folder_of, given=document)
    check(piped.returncode == 0, f"{words}: {piped.stderr}")
    named = run(words[0], os.path.basename(name) if name == RUN else name, cwd=folder_of)
    # A sheet's foot has the minute and the file's name, which style sheets write in their own way.
    bare = [re.sub(r"Printed [^<\"]*? by ", "", text) for text in (piped.stdout, named.stdout)]
    check(bare[0].replace("standard input", "") == bare[1].replace(os.path.basename(name), ""), f"{words} differs from the file")
piped = run("plan", "-", given="{")
check(piped.returncode == 1 and piped.stderr.startswith("standard input: "), f"a broken pipe: {piped.stderr}")
empty = run("gauge", "-", given="")
check(empty.returncode == 1 and "standard input: is empty" in empty.stderr, f"an empty pipe: {empty.stderr}")
over = run("plan", "-", given=" " * (5 << 20))
check(over.returncode == 1 and "4 MiB" in over.stderr, f"a long pipe: {over.stderr}")
drawn = run("gauge", "moulds/plain_bar.json", "--picture", "-")
check(drawn.returncode == 0 and drawn.stdout.startswith("<") and drawn.stdout.rstrip().endswith("</svg>"), "--picture -: nothing else")
paper = run("sheet", RUN, "--html", "-")
check(paper.stdout.startswith("<!") and paper.stdout.rstrip().endswith("</html>") and "Written" not in paper.stdout, "--html -")
both = run("gauge", "moulds/plain_bar.json", "--picture", "-", "--glb", "-")
check(both.returncode == 1 and both.stdout == "" and "already" in both.stderr, f"two to standard output: {both.stderr}")
check(not os.path.exists(f"{root}/-"), "a file called - was made")

# ---- complaints as JSON

for words, file, field in ((("plan", "no.run.json"), "no.run.json", ""), (("plam",), "command line", ""),
                           (("plan", RUN, "--sel", "1"), "command line", "--sel"), (("list", "fatz"), "command line", "list")):
    done = run(*words, "--json")
    said = json.loads(done.stderr)
    check(done.returncode == 1 and done.stdout == "" and done.stderr.count("\n") == 1, f"{words} --json: {done}")
    check((said["schema"], said["file"], said["field"]) == ("brimwright.complaint/1", file, field) and said["problem"] and said["remedy"],
          f"{words} --json: {said}")
asked = json.loads(run("gauge", "meshes/twisted_cup.stl", "--role", "cavity", "--json").stderr)
check({"--unit"} == {choice["add"][0] for choice in asked["choices"]}, f"choices: {asked}")
answered = run("gauge", "meshes/twisted_cup.stl", "--role", "cavity", *asked["choices"][0]["add"])
check(answered.returncode == 0, f"a choice, added: {answered.stderr}")
check(run("plan", "\x1b[31m\u202e.json", "--json").stderr.isascii(), "a name reaches the terminal raw")

# ---- the version

version = run("--version").stdout
for name in ("CGAL", "Assimp", "Boost", "CLI11", "nlohmann_json", "zlib"):
    check(re.search(rf"^{name} \d+\.\d+", version, re.M), f"--version: no {name}: {version}")

# ---- in brief

for name in sorted(os.listdir(f"{root}/examples")):
    if not name.endswith(".run.json"):
        continue
    whole = json.loads(run("plan", f"examples/{name}", "--json").stdout)
    brief = run("plan", f"examples/{name}", "--brief").stdout
    lines = brief.splitlines()
    failures += [f"{name} --brief: over 80 columns: {line}" for line in lines if len(line) > 80]
    dangers = [caution for caution in whole["cautions"] if caution["severity"] == "danger"]
    check(brief.count("!! ") == len(dangers), f"{name}: dangers in brief")
    rest = [line for line in lines if not line.startswith(("!! ", "   !"))]
    if whole["pieces"]["batches"] == 1 and "pipe" not in whole and not dangers:
        check(len(lines) <= 24, f"{name} --brief: {len(lines)} lines")
    parts = re.split(r"^(?=ONE BATCH OF)|^(?=DECORATION)|^(?=Not shown)", brief, flags=re.M)
    check(all(len(part.rstrip().splitlines()) <= 24 for part in parts), f"{name}: a batch takes more than a screen")
    flat = re.sub(r"\s+", " ", brief)
    for batch in whole["batches"]:
        for part in ("pour", "pipe"):
            for one in (batch.get(part) or {"ingredients": []})["ingredients"]:
                check(re.search(r"\b%s g" % re.escape(format(one["g"], ".1f")), flat) or re.search(r"\b%d g" % round(one["g"]), flat),
                      f"{name}: {one['name']}, {one['g']} g, is not in brief")
    check("without --brief" in brief and "first aid" in flat, f"{name}: where the rest is")
loud = f"{folder}/examples"
with open(f"{loud}/meadow_base.formula.json") as file:
    formula = json.load(file)
formula["superfat"] = "0.2 %"
with open(f"{loud}/meadow_base.formula.json", "w") as file:
    json.dump(formula, file)
brief = run("plan", RUN, "--brief", cwd=folder).stdout
check(brief.startswith("!! "), f"a danger stands first: {brief[:200]}")
check(run("plan", RUN, "--brief", "--json").returncode == 1, "--brief --json")

# ---- colours


def on_terminal(*words, env):
    """What a terminal gets to see."""
    us, them = pty.openpty()
    child = subprocess.Popen([program, *words], cwd=folder, stdout=them, stderr=subprocess.DEVNULL, env={**os.environ, **env})
    os.close(them)
    seen = b""
    try:
        while more := os.read(us, 4096):
            seen += more
    except OSError:  # the other end is closed
        pass
    child.wait(timeout=60)
    os.close(us)
    return seen.decode().replace("\r\n", "\n")


seen = on_terminal("plan", RUN, "--brief", env={"TERM": "xterm", "NO_COLOR": ""})
check(seen.startswith("\x1b[1;31m!! ") and "\x1b[1mPOUR" in seen, f"colours on a terminal: {seen[:100]!r}")
check(re.sub(r"\x1b\[[0-9;]*m", "", seen) == brief, "colours change no word")
for env in ({"TERM": "xterm", "NO_COLOR": "1"}, {"TERM": "dumb", "NO_COLOR": ""}):
    check("\x1b" not in on_terminal("plan", RUN, "--brief", env=env), f"colours in spite of {env}")
check("\x1b" not in run("plan", RUN, "--brief", cwd=folder, env={"TERM": "xterm"}).stdout, "colours into a pipe")

# ---- the one file asked for is called by its name alone

with open(f"{folder}/inside_out.stl", "wb") as file:
    with open(f"{root}/meshes/twisted_cup.stl", "rb") as mesh:
        data = bytearray(mesh.read())
    for at in range(84, len(data) - 49, 50):
        data[at + 12:at + 24], data[at + 24:at + 36] = data[at + 24:at + 36], data[at + 12:at + 24]
    file.write(data)
turned = run("gauge", f"{folder}/inside_out.stl", "--unit", "mm", "--role", "cavity")
check(turned.returncode == 0 and " - inside_out.stl" in turned.stdout and folder not in turned.stdout, f"a path in a note: {turned}")

shutil.rmtree(folder)
print("\n".join(failures) or "the terminal understands")
sys.exit(bool(failures))
