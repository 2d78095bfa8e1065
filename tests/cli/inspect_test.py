"""`gauge --inspect` lists a mesh's defects with places in the file's own numbers, and measures nothing."""
import json
import os
import struct
import subprocess
import sys
import tempfile

root, program = os.path.abspath(sys.argv[1]), sys.argv[2]
folder = tempfile.mkdtemp()
failures = []


def check(name, holds, found):
    if not holds:
        failures.append(f"{name}: {found}")


def ask(*words):
    done = subprocess.run([program, "gauge", *words], capture_output=True, text=True, timeout=120)
    return done.returncode, done.stdout, done.stderr.strip()


def cube(side):
    """Twelve facets, outward; the first two are the floor's."""
    corners = [(x * side, y * side, z * side) for z in (0, 1) for y in (0, 1) for x in (0, 1)]
    squares = [(0, 2, 3, 1), (4, 5, 7, 6), (0, 1, 5, 4), (2, 6, 7, 3), (0, 4, 6, 2), (1, 3, 7, 5)]
    return [tuple(corners[i] for i in three) for a, b, c, d in squares for three in ((a, b, c), (a, c, d))]


def stl(name, facets):
    path = f"{folder}/{name}"
    with open(path, "wb") as file:
        file.write(bytes(80) + struct.pack("<I", len(facets)))
        for facet in facets:
            file.write(struct.pack("<12fH", 0, 0, 0, *(x for corner in facet for x in corner), 0))
    return path


sound = stl("sound.stl", cube(2))
status, text, _ = ask("--inspect", sound, "--unit", "in")
check("a sound cube", status == 0 and text == f"{sound}: 12 facets in 1 shell, closed\nNo defects.\n", text)
status, text, _ = ask("--inspect", sound, "--unit", "in", "--json")
answer = json.loads(text)
check("a sound cube's answer", answer["closed"] and answer["facing_consistently"] and answer["defects"] == [], answer)
check("its counts", (answer["facets"], answer["shells"], answer["open_edges"], answer["rims"]) == (12, 1, 0, 0), answer)

# Without its first facet, the cube is open along that facet's three sides; their middles, in the file's inches, however
# it is turned while it is looked at.
gone = cube(2)[0]
middles = [[(gone[i][k] + gone[(i + 1) % 3][k]) / 2 for k in range(3)] for i in range(3)]
open_cube = stl("open.stl", cube(2)[1:])
for up in ("+z", "-y"):
    status, text, _ = ask("--inspect", open_cube, "--unit", "in", "--up", up, "--json")
    answer = json.loads(text)
    check("an open cube", not answer["closed"] and (answer["unit"], answer["open_edges"], answer["rims"]) == ("in", 3, 1), answer)
    (defect,) = answer["defects"]
    check("its defect", (defect["kind"], defect["count"]) == ("open edges", 3), defect)
    check("its place", defect["first_at"] in middles, (defect, middles))
    check("its words", defect["text"].startswith("3 edges have a facet on one side only, the first at (")
          and defect["text"].endswith(") in"), defect)
    # The facet's longest side is the square's diagonal, 2 sqrt(2) in.
    check("its rim", abs(answer["widest_rim"]["width_mm"] - 2 * 2 ** 0.5 * 25.4) < 0.001, answer["widest_rim"])

# Two cubes, one pushed half into the other.
pushed = [tuple((x + 1, y + 1, z + 1) for x, y, z in facet) for facet in cube(2)]
status, text, _ = ask("--inspect", stl("pushed.stl", cube(2) + pushed), "--unit", "cm", "--json")
check("overlap", "overlapping parts" in [defect["kind"] for defect in json.loads(text)["defects"]], text)

for words, says in [
        (["--inspect", f"{root}/moulds/plain_bar.json"], "--inspect: is only for a mesh"),
        (["--inspect", sound, "--unit", "in", "--role", "cavity"], "--role: does nothing with --inspect"),
        (["--inspect", sound], "does not say its unit")]:
    status, text, complaint = ask(*words)
    check(says, status == 1 and text == "" and says in complaint, complaint)

print("\n".join(failures) or "defects are listed as they were made")
sys.exit(bool(failures))
