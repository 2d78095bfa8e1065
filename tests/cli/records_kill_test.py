"""A process that writes records is killed at random moments, every other time once it writes: what it had acknowledged is there
afterwards, no half act is, and the file is sound. It notes, begins a base with its lines, brings records of version 1 to today's, or begins
records where there are none.
200 times; more by hand: records_kill_test.py ROOT PROGRAM --kills 2000 [--seed N]."""
import os
import random
import shutil
import signal
import sqlite3
import subprocess
import sys
import tempfile
import time

from checks import check, end, program, read, root, run, write

arguments = dict(zip(sys.argv[3::2], sys.argv[4::2]))
kills, seed = int(arguments.get("--kills", 200)), int(arguments.get("--seed", 1))
chance = random.Random(seed)
folder, os.environ["TMPDIR"] = tempfile.mkdtemp(), tempfile.mkdtemp()
for name in ("plain_bars.run.json", "meadow_base.formula.json"):
    shutil.copy(f"{root}/examples/{name}", folder)
bars, order = "plain_bars.run.json", "market.order.json"
small = {**read(f"{folder}/{bars}"), "name": "Small bars", "id": "ae2be28d-6a66-444b-988a-bedfae4b3429"}
write(f"{folder}/small_bars.run.json", small)
write(f"{folder}/{order}", {"schema": "brimwright.order/1", "id": "6c2d2e0a-0d3a-4f0b-9a86-64b6a9f7f001", "for": "a market",
                            "lines": [{"run": name, "pieces": 6, "together": "A"} for name in (bars, "small_bars.run.json")]})
file, journal = f"{folder}/records.sqlite", f"{folder}/records.sqlite-journal"
seen = {"killed": 0, "writing": 0}


def done(*words):
    result = run(*words, folder=folder)
    check(result.returncode == 0, f"{words}: {result.stderr}")
    return result.stdout


def asked(*words):
    return subprocess.Popen([program, *words], cwd=folder, stdout=subprocess.PIPE, stderr=subprocess.PIPE)


def writes():
    """Something of an act is in the file, or may be; or the file is being made."""
    return os.path.exists(journal) and os.path.getsize(journal) > 0 or any(name.endswith(".new") for name in os.listdir(folder))


def await_writing(writer):
    while writer.poll() is None and not writes():
        time.sleep(1e-4)


def times_of(writer):
    """How long it takes where nobody kills it, in all and for its writing."""
    begun = time.monotonic()
    await_writing(writer)
    written = time.monotonic()
    writer.communicate()
    check(writer.returncode == 0, "what is to be killed does not work")
    return time.monotonic() - begun, time.monotonic() - written


def killed(writer, took, wrote, is_aimed):
    """What it had acknowledged until then."""
    if is_aimed:
        await_writing(writer)
    time.sleep(chance.random() * (wrote if is_aimed else took) * 1.3)
    writer.send_signal(signal.SIGKILL)
    out = writer.communicate()[0].decode()
    if writer.returncode == -signal.SIGKILL:
        seen["killed"] += 1
        seen["writing"] += writes()
    return out


def look_as_program():
    """The program's own eyes: it opens what the kill left, and takes back what was half done."""
    check("sound" in done("records", ".") or not os.path.exists(file), "the records are not sound")


def rows(query):
    with sqlite3.connect(f"file:{file}", uri=True) as database:
        check(database.execute("PRAGMA quick_check").fetchone()[0] == "ok", "the file is damaged")
        found = database.execute(query).fetchall()
    database.close()
    return found


def kill_often(share, start, look):
    """So many of all kills; `start(number)` begins a writer, `look(number, out)` at what one left that had told that much."""
    before = seen["killed"]
    took, wrote = times_of(start(0))
    look(0, None)
    number = 0
    while seen["killed"] - before < kills * share:
        number += 1
        out = killed(start(number), took, wrote, number % 2 == 0)
        if number % 10 == 0:
            look_as_program()
        look(number, out)


# ---- four values at once, the same number in each: an act that is whole or is not

keys = ["pieces.why", "tested_how", "tested_words", "held_back"]
noted = {"acknowledged": 0}


def noting(number):
    words = [word for key in keys for word in ("--set", f"{key}=act {number} " + "x" * (number % 700))]
    return asked("note", bars, *words)


def look_at_notes(number, out):
    if out is None or out.startswith("Noted"):
        noted["acknowledged"] = number
    found = [value.split()[1] for (value,) in rows("SELECT value FROM note")]
    check(len(set(found)) == 1 and len(found) == len(keys), f"act {number}: half of it is there: {found}")
    check(noted["acknowledged"] <= int(found[0]) <= number, f"act {number}: {found} is there, {noted} was acknowledged")


done("note", bars, "--begin", "--confirmed", "by-itself")
kill_often(0.5, noting, look_at_notes)
check(noted["acknowledged"] > 0, "no note was acknowledged")

# ---- a base, a batch of each line, and what all of them take of lots

os.remove(file)
for material, lot in (("olive oil", "OL-1"), ("coconut", "CO-1"), ("NaOH", "NA-1")):
    done("stock", ".", "--bought", material, "--pack", "5 kg", "--packs", "1000", "--lot", lot, "--on", "2026-10-01")
tables = ("act", "batch", "poured_from", "code", "weighed", "lot_change", "note")
counted = "SELECT " + ", ".join(f"(SELECT count(*) FROM {table})" for table in tables)
(none,) = rows(counted)
bases = {"there": 0, "each": None}


def beginning(number):
    return asked("note", order, "--begin", "--again", "--set", "base.made=1.3 kg", "--set", f"base.trace={number % 9 + 5} min")


def look_at_bases(number, out):
    more = [now - before for now, before in zip(rows(counted)[0], none)]
    if bases["each"] is None:
        bases["each"] = more
        check(more[:3] == [1, 3, 2] and 0 not in more, f"a base begins with all its rows: {dict(zip(tables, more))}")
    now = more[0]
    check(more == [now * each for each in bases["each"]], f"base {number}: half of it is there: {dict(zip(tables, more))}")
    least = bases["there"] + (out is None or out.startswith("Begun"))
    check(least <= now <= bases["there"] + 1, f"base {number}: {now} are there, {least} were acknowledged")
    bases["there"] = now


kill_often(0.2, beginning, look_at_bases)
check(bases["there"] > 1, "no base was acknowledged")

# ---- records of version 1, made by the program of that version: they are of that version or of today's, whole

os.remove(file)
shutil.copy(f"{root}/tests/data/records/version_1.sqlite", file)
old = [name for (name,) in rows("SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name")]
content = [rows(f"SELECT * FROM {table}") for table in old]
(every,) = rows("SELECT count(*) FROM sqlite_schema")
versions = set()


def take_away():
    for name in os.listdir(folder):
        if name.startswith("records.sqlite"):
            os.remove(f"{folder}/{name}")


def opening(_):
    take_away()
    shutil.copy(f"{root}/tests/data/records/version_1.sqlite", file)
    return asked("records", ".")


def look_at_version(number, out):
    ((version,),) = rows("PRAGMA user_version")
    versions.add(version)
    is_new = [] != rows("SELECT 1 FROM sqlite_schema WHERE name = 'poured_from'")
    check(version in (1, 2) and is_new == (version == 2), f"step {number}: half of version {version} is there")
    check(version == 2 or (out is not None and not out), f"step {number}: told of records of version 1: {out}")
    check(version == 2 or rows("SELECT count(*) FROM sqlite_schema") == [every], f"step {number}: more than version 1 is there")
    check([rows(f"SELECT * FROM {table}") for table in old] == content, f"step {number}: what was recorded is lost")


kill_often(0.2, opening, look_at_version)
check(versions == {1, 2}, f"versions found: {versions}")

# ---- the first records of a folder: none or whole ones, and what was being made is no copy that anybody looks into

def beginning_records(_):
    take_away()
    return asked("note", bars, "--begin", "--confirmed", "by-itself")


def look_at_first(number, out):
    for name in os.listdir(folder):
        check(not name.endswith(".new") or f"{name} was being made" in done("records", ".").replace("\n    ", " "), f"{name} is taken for a copy")
    state = rows("SELECT (SELECT count(*) FROM act), (SELECT count(*) FROM batch), (SELECT count(*) > 0 FROM weighed)")[0] if os.path.exists(file) else None
    is_told = out is None or out.startswith("Begun")
    check(state == (1, 1, 1) or (not is_told and state in (None, (0, 0, 0))), f"first {number}: {state} is there, told: {is_told}")


kill_often(0.1, beginning_records, look_at_first)
shutil.rmtree(folder)
shutil.rmtree(os.environ["TMPDIR"])
end(f"{seen['killed']} writers killed, {seen['writing']} with an act half written, seed {seed}: nothing acknowledged was lost, nothing half done is there")
