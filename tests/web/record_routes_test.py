"""What the page asks about what really happened: begun once however often it is asked, noted once per act, nothing
written over that another hand noted, and nothing told to strangers."""
import concurrent.futures
import http.client
import json
import os
import shutil
import subprocess
import sys
import tempfile
import time
import uuid

from serving import Serving

root, program = sys.argv[1:3]
failures = []


def check(condition, what):
    if not condition:
        failures.append(what)


folder = os.path.realpath(tempfile.mkdtemp())
for name in os.listdir(f"{root}/examples"):
    if name.endswith(".json"):
        with open(f"{root}/examples/{name}") as file:
            document = json.load(file)
        document.pop("$schema", None)
        with open(f"{folder}/{name}", "w") as file:
            json.dump(document, file)
run = "spring_cups.run.json"
server = Serving(program, folder)


def note_on_command_line(*words):
    return subprocess.run([program, "note", *words], cwd=folder, capture_output=True, text=True)


def record(batch=""):
    return server.get("/api/record", run=run, batch=batch)[1]


def noted(key, answer=None):
    batch = (answer or record())["record"]["batches"][-1]
    return next(one for one in batch["blanks"] if one["key"] == key).get("noted")


def put(key, value, seen="", act=None, **more):
    return server.post("/api/record/note", run=run, batch=batch_id, act=act or str(uuid.uuid4()), set={key: value or None},
                       seen={key: seen or None}, **more)


# Nothing is there yet; of a built-in example neither, and nothing is written for having been asked.
before = record()
check(before == {"version": "none", "poured_by": None, "record": {**before["record"], "batches": []}}, f"an empty record: {before}")
built_in = next(one["file"] for one in server.ask("GET", "/api/files")[1]["runs"] if one["shipped"])
check(server.get("/api/record", run=built_in)[1]["record"]["batches"] == [], "a built-in run has no record")
check(not os.path.exists(f"{folder}/records.sqlite"), "asking makes no file")

# Begun by several tabs at once, and again after an answer that was lost: it is one batch.
plan = json.loads(subprocess.check_output([program, "plan", run, "--json"], cwd=folder))
mark = next(one["mark"] for one in plan["batches"] if 1 in one["numbers"])
begin = {"run": run, "batch": 1, "seen": mark}
status, answer = server.post("/api/record/begin", **{**begin, "seen": "0" * 8})
check(status == 409, f"other weights than those shown: {status} {answer}")
check(not os.path.exists(f"{folder}/records.sqlite"), "a refused beginning leaves nothing")
with concurrent.futures.ThreadPoolExecutor() as several:
    answers = list(several.map(lambda _: server.post("/api/record/begin", **begin), range(4)))
check(all(status == 200 for status, _ in answers), f"begun: {[answer for status, answer in answers if status != 200]}")
ids = {answer["record"]["batches"][0]["begun"]["id"] for status, answer in answers if status == 200}
check(len(ids) == 1 and len(record()["record"]["batches"]) == 1, f"one record of one batch at the bench: {ids}")
batch_id = ids.pop()
code = record()["record"]["batches"][0]["begun"]["code"]
check(server.get("/api/bench", run=run)[1]["batches"][0]["mark"] == mark, "its weights are frozen at the bench")

# An act is done once, and what another hand noted meanwhile is asked about, never written over.
act = str(uuid.uuid4())
for _ in range(2):
    status, answer = put("base.trace", "12 min", act=act)
    check(status == 200 and noted("base.trace", answer) == "12 min", f"noted: {answer}")
check(note_on_command_line(run, "--batch", "1", "--set", "base.trace=14 min").returncode == 0, "the command line notes")
check(put("base.trace", "12 min", act=act)[0] == 200, "an act that was done is answered")
check(noted("base.trace") == "14 min", "and done no more")
status, answer = put("base.trace", "15 min", seen="12 min")
asked = answer.get("complaint", {})
check(status == 422 and asked.get("asks") == "seen" and asked["choices"] == [{"seen": "14 min"}], f"asked: {answer}")
check(noted("base.trace") == "14 min", "what the command line noted stays")
check(put("base.trace", "15 min", seen="14 min")[0] == 200 and noted("base.trace") == "15 min", "said which is right")
check(put("base.trace", "", seen="15 min")[0] == 200 and noted("base.trace") is None, "taken back")

# Far from sense is asked about; nonsense is refused, naming the blank; neither is noted.
status, answer = put("base.fats_at", "140 °C")
check(status == 422 and answer["complaint"].get("asks") == "confirmed", f"far from usual: {answer}")
check(put("base.fats_at", "140 °C", confirmed=["140 °C"])[0] == 200, "it is so")
status, answer = put("base.lye_at", "warm")
check(status == 422 and "base.lye_at" in answer["complaint"]["field"] and noted("base.lye_at") is None, f"{answer}")
status, answer = put("ready_on", record()["record"]["batches"][0]["begun"]["begun_on"])
check(status == 422 and "test" in answer["complaint"]["problem"], f"ready without a test: {answer}")
check(record()["record"]["batches"][0]["for_sale"] is False, "not for sale")

# Two tabs and the command line at once: all that was acknowledged is there.
blanks = ["base.lye_at", "base.room_at", "topping.fats_at", "topping.lye_at", "topping.room_at"]
known = [one["key"] for one in record()["record"]["batches"][0]["blanks"]]
blanks = [one for one in blanks if one in known]
version = record()["version"]


def by_either(pair):
    number, key = pair
    value = f"{30 + number} °C"
    if number % 2:
        return note_on_command_line(run, "--batch", "1", "--set", f"{key}={value}").returncode == 0, key, value
    return put(key, value)[0] == 200, key, value


with concurrent.futures.ThreadPoolExecutor() as several:
    done = list(several.map(by_either, enumerate(blanks)))
check(len(done) >= 3 and all(ok for ok, _, _ in done), f"noted at once: {done}")
check(all(noted(key) == value for _, key, value in done), "nothing is lost")
status, answer = server.get("/api/changed", run=run, record=version, wait=5)
check(answer.get("record") == record()["version"] != version, f"who watches hears of it: {answer}")
check("record" not in server.get("/api/changed", run=run, record=record()["version"], wait=0)[1], "and of nothing else")
beside = {f"beside:{run}": "", "beside:no/such.order.json": ""}
check(server.get("/api/changed", stock="none", wait=0, **beside)[1].get("stock") == record()["version"], "what is beside named files")

# Another code, a run that was changed, and who may not ask.
check(server.post("/api/record/note", run=run, batch=batch_id, act=str(uuid.uuid4()), code="Spring 1")[0] == 200, "code")
check(record()["record"]["batches"][0]["begun"]["code"] == "Spring 1" != code, "is hers")

# Another making that begins as a second ends: its record is never of before its batch, or the page would take it for
# that of the making before.
makings = 1
for _ in range(5):
    server.post("/api/bench/anew", run=run, batch=1)
    time.sleep(1.995 - time.time() % 1)
    status, answer = server.post("/api/record/begin", **begin, again=True)
    makings += 1
    check(status == 200 and len(record()["record"]["batches"]) == makings, f"made again: {answer}")
    at_bench = server.get("/api/bench", run=run)[1]["batches"][0]["begun_at"]
    check(answer["record"]["batches"][-1]["begun"]["begun_at"] >= at_bench, f"recorded before it began, {at_bench}: {answer}")
with open(f"{folder}/{run}") as file:
    changed = {**json.load(file), "sell": 12}
server.post("/api/bench/anew", run=run, batch=1)
check(server.post("/api/bench/tick", run=run, batch=1, seen=mark, done=True, key=plan["batches"][0]["weigh_out"][0]["rows"]
                  [0]["key"])[0] == 200, "another making is weighed")
with open(f"{folder}/{run}", "w") as file:
    json.dump(changed, file)
status, answer = server.post("/api/record/begin", **begin, again=True)
check(status == 422 and "other weights" in answer["complaint"]["problem"], f"weighed by another run: {answer}")
check(len(record()["record"]["batches"]) == makings, "nothing is recorded of it")
# What lines of an order are poured from: begun once by the asker's id, at once, and noted under its order and word.
market = "market.order.json"
with open(f"{folder}/{market}", "w") as file:
    json.dump({"schema": "brimwright.order/1", "for": "a market", "lines": [
        {"run": f"{name}.run.json", "pieces": pieces, "together": "A"} for name, pieces in (("plain_bars", 12), ("marble_bowls", 6))]}, file)
of = {"run": market, "together": "A"}
check(server.get("/api/record", **of)[1]["record"]["batches"] == [], "no base is begun")
check(server.post("/api/record/begin", **of, batch=1)[0] == 422, "no act")
check(server.post("/api/record/begin", **{**of, "together": "B"}, batch=1, act=str(uuid.uuid4()))[0] == 422, "no such word")
begin_base = {**of, "batch": 1, "act": str(uuid.uuid4()), "code": "KO-7"}
with concurrent.futures.ThreadPoolExecutor(4) as several:
    answers = list(several.map(lambda _: server.post("/api/record/begin", **begin_base), range(4)))
check(all(status == 200 for status, _ in answers), f"a base is begun: {answers}")
(base,) = server.get("/api/record", **of)[1]["record"]["batches"]
check([line["code"] for line in base["lines"]] == ["KO-7-1", "KO-7-2"] and base["begun"]["code"] == "KO-7", f"its lines: {base['lines']}")
check(server.post("/api/record/begin", **{**begin_base, "act": str(uuid.uuid4()), "code": "KO-8"})[0] == 422, "begun already")
made = next(blank["planned"] for blank in base["blanks"] if blank["key"] == "base.made")
status, answer = server.post("/api/record/note", **of, batch=base["begun"]["id"], act=str(uuid.uuid4()), set={"base.made": made},
                             seen={"base.made": None})
check(status == 200 and noted("base.made", answer) == made, f"noted of a base: {answer}")
line = server.get("/api/record", run="plain_bars.run.json")[1]["record"]["batches"][-1]
check(line["poured_from"] == "KO-7" and not any(blank["key"].startswith("base.") for blank in line["blanks"]), "the line's own record")

for method, path in ("GET", f"/api/record?run={run}"), ("POST", "/api/record/begin"), ("POST", "/api/record/note"):
    for headers, refused in ({}, 401), ({"X-Bench-Key": server.key, "Origin": "http://elsewhere.test"}, 403), (
            {"X-Bench-Key": server.key, "Host": "elsewhere.test"}, 421):
        connection = http.client.HTTPConnection("127.0.0.1", server.port, timeout=10)
        connection.request(method, path, b"{}" if method == "POST" else None, headers)
        found = connection.getresponse().status
        check(found == refused, f"{method} {path} {headers}: {found}")
        connection.close()
server.end()
shutil.rmtree(folder)
for one in failures:
    print("FAIL", one)
sys.exit(1 if failures else 0)
