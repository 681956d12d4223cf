"""Records against their JSON Schema, and invalid documents against the worksheet."""

import copy
import json
import pathlib

import jsonschema
import pytest

SHEET = pathlib.Path(__file__).resolve().parents[1] / "sheet"
SCHEMA = json.loads((SHEET / "record.schema.json").read_text(encoding="utf-8"))


@pytest.fixture(scope="module")
def validator():
    jsonschema.Draft202012Validator.check_schema(SCHEMA)
    return jsonschema.Draft202012Validator(SCHEMA)


def test_every_record_that_is_written_fits_the_schema(pairs, validator):
    for document, result in pairs:
        record = json.loads(result["record"])
        validator.validate(record)
        for stream, asked in zip(record["formula"]["streams"], document["formula"]["streams"], strict=True):
            assert [l["mass_g"] for l in stream["lines"]] == [l["mass_g"] for l in asked["lines"]]


def test_every_frozen_sample_fits_the_schema(validator):
    samples = sorted(SHEET.glob("samples/v1.*.json*"))
    assert len(samples) == 37
    records = [line for sample in samples for line in sample.read_text(encoding="utf-8").splitlines()]
    assert len(records) == 217
    for record in records:
        validator.validate(json.loads(record))


WRONG = [
    (lambda d: d["formula"]["streams"][0]["lines"][0].update(mass_g=-1), "OutOfRange"),
    (lambda d: d["formula"]["streams"][0]["lines"][0].update(mass_g="5"), "WrongType"),
    (lambda d: d["formula"]["streams"][0]["lines"][0].update(ounces=5), "UnknownField"),
    (lambda d: d["formula"]["streams"][0]["lines"][0].pop("ingredient"), "Missing"),
    (lambda d: d["formula"]["streams"][0]["lines"][0].update(ingredient=65536), "OutOfRange"),
    (lambda d: d["formula"]["streams"][0].update(kind="poolish"), "UnknownWord"),
    (lambda d: d["formula"]["streams"][0].pop("name"), "Missing"),
    (lambda d: d["formula"].update(streams=d["formula"]["streams"] * 13), "TooMany"),
    (lambda d: d["batch"].update(pieces=0), "OutOfRange"),
    (lambda d: d["batch"].update(pieces=2.5), "NotWhole"),
    (lambda d: d["batch"].update(syrup_at_c=351), "OutOfRange"),
    (lambda d: d["batch"]["wanted"].update(by="magic"), "UnknownWord"),
]


def test_the_reader_rejects_what_the_schema_rejects(pairs, ask, validator):
    document, result = pairs[0]
    record = json.loads(result["record"])
    invalid = []
    for change, _ in WRONG:
        one = copy.deepcopy(record)
        change(one)
        assert not validator.is_valid(one)
        invalid.append({"worksheet": 1, **{k: one[k] for k in ("bread", "formula", "batch")}})
    for (_, kind), answer in zip(WRONG, ask(invalid), strict=True):
        assert answer["error"]["kind"] == kind, answer
        assert answer["error"]["path"].split(".")[0] in ("formula", "batch")


def test_each_invalid_line_gets_an_error(ask):
    hostile = [
        "{", "[]", "null", "\"\"", "[" * 5000, "{\"worksheet\":1e999}", "{\"worksheet\":NaN}",
        "{\"worksheet\":1,\"worksheet\":1,\"formula\":{\"streams\":[]}}",
        "{\"worksheet\":2}", "{\"worksheet\":0}", "{\"worksheet\":1}", "\u202e\u0000", "\\x00",
    ]
    for line, answer in zip(hostile, ask(hostile), strict=True):
        assert set(answer) == {"worksheet", "error"}, line
        assert set(answer["error"]) == {"path", "kind", "message"}
