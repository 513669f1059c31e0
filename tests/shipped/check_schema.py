# SPDX-License-Identifier: GPL-3.0-or-later
"""Holds JSON files against a JSON Schema (draft 2020-12): check_schema.py SCHEMA FILE... Says what does not fit and ends with 1."""
import json
import sys

from jsonschema import Draft202012Validator

schema = json.load(open(sys.argv[1], encoding="utf-8"))
Draft202012Validator.check_schema(schema)
validator = Draft202012Validator(schema)
failed = False
for name in sys.argv[2:]:
    for error in validator.iter_errors(json.load(open(name, encoding="utf-8"))):
        failed = True
        place = "/".join(str(part) for part in error.absolute_path)
        print(f"{name}: {place}: {error.message[:300]}")
sys.exit(1 if failed else 0)
