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

import generated
from ingredients import INGREDIENTS, rows

TESTS = pathlib.Path(__file__).resolve().parents[1]
SCHEMA = "https://schema.org/"


@pytest.fixture(scope="module")
def exported(ask):
    """A hundred and fifty generated documents with their exports."""
    documents = [{**one, "hand_out": True} for one in generated.documents(150, seed=99)]
    return list(zip(documents, ask(documents), strict=True))


def picture_of(rows):
    """Rows of 0 and 1 as a picture, with the quiet zone of four squares."""
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


def test_every_code_is_decoded_to_its_link(exported):
    versions, levels = set(), set()
    for _, result in exported:
        code = result["hand_out"]["code"]
        assert code["text"].endswith(result["link"])
        assert decoded(picture_of(code["rows"])) == code["text"]
        assert code["side"] == 17 + 4 * code["version"] == len(code["rows"])
        versions.add(code["version"])
        levels.add(code["level"])
    assert len(versions) > 5 and max(versions) <= 20, versions


def test_the_png_is_the_same_code(exported):
    for _, result in exported[:40]:
        code = result["hand_out"]["code"]
        picture = Image.open(io.BytesIO(base64.b64decode(code["png_base64"])))
        picture.load()
        assert picture.size == ((code["side"] + 8) * 4,) * 2
        assert decoded(picture.convert("L")) == code["text"]


def test_the_table_is_read_back(exported):
    for document, result in exported:
        rows = list(csv.DictReader(io.StringIO(result["hand_out"]["csv"], newline="")))
        lines = [(s, l) for s in document["formula"]["streams"] for l in s["lines"]]
        assert len(rows) == len(lines)
        flour = sum(l["mass_g"] for s, l in lines if s["kind"] in ("paste", "preferment", "final")
                    and l.get("counts_as_flour", INGREDIENTS[l["ingredient"]]["role"] == "flour"))
        for row, (stream, line) in zip(rows, lines, strict=True):
            assert (row["part"], row["kind"]) == (stream["name"], stream["kind"])
            # The table has six places.
            assert float(row["grams"]) == pytest.approx(line["mass_g"], abs=5e-7)
            if row["percent_of_all_flour"]:
                assert float(row["percent_of_all_flour"]) == pytest.approx(100 * line["mass_g"] / flour, abs=5e-7)
            else:
                assert flour == 0 or stream["kind"] not in ("paste", "preferment", "final")


def context(url, _options):
    """A context in which every term belongs to the vocabulary; enough for a recipe."""
    assert url.rstrip("/") in ("https://schema.org", "http://schema.org")
    return {"contextUrl": None, "documentUrl": url, "document": {"@context": {"@vocab": SCHEMA}}}


def allowed():
    """The properties of each class of the vocabulary; a recipe has those of a how-to."""
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


def test_a_json_ld_processor_reads_the_recipes(exported):
    known = allowed()
    for document, result in exported[:120]:
        expanded = jsonld.expand(json.loads(result["hand_out"]["recipe"]), {"documentLoader": context})
        assert len(expanded) == 1
        recipe = expanded[0]
        assert recipe["@type"] == [SCHEMA + "Recipe"]
        check(recipe, known)
        lines = [l for s in document["formula"]["streams"] for l in s["lines"] if l["mass_g"] > 0]
        assert len(recipe[SCHEMA + "recipeIngredient"]) == len(lines)
        sections = recipe[SCHEMA + "recipeInstructions"]
        assert len(sections) == len(document["formula"]["streams"])


NUTRIENTS = {"fatContent": "fat", "saturatedFatContent": "saturates", "sugarContent": "sugars",
        "fiberContent": "fibre", "proteinContent": "protein"}


def amounts(document, scaled):
    """Nutrients of all pieces, g, by the printed table: the dough that reaches them, and the other parts."""
    losses, reaches = document["batch"]["losses"], scaled["needed_g"] / scaled["mixed_g"]
    nutrients, beside = dict.fromkeys([*NUTRIENTS.values(), "carbohydrate", "sodium"], 0.0), 0.0
    table = {int(row["ndb"]): row for row in rows("published/data/usda_sr28.csv")}
    codes = {int(r["number"]): int(r["code"]) for r in rows("ingredients/numbers.csv") if r["table"] == "sr28"}
    for stream, weights in zip(document["formula"]["streams"], scaled["lines_g"], strict=True):
        inside = stream["kind"] in ("paste", "preferment", "final")
        times = reaches if inside else 1 - losses["topping_share"]
        for line, weight in zip(stream["lines"], weights, strict=True):
            food, grams = INGREDIENTS[line["ingredient"]], weight * times
            beside += 0 if inside else grams
            # Ciqual 2020, 18066, tap water: 2.4 mg of sodium; all other ingredients are in the other table.
            printed = table.get(codes.get(line["ingredient"]), {"sodium_mg": 2.4})
            for part in ("fat", "sugars", "fibre", "protein"):
                nutrients[part] += grams * float(food[part])
            nutrients["saturates"] += grams * float(printed.get("saturated_fat_g") or 0) / 100
            nutrients["sodium"] += grams * float(printed.get("sodium_mg") or 0) / 100_000
            nutrients["carbohydrate"] += grams * max(0.0, float(food["carbohydrate"] - food["fibre"]))
    return nutrients, scaled["needed_g"] - scaled["lost_baking_g"] + beside


def test_the_recipe_states_the_nutrients_of_a_piece(ask):
    documents = [{**one, "hand_out": True} for one in generated.documents(120, seed=71)]
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
        stated = {key.removeprefix(SCHEMA): value[0]["@value"].split() for key, value in node.items() if key != "@type"}
        nutrients, mass = amounts(document, result["batch"]["scaled"])
        pieces = document["batch"]["pieces"]
        near = lambda key, unit, exact, digit: (
            stated[key][1] == unit and abs(float(stated[key][0]) - exact) <= digit / 2 + 1e-9 * (1 + exact))
        assert near("servingSize", "g", mass / pieces, 0.1)
        for key, part in {**NUTRIENTS, "carbohydrateContent": "carbohydrate"}.items():
            assert near(key, "g", nutrients[part] / pieces, 0.1), key
        assert near("sodiumContent", "mg", 1000 * nutrients["sodium"] / pieces, 1)
        # Regulation (EU) No 1169/2011, annex XIV; compared only without alcohol.
        if result["nutrition"]["all"]["alcohol_g"] == 0:
            kcal = 4 * (nutrients["carbohydrate"] + nutrients["protein"]) + 9 * nutrients["fat"] + 2 * nutrients["fibre"]
            assert near("calories", "kcal", kcal / pieces, 1)
        compared += 1
    assert compared > 60, compared


def test_exported_recipes_are_imported_unchanged(exported, ask):
    documents, written = [], []
    for document, result in exported[:120]:
        if any(l["mass_g"] > 0 for s in document["formula"]["streams"] for l in s["lines"]):
            documents.append({"worksheet": 1, "formula": {"streams": []}, "recipe": result["hand_out"]["recipe"]})
            written.append(document)
    for document, answer in zip(written, ask(documents), strict=True):
        record = json.loads(answer["recipe"]["record"])
        got = [(l["ingredient"], l["mass_g"]) for s in record["formula"]["streams"] for l in s["lines"]]
        asked = [(l["ingredient"], l["mass_g"]) for s in document["formula"]["streams"]
                 for l in s["lines"] if l["mass_g"] > 0]
        assert sorted(got) == sorted(asked)


def test_the_processor_reads_every_sample_recipe():
    """The sample documents of the recipe reader are JSON-LD, except those that are whole pages."""
    seen = 0
    for path in sorted((TESTS / "sheet/recipes").glob("*.json")):
        expanded = jsonld.expand(json.loads(path.read_text(encoding="utf-8")), {"documentLoader": context})
        text = json.dumps(expanded)
        assert SCHEMA + "Recipe" in text or '"Recipe"' in text or "@graph" in text, path.name
        seen += 1
    assert seen >= 30
