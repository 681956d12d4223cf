"""Links decoded by Python's base64, zlib and CRC-32, and by a reader written here."""

import base64
import json
import pathlib
import zlib

from postcard import Body

KINDS = ["paste", "preferment", "final", "filling", "topping", "wash"]
SAMPLES = pathlib.Path(__file__).resolve().parents[1] / "sheet" / "samples"


def body_of(text):
    """The body of a link, after checks of its length and checksum."""
    data = base64.urlsafe_b64decode(text + "=" * (-len(text) % 4))
    frame, check = data[:-4], int.from_bytes(data[-4:], "little")
    assert zlib.crc32(frame) == check
    version, form, length, body = frame[0], frame[1], int.from_bytes(frame[2:4], "little"), frame[4:]
    assert (version, length) == (1, len(body))
    return zlib.decompress(body, wbits=-15) if form == 1 else body


def test_every_link_holds_the_formula(pairs):
    longest = 0
    for document, result in pairs:
        text = result["link"]
        longest = max(longest, len(text))
        sheet = Body(body_of(text)).sheet()
        streams = document["formula"]["streams"]
        assert [KINDS[s["kind"]] for s in sheet["streams"]] == [s["kind"] for s in streams]
        for packed, stream in zip(sheet["streams"], streams, strict=True):
            assert (packed["steam_g"] or 0) == stream.get("steam_g", 0)
            for got, line in zip(packed["lines"], stream["lines"], strict=True):
                assert got["ingredient"] == line["ingredient"]
                assert got["mass_g"] == line["mass_g"]  # to the last bit
                assert got["poured_g"] == line.get("poured_g")
                assert got["counts_as_flour"] == line.get("counts_as_flour")
        losses = document["batch"]["losses"]
        assert sheet["losses"] == [losses[k] for k in (
            "residue_g", "residue_share", "dividing_share", "bake_share", "topping_share")]
        assert sheet["pieces"] == document["batch"]["pieces"]
        assert sheet["syrup_at_c"] == document["batch"]["syrup_at_c"]
    assert longest <= 600


def test_the_frozen_links_are_read():
    first, second = (SAMPLES / "v1.links.txt").read_text().split()
    assert Body(body_of(first)).sheet()["name"] == "Frozen sample"
    own = Body(body_of(second)).sheet()["own"]
    assert own[0]["name"] == "Mill No. 7 dark bar"


def lines(name):
    return (SAMPLES / name).read_text(encoding="utf-8").splitlines()


def test_every_frozen_link_holds_the_figures_of_the_record_beside_it():
    """None of our code takes part: Python reads the records, the reader above the links."""
    pairs = [*zip(lines("v1.examples.links.txt"), lines("v1.examples.jsonl"), strict=True),
             *zip(lines("v1.full.links.txt"), lines("v1.full.formula.json"), strict=True),
             *zip(lines("v1.drawn.links.txt"), lines("v1.drawn_formulas.jsonl"), strict=True)]
    assert len(pairs) == 65
    for link, text in pairs:
        sheet, record = Body(body_of(link)).sheet(), json.loads(text)
        assert (sheet["name"], sheet["note"]) == (record["name"], record["note"])
        assert sheet["pieces"] == record["batch"]["pieces"]
        assert sheet["losses"] == list(record["batch"]["losses"].values())
        assert sheet["syrup_at_c"] == record["batch"]["syrup_at_c"]
        wanted = list(record["batch"]["wanted"].values())
        assert sheet["wanted"] == (WANTED.index(wanted[0]), wanted[1:])
        same_streams(sheet, record["formula"]["streams"])
        same_tin(sheet["tin"], record["batch"].get("tin"))


WANTED = ["times", "dough", "pieces", "flour_on_hand", "on_hand", "class"]


def same_streams(sheet, streams):
    warmth = []
    for s, (packed, stream) in enumerate(zip(sheet["streams"], streams, strict=True)):
        assert (KINDS[packed["kind"]], packed["name"]) == (stream["kind"], stream["name"])
        assert packed["steam_g"] == stream.get("steam_g")
        if "at_c" in stream:
            warmth.append({"stream": s, "line": None, "at_c": stream["at_c"]})
        for n, (got, line) in enumerate(zip(packed["lines"], stream["lines"], strict=True)):
            for key in ("mass_g", "counts_as_flour", "poured_g"):
                assert got[key] == line.get(key)
            if got["own"]:
                own, label = sheet["own"][got["ingredient"]], line["own"]["label"]
                assert own["name"] == line["own"]["name"]
                assert [figure for figure in own["label"] if figure is not None] == list(label.values())
            else:
                assert got["ingredient"] == line["ingredient"]
            if "at_c" in line:
                warmth.append({"stream": s, "line": n, "at_c": line["at_c"]})
    assert sheet["warmth"] == warmth


def same_tin(packed, used):
    assert (packed is None) == (used is None)
    if used:
        assert (packed["count"], packed["rows"]) == (used["count"], used.get("rows"))
        assert (packed["room_cm3_per_g"], packed["rise"]) == (used.get("room_cm3_per_g"), used["rise"])
        assert packed["lidded"] == used["tin"]["lidded"]
        assert packed["lengths_m"] == [value for key, value in used["tin"].items() if key.endswith("_m")]
        assert packed["cups"] == used["tin"].get("cups")
