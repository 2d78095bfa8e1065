"""Lines of an order that are poured together begin as a whole: the base is a batch of its own, which takes the lots of the base, and each
line has a batch that is poured from it, with its pieces. What is in the base is found in the pieces of each line."""
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
records = f"{folder}/records.sqlite"


def order(lines=RUNS, word="A"):
    return {"schema": "brimwright.order/1", "for": "a market",
            "lines": [{"run": f"{name}.run.json", "pieces": pieces, **({"together": word} if word else {})} for name, pieces in lines]}


def called(*words, status=0):
    result = run(*words, folder=folder)
    check(result.returncode == status, f"{words}: exit {result.returncode}\n{result.stdout}{result.stderr}")
    return result


def answer(*words):
    return json.loads(called(*words, "--json").stdout)


def refused(said, *words):
    before = open(records, "rb").read() if os.path.exists(records) else None
    result = called(*words, status=1)
    check(result.stderr.count("\n") == 1 and re.search(said, result.stderr), f"{words}: {result.stderr}")
    check((open(records, "rb").read() if os.path.exists(records) else None) == before, f"{words}: the records changed")


def left(code):
    return next(one["left"]["g"] for material in answer("stock", ".")["materials"] for one in material["lots"] if one["lot"] == code)


write(f"{folder}/market.order.json", order())
write(f"{folder}/apart.order.json", order(word=None))

# ---- what cannot be begun so

refused("no lines are poured together", "note", "apart.order.json", "--begin")
refused("is of an order, and this is a run", "note", "plain_bars.run.json", "--begin", "--together", "A")
refused("is no word that lines of this order share", "note", "market.order.json", "--begin", "--together", "B")
refused("there is no batch 2 in this run", "note", "market.order.json", "--begin", "--batch", "2")

# ---- begun as a whole: the base, and a batch of each line

for material, code, pack in (("olive oil", "OL-1", "5 kg"), ("NaOH 99 %", "N-1", "1 kg")):
    called("stock", ".", "--bought", material, "--pack", pack, "--lot", code, "--on", "2026-11-01", "--price", "20 EUR")
group = answer("quote", "market.order.json", "--times", "1")["times"][0]["together"][0]
(batch,) = group["batches"]
weighed = {row["name"]: row["g"] for vessel in batch["weigh_out"] for row in vessel["rows"]}
alkali = sum(grams for name, grams in weighed.items() if name.startswith("NaOH"))
refused("\"argan\" is nothing that this batch weighs", "note", "market.order.json", "--begin", "--lot", "argan=X-1")
said = re.sub(r"\s+", " ", called("note", "market.order.json", "--begin").stdout)
check("Begun: 2026-12-01A, batch 1 of 1 of \"Meadow base, poured together (A)\"" in said, said)
for place, (name, pieces) in enumerate((("Plain bars", 12), ("Marbles in a bowl", 6), ("Cups from a tray", 12)), 1):
    check(f"Poured from it: 2026-12-01A-{place}, batch 1 of 1" in said or f"2026-12-01A-{place}, batch 1 of \"{name}\", {pieces} pieces" in said, said)
check(abs(left("OL-1") - (5000 - weighed["Olive oil"])) < 1e-6 and abs(left("N-1") - (1000 - alkali)) < 1e-6, "the base is taken once")
refused("was begun on 2026-12-01 as 2026-12-01A", "note", "market.order.json", "--begin")

# ---- each has its own blanks, and no line's part of the base is weighed

base = answer("note", "market.order.json", "--batch", "1")["batches"][0]
check([line["code"] for line in base["lines"]] == [f"2026-12-01A-{i}" for i in (1, 2, 3)], base["lines"])
check(base["poured_from"] is None and not base["for_sale"] and base["begun"]["pieces"] == 0, "a base has no pieces")
check({blank["key"].split(".")[0] for blank in base["blanks"]} == {"base"}, "blanks of the base")
keys = {row["key"] for row in base["rows"]}
check("weighed.pour.fats.olive" in keys and "weighed.pour.lye.naoh" in keys, sorted(keys))
for name, pieces in RUNS:
    (line,) = answer("note", f"{name}.run.json")["batches"]
    check(line["poured_from"] == "2026-12-01A" and line["lines"] == [] and line["begun"]["pieces"] == pieces, f"{name}: {line['begun']}")
    check(not any(blank["key"].startswith("base.") for blank in line["blanks"]), f"{name} has blanks of the base")
    check(any(blank["key"] == "pieces.made" for blank in line["blanks"]), f"{name} has no pieces to note")
    check(not any(row["key"].startswith(("weighed.pour.fats", "weighed.pour.lye")) for row in line["rows"]), f"{name} weighs the base")
text = called("note", "market.order.json").stdout
check("Poured from it: 2026-12-01A-1 of Plain bars, 12 pieces" in re.sub(r"\s+", " ", text) and "Not for sale" not in text, text)
check("12 pieces, poured from 2026-12-01A" in re.sub(r"\s+", " ", called("note", "plain_bars.run.json").stdout), "the line does not tell its base")
called("note", "market.order.json", "--batch", "1", "--set", "base.made=2200 g", "--confirmed", "2200 g")
refused("pieces.made", "note", "market.order.json", "--batch", "1", "--set", "pieces.made=12")
refused("base.made", "note", "plain_bars.run.json", "--batch", "1", "--set", "base.made=700 g")
called("note", "plain_bars.run.json", "--batch", "1", "--set", "pieces.made=12", "--set", "pieces.rejected=1")

# ---- sheets carry the codes

sheet = re.sub(r"\s+", " ", re.sub(r"<[^>]*>", " ", re.sub(r"<style.*?</style>", "", called("sheet", "market.order.json").stdout, flags=re.S)))
for code in ("2026-12-01A,", "2026-12-01A-1", "2026-12-01A-2", "2026-12-01A-3"):
    check(code in sheet, f"{code} is not on the sheet")

# ---- from a lot to the pieces of each line, and back; what each did cost

trail = answer("trail", ".", "OL-1")
check([one["batch"] for one in trail["batches"]] == ["2026-12-01A"] + [f"2026-12-01A-{i}" for i in (1, 2, 3)], [one["batch"] for one in trail["batches"]])
check(trail["batches"][0]["lines"] == [f"2026-12-01A-{i}" for i in (1, 2, 3)], "the base does not tell its lines")
shares = {one["batch"]: one["poured_from"]["share_percent"] for one in trail["batches"][1:]}
for line, (place, share) in zip(batch["lines"], sorted(shares.items())):
    check(abs(line["share_percent"] - share) < 2e-4, f"{place}: {share} %, planned {line['share_percent']} %")
check(abs(sum(shares.values()) - 100) < 1e-3, "the parts are not the whole")
back = answer("trail", ".", "2026-12-01A-1")
check({one["lot"] for one in back["lots"]} >= {"OL-1", "N-1"}, "the lots of the base are not told of a line")
check([one["batch"] for one in back["batches"]] == ["2026-12-01A", "2026-12-01A-1"], [one["batch"] for one in back["batches"]])
whole, part = (float(one["cost"]["materials"][0]["amount"]) for one in back["batches"])
check(abs(part - whole * shares["2026-12-01A-1"] / 100) <= 0.01, f"{part} of {whole}, {shares['2026-12-01A-1']} %")
check("poured from 2026-12-01A, of which it is" in re.sub(r"\s+", " ", called("trail", ".", "2026-12-01A-1").stdout), "the trail's words")

# ---- pieces are the lines': a base has none to sell

check({one["batch"] for one in answer("stock", ".")["pieces"]} == {f"2026-12-01A-{i}" for i in (1, 2, 3)}, "a base is on the shelf")
refused("is a base, and has no pieces of its own.*2026-12-01A-1, 2026-12-01A-2, 2026-12-01A-3", "stock", ".", "--sold", "2026-12-01A=1", "--for", "a friend")

# ---- another making; what was weighed otherwise, and more lye, of the base

said = called("note", "market.order.json", "--begin", "--again", "--code", "KO-7").stdout
check("KO-7-1" in said and "KO-7-3" in said, said)
there = left("OL-1")
called("note", "market.order.json", "--batch-code", "KO-7", "--set", f"weighed.pour.fats.olive={weighed['Olive oil'] + 10:g} g")
check(abs(left("OL-1") - (there - 10)) < 1e-6, "the lot of the base has 10 g less")
grams = next(row["planned"] for row in answer("note", "market.order.json", "--batch-code", "KO-7")["batches"][0]["rows"] if row["role"] == "alkali")
more = f"{float(grams.split()[0]) * 1.2:.1f} g"
refused("LYE-HEAVY", "note", "market.order.json", "--batch-code", "KO-7", "--set", f"weighed.pour.lye.naoh={more}")
said = called("note", "market.order.json", "--batch-code", "KO-7", "--set", f"weighed.pour.lye.naoh={more}", "--confirmed", "lye-heavy").stdout
check("!! LYE-HEAVY" in said and "superfat -" in said, said)

# ---- several batches of the base: each line counts those that it takes part in

for name, _ in RUNS:
    small = {**read(f"{folder}/{name}.run.json"), "name": f"Small {name}", "pots": {"holds": "1.5 l"}}
    small.pop("id", None)
    write(f"{folder}/small_{name}.run.json", small)
write(f"{folder}/small.order.json", order([(f"small_{name}", pieces) for name, pieces in RUNS], "S"))
small = answer("quote", "small.order.json", "--times", "1")["times"][0]["together"][0]
refused("is missing: the run is made in 3 batches", "note", "small.order.json", "--begin")
made = {}
for number in (1, 2, 3):
    called("note", "small.order.json", "--begin", "--batch", str(number), "--code", f"S{number}")
    planned = next(one for one in small["batches"] if number in one["numbers"])
    its = answer("note", "small.order.json", "--batch", str(number))["batches"][0]["lines"]
    check([(line["run"], line["pieces"]) for line in its] == [(line["run"], line["pieces"]) for line in planned["lines"]], f"batch {number}: {its}")
    for line in its:
        made.setdefault(line["file"], []).append(line["number"])
        check(line["pieces"] > 0, f"{line} makes nothing")
check(all(numbers == list(range(1, len(numbers) + 1)) for numbers in made.values()), f"numbers of the lines: {made}")
for name, pieces in RUNS:
    its = answer("note", f"small_{name}.run.json")["batches"]
    check(sum(one["begun"]["pieces"] for one in its) == pieces, f"{name}: {sum(one['begun']['pieces'] for one in its)} of {pieces} pieces")

# ---- a code reserved for its sheet; all of it goes out and comes in again

write(f"{folder}/later.order.json", order(word="L"))
called("note", "later.order.json", "--reserve", "--code", "LATER")
sheet = called("sheet", "later.order.json").stdout
check("LATER" in sheet, "a reserved code is not on the sheet")
check("Begun: LATER" in called("note", "later.order.json", "--begin").stdout, "the reserved code is not taken")
# ---- what the bases say is learned once each, by their own notes; a line tells nothing of its base

called("note", "market.order.json", "--begin", "--again", "--code", "KO-8", "--lot", "NaOH=unknown")  # KO-7 was not weighed as planned
for code, grams in (("2026-12-01A", "102.0"), ("KO-8", "103.0"), ("LATER", "104.0")):
    file = "later.order.json" if code == "LATER" else "market.order.json"
    called("note", file, "--batch-code", code, "--set", "base.cup_holds=100 ml", "--set", f"base.cup={grams} g", "--set", "base.in_pot=21 g")
learned = answer("learn", "plain_bars.run.json")
figures = {one["name"]: one for one in learned["figures"]}
density = figures["density"]
check([one["batch"] for one in density["values"]] == ["2026-12-01A", "KO-8", "LATER"], f"the density is told by {density['values']}")
check(abs(density["value"] - 1.03) < 1e-9, f"1.02, 1.03 and 1.04 g/ml: {density['value']}")  # 102, 103 and 104 g in 100 ml
check(len(figures["pot"]["values"]) == 3 and figures["pot"]["value"] == 21, "what stays in the pot")
untold = {one["name"]: one["batches"] for one in learned["untold"]}
check(untold["pot"] == 4, f"of KO-7, S1, S2 and S3 alone, and of no line, it is not known what stayed in the pot: {untold}")

called("records", ".", "--export", "out.json")
other = tempfile.mkdtemp()
called("records", other, "--import", f"{folder}/out.json")
called("records", other, "--export", f"{other}/again.json")
check(open(f"{folder}/out.json").read() == open(f"{other}/again.json").read(), "export and import are not the identity")
shutil.rmtree(folder)
shutil.rmtree(other)
end("lines poured together begin as a whole, and what is in their base is found in the pieces of each")
