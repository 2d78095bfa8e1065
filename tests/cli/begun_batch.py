"""A batch put into a folder's records by SQL, with what it weighed and of which lots: what `note` does is tried by itself."""
import hashlib
import json
import os
import sqlite3
import zlib


def document(connection, value):
    text = json.dumps(value).encode()
    key = hashlib.sha256(text).hexdigest()
    connection.execute("INSERT OR IGNORE INTO document VALUES (?, ?, ?)", (key, len(text), zlib.compress(text)))
    return key


def begin(folder, code, begun_on, rows, notes, formula="meadow_base.formula.json"):
    """rows: key -> (material, name, grams, {lot: grams})"""
    connection = sqlite3.connect(f"{folder}/records.sqlite", isolation_level=None)
    connection.execute("PRAGMA foreign_keys = ON")
    connection.execute("BEGIN IMMEDIATE")
    with open(os.path.join(folder, formula)) as file:
        sources = document(connection, [{"path": formula, "text": file.read()}])
    connection.execute("INSERT INTO act (id, at, what, about) VALUES (?, '2026-12-01T09:00:00Z', 'note', '{}')", (code,))
    connection.execute("INSERT INTO code VALUES (?, 'file:plain_bars.run.json', 1, ?, 0)", (code, begun_on))
    connection.execute("INSERT INTO batch SELECT ?, ?, 'file:plain_bars.run.json', 'plain_bars.run.json', 'Plain bars', 1, ?, ?, 12, '0', ?, ?, "
                       "max(number), NULL FROM act", (f"id {code}", code, begun_on, begun_on, document(connection, {}), sources))
    for key, (material, name, grams, takes) in rows.items():
        connection.execute("INSERT INTO weighed VALUES (?, ?, ?, ?, 0, ?)", (f"id {code}", key, material, name, grams * 10**6))
        for lot, part in takes.items():
            connection.execute("INSERT INTO lot_change (lot, what, whole, day, batch, row) SELECT id, 'used', ?, ?, ?, ? FROM lot WHERE code = ?",
                               (-part * 10**6, begun_on, f"id {code}", key, lot))
    for key, value in notes.items():
        connection.execute("INSERT INTO note VALUES (?, ?, ?, '2026-12-01T09:00:00Z')", (f"id {code}", key, value))
    connection.execute("COMMIT")
    connection.close()
