"""What tests of the command line share: where root and program are, what failed, running the program, files of JSON."""
import json
import os
import subprocess
import sys

root, program = (os.path.abspath(word) for word in sys.argv[1:3])
failures = []


def check(holds, what):
    if not holds:
        failures.append(what)


def run(*words, folder):
    return subprocess.run([program, *words], cwd=folder, capture_output=True, text=True)


def read(path):
    with open(path) as file:
        return json.load(file)


def write(path, document):
    os.makedirs(os.path.dirname(path), exist_ok=True)
    with open(path, "w") as file:
        json.dump(document, file, ensure_ascii=False)


def end(what):
    """Says `what` held, or all that did not."""
    print("\n".join(failures) or what)
    sys.exit(bool(failures))
