"""Her files renamed, copied, removed and restored by the page: whatever a run names, it finds afterwards, nothing is
written over or deleted, and names come through as she wrote them."""
import http.client
import json
import os
import re
import shutil
import sys
import tempfile
import threading
import time

from serving import Serving

root, program = sys.argv[1:3]
failures = []


def check(condition, what):
    if not condition:
        failures.append(what)


folder = os.path.realpath(tempfile.mkdtemp())
server = Serving(program, folder)


def text_of(name):
    with open(f"{folder}/{name}") as file:
        return file.read()


def write(name, text):
    os.makedirs(os.path.dirname(f"{folder}/{name}"), exist_ok=True)
    with open(f"{folder}/{name}", "w") as file:
        file.write(text)


def example(name, **changes):
    with open(f"{root}/examples/{name}") as file:
        document = json.load(file)
    document.pop("$schema")
    return {**document, **changes}


def rename(file, to):
    return server.post("/api/file/rename", file=file, to=to)


def line(answer):
    return answer["complaint"]["line"]


def entry(name):
    for files in server.ask("GET", "/api/files")[1].values():
        for one in files if isinstance(files, list) else []:
            if one.get("file") == name and not one.get("shipped"):
                return one
    return None


def plan_of(run):
    status, plan = server.post("/api/plan", file=run)
    return without_names(plan) if status == 200 else line(plan)


def without_names(plan):
    """A plan without what its files are called: the run, and each formula and mould that it assumes something of."""
    assumed = {part: {key: value for key, value in of.items() if key not in ("formula", "mould")} if isinstance(of, dict) else of
               for part, of in plan["assumptions"].items()}
    return {**{key: value for key, value in plan.items() if key != "source"}, "assumptions": assumed}


ID = "11111111-2222-4333-8444-55555555555"
formula = example("meadow_base.formula.json", own_fats="mine.fats.json")
with open(f"{root}/moulds/plain_bar.json") as file:
    cup = {**json.load(file), "name": "Tall cup"}
cup.pop("$schema", None)
run = example("plain_bars.run.json", id=f"{ID}0", made_on="2026-11-14", due="2027-01-09")
run["pour"].update(mould="cup.json", formula="base.formula.json")
# Her own layout, with a name that stands for a file in one place and for itself in another.
layout = json.dumps({**run, "name": "base.formula.json"}, indent=7)


def begin():
    for name in os.listdir(folder):
        if name != ".brimwright":
            (shutil.rmtree if os.path.isdir(f"{folder}/{name}") else os.remove)(f"{folder}/{name}")
    write("a.run.json", layout)
    write("b.run.json", json.dumps({**run, "id": f"{ID}1"}))
    write("base.formula.json", json.dumps(formula))
    write("cup.json", json.dumps(cup))
    write("mine.fats.json", json.dumps(example("studio.fats.json")))
    write("mine.tips.json", json.dumps(example("studio.tips.json")))
    write("studio.json", json.dumps({"schema": "brimwright.studio/1", "moulds_owned": {"cup.json": 2}}))


# What is told of each.
begin()
before = plan_of("a.run.json")
check(isinstance(before, dict), f"nothing to rename: {before}")
told = entry("a.run.json")
check(told["made_on"] == "2026-11-14" and told["due"] == "2027-01-09" and told["pieces"] == 12 and told["mould"] == "Tall cup",
      f"told of a run: {told}")
check(re.fullmatch(r"\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d[+-]\d\d:\d\d", told["changed"]), f"changed {told['changed']}")
check(told["used_by"] == [], f"a run is used: {told}")
check(entry("base.formula.json")["used_by"] == ["a.run.json", "b.run.json"], "who uses the formula")
check(entry("cup.json")["used_by"] == ["a.run.json", "b.run.json", "studio.json"], f"who uses the mould: {entry('cup.json')}")
check(entry("mine.fats.json")["used_by"] == ["base.formula.json"] and entry("mine.tips.json")["used_by"] == [], "who uses the fats")
write("b.run.json", json.dumps({**run, "id": f"{ID}1", "pour": {**run["pour"], "formula": "meadow.formula.json"}, "sell": "many"}))
check(entry("base.formula.json")["used_by"] == ["a.run.json"] and "pieces" not in entry("b.run.json"), "a changed file is told as it was")

# Renamed: every file that names it names it anew, and nothing else in them changes.
begin()
for file, to, users in (("base.formula.json", "June.formula.json", ["a.run.json", "b.run.json"]),
                        ("cup.json", "moulds of mine/high cup.json", ["a.run.json", "b.run.json", "studio.json"]),
                        ("mine.fats.json", "fats.json", ["June.formula.json"]), ("a.run.json", "may.run.json", [])):
    os.makedirs(f"{folder}/moulds of mine", exist_ok=True)
    status, answer = rename(file, to)
    check(status == 200 and answer == {"file": to, "renamed_in": users, "cut": False}, f"{file}: {answer}")
    check(not os.path.exists(f"{folder}/{file}") and os.path.exists(f"{folder}/{to}"), f"{file} is not {to}")
check(plan_of("may.run.json") == before, "renamed, it is another plan")
expected = layout.replace('"formula": "base.formula.json"', '"formula": "June.formula.json"').replace(
    '"mould": "cup.json"', '"mould": "moulds of mine/high cup.json"')
check(text_of("may.run.json") == expected, "more than the names changed")
check(json.loads(text_of("studio.json"))["moulds_owned"] == {"moulds of mine/high cup.json": 2}, "the studio's moulds")
check(json.loads(text_of("may.run.json"))["id"] == f"{ID}0", "a renamed run has another id")
check(entry("moulds of mine/high cup.json")["used_by"] == ["b.run.json", "may.run.json", "studio.json"], "used by, after all")
write("market.order.json", json.dumps({"schema": "brimwright.order/1", "for": "Market hall", "due": "2027-01-09",
                                       "lines": [{"run": "may.run.json", "pieces": 24}]}))
ordered = next(one for one in server.get("/api/files")[1]["orders"] if one["file"] == "market.order.json")
check(ordered["name"] == "Market hall" and ordered["due"] == "2027-01-09", f"told of an order: {ordered}")
check(entry("may.run.json")["used_by"] == ["market.order.json"], "who orders the run")
check(rename("may.run.json", "june.run.json")[1]["renamed_in"] == ["market.order.json"], "the order of a renamed run")
check(json.loads(text_of("market.order.json"))["lines"] == [{"run": "june.run.json", "pieces": 24}], "the order's line")

# A file that goes to another folder takes its own names with it, or stays.
begin()
os.mkdir(f"{folder}/deeper")
status, answer = rename("base.formula.json", "deeper/base.formula.json")
check(status == 422 and "mine.fats.json" in line(answer) and os.path.exists(f"{folder}/base.formula.json"), f"deeper: {answer}")
write("deeper/c.run.json", json.dumps({**run, "id": f"{ID}2", "pour": {**run["pour"], "formula": "own.formula.json", "mould": "moulds/plain_bar.json"}}))
write("deeper/own.formula.json", json.dumps(example("meadow_base.formula.json")))
deeper = plan_of("deeper/c.run.json")
check(rename("deeper/own.formula.json", "own.formula.json")[0] == 422, "out of reach of the run that names it")
check(plan_of("deeper/c.run.json") == deeper, "what was refused was done")
check(rename("deeper/c.run.json", "c.run.json")[0] == 200, "a run out of a folder")
# Here stands a studio, of which a note tells.
there = plan_of("c.run.json")
there["cautions"] = [one for one in there["cautions"] if "studio.json" not in one["text"]]
check(there == deeper, "a run out of a folder plans to something else")
check(json.loads(text_of("c.run.json"))["pour"]["formula"] == "deeper/own.formula.json", "its names out of a folder")

# Nothing is written over, and no name changes what a run means.
begin()
for to, said in (("cup.json", "another file"), ("../out.json", ""), ("/tmp/out.json", ""), (".hidden.json", ""),
                 ("nowhere/x.json", ""), ("x.txt", ".json"), ("x\n.json", ""), ("x" * 251 + ".json", ""), ("studio.json", "")):
    for act in "rename", "copy":
        status, answer = server.post(f"/api/file/{act}", file="base.formula.json", to=to)
        check(status == (409 if to == "cup.json" else 422) and said in line(answer), f"{act} to {to!r}: {status} {answer}")
for file in ("studio.json", "moulds/low_bowl.json", "examples/spring_cups.run.json", "none.json", "../x", "upload:1",
             ".brimwright/lock", ""):
    check(rename(file, "x.json")[0] == 422 and server.post("/api/file/remove", file=file)[0] == 422, f"{file!r} was moved")
os.symlink(f"{folder}/cup.json", f"{folder}/link.json")
check(rename("link.json", "x.json")[0] == 422, "a link was renamed")
os.remove(f"{folder}/link.json")
write("d.run.json", json.dumps({**run, "id": f"{ID}3", "pour": {**run["pour"], "mould": "moulds/plain_bar.json"}}))
os.mkdir(f"{folder}/moulds")
meant = plan_of("d.run.json")
for act in "rename", "copy":
    status, answer = server.post(f"/api/file/{act}", file="cup.json", to="moulds/plain_bar.json")
    check(status == 422 and "d.run.json" in line(answer), f"{act} before a built-in mould: {answer}")
check(plan_of("d.run.json") == meant and sorted(os.listdir(f"{folder}/moulds")) == [], "another mould than she chose")
check(plan_of("a.run.json") == before, "a refusal left something done")

# All or none: where one of the files that name it cannot be written, nothing changes.
begin()
kept = {name: text_of(name) for name in os.listdir(folder) if name.endswith(".json")}
if os.geteuid() != 0:
    os.chmod(folder, 0o500)
    check(rename("base.formula.json", "x.formula.json")[0] == 422, "renamed where nothing may be written")
    os.chmod(folder, 0o700)
os.mkdir(f"{folder}/sub")
write("sub/e.run.json", json.dumps({**run, "id": f"{ID}4", "pour": {**run["pour"], "formula": "own.formula.json"}}))
write("sub/own.formula.json", json.dumps(example("meadow_base.formula.json")))
write("f.run.json", json.dumps({**run, "id": f"{ID}5", "pour": {**run["pour"], "formula": "sub/own.formula.json"}}))
kept = {name: text_of(name) for name in ("f.run.json", "sub/e.run.json", "sub/own.formula.json")}
check(rename("sub/own.formula.json", "own.formula.json")[0] == 422, "renamed out of reach of one of two runs")
check({name: text_of(name) for name in kept} == kept, "half renamed")

# Killed in the middle, whenever that is: every run finds what it names.
def rename_if_it_can(file, to):
    try:
        rename(file, to)
    except (OSError, ValueError, http.client.HTTPException):
        pass  # its server was killed


for after_ms in range(0, 24, 2):
    begin()
    runs = [f"many{i:02}.run.json" for i in range(30)]
    for i, name in enumerate(runs):
        write(name, json.dumps({**run, "id": f"{ID[:-2]}{i:02}1"}))
    renaming = threading.Thread(target=rename_if_it_can, args=("base.formula.json", "other.formula.json"))
    renaming.start()
    time.sleep(after_ms / 1000)
    server.kill()
    renaming.join()
    server = Serving(program, folder)
    lost = [name for name in runs if not os.path.exists(f"{folder}/{json.loads(text_of(name))['pour']['formula']}")]
    check(lost == [], f"killed after {after_ms} ms: {lost} name what is not there")

# Copied: a run with an id of its own, of whatever version, from wherever it lies.
begin()
for file, to in (("a.run.json", "copy.run.json"), ("examples/spring_cups.run.json", "spring.run.json"), ("cup.json", "cup 2.json")):
    status, answer = server.post("/api/file/copy", file=file, to=to)
    check(status == 200 and answer["file"] == to and answer["text"] == text_of(to), f"copy of {file}: {answer}")
copied = json.loads(text_of("copy.run.json"))
check(copied["id"] != f"{ID}0" and {**copied, "id": f"{ID}0"} == json.loads(layout), "a copy differs in more than its id")
check(plan_of("copy.run.json") == before, "a copy is another plan")
check(server.post("/api/file/copy", file="a.run.json", to="copy.run.json")[0] == 409, "copied over another file")
check(server.post("/api/file/copy", file="nothing.run.json", to="n.run.json")[0] == 422, "a copy of nothing")

# Removed and restored, byte for byte, with its time; what others name is asked about.
begin()
write("sub/old.run.json", layout)
for file in "a.run.json", "sub/old.run.json", "mine.tips.json":
    text, changed = text_of(file), os.stat(f"{folder}/{file}").st_mtime_ns
    status, answer = server.post("/api/file/remove", file=file)
    check(status == 200 and not os.path.exists(f"{folder}/{file}") and entry(file) is None, f"{file} is not removed: {answer}")
    status, back = server.post("/api/file/restore", removed=answer["removed"])
    check(status == 200 and back == {"file": file} and text_of(file) == text, f"{file} is not restored: {back}")
    check(os.stat(f"{folder}/{file}").st_mtime_ns == changed, f"{file} has another time")
    check(server.post("/api/file/restore", removed=answer["removed"])[0] == 422, f"{file} is restored twice")
status, answer = server.post("/api/file/remove", file="cup.json")
check(status == 409 and answer["used_by"] == ["a.run.json", "b.run.json", "studio.json"] and "a.run.json" in line(answer),
      f"removed what runs name: {answer}")
check(os.path.exists(f"{folder}/cup.json"), "what was refused was removed")
status, answer = server.post("/api/file/remove", file="cup.json", even_so=True)
check(status == 200 and "cup.json" in plan_of("a.run.json"), f"even so: {answer}")
write("cup.json", json.dumps({**cup, "name": "Another"}))
another = text_of("cup.json")
check(server.post("/api/file/restore", removed=answer["removed"])[0] == 409 and text_of("cup.json") == another, "restored over another")
os.remove(f"{folder}/cup.json")
check(server.post("/api/file/restore", removed=answer["removed"])[0] == 200 and plan_of("a.run.json") == before, "restored at last")
for token in "", "..", "../bench", "zz", "0" * 48, "a/b":
    check(server.post("/api/file/restore", removed=token)[0] == 422, f"restored {token!r}")

# What was removed is listed, the last one first; it is deleted when she says so, or two years later with the next.
begin()
told = server.ask("GET", "/api/removed")[1]["removed"]
for one in told:
    server.post("/api/removed/forget", removed=one["removed"])
check(server.ask("GET", "/api/removed") == (200, {"removed": []}), "something is left of what was deleted")
removed = {name: server.post("/api/file/remove", file=name)[1]["removed"] for name in ("b.run.json", "mine.tips.json")}
old = time.time() - 200 * 24 * 3600
os.utime(f"{folder}/.brimwright/removed/{removed['b.run.json']}", (old, old))
told = server.ask("GET", "/api/removed")[1]["removed"]
check([(one["file"], one["kind"]) for one in told] == [("mine.tips.json", "tips"), ("b.run.json", "run")], f"removed: {told}")
check(told[1]["name"] == run["name"] and told[1]["removed_at"][:4] <= told[1]["kept_until"][:4], f"removed: {told[1]}")
server.post("/api/file/remove", file="mine.fats.json", even_so=True)
check(len(server.ask("GET", "/api/removed")[1]["removed"]) == 3, "what is young is deleted")
older = time.time() - 3 * 366 * 24 * 3600
os.utime(f"{folder}/.brimwright/removed/{removed['b.run.json']}", (older, older))
server.post("/api/file/remove", file="studio.json")  # refused, and so deletes nothing
check(len(server.ask("GET", "/api/removed")[1]["removed"]) == 3, "a refusal deletes something")
server.post("/api/file/remove", file="a.run.json")
told = [one["file"] for one in server.ask("GET", "/api/removed")[1]["removed"]]
check(told == ["a.run.json", "mine.fats.json", "mine.tips.json"] or sorted(told) == ["a.run.json", "mine.fats.json", "mine.tips.json"], f"{told}")
check(server.post("/api/removed/forget", removed=removed["mine.tips.json"])[0] == 200, "deleted for good")
for token in removed["mine.tips.json"], removed["b.run.json"], "", "..", "../bench", "0" * 48:
    check(server.post("/api/removed/forget", removed=token)[0] == 422, f"deleted {token!r}")
    check(server.post("/api/file/restore", removed=token)[0] == 422, f"restored {token!r}")

# An order is told with its pieces, quoted by its text, and put on paper; fats and tips are told by what they hold.
begin()
order = {"schema": "brimwright.order/1", "id": f"{ID}9", "for": "Ana", "due": "2027-02-01",
         "lines": [{"run": "a.run.json", "pieces": 12}, {"run": "b.run.json", "pieces": 24}]}
write("ana.order.json", json.dumps(order))
money = example("spring_cups.run.json")["money"]
write("studio.json", json.dumps({"schema": "brimwright.studio/1", "moulds_owned": {"cup.json": 2}, **money}))
told = entry("ana.order.json")
check(told["name"] == "Ana" and told["pieces"] == 36 and told["due"] == "2027-02-01", f"told of an order: {told}")
check(entry("b.run.json")["used_by"] == ["ana.order.json"], "who uses the run")
check(entry("mine.fats.json")["holds"] == [one["name"] for one in example("studio.fats.json")["fats"]], "what fats there are")
check(entry("mine.tips.json")["holds"] == [one["name"] for one in example("studio.tips.json")["tips"]], "what tips there are")
status, quote = server.post("/api/quote", file="ana.order.json", order={**order, "lines": order["lines"][:1]}, times="1,2")
check(status == 200 and [one["pieces"] for one in quote["times"]] == [12, 24], f"an order as typed: {quote}")
check(server.post("/api/quote", file="ana.order.json", order=order, run=run)[0] == 422, "an order and a run at once")


def paper(kind, **of):
    connection = http.client.HTTPConnection("127.0.0.1", server.port, timeout=60)
    connection.request("POST", "/api/document", json.dumps({"kind": kind, **of}).encode(), {"X-Bench-Key": server.key})
    answer = connection.getresponse()
    return answer.status, answer.getheader("Content-Type"), answer.read().decode("utf-8", "replace")


of_order = {"file": "ana.order.json", "order": order}
for kind, of, starts, holds in (("quote", {"quote": of_order}, "<!DOCTYPE html>", "Order for Ana"),
                                ("offer", {"quote": {**of_order, "price": "6.50"}}, "<!DOCTYPE html>", "Together"),
                                ("offer-pdf", {"quote": {**of_order, "price": "6.50"}}, "%PDF-", ""),
                                ("sheet", {"plan": of_order}, "<!DOCTYPE html>", "Order for Ana"),
                                ("list", {"buy": {"files": ["ana.order.json"]}}, "<!DOCTYPE html>", "To buy"),
                                ("list-csv", {"buy": {"files": ["ana.order.json"]}}, "", ""),
                                ("picture", {"quote": {"file": "a.run.json"}}, "<?xml", "Where the money of a piece goes")):
    status, of_type, text = paper(kind, **of)
    check(status == 200 and text.startswith(starts) and holds in text, f"{kind}: {status} {of_type} {text[:200]}")
for kind, of in (("picture", {"quote": of_order}), ("quote", {"plan": of_order}), ("list", {"buy": {"files": []}}),
                 ("offer", {"quote": of_order, "buy": {"files": ["a.run.json"]}}), ("glb", {"plan": of_order})):
    check(paper(kind, **of)[0] == 422, f"{kind} of {list(of)}")

# Names as she writes them.
begin()
for name in "crème brûlée 🧼.run.json", "Seife für Oma & Opa's.run.json", "石鹸.run.json", "é" * 123 + ".json", "a" * 250 + ".json", "-rf.json", "%2e%2e.json", "a?b#c.json":
    status, answer = server.post("/api/file/copy", file="a.run.json", to="first.run.json")
    check(status == 200, f"copy: {answer}")
    check(rename("first.run.json", name) == (200, {"file": name, "renamed_in": [], "cut": False}), f"renamed to {name!r}")
    check(os.path.exists(f"{folder}/{name}") and entry(name)["file"] == name, f"{name!r} is another name")
    check(server.get("/api/file", file=name)[0] == 200 and plan_of(name) == before, f"{name!r} cannot be read")
    read = server.get("/api/file", file=name)[1]
    check(server.ask("PUT", "/api/file", {"file": name, "version": read["version"], "text": read["text"] + " "})[0] == 200, f"{name!r} cannot be saved")
    status, answer = server.post("/api/file/remove", file=name)
    check(status == 200 and server.post("/api/file/restore", removed=answer["removed"])[1] == {"file": name}, f"{name!r} is not restored")
    check(server.post("/api/file/remove", file=name)[0] == 200, f"{name!r} is not removed")

# A mould whose name needs escapes in JSON.
begin()
check(rename("cup.json", "my \"best\" cup 🧁.json")[0] == 200 and plan_of("a.run.json") == before, "a name with quotes")

# A large folder is told quickly once it is known.
begin()
for i in range(1950):
    write(f"run{i:04}.run.json", json.dumps({**run, "id": f"{ID[:-4]}{i:04}1", "pour": {**run["pour"], "formula": f"f{i % 200}.formula.json"}}))
server.ask("GET", "/api/files")
times = []
for _ in range(5):
    start = time.monotonic()
    files = server.ask("GET", "/api/files")[1]
    times.append(time.monotonic() - start)
check(len(files["runs"]) >= 1952 and len(entry("cup.json")["used_by"]) == 1953, f"of a large folder: {len(files['runs'])}")
print(f"a folder of 2000 files, warm: {min(times) * 1000:.0f} ms")

server.end()
shutil.rmtree(folder)
print("\n".join(failures) or "her files are where she means them")
sys.exit(bool(failures))
