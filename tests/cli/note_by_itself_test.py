"""A run that an order beside it pours together with others is begun by itself only when she says so: two bases would lie on the scales
otherwise. An order asks as long as its base waits: not once it was begun, not after its day, and not when too little of it is left."""
import json
import os
import re
import shutil
import tempfile

from checks import check, end, read, root, run, write

folder = tempfile.mkdtemp()
os.environ["SOURCE_DATE_EPOCH"] = "1796126400"  # 2026-12-01 12:00 UTC, by coreutils' date
for name in os.listdir(f"{root}/examples"):
    if name.endswith(".json"):
        shutil.copy(f"{root}/examples/{name}", folder)
prices = read(f"{folder}/spring_cups.run.json")["money"]["prices"]
write(f"{folder}/studio.json", {"schema": "brimwright.studio/1", "currency": "EUR", "prices": prices})
RUNS = (("plain_bars", 12), ("marble_bowls", 6), ("tray_cups", 12))
ASKED = r"pours this run together with .*its base has not been begun"
records = f"{folder}/records.sqlite"


def order(file="market", lines=RUNS, word="A", **more):
    write(f"{folder}/{file}.order.json", {"schema": "brimwright.order/1", "for": file, **more,
          "lines": [{"run": f"{name}.run.json", "pieces": pieces, **({"together": word} if word else {})} for name, pieces in lines]})


def gone(file="market"):
    os.remove(f"{folder}/{file}.order.json")


def called(*words, status=0):
    result = run(*words, folder=folder)
    check(result.returncode == status, f"{words}: exit {result.returncode}\n{result.stdout}{result.stderr}")
    return result


def answer(*words):
    return json.loads(called(*words, "--json").stdout)


def begin(*words, file="plain_bars.run.json"):
    """Of that run by itself; the text of what comes of it."""
    return re.sub(r"\s+", " ", called("note", file, "--begin", "--again", *words).stdout)


def is_asked(said, *words, file="plain_bars.run.json"):
    before = open(records, "rb").read() if os.path.exists(records) else None
    result = called("note", file, "--begin", *words, status=1)
    check(result.stderr.count("\n") == 1 and re.search(said, result.stderr), f"{words}: {result.stderr}")
    check((open(records, "rb").read() if os.path.exists(records) else None) == before, f"{words}: the records changed")
    return result.stderr


# ---- asked before anything is there, and begun once she says so

order()
said = is_asked(ASKED)
check(said.startswith("market.order.json: the order for market pours this run together with Marbles in a bowl and Cups from a tray (A), and its base"), said)
check(said.rstrip().endswith("if this batch is mixed by itself, give --confirmed by-itself with it"), said)
check(not os.path.exists(records), "what was only asked about left records behind")
is_asked(f"^{folder}/market.order.json: the order for market pours", file=f"{folder}/plain_bars.run.json")
os.symlink("plain_bars.run.json", f"{folder}/link.run.json")
is_asked(ASKED, file="link.run.json")
order(lines=[("link", 12), *RUNS[1:]])
is_asked(ASKED)
order()
check("Begun: ALONE" in called("note", "plain_bars.run.json", "--begin", "--confirmed", "by-itself", "--code", "ALONE").stdout, "not begun by itself")
check(answer("note", "plain_bars.run.json")["batches"][0]["poured_from"] is None, "it was poured from a base")
is_asked("batch 1 was begun on 2026-12-01 as ALONE")
is_asked(ASKED, "--again")

# ---- runs, orders and words that have nothing to do with it

begin("--batch", "1", file="spring_cups.run.json")
order("other", RUNS[1:], "A")
gone()
begin()
order("alone", RUNS[:1], "A")
order("apart", RUNS, None)
begin()
is_asked("by-itself\" is nothing that was asked about", "--again", "--confirmed", "by-itself")
for file in ("other", "alone", "apart"):
    gone(file)

# ---- its day: on it the base may still be begun, after it nobody waits for it any more

order(due="2026-12-01")
is_asked(ASKED, "--again")
order(due="2026-11-30")
begin()
is_asked(ASKED, "--again", "--on", "2026-11-30")  # when it was begun, the order waited

# ---- several orders are named at once, and one answer is for all

order()
order("later", RUNS[:2], "L")
write(f"{folder}/plain.json", {**read(f"{folder}/later.order.json"), "for": "by another name"})
said = is_asked(r"^later.order.json: the order for later pours this run together with Marbles in a bowl \(L\), as market.order.json and plain.json would, and its base", "--again")
newest = re.search(r"Begun: (\S+),", begin("--confirmed", "by-itself"))[1]  # one answer is for all
gone("later")
os.remove(f"{folder}/plain.json")

# ---- a base asks about what was begun by itself that day; once it is begun there is nothing to ask

is_asked(f"batch 1 of \"Plain bars\" was begun on 2026-12-01 by itself, as {newest};.* --confirmed {newest}", file="market.order.json")
called("note", "market.order.json", "--begin", "--confirmed", newest)
begin()
for name, _ in RUNS:
    small = {**read(f"{folder}/{name}.run.json"), "name": f"Small {name}", "pots": {"holds": "1.5 l"}}
    small.pop("id", None)
    write(f"{folder}/small_{name}.run.json", small)
order("small", [(f"small_{name}", pieces) for name, pieces in RUNS], "S")
batches = answer("quote", "small.order.json", "--times", "1")["times"][0]["together"][0]["batches"]
takes = {line["run"]: [n for one in batches for n in one["numbers"] if line["run"] in [other["run"] for other in one["lines"]]] for one in batches for line in one["lines"]}
check(any(len(numbers) < 3 for numbers in takes.values()), f"each line is in all batches of the base: {takes}")
for number in (1, 2, 3):
    for name, _ in RUNS:
        left = [n for n in takes[f"Small {name}"] if n >= number]
        if left:
            base = "its base" if number == 1 else f"batch {left[0]} of that base"
            is_asked(f"{base} has not been begun", "--batch", "1", "--again", file=f"small_{name}.run.json")
    called("note", "small.order.json", "--begin", "--batch", str(number), "--code", f"S{number}")
for name, _ in RUNS:
    begin("--batch", "1", file=f"small_{name}.run.json")
gone("small")

# ---- of what is delivered nothing is left to pour together, and the program itself sends her to the run

order("fair", RUNS[:2], "F")
is_asked(ASKED, "--again")
batch = answer("note", "marble_bowls.run.json")["batches"][0]["begun"]["code"]
called("note", "marble_bowls.run.json", "--batch-code", batch, "--set", "pieces.made=6", "--set", "tested=pass", "--set", "ready_on=2026-12-01", "--confirmed", "2026-12-01")
called("stock", ".", "--sold", f"{batch}=6", "--order", "fair.order.json", "--confirmed", f"{batch}=6")
check("begin what is left as a batch of its run" in called("note", "fair.order.json", "--begin", status=1).stderr, "the base of one line begins")
begin()
gone("fair")

# ---- an order that cannot be read keeps nobody from mixing, and is told

order("broken", RUNS, "B", due="soon")
said = begin()
check(said.count("It is not known whether an order pours this run together with others: broken.order.json: /due") == 1, said)
gone("broken")
order("broken", RUNS, "B")
os.rename(f"{folder}/marble_bowls.run.json", f"{folder}/gone.json")  # of one that names this run a line is not there
check("It is not known whether an order" in begin(), "an order with a run that is not there")
order("broken", RUNS[1:], "B")
gone()
check("It is not known" not in begin(), "an order with a run that is not there, and without this one")
shutil.rmtree(folder)
end("a run that an order pours together is begun by itself only when she says so")
