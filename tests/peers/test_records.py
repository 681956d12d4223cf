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


def test_a_line_that_is_not_utf_8_gets_an_error_and_the_next_is_read(ask):
    good = {"worksheet": 1, "formula": {"streams": []}}
    # RFC 3629: bytes that never begin a character, one cut short, a surrogate, an overlong slash.
    bad = [b"\xff\xfe{}", b'{"worksheet":1,"bread":"\xc3', b"\xed\xa0\x80", b"\xc0\xaf"]
    documents = [part for line in bad for part in (line, good)]
    answers = ask(documents)
    for at, answer in enumerate(answers):
        if at % 2:
            assert "error" not in answer
        else:
            assert answer["error"]["kind"] == "NotUtf8"


LISTS = {
    "targets": {"figure": "moisture", "share": 0.4, "stream": 0, "line": 0},
    "stream_shares": {"stream": 0, "share": 0.1},
    "divide": {"dough_g": 100, "pieces": 2, "division_g": 1},
    "thickness_pa_s": 0.5,
    "boilings": {"altitude_m": 5},
}


def test_every_list_has_a_limit_that_is_told(ask):
    for key, item in LISTS.items():
        document = {"worksheet": 1, "formula": {"streams": []}}
        most, more = ask([{**document, key: [item] * 1000}, {**document, key: [item] * 1001}])
        assert "error" not in most, key
        assert more["error"]["path"] == key
        assert more["error"]["kind"] == "TooMany"
        assert "1000" in more["error"]["message"]


def test_lists_inside_lists_have_the_limit_too(ask):
    body = {"shape": "slab", "half_m": 0.01, "mass_g": 100, "specific_heat_j_per_kg_k": 3500,
            "conductivity_w_per_m_k": 0.5, "density_kg_per_m3": 1000, "start_c": 60}
    stay = {"minutes": 1, "air_c": 20, "coefficient_w_per_m2_k": 8}
    many = [
        ({"coolings": [{**body, "stays": [stay], "times_min": [1]}] * 1001}, "coolings"),
        ({"coolings": [{**body, "stays": [stay] * 1001, "times_min": [1]}]}, "coolings[0].stays"),
        ({"coolings": [{**body, "stays": [stay], "times_min": [1] * 1001}]}, "coolings[0].times_min"),
        ({"day": {"now_s": 1, "offsets": [{"from_s": at, "ahead_min": 0} for at in range(1001)]}},
         "day.offsets"),
    ]
    documents = [{"worksheet": 1, "formula": {"streams": []}, **one} for one, _ in many]
    for (_, path), answer in zip(many, ask(documents), strict=True):
        assert answer["error"]["kind"] == "TooMany", answer
        assert answer["error"]["path"] == path


def test_offsets_out_of_range_or_order_are_refused(ask):
    wrong = [
        ([{"from_s": 0, "ahead_min": 1081}], "day.offsets[0].ahead_min", "OutOfRange"),
        ([{"from_s": 0, "ahead_min": -1081}], "day.offsets[0].ahead_min", "OutOfRange"),
        ([{"from_s": 0, "ahead_min": 0.5}], "day.offsets[0].ahead_min", "OutOfRange"),
        ([{"from_s": -1, "ahead_min": 0}], "day.offsets[0].from_s", "OutOfRange"),
        ([{"from_s": 1e300, "ahead_min": 0}], "day.offsets[0].from_s", "OutOfRange"),
        ([{"from_s": 9, "ahead_min": 0}] * 2, "day.offsets[1].from_s", "OutOfOrder"),
    ]
    documents = [{"worksheet": 1, "formula": {"streams": []}, "day": {"now_s": 1, "offsets": one}}
                 for one, _, _ in wrong]
    for (_, path, kind), answer in zip(wrong, ask(documents), strict=True):
        assert (answer["error"]["path"], answer["error"]["kind"]) == (path, kind), answer
    right = [{"from_s": 0, "ahead_min": -1080}, {"from_s": 5, "ahead_min": 1080}]
    document = {"worksheet": 1, "formula": {"streams": []}, "day": {"now_s": 1, "offsets": right}}
    assert "error" not in ask([document])[0]
