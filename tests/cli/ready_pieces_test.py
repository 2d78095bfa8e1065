"""An order takes pieces that are made already, by its own word alone, and the rest is planned: quote, buy, days and sheet agree on how many,
no two orders count one piece twice, and what was sold to an order is not made for it again.
Batches are begun and noted by the program itself; the rest is held against the program asked for that many pieces alone."""
import datetime
import itertools
import json
import os
import shutil
import tempfile

from checks import check, end, read, root, run, write

home = tempfile.mkdtemp()
today = "2026-12-01"  # a Tuesday
bars, market = "plain_bars.run.json", "market.order.json"


def at(day):
    moment = datetime.datetime.fromisoformat(f"{day}T09:00:00+00:00")
    os.environ["SOURCE_DATE_EPOCH"] = str(int(moment.timestamp()))


def folder(name, together=False):
    made = f"{home}/{name}"
    os.mkdir(made)
    shutil.copy(f"{root}/examples/meadow_base.formula.json", made)
    formula = read(f"{made}/meadow_base.formula.json")
    write(f"{made}/meadow_base.formula.json", {**formula, "unmould_after": "24 h"})
    plain = read(f"{root}/examples/{bars}")
    plain.pop("money", None)
    write(f"{made}/{bars}", plain)
    write(f"{made}/studio.json", {
        "schema": "brimwright.studio/1", "currency": "EUR",
        "packs": {"olive": [{"holds": "1 kg", "paid": "9.00"}], "coconut": [{"holds": "1 kg", "paid": "8.00"}],
                  "rapeseed_low_erucic": [{"holds": "1 kg", "paid": "3.00"}], "cocoa_butter": [{"holds": "500 g", "paid": "9.00"}],
                  "castor": [{"holds": "250 g", "paid": "4.00"}], "NaOH": [{"holds": "1 kg", "paid": "6.00"}],
                  "sodium lactate, 60 % solution": [{"holds": "250 g", "paid": "5.00"}], "white kaolin": [{"holds": "250 g", "paid": "3.00"}],
                  "lavender essential oil": [{"holds": "100 g", "paid": "12.00"}], "green mica": [{"holds": "50 g", "paid": "4.00"}],
                  "gift box": [{"holds": "10 pieces", "paid": "6.00"}]},
        "packaging": [{"material": "gift box", "each_piece": "1 piece"}],
        "work": {"paid_an_hour": "20.00", "each_batch": "90 min", "each_piece_packed": "1 min"},
        "asking": {"retail": {"margin": "50 %"}},
        "days": {"making": {"tuesday": "6 h", "friday": "6 h"}, "pots_owned": 1, "rack_places": 500}})
    return made


def called(where, *words, status=0):
    done = run(*words, folder=where)
    check(done.returncode == status, f"{words}: exit {done.returncode}\n{done.stdout[-500:]}{done.stderr}")
    if status == 1:
        check(done.stderr.count("\n") == 1 and not done.stdout, f"{words}: more than one line: {done.stdout[:300]}{done.stderr}")
    return done.stdout if status == 0 else done.stderr


def asked(where, *words):
    return json.loads(called(where, *words, "--json") or "{}")


def begin(where, code, day, *notes, file=bars, batch="1"):
    """A batch begun on that day; what is noted of it is noted today."""
    at(day)
    words = ["note", file, "--batch", batch, "--begin", "--code", code]
    done = run(*words, folder=where)
    if done.returncode:
        done = run(*words, "--again", folder=where)
    check(done.returncode == 0, f"begin {code}: {done.stderr}")
    at(today)
    for note in notes:
        words = ["note", file, "--batch-code", code, "--set", note]
        if run(*words, folder=where).returncode:  # asked about: many, or ready before its cure ends
            called(where, *words, "--confirmed", note.split("=")[1])


def order(where, name=market, pieces=24, number=1, **more):
    write(f"{where}/{name}", {"schema": "brimwright.order/1", "id": f"6c2d2e0a-0d3a-4f0b-9a86-64b6a9f7f{number:03}",
                              "for": name.split(".")[0].capitalize(), "lines": [{"run": bars, "pieces": pieces}], **more})
    return name


def ready_of(where, name=market):
    """What quote says, after all four have said the same."""
    quote = asked(where, "quote", name)["times"][0]
    buy, days = asked(where, "buy", name), run("days", name, "--json", folder=where)
    line = quote["ready"]["lines"][0]
    check(buy["ready"][0]["lines"] == quote["ready"]["lines"], f"{name}: buy tells of other pieces")
    if line["delivered"] < line["wanted"]:
        told = json.loads(days.stdout)["asked"][0]
        check([{**one, "batches": []} for one in told["ready"]["lines"]] == [{**one, "batches": []} for one in quote["ready"]["lines"]],
              f"{name}: days tells of other pieces: {told['ready']} {quote['ready']}")
        check(sum(one["sell"] for one in told["lines"]) == line["to_make"], f"{name}: days makes others")
        check(told["pieces"] == line["to_make"] + line["taken"], f"{name}: days packs others")
    check(sum(one["sell"] for one in buy["runs"]) == line["to_make"], f"{name}: buy is for others")
    # The law: what is with the customer, what is taken and what is made are the order.
    check(min(line["delivered"], line["wanted"]) + line["taken"] + line["to_make"] == line["wanted"], f"{name}: {line}")
    check(sum(one["pieces"] for one in line["batches"]) == line["taken"], f"{name}: batches do not add up")
    sheet = called(where, "sheet", name)
    check((line["text"] in sheet.replace("&quot;", '"')) == bool(line["text"]) or not line["text"], f"{name}: the sheet does not say it")
    check(line["text"] in called(where, "quote", name).replace("\n  ", " "), f"{name}: quote does not say it")
    check(line["text"] in called(where, "buy", name).replace("\n    ", " ").replace("\n  ", " "), f"{name}: buy does not say it")
    for kind in ("quote", "buy"):
        called(where, kind, name, "--csv", f"{name}.{kind}.csv")
        with open(f"{where}/{name}.{kind}.csv") as file:
            check(line["text"] in file.read().replace('""', '"'), f"{name}: the {kind}'s table does not say it")
    return line


def notes_of(where, name=market):
    return " ".join(one["text"] for one in asked(where, "quote", name)["times"][0]["ready"]["notes"])


at(today)
soap = folder("soap")

# ---- without records, and without the word, all is planned as ever

order(soap)
plain = asked(soap, "quote", market)
order(soap, ready="take")
taken = asked(soap, "quote", market)
check(taken["times"][0]["cost"] == plain["times"][0]["cost"] and taken["times"][0]["cash"] == plain["times"][0]["cash"], "no records, another plan")
check("nothing is recorded" in notes_of(soap) and not os.path.exists(f"{soap}/records.sqlite"), "no records: not said, or made")

# ---- a batch of 13, one of it rejected: tested and ready it is taken, before that it is told of

for name, price in (("olive oil", "20"), ("coconut", "10")):
    called(soap, "stock", ".", "--bought", name, "--pack", "5 kg", "--price", price, "--on", "2026-10-01", "--lot", name[:2].upper())
begin(soap, "A1", "2026-10-20", "pieces.made=13", "pieces.rejected=1")
check(ready_of(soap)["taken"] == 0 and "12 of A1 (has no test result)" in notes_of(soap), f"untested: {notes_of(soap)}")
called(soap, "note", bars, "--batch-code", "A1", "--set", "tested=hold")
check(ready_of(soap)["taken"] == 0 and "on hold" in notes_of(soap), "on hold")
called(soap, "note", bars, "--batch-code", "A1", "--set", "tested=pass", "--set", "held_back=soft")
check(ready_of(soap)["taken"] == 0 and "held back: soft" in notes_of(soap), "held back")
called(soap, "note", bars, "--batch-code", "A1", "--set", "held_back=")
called(soap, "note", bars, "--batch-code", "A1", "--set", "ready_on=2026-11-25")
line = ready_of(soap)
check(line["text"] == "Plain bars: 12 of 24 stand ready (batch A1), 12 to make.", line["text"])

# the rest is a run of 12; 24 boxes go round all of it
rest, alone = asked(soap, "quote", market)["times"][0], asked(soap, "quote", bars, "--sell", "12")["numbers"][0]
check(rest["rest"]["cost"] == alone["cost"] and rest["rest"]["lines"][0]["make"] == alone["make"], "the rest costs what a run of it does")
check(rest["cost"] == plain["times"][0]["cost"] and rest["prices"] == plain["times"][0]["prices"], "a price goes by what is on the rack")
buy, run_of_12 = asked(soap, "buy", market), asked(soap, "buy", bars)
used = lambda answer: {one["material"]: one.get("used_g", one.get("used_pieces")) for one in answer["materials"]}
check(read(f"{soap}/{bars}")["sell"] == 12 and used(buy) == {**used(run_of_12), "gift box": 24}, f"{used(buy)} {used(run_of_12)}")
check(rest["cash"]["total"] == buy["total"], "quote lays out another sum than buy")
# 12 good pieces carry the whole batch: what the trail says it did cost.
trail = json.loads(called(soap, "trail", ".", "A1", "--json"))["batches"][0]["cost"]
check(rest["ready"]["cost"] == trail and trail["materials"], f"{rest['ready']['cost']} {trail}")
text = called(soap, "quote", market)
check("WHAT IS MADE ALREADY DID COST, materials by their lots" in text and "WHAT IS LEFT TO MAKE COSTS" in text and "all made anew" in text, text)
check(max(map(len, text.splitlines())) <= 80, "wider than a terminal")

# left, it is as if it were not there, and that is said
order(soap, ready="leave")
left = asked(soap, "quote", market)["times"][0]
check(left["rest"]["cost"] == left["cost"] == plain["times"][0]["cost"] and left["cash"]["total"] == plain["times"][0]["cash"]["total"] or
      left["rest"]["lines"] == left["lines"], "left, another plan")
check(left["rest"]["lines"] == left["lines"], "left, the rest is not the order")
check('12 pieces that are made already (batch A1) are not taken' in notes_of(soap), notes_of(soap))
order(soap)
check(ready_of(soap)["taken"] == 0 and "are not taken" in notes_of(soap), "taken without a word")
order(soap, ready="leave", lines=[{"run": bars, "pieces": 24, "ready": "take"}])
check(ready_of(soap)["taken"] == 12, "a line's own word")
order(soap, ready="take", lines=[{"run": bars, "pieces": 24, "ready": "leave"}])
check(ready_of(soap)["taken"] == 0, "a line's own word against the order's")

# ---- more is ready than wanted; all is ready: nothing to make, packed today, promised for tomorrow

order(soap, pieces=5, ready="take")
check(ready_of(soap)["text"] == "Plain bars: 5 of 5 stand ready (batch A1), nothing to make.", ready_of(soap)["text"])
order(soap, pieces=1, ready="take")
check(ready_of(soap)["text"] == "Plain bars: 1 of 1 stands ready (batch A1), nothing to make.", ready_of(soap)["text"])
order(soap, pieces=12, ready="take")
days = asked(soap, "days", market)
check(days["promise"] == "2026-12-02" and days["promise_proved"] and not days["batches"], f"{days['promise']} {days['batches']}")
acts = [act["text"] for day in days["days"] for act in day["acts"]]
check("Pack 12 pieces for Market, all made already (Plain bars, batch A1)" in acts, str(acts))
check(asked(soap, "quote", market)["times"][0]["rest"] is None, "nothing to make, and a rest")
buy = asked(soap, "buy", market)
check(not buy["runs"] and [one["material"] for one in buy["materials"]] == ["gift box"], f"boxes alone: {buy['materials']}")
for ending in ("ics", "csv", "svg"):
    called(soap, "days", market, f"--{ending}", f"out.{ending}")
called(soap, "days", market)
called(soap, "sheet", market, "--days", "--html", "all.html")

# ---- no piece is counted twice, whoever asks first; who is due earlier comes first

names = [order(soap, f"{name}.order.json", pieces, number, ready="take", **due) for number, (name, pieces, due) in enumerate(
    [("late", 8, {"due": "2027-02-20"}), ("soon", 7, {"due": "2027-01-20"}), ("never", 9, {})], 2)]
os.remove(f"{soap}/{market}")
for some in itertools.permutations(names):
    lines = {name: ready_of(soap, name) for name in some}
    check([lines[name]["taken"] for name in names] == [5, 7, 0], f"{[lines[name]['taken'] for name in names]}")
check("7 of A1 (go to Soon)" in notes_of(soap, "late.order.json"), notes_of(soap, "late.order.json"))
both = asked(soap, "buy", "late.order.json", "soon.order.json")
check([one["sell"] for one in both["runs"]] == [3], "bought together, counted twice")
write(f"{soap}/torn.order.json", {"schema": "brimwright.order/1", "lines": 3})
check("torn.order.json cannot be read" in notes_of(soap, "late.order.json"), "a torn order is passed over silently")
os.remove(f"{soap}/torn.order.json")
copy = read(f"{soap}/soon.order.json")
write(f"{soap}/copy.order.json", copy)
check("is the id of" in called(soap, "quote", "soon.order.json", status=1), "two orders of one id")
os.remove(f"{soap}/copy.order.json")

# ---- what is sold to it is delivered: not made again, not promised to another

called(soap, "stock", ".", "--sold", "A1=7", "--order", "soon.order.json")
line = ready_of(soap, "soon.order.json")
check(line["text"] == "Plain bars: 7 of 7 are delivered, nothing to make.", line["text"])
check("is delivered whole" in called(soap, "days", "soon.order.json", status=1), "days of what is delivered")
check(ready_of(soap, "late.order.json")["taken"] == 5, "delivered, and taken once more")
called(soap, "stock", ".", "--sold", "A1=2", "--order", "late.order.json")
line = ready_of(soap, "late.order.json")
check(line["text"] == "Plain bars: 2 of 8 are delivered, 3 stand ready (batch A1), 3 to make.", line["text"])
order(soap, "late.order.json", 8, 2, ready="leave", due="2027-02-20")
check(ready_of(soap, "late.order.json")["to_make"] == 6, "delivered counts without the word too")
called(soap, "stock", ".", "--given", "A1=1", "--order", "late.order.json")
check("1 piece given away for this order" in notes_of(soap, "late.order.json"), "given away")

# ---- ready by the due day: what cures yet, and the later of cure and note

cure = folder("cure")
begin(cure, "B1", "2026-11-10", "pieces.made=12", "tested=pass", "ready_on=2026-12-05")
order(cure, ready="take")
check(ready_of(cure)["taken"] == 0 and "12 of B1 (ready on 2026-12-15 only)" in notes_of(cure), notes_of(cure))  # 11-10 and 35 days
order(cure, ready="take", due="2027-01-20")
line = ready_of(cure)
check(line["text"] == "Plain bars: 12 of 24 will be ready on 2026-12-15 (batch B1), 12 to make.", line["text"])
# Packing 24 pieces takes 24 min, on the last making day before: due on Tuesday 12-15 or Friday 12-18 that is before, or on, 12-15.
for due, pieces in (("2026-12-15", 0), ("2026-12-16", 12), ("2026-12-18", 12)):
    order(cure, pieces=12, ready="take", due=due)
    line = asked(cure, "quote", market)["times"][0]["ready"]["lines"][0]
    check(line["taken"] == pieces, f"due {due}: {line}")
days = asked(cure, "days", market)
check(days["kept"] and days["latest_start"] == "2026-12-15", f"packed on the day it is ready: {days['latest_start']}")

# ---- what was made otherwise is told of, and taken by its name alone

order(cure, ready="take", due="2027-01-20")
formula = read(f"{cure}/meadow_base.formula.json")
write(f"{cure}/meadow_base.formula.json", {**formula, "note": "another note", "measured_density": "1.03 g/ml", "cure": "40 days"})
check(ready_of(cure)["taken"] == 12, "a note, a measure and a cure make no other soap")
write(f"{cure}/{bars}", {**read(f"{cure}/{bars}"), "sell": 40, "name": "Bars"})
check(ready_of(cure)["taken"] == 12, "a name and a number make no other soap")
write(f"{cure}/{bars}", {**read(f"{cure}/{bars}"), "sell": 12, "name": "Plain bars"})
for change in ({"superfat": "7 %"}, {"fragrances": []}, {"colours": []}):
    write(f"{cure}/meadow_base.formula.json", {**formula, **change})
    check(ready_of(cure)["taken"] == 0 and "made by another meadow_base.formula.json than today's" in notes_of(cure), f"{change}: {notes_of(cure)}")
order(cure, due="2027-01-20", lines=[{"run": bars, "pieces": 24, "ready": ["B1"]}])
check(ready_of(cure)["taken"] == 12 and "are taken as the order names that batch" in notes_of(cure), notes_of(cure))
write(f"{cure}/meadow_base.formula.json", formula)
for change in ({"mould": "moulds/long_oval_bar.json"}, {"line": {"below_brim": "4 mm"}}):
    plain_bars = read(f"{cure}/{bars}")
    write(f"{cure}/{bars}", {**plain_bars, "pour": {**plain_bars["pour"], **change}})
    order(cure, ready="take", due="2027-01-20")
    check(ready_of(cure)["taken"] == 0 and "made by another" in notes_of(cure), f"{change}: {notes_of(cure)}")
    write(f"{cure}/{bars}", plain_bars)

# ---- what is wrong is one line, exit 1

for ready, says in (("yes", "/ready"), (["B9"], '"B9" is no batch in the records'), ([], "names no batch"), (3, "/lines/0/ready")):
    order(cure, lines=[{"run": bars, "pieces": 24, "ready": ready}])
    for command in ("quote", "buy", "days", "sheet"):
        said = called(cure, command, market, status=1)
        check(says in said and market in said, f"{command} {ready}: {said}")
order(cure, ready=["B1"])
check("/ready" in called(cure, "quote", market, status=1), "batches for all lines")
write(f"{cure}/other.run.json", {**read(f"{cure}/{bars}"), "id": "6c2d2e0a-0d3a-4f0b-9a86-64b6a9f7f999", "name": "Other"})
order(cure, lines=[{"run": "other.run.json", "pieces": 24, "ready": ["B1"]}])
check("which is another run" in called(cure, "quote", market, status=1), "a batch of another run")
order(cure, lines=[{"run": "other.run.json", "pieces": 24}], ready="take")
check(ready_of(cure)["taken"] == 0, "pieces of another run")

# ---- laws, over all numbers that stand ready

laws = folder("laws")
begin(laws, "C1", "2026-10-20", "pieces.made=30", "tested=pass", "ready_on=2026-11-25")
order(laws, pieces=26, ready="take")
before = None
for there in range(0, 31, 3):
    called(laws, "stock", ".", "--counted-pieces", f"C1={there}")
    line = ready_of(laws)
    check(line["taken"] == min(there, 26), f"{there} there: {line}")
    rest = asked(laws, "quote", market)["times"][0]["rest"]
    now = (float(rest["cost"]) if rest else 0.0, asked(laws, "days", market)["promise"])
    check(before is None or (now[0] <= before[0] and now[1] <= before[1]), f"{there} ready cost more or end later: {now} {before}")
    before = now

# ---- the same of toppings, embeds, a loaf and lines poured together: the rest costs no more than the whole, and ends no later

def priced(name, *runs):
    """A folder with the examples, and a price for all that is used by these of them."""
    made = f"{home}/{name}"
    os.mkdir(made)
    for file in os.listdir(f"{root}/examples"):
        if file.endswith(".json"):
            shutil.copy(f"{root}/examples/{file}", made)
    write(f"{made}/oval.run.json", {**(plain := read(f"{made}/{bars}")), "id": "6c2d2e0a-0d3a-4f0b-9a86-64b6a9f7f998", "name": "Oval bars",
                                    "pour": {**plain["pour"], "mould": "moulds/long_oval_bar.json"}})
    studio = {**read(f"{soap}/studio.json"), "packs": {}}
    studio.pop("packaging")
    write(f"{made}/studio.json", studio)
    used = [one for run_file in runs for one in asked(made, "buy", run_file)["materials"] if one["material"] != "water"]
    write(f"{made}/studio.json", {**studio, "packs": {
        one["material"]: [{"holds": "10 pieces" if "used_pieces" in one else "1 kg", "paid": "15.00"}] for one in used}})
    return made


def of_rest(where):
    times, days = asked(where, "quote", market)["times"][0], asked(where, "days", market)
    check(not times["unpriced"] and float(times["cost"]) > 0, f"{where}: something has no price: {times['unpriced']}")
    lines = times["ready"]["lines"]
    check(all(one["taken"] + one["to_make"] == one["wanted"] for one in lines), f"{where}: {lines}")
    return (float(times["rest"]["cost"]) if times["rest"] else 0.0, days["promise"]), lines


for run_file, pieces in (("spring_cups.run.json", 20), ("marble_bowls.run.json", 12), ("tilted_loaf.run.json", 20), ("tray_cups.run.json", 20)):
    where = priced(run_file.split(".")[0], run_file)
    begin(where, "L1", "2026-10-01", "pieces.made=24", "tested=pass", "ready_on=2026-11-25", file=run_file)
    order(where, ready="take", lines=[{"run": run_file, "pieces": pieces}])
    whole = None
    for there in (0, pieces // 3, pieces - 1):
        called(where, "stock", ".", "--counted-pieces", f"L1={there}")
        now, (line,) = of_rest(where)
        whole = whole or now
        check(now[0] <= whole[0] and now[1] <= whole[1], f"{run_file}, {there} ready: the rest is dearer or later than the whole: {now} {whole}")
        # As many are taken as leave a rest that the program makes of that run alone.
        fewest = next((rest for rest in range(pieces - there, pieces + 1)
                       if rest == 0 or run("plan", run_file, "--sell", str(rest), folder=where).returncode == 0), None)
        check(line["to_make"] == fewest, f"{run_file}, {there} ready: {line['to_make']} are made, and {fewest} can be")
        check(("are left, as just" in notes_of(where)) == (fewest > pieces - there), f"{run_file}, {there} ready: {notes_of(where)}")
        if fewest > pieces - there:
            left_some = run_file
            check(f"{fewest - pieces + there} more of those that are ready are left, as just {pieces - there} cannot be made" in notes_of(where),
                  notes_of(where))
check(left_some == "spring_cups.run.json", "no rest was too small to be made")

where = priced("poured", bars, "oval.run.json")
for run_file, batch in ((bars, "M1"), ("oval.run.json", "M2")):
    begin(where, batch, "2026-10-01", "pieces.made=24", "tested=pass", "ready_on=2026-11-25", file=run_file)
order(where, ready="take", lines=[{"run": one, "pieces": 12, "together": "base"} for one in (bars, "oval.run.json")])
whole = None
for there in ((0, 0), (4, 0), (4, 7), (12, 3), (11, 11)):
    called(where, "stock", ".", *(word for batch, count in zip(("M1", "M2"), there) for word in ("--counted-pieces", f"{batch}={count}")))
    now, lines = of_rest(where)
    check(tuple(one["taken"] for one in lines) == there, f"poured together, {there} ready: {lines}")
    whole = whole or now
    check(now[0] <= whole[0] and now[1] <= whole[1], f"poured together, {there} ready: {now} {whole}")

shutil.rmtree(home)
end("ready pieces go to orders, each once, and the rest is planned")
