"""Files of version 1 are read by their own keys, and tidied into version 2 that plans to the same."""
import glob
import os
import re
import shutil
import tempfile

from checks import check, end, read, root, run, write


def answer(name, folder):
    """What the program makes of a file: a plan, or what the mould holds."""
    command = {"run": "plan", "mould": "gauge"}.get(kind_of(name))
    if not command:
        return None
    result = run(command, name, "--json", folder=folder)
    check(result.returncode == 0, f"{name}: {result.stderr}")
    return result.stdout


def kind_of(name):
    return name.split(".")[-2]


def keys_in(document):
    if isinstance(document, dict):
        return set(document) | {key for value in document.values() for key in keys_in(value)}
    return {key for value in document for key in keys_in(value)} if isinstance(document, list) else set()


def fresh(folder):
    shutil.copytree(f"{root}/tests/data/version1", folder)
    return sorted(os.path.basename(path) for path in glob.glob(f"{folder}/*.json"))


with tempfile.TemporaryDirectory() as outside:
    folder = f"{outside}/studio"
    names = fresh(folder)
    before = {name: answer(name, folder) for name in names}
    documents = {name: read(f"{folder}/{name}") for name in names}

    # Every key that had another name stands in one of these files, so that each is tried.
    table = re.findall(r'\{"([^"]*)",\s*"([^"]+)",\s*"([^"]*)"', open(f"{root}/src/schemas/kinds.cpp").read())
    check(len(table) > 40, f"only {len(table)} renamed keys found")
    everywhere = set().union(*(keys_in(document) for document in documents.values()))
    for _, was, _ in table:
        check(was in everywhere, f"no file of version 1 has the key {was}")

    told = run("tidy", *names, folder=folder)
    check(told.returncode == 0, f"tidy: {told.stderr}")
    check("version 1 is now version 2" in told.stdout, f"tidy tells nothing: {told.stdout}")
    for name in names:
        tidied = read(f"{folder}/{name}")
        version = 1 if kind_of(name) == "fats" else 2
        check(tidied["schema"] == f"brimwright.{kind_of(name)}/{version}", f"{name}: {tidied['schema']}")
        check(answer(name, folder) == before[name], f"{name} plans to something else when tidied")
        if kind_of(name) == "run":
            check(re.fullmatch(r"[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}", str(tidied.get("id"))), f"{name}: id {tidied.get('id')}")
            check("id" in tidied and list(tidied).index("id") == list(tidied).index("schema") + 1, f"{name}: its id stands elsewhere")
            check({k: v for k, v in tidied.items() if k == "name"} == {"name": documents[name]["name"]}, name)
    # What she wrote stays to the letter: only keys, versions and ids differ.
    spring = open(f"{folder}/spring_order.run.json").read()
    check('"each_bag_change": "8 g"' in spring and '      "density": "1.03 g/ml",\n' in spring, "tidy lays out a file anew")

    once = {name: open(f"{folder}/{name}").read() for name in names}
    again = run("tidy", *names, folder=folder)
    check(again.returncode == 0 and "version 1" not in again.stdout, f"tidy a second time: {again.stdout}{again.stderr}")
    for name in names:
        check(open(f"{folder}/{name}").read() == once[name], f"{name} is changed by a second tidy")

    # A complaint of a file of version 1 names its own keys, one of version 2 today's.
    fresh(f"{outside}/earlier")
    shutil.copytree(folder, f"{outside}/today")

    def complaint(version, change):
        document = read(f"{outside}/{version}/{whole}")
        change(document)
        write(f"{outside}/{version}/changed.run.json", document)
        return run("plan", "changed.run.json", folder=f"{outside}/{version}").stderr

    def dig(document, *path):
        for step in path[:-1]:
            document = document[step]
        return document, path[-1]

    def put(value, *path):
        def change(document):
            holder, key = dig(document, *path)
            holder[key] = value
        return change

    def take(*path):
        def change(document):
            holder, key = dig(document, *path)
            del holder[key]
        return change

    whole = "everything.run.json"
    for change, words in (
            (put("0 g", "perch", 0, "density"), "/perch/0/density"),
            (take("perch", 0, "jug_film"), "/perch/0/jug_film: is missing"),
            (put("40 mm", "perch", 0, "on_top", "sinks"), "/perch/0/on_top/sinks: is 40 mm"),
            (take("pipe", "pace", "each"), "/pipe/pace/each: is missing"),
            (put("3 l", "pipe", "pace", "stays_open"), "/pipe/pace/stays_open"),
            (put({"reads": "1 g", "holds": "2 g"}, "scales", "large"), '"reads" is the step'),
            (take("dust", 0, "on_surface"), '"on_surface" with "covered" and "lands"'),
            (put([], "decorations"), 'did you mean "perch"?'),
            (put("half and half", "bottles", 0, "shared"), "/bottles/0/shared"),
            (take("label", "market"), "/label/market: is missing")):
        said = complaint("earlier", change)
        check(words in said, f"{words!r} is not in: {said}")

    for change, words in (
            (put([], "perch"), 'did you mean "decorations"?'),
            (put({}, "pour", "warmth"), 'did you mean "temperatures"?'),
            (put("1 g", "scales", "large", "reads"), 'did you mean "step"?'),
            (put(True, "lye_pot", "shared"), "/lye_pot/shared: "),
            (put("3/4/2026", "due"), "/due: "),
            (put("2026-02-30", "made_on"), "not a day of the calendar"),
            (put("mine", "id"), "/id: ")):
        said = complaint("today", change)
        check(words in said, f"{words!r} is not in: {said}")
    check(complaint("today", put("2027-01-09", "due")) == "", "a due date is refused")
    check(complaint("today", put("Spring market", "for")) == "", "whom it is for is refused")

    # What version 2 has no words for is an error, never a loss; then nothing is written at all.
    for change, words in (
            (put(False, "lye_pot", "shared"), 'take "lye_pot" out'),
            (put("half and half", "bottles", 0, "shared"), "by rate"),
            (put("x", "nmae"), "/nmae: "),
            (put("brimwright.run/9", "schema"), "brimwright.run/9")):
        fresh(f"{outside}/refused")
        document = read(f"{outside}/refused/{whole}")
        change(document)
        write(f"{outside}/refused/{whole}", document)
        texts = {name: open(f"{outside}/refused/{name}").read() for name in names}
        refused = run("tidy", "drying.formula.json", whole, folder=f"{outside}/refused")
        check(refused.returncode == 1 and words in refused.stderr and refused.stderr.count("\n") == 1,
              f"{words!r}: {refused.returncode} {refused.stderr}")
        check(texts == {name: open(f"{outside}/refused/{name}").read() for name in names}, f"{words!r}: something was written")
        shutil.rmtree(f"{outside}/refused")
    for wrong in ("nowhere.json", "."):
        refused = run("tidy", wrong, folder=folder)
        check(refused.returncode == 1 and refused.stderr.count("\n") == 1, f"tidy {wrong}: {refused.stderr}")

end(f"{len(names)} files of version 1 tidied, and each plans to the same")
