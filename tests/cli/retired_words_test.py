"""Words that were given up for better ones stand nowhere that a maker looks: in no text of the program or the page, no schema,
README, example, mould or --help. What is code (names, comments, keys of answers) is not looked at.

A word goes in when its last place is gone: (what was said, what is said instead, why)."""
import json
import os
import re
import subprocess
import sys

WORDS = [
    ("a fault of brimwright", "internal error", "sounds as if her files were at fault"),
    ("absurdly", "far too", "rude"),
    ("any studio handles", "too large to be right", "a studio is no limit"),
    ("asks for none", "no label in the run", "cryptic"),
    ("at the planned whip", "at the planned whipped density", "a whip is a tool"),
    ("before it is sold", "before sale", "longer"),
    ("believable piece", "lightest piece to expect", "unclear"),
    ("both lyes", "both lye solutions", "lye alone may mean dry alkali"),
    ("cast ahead", "cast beforehand", "a loan translation"),
    ("comes about", "is calculated", "a loan translation"),
    ("cup reads", "cup weighs", "a cup does not read"),
    ("effective superfat", "superfat as weighed", "three names for one figure"),
    ("film in its jug", "left in the jug", "unclear"),
    ("film in the jug", "left in the jug", "unclear"),
    ("from memory, not read in the source", "not checked at the source", "whose memory?"),
    ("further folder", "another folder", "longer"),
    ("has been taken away", "was deleted", "a loan translation"),
    ("holds the cast fast", "the soap would not come out", "unclear"),
    ("in its jug", "weigh out", "unclear"),
    ("in the order of the hands", "in the order you work", "a loan translation"),
    ("in the round", "3D view", "unclear"),
    ("ingredients as charged", "as weighed in", "a factory's word"),
    ("is challenged", "is flagged", "unclear"),
    ("is no cup", "is not a cup", "a loan translation"),
    ("is no file name", "is not a file name", "a loan translation"),
    ("is no list", "is not a list", "a loan translation"),
    ("is no share", "is too large to be right", "unclear"),
    ("is no temperature", "is outside -40 to 200 °C", "unclear"),
    ("is no time", "is zero", "unclear"),
    ("is no tip", "is not a tip", "a loan translation"),
    ("is told", "is reported", "a loan translation"),
    ("jug film", "left in the jug", "unclear"),
    ("lean of the wall", "draft angle of the wall", "the trade's term"),
    ("lye of the day before", "lye solution made yesterday", "lye alone may mean dry alkali"),
    ("lye pot", "pot of lye solution", "lye alone may mean dry alkali"),
    ("meadow green mica", "green mica", "sounds like a shop's colour"),
    ("mend", "correct", "old-fashioned; a mesh is repaired"),
    ("mended", "corrected", "old-fashioned; a mesh is repaired"),
    ("mends", "corrects", "old-fashioned; a mesh is repaired"),
    ("not said", "not given", "a loan translation"),
    ("perch and set", "decorate", "no maker says perch"),
    ("pocket", "cavity", "one word for it"),
    ("proud", "sticks out", "a joiner's word"),
    ("reads coarser", "has a coarser step", "unclear"),
    ("recess", "headspace", "one word for it"),
    ("reckon", "calculate", "old-fashioned"),
    ("reckoned", "calculated", "old-fashioned"),
    ("reckons", "expects", "old-fashioned"),
    ("rejects, and why", "rejects", "longer"),
    ("say one of them", "keep one of the two", "unclear"),
    ("says no amount", "gives no amount", "a file does not speak"),
    ("says no level", "gives no level", "a file does not speak"),
    ("says no number", "gives no number", "a file does not speak"),
    ("says no size", "gives no size", "a file does not speak"),
    ("serves at", "is running at", "unclear"),
    ("shipped order", "example run", "an order is a customer's; shipped means sent to one"),
    ("ships", "built-in", "shipped means sent to a customer"),
    ("slice follows slice", "slices are cut along", "unclear"),
    ("stands twice", "appears twice", "a loan translation"),
    ("steamed-off", "top up with plain water", "four wordings for one act"),
    ("stuck to tools", "left on tools", "plainer"),
    ("swell of the bead", "bead ÷ tip opening", "unclear"),
    ("take away", "remove", "a loan translation"),
    ("taken away", "removed", "a loan translation"),
    ("time constant", "days to 63 %", "an engineer's word"),
    ("to be said", "still needed", "a loan translation"),
    ("to be seen", "visible", "longer"),
    ("twin lye", "dual lye", "the trade's term"),
    ("underneath", "outside this page", "unclear"),
    ("vessel then holds", "running total", "unclear"),
    ("wants mending", "needs correcting", "old-fashioned"),
    ("warrants", "guarantees", "a lawyer's word"),
    ("watch out", "cautions", "one word for them on page, sheet and plan"),
    ("water into lye: slowly", "alkali into water", "lye is the solution here, alkali what is dry"),
    ("your hand's", "correction for your hand", "one name for it"),
]
KEYS = [
    ("batter_limit", "batter_below", "misleads"),
    ("each_fill", "time_per_tray_fill", "a time without the word"),
    ("fats_from", "own_fats", "plainer"),
    ("finally_lost", "water_lost_in_the_end", "lost of what?"),
    ("jug_film", "left_in_jug", "private word"),
    ("leaning_up", "straight_up", "unclear"),
    ("lye_made_at", "room_at", "is the room's temperature"),
    ("made_of", "cast_as", "misleads"),
    ("on_surface", "on_covered_surface", "misleads"),
    ("perch", "decorations", "no maker says it"),
    ("propped", "tilted", "the trade tilts a mould"),
    ("saponifies", "share", "plainer"),
    ("solidity", "soap_share", "private word"),
    ("stays_open", "open_time", "a time without the word"),
    ("time_constant", "time_to_63_percent", "an engineer's word"),
    ("tips_from", "own_tips", "plainer"),
    ("warmth", "temperatures", "plainer"),
    ("whisk_catches", "whisk_needs", "unclear"),
]

# Where the old words must stay: files of version 1 are still read by them.
READER_OF_VERSION_1 = {"src/schemas/kinds.cpp", "src/desk/file_names.cpp"}


def spaced(text):
    return re.sub(r"\s+", " ", text)


def line_of(text, at):
    return text.count("\n", 0, at) + 1


ESCAPES = {"n": "\n", "t": " ", "r": " ", "0": " "}


def unescaped(text):
    text = re.sub(r"\\u\{?([0-9a-fA-F]{4})\}?", lambda found: chr(int(found[1], 16)), text)
    return re.sub(r"\\(.)", lambda found: ESCAPES.get(found[1], found[1]), text, flags=re.S)


CPP = re.compile(r"""
    (?P<comment> //[^\n]* | /\*.*?\*/ )
  | (?P<include> ^[ \t]*\#[ \t]*include[^\n]* )
  | (?P<raw>     (?:u8|[uUL])?R"(?P<delimiter>[^()\\\s]*)\((?P<inside>.*?)\)(?P=delimiter)" )
  | (?P<string>  (?:u8|[uUL])?"(?P<text>(?:[^"\\\n]|\\.)*)" )
  | (?P<number>  (?<![\w])\d[\w'.]* )
  | (?P<char>    '(?:[^'\\\n]|\\.)+' )
""", re.X | re.S | re.M)


def cpp_texts(source):
    """Each literal with its line; those that stand side by side are one, as the compiler has it."""
    texts, end = [], None
    for token in CPP.finditer(source):
        kind = token.lastgroup if token.lastgroup not in ("text", "inside", "delimiter") else None
        kind = kind or ("raw" if token["raw"] else "string")
        if kind == "comment":
            if end is not None and not source[end:token.start()].strip():
                end = token.end()  # between two halves of one text
            continue
        if kind not in ("raw", "string"):
            continue
        text = token["inside"] if kind == "raw" else unescaped(token["text"])
        if end is not None and not source[end:token.start()].strip():
            texts[-1] = (texts[-1][0], texts[-1][1] + text)
        else:
            texts.append((line_of(source, token.start()), text))
        end = token.end()
    return texts


# Code in the page's markup: never read by a person.
MARKUP_CODE = re.compile(r"""\s[.?@]?(?:class|id|for|href|src|name|type|role|data-[\w-]+|aria-(?:controls|describedby|labelledby))="[^"]*\"""")
BEFORE_REGEX = re.compile(r"(?:^|[(,=:\[!&|?{};+\-*%<>~^]|\b(?:return|typeof|case|in|of))\s*$")


def ts_texts(source):
    """Each literal with its line, templates with what is put in left open."""
    texts = []

    def template(at):
        begin, parts = at, []
        at += 1
        while at < len(source) and source[at] != "`":
            if source[at] == "\\":
                parts.append(unescaped(source[at:at + 2]))
                at += 2
            elif source.startswith("${", at):
                at = code(at + 2, "}") + 1
                parts.append("\0")
            else:
                parts.append(source[at])
                at += 1
        texts.append((line_of(source, begin), MARKUP_CODE.sub(" ", "".join(parts))))
        return at + 1

    def code(at, closing):
        depth = 0
        while at < len(source):
            here = source[at]
            if here == closing and depth == 0:
                return at
            if source.startswith("//", at):
                at = source.find("\n", at)
                at = len(source) if at < 0 else at
            elif source.startswith("/*", at):
                at = source.index("*/", at) + 2
            elif here in "\"'":
                found = re.compile(rf"{here}((?:[^{here}\\\n]|\\.)*){here}", re.S).match(source, at)
                texts.append((line_of(source, at), unescaped(found[1])))
                at = found.end()
            elif here == "`":
                at = template(at)
            elif here == "/" and BEFORE_REGEX.search(source[max(0, at - 60):at]):
                at = re.compile(r"/(?:[^/\\\[\n]|\\.|\[(?:[^\]\\\n]|\\.)*\])+/\w*").match(source, at).end()
            else:
                depth += (here in "({[") - (here in ")}]")
                at += 1
        return at

    code(0, None)
    return texts


# Names of types and places in a schema.
JSON_CODE = ("$ref", "$id", "$schema", "title", "pattern")


def json_texts(source):
    """Values of keys and of lists; of keys only their names, apart."""
    def walk(value):
        if isinstance(value, dict):
            for key, inner in value.items():
                yield "key", key
                if key not in JSON_CODE or not isinstance(inner, str):
                    yield from walk(inner)
        elif isinstance(value, list):
            for inner in value:
                yield from walk(inner)
        elif isinstance(value, str):
            yield "text", value
    return list(walk(json.loads(source)))


PATTERNS = [(re.compile(r"(?<![\w-])" + r"\s+".join(map(re.escape, old.split())) + r"(?![\w-])", re.I), old, new, why)
            for old, new, why in WORDS]


def complaints(name, kind, source):
    """What is wrong with one file: "name:line: ..."."""
    keys_seen = []
    if kind == "json":
        texts = []
        for sort, text in json_texts(source):
            (texts if sort == "text" else keys_seen).append((1, text))
    elif kind == "plain":
        texts = [(1, source)]
        keys_seen = [(1, key) for key in re.findall(r"[`\"](\w+)[`\"]", source)]
    else:
        texts = cpp_texts(source) if kind == "cpp" else ts_texts(source)
        keys_seen = texts
    found = []
    for pattern, old, new, why in PATTERNS:
        for line, text in texts:
            if pattern.search(text):
                found.append(f"{name}:{line}: \"{old}\" ({why}): say \"{new}\", in: {spaced(text)[:100]}")
    for old, new, why in KEYS:
        for line, key in keys_seen:
            if key == old:
                found.append(f"{name}:{line}: the key \"{old}\" ({why}) is \"{new}\" today")
    return found


def files(root):
    """What a maker sees the texts of: (path, kind)."""
    for folder, inner, names in os.walk(f"{root}/src"):
        inner[:] = [one for one in inner if one not in ("node_modules", "bundle", "build")]
        for name in names:
            kind = {".cpp": "cpp", ".h": "cpp", ".ts": "ts", ".json": "json"}.get(os.path.splitext(name)[1])
            path = os.path.relpath(os.path.join(folder, name), root)
            if name in ("package.json", "package-lock.json", "tsconfig.json") or path in READER_OF_VERSION_1:
                continue
            if kind == "ts" and "/source/" not in path:
                continue
            if kind:
                yield path, kind
    for folder in ("examples", "moulds"):
        for name in sorted(os.listdir(f"{root}/{folder}")):
            if name.endswith((".json", ".sh")):
                yield f"{folder}/{name}", "json" if name.endswith(".json") else "plain"
    yield "README.md", "plain"


def help_texts(program):
    def of(*words):
        return subprocess.run([program, *words, "--help"], capture_output=True, text=True, check=True).stdout
    first = of()
    yield "--help", first
    for command in re.findall(r"^  (\w+) ", first[first.index("Subcommands"):] if "Subcommands" in first else first, re.M):
        if command != "brimwright":
            yield f"{command} --help", of(command)


def planted():
    """The test looks where it says it looks: each of these must be found, or not, on its line."""
    word, key = "vessel then holds", "perch"
    first, rest = word.rsplit(" ", 1)
    cpp = [
        (f'f("{word}");', 1), (f"// {word}", 0), (f'/* "{word}" */ g();', 0), (f'f("a" // {word}\n  "b");', 0),
        (f'f("Work {first} "\n  // and\n  "{rest}.");', 1), (f'f(R"x(\n{word})x");', 1), (f'f(\'"\', "{word}");', 1),
        (f'int n = 1\'000; f("{word}");', 1), (f'f("\\"{word}\\"");', 1), (f'#include "{word}.h"\n', 0), (f'f("{key}");', 1),
        (f'f("{key}_lane");', 0), (f'f("{first}", "{rest}");', 0),
    ]
    ts = [
        (f'f("{word}");', 1), (f"f('{word}');", 1), (f"// {word}\n", 0), (f"/* '{word}' */", 0), (f"f(`{word} ${{n}}`);", 1),
        (f"f(`a ${{b ? `{word}` : \"\"}} c`);", 1), (f"f(`a ${{{{ n: \"{word}\" }}.n}}`);", 1), (f"html`<p>{word}</p>`;", 1),
        (f"html`<p class=\"{word}\">x</p>`;", 0), (f"x.replace(/[\"'`]/g, \"{word}\");", 1), (f"a / b; f(\"{word}\"); c / d;", 1),
        (f"x.match(/{word}/);", 0), (f"f(\"{key}\");", 1),
    ]
    texts = [("cpp", *one) for one in cpp] + [("ts", *one) for one in ts]
    texts += [("json", json.dumps({"note": f"Work {word}."}), 1), ("json", json.dumps({"a": [{key: 1}]}), 1),
              ("json", json.dumps({"a": "b"}), 0), ("plain", f"as it is\ndone {first}\n{rest}", 1), ("plain", f"a `{key}` b", 1),
              ("plain", f"a {word.replace(' ', '_')} b", 0)]
    for kind, source, times in texts:
        got = complaints("planted", kind, source)
        if len(got) != times:
            yield f"planted in {kind}: {source!r} gives {got}, not {times}"


def main():
    root, program = sys.argv[1:3]
    failures, looked = list(planted()), 0
    for path, kind in files(root):
        with open(f"{root}/{path}", encoding="utf-8") as file:
            failures += complaints(path, kind, file.read())
        looked += 1
    helps = list(help_texts(program))
    if looked < 300 or len(helps) < 6:
        failures.append(f"only {looked} files and {len(helps)} helps were found")
    for name, text in helps:
        failures += complaints(name, "plain", text)
    print("\n".join(failures) or f"none of {len(WORDS)} words and {len(KEYS)} keys in {looked} files and {len(helps)} helps")
    sys.exit(bool(failures))


if __name__ == "__main__":
    main()
