"""Scaling against a root finder on the mass balance, rounding and dividing against exact decimals."""

from decimal import ROUND_HALF_UP, Decimal
from fractions import Fraction

import pytest
from scipy.optimize import brentq

import dough


def balance(document):
    """Dough in pieces, factor of the other parts, and use of an ingredient, as functions of the factor."""
    streams, losses = document["formula"]["streams"], document["batch"]["losses"]
    inside = [s for s in streams if s["kind"] in dough.IN_DOUGH]
    lines = sum(l["mass_g"] for s in inside for l in s["lines"])
    steam = sum(s.get("steam_g", 0) for s in inside)
    remaining = 1 - losses["residue_share"] - losses["dividing_share"]

    def needed(factor):
        return factor * (lines - steam) * remaining - losses["residue_g"]

    def beside(factor):
        return needed(factor) / (lines - steam) / (1 - losses["topping_share"])

    def used(factor, ingredient):
        return sum(l["mass_g"] * (factor if s["kind"] in dough.IN_DOUGH else beside(factor))
                   for s in streams for l in s["lines"] if l["ingredient"] == ingredient)

    return needed, beside, used


def residual(document):
    """The function that is zero at the right factor; None where the factor itself is given."""
    wanted = document["batch"]["wanted"]
    needed, _, used = balance(document)
    by = wanted["by"]
    if by == "dough":
        return lambda f: needed(f) - wanted["dough_g"]
    if by == "pieces":
        return lambda f: needed(f) - wanted["count"] * wanted["each_g"]
    if by == "class":
        return lambda f: needed(f) - wanted["students"] * wanted["loaves"] * wanted["loaf_g"]
    if by == "flour_on_hand":
        flour = float(dough.figures(document["formula"])["flour"])
        return lambda f: f * flour - wanted["flour_g"]
    if by == "on_hand":
        line = document["formula"]["streams"][wanted["stream"]]["lines"][wanted["line"]]
        return lambda f: used(f, line["ingredient"]) - wanted["mass_g"]
    return None


def test_the_factor_is_the_root_of_the_mass_balance(pairs):
    seen = set()
    agreed = 0
    for document, result in pairs:
        scaled = result["batch"]["scaled"]
        if "error" in scaled:
            continue
        wanted = document["batch"]["wanted"]
        seen.add(wanted["by"])
        difference = residual(document)
        factor = wanted.get("times") if difference is None else brentq(
            difference, -1.0, 1e7, xtol=1e-13, rtol=1e-14, maxiter=500)
        assert scaled["factor"] == pytest.approx(factor, rel=1e-9)
        needed, beside, _ = balance(document)
        assert scaled["needed_g"] == pytest.approx(needed(scaled["factor"]), rel=1e-9)
        assert scaled["factor_beside"] == pytest.approx(beside(scaled["factor"]), rel=1e-9)
        agreed += 1
    assert agreed > 350 and len(seen) == 6, (agreed, seen)


def test_mass_is_conserved_from_weighing_to_the_table(pairs):
    for document, result in pairs:
        scaled = result["batch"]["scaled"]
        if "error" in scaled:
            continue
        streams = document["formula"]["streams"]
        for stream, lines in zip(streams, scaled["lines_g"], strict=True):
            times = scaled["factor" if stream["kind"] in dough.IN_DOUGH else "factor_beside"]
            for line, grams in zip(stream["lines"], lines, strict=True):
                assert grams == pytest.approx(line["mass_g"] * times, rel=1e-12)
        weighed = sum(sum(l) for s, l in zip(streams, scaled["lines_g"]) if s["kind"] in dough.IN_DOUGH)
        gone = scaled["steam_g"] + scaled["left_behind_g"] + scaled["lost_dividing_g"]
        assert weighed == pytest.approx(scaled["needed_g"] + gone, rel=1e-10)
        assert scaled["piece_g"] * scaled["pieces"] == pytest.approx(scaled["needed_g"], rel=1e-12)
        baked = scaled["needed_g"] - scaled["lost_baking_g"] + scaled["filling_g"]
        assert scaled["baked_g"] == pytest.approx(baked, rel=1e-12)


def test_rounding_agrees_with_decimal_arithmetic(pairs):
    rounded = ties = 0
    for _, result in pairs:
        if result["batch"]["rounded"] is None:
            continue
        for line in result["batch"]["rounded"]["lines"]:
            step = Decimal(str(line["division_g"]))
            steps = Decimal(line["exact_g"]) / step
            assert abs(line["error_g"]) <= line["division_g"] / 2 + 1e-6
            if abs(steps % 1 - Decimal("0.5")) < Decimal("1e-6"):
                ties += 1
                continue
            exact = steps.quantize(Decimal(1), ROUND_HALF_UP) * step
            assert line["weighed_g"] == pytest.approx(float(exact), abs=1e-9)
            assert line["error_g"] == pytest.approx(float(exact) - line["exact_g"], abs=1e-9)
            assert (line["shown"] == "below_scale") == (exact == 0 and line["exact_g"] > 0)
            rounded += 1
    assert rounded > 4_000, (rounded, ties)


def test_a_weighing_aid_is_given_exactly_where_the_error_exceeds_2_percent(pairs):
    solutions = 0
    for _, result in pairs:
        for line in (result["batch"]["rounded"] or {"lines": []})["lines"]:
            if line["exact_g"] <= 0:
                continue
            share = abs(line["error_g"]) / line["exact_g"]
            assert (line["cures"] is not None) == (share > 0.02), line
            solution = (line["cures"] or {}).get("solution")
            if solution and solution["kind"] == "take":
                # One part of yeast in twenty of water: 21 parts are weighed for one of yeast.
                assert solution["yeast_g"] == pytest.approx(solution["solution_g"] / 21, rel=1e-12)
                assert solution["yeast_g"] + solution["water_g"] == pytest.approx(solution["solution_g"], rel=1e-12)
                left = solution["stream_water_g"] - solution["water_g"]
                assert solution["water_left_exact_g"] == pytest.approx(left, rel=1e-9, abs=1e-9)
                solutions += 1
    assert solutions > 10


def test_pieces_add_up_exactly(pairs):
    for document, result in pairs:
        for request, answer in zip(document["divide"], result["batch"]["divide"], strict=True):
            step = Fraction(str(request["division_g"]))
            steps = int(Fraction(str(request["dough_g"])) / step)
            each, over = divmod(steps, request["pieces"])
            if each == 0:
                assert answer["error"]["kind"] == "TooLittleToDivide"
                continue
            assert answer["divisions"] == steps
            assert (answer["heavier"]["count"], answer["heavier"]["divisions"]) == (over, each + 1)
            assert (answer["lighter"]["count"], answer["lighter"]["divisions"]) == (request["pieces"] - over, each)
            total = over * (each + 1) * step + (request["pieces"] - over) * each * step
            rest = Fraction(str(request["dough_g"])) - total
            assert answer["below_division_g"] == pytest.approx(float(rest), abs=1e-9)
