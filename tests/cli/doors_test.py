"""The house as src/house.cmake draws it, against the include lines of src.

A room uses the doors of the rooms it may use and nothing else of them; no arrow runs back; no two files
include each other; a .cpp includes its own header first, which proves that the header compiles alone; heavy
libraries stay where they belong; what another room uses knows no options of the command line. Then the checks
themselves are tried on a small house with each fault built in.
"""

import glob
import os
import re
import sys
import tempfile

INCLUDE = re.compile(r'^#include ([<"])([^>"]+)[>"]', re.M)
HEAVY = re.compile(r"^(CGAL/|assimp/|CLI/|nlohmann/json\.hpp|boost/beast|cairo|pango|glpk)")
AT_HOME = {"CGAL/": ("geometry", "helpers/unite"), "assimp/": ("helpers/import",),
           "cairo": ("helpers/pdf",), "pango/": ("helpers/pdf",),
           "glpk": ("trade",)}  # heavy ones, and where

OPTION = re.compile(r'"(?:[^"\\\n]|\\.)*--[a-z]|"command line')


def plan_of(text):
    """What each room may use and which headers are its doors, in the order of the file."""
    rooms = {}
    for call in re.findall(r"^room\(([^)]*)\)", text, re.M):
        name, *words = call.split()
        rooms[name] = {"USES": [], "DOORS": []}
        part = None
        for word in words:
            if word in ("USES", "DOORS", "PROGRAMS"):
                part = word
            else:
                rooms[name][part].append(word)
    return rooms


def room_of(path, rooms):
    folder = os.path.dirname(path)
    while folder and folder not in rooms:
        folder = os.path.dirname(folder)
    return folder


def reachable(room, rooms):
    """The rooms whose doors `room` may use: an inner room by itself, a room with all its inner rooms."""
    named = list(rooms[room]["USES"])
    parent = os.path.dirname(room)
    if parent:
        named += rooms[parent]["USES"]
    else:
        named += [name for name in rooms if name.startswith(room + "/")]
    return {name for name in rooms if any(name == use or name.startswith(use + "/") for use in named)}


def faults_of(src):
    with open(os.path.join(src, "house.cmake")) as file:
        rooms = plan_of(file.read())
    names = list(rooms)
    faults = []
    for place, room in enumerate(names):
        for use in rooms[room]["USES"]:
            if use not in names or names.index(use) >= place:
                faults.append(f"house.cmake: {room} uses {use}, which is not listed before it")
        for door in rooms[room]["DOORS"]:
            if not os.path.exists(os.path.join(src, room, door + ".h")):
                faults.append(f"house.cmake: {room} has no header {door}")

    files = [os.path.relpath(os.path.join(folder, name), src)
             for folder, _, all_names in os.walk(src) for name in all_names if name.endswith((".h", ".cpp"))]
    used_doors, arrows, lines = set(), {}, 0
    for path in sorted(files):
        room = room_of(path, rooms)
        if not room:
            faults.append(f"{path}: stands in no room of house.cmake")
            continue
        with open(os.path.join(src, path)) as file:
            text = file.read()
        includes = INCLUDE.findall(text)
        option = OPTION.search(re.sub(r"^\s*//.*$", "", text, flags=re.M))
        if option and any(room in reachable(other, rooms) for other in names):
            faults.append(f"{path}: {option.group()}: speaks of the command line")
        lines += len(includes)
        own = re.sub(r"\.cpp$", ".h", path)
        if path.endswith(".cpp") and own in files and (not includes or includes[0][1] != own):
            faults.append(f"{path}: does not include its own header first")
        for mark, name in includes:
            if HEAVY.match(name):
                if path.endswith(".h"):
                    faults.append(f"{path}: {name}: a heavy library in a header")
                for library, homes in AT_HOME.items():
                    if name.startswith(library) and not room.startswith(homes):
                        faults.append(f"{path}: {name}: stays in {' and '.join(homes)}")
            if mark != '"' or name not in files:
                continue
            arrows.setdefault(path.rsplit(".", 1)[0], set()).add(name.rsplit(".", 1)[0])
            other = room_of(name, rooms)
            if other == room:
                continue
            if other not in reachable(room, rooms):
                faults.append(f"{path}: {name}: {room} must not use {other}")
            door = os.path.relpath(name, other)[:-2]
            if door not in rooms[other]["DOORS"]:
                faults.append(f"{path}: {name} is not a door of {other}")
            used_doors.add((other, door))
    for room in rooms:
        for door in rooms[room]["DOORS"]:
            if (room, door) not in used_doors:
                faults.append(f"house.cmake: nobody enters {room} by {door}")
    for one in sorted(arrows):
        for other in sorted(arrows[one]):
            if one < other and one in arrows.get(other, ()):
                faults.append(f"{one} and {other} include each other")
    return faults, lines


def try_house(**spoilt):
    """A sound house of two rooms, with files replaced or added, and what is found wrong with it."""
    files = {
        "house.cmake": "room(cellar\n  DOORS wine)\nroom(cellar/vault\n  DOORS port)\nroom(hall\n  USES cellar)\n",
        "cellar/wine.h": "#pragma once\n", "cellar/wine.cpp": '#include "cellar/wine.h"\n#include "cellar/vault/port.h"\n',
        "cellar/rats.h": "#pragma once\n", "cellar/vault/port.h": "#pragma once\n",
        "hall/table.cpp": '#include "cellar/wine.h"\n',
    }
    files.update({name.replace("__", "/").replace("_h", ".h").replace("_cpp", ".cpp").replace("_cmake", ".cmake"): text
                  for name, text in spoilt.items()})
    with tempfile.TemporaryDirectory() as src:
        for name, text in files.items():
            os.makedirs(os.path.dirname(os.path.join(src, name)), exist_ok=True)
            with open(os.path.join(src, name), "w") as file:
                file.write(text)
        return faults_of(src)[0]


def test_of_the_checks():
    assert try_house() == [], try_house()
    for said, spoilt in [
            ("is not a door", {"hall__table_cpp": '#include "cellar/wine.h"\n#include "cellar/rats.h"\n'}),
            ("must not use hall", {"cellar__wine_cpp": '#include "cellar/wine.h"\n#include "cellar/vault/port.h"\n'
                                                       '#include "hall/bell.h"\n', "hall__bell_h": "\n"}),
            ("must not use cellar", {"cellar__vault__port_h": '#include "cellar/wine.h"\n'}),
            ("include each other", {"cellar__rats_h": '#include "cellar/wine.h"\n',
                                    "cellar__wine_h": '#include "cellar/rats.h"\n'}),
            ("own header first", {"cellar__wine_cpp": '#include "cellar/vault/port.h"\n#include "cellar/wine.h"\n'}),
            ("speaks of the command line", {"cellar__rats_h": 'auto remedy = "say --role cavity";\n'}),
            ("heavy library", {"cellar__rats_h": "#include <CGAL/Surface_mesh.h>\n"}),
            ("stays in", {"hall__table_cpp": '#include "cellar/wine.h"\n#include <assimp/scene.h>\n'}),
            ("nobody enters", {"hall__table_cpp": "\n"}),
            ("has no header", {"house_cmake": "room(cellar\n  DOORS wine gin)\nroom(cellar/vault\n  DOORS port)\n"
                                              "room(hall\n  USES cellar)\n"}),
            ("listed before", {"house_cmake": "room(hall\n  USES cellar)\nroom(cellar\n  DOORS wine)\n"
                                              "room(cellar/vault\n  DOORS port)\n"}),
            ("in no room", {"shed__rake_h": "\n"})]:
        found = try_house(**spoilt)
        assert any(said in fault for fault in found), (said, found)


def lost_places(root):
    """What DEVELOPERS.md names in the house, `room/file`, and nobody finds there."""
    with open(os.path.join(root, "DEVELOPERS.md")) as file:
        named = re.findall(r"`((?:src/|tests/)?[a-z]+(?:/[a-z_]+)+)(?:\.[a-z]+)?`", file.read())
    roofs = ("", "src", "src/web", "tests")
    return [f"DEVELOPERS.md: {name} is not there" for name in sorted(set(named))
            if not any(glob.glob(os.path.join(root, roof, name + "*")) for roof in roofs)], len(named)


def main():
    test_of_the_checks()
    faults, lines = faults_of(os.path.join(sys.argv[1], "src"))
    lost, named = lost_places(sys.argv[1])
    faults += lost
    if named < 50:
        faults.append(f"DEVELOPERS.md: only {named} places were found in it: are they written as before?")
    if lines < 1000:
        faults.append(f"only {lines} include lines were found under {sys.argv[1]}/src: is the path right?")
    print("\n".join(faults) or f"{lines} include lines keep to the doors")
    sys.exit(1 if faults else 0)


main()
