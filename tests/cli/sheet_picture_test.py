"""The README's picture of a bench sheet shows today's sheet: a page of the same size, and no word or weight that is not on the
sheet, wherever other fonts part its pages. It is drawn anew by: python3 tests/cli/sheet_picture_test.py . PROGRAM --write"""
import os
import re
import struct
import subprocess
import sys
import tempfile
import zlib

root, program = sys.argv[1:3]
picture = os.path.join(root, ".pictures", "sheet.png")
page = "3"  # of the spring cups: a lye, what is added to the base, its layers
os.environ["SOURCE_DATE_EPOCH"] = "1780170360"  # 2026-05-30 19:46 UTC, on the page's foot


def made(*words):
    return subprocess.run(words, check=True, capture_output=True, timeout=120).stdout


def chunks(png):
    """(kind, data) of each chunk: PNG (ISO/IEC 15948), 5.3."""
    at = 8
    while at < len(png):
        length, kind = struct.unpack(">I4s", png[at:at + 8])
        yield kind, png[at + 8:at + 8 + length]
        at += length + 12


def with_words(png, words):
    """The picture with the page's words in it, before the end: iTXt, 11.3.3.4."""
    data = b"Description\0\0\0\0\0" + words.encode()
    chunk = b"iTXt" + data
    told = struct.pack(">I", len(data)) + chunk + struct.pack(">I", zlib.crc32(chunk))
    return png[:-12] + told + png[-12:]


def size_of(png):
    return struct.unpack(">II", dict(chunks(png))[b"IHDR"][:8])


with tempfile.TemporaryDirectory() as folder:
    pdf = os.path.join(folder, "sheet.pdf")
    made(program, "sheet", os.path.join(root, "examples", "spring_cups.run.json"), "--pdf", pdf)
    words = " ".join(made("pdftotext", "-f", page, "-l", page, pdf, "-").decode().split())
    words = re.sub(r"Printed .*? by Brimwright \S+|\d+ / \d+", "", words)  # of its version, and of how the pages part
    on_sheet = made("pdftotext", pdf, "-").decode().split()
    made("pdftoppm", "-r", "80", "-gray", "-png", "-f", page, "-l", page, "-singlefile", pdf, os.path.join(folder, "sheet"))
    with open(os.path.join(folder, "sheet.png"), "rb") as file:
        today = file.read()

if "--write" in sys.argv:
    os.makedirs(os.path.dirname(picture), exist_ok=True)
    with open(picture, "wb") as file:
        file.write(with_words(today, words))

with open(picture, "rb") as file:
    kept = file.read()
failures = []
if size_of(kept) != size_of(today):
    failures.append(f"{picture} is {size_of(kept)} dots, today's page {size_of(today)}")
told = dict(chunks(kept)).get(b"iTXt", b"").rpartition(b"\0")[2].decode()
if len(told.split()) < 50:
    failures.append(f"{picture} does not say what it shows")
gone = [word for word in told.split() if word not in on_sheet]
if gone:
    failures.append(f"{picture} shows what is not on today's sheet: {gone}")
print("\n".join(failures) or "the picture shows today's sheet")
sys.exit(bool(failures))
