"""A lot of alkali keeps how pure its pack says it is: no batch that was planned with another purity takes it unasked, and nothing on the
list of what to buy counts it. The amounts follow from purity alone: alkali of purity p has p times its mass of pure alkali."""
import json
import os
import re
import shutil
import tempfile

from checks import check, end, read, root, run, write

folder = tempfile.mkdtemp()
os.environ["SOURCE_DATE_EPOCH"] = "1796126400"  # 2026-12-01 12:00 UTC, by coreutils' date
plain = read(f"{root}/examples/plain_bars.run.json")
plain.pop("money", None)
base = read(f"{root}/examples/meadow_base.formula.json")
write(f"{folder}/plain_bars.run.json", plain)
write(f"{folder}/meadow_base.formula.json", base)
write(f"{folder}/studio.json", {"schema": "brimwright.studio/1", "currency": "EUR",
                                "packs": {"NaOH 99 %": [{"holds": "1 kg", "paid": "5.00"}]}})
records = f"{folder}/records.sqlite"


def called(*words, status=0):
    result = run(*words, folder=folder)
    check(result.returncode == status, f"{words}: exit {result.returncode}\n{result.stdout}{result.stderr}")
    return result


def note(*words, status=0):
    return called("note", "plain_bars.run.json", *words, status=status)


def bought(material, code, pack="1 kg"):
    return called("stock", ".", "--bought", material, "--pack", pack, "--lot", code, "--on", "2026-11-01").stdout


def flat(text):
    return re.sub(r"\s+", " ", text)


def lots():
    answer = json.loads(called("stock", ".", "--json").stdout)
    return {one["lot"]: {**one, "material": material["material"]} for material in answer["materials"] for one in material["lots"]}


def planned_with(purity, low, high):
    formula = {**base, "alkali": [{"alkali": "NaOH", "share": "100 %", "purity": purity, "purity_range": [low, high]}]}
    write(f"{folder}/meadow_base.formula.json", formula)


def alkali():
    plan = json.loads(called("plan", "plain_bars.run.json", "--json").stdout)
    return next(row["g"] for vessel in plan["batches"][0]["weigh_out"] for row in vessel["rows"] if row["role"] == "alkali")


# ---- what the pack says is kept, and shown

check("1 kg of NaOH 97 %, lot N-97" in flat(bought("NaOH 97 %", "N-97")), "the purity is not told")
check(lots()["N-97"]["material"] == "NaOH" and lots()["N-97"]["make"] == "NaOH 97 %", lots()["N-97"])
check("NaOH 97 %" in called("stock", ".").stdout, "the list does not tell the purity")

# ---- the formula is planned with 98 to 100 %: 97 % is no lot for it

planned_with("99 %", "98 %", "100 %")
need = alkali()
lacking = json.loads(called("buy", "plain_bars.run.json", "--json").stdout)
row = next(one for one in lacking["materials"] if one["material"] == "NaOH")
check(row.get("have_g", 0) == 0, f"97 % is counted: {row}")
before = open(records, "rb").read()
said = flat(note("--begin").stdout)
check("Lot N-97 is NaOH 97 %, and this batch was planned with NaOH, 99 % pure: nothing is taken of it" in said, said)
check(lots()["N-97"]["left"]["g"] == 1000, "97 % was taken")
code = json.loads(note("--json").stdout)["batches"][-1]["begun"]["code"]
rows = {one["row"]: one for one in json.loads(called("trail", ".", code, "--json").stdout)["batches"][0]["rows"]}
check(rows["pour.lye.naoh"]["unknown"] == {"g": need}, "the lot is known, of which nothing is taken")

bought("NaOH 99 %", "N-99")
said = flat(note("--begin", "--again").stdout)
check(lots()["N-99"]["left"]["g"] == 1000 - need and lots()["N-97"]["left"]["g"] == 1000, "of 99 % it is taken")
check("N-97" in said and "N-99" not in said, f"of the one that was taken nothing is told: {said}")

# ---- weaker than planned, and chosen: less lye

said = flat(note("--begin", "--again", "--lot", "NaOH=N-97").stdout)
check("NaOH of lot N-97 is NaOH 97 %, and \"Meadow base\" is planned with 99 %: up to 2.1 % less lye than planned" in said, said)
check("LYE-HEAVY" not in said and lots()["N-97"]["left"]["g"] == 1000 - need, "a weaker lot")

# ---- purer than planned: asked about, and shouted

planned_with("97 %", "96 %", "98 %")
need = alkali()
there = lots()["N-99"]["left"]["g"]
before = open(records, "rb").read()
result = note("--begin", "--again", "--lot", "NaOH=N-99", status=1)
check(result.stderr.count("\n") == 1 and "LYE-HEAVY" in result.stderr and "lye-heavy" in result.stderr, result.stderr)
check("up to 2.1 % more lye" in result.stderr, result.stderr)  # 99 / 97 = 1.0206
check(before == open(records, "rb").read(), "what is asked about was recorded")
result = note("--begin", "--again", "--lot", "NaOH=N-99", "--confirmed", "lye-heavy")
check("!! LYE-HEAVY" in result.stdout and lots()["N-99"]["left"]["g"] == round(there - need, 6), result.stdout)
result = note("--begin", "--again", "--confirmed", "lye-heavy", status=1)
check("nothing that was asked about" in result.stderr, result.stderr)

# ---- weighed otherwise afterwards: of the same lot, another only where it is as pure

there = lots()["N-99"]["left"]["g"]
note("--batch", "1", "--set", f"weighed.pour.lye.naoh={need - 1:g} g")
check(lots()["N-99"]["left"]["g"] == there + 1, "the same lot has a gram more")

# ---- a lot without a purity goes with each plan, as a pack does; the list of what to buy counts what fits

bought("NaOH", "N-0")
row = next(one for one in json.loads(called("buy", "plain_bars.run.json", "--json").stdout)["materials"] if one["material"] == "NaOH")
check(row["have_g"] == 1000 + lots()["N-97"]["left"]["g"], f"what fits 96 to 98 %: {row}")
shutil.rmtree(folder)
end("a lot of alkali keeps its purity, and goes with no plan for another")
