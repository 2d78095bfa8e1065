"""The bench sheet of shipped runs, printed: every weight of the plan is on it, the paper is what was asked for,
and the check bar is 50 mm long on the paper. Text and pages are read by poppler, which we did not write."""
import json
import os
import re
import subprocess
import sys
import tempfile
from math import floor

root, program = sys.argv[1:3]
failures = []
folder = tempfile.mkdtemp()
papers = {"A4": (210, 297), "Letter": (215.9, 279.4)}  # ISO 216; 8 1/2 in x 11 in


def check(condition, what):
    if not condition:
        failures.append(what)


# A moment stated once and for all: 2026-05-30 19:46:00 UTC, by `date -u -d @1780170360`.
os.environ["SOURCE_DATE_EPOCH"] = "1780170360"
MOMENT = "2026-05-30 19:46"


def made(*words, binary=False):
    done = subprocess.run(words, capture_output=True, timeout=120)
    check(done.returncode == 0, f"{words} ended with {done.returncode}: {done.stderr!r}")
    return done.stdout if binary else done.stdout.decode()


def batch_weights(batch):
    """What she weighs for one batch: (name, grams), as the command line's JSON has it."""
    batters = [batch["pour"]] + batch.get("pipe", {}).get("whippings", [])
    for batter in batters:
        for ingredient in batter["ingredients"]:
            if not (batch["lye_pot"] and ingredient["goes_into"] == "lye"):
                yield ingredient["name"], ingredient["g"]
        for layer in batter.get("layers", []):
            yield layer["name"], float(layer["g_text"])
            for colour in layer["colours"]:
                yield colour["name"], colour["g"]
        yield batter["formula"], floor(batter["make_g"] + 0.5)  # on the large scale, of 1 g
    for dust in batch["dust"]:
        yield dust["name"], dust["g"]


def weights(plan):
    for batch in plan["batches"]:
        yield from batch_weights(batch)
    for decoration in plan["decorations"]:
        yield decoration["name"], decoration["make_g"]


def is_shown(grams, text):
    """Its digits stand there with "g" after them, at the decimals of one scale or another; layers and dust are to
    a tenth of a gram."""
    forms = {f"{grams:.{decimals}f}" for decimals in range(4)
             if abs(round(grams, decimals) - grams) < 1e-9} | {f"{grams:.1f}"}
    return any(re.search(rf"(?<![\d.]){re.escape(form)} g\b", text) for form in forms)


def page_text(pdf, page):
    return re.sub(r"\s+", " ", made("pdftotext", "-f", str(page), "-l", str(page), pdf, "-"))


def no_lye_is_split(pdf, pages, plan, name):
    """Each lye stands on one page with all its weights and with what goes into which; what goes on says so."""
    texts = [page_text(pdf, page) for page in range(1, pages + 1)]
    for batch in plan["batches"]:
        for vessel in batch["weigh_out"]:
            on = [text.partition(vessel["title"])[2] for text in texts if vessel["title"] in text]
            if vessel["vessel"] == "dust":
                continue
            check(on, f"{name}: \"{vessel['title']}\" is on no page")
            if vessel["vessel"] not in ("lye", "lye_pot", "share") or not on:
                continue
            wanted = [row["shown"] for row in vessel["rows"]] + [words["text"] for words in vessel["words"]]
            whole = any(all(words in text for words in wanted) for text in on)
            check(whole, f"{name}: {vessel['title']} is not whole on one page: {on}")
            check(not any(f"{vessel['title']}, continued" in text for text in texts), f"{name}: {vessel['title']} goes on")
    for i, text in enumerate(texts):
        if re.search(r"^\S+ ", text) and ", continued" in text:
            check(re.search(r", continued.{0,60}? weigh ", text), f"{name}: page {i + 1} goes on without column heads: {text[:200]}")


def is_tagged(pdf, name):
    info = made("pdfinfo", pdf)
    check(re.search(r"Tagged:\s+yes", info), f"{name}: is not tagged")
    check(re.search(r"Title:\s+\S", info), f"{name}: has no title")
    tree = made("pdfinfo", "-struct", pdf)
    for part in ("H1", "H2", "H3", "P", "Table", "TR", "TH", "TD", "Figure"):
        check(re.search(rf"^\s*{part}\b", tree, re.M), f"{name}: its structure has no {part}")
    with open(pdf, "rb") as file:
        check(b"/Lang (en)" in file.read(), f"{name}: does not say its language")


DOTS = 20  # to the millimetre


def rows_of(pdf, page):
    """The page's picture in grey, row by row."""
    ppm = made("pdftoppm", "-r", str(DOTS * 25.4), "-f", str(page), "-l", str(page), "-gray", pdf, binary=True)
    _, size, _, pixels = ppm.split(b"\n", 3)
    width, height = map(int, size.split())
    return [pixels[y * width:(y + 1) * width] for y in range(height)]


def places_of(pdf, page, word):
    """Where the word stands on the page, in millimetres: left, top, bottom."""
    boxes = made("pdftotext", "-bbox", "-f", str(page), "-l", str(page), pdf, "-")
    return [[float(number) * 25.4 / 72 for number in place] for place in
            re.findall(rf'<word xMin="([\d.]+)" yMin="([\d.]+)" xMax="[\d.]+" yMax="([\d.]+)">{re.escape(word)}<', boxes)]


def check_bar(pdf, page):
    """Length in millimetres of the bar on the drawing's page: its frame is the longest dark line of equal
    ends near the words "50 mm"."""
    places = places_of(pdf, page, "50")
    if not places:
        return None
    rows, best, top = rows_of(pdf, page), 0, places[-1][1]  # the last on the page is the bar's
    for row in rows[int((top - 5) * DOTS):int((top + 8) * DOTS)]:
        for run in re.finditer(rb"[\x00-\x7f]+", row):
            if run.start() / DOTS < 70:  # the bar in inches is further right
                best = max(best, (run.end() - run.start()) / DOTS)
    return best - 0.18  # half its outline's thickness at each end


def hatching_pitches(pdf, page):
    """Millimetres from line to line through the middle of the first hatching of the legend, which is 9 mm wide and
    begins 11 mm to the left of its words."""
    left, top, bottom = places_of(pdf, page, "1.")[-1]
    row = rows_of(pdf, page)[int((top + bottom) / 2 * DOTS)]
    inside = row[int((left - 11 + 0.2) * DOTS):int((left - 2 - 0.2) * DOTS)]
    middles = [(run.start() + run.end()) / 2 / DOTS for run in re.finditer(rb"[\x00-\x9f]+", inside)]
    return [after - before for before, after in zip(middles, middles[1:])]


for name in ("spring_cups", "plain_bars", "marble_bowls", "tilted_loaf", "tray_cups"):
    run = f"{root}/examples/{name}.run.json"
    plan = json.loads(made(program, "plan", run, "--json"))
    html = made(program, "sheet", run)
    for paper, (width, height) in papers.items():
        pdf = os.path.join(folder, f"{name}-{paper}.pdf")
        check(made(program, "sheet", run, "--pdf", pdf, "--paper", paper) == f"Written: {pdf}\n", f"{name}: what it wrote")
        info = made("pdfinfo", pdf)
        pages = int(re.search(r"Pages:\s+(\d+)", info)[1])
        check(pages <= 7, f"{name} on {paper}: {pages} pages")
        points = [float(n) for n in re.search(r"Page size:\s+([\d.]+) x ([\d.]+)", info).groups()]
        for got, wanted in zip(points, (width, height)):
            check(abs(got * 25.4 / 72 - wanted) < 0.1, f"{name}: {paper} is {points} points")
        text = made("pdftotext", "-layout", pdf, "-")
        no_lye_is_split(pdf, pages, plan, f"{name} on {paper}")
        is_tagged(pdf, f"{name} on {paper}")
        for page in range(1, pages + 1):
            check(f"Printed {MOMENT} from {name}.run.json by Brimwright " in page_text(pdf, page), f"{name} on {paper}: the foot of page {page}")
        for what, grams in weights(plan):
            check(is_shown(grams, text), f"{name} on {paper}: {what}, {grams} g, is not on the PDF")
            check(is_shown(grams, re.sub("<[^>]*>", " ", html)), f"{name}: {what}, {grams} g, is not in the HTML")
        first_page = made("pdftotext", "-layout", "-f", "1", "-l", "1", pdf, "-")
        for words in ("FIRST AID", "No vomiting", "Poison centre"):
            check(words in first_page, f"{name} on {paper}: \"{words}\" is not on the first page")
        drawn = [i for i in range(1, pages + 1)
                 if "Scale 1:" in made("pdftotext", "-f", str(i), "-l", str(i), pdf, "-")]
        check(len(drawn) == 1, f"{name} on {paper}: the drawing is on the pages {drawn}")
        if name == "spring_cups" and drawn:
            bar = check_bar(pdf, drawn[0])
            check(bar and abs(bar - 50) <= 0.1, f"{name} on {paper}: the check bar is {bar} mm long")
            # Tiles of 2.4 mm, as in the SVG: cairo takes whole numbers for their sides.
            pitches = hatching_pitches(pdf, drawn[0])
            check(len(pitches) >= 2 and all(abs(pitch - 2.4) <= 0.1 for pitch in pitches),
                  f"{name} on {paper}: hatching lines are {pitches} mm apart")
    again = os.path.join(folder, "again.pdf")
    made(program, "sheet", run, "--pdf", again)
    with open(again, "rb") as one, open(os.path.join(folder, f"{name}-A4.pdf"), "rb") as other:
        check(one.read() == other.read(), f"{name}: A4 is not what comes unasked, or not the same twice")

# 25 pieces in 24 cavities: a sheet for 13 and one for 12 in one document, or each by itself.
def sheet_of(*words):
    pdf = os.path.join(folder, "batch.pdf")
    made(program, "sheet", run, "--sell", "24", "--pdf", pdf, *words)
    return made("pdftotext", "-layout", pdf, "-")


with open(f"{root}/examples/spring_cups.run.json") as file:
    two_sizes = json.load(file)
two_sizes["pour"]["moulds_owned"] = 4
folder_of_run = tempfile.mkdtemp()
for formula in ("meadow_base", "cloud_topping"):
    with open(f"{root}/examples/{formula}.formula.json") as one, \
            open(os.path.join(folder_of_run, f"{formula}.formula.json"), "w") as other:
        other.write(one.read())
run = os.path.join(folder_of_run, "two_sizes.run.json")
with open(run, "w") as file:
    json.dump(two_sizes, file)
plan = json.loads(made(program, "plan", run, "--sell", "24", "--json"))
check([(b["pieces"], b["numbers"]) for b in plan["batches"]] == [(13, [1]), (12, [2])], "25 pieces are 13 and 12")
both = sheet_of()
for batch in plan["batches"]:
    for what, grams in batch_weights(batch):
        check(is_shown(grams, both), f"batch of {batch['pieces']}: {what}, {grams} g, is not on the sheet of both")
    alone = sheet_of("--batch", str(batch["numbers"][0]))
    check(re.search(rf"{batch['pieces']} pieces, batch {batch['numbers'][0]} of 2", alone),
          f"batch of {batch['pieces']} is not headed with its number")
    for what, grams in batch_weights(batch):
        check(is_shown(grams, alone), f"batch of {batch['pieces']} alone: {what}, {grams} g, is not on it")
    check("FIRST AID" in alone, f"batch of {batch['pieces']} alone has no first aid")
check(both.count("FIRST AID") == 2, "each batch's sheet has its first aid")
check(len(re.findall(r"Cast \d+ × Pearl bead", both)) == 1, "decorations are cast once, for the whole run")
check(re.search(r"13 pieces, batch _+ of 2", both), "a sheet for any batch of its size leaves its number open")
for number in ("0", "3", "1.5"):
    wrong = subprocess.run([program, "sheet", run, "--sell", "24", f"--batch={number}"], capture_output=True, text=True)
    check(wrong.returncode == 1 and wrong.stdout == "" and "1 to 2" in wrong.stderr, f"--batch {number}: {wrong}")

# Lists of any length: no lye is split, and where another list goes on, its heads do too.
with open(f"{root}/examples/plain_bars.run.json") as file:
    bars = json.load(file)
with open(f"{root}/examples/meadow_base.formula.json") as file:
    base = json.load(file)
fats = [fat["id"] for fat in json.loads(made(program, "list", "fats", "--json"))["fats"]][:20]
goes_on = 0
for count in range(1, 21):
    shares = [100 // count + (i < 100 % count) for i in range(count)]
    extras = [{"name": f"invented extract of the {i}th kind", "rate": "0.2 % of fats", "goes_into": ("lye", "batter", "fats")[i % 3]} for i in range(count)]
    with open(os.path.join(folder_of_run, "long.formula.json"), "w") as file:
        json.dump({**base, "fats": [{"fat": fat, "share": f"{share} %"} for fat, share in zip(fats, shares)], "additives": extras, "colours": []}, file)
    run = os.path.join(folder_of_run, "long.run.json")
    with open(run, "w") as file:
        json.dump({**bars, "pour": {**bars["pour"], "formula": "long.formula.json"}}, file)
    plan = json.loads(made(program, "plan", run, "--json"))
    for paper in papers:
        pdf = os.path.join(folder, f"long{count}-{paper}.pdf")
        made(program, "sheet", run, "--pdf", pdf, "--paper", paper)
        pages = int(re.search(r"Pages:\s+(\d+)", made("pdfinfo", pdf))[1])
        no_lye_is_split(pdf, pages, plan, f"{count} fats on {paper}")
        text = " ".join(page_text(pdf, page) for page in range(1, pages + 1))
        goes_on += "Fats for the batter, continued" in text
        for what, grams in weights(plan):
            check(is_shown(grams, text), f"{count} fats on {paper}: {what}, {grams} g, is not on it")
check(goes_on > 0, "no list was long enough to go on")

wrong = subprocess.run([program, "sheet", f"{root}/examples/plain_bars.run.json", "--paper", "A5"],
                       capture_output=True, text=True)
check(wrong.returncode == 1 and wrong.stdout == "" and "A4 or Letter" in wrong.stderr, f"A5: {wrong}")

print("\n".join(failures) or "sheets are as planned")
sys.exit(bool(failures))
