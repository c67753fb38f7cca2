"""Checks a job against the JSON Schema that the package ships, and prints each error with the path of its field.

    python3 check.py job.json

Needs the package jsonschema (on Debian: python3-jsonschema). It finds what check.mjs finds.
"""

import json
import pathlib
import sys

from jsonschema import Draft202012Validator

HERE = pathlib.Path(__file__).parent
SCHEMA = HERE / "node_modules/swath-to-spoon/dist/schema/plan-input.schema.json"


def narrowed(schema, job):
    """The schema without $ref, anyOf and if, as it holds for this job: of each set of alternatives, the one that is meant."""

    def resolved(part):
        own = {key: value for key, value in part.items() if key != "$ref"}
        return {**resolved(schema["$defs"][part["$ref"].split("/")[-1]]), **own} if "$ref" in part else own

    def ways(part):
        """The alternatives: `anyOf`, an `if` and `then` for each kind, or an `if` with `then` and `else`."""
        if "anyOf" in part:
            return part["anyOf"]
        if "allOf" in part:
            return [kind["then"] for kind in part["allOf"]]
        return [part["then"], part["else"]] if "else" in part else None

    def alternatives(part):
        part = resolved(part)
        found = ways(part)
        if found is None:
            return [part]
        return [one for way in found if not is_nothing(resolved(way)) for one in alternatives(way)]

    def within(part, data):
        part = max(alternatives(part), key=lambda one: fit(one, data))
        if part.get("type") == "object":
            given = data if isinstance(data, dict) else {}
            properties = part.get("properties", {})
            # A missing member needs no schema of its own: `required` reports it.
            entered = {
                key: one if one is False else within(one, given[key]) if key in given else True
                for key, one in properties.items()
            }
            return {**part, "properties": entered}
        if part.get("type") == "array" and isinstance(data, list):
            if part.get("items"):
                return {**part, "prefixItems": [within(part["items"], one) for one in data], "items": False}
            return {**part, "prefixItems": [within(*pair) for pair in zip(part["prefixItems"], data)]}
        return part

    return within(schema, job)


def is_nothing(part):
    """Whether it stands for a field left out: a null, or blank text."""
    return part.get("const", "") is None or part.get("pattern") == r"^\s*$"


def fit(part, data):
    kinds = {"object": dict, "array": list, "string": str, "boolean": bool}
    if not isinstance(data, kinds.get(part.get("type"), (int, float))):
        return -1000
    if not isinstance(data, dict):
        return 1
    properties = part.get("properties", {})
    wrong = sum(
        isinstance(one, dict) and "const" in one and data.get(key) != one["const"]
        for key, one in properties.items()
    )
    known = sum(bool(properties.get(key)) for key in data)
    missing = sum(key not in data for key in part.get("required", []))
    return known - missing - 100 * wrong


def leaves(errors):
    """The errors inside a `then`, without the one of its `if`."""
    for error in errors:
        if error.validator == "if":
            yield from leaves(error.context)
        else:
            yield error


def faults(schema, job):
    for error in leaves(Draft202012Validator(schema).iter_errors(job)):
        path = list(error.absolute_path)
        if error.validator == "required":
            # One error a member; the validator names it in its words only.
            yield from {(*path, key): "Required." for key in error.validator_value if key not in error.instance}.items()
        elif error.validator == "additionalProperties":
            yield from {(*path, key): "Not used here. Remove it." for key in error.instance if key not in error.schema["properties"]}.items()
        elif error.validator == "const" and error.validator_value is None:
            yield tuple(path), "Not used here. Remove it."
        elif error.validator == "not":
            yield tuple(path), "Can't be combined with another field. Remove one of them."
        elif error.validator == "pattern" and "examples" in error.schema:
            yield tuple(path), f"Enter it like this: {', '.join(error.schema['examples'])}."
        else:
            yield tuple(path), error.message


def written(path):
    """("products", 0, "rate") as products[0].rate"""
    return "".join(f"[{key}]" if isinstance(key, int) else f".{key}" for key in path).removeprefix(".")


def main():
    job = json.loads(pathlib.Path(sys.argv[1]).read_text(encoding="utf-8"))
    schema = narrowed(json.loads(SCHEMA.read_text(encoding="utf-8")), job)
    found = dict(faults({key: value for key, value in schema.items() if key != "$defs"}, job))
    for path, message in found.items():
        print(f"{written(path)}: {message}")
    sys.exit(1 if found else 0)


main()
