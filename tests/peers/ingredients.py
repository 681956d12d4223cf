"""Composition of the ingredients in the generated documents, read from the printed table.

Source: USDA National Nutrient Database for Standard Reference, Release 28 (2016), in
tests/published/data/usda_sr28.csv; tests/ingredients/numbers.csv maps our ingredient numbers to the
table's foods. A blank cell counts as zero. Water is plain water.
"""

import csv
import pathlib
from fractions import Fraction

TESTS = pathlib.Path(__file__).resolve().parents[1]

COLUMNS = {
    "water": "water_g", "protein": "protein_g", "fat": "fat_g",
    "carbohydrate": "carbohydrate_by_difference_g", "sugars": "sugars_total_g",
    "fibre": "fibre_g", "ash": "ash_g", "alcohol": "alcohol_g",
}

ROLES = {
    "flour": [1, 2, 3, 4, 40, 41, 42, 50, 51],
    "water": [200],
    "liquid": [300, 301, 303, 310, 320, 321],
    "dairy": [311, 340, 341],
    "fat": [500, 501, 513, 520, 522],
    "egg": [600, 601, 602, 603],
    "sugar": [700, 701, 710, 711, 713],
    "salt": [800],
    "yeast": [900, 901, 902],
    "chocolate": [1000, 1001, 1002, 1004, 1005, 1010, 1012],
    "inclusion": [22, 1102, 1111, 1200],
}


def rows(name):
    with open(TESTS / name, encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


def read():
    table = {int(row["ndb"]): row for row in rows("published/data/usda_sr28.csv")}
    codes = {int(r["number"]): int(r["code"]) for r in rows("ingredients/numbers.csv") if r["table"] == "sr28"}
    ingredients = {}
    for role, numbers in ROLES.items():
        for number in numbers:
            if role == "water":
                composition = {part: Fraction(0) for part in COLUMNS} | {
                    "water": Fraction(1), "ash": Fraction("0.001")}
            else:
                row = table[codes[number]]
                composition = {p: Fraction(row[c] or "0") / 100 for p, c in COLUMNS.items()}
            ingredients[number] = {"role": role, **composition}
    return ingredients


INGREDIENTS = read()
