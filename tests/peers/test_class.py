"""Tins by quadrature, nutrition from the printed table, shopping and class in exact fractions."""

import copy
import math
import random
from fractions import Fraction

import pytest
from scipy.integrate import quad
from scipy.optimize import brentq

import generated
from ingredients import INGREDIENTS, rows

DOUGH = 0.85  # cm³ a gram before it rises


def tin(rng):
    metre = lambda low, high: round(rng.uniform(low, high), 3)
    shape = rng.choice(["rectangle", "round", "ring", "muffin", "tray"])
    deep, lidded = metre(0.03, 0.15), rng.random() < 0.3
    if shape == "rectangle":
        one = {"top_long_m": metre(0.2, 0.4), "top_wide_m": metre(0.08, 0.2),
               "bottom_long_m": metre(0.2, 0.4), "bottom_wide_m": metre(0.08, 0.2), "deep_m": deep}
    elif shape == "tray":
        return {"shape": shape, "bottom_long_m": metre(0.3, 0.6), "bottom_wide_m": metre(0.2, 0.4)}
    else:
        across = (0.05, 0.09) if shape == "muffin" else (0.15, 0.3)
        one = {"top_m": metre(*across), "bottom_m": metre(*across), "deep_m": deep}
        if shape == "ring":
            one["tube_m"] = metre(0.02, 0.1)
        if shape == "muffin":
            one["cups"] = rng.choice([6, 12, 24])
    return {"shape": shape, "lidded": lidded, **one}


def area(one, part):
    """The horizontal area at a fraction of the depth, cm²."""
    between = lambda low, high: 100 * (one[low] + (one[high] - one[low]) * part)
    if one["shape"] == "rectangle":
        return between("bottom_long_m", "top_long_m") * between("bottom_wide_m", "top_wide_m")
    circle = math.pi / 4 * between("bottom_m", "top_m") ** 2
    if one["shape"] == "ring":
        return circle - math.pi / 4 * (100 * one["tube_m"]) ** 2
    return circle * one.get("cups", 1)


def volume(one, part=1.0):
    return 100 * one["deep_m"] * quad(lambda t: area(one, t), 0, part, epsabs=1e-12, epsrel=1e-12)[0]


@pytest.fixture(scope="module")
def classes(ask):
    """Documents with tins, packs and a class, each with its result."""
    rng = random.Random(512)
    documents = generated.documents(200, seed=77)
    for one in documents:
        used = sorted({l["ingredient"] for s in one["formula"]["streams"] for l in s["lines"]})
        one["batch"]["tin"] = {"tin": tin(rng), "count": rng.randrange(1, 5),
                               "rise": round(rng.uniform(1, 5), 2)}
        one["pantry"] = {"currency": "kr", "items": [
            {"ingredient": number, "pack_g": rng.choice([7, 250, 500, 1000, 1500.5]),
             "price": round(rng.uniform(0, 40), 2), "on_hand_g": rng.choice([0, 0, 100, 5000])}
            for number in used if rng.random() < 0.7]}
        one["class"] = {"students": rng.randrange(1, 30), "at_bench": rng.randrange(1, 4),
                        "loaves": rng.randrange(1, 4), "loaf_g": round(rng.uniform(200, 900), 1),
                        "shown": rng.randrange(0, 3),
                        "oven": {"places": rng.randrange(1, 12), "bake_min": rng.randrange(15, 60),
                                 "between_min": rng.randrange(0, 20)}}
    return list(zip(documents, ask(documents), strict=True))


def test_tin_volume_agrees_with_quadrature_and_dough_height_with_a_root_finder(classes):
    seen = set()
    for document, result in classes:
        if result["tin"] is None:
            continue
        used, answer = document["batch"]["tin"], result["tin"]
        one = used["tin"]
        if one["shape"] == "tray":
            assert answer["filling"]["error"]["kind"] == "NoSides"
            continue
        whole = volume(one)
        assert answer["filling"]["volume_cm3"] == pytest.approx(whole, rel=1e-9)
        room = answer["filling"]["room_cm3_per_g"]
        assert answer["filling"]["dough_g"] == pytest.approx(used["count"] * whole / room, rel=1e-9)
        each = result["batch"]["scaled"]["needed_g"] / used["count"]
        risen = each * DOUGH * used["rise"]
        stand = answer["stand"]
        assert stand["risen_cm3"] == pytest.approx(risen, rel=1e-9)
        assert stand["level_at"] == pytest.approx(whole / each / DOUGH, rel=1e-9)
        if risen >= whole:
            height = 100 * one["deep_m"] + (risen - whole) / area(one, 1)
        else:
            height = 100 * one["deep_m"] * brentq(lambda t: volume(one, t) - risen, 0, 1, xtol=1e-14)
        assert stand["of_rim_share"] == pytest.approx(height / 100 / one["deep_m"], rel=1e-7)
        seen.add((one["shape"], risen >= whole))
    assert len(seen) >= 7, seen


def test_pieces_lie_apart(classes):
    laid = 0
    for document, result in classes:
        answer = (result["tin"] or {}).get("layout", {"error": 1})
        if "error" in answer or document["batch"]["tin"]["tin"]["shape"] not in ("round", "ring"):
            continue
        one = document["batch"]["tin"]["tin"]
        points = [(x * one["bottom_m"], y * one["bottom_m"]) for x, y in answer["spots"]]
        for at, first in enumerate(points):
            for second in points[at + 1:]:
                # Where two circles of pieces meet, pieces may be nearer than a diameter.
                assert math.dist(first, second) >= answer["place_m"] * 0.5 - 1e-9
        laid += len(points) > 1
    assert laid > 10


def table():
    found = {int(r["ndb"]): r for r in rows("published/data/usda_sr28.csv")}
    numbers = {int(r["number"]): r for r in rows("ingredients/numbers.csv")}
    return found, numbers


NUTRIENTS = {"fat_g": "fat", "protein_g": "protein", "fibre_g": "fibre", "sugars_g": "sugars", "alcohol_g": "alcohol"}


def test_nutrition_is_the_sum_of_the_table(classes):
    compared = 0
    for document, result in classes:
        answer, scaled = result["nutrition"], result["batch"]["scaled"]
        if answer is None or "error" in answer:
            continue
        losses, reaches = document["batch"]["losses"], scaled["needed_g"] / scaled["mixed_g"]
        sums = dict.fromkeys([*NUTRIENTS, "carbohydrate_g"], 0.0)
        beside = 0.0
        for stream, weights in zip(document["formula"]["streams"], scaled["lines_g"], strict=True):
            inside = stream["kind"] in ("paste", "preferment", "final")
            times = reaches if inside else 1 - losses["topping_share"]
            for line, grams in zip(stream["lines"], weights, strict=True):
                food = INGREDIENTS[line["ingredient"]]
                beside += 0 if inside else grams * times
                for key, part in NUTRIENTS.items():
                    sums[key] += grams * times * float(food[part])
                sums["carbohydrate_g"] += grams * times * max(0.0, float(food["carbohydrate"] - food["fibre"]))
        mass = scaled["needed_g"] - scaled["lost_baking_g"] + beside
        assert answer["mass_g"] == pytest.approx(mass, rel=1e-9)
        for key, amount in sums.items():
            assert answer["all"][key] == pytest.approx(amount, rel=1e-9, abs=1e-9), key
            hundred = answer["hundred_grams"]["exact"][key]
            assert hundred == pytest.approx(100 * amount / mass, rel=1e-9, abs=1e-9), key
        exact = answer["hundred_grams"]["exact"]
        kcal = (4 * (exact["carbohydrate_g"] + exact["protein_g"]) + 9 * exact["fat_g"]
                + 2 * exact["fibre_g"] + 7 * exact["alcohol_g"])
        assert abs(answer["hundred_grams"]["eu"]["kilocalories"] - kcal) <= 0.5 + 1e-9
        compared += 1
    assert compared > 120, compared


def test_packs_and_money_agree_with_exact_fractions(classes):
    bought = 0
    for document, result in classes:
        answer, scaled = result["shopping"], result["batch"]["scaled"]
        if answer is None or "error" in answer:
            continue
        needs = {}
        for stream, weights in zip(document["formula"]["streams"], scaled["lines_g"], strict=True):
            for line, grams in zip(stream["lines"], weights, strict=True):
                if grams > 0:
                    needs[line["ingredient"]] = needs.get(line["ingredient"], 0.0) + grams
        packs = {item["ingredient"]: item for item in document["pantry"]["items"]}
        assert len(answer["items"]) == len(needs)
        used = Fraction(0)
        for item, (number, grams) in zip(answer["items"], needs.items(), strict=True):
            assert item["needed_g"] == pytest.approx(grams, rel=1e-12)
            pack = packs.get(number)
            if pack is None:
                assert item["packs"] is None and item["used"] is None
                continue
            missing = max(Fraction(0), Fraction(item["needed_g"]) - pack["on_hand_g"])
            exact = missing / Fraction(pack["pack_g"])
            # A shortfall of less than a millionth of a pack counts as none.
            assert item["packs"] == max(0, math.ceil(exact - Fraction(1, 1_000_000)))
            cost = Fraction(pack["price"]) * Fraction(item["needed_g"]) / Fraction(pack["pack_g"])
            assert item["used"] == pytest.approx(float(cost), rel=1e-9)
            assert item["paid"] == pytest.approx(item["packs"] * pack["price"], rel=1e-12)
            used += cost
            bought += 1
        assert answer["used"] == pytest.approx(float(used), rel=1e-9)
    assert bought > 500


def test_loaves_and_grams_of_all_benches_add_up_to_the_class(classes):
    shared = 0
    for document, result in classes:
        answer, request = result["class"], document["class"]
        if "error" in answer:
            continue
        assert answer["loaves"] == request["students"] * request["loaves"] + request["shown"]
        assert sum(b["count"] * b["students"] for b in answer["benches"]) == request["students"]
        assert sum(b["count"] * b["loaves"] for b in answer["benches"]) == answer["loaves"]
        assert answer["stations"] == math.ceil(request["students"] / request["at_bench"])
        for s, lines in enumerate(answer["total_g"]):
            for l, grams in enumerate(lines):
                each = sum(b["count"] * b["lines_g"][s][l] for b in answer["benches"])
                assert grams == pytest.approx(each, rel=1e-10, abs=1e-12)
        oven = request["oven"]
        count = math.ceil(answer["loaves"] / oven["places"])
        if count > 60:
            assert answer["oven"]["error"]["kind"] == "TooManyLoads"
            continue
        loads = answer["oven"]["loads"]
        assert len(loads) == count and sum(load["loaves"] for load in loads) == answer["loaves"]
        for at, load in enumerate(loads):
            assert load["loaves"] in (answer["loaves"] // count, answer["loaves"] // count + 1)
            assert load["goes_in_min"] == pytest.approx(at * (oven["bake_min"] + oven["between_min"]))
        shared += 1
    assert shared > 120, shared


def test_an_invalid_class_is_reported(classes, ask):
    invalid = []
    for key, value in [("students", 0), ("loaf_g", -1), ("oven", {"places": 1.5}), ("pupils", 3)]:
        one = copy.deepcopy(classes[0][0])
        one["class"][key] = value
        invalid.append(one)
    kinds = [answer["error"]["kind"] for answer in ask(invalid)]
    assert kinds == ["OutOfRange", "OutOfRange", "NotWhole", "UnknownField"]
