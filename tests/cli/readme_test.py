"""Runs every `brimwright ...` of README.md, in its console blocks and in its sentences, and of every --help, as a maker would
type it; the scripts that README names can be run."""
import os
import re
import shlex
import shutil
import subprocess
import sys
import tempfile

root, program = (os.path.abspath(word) for word in sys.argv[1:3])
failures = []
# Some commands write files: they run in a folder of their own, with the built-in files by full path.
folder = tempfile.TemporaryDirectory()


def words_of(command):
    return [re.sub(r"^(moulds|meshes|examples)/", rf"{root}/\1/", word) for word in shlex.split(command)[1:]]


def run(*words):
    return subprocess.run([program, *words], cwd=folder.name, capture_output=True, text=True)


def works(command, where):
    done = run(*words_of(command))
    if done.returncode != 0 or not done.stdout.strip():
        failures.append(f"{where}: {command}: exit {done.returncode}: {done.stderr.strip()}")


# What a sentence calls by a word in capitals, or by a name of the maker's own, is put there.
def typed(command):
    if "FILE" in command:
        shutil.copy(f"{root}/examples/plain_bars.run.json", f"{folder.name}/own.run.json")
        shutil.copy(f"{root}/examples/meadow_base.formula.json", folder.name)
    return command.replace("FOLDER", "begun").replace("FILE", "own.run.json").replace("NAME", "olive")


readme = open(f"{root}/README.md").read()
blocks = "\n".join(re.findall(r"```(?:sh|console)\n(.*?)```", readme, re.S))
in_blocks = [line.strip() for line in blocks.splitlines() if line.strip().startswith("brimwright ")]
sentences = re.sub(r"```.*?```", "", readme, flags=re.S)
in_sentences = [" ".join(code.split()) for code in re.findall(r"`([^`]+)`", sentences) if code.startswith("brimwright")]
if len(in_blocks) < 20 or len(in_sentences) < 4:
    failures.append(f"README shows only {len(in_blocks)} commands in blocks and {len(in_sentences)} in sentences")

for line in in_blocks:
    works(re.split(r"\s{2,}#", line)[0], "README")
for command in in_sentences:
    if command.split()[1] != "serve":  # stays until it is ended: serve_test.py
        works(typed(command), "README, in a sentence")
for script in re.findall(r"^    (\w+/\S+\.sh)$", sentences, re.M):
    if not os.access(f"{root}/{script}", os.X_OK):
        failures.append(f"README: {script} cannot be run")

commands = re.findall(r"^  (\w+) ", run("--help").stdout.split("Commands:")[1].split("\n\n")[0], re.M)
if not {"gauge", "plan", "sheet", "buy", "list", "tidy", "init", "serve", "completions"} <= set(commands):
    failures.append(f"--help lists only {commands}")
# Those that name files of the maker's own cannot run here, and what init begins is still to be filled in.
RUNS = re.compile(r"(?:moulds|examples)/\w+\S*\.json|^brimwright (?:list|init|completions) ")
examples = 0
for words in ([], *([command] for command in commands)):
    helped = run(*words, "--help")
    if words != ["help"] and (helped.returncode != 0 or "Examples" not in helped.stdout):
        failures.append(f"{words} --help teaches nothing")
    for line in re.findall(r"^ *(brimwright .*)$", re.sub(r"\\\n *", "", helped.stdout), re.M):
        command = re.split(r"  +[a-z]", line)[0].split(">")[0].strip()
        if RUNS.search(command) and "~" not in command and "*" not in command:
            works(command, f"{words} --help")
            examples += 1
if examples < 25:
    failures.append(f"only {examples} examples of --help could be run")

print("\n".join(failures) or f"{len(in_blocks)} + {len(in_sentences)} commands of README and {examples} of --help work")
sys.exit(bool(failures))
