"""Filling and syrup computed independently: numpy interpolates the table, scipy finds the root."""

import numpy
import pytest
from scipy.optimize import brentq

from ingredients import COLUMNS, INGREDIENTS

# Mohos, Confectionery and Chocolate Engineering (2010), Table A2.2 (Antokolskaya 1964): grams of
# sucrose in 100 g of water, every 5 °C from 0 to 100 °C.
SOLUBLE = [179.2, 184.7, 190.5, 197.0, 203.9, 211.4, 219.9, 228.4, 238.1, 248.7, 260.4, 273.1,
           287.3, 302.9, 320.5, 339.9, 362.1, 386.8, 415.7, 448.6, 487.2]


PURE_WATER = dict.fromkeys(COLUMNS, 0.0) | {"water": 1.0}


def densities(t):
    """Choi and Okos (1986), g/cm³; alcohol 0.789 (from memory)."""
    kilograms = {
        "water": 997.18 + 3.1439e-3 * t - 3.7574e-3 * t * t, "protein": 1329.9 - 0.5184 * t,
        "fat": 925.59 - 0.41757 * t, "carbohydrate": 1599.1 - 0.31046 * t,
        "fibre": 1311.5 - 0.36589 * t, "ash": 2423.8 - 0.28063 * t, "alcohol": 789.0}
    return {part: rho / 1000 for part, rho in kilograms.items()}


def sugared_water(percent, t):
    """Génotelle (1978), Pa·s (equation from memory)."""
    n = percent / (1900 - 18 * percent)
    phi = (30 - t) / (91 + t)
    return 10 ** (22.46 * n - 0.114 + phi * (1.1 + 43.1 * n**1.25)) / 1000


def parts(lines):
    sums = dict.fromkeys(COLUMNS, 0.0) | {"other": 0.0, "total": 0.0}
    for number, grams in lines:
        food = INGREDIENTS.get(number, PURE_WATER)
        for part in COLUMNS:
            sums[part] += grams * float(food[part])
        left = max(float(food["carbohydrate"] - food["sugars"]), 0.0)
        sums["other"] += grams * max(left - float(food["fibre"]), 0.0)
        sums["total"] += grams
    return sums


def suspension(mix, t, packing=0.68):
    """Volume fraction and viscosity (Pa·s, None when packed): Krieger and Dougherty (1959)."""
    soluble = numpy.interp(t, numpy.arange(0, 101, 5), SOLUBLE) / 100
    dissolved = min(mix["sugars"], soluble * mix["water"])
    rho = densities(t)
    grains = (mix["sugars"] - dissolved + mix["other"]) / rho["carbohydrate"]
    crowd = grains + sum(mix[p] / rho[p] for p in ("fat", "protein", "fibre", "ash"))
    liquid = mix["water"] / rho["water"] + mix["alcohol"] / rho["alcohol"] + dissolved / rho["carbohydrate"]
    crowding = crowd / (crowd + liquid)
    if crowding >= packing:
        return crowding, None
    times = (1 - crowding / packing) ** (-2.5 * packing)
    solution = mix["water"] + mix["alcohol"] + dissolved
    percent = min(100 * dissolved / solution, 85.0)
    return crowding, (times * sugared_water(percent, t) if times <= 1e6 else None)


def toppings(pairs):
    """Each scaled topping: document, lines, and the result for it."""
    for document, result in pairs:
        for answer in result["chocolate"]["syrups"]:
            stream = document["formula"]["streams"][answer["stream"]]
            scaled = result["batch"]["scaled"]
            weights = [l["mass_g"] for l in stream["lines"]] if "error" in scaled else (
                scaled["lines_g"][answer["stream"]])
            lines = list(zip((l["ingredient"] for l in stream["lines"]), weights, strict=True))
            yield document, lines, answer


def of_role(lines, chocolate):
    return [(n, g) for n, g in lines if (INGREDIENTS[n]["role"] == "chocolate") == chocolate]


def test_thickness_agrees_with_an_independent_computation_of_the_model(pairs):
    flowing = seized = 0
    for document, lines, answer in toppings(pairs):
        if "error" in answer:
            assert answer["error"]["kind"] == "NoChocolate"
            assert sum(grams for _, grams in of_role(lines, True)) == 0
            continue
        syrup = answer["syrup"]
        crowding, thickness = suspension(parts(lines), document["batch"]["syrup_at_c"])
        assert syrup["crowding_share"] == pytest.approx(crowding, rel=1e-9)
        if syrup["flow"] == "melted_only":
            assert syrup["water_brought_g"] == 0
            continue
        if thickness is None:
            assert syrup["flow"] == "seized" and syrup["thickness_pa_s"] is None
            seized += 1
        else:
            assert syrup["thickness_pa_s"] == pytest.approx(thickness, rel=1e-8)
            flowing += 1
    assert flowing > 100 and seized > 5, (flowing, seized)


def test_liquid_for_a_target_thickness_agrees_with_a_root_finder(pairs):
    found = 0
    for document, lines, answer in toppings(pairs):
        if "error" in answer:
            continue
        t = document["batch"]["syrup_at_c"]
        solid, liquid = of_role(lines, True), of_role(lines, False)
        poured = sum(g for _, g in liquid)
        if poured == 0:
            liquid, poured = [(None, 1.0)], 1.0  # plain water instead
        if any(n and INGREDIENTS[n]["role"] not in ("water", "liquid") for n, _ in liquid):
            continue  # a thick liquid may give one thickness twice

        def thickness(grams):
            pour = [(n, g * grams / poured) for n, g in liquid]
            return suspension(parts(solid + pour), t)[1]

        for needed in answer["liquid_for"]:
            if "error" in needed:
                assert needed["error"]["kind"] in ("TooThin", "TooThick")
                continue
            wished = needed["wished_pa_s"]
            def above(grams):
                eta = thickness(grams)
                return 1e9 if eta is None else eta - wished
            most = 20 * sum(g for _, g in solid)
            root = brentq(above, 1e-6 * most, most, xtol=1e-12, rtol=1e-14)
            assert needed["liquid_g"] == pytest.approx(root, rel=1e-6)
            found += 1
    assert found > 150, found


def test_the_filling_is_divided_without_loss(pairs):
    filled = 0
    for document, result in pairs:
        for answer in result["chocolate"]["fills"]:
            if "error" in answer:
                continue
            made = sum(result["batch"]["scaled"]["lines_g"][answer["stream"]])
            stays = document["batch"]["losses"]["topping_share"]
            assert answer["to_make_g"] == pytest.approx(made, rel=1e-9)
            assert answer["each_g"] * answer["pieces"] == pytest.approx(made * (1 - stays), rel=1e-9)
            share = answer["each_g"] / result["batch"]["scaled"]["piece_g"]
            assert ("heavy" in answer["cautions"]) == (share > 0.12)
            filled += 1
    assert filled > 150
