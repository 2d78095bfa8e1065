"""Two processes begin at once: the same base, or a base and the run of one of its lines. One of them does, whole, and the other is told
in one line which batch was begun; what is meant so is begun all the same."""
import os
import re
import shutil
import sqlite3
import subprocess
import tempfile

from checks import check, end, program, read, root, run, write

folder = tempfile.mkdtemp()
os.environ["SOURCE_DATE_EPOCH"] = "1796126400"  # 2026-12-01 12:00 UTC, by coreutils' date
bars, small, order = "plain_bars.run.json", "small_bars.run.json", "market.order.json"
for name in (bars, "meadow_base.formula.json"):
    shutil.copy(f"{root}/examples/{name}", folder)
write(f"{folder}/{small}", {**read(f"{folder}/{bars}"), "name": "Small bars", "id": "ae2be28d-6a66-444b-988a-bedfae4b3429"})
write(f"{folder}/{order}", {"schema": "brimwright.order/1", "id": "6c2d2e0a-0d3a-4f0b-9a86-64b6a9f7f001", "for": "a market",
                            "lines": [{"run": name, "pieces": 6, "together": "A"} for name in (bars, small)]})
records = f"{folder}/records.sqlite"


def number_of(table):
    with sqlite3.connect(f"file:{records}", uri=True) as database:
        found = database.execute(f"SELECT count(*) FROM {table}").fetchone()[0]
    database.close()
    return found


def begin(file):
    """A run by itself though the order pours it together with others, since that is what she says."""
    return ["note", file, "--begin", *(["--confirmed", "by-itself"] if file != order else [])]


def race(*files):
    """Both at once, into records that are there or not yet: which of the files was begun."""
    writers = [subprocess.Popen([program, *begin(file)], cwd=folder, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True) for file in files]
    told = [writer.communicate() for writer in writers]
    done = [file for file, writer in zip(files, writers) if writer.returncode == 0]
    check(sorted(writer.returncode for writer in writers) == [0, 1], f"{files}: {told}")
    for writer, (out, complaint) in zip(writers, told):
        if writer.returncode == 1:
            check(not out and complaint.count("\n") == 1 and re.search(r"was begun on 2026-12-01 .*as 2026-12-01A", complaint), f"{files}: {complaint}")
    check(number_of("act WHERE what = 'begin'") == 1, f"{files}: begun twice")
    check((number_of("batch"), number_of("poured_from")) == ((3, 2) if done == [order] else (1, 0)), f"{files}: half begun")
    return done


for files in ((order, order), (order, bars), (small, order)):
    for has_records in (False, True, False):
        if os.path.exists(records):
            os.remove(records)
        if has_records:
            check(run("stock", ".", "--bought", "olive oil", "--pack", "5 kg", "--on", "2026-11-01", folder=folder).returncode == 0, "no lot")
        race(*files)

# ---- a line that was begun on its own that day, and is meant to be made once more; on another day nobody asks

os.remove(records)
check(run(*begin(small), folder=folder).returncode == 0, "a line does not begin on its own")
refused = run("note", order, "--begin", folder=folder)
check(refused.returncode == 1 and "--confirmed 2026-12-01A" in refused.stderr and "Small bars" in refused.stderr, refused.stderr)
check((number_of("batch"), number_of("act")) == (1, 1), "half of the base is begun")
check(run("note", order, "--begin", "--confirmed", "2026-12-01A", folder=folder).returncode == 0, "what is meant is not begun")
check((number_of("batch"), number_of("poured_from")) == (4, 2), "a base with its lines, and what was begun alone")
os.remove(records)
check(run(*begin(small), "--on", "2026-11-30", folder=folder).returncode == 0, "no line the day before")
check(run("note", order, "--begin", folder=folder).returncode == 0, "asked about another day")
shutil.rmtree(folder)
end("of two that begin the same at once one does, and the other is told")
