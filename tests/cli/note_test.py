"""What really happened is noted beside the run: batches are begun, filled in, exported and backed up. Each way that can go
wrong is one line that names file or option, exit 1, and changes nothing; two processes at once lose nothing."""
import concurrent.futures
import json
import os
import re
import resource
import shutil
import sqlite3
import subprocess
import sys
import tempfile

from checks import check, end, program, read, root, write

home = tempfile.mkdtemp()
today = {"SOURCE_DATE_EPOCH": "1796126400"}  # 2026-12-01 12:00 UTC, by coreutils' date


def folder(*names):
    made = tempfile.mkdtemp(dir=home)
    for name in names or ("spring_cups", "plain_bars"):
        shutil.copy(f"{root}/examples/{name}.run.json", made)
    for name in os.listdir(f"{root}/examples"):
        if name.endswith((".formula.json", ".fats.json", ".tips.json")):
            shutil.copy(f"{root}/examples/{name}", made)
    return made


def called(where, *words, status=0, day=None, **more):
    done = subprocess.run([program, *words], cwd=where, capture_output=True, text=True, env={**os.environ, **today, **(day or {})}, **more)
    check(done.returncode == status, f"{words}: exit {done.returncode}: {done.stdout[-300:]}{done.stderr}")
    if done.returncode == 1:
        check(done.stderr.count("\n") == 1 and not done.stdout, f"{words}: more than one line: {done.stdout}{done.stderr}")
    return done


def note(where, *words, **more):
    return called(where, "note", *words, **more)


def bytes_of(where):
    path = f"{where}/records.sqlite"
    return open(path, "rb").read() if os.path.exists(path) else None


def refused(where, *words, says, **more):
    before = bytes_of(where)
    said = note(where, *words, status=1, **more).stderr
    check(says in said, f"{words}: says {said!r}, not {says!r}")
    check(bytes_of(where) == before, f"{words}: refused, and the records changed")


def noted(where, run="spring_cups.run.json", batch="1"):
    return json.loads(note(where, run, "--batch", batch, "--json").stdout)["batches"][0]


def values(batch):
    return {blank["key"]: blank["noted"] for blank in batch["blanks"] if "noted" in blank}


# ---- a batch from its lye to its sale
soap, run = folder(), "spring_cups.run.json"
check("No batch" in note(soap, run).stdout and not os.path.exists(f"{soap}/records.sqlite"), "looking makes no records")
form = noted(soap)
check(form["begun"] is None and len(form["blanks"]) > 30, "its blanks are known before it is begun")
refused(soap, run, "--begin", says="the run is made in 2 batches")
refused(soap, run, "--batch", "3", "--begin", says="there is no batch 3")
refused(soap, run, "--batch", "1", "--set", "base.made=1 kg", says="no batch that was begun")
check("2026-12-01A" in note(soap, run, "--batch", "1", "--begin").stdout, "the first code of the day")
check("2026-12-01B" in note(soap, run, "--batch", "2", "--begin").stdout, "the second")
refused(soap, run, "--batch", "1", "--begin", says="--again")
check("2026-12-01C" in note(soap, run, "--batch", "1", "--begin", "--again").stdout, "another making")
refused(soap, run, "--set", "base.made=1 kg", says="3 batches of this run were begun")
note(soap, run, "--batch-code", "2026-12-01a", "--set", "base.made=1.8 kg", "--set", "base.fats_at=104 °F")
first = json.loads(note(soap, run, "--batch-code", "2026-12-01A", "--json").stdout)["batches"][0]
check(values(first) == {"base.made": "1.8 kg", "base.fats_at": "104 °F"}, "kept as typed")
check(values(noted(soap)) == {}, "the newest making has nothing yet")
note(soap, run, "--batch-code", "2026-12-01A", "--set", "base.fats_at=")
refused(soap, run, "--batch", "1", "--set", "base.made=1 kg", "--set", "base.left_over=x", says="--set base.left_over")
refused(soap, run, "--batch", "1", "--set", "base.made=17 kg", says='--confirmed "17 kg"')
note(soap, run, "--batch", "1", "--set", "base.made=17 kg", "--confirmed", "17 kg")
refused(soap, run, "--batch", "1", "--set", "ready_on=2026-12-01", says="no test result")
note(soap, run, "--batch", "1", "--set", "tested=pass", "--set", "ready_on=2027-01-05")
check(not noted(soap)["for_sale"], "not ready yet")
later = json.loads(note(soap, run, "--batch", "1", "--json", day={"SOURCE_DATE_EPOCH": "1799193600"}).stdout)  # 2027-01-06
check(later["batches"][0]["for_sale"], "tested, and its day has come")
note(soap, run, "--batch", "1", "--set", "cured.2026-12-29=12 pieces, 1040 g", day={"SOURCE_DATE_EPOCH": "1799193600"})
check(noted(soap)["cured"] == [{"on": "2026-12-29", "pieces": 12, "written": "1040 g", "together_g": 1040}], "a weighing")

# ---- the list stands in 80 columns, with each key to copy, what is planned and what was noted
why = "two slid out of the mould too early, and one has a dent from the thumb that pressed it out of its cup"
weighed = "weighed.pour.fats.olive"
note(soap, run, "--batch", "1", "--set", f"pieces.why={why}", "--set", f"{weighed}=500 g")
batch, text = noted(soap), note(soap, run, "--batch", "1").stdout
listed = {}  # by its key, all that stands there up to the next key
keys = {row["key"] + (".DATE" if row.get("kind") == "weighing" else "") for row in batch["blanks"] + batch["rows"]} | {"cured.2026-12-29"}
for line in text.splitlines():
    words = line.split()
    check(len(line) <= 80 or len(words) == 1 and words[0] in keys, f"{len(line)} columns: {line}")
    key = words[0] if words and words[0] in keys else key if listed else None
    if key:
        listed[key] = listed.get(key, "") + " " + " ".join(words)
check(set(listed) == keys, f"not listed: {keys - set(listed)}")
for row in batch["blanks"] + batch["rows"]:
    its = listed[row["key"] + (".DATE" if row.get("kind") == "weighing" else "")]
    check(row.get("planned", "") in its and row.get("noted", "") in its, f"{row}: {its}")
check(listed["cured.2026-12-29"].endswith("noted: 12 pieces, 1040 g"), listed["cured.2026-12-29"])
check("477 g 500 g" in listed[weighed] and f"noted: {why}" in listed["pieces.why"], "what was noted, beside or below what was planned")
check(re.search(r"\n  Mixing: base\n.*\n  Pouring: base\n.*\n  Cure and test\n.*\n  Fats for the base\n", text, re.S), "parts in the order of work")

# ---- the frozen plan stays, whatever becomes of the run
document = read(f"{soap}/{run}")
write(f"{soap}/{run}", {**document, "sell": 40})
check(noted(soap)["begun"]["plan_sha256"] == first["begun"]["plan_sha256"], "the frozen plan")
sheet = called(soap, "sheet", run, "--batch", "1", "--html", "-").stdout
check("by another plan than this" in sheet and "Batch number 2026-12-01C" not in sheet, "a sheet of other weights borrows no code")
write(f"{soap}/{run}", document)
sheet = called(soap, "sheet", run, "--batch", "1", "--html", "-").stdout
check("Batch number 2026-12-01C, begun on 2026-12-01" in sheet, "the sheet carries the code")
check("2026-12-01C for batch 1; 2026-12-01B for batch 2" in " ".join(called(soap, "plan", run).stdout.split()), "the label carries the codes")
write(f"{soap}/{run}", {**document, "sell": 0})
refused(soap, run, "--batch", "1", "--begin", "--again", says="/sell")
note(soap, run, "--batch", "1", "--set", "pieces.why=noted all the same")
os.rename(f"{soap}/{run}", f"{soap}/renamed.run.json")
check(values(noted(soap, "renamed.run.json"))["pieces.why"] == "noted all the same", "found by the run's id under another name")
os.rename(f"{soap}/renamed.run.json", f"{soap}/{run}")
write(f"{soap}/{run}", document)
shutil.copy(f"{soap}/{run}", f"{soap}/copy.run.json")
refused(soap, "copy.run.json", "--batch", "1", "--begin", "--again", says="is the id of")

# ---- codes
refused(soap, "plain_bars.run.json", "--begin", "--code", "2026-12-01a", says="is the code of batch 1")
refused(soap, "plain_bars.run.json", "--begin", "--code", "a\x1b[2J", says="not every label")
check("KO-7" in note(soap, "plain_bars.run.json", "--reserve", "--code", "KO-7").stdout, "reserved")
check("Batch number KO-7" in called(soap, "sheet", "plain_bars.run.json", "--html", "-").stdout, "on the sheet before it is begun")
check("KO-7" in note(soap, "plain_bars.run.json", "--begin").stdout, "begun as reserved")
note(soap, "plain_bars.run.json", "--code", "KO-8")
refused(soap, "plain_bars.run.json", "--code", "ko-7", says="was given to another batch")
refused(soap, run, "--batch-code", "KO-8", says="is a batch of plain_bars.run.json")

# A code reserved while the run had no id is its own once it has one; a batch that is refused begins no records.
bare = folder("plain_bars")
plain = read(f"{bare}/plain_bars.run.json")
write(f"{bare}/plain_bars.run.json", {key: value for key, value in plain.items() if key != "id"})
for words, says in [(["--set", "base.made=much"], '"much"'), (["--set", "base.mde=1 kg"], "did you mean base.made?"), (["--lot", "olive=OL-1"], "OL-1"),
                    (["--confirmed", "1 kg"], "nothing that was asked about")]:
    refused(bare, "plain_bars.run.json", "--begin", *words, says=says)
    check(not [name for name in os.listdir(bare) if "records" in name], f"{words}: refused, and records are there: {os.listdir(bare)}")
note(bare, "plain_bars.run.json", "--reserve", "--code", "ID-1")
called(bare, "tidy", "plain_bars.run.json")
check(read(f"{bare}/plain_bars.run.json").get("id"), "tidied, and no id")
check("Batch number ID-1" in called(bare, "sheet", "plain_bars.run.json", "--html", "-").stdout, "the sheet lost its code with the id")
check(noted(bare, "plain_bars.run.json")["reserved_code"] == "ID-1", "the form lost its code with the id")
check("ID-1" in note(bare, "plain_bars.run.json", "--reserve").stdout, "another code reserved beside the first")
check("Begun: ID-1" in note(bare, "plain_bars.run.json", "--begin").stdout, "begun with another code than on its sheet")
check("ID-1" not in note(bare, "plain_bars.run.json", "--reserve", "--again").stdout, "one code for two makings")

# A batch that began while its run had no id tells what is reserved for its next making since.
bare = folder("plain_bars")
write(f"{bare}/plain_bars.run.json", {key: value for key, value in plain.items() if key != "id"})
note(bare, "plain_bars.run.json", "--begin", "--code", "ID-2")
called(bare, "tidy", "plain_bars.run.json")
note(bare, "plain_bars.run.json", "--reserve", "--again", "--code", "ID-3")
check(noted(bare, "plain_bars.run.json")["reserved_code"] == "ID-3", "the batch does not know what is reserved for its next making")
check("Reserved for its next making: ID-3." in note(bare, "plain_bars.run.json").stdout, "nor is it listed")
sheet = called(bare, "sheet", "plain_bars.run.json", "--html", "-").stdout
check("Batch number ID-3" in sheet and "ID-2" not in sheet, "the sheet carries another code than is reserved")

# ---- what does not go together, or cannot be
for words, says in [(["--begin", "--reserve"], "does not go with"), (["--again"], "does nothing alone"), (["--on", "2026-12-01"], "does nothing alone"),
                    (["--batch", "1", "--batch-code", "x"], "does not go with"), (["--batch", "0"], "not the number of a batch"),
                    (["--set", "base.made"], "write it such as"), (["--confirmed", "1 kg"], "does nothing alone"),
                    (["--batch", "1", "--set", "base.mde=1 kg"], "did you mean base.made?"),
                    (["--batch", "1", "--begin", "--again", "--on", "2026-12-02"], "still to come"),
                    (["--batch", "1", "--begin", "--again", "--on", "2025-12-01"], "--confirmed 2025-12-01"),
                    (["--batch", "1", "--begin", "--again", "--confirmed", "1 kg"], "nothing that was asked about"),
                    (["--batch-code", "never"], "no batch has the code")]:
    refused(soap, run, *words, says=says)
said = note(home, f"{root}/examples/{run}", status=1).stderr
check("copy it into a folder of your own" in said and not os.path.exists(f"{root}/examples/records.sqlite"), "a built-in example")
note(soap, "no_such.run.json", status=1)

# ---- begun long ago, with what was noted of it
old = tempfile.mkdtemp(dir=home)
shutil.copytree(soap, old, dirs_exist_ok=True)
note(old, run, "--batch", "1", "--begin", "--again", "--on", "2025-12-01", "--confirmed", "2025-12-01", "--set", "pieces.made=20")
check(values(noted(old, batch="1")) == {"pieces.made": "20"}, "the day and the notes are confirmed each")

# ---- a file of notes
write(f"{soap}/n.json", {"schema": "brimwright.notes/1", "batch_code": "2026-12-01B", "notes": {"pieces.made": 23, "topping.cup": "61 g"}})
note(soap, run, "--batch", "2", "--notes", "n.json")
check(values(noted(soap, batch="2")) == {"pieces.made": "23", "topping.cup": "61 g"}, "notes of a file")
refused(soap, run, "--batch", "1", "--notes", "n.json", says="and the batch is 2026-12-01C")
write(f"{soap}/n.json", {"schema": "brimwright.notes/1", "notes": {"base.made": "17 kg", "topping.cup": None}, "confirmed": "17 kg"})
note(soap, run, "--batch", "2", "--notes", "n.json")
check(values(noted(soap, batch="2")) == {"pieces.made": "23", "base.made": "17 kg"}, "confirmed, and one taken back")
write(f"{soap}/n.json", {"schema": "brimwright.notes/1", "notes": {"base.made": 17}})
refused(soap, run, "--batch", "2", "--notes", "n.json", says="no unit")
write(f"{soap}/n.json", {"schema": "brimwright.notes/1", "note": {}})
refused(soap, run, "--batch", "2", "--notes", "n.json", says="notes")

# ---- all of it out and in again
called(soap, "records", ".", "--export", "all.json", "--backup", "all.sqlite")
empty = tempfile.mkdtemp(dir=home)
called(empty, "records", ".", "--import", f"{soap}/all.json")
called(empty, "records", ".", "--export", "again.json")
check(open(f"{soap}/all.json").read() == open(f"{empty}/again.json").read(), "export, import, export: the same bytes")
said = called(empty, "records", ".", "--import", f"{soap}/all.json", status=1).stderr
check("is there already" in said, "nothing is imported over records")
check("is there already" in called(soap, "records", ".", "--backup", "all.sqlite", status=1).stderr, "no backup over a file")
whole = read(f"{soap}/all.json")
for spoil, says in [(lambda all: all["tables"]["batch"].clear(), "name others"), (lambda all: all["tables"].pop("lot"), "is missing"),
                    (lambda all: all["tables"]["note"][0].update(value=7), "another kind"), (lambda all: all.update(version=99), "newer"),
                    (lambda all: all["tables"]["document"][0].update(text="{}"), "hash"), (lambda all: all.update(schema="x"), "no export"),
                    (lambda all: all["tables"]["code"].append(all["tables"]["code"][0]), "cannot be so")]:
    bad = json.loads(json.dumps(whole))
    spoil(bad)
    write(f"{home}/bad.json", bad)
    fresh = tempfile.mkdtemp(dir=home)
    check(says in called(fresh, "records", ".", "--import", f"{home}/bad.json", status=1).stderr, f"{says}")
    check(os.listdir(fresh) == [], "nothing half imported")
shutil.copy(f"{soap}/records.sqlite", f"{soap}/records (conflicted copy).sqlite")
check("conflicted copy" in called(soap, "records", ".").stdout, "a conflicted copy is named")
check(json.loads(called(empty, "records", ".", "--json").stdout)["records"]["sound"], "sound")
check("no records" in called(soap, "records", home, "--export", "x.json", status=1).stderr, "none to export")

# ---- two at once, 50 times: nothing is lost
both = folder("plain_bars")
note(both, "plain_bars.run.json", "--begin")
with concurrent.futures.ThreadPoolExecutor(2) as two:
    for i in range(50):
        list(two.map(lambda key: note(both, "plain_bars.run.json", "--set", f"{key}=number {i}"), ["pieces.why", "tested_how"]))
database = sqlite3.connect(f"{both}/records.sqlite")
check(database.execute("SELECT count(*) FROM act").fetchone()[0] == 101, "every act of both is there")
check(values(noted(both, "plain_bars.run.json")) == {"pieces.why": "number 49", "tested_how": "number 49"}, "and what they noted last")

# ---- records that cannot be used
bars = ["plain_bars.run.json", "--set", "pieces.made=11"]
database.close()
# Held by another process: locks of this one end as soon as it closes the file that it compares.
holder = subprocess.Popen([sys.executable, "-c", "import sqlite3, sys; held = sqlite3.connect(sys.argv[1]); held.execute('BEGIN IMMEDIATE'); "
                           "print('held', flush=True); sys.stdin.read()", f"{both}/records.sqlite"], stdin=subprocess.PIPE, stdout=subprocess.PIPE)
holder.stdout.readline()
refused(both, *bars, says="written by another program")
holder.communicate()
good = bytes_of(both)
for spoilt, says in [(b"", "is empty"), (b"x" * 5000, "no file of records"), (good[:len(good) // 2], "damaged"),
                     (good[:60] + b"\0\0\0\x63" + good[64:], "newer brimwright"), (good[:68] + b"\0\0\0\0" + good[72:], "another program")]:
    with open(f"{both}/records.sqlite", "wb") as file:
        file.write(spoilt)
    refused(both, *bars, says=says)
with open(f"{both}/records.sqlite", "wb") as file:
    file.write(good)


def no_room():
    resource.setrlimit(resource.RLIMIT_FSIZE, (len(good), len(good)))


refused(both, "plain_bars.run.json", "--set", "pieces.why=" + "x" * 900, "--set", "tested_how=" + "x" * 900, "--set", "tested_words=" + "y" * 900,
        "--set", "held_back=" + "z" * 900, says="records.sqlite", preexec_fn=no_room)
if os.geteuid() != 0:  # to whom nothing is read-only
    os.chmod(both, 0o500)
    refused(both, *bars, says="cannot be written")
    os.chmod(both, 0o700)
note(both, *bars)

shutil.rmtree(home)
end("what happened to batches is noted, found again and lost by nothing")
