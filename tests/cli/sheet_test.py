"""The bench sheet of shipped runs, printed: every weight of the plan is on it, the paper is what was asked for,
and the check bar is 50 mm long on the paper. Text and pages are read by poppler, which we did not write."""
import json
import os
import re
import subprocess
import sys
import tempfile

root, program = sys.argv[1:3]
failures = []
folder = tempfile.mkdtemp()
papers = {"A4": (210, 297), "Letter": (215.9, 279.4)}  # ISO 216; 8 1/2 in x 11 in


def check(condition, what):
    if not condition:
        failures.append(what)


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
        yield batter["formula"], batter["make_g"]
    for dust in batch["dust"]:
        yield dust["name"], dust["g"]


def weights(plan):
    for batch in plan["batches"]:
        yield from batch_weights(batch)
    for perch in plan["perch"]:
        yield perch["name"], perch["make_g"]


def is_shown(grams, text):
    """Its digits stand there with "g" after them, at the decimals of one scale or another; layers and dust are to
    a tenth of a gram."""
    forms = {f"{grams:.{decimals}f}" for decimals in range(4)
             if abs(round(grams, decimals) - grams) < 1e-9} | {f"{grams:.1f}"}
    return any(re.search(rf"(?<![\d.]){re.escape(form)} g\b", text) for form in forms)


def check_bar(pdf, page, width_mm):
    """Length in millimetres of the bar on the drawing's page: its frame is the longest dark line of equal
    ends near the words "50 mm", found in a picture of 20 dots to the millimetre."""
    dots = 20
    ppm = made("pdftoppm", "-r", str(dots * 25.4), "-f", str(page), "-l", str(page), "-gray", pdf, binary=True)
    _, size, _, pixels = ppm.split(b"\n", 3)
    width, height = map(int, size.split())
    box = None
    for x, y in re.findall(r'<word xMin="([\d.]+)" yMin="([\d.]+)"[^>]*>50<',
                           made("pdftotext", "-bbox", "-f", str(page), "-l", str(page), pdf, "-")):
        box = (float(x) * 25.4 / 72, float(y) * 25.4 / 72)  # the last on the page is the bar's
    if not box:
        return None
    best = 0
    for y in range(int((box[1] - 5) * dots), min(height, int((box[1] + 8) * dots))):
        row = pixels[y * width:(y + 1) * width]
        for run in re.finditer(rb"[\x00-\x7f]+", row):
            length = (run.end() - run.start()) / dots
            if run.start() / dots < 70:  # the bar in inches is further right
                best = max(best, length)
    return best - 0.18  # half its outline's thickness at each end




for name in ("spring_order", "plain_bars", "marble_bowls", "propped_loaf", "tray_cups"):
    run = f"{root}/examples/{name}.run.json"
    plan = json.loads(made(program, "plan", run, "--json"))
    html = made(program, "sheet", run)
    for paper, (width, height) in papers.items():
        pdf = os.path.join(folder, f"{name}-{paper}.pdf")
        check(made(program, "sheet", run, "--pdf", pdf, "--paper", paper) == f"Written: {pdf}\n", f"{name}: what it wrote")
        info = made("pdfinfo", pdf)
        pages = int(re.search(r"Pages:\s+(\d+)", info)[1])
        check(pages <= 6, f"{name} on {paper}: {pages} pages")
        points = [float(n) for n in re.search(r"Page size:\s+([\d.]+) x ([\d.]+)", info).groups()]
        for got, wanted in zip(points, (width, height)):
            check(abs(got * 25.4 / 72 - wanted) < 0.1, f"{name}: {paper} is {points} points")
        text = made("pdftotext", "-layout", pdf, "-")
        for what, grams in weights(plan):
            check(is_shown(grams, text), f"{name} on {paper}: {what}, {grams} g, is not on the PDF")
            check(is_shown(grams, re.sub("<[^>]*>", " ", html)), f"{name}: {what}, {grams} g, is not in the HTML")
        first_page = made("pdftotext", "-layout", "-f", "1", "-l", "1", pdf, "-")
        for words in ("FIRST AID", "No vomiting", "Poison centre"):
            check(words in first_page, f"{name} on {paper}: \"{words}\" is not on the first page")
        drawn = [i for i in range(1, pages + 1)
                 if "Scale 1:" in made("pdftotext", "-f", str(i), "-l", str(i), pdf, "-")]
        check(len(drawn) == 1, f"{name} on {paper}: the drawing is on the pages {drawn}")
        if name == "spring_order" and drawn:
            bar = check_bar(pdf, drawn[0], width)
            check(bar and abs(bar - 50) <= 0.1, f"{name} on {paper}: the check bar is {bar} mm long")
    again = os.path.join(folder, "again.pdf")
    made(program, "sheet", run, "--pdf", again)
    with open(again, "rb") as one, open(os.path.join(folder, f"{name}-A4.pdf"), "rb") as other:
        check(one.read() == other.read(), f"{name}: A4 is not what comes unasked, or not the same twice")

# 25 pieces in 24 cavities: a sheet for 13 and one for 12 in one document, or each by itself.
def sheet_of(*words):
    pdf = os.path.join(folder, "batch.pdf")
    made(program, "sheet", run, "--sell", "24", "--pdf", pdf, *words)
    return made("pdftotext", "-layout", pdf, "-")


with open(f"{root}/examples/spring_order.run.json") as file:
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
check(len(re.findall(r"Cast Pearl bead", both)) == 1, "decorations are cast once, for the whole run")
check(re.search(r"13 pieces, batch _+ of 2", both), "a sheet for any batch of its size leaves its number open")
for number in ("0", "3", "1.5"):
    wrong = subprocess.run([program, "sheet", run, "--sell", "24", f"--batch={number}"], capture_output=True, text=True)
    check(wrong.returncode == 1 and wrong.stdout == "" and "1 to 2" in wrong.stderr, f"--batch {number}: {wrong}")

wrong = subprocess.run([program, "sheet", f"{root}/examples/plain_bars.run.json", "--paper", "A5"],
                       capture_output=True, text=True)
check(wrong.returncode == 1 and wrong.stdout == "" and "A4 or Letter" in wrong.stderr, f"A5: {wrong}")

print("\n".join(failures) or "sheets are as planned")
sys.exit(bool(failures))
