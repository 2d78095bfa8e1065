"""A batch at the bench is frozen by its first tick, and what was acknowledged is kept: over another tab, another
program, a restart and a power cut; and nothing but what this program keeps is believed or written over."""
import concurrent.futures
import fcntl
import glob
import json
import os
import shutil
import sys
import tempfile
import threading
import time

import jsonschema

from serving import Serving

root, program = sys.argv[1:3]
failures = []


def check(condition, what):
    if not condition:
        failures.append(what)


def own_run(server, name="may.run.json", of="spring_cups", **changes):
    """A run of her own, made as the page makes one."""
    with open(f"{root}/examples/{of}.run.json") as file:
        run = {**json.load(file), **changes}
    status, made = server.ask("PUT", "/api/file", {"file": name, "version": None, "text": json.dumps(run),
                                                   "from": f"examples/{of}.run.json"})
    check(status == 200, f"{name} is not saved: {made}")
    return name


def planned(server, file, **more):
    status, plan = server.post("/api/plan", file=file, **more)
    check(status == 200, f"{file} is not planned: {plan}")
    return plan


def size_of(plan, number):
    return next(size for size in plan["batches"] if number in size["numbers"])


def rows_of(plan, number=1):
    return [row["key"] for vessel in size_of(plan, number)["weigh_out"] for row in vessel["rows"]]


def ticked(server, run, key, batch=1, done=True, seen=None, **more):
    seen = seen or size_of(planned(server, run), batch)["mark"]
    return server.post("/api/bench/tick", run=run, batch=batch, key=key, done=done, seen=seen, **more)


def bench(server, run):
    status, listed = server.get("/api/bench", run=run)
    check(status == 200, f"the bench of {run}: {listed}")
    return listed


def line(answer):
    return answer["complaint"]["line"]


def kept_files(folder):
    return sorted(glob.glob(f"{glob.escape(folder)}/.brimwright/bench/*.json"))


def edit(path, change):
    with open(path) as file:
        document = json.load(file)
    change(document)
    with open(f"{path}.new", "w") as file:
        json.dump(document, file)
    os.replace(f"{path}.new", path)


folder = os.path.realpath(tempfile.mkdtemp())
server = Serving(program, folder, env={"TZ": "Asia/Kolkata"})
run = own_run(server)
plan = planned(server, run)
keys = rows_of(plan)
mark = size_of(plan, 1)["mark"]

# Looking keeps nothing.
check(bench(server, run) == {"batches": [], "version": "none", "complaints": []}, "an empty bench has something")
check(not os.path.exists(f"{folder}/.brimwright"), "looking at the bench made its folder")

# The first tick freezes the plan, whole.
status, first = ticked(server, run, keys[0])
check(status == 200 and first["plan"] == plan and first["batch"] == 1 and first["mark"] == mark, "the first tick")
check(list(first["ticks"]) == [keys[0]] and first["ticks"][keys[0]] >= first["begun_at"], f"ticks {first['ticks']}")
check(first["begun_at"].endswith("+05:30"), f"no offset: {first['begun_at']}")
check("weigh_cup" not in first and "finished_at" not in first, "more than a tick")
check(bench(server, run)["batches"] == [first], "the bench does not show what the tick answered")
with open(kept_files(folder)[0]) as file:
    kept = json.load(file)
with open(f"{root}/src/schemas/bench.schema.json") as file:
    schema = json.load(file)
jsonschema.Draft202012Validator.check_schema(schema)
jsonschema.Draft202012Validator(schema).validate(kept)
check({**{k: v for k, v in kept.items() if k != "schema"}} == first, "what is kept is not what was answered")
for slip in ({"nmae": 1}, {"begun_at": "today"}):
    check(not jsonschema.Draft202012Validator(schema).is_valid({**kept, **slip}), f"the schema lets {slip} pass")

# Ticked twice is ticked once; a tick can be taken back; nothing but rows can be ticked.
check(ticked(server, run, keys[0], seen=mark)[1]["ticks"] == first["ticks"], "a tick asked for twice")
status, second = ticked(server, run, keys[1], seen=mark)
check(sorted(second["ticks"]) == sorted(keys[:2]) and second["id"] == first["id"], "the second tick")
check(list(ticked(server, run, keys[1], done=False, seen=mark)[1]["ticks"]) == [keys[0]], "a tick is not taken back")
for key in "pour.fats.moonlight", "../../may.run.json", "pour.fats":
    status, refused = ticked(server, run, key, seen=mark)
    check(status == 422 and "not to be weighed" in line(refused), f"ticked {key}: {refused}")
status, refused = ticked(server, run, keys[0], batch=3, seen=mark)
check(status == 422 and "no batch 3" in line(refused) and "2 batches" in line(refused), f"batch 3: {refused}")
for batch in 0, -1, 1.5, "1", 10**9:
    check(server.post("/api/bench/tick", run=run, batch=batch, key=keys[0], done=True, seen=mark)[0] == 422,
          f"batch {batch!r} is taken")
check(len(kept_files(folder)) == 1, f"kept {kept_files(folder)}")

# Today's weigh-cup.
for reading in "61 g", "2.15 oz", None:
    status, cup = server.post("/api/bench/weigh_cup", run=run, batch=1, seen=mark, reading=reading)
    check(status == 200 and cup.get("weigh_cup") == reading and cup["ticks"] == first["ticks"], f"cup {reading}: {cup}")
for reading in "61", "0 g", "61 ml", "":
    check(server.post("/api/bench/weigh_cup", run=run, batch=1, seen=mark, reading=reading)[0] == 422, f"cup {reading!r}")
check(server.post("/api/bench/weigh_cup", run=run, batch=2, seen=mark, reading=None)[0] == 409, "a cup of no batch")

# Another number of pieces changes the plan, and what is frozen stays. A tab that shows the new weights is told.
edit(f"{folder}/{run}", lambda document: document.update(sell=40))
changed = size_of(planned(server, run), 1)["mark"]
check(changed != mark, "another number of pieces weighs the same")
check(bench(server, run)["batches"][0]["plan"] == plan, "a frozen plan changed with its run")
status, refused = ticked(server, run, keys[2], seen=changed)
check(status == 409 and "changed just now" in line(refused), f"another mark: {refused}")
check(ticked(server, run, keys[2], seen=mark)[0] == 200, "the frozen mark is refused")
status, refused = ticked(server, run, keys[0], batch=2, seen=mark)
check(status == 409 and [one["batch"] for one in bench(server, run)["batches"]] == [1], "a batch began with other weights")
check(ticked(server, run, keys[0], batch=2, done=False)[0] == 409, "a batch began with a tick taken back")

# What is typed and not saved yet is what is frozen, as an object or as text.
with open(f"{folder}/{run}") as file:
    typed = {**json.load(file), "sell": 44}
typed_plan = planned(server, run, run=typed)
for text in typed, json.dumps(typed):
    status, frozen = ticked(server, run, rows_of(typed_plan, 2)[0], batch=2, seen=size_of(typed_plan, 2)["mark"], text=text)
    check(status == 200 and frozen["plan"] == typed_plan, f"what is typed: {frozen}")
    check(server.post("/api/bench/anew", run=run, batch=2)[0] == 200, "anew")

# The long poll hears of a tick in another tab, and only of a change.
version = bench(server, run)["version"]
check(server.get("/api/changed", run=run, bench=version, wait=0)[1] == {"changed": {}, "unreadable": []}, "no change")
heard = []
waiting = threading.Thread(target=lambda: heard.append((server.get("/api/changed", run=run, bench=version, wait=20), time.monotonic())))
waiting.start()
time.sleep(0.5)
told = time.monotonic()
ticked(server, run, keys[3], seen=mark)
waiting.join()
check(heard[0][0][1]["bench"] == bench(server, run)["version"] and heard[0][1] - told < 3, f"the long poll: {heard}")

# Put away and finished.
status, listed = server.post("/api/bench/finish", run=run, batch=1)
check(status == 200 and listed["batches"][0]["finished_at"] >= first["begun_at"], f"finish: {listed}")
check(server.post("/api/bench/finish", run=run, batch=1)[1] == listed, "finished twice")
check(server.post("/api/bench/finish", run=run, batch=2)[0] == 409, "finished what was not begun")
status, refused = ticked(server, run, keys[4], seen=mark)
check(status == 409 and "finished" in line(refused), f"a tick in a finished batch: {refused}")
put_away = f"{folder}/.brimwright/bench/put_away"
before = len(os.listdir(put_away))
status, listed = server.post("/api/bench/anew", run=run, batch=1)
check(status == 200 and listed["batches"] == [] and len(os.listdir(put_away)) == before + 1, f"anew: {listed}")
check(server.post("/api/bench/anew", run=run, batch=1)[1] == listed, "anew, where there is nothing")
status, again = ticked(server, run, keys[0])
check(status == 200 and again["id"] != first["id"] and list(again["ticks"]) == [keys[0]], "a batch started anew")
files = server.ask("GET", "/api/files")[1]
check(not any(".brimwright" in one["file"] for kind in files.values() if isinstance(kind, list) for one in kind if "file" in one),
      "the bench is listed among her files")

# Renamed, a run has its batches; a copy has none of them, and a copy made by hand is no second owner.
os.rename(f"{folder}/{run}", f"{folder}/june.run.json")
run = "june.run.json"
(found,) = bench(server, run)["batches"]
check(found == {**again, "run": run}, "a renamed run lost its batch")
check(ticked(server, run, keys[1], seen=again["mark"])[1]["run"] == run, "a renamed run cannot be ticked")
with open(f"{folder}/{run}") as file:
    text = file.read()
check(server.ask("PUT", "/api/file", {"file": "copy.run.json", "version": None, "text": text, "from": run})[0] == 200, "copy")
check(bench(server, "copy.run.json")["batches"] == [], "a copy has the batch of another run")
shutil.copy(f"{folder}/{run}", f"{folder}/by_hand.run.json")
by_hand = bench(server, "by_hand.run.json")
check(by_hand["batches"] == [] and run in by_hand["complaints"][0]["line"], f"a copy made by hand: {by_hand}")
check(ticked(server, "by_hand.run.json", keys[0])[0] == 422 and len(bench(server, run)["batches"]) == 1, "two runs of one id")
os.remove(f"{folder}/by_hand.run.json")

# Of a built-in run, and of one without an id, by the file.
for name in "examples/plain_bars.run.json", "plain.run.json":
    if name == "plain.run.json":
        own_run(server, name, of="plain_bars")
        edit(f"{folder}/{name}", lambda document: document.pop("id"))
    status, began = ticked(server, name, rows_of(planned(server, name))[0])
    check(status == 200 and "run_id" not in began and bench(server, name)["batches"] == [began], f"{name}: {began}")
edit(f"{folder}/plain.run.json", lambda document: document.update(id="ae2be28c-6a66-444b-988a-bedfae4b3420"))
key = rows_of(planned(server, "plain.run.json"))[1]
status, adopted = ticked(server, "plain.run.json", key)
check(status == 200 and len(adopted["ticks"]) == 2 and adopted["run_id"].endswith("420"), f"an id came later: {adopted}")
check(bench(server, "plain.run.json")["batches"] == [adopted], "kept twice")
check(len(bench(server, "examples/plain_bars.run.json")["batches"]) == 1, "the built-in run's batch went to another")

# What cannot be planned cannot be frozen; what is dangerous can, with its cautions.
with open(f"{root}/examples/meadow_base.formula.json") as file:
    formula = json.load(file)
formula["superfat"] = "0 %"
with open(f"{folder}/doubtful.formula.json", "w") as file:
    json.dump(formula, file)
own_run(server, "danger.run.json", of="plain_bars")
edit(f"{folder}/danger.run.json", lambda document: document["pour"].update(formula="doubtful.formula.json"))
dangerous = planned(server, "danger.run.json")
check(any(caution["severity"] == "danger" for caution in dangerous["cautions"]), "no danger to freeze")
status, frozen = ticked(server, "danger.run.json", rows_of(dangerous)[0])
check(status == 200 and frozen["plan"]["cautions"] == dangerous["cautions"], "the frozen plan has lost its cautions")
own_run(server, "refused.run.json", of="plain_bars")
fair = planned(server, "refused.run.json")
edit(f"{folder}/refused.run.json", lambda document: document["pour"].update(line={"below_brim": "900 mm"}))
status, refused = ticked(server, "refused.run.json", rows_of(fair)[0], seen=fair["batches"][0]["mark"])
check(status == 422 and refused == server.post("/api/plan", file="refused.run.json")[1], f"a refused plan: {refused}")
check(bench(server, "refused.run.json")["batches"] == [], "a refused plan was frozen")

# A server that is killed the moment it has answered has kept it.
for i, key in enumerate(keys):
    status, answer = ticked(server, run, key, seen=again["mark"])
    if i % 3 == 0:
        server.kill()
        server = Serving(program, folder)
    check(status == 200 and key in bench(server, run)["batches"][0]["ticks"], f"killed after {key}")

# Two programs that serve the folder, and several tabs of each, lose none of each other's ticks.
other = Serving(program, folder)
own_run(server, "both.run.json")
plan = planned(server, "both.run.json")
mark = size_of(plan, 2)["mark"]
with concurrent.futures.ThreadPoolExecutor(6) as tabs:
    at_once = [tabs.submit(ticked, (server, other)[i % 2], "both.run.json", key, 2, True, mark)
               for i, key in enumerate(rows_of(plan, 2))]
    answers = [one.result() for one in at_once]
check({status for status, _ in answers} == {200} and len({answer["id"] for _, answer in answers}) == 1, "a tick at once with others")
check(bench(other, "both.run.json")["batches"] == bench(server, "both.run.json")["batches"], "two programs know two things")
check(sorted(bench(other, "both.run.json")["batches"][0]["ticks"]) == sorted(rows_of(plan, 2)), "a tick was lost between two programs")
with open(f"{folder}/.brimwright/lock", "r+") as lock:  # a third that is just writing
    fcntl.flock(lock, fcntl.LOCK_EX)
    with concurrent.futures.ThreadPoolExecutor(1) as tab:
        waiting = tab.submit(ticked, server, "both.run.json", rows_of(plan, 2)[0], 2, False, mark)
        time.sleep(0.5)
        check(not waiting.done(), "wrote while another program did")
        fcntl.flock(lock, fcntl.LOCK_UN)
        check(waiting.result()[0] == 200, "did not go on after another program")
other.end()

# A file that is damaged, and one that is none of ours: told by name, left alone, and the others are there.
kept = bench(server, "both.run.json")["batches"][0]
(path,) = [one for one in kept_files(folder) if kept["run_id"] in one]
first_path = path.replace(".2.json", ".1.json")
ticked(server, "both.run.json", rows_of(plan, 1)[0])
with open(first_path) as file:
    sound = json.load(file)


def without(key):
    return json.dumps({k: v for k, v in sound.items() if k != key})


for damaged in ("", "{", "[]", "\0" * 500, json.dumps(sound)[:-40], without("mark"), without("plan"),
                json.dumps({**sound, "batch": 2}), json.dumps({**sound, "mark": "another"}), json.dumps({**sound, "run_id": "0" * 8 + "-0000-0000-0000-" + "0" * 12}),
                json.dumps({**sound, "ticks": {"pour.fats.moonlight": sound["begun_at"]}}),
                json.dumps({**sound, "begun_at": "noon"}), json.dumps({**sound, "plan": {}}), "x" * (5 << 20)):
    with open(first_path, "w") as file:
        file.write(damaged)
    listed = bench(server, "both.run.json")
    check(listed["batches"] == [kept] and len(listed["complaints"]) == 1, f"beside {damaged[:60]!r}: {listed['batches']}")
    check(f".brimwright/bench/{os.path.basename(first_path)}" in listed["complaints"][0]["line"], f"not named: {listed['complaints']}")
    check(listed["complaints"][0]["line"].count("\n") == 0 and folder not in listed["complaints"][0]["line"], "a complaint of several lines")
    status, refused = ticked(server, "both.run.json", rows_of(plan, 1)[1])
    check(status == 422 and os.path.basename(first_path) in line(refused), f"ticked in {damaged[:60]!r}: {refused}")
    with open(first_path) as file:
        check(file.read() == damaged, f"wrote over {damaged[:60]!r}")
check(server.post("/api/bench/anew", run="both.run.json", batch=1)[1]["complaints"] == [], "a damaged file cannot be put away")
check(ticked(server, "both.run.json", rows_of(plan, 1)[0])[0] == 200, "a batch after a damaged one")
strange = f"{folder}/.brimwright/bench/notes (copy).json"
with open(strange, "w") as file:
    file.write("hers")
check([one["file"] for one in bench(server, "both.run.json")["complaints"]] == [".brimwright/bench/notes (copy).json"], "a strange file")
os.remove(strange)

# No link and no name leads out of the folder.
outside = os.path.realpath(tempfile.mkdtemp())
with open(first_path) as file:
    sound = file.read()
os.rename(first_path, f"{outside}/batch.json")
os.symlink(f"{outside}/batch.json", first_path)
check(len(bench(server, "both.run.json")["complaints"]) == 1, "a link is read")
check(ticked(server, "both.run.json", rows_of(plan, 1)[1])[0] == 422, "a link is written to")
with open(f"{outside}/batch.json") as file:
    check(file.read() == sound, "a link was followed")
os.remove(first_path)
os.mkfifo(first_path)
check(len(bench(server, "both.run.json")["complaints"]) == 1, "a pipe is read")
os.remove(first_path)
for name in "../may.run.json", "/etc/passwd", f"{outside}/batch.json", ".brimwright/bench", "both.run.json/..", "nowhere.run.json", "":
    check(server.get("/api/bench", run=name)[0] == 422, f"the bench of {name!r}")
    check(server.post("/api/bench/tick", run=name, batch=1, key=keys[0], done=True, seen=mark)[0] == 422, f"a tick in {name!r}")
    check(server.post("/api/bench/anew", run=name, batch=1)[0] == 422, f"anew of {name!r}")
for part in ".brimwright/bench", ".brimwright":
    os.rename(f"{folder}/{part}", f"{folder}/away")
    os.symlink(outside, f"{folder}/{part}")
    for status, answer in server.get("/api/bench", run=run), ticked(server, run, keys[0], batch=2):
        check(status == 422 and part in line(answer), f"{part} is a link: {answer}")
    check(os.listdir(outside) == ["batch.json"], f"wrote through {part}: {os.listdir(outside)}")
    os.remove(f"{folder}/{part}")
    os.rename(f"{folder}/away", f"{folder}/{part}")
check(len(bench(server, run)["batches"]) == 1, "the bench after all")

# More than anybody weighs at a time is told.
own_run(server, "many.run.json", of="plain_bars", sell=120, batch={"pieces": 2})
plan = planned(server, "many.run.json")
check(plan["pieces"]["batches"] == 60, f"{plan['pieces']}")
statuses = [ticked(server, "many.run.json", rows_of(plan, n)[0], n, True, size_of(plan, n)["mark"])[0] for n in range(1, 52)]
check(statuses == [200] * 50 + [422], f"51 batches under way: {statuses}")
server.post("/api/bench/finish", run="many.run.json", batch=1)
status, _ = ticked(server, "many.run.json", rows_of(plan, 51)[0], 51, True, size_of(plan, 51)["mark"])
check(status == 200, "a batch after one was finished")

# A folder that may not be written to (nobody is kept out who is root).
if os.geteuid() != 0:
    os.chmod(folder, 0o500)
    check(ticked(server, run, keys[0])[0] == 422, "kept where nothing can be")
    os.chmod(folder, 0o700)
server.end()
left = [name for _, _, names in os.walk(folder) for name in names if name.endswith(".tmp")]
check(left == [], f"left half-written: {left}")
shutil.rmtree(folder)
shutil.rmtree(outside)
print("\n".join(failures) or "what was ticked is kept")
sys.exit(bool(failures))
