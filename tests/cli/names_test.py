"""Names, paths and values may hold anything: no terminal obeys them, JSON stays JSON, and none is echoed whole."""
import json
import os
import shutil
import subprocess
import sys
import tempfile

root, program = sys.argv[1:3]
failures = []


def check(condition, what):
    if not condition:
        failures.append(what)


def run(*words, cwd=root):
    return subprocess.run([program, *words], cwd=cwd, capture_output=True, timeout=60)


def load(name):
    with open(f"{root}/{name}") as file:
        return json.load(file)


def save(folder, name, document):
    with open(os.path.join(os.fsencode(folder), name if isinstance(name, bytes) else name.encode()), "w") as file:
        json.dump(document, file)


def harmless(written):
    """Nothing in it that a terminal would obey: C0 but the end of a line, DEL, C1, marks that turn the direction; UTF-8."""
    try:
        text = written.decode("utf-8")
    except UnicodeDecodeError:
        return False
    codes = {ord(c) for c in text} - {10}
    return not any(c < 0x20 or 0x7f <= c <= 0x9f or 0x202a <= c <= 0x202e or 0x2066 <= c <= 0x2069 for c in codes)


def strings(document):
    if isinstance(document, dict):
        return [s for key, value in document.items() for s in [key, *strings(value)]]
    if isinstance(document, list):
        return [s for value in document for s in strings(value)]
    return [document] if isinstance(document, str) else []


evil = "a\x1b[2J\x1b]0;owned\x07\x7f\x9b31m\u202eg 5\u202c\u2066b\u2069"

# Every name of a run and its files, with codes that clear the screen, set the title and turn the line round.
folder = tempfile.mkdtemp()
spring = load("examples/spring_cups.run.json")
base, topping = load("examples/meadow_base.formula.json"), load("examples/cloud_topping.formula.json")
mould = load("moulds/fluted_cup_small.json")
spring["pour"]["mould"] = "cup.json"


def rename(document):
    """Puts the evil into each name; names of materials stay apart by their own."""
    if isinstance(document, dict):
        return {key: value + evil if key in ("name", "note", "material") and isinstance(value, str) else rename(value)
                for key, value in document.items()}
    return [rename(value) for value in document] if isinstance(document, list) else document


save(folder, "spring.run.json", rename(spring))
save(folder, "meadow_base.formula.json", rename(base))
save(folder, "cloud_topping.formula.json", rename(topping))
save(folder, "cup.json", rename(mould))
for words in (("plan", "spring.run.json"), ("sheet", "spring.run.json"), ("gauge", "cup.json")):
    done = run(*words, cwd=folder)
    check(done.returncode == 0, f"{words}: {done.stderr}")
    check(b"\\x1b[2J" in done.stdout or b"\xef\xbf\xbd[2J" in done.stdout, f"{words}: the code is not written out")
    check(harmless(done.stdout), f"{words}: a code reaches the terminal")
for words in (("plan", "spring.run.json", "--json"), ("gauge", "cup.json", "--json")):
    document = json.loads(run(*words, cwd=folder).stdout)
    check(any(evil in s for s in strings(document)), f"{words}: JSON does not keep the names as they are")
labelled = load("examples/spring_cups.run.json")
labelled["name"] += evil
for name in ("meadow_base.formula.json", "cloud_topping.formula.json"):
    shutil.copy(f"{root}/examples/{name}", folder)
save(folder, "label.run.json", labelled)
done = run("plan", "label.run.json", "--label", "label.txt", cwd=folder)
with open(f"{folder}/label.txt", "rb") as file:
    check(done.returncode == 0 and harmless(file.read()), f"a label's file: {done.stderr}")

# In complaints: keys, values, paths, options.
for what, change in (("a key", {"x" + evil: 1}), ("a value", {"spoilage": evil}), ("a path", {"pour": {**spring["pour"], "formula": evil}}),
                     ("a choice", {"schema": evil}), ("two lines", {"name": "Spring\nNaOH 500 g"})):
    save(folder, "bad.run.json", {**load("examples/spring_cups.run.json"), **change})
    done = run("plan", "bad.run.json", cwd=folder)
    check(done.returncode == 1 and done.stderr.count(b"\n") == 1 and harmless(done.stderr), f"{what}: {done.returncode} {done.stderr!r}")
for words in (("plan", evil), ("gauge", evil + ".stl"), ("list", "fats", evil), ("list", evil), (evil,), ("plan", "--" + evil),
              ("gauge", "cup.json", "--depth", evil), ("gauge", "cup.json", "--depth", "5\nmm"),
              ("gauge", "cup.json", "--picture", evil), ("serve", evil)):
    done = run(*words, cwd=folder)
    check(done.returncode == 1 and done.stderr.count(b"\n") == 1 and harmless(done.stderr), f"{words}: {done.returncode} {done.stderr!r}")

# A file's name that is not UTF-8, or not one line.
for name in (b"cup\xff\x9b.json", b"cup\n5 g.json"):
    save(folder, name, mould)
    for words in ((), ("--json",), ("--depth", "1 m")):
        done = run("gauge", name, *words, cwd=folder)
        check(done.returncode == (1 if "--depth" in words else 0), f"{name}, {words}: {done.returncode} {done.stderr!r}")
        check(harmless(done.stdout) and harmless(done.stderr), f"{name}, {words}: a code reaches the terminal")
        if words == ("--json",):
            json.loads(done.stdout)
for name in (b"twisted\xff\x9b.stl", b"twisted\n5 g.stl"):
    shutil.copy(f"{root}/meshes/twisted_cup.stl", os.path.join(os.fsencode(folder), name))
    for form in ("--json", "--on-board", "--cut-open"):
        done = run("gauge", name, "--unit", "mm", "--role", "cavity", form, cwd=folder)
        check(done.returncode == (0 if form == "--json" else 1), f"{name}: {done.returncode} {done.stderr!r}")
        check(harmless(done.stdout) and harmless(done.stderr), f"{name}: a code reaches the terminal")
    text = run("gauge", name, "--unit", "mm", "--role", "cavity", cwd=folder)
    check(text.returncode == 0 and harmless(text.stdout) and b"\n5 g" not in text.stdout, f"{name}: {text.stdout[:200]!r}")
save(folder, b"run\xff.json", labelled)
done = run("plan", b"run\xff.json", "--json", cwd=folder)
check(done.returncode == 0 and json.loads(done.stdout), f"a run's name that is not UTF-8: {done.stderr!r}")
done = run("plan", b"run\xff.json", "--piece", b"piece\xff.glb", "--picture", b"p\xff.svg", "--json", cwd=folder)
check(done.returncode == 0 and json.loads(done.stdout), f"files whose names are not UTF-8: {done.stderr!r}")
done = run("sheet", b"run\xff.json", "--pdf", b"p\xff.pdf", cwd=folder)
check(done.returncode == 0 and harmless(done.stdout), f"a sheet's name that is not UTF-8: {done.stderr!r}")

# A value of 100 kB is cut, whatever it stands in.
big = "x" * 100_000
for what, change in (("a key", {big: 1}), ("a quantity", {"spoilage": big}), ("a choice", {"schema": big}), ("a name", {"name": big}),
                     ("a number", {"sell": big}), ("a path", {"pour": {**spring["pour"], "formula": big}}),
                     ("a section", {"pour": big}), ("a material", {"money": {"currency": "EUR", "prices": {big: {"paid": "1", "for": "1 kg"}}}}),
                     ("a price", {"money": {"currency": "EUR", "prices": {"x": {"paid": big, "for": "1 kg"}}}}),
                     ("a currency", {"money": {"currency": big}})):
    save(folder, "big.run.json", {**load("examples/spring_cups.run.json"), **change})
    done = run("plan", "big.run.json", cwd=folder)
    check(done.returncode == 1 and len(done.stderr) < 1500 and done.stderr.count(b"\n") == 1, f"{what}: {done.returncode} {done.stderr[:300]!r}")
for words in (("plan", big), ("gauge", "cup.json", "--depth", big), ("list", "fats", big), (big,), ("plan", "label.run.json", "--" + big),
              ("plan", "label.run.json", "--sell", big), ("plan", "label.run.json", "--sell", "9" * 400)):
    done = run(*words, cwd=folder)
    check(done.returncode == 1 and len(done.stderr) < 1500 and done.stderr.count(b"\n") == 1,
          f"{[word[:9] for word in words]}: {done.returncode} {done.stderr[:300]!r}")
shutil.rmtree(folder)

print("\n".join(failures) or "all cases as they should be")
sys.exit(bool(failures))
