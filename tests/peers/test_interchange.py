"""Square codes by an independent decoder, recipes by a JSON-LD processor, tables by Python's csv."""

import base64
import csv
import io
import json
import pathlib

import pytest
import zxingcpp
from PIL import Image
from pyld import jsonld

import drawn
from larder import LARDER

TESTS = pathlib.Path(__file__).resolve().parents[1]
SCHEMA = "https://schema.org/"


@pytest.fixture(scope="module")
def handed(ask):
    """A hundred and fifty drawn documents with what is handed out of them."""
    documents = [{**one, "hand_out": True} for one in drawn.documents(150, seed=99)]
    return list(zip(documents, ask(documents), strict=True))


def picture_of(rows):
    """Rows of 0 and 1 as a picture, with the quiet margin of four squares."""
    side, dots = len(rows), 5
    picture = Image.new("L", (side + 8, side + 8), 255)
    for y, row in enumerate(rows):
        for x, square in enumerate(row):
            if square == "1":
                picture.putpixel((x + 4, y + 4), 0)
    return picture.resize(((side + 8) * dots, (side + 8) * dots), Image.Resampling.NEAREST)


def decoded(picture):
    found = zxingcpp.read_barcodes(picture)
    assert len(found) == 1, found
    return found[0].text


def test_every_code_is_decoded_to_its_link(handed):
    versions, levels = set(), set()
    for _, result in handed:
        code = result["hand_out"]["code"]
        assert code["text"].endswith(result["link"])
        assert decoded(picture_of(code["rows"])) == code["text"]
        assert code["side"] == 17 + 4 * code["version"] == len(code["rows"])
        versions.add(code["version"])
        levels.add(code["level"])
    assert len(versions) > 5 and max(versions) <= 20, versions


def test_the_png_is_the_same_code(handed):
    for _, result in handed[:40]:
        code = result["hand_out"]["code"]
        picture = Image.open(io.BytesIO(base64.b64decode(code["png_base64"])))
        picture.load()
        assert picture.size == ((code["side"] + 8) * 4,) * 2
        assert decoded(picture.convert("L")) == code["text"]


def test_the_table_is_read_back(handed):
    for document, result in handed:
        rows = list(csv.DictReader(io.StringIO(result["hand_out"]["csv"], newline="")))
        lines = [(s, l) for s in document["formula"]["streams"] for l in s["lines"]]
        assert len(rows) == len(lines)
        flour = sum(l["mass_g"] for s, l in lines if s["kind"] in ("paste", "preferment", "final")
                    and l.get("counts_as_flour", LARDER[l["ingredient"]]["role"] == "flour"))
        for row, (stream, line) in zip(rows, lines, strict=True):
            assert (row["stream"], row["kind"]) == (stream["name"], stream["kind"])
            assert float(row["grams"]) == line["mass_g"]
            if row["percent_of_all_flour"]:
                assert float(row["percent_of_all_flour"]) == pytest.approx(100 * line["mass_g"] / flour, rel=1e-9)
            else:
                assert flour == 0 or stream["kind"] not in ("paste", "preferment", "final")


def context(url, _options):
    """The vocabulary's own context, as far as a recipe needs it: every word is one of its own."""
    assert url.rstrip("/") in ("https://schema.org", "http://schema.org")
    return {"contextUrl": None, "documentUrl": url, "document": {"@context": {"@vocab": SCHEMA}}}


def allowed():
    """What each class of the vocabulary may have; a recipe has what a how-to has."""
    found = {}
    with open(TESTS / "published/data/schemaorg_recipe.csv", encoding="utf-8", newline="") as file:
        for row in csv.DictReader(file):
            found.setdefault(row["class"], set()).add(row["property"])
    everything = {"name", "description", "additionalType"}
    return {
        "Recipe": found["Recipe"] | found["HowTo"] | everything,
        "HowToSection": everything | {"itemListElement"},
        "HowToStep": everything | {"text"},
        "NutritionInformation": found["NutritionInformation"] | everything,
    }


def check(node, known):
    kind = node["@type"][0].removeprefix(SCHEMA)
    for key, values in node.items():
        if key.startswith("@"):
            continue
        assert key.removeprefix(SCHEMA) in known[kind], (kind, key)
        for value in values:
            if "@type" in value:
                check(value, known)


def test_recipes_are_what_a_json_ld_processor_takes_for_recipes(handed):
    known = allowed()
    for document, result in handed[:120]:
        expanded = jsonld.expand(json.loads(result["hand_out"]["recipe"]), {"documentLoader": context})
        assert len(expanded) == 1
        recipe = expanded[0]
        assert recipe["@type"] == [SCHEMA + "Recipe"]
        check(recipe, known)
        lines = [l for s in document["formula"]["streams"] for l in s["lines"] if l["mass_g"] > 0]
        assert len(recipe[SCHEMA + "recipeIngredient"]) == len(lines)
        sections = recipe[SCHEMA + "recipeInstructions"]
        assert len(sections) == len(document["formula"]["streams"])


def test_what_was_written_is_read_back_by_the_engine(handed, ask):
    documents, written = [], []
    for document, result in handed[:120]:
        if any(l["mass_g"] > 0 for s in document["formula"]["streams"] for l in s["lines"]):
            documents.append({"worksheet": 1, "formula": {"streams": []}, "recipe": result["hand_out"]["recipe"]})
            written.append(document)
    for document, answer in zip(written, ask(documents), strict=True):
        record = json.loads(answer["recipe"]["record"])
        got = [(l["ingredient"], l["mass_g"]) for s in record["formula"]["streams"] for l in s["lines"]]
        asked = [(l["ingredient"], l["mass_g"]) for s in document["formula"]["streams"]
                 for l in s["lines"] if l["mass_g"] > 0]
        assert sorted(got) == sorted(asked)


def test_every_recipe_of_the_table_is_a_recipe_to_the_processor_too():
    """The documents the reader is tried with are linked data, where they are no whole page."""
    seen = 0
    for path in sorted((TESTS / "sheet/recipes").glob("*.json")):
        expanded = jsonld.expand(json.loads(path.read_text(encoding="utf-8")), {"documentLoader": context})
        text = json.dumps(expanded)
        assert SCHEMA + "Recipe" in text or '"Recipe"' in text or "@graph" in text, path.name
        seen += 1
    assert seen >= 30
