"""Every shipped mould, formula, run and file of fats obeys its JSON Schema, by Debian's jsonschema; a slip does not."""
import copy
import glob
import json
import os
import sys

import jsonschema

root = sys.argv[1]
schemas = {}
for kind in ("mould", "formula", "run", "tips", "fats"):
    with open(f"{root}/src/schemas/{kind}.schema.json") as file:
        schemas[kind] = json.load(file)
    jsonschema.Draft202012Validator.check_schema(schemas[kind])

files = glob.glob(f"{root}/moulds/*.json") + glob.glob(f"{root}/examples/*.json")
by_id = {schema["$id"]: schema for schema in schemas.values()}
kinds = set()
failures = []
for path in sorted(files):
    with open(path) as file:
        document = json.load(file)
    kind = document["schema"].split(".")[1].split("/")[0]
    kinds.add(kind)
    resolver = jsonschema.RefResolver.from_schema(schemas[kind], store=by_id)
    validator = jsonschema.Draft202012Validator(schemas[kind], resolver=resolver)
    for error in validator.iter_errors(document):
        failures.append(f"{path}: {list(error.path)}: {error.message}")
    named = os.path.normpath(os.path.join(os.path.dirname(path), document["$schema"]))
    if not os.path.isfile(named):
        failures.append(f"{path}: names the schema {document['$schema']}, which is not there")
    slip = copy.deepcopy(document)
    slip["nmae"] = "x"
    if validator.is_valid(slip):
        failures.append(f"{path}: the schema lets an unknown key pass")
    for key in schemas[kind]["required"]:
        lacking = {k: v for k, v in document.items() if k != key}
        if validator.is_valid(lacking):
            failures.append(f"{path}: the schema lets a missing {key} pass")

if kinds != {"mould", "formula", "run", "tips", "fats"}:
    failures.append(f"looked at {kinds} only")
print("\n".join(failures) or f"{len(files)} files obey their schemas")
sys.exit(bool(failures))
