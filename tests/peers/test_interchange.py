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
from ingredients import INGREDIENTS, rows

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
                    and l.get("counts_as_flour", INGREDIENTS[l["ingredient"]]["role"] == "flour"))
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


TOLD = {"fatContent": "fat", "saturatedFatContent": "saturates", "sugarContent": "sugars",
        "fiberContent": "fibre", "proteinContent": "protein"}


def amounts(document, scaled):
    """What all pieces hold, g, by the printed table: the dough as far as it reaches them, and what is beside it."""
    losses, reaches = document["batch"]["losses"], scaled["needed_g"] / scaled["mixed_g"]
    held, beside = dict.fromkeys([*TOLD.values(), "carbohydrate", "sodium"], 0.0), 0.0
    table = {int(row["ndb"]): row for row in rows("published/data/usda_sr28.csv")}
    codes = {int(r["number"]): int(r["code"]) for r in rows("ingredients/numbers.csv") if r["table"] == "sr28"}
    for stream, weights in zip(document["formula"]["streams"], scaled["lines_g"], strict=True):
        inside = stream["kind"] in ("paste", "preferment", "final")
        times = reaches if inside else 1 - losses["topping_share"]
        for line, weight in zip(stream["lines"], weights, strict=True):
            food, grams = INGREDIENTS[line["ingredient"]], weight * times
            beside += 0 if inside else grams
            # Ciqual 2020, 18066, tap water: 2.4 mg of sodium; all others drawn are of the other table.
            printed = table.get(codes.get(line["ingredient"]), {"sodium_mg": 2.4})
            for part in ("fat", "sugars", "fibre", "protein"):
                held[part] += grams * float(food[part])
            held["saturates"] += grams * float(printed.get("saturated_fat_g") or 0) / 100
            held["sodium"] += grams * float(printed.get("sodium_mg") or 0) / 100_000
            held["carbohydrate"] += grams * max(0.0, float(food["carbohydrate"] - food["fibre"]))
    return held, scaled["needed_g"] - scaled["lost_baking_g"] + beside


def test_the_recipe_tells_what_a_piece_holds(ask):
    documents = [{**one, "hand_out": True} for one in drawn.documents(120, seed=71)]
    for one in documents:
        one["batch"]["wanted"] = {"by": "times", "times": 1}
    compared = 0
    for document, result in zip(documents, ask(documents), strict=True):
        recipe = jsonld.expand(json.loads(result["hand_out"]["recipe"]), {"documentLoader": context})[0]
        if result["nutrition"] is None or "error" in result["nutrition"]:
            assert SCHEMA + "nutrition" not in recipe
            continue
        node = recipe[SCHEMA + "nutrition"][0]
        assert node["@type"] == [SCHEMA + "NutritionInformation"]
        said = {key.removeprefix(SCHEMA): value[0]["@value"].split() for key, value in node.items() if key != "@type"}
        held, mass = amounts(document, result["batch"]["scaled"])
        pieces = document["batch"]["pieces"]
        near = lambda key, unit, exact, digit: (
            said[key][1] == unit and abs(float(said[key][0]) - exact) <= digit / 2 + 1e-9 * (1 + exact))
        assert near("servingSize", "g", mass / pieces, 0.1)
        for key, part in {**TOLD, "carbohydrateContent": "carbohydrate"}.items():
            assert near(key, "g", held[part] / pieces, 0.1), key
        assert near("sodiumContent", "mg", 1000 * held["sodium"] / pieces, 1)
        # Regulation (EU) No 1169/2011, annex XIV; no ingredient drawn here holds alcohol unless it says so.
        if result["nutrition"]["all"]["alcohol_g"] == 0:
            kcal = 4 * (held["carbohydrate"] + held["protein"]) + 9 * held["fat"] + 2 * held["fibre"]
            assert near("calories", "kcal", kcal / pieces, 1)
        compared += 1
    assert compared > 60, compared


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
