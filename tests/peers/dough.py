"""Computes the dough independently, in exact fractions, from the weights and the printed table."""

from fractions import Fraction

from ingredients import INGREDIENTS

IN_DOUGH = ("paste", "preferment", "final")
COMPRESSED_SOLIDS = Fraction(31, 100)


def is_flour(line):
    role = INGREDIENTS[line["ingredient"]]["role"]
    return line.get("counts_as_flour", role == "flour")


def weight(line, made):
    return Fraction(line.get("poured_g", line["mass_g"]) if made else line["mass_g"])


def figures(formula, made=False):
    """Every figure of the dough, g."""
    sums = dict.fromkeys((
        "dough", "flour", "prefermented_flour", "scalded_flour", "paste", "preferment",
        "poured_water", "liquids", "true_water", "total_water", "water_in_paste",
        "water_in_preferment", "water_in_final", "salt", "yeast", "fresh_yeast", "sugar",
        "sugars", "fat", "milk_powder"), Fraction(0))
    for stream in formula["streams"]:
        if stream["kind"] in IN_DOUGH:
            add_stream(sums, stream, made)
    return sums


def add_stream(sums, stream, made):
    kind = stream["kind"]
    brought = Fraction(0)
    for line in stream["lines"]:
        brought += add_line(sums, kind, line, weight(line, made))
    if made:
        steam = min(Fraction(stream.get("steam_g", 0)), brought)
        own = {"paste": ("paste", "water_in_paste"), "preferment": ("preferment", "water_in_preferment"),
               "final": ("water_in_final",)}[kind]
        for figure in ("dough", "true_water", "total_water", *own):
            sums[figure] -= steam


def add_line(sums, kind, line, grams):
    food, flour = INGREDIENTS[line["ingredient"]], is_flour(line)
    role, water = food["role"], food["water"]
    sums["dough"] += grams
    sums["total_water"] += grams * water
    if kind in ("paste", "preferment"):
        sums[kind] += grams
    if flour:
        sums["flour"] += grams
        if kind == "preferment":
            sums["prefermented_flour"] += grams
        if kind == "paste":
            sums["scalded_flour"] += grams
    else:
        sums["true_water"] += grams * water
        sums[f"water_in_{kind}"] += grams * water
        sums["sugars"] += grams * food["sugars"]
        sums["fat"] += grams * food["fat"]
    # What the baker counts as flour is flour only, not a poured liquid.
    if role == "water" and not flour:
        sums["poured_water"] += grams
    poured = role in ("water", "liquid") or (role == "egg" and water > Fraction(1, 10))
    if poured and not flour:
        sums["liquids"] += grams
    if role in ("salt", "yeast", "sugar"):
        sums[role] += grams
    if role == "yeast":
        sums["fresh_yeast"] += grams * (1 - water) / COMPRESSED_SOLIDS
    if role == "dairy" and water < Fraction(1, 10):
        sums["milk_powder"] += grams
    return Fraction(0) if flour else grams * water


def of_flour(formula, figure):
    sums = figures(formula)
    return sums[figure] / sums["flour"]
