"""Lines of an order that are poured together: the shared base is weighed, quoted, bought for and printed once; its cost is shared to the
coin by what each line takes of it; and what cannot be one base is refused in one line."""
import json
import os
import re
import shutil
import tempfile
from decimal import Decimal
from fractions import Fraction

from checks import check, end, read, root, run, write

folder = tempfile.mkdtemp()
for name in os.listdir(f"{root}/examples"):
    if name.endswith(".json"):
        shutil.copy(f"{root}/examples/{name}", folder)
prices = read(f"{folder}/spring_cups.run.json")["money"]["prices"]
BATCH_MINUTES, BATCH_OVERHEAD = 60, Decimal("2.50")
studio = {"schema": "brimwright.studio/1", "currency": "EUR", "prices": prices, "work": {"paid_an_hour": "18.00", "each_batch": f"{BATCH_MINUTES} min"},
          "overhead": {"each_batch": str(BATCH_OVERHEAD)}, "asking": {"retail": {"margin": "40 %"}}}
write(f"{folder}/studio.json", studio)
RUNS = (("plain_bars", 12), ("marble_bowls", 6), ("tray_cups", 12))


def order(lines=RUNS, word="A"):
    return {"schema": "brimwright.order/1", "for": "a market",
            "lines": [{"run": f"{name}.run.json", "pieces": pieces, **({"together": word} if word else {})} for name, pieces in lines]}


def told(*words, ok=True):
    done = run(*words, folder=folder)
    check((done.returncode == 0) == ok, f"{words}: exit {done.returncode}, {done.stderr}")
    return done


def answer(*words):
    return json.loads(told(*words, "--json").stdout)


def change(name, into, edit):
    document = read(f"{folder}/{name}.run.json")
    edit(document)
    write(f"{folder}/{into}.run.json", {**document, "name": into})


def formula_of(name):
    return read(f"{folder}/{name}.formula.json")


write(f"{folder}/together.order.json", order())
write(f"{folder}/apart.order.json", order(word=None))

# ---- one base in one batch: 30 pieces of three runs, of the same formula by its file
both = answer("quote", "together.order.json", "--times", "1,2")
quote = both["times"][0]
(group,) = quote["together"]
(batch,) = group["batches"]
check(group["word"] == "A" and group["lines"] == [0, 1, 2] and group["formula"] == "Meadow base", f"the group: {group['word']}, {group['lines']}")
check(batch["count"] == 1 and batch["pieces"] == 30 and [line["pieces"] for line in batch["lines"]] == [12, 6, 12], "pieces of the batch")
# 20 g in the pot, and no run of these leaves any in jugs: once for all.
check(batch["left_behind_g"] == 20, f"{batch['left_behind_g']} g left behind")
balance = sum(line["takes_g"] for line in batch["lines"]) + batch["left_behind_g"] + batch["over_g"]
check(abs(balance - batch["base"]["make_g"]) < 0.005, f"{balance} g of {batch['base']['make_g']} g")
check(abs(sum(line["share_percent"] for line in batch["lines"]) - 100) < 1e-3, "shares do not add to the whole")
weighed = {row["name"]: row["g"] for vessel in batch["weigh_out"] if vessel["vessel"] in ("fats", "lye", "batter") for row in vessel["rows"]}
for one in batch["base"]["ingredients"]:
    check(weighed[one["name"]] == one["g"], f"{one['name']}: {weighed.get(one['name'])} g to weigh, {one['g']} g in the batch")
titles = [vessel["title"] for vessel in batch["weigh_out"] if vessel["vessel"] == "layers"]
check([title.split(":")[0] for title in titles] == ["For Plain bars", "For Marbles in a bowl", "For Cups from a tray"], f"jugs: {titles}")
jugs = [row for vessel in batch["weigh_out"] if vessel["vessel"] == "layers" for row in vessel["rows"]]
check(all("% of the base" in row["note"] for row in jugs if row["role"] == "batter"), "a jug does not tell its share")

# ---- its cost is shared by what each takes; the batch counts once
apart = answer("quote", "apart.order.json")["times"][0]
check(apart["together"] == [], "lines without a word are together")
base_names = {one["name"] for one in batch["base"]["ingredients"]}


def items_of(quoted, part, name=None):
    return [item for line in quoted["lines"] for item in line["items"] if item["part"] == part and name in (None, item["name"])]


def grams(item):
    return Decimal(item["amount"].split()[0])


for one in batch["base"]["ingredients"]:
    used = sum(grams(item) for item in items_of(quote, "Base", one["name"]))
    check(abs(used - Decimal(str(one["g"]))) < Decimal("0.001"), f"{one['name']}: lines use {used} g of {one['g']} g")
work = items_of(quote, "Work", "each batch")
hours = sum(Fraction(item["how"].split(" × ")[1]) for item in work)
check(abs(hours - 1) < Fraction(1, 1000), f"one batch is worked at {float(hours)} times")
cost = sum(Decimal(item["cost"]) for item in work)
check(abs(cost - Decimal("18.00")) <= Decimal("0.02"), f"{cost} of work for the batch")
overhead = sum(Decimal(item["cost"]) for item in items_of(quote, "Overhead", "each batch"))
check(abs(overhead - BATCH_OVERHEAD) <= Decimal("0.02"), f"{overhead} of overhead for the batch")
for line, shared in zip(quote["lines"], batch["lines"]):
    fat = next(item for item in line["items"] if item["name"] == "Olive oil")
    olive = next(one["g"] for one in batch["base"]["ingredients"] if one["name"] == "Olive oil")
    check(abs(float(grams(fat)) - olive * shared["share_percent"] / 100) < 0.01, f"{line['run']}: {fat['amount']} of olive oil")
check(Decimal(quote["cost"]) == sum(Decimal(line["cost"]) for line in quote["lines"]), "lines do not add to the order")
check(Decimal(quote["cost"]) < Decimal(apart["cost"]) - 36, f"{quote['cost']} together, {apart['cost']} apart, and two batches fewer")
check(both["times"][1]["together"][0]["make_g"] > 1.9 * group["make_g"], "twice the order is not twice the base")
text = told("quote", "together.order.json").stdout
check(re.sub(r"\s+", " ", text).count("Poured together (A): Plain bars, Marbles in a bowl and Cups from a tray from one base") == 1, f"the text: {text[-900:]}")

# ---- bought for once, and no more than apart
bought, bought_apart = answer("buy", "together.order.json"), answer("buy", "apart.order.json")
check([one["order"] for one in bought["together"]] == ["together.order.json"] and bought["together"][0]["batches"] == group["batches"], "what is bought for")
check(bought_apart["together"] == [], "bought for together, without a word")
used = {one["material"]: one["used_g"] for one in bought["materials"] if "used_g" in one}
for one in batch["base"]["ingredients"]:
    name = one.get("fat") or ("NaOH" if one["role"] == "alkali" else "water" if one["role"] == "water" else one["name"])
    check(abs(used[name] - one["g"]) < 1e-4, f"{name}: {used[name]} g bought for, {one['g']} g weighed")
for one in bought_apart["materials"]:
    check(one.get("used_g", 0) >= used.get(one["material"], 0), f"{one['material']}: more together than apart")
check(bought["total"] == quote["cash"]["total"], f"bought for {bought['total']}, to lay out {quote['cash']['total']}")
check("Poured together (A)" in told("buy", "together.order.json").stdout, "the list does not tell of it")

# ---- on paper: the base once, then the lines without its weights
sheet = told("sheet", "together.order.json").stdout
plain = re.sub(r"<[^>]*>", " ", re.sub(r"<style.*?</style>", "", sheet, flags=re.S))
for what, times in (("Fats for the batter", 1), ("Lye solution for the batter", 1), ("NaOH, ", 1), ("nothing of it is weighed here", 3), ("TO EACH LINE", 1),
                    ("FIRST AID", 4), ("batter: made in all", 1), ("pieces made", 3), ("For Plain bars: 12 pieces", 1)):
    check(plain.count(what) == times, f"{what!r} stands {plain.count(what)} times on the sheet, not {times}")
check(re.search(r"Meadow base, poured together \(A\)", plain) is not None and plain.index("TO EACH LINE") < plain.index("nothing of it is weighed"), "the base is not first")

# ---- a pot that is too small for all: several batches
for name, _ in RUNS:
    change(name, f"small_{name}", lambda document: document.update(pots={"holds": "1.5 l"}))
write(f"{folder}/small.order.json", order([(f"small_{name}", pieces) for name, pieces in RUNS]))
small = answer("quote", "small.order.json")["times"][0]["together"][0]
count = sum(one["count"] for one in small["batches"])
check(count == 3, f"{count} batches in a pot of 1.5 l")  # 2.2 kg of base, and a litre of room
check(all(one["base"]["make_g"] / one["base"]["density_g_per_ml"] <= 1000 for one in small["batches"]), "a batch is more than two thirds of the pot")
sheet = re.sub(r"<[^>]*>", " ", told("sheet", "small.order.json").stdout)
check(sheet.count("Fats for the batter") == len(small["batches"]), "each different batch is weighed once")
check("out of the base (A), batch" in sheet, "a line does not say which batch it is from")

# ---- where no two lines fit into one batch, that is told
for name, pieces in RUNS[:2]:
    change(name, f"few_{name}", lambda document, most=pieces: document.update(batch={"pieces": most}))
write(f"{folder}/few.order.json", order([(f"few_{name}", pieces) for name, pieces in RUNS[:2]]))
few = re.sub(r"\s+", " ", told("quote", "few.order.json").stdout)
check("in 2 batches; no two of them share one." in few and "no two" not in re.sub(r"\s+", " ", text), f"nothing is told of batches that share nothing: {few[-400:]}")

# ---- a base that may be lye-heavy: the danger stands first, wherever it is told of
write(f"{folder}/thin.formula.json", {**formula_of("meadow_base"), "superfat": "1 %"})
for name, _ in RUNS[:2]:
    change(name, f"thin_{name}", lambda document: document["pour"].update(formula="thin.formula.json"))
write(f"{folder}/thin.order.json", order([(f"thin_{name}", pieces) for name, pieces in RUNS[:2]]))
thin = answer("quote", "thin.order.json")["times"][0]
check(thin["together"][0]["cautions"][0]["severity"] == "danger" and "LYE-HEAVY" in thin["together"][0]["cautions"][0]["text"], "no danger of the base")
check(all("LYE-HEAVY" in line["dangers"][0] for line in thin["lines"]), "no danger of a line")
check(told("quote", "thin.order.json").stdout.startswith("!! "), "the danger is not first")
sheet = re.sub(r"<[^>]*>", " ", told("sheet", "thin.order.json").stdout)
check(sheet.index("LYE-HEAVY") < sheet.index("FIRST AID") and sheet.count("LYE-HEAVY") == 3, "the danger is not on each sheet")

# ---- two groups; and a word that is alone, which changes nothing
change("plain_bars", "more_bars", lambda document: None)
change("tray_cups", "more_cups", lambda document: None)
four = order([("plain_bars", 12), ("more_bars", 6), ("tray_cups", 6), ("more_cups", 6)])
for line, word in zip(four["lines"], "ABAB"):
    line["together"] = word
write(f"{folder}/four.order.json", four)
groups = answer("quote", "four.order.json")["times"][0]["together"]
check([(one["word"], one["lines"]) for one in groups] == [("A", [0, 2]), ("B", [1, 3])], f"groups {[(one['word'], one['lines']) for one in groups]}")
alone, bare = order(RUNS[:1], "B"), order(RUNS[:1], None)
write(f"{folder}/alone.order.json", alone)
write(f"{folder}/bare.order.json", bare)
with_word, without = answer("quote", "alone.order.json"), answer("quote", "bare.order.json")
for one in with_word["times"] + without["times"]:
    check(one["ready"].pop("order").endswith(".order.json"), "an order that is not named")
check(with_word["times"] == without["times"] and with_word["times"][0]["together"] == [], "a word that is alone changes the line")
check(len(with_word["remarks"]) == 1 and "/lines/0/together" in with_word["remarks"][0] and without["remarks"] == [], f"remarks {with_word['remarks']}")
single = answer("quote", "plain_bars.run.json", "--sell", "12")["numbers"][0]
for key in ("cost", "items", "batches", "make"):
    check(with_word["times"][0]["lines"][0][key] == single[key], f"{key} of a lone line is not the run's")
check(any("One line alone" in note["text"] for note in answer("buy", "alone.order.json")["notes"]), "the list tells nothing of a lone word")
sheets = [told("sheet", f"{name}.order.json").stdout for name in ("alone", "bare")]
check(sheets[0] == sheets[1], "a lone word changes the sheet")


# ---- what is not one base: one line, at the line
def slip(lines, *said, words=("quote", "slip.order.json")):
    write(f"{folder}/slip.order.json", lines)
    for command in (words, ("buy", "slip.order.json"), ("sheet", "slip.order.json")):
        done = told(*command, ok=False)
        is_so = done.returncode == 1 and done.stdout == "" and done.stderr.count("\n") == 1 and all(one in done.stderr for one in said)
        check(is_so, f"{command}, {said}: {done.stdout[:80]}{done.stderr}")


def with_line(edit, base="tray_cups"):
    change(base, "other", edit)
    return order([("plain_bars", 12), ("other", 6)])


def set_in(*keys, value):
    def edit(document):
        for key in keys[:-1]:
            document = document.setdefault(key, {})
        document[keys[-1]] = value
    return edit


at = "/lines/1/together: "
write(f"{folder}/copy.formula.json", {**formula_of("meadow_base"), "name": "Copy of it"})
slip(with_line(set_in("pour", "formula", value="copy.formula.json")), at, "Copy of it", "another formula's file")
slip(with_line(set_in("losses", "pour", "pot", value="21 g")), at, "other losses in the pot")
slip(with_line(set_in("pour", "temperatures", "water_at", value="12 °C")), at, "other temperatures")
slip(with_line(set_in("scales", "fine", "step", value="0.01 g")), at, "other scales")
slip(with_line(set_in("pots", value={"holds": "5 l"})), at, "other pots")
slip(with_line(set_in("bottles", value=[{"name": "lavender essential oil", "holds": "10 g"}])), at, "divides a bottle")
slip(with_line(lambda document: document["pour"].update(mould="moulds/plain_bar.json", moulds_owned=5)), at, "counts 5 moulds")
os.makedirs(f"{folder}/below", exist_ok=True)
change("spring_cups", "other", lambda document: document.update(lye_pot={}))
slip(order([("plain_bars", 12), ("other", 6)]), at, "one lye solution for base and topping")
slip({**order(), "lines": [{"run": "plain_bars.run.json", "pieces": 3, "together": 1}]}, "/lines/0/together")
slip({**order(), "lines": [{"run": "plain_bars.run.json", "pieces": 3, "together": ""}]}, "/lines/0/together")
slip({**order(), "lines": [{"run": "plain_bars.run.json", "pieces": 3, "togethr": "A"}]}, "/lines/0/togethr", "together")
change("tray_cups", "other", set_in("pots", value={"holds": "100 ml", "confirmed": True}))
change("plain_bars", "first", set_in("pots", value={"holds": "100 ml", "confirmed": True}))
slip(order([("first", 12), ("other", 6)]), "too little for even 1 piece")
# By another path it is the same file, and so the same base.
change("tray_cups", "other", set_in("pour", "formula", value="below/../meadow_base.formula.json"))
write(f"{folder}/path.order.json", order([("plain_bars", 12), ("other", 6)]))
check(len(answer("quote", "path.order.json")["times"][0]["together"]) == 1, "one file by two paths is two bases")
end("lines poured together are one base, once")
