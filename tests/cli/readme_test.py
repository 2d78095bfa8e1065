"""Runs every `brimwright ...` line of README.md's console blocks and of --help, as a maker would type it."""
import re
import shlex
import subprocess
import sys
import tempfile

root, program = sys.argv[1:3]
# Some commands write files: they run in a folder of their own, with the shipped files by full path.
folder = tempfile.TemporaryDirectory()


def words_of(command):
    return [re.sub(r"^(moulds|meshes|examples)/", rf"{root}/\1/", word) for word in shlex.split(command)[1:]]


lines = []
for block in re.findall(r"```(?:sh|console)\n(.*?)```", open(f"{root}/README.md").read(), re.S):
    lines += [l.strip() for l in block.splitlines() if l.strip().startswith("brimwright ")]
if len(lines) < 5:
    sys.exit(f"README shows only {len(lines)} commands: {lines}")

failures = []
for line in lines:
    command = re.split(r"\s{2,}#", line)[0]
    done = subprocess.run([program] + words_of(command), cwd=folder.name, capture_output=True, text=True)
    if done.returncode != 0 or not done.stdout.strip():
        failures.append(f"{command}: exit {done.returncode}: {done.stderr.strip()}")

for words in ([], ["gauge"], ["plan"], ["sheet"], ["list"]):
    done = subprocess.run([program, *words, "--help"], capture_output=True, text=True)
    if done.returncode != 0 or "Examples" not in done.stdout:
        failures.append(f"{words} --help teaches nothing")
    for line in re.findall(r"^ *(brimwright .*)$", re.sub(r"\\\n *", "", done.stdout), re.M):
        command = re.split(r"  +[a-z]", line)[0]
        # Those that name files of the maker's own cannot run here; the shipped ones must.
        if not re.search(r"(moulds/\w+\.json|examples/\S+|list )", command) or "~" in command:
            continue
        if ">" in command:
            command = command.split(">")[0]
        done_example = subprocess.run([program] + words_of(command), cwd=folder.name,
                                      capture_output=True, text=True)
        if done_example.returncode != 0:
            failures.append(f"--help example {command!r}: {done_example.stderr.strip()}")

print("\n".join(failures) or f"{len(lines)} commands of README work")
sys.exit(bool(failures))
