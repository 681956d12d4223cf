"""Links opened by Python's own base64, zlib and CRC-32, and read by a reader of our own here."""

import base64
import pathlib
import zlib

from postcard import Body

KINDS = ["paste", "preferment", "final", "filling", "topping", "wash"]
SAMPLES = pathlib.Path(__file__).resolve().parents[1] / "sheet" / "samples"


def unsealed(text):
    """The body of a link, its length and checksum proved."""
    data = base64.urlsafe_b64decode(text + "=" * (-len(text) % 4))
    sealed, check = data[:-4], int.from_bytes(data[-4:], "little")
    assert zlib.crc32(sealed) == check
    version, form, length, body = sealed[0], sealed[1], int.from_bytes(sealed[2:4], "little"), sealed[4:]
    assert (version, length) == (1, len(body))
    return zlib.decompress(body, wbits=-15) if form == 1 else body


def test_every_link_holds_just_the_formula(pairs):
    longest = 0
    for document, result in pairs:
        text = result["link"]
        longest = max(longest, len(text))
        sheet = Body(unsealed(text)).sheet()
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


def test_the_frozen_links_open_here_too():
    first, second = (SAMPLES / "v1.links.txt").read_text().split()
    assert Body(unsealed(first)).sheet()["name"] == "Frozen sample"
    own = Body(unsealed(second)).sheet()["own"]
    assert own[0]["name"] == "Mill No. 7 dark bar"
