"""A process that notes is killed at random moments: what it had acknowledged is there afterwards, no half act is, and the
file is sound. 200 times; more by hand: records_kill_test.py ROOT PROGRAM --kills 2000 [--seed N]."""
import os
import random
import shutil
import signal
import sqlite3
import subprocess
import sys
import tempfile
import time

from checks import check, end, program, root

arguments = dict(zip(sys.argv[3::2], sys.argv[4::2]))
kills, seed = int(arguments.get("--kills", 200)), int(arguments.get("--seed", 1))
chance = random.Random(seed)
folder = tempfile.mkdtemp()
for name in os.listdir(f"{root}/examples"):
    if name.endswith(".json"):
        shutil.copy(f"{root}/examples/{name}", folder)
run, file = "plain_bars.run.json", f"{folder}/records.sqlite"
keys = ["pieces.why", "tested_how", "tested_words", "held_back"]


def noting(number):
    """Four values at once, the same number in each: an act that is whole or is not."""
    words = [word for key in keys for word in ("--set", f"{key}=act {number} " + "x" * (number % 700))]
    return subprocess.Popen([program, "note", run, *words], cwd=folder, stdout=subprocess.PIPE, stderr=subprocess.PIPE)


subprocess.run([program, "note", run, "--begin"], cwd=folder, check=True, capture_output=True)
begun = time.monotonic()
noting(0).communicate()
took = time.monotonic() - begun
acknowledged, killed, number = 0, 0, 0
while killed < kills:
    number += 1
    writer = noting(number)
    time.sleep(chance.random() * took * 1.3)
    writer.send_signal(signal.SIGKILL)
    out = writer.communicate()[0]
    killed += writer.returncode == -signal.SIGKILL
    if out.startswith(b"Noted"):
        acknowledged = number
    # The program's own eyes, now and then: it opens what the kill left, and takes back what was half done.
    if number % 10 == 0:
        done = subprocess.run([program, "records", "."], cwd=folder, capture_output=True, text=True)
        check(done.returncode == 0 and "sound" in done.stdout, f"act {number}: {done.stderr}")
    with sqlite3.connect(f"file:{file}", uri=True) as database:
        there = {value.split()[1] for (value,) in database.execute("SELECT value FROM note")}
        rows = database.execute("SELECT count(*) FROM note").fetchone()[0]
        check(database.execute("PRAGMA quick_check").fetchone()[0] == "ok", f"act {number}: the file is damaged")
    database.close()
    check(len(there) == 1 and rows == len(keys), f"act {number}: half of it is there: {there}, {rows} rows")
    check(acknowledged <= int(min(there)) <= number, f"act {number}: {there} is there, {acknowledged} was acknowledged")
check(acknowledged > 0, "none was acknowledged")
shutil.rmtree(folder)
end(f"{killed} writers killed, seed {seed}: nothing acknowledged was lost, nothing half done is there")
