"""Lots come, are counted and taken, pieces go to orders, and the trail finds each from the other; slips are asked about and change nothing.
Batches are put into the file by SQL, since what they weigh is tried elsewhere (tests/service/lot_taking_test.cpp)."""
import datetime
import json
import os
import shutil
import tempfile

from begun_batch import begin
from checks import check, end, read, root, run, write

folder = tempfile.mkdtemp()
os.environ["SOURCE_DATE_EPOCH"] = str(int(datetime.datetime(2026, 12, 1, 9, tzinfo=datetime.timezone.utc).timestamp()))
today = "2026-12-01"
records = f"{folder}/records.sqlite"
for name in ("meadow_base.formula.json", "plain_bars.run.json"):
    shutil.copy(f"{root}/examples/{name}", folder)
plain = read(f"{folder}/plain_bars.run.json")
plain.pop("money", None)
write(f"{folder}/plain_bars.run.json", plain)
studio = {
    "schema": "brimwright.studio/1", "currency": "EUR",
    "packs": {"Olive oil": [{"holds": "5 kg", "paid": "27.50"}], "Goldmill coconut": [{"holds": "1 kg", "paid": "8.00"}],
              "gift box": [{"holds": "50 pieces", "paid": "30.00"}]},
    "serves_as": {"Goldmill coconut": "coconut"},
    "lye_solutions": {"The jug": {"alkali": "NaOH", "strength": "50 %", "strength_range": ["49 %", "51 %"], "kept_at": "20 °C"}},
    "have": {"olive": "200 g", "gift box": "12 pieces"},
}
write(f"{folder}/studio.json", studio)


def stock(*words, status=0):
    result = run("stock", ".", *words, folder=folder)
    check(result.returncode == status, f"stock {words}: exit {result.returncode}\n{result.stdout}{result.stderr}")
    return result


def lots(*words):
    answer = json.loads(stock(*words, "--json").stdout)
    return {lot["lot"]: lot for one in answer["materials"] for lot in one["lots"]}


def trail(what, status=0):
    result = run("trail", ".", what, "--json", folder=folder)
    check(result.returncode == status, f"trail {what}: exit {result.returncode}\n{result.stderr}")
    return json.loads(result.stdout) if status == 0 else result.stderr


def refused(said, *words):
    """Told in one line with these words in it, and the records are as they were, or still none."""
    before = open(records, "rb").read() if os.path.exists(records) else None
    result = stock(*words, status=1)
    check(result.stderr.count("\n") == 1 and said in result.stderr and not result.stdout, f"{words}: {result.stderr}")
    after = open(records, "rb").read() if os.path.exists(records) else None
    check(before == after, f"{words}: the records changed")


# ---- before the first act

check("Nothing is recorded" in stock().stdout and not os.path.exists(records), "looking makes records")
check("has no records" in trail("CO-117", 1), "a trail without records")
bought = ["--bought", "olive oil", "--pack", "5 kg"]
refused("is in no formula", "--bought", "olvie oil", "--pack", "5 kg")
refused('did you mean "Goldmill coconut"?', "--bought", "Goldmil coconut", "--pack", "1 kg")
refused("and this is 5 g", "--bought", "olive oil", "--pack", "5 g")
refused("far from usual", "--bought", "castor", "--pack", "5 kg", "--price", "0.01", "--confirmed", "castor")
refused("nothing is converted", *bought, "--price", "27.50 USD")
refused("does nothing alone", "--pack", "5 kg")
refused("does nothing alone", "--order", "x.order.json")
refused("is still to come", *bought, "--on", "2026-12-02")
refused("was past already when it came", *bought, "--best-before", "2026-11-30")
refused("more than ten years ahead", *bought, "--best-before", "2072-01-01")
refused("is not a number of packs", *bought, "--packs", "1.5")
refused("give a number of pieces", "--bought", "gift box", "--pack", "5 kg")
refused("cannot be a lot's code", *bought, "--lot", "a=b")
refused("is no lot in the records", "--counted", "CO-117=1 kg")
refused("is no batch in the records", "--sold", "2026-12-01A=3")

# ---- lots come

answer = stock(*bought, "--packs", "2", "--price", "27.50 EUR", "--seller", "Oil mill", "--lot", "OL-12", "--best-before", "2028-05-31")
check("Bought: 2 x 5 kg of Olive oil, lot OL-12, on 2026-12-01, 55.00 EUR in all." in answer.stdout.replace("\n  ", " "), answer.stdout)
olive = lots()["OL-12"]
check(olive["material"] == "olive" and olive["paid"] == "55.00" and olive["left"] == {"g": 10000}, olive)
refused('"OL-12" of Olive oil is there already', *bought, "--lot", "ol-12")
stock(*bought, "--lot", "OL-13", "--best-before", "2027-01-31", "--on", "2026-10-01", "--price", "30")
stock("--bought", "Goldmill coconut", "--pack", "1 kg", "--lot", "CO-117", "--on", "2026-09-01", "--best-before", "2026-11-30")
check(lots()["CO-117"]["make"] == "Goldmill coconut" and lots()["CO-117"]["material"] == "coconut", "goods that serve")
check(lots()["CO-117"]["is_past"] and "past its best-before" in stock().stdout, "a lot past its day is not told of")
own = stock("--bought", "caustic soda", "--pack", "1 kg").stdout
check("lot L1 (a code of your own: write it on the pack)" in own.replace("\n  ", " ") and lots()["L1"]["material"] == "NaOH", own)
order = [line.split(":")[0].strip() for line in stock().stdout.splitlines() if line.startswith("    OL-")]
check(order == ["OL-13", "OL-12"], f"soonest best before first: {order}")

# ---- what the studio's "have" says

for command in (["buy", "plain_bars.run.json"], ["stock", "."]):
    told = run(*command, folder=folder)
    check(told.returncode == 0 and "--take-have" in told.stdout, f"{command}: have is left out silently\n{told.stdout}{told.stderr}")
names = json.loads(stock("--names", "--json").stdout)
check(names["not_counted"] == ["gift box", "olive"] and names["names"]["currency"] == "EUR" and "The jug" in names["names"]["made_ahead"], names)
check({"Olive oil", "Goldmill coconut", "gift box", "NaOH"} <= set(names["names"]["materials"]) and "olive" not in names["names"]["materials"], names)
stock("--take-have")
check("over any more" in stock("--take-have").stdout.replace("\n  ", " "), "have is taken over twice")
before = lots()
check(before["L2"]["holds"] == {"pieces": 12} and before["L3"]["holds"] == {"g": 200} and before["L3"]["origin"] == "before records", before)
answer = json.loads(run("buy", "plain_bars.run.json", "--json", folder=folder).stdout)
shelf = {one["material"]: one for one in answer["materials"]}
check(shelf["olive"]["have_g"] == 15200, f"lots are the stock: {shelf['olive']}")
check(shelf["coconut"]["have_g"] == 0 and any("CO-117" in note["text"] for note in answer["notes"]), "what is past its day counts")
check(not any("take-have" in note["text"] for note in answer["notes"]), "have is named after it was taken over")

# ---- counted, and made of others

refused("weighs what is counted", "--counted", "L2=1 kg")
stock("--counted", "OL-12=9.5 kg", "--why", "a leaking tap", "--on", "2026-12-01")
check(lots()["OL-12"]["left"] == {"g": 9500}, "a count")
refused("is more than is left", "--made", "The jug", "--pack", "2 kg", "--of", "L1=1.2 kg")
stock("--made", "The jug", "--pack", "2 kg", "--of", "L1=990 g", "--lot", "JUG-1")
check(lots()["L1"]["left"] == {"g": 10} and lots()["JUG-1"]["origin"] == "made", "what is made of a lot is taken off it")

# ---- a batch takes from them

begin(folder, "2026-10-20A", "2026-10-20", {"pour.fats.olive": ("olive", "Olive oil", 1000, {"OL-13": 1000}),
                                    "pour.fats.coconut": ("coconut", "Coconut oil", 300, {"CO-117": 300}),
                                    "pour.lye.the-jug": ("The jug", "The jug", 200, {"JUG-1": 200}),
                                    "pour.lye.water": ("water", "Water", 150, {}),
                                    "pour.batter.mica": ("green mica", "green mica", 3, {})},
      {"pieces.made": "12", "pieces.rejected": "1", "tested": "pass", "ready_on": "2026-11-25"})
begin(folder, "2026-11-20A", "2026-11-20", {"pour.fats.coconut": ("coconut", "Coconut oil", 300, {})}, {"pieces.made": "12"})
begin(folder, "2026-11-21A", "2026-11-21", {}, {})
begin(folder, "2026-10-26A", "2026-10-26", {}, {"pieces.made": "1", "tested": "pass", "ready_on": "2026-10-27"})
pieces = {one["batch"]: one for one in json.loads(stock("--json").stdout)["pieces"]}
first, second, third = (pieces[code] for code in ("2026-10-20A", "2026-11-20A", "2026-11-21A"))
check(first["there"] == 11 and first["for_sale"] and first["why_not"] is None and first["cures_until"] is None, first)
# The formula says 35 days: 2026-11-20 and 35 days are 2026-12-25.
cure = datetime.timedelta(days=int(read(f"{folder}/meadow_base.formula.json")["cure"].split()[0]))
until = datetime.date(2026, 11, 20) + cure
check(second["cures_until"] == str(until) and not second["for_sale"] and "no test" in second["why_not"], second)
check(third["made"] is None and "there" not in third, third)

# ---- pieces go

write(f"{folder}/market.order.json", {"schema": "brimwright.order/1", "id": "6c2d2e0a-0d3a-4f0b-9a86-64b6a9f7f001", "for": "Harbour market",
                                      "lines": [{"run": "plain_bars.run.json", "pieces": 4}]})
refused("is not for sale: has no test result", "--sold", "2026-11-20A=1")
refused("nobody noted how many", "--sold", "2026-11-21A=1")
refused("11 are there, and 12 are to go", "--sold", "2026-10-20A=12")
refused("is not a number of pieces", "--sold", "2026-10-20A=0")
refused("is no order", "--sold", "2026-10-20A=1", "--order", "plain_bars.run.json")
refused("did you mean", "--sold", "2026-10-20B=1")
refused("is not for sale", "--given", "2026-11-20A=1")
# What is kept is printed, exported as JSON and read by programs: no line ends, and UTF-8.
for member, value in (("--for", "the\nmarket"), ("--for", b"caf\xe9"), ("--why", "a\tb")):
    refused("cannot be printed on one line", "--given", "2026-10-20A=1", member, value)
refused("cannot be printed on one line", "--bought", "Olive oil", "--pack", "5 kg", "--lot", b"CO\xff")
# Ready on a day typed a month too early: 2026-10-26 and 35 days are 2026-11-30.
refused("2026-10-26A cures until 2026-11-30 by the formulas", "--sold", "2026-10-26A=1", "--on", "2026-11-29")
stock("--sold", "2026-10-26A=1", "--on", "2026-11-30")
stock("--sold", "2026-10-20A=4", "--order", "market.order.json")
stock("--sold", "2026-10-20A=2", "--for", "a neighbour")
stock("--given", "2026-11-20A=1", "--confirmed", "2026-11-20A=1", "--why", "for a test")
stock("--spoilt", "2026-10-20A=1")
told = stock("--counted-pieces", "2026-10-20A=3").stdout
check("12 made, 1 rejected, 6 sold, 1 spoilt, 1 fewer by count: 3 there" in told.replace("\n    ", " "), told)

# ---- the trail, both ways

of_lot = trail("co-117")
check(of_lot["is"] == "lot" and [one["batch"] for one in of_lot["batches"]] == ["2026-10-20A"], of_lot)
batch = of_lot["batches"][0]
check([row["row"] for row in batch["rows"]] == ["pour.fats.coconut"] and not batch["all_rows"] and batch["cost"] is None, batch["rows"])
check({(one["what"], one["pieces"], one["for"]) for one in batch["went"]} >= {("sold", -4, "Harbour market"), ("sold", -2, "a neighbour")}, batch["went"])
check(of_lot["gaps"] == [{"batch": "2026-11-20A", "run": "Plain bars", "shown_as": "Coconut oil"}], of_lot["gaps"])
check([one["batch"] for one in trail("L1")["batches"]] == ["2026-10-20A"], "through what was made of it")
of_batch = trail("2026-10-20a")
check({one["lot"] for one in of_batch["lots"]} == {"OL-13", "CO-117", "JUG-1", "L1"}, [one["lot"] for one in of_batch["lots"]])
unknown = {row["row"]: row["unknown"] for row in of_batch["batches"][0]["rows"]}
check(unknown["pour.batter.mica"] == {"g": 3} and unknown["pour.fats.olive"] == {"g": 0}, unknown)
# 1000 g of a 5 kg pack at 30.00 EUR.
check(of_batch["batches"][0]["cost"]["materials"] == [{"amount": "6.00", "currency": "EUR"}], of_batch["batches"][0]["cost"])
check(set(of_batch["batches"][0]["cost"]["unpriced"]) == {"Goldmill coconut (lot CO-117)", "NaOH (lot L1)", "green mica (lot unknown)"},
      of_batch["batches"][0]["cost"]["unpriced"])
for what in ("market.order.json", "6c2d2e0a-0d3a-4f0b-9a86-64b6a9f7f001", "harbour MARKET"):
    of_order = trail(what)
    check(of_order["is"] == "order" and [one["pieces"] for one in of_order["batches"][0]["went"]] == [-4], what)
    check({one["lot"] for one in of_order["lots"]} >= {"OL-13", "CO-117"}, what)
check("did you mean" in trail("CO-118", 1), "a near code is not named")
stock("--bought", "castor oil", "--pack", "1 kg", "--lot", "2026-10-20A", "--on", "2026-10-01")  # as a batch is called
check('is a lot and a batch' in trail("2026-10-20a", 1), "which is meant is not asked")
result = run("trail", ".", "2026-10-20A", folder=folder)
check('say which: WHAT "lot 2026-10-20A" or WHAT "batch 2026-10-20A"' in result.stderr and result.stderr.count("\n") == 1, result.stderr)
of_lot = trail("lot 2026-10-20A")
check(of_lot["is"] == "lot" and [one["shown_as"] for one in of_lot["lots"]] == ["Castor oil"], f"the lot: {of_lot}")
check(trail("batch 2026-10-20A") == of_batch | {"asked": "2026-10-20A"}, "the batch")
check(trail("order market.order.json")["batches"] == of_order["batches"], "the order")
text = run("trail", ".", "batch 2026-10-20A", folder=folder).stdout
check("LOT UNKNOWN" in text and "Materials did cost 6.00 EUR by their lots" in text, text)
check(max(map(len, text.splitlines())) <= 80 and max(map(len, stock().stdout.splitlines())) <= 80, "wider than a terminal")

# ---- a copy beside the records is named

shutil.copy(records, f"{folder}/records (conflicted copy).sqlite")
check("looks like a copy of the records" in stock().stdout.replace("\n    ", " "), "a conflicted copy is not named")
shutil.rmtree(folder)
end("lots, pieces and their trail are as recorded")
