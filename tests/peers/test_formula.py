"""Figures, water and percentages against exact fractions."""

import pytest

import dough

CLOSE = 1e-11


def near(got, exact, size=1.0):
    assert got == pytest.approx(float(exact), rel=CLOSE, abs=CLOSE * float(size))


def test_every_figure_agrees_with_exact_fractions(pairs):
    compared = 0
    for document, result in pairs:
        for form, made in (("as_written", False), ("as_made", True)):
            exact = dough.figures(document["formula"], made)
            answer = result["formula"][form]["figures"]
            assert set(answer) == set(exact) | {"moisture"}
            for figure, grams in exact.items():
                near(answer[figure]["mass_g"], grams, exact["dough"])
                if exact["flour"] > 0:
                    near(answer[figure]["share"], grams / exact["flour"], exact["dough"] / exact["flour"])
                else:
                    assert answer[figure]["share"] is None
                compared += 2
            if exact["dough"] > 0:
                near(answer["moisture"]["share"], exact["total_water"] / exact["dough"])
    assert compared > 20_000


def test_the_water_account_adds_up_to_the_water_of_its_lines(pairs):
    for document, result in pairs:
        exact = dough.figures(document["formula"], made=True)
        water = result["formula"]["as_made"]["water"]
        if exact["flour"] == 0:
            assert water["error"]["kind"] == "NoFlour"
            continue
        near(water["true"]["mass_g"], exact["true_water"], exact["dough"])
        near(water["poured"]["mass_g"], exact["poured_water"], exact["dough"])
        near(water["liquids"]["mass_g"], exact["liquids"], exact["dough"])
        near(water["total"]["mass_g"], exact["total_water"], exact["dough"])
        brought = sum(one["water_g"] for one in water["from"] if not one["is_flour"])
        near(brought - water["steam_g"], exact["true_water"], exact["dough"])
        where = sum(water[place]["mass_g"] for place in ("in_paste", "in_preferment", "free"))
        near(where, exact["true_water"], exact["dough"])


def test_both_percentages_of_every_line(pairs):
    compared = 0
    for document, result in pairs:
        formula = document["formula"]
        all_flour = dough.figures(formula)["flour"]
        for answer in result["formula"]["lines"]:
            stream = formula["streams"][answer["stream"]]
            grams = dough.weight(stream["lines"][answer["line"]], made=False)
            own_flour = sum(dough.weight(l, False) for l in stream["lines"] if dough.is_flour(l))
            for key, flour, kind in (("of_all_flour", all_flour, "NoFlour"),
                                     ("of_own_stream", own_flour, "NoFlourIn")):
                if flour > 0:
                    near(answer[key], grams / flour)
                else:
                    assert answer[key]["error"]["kind"] == kind
                compared += 1
    assert compared > 5_000


def test_formulas_in_ounces_have_the_percentages_of_their_ounces(ask):
    """Weights in ounces through pint's registry: the ratio of two weights has no unit."""
    import pint

    ounce = pint.UnitRegistry()("1 ounce")
    ounces = {1: 17.25, 200: 11.5, 800: 0.3125, 902: 0.125}
    lines = [{"ingredient": n, "mass_g": (w * ounce).to("gram").magnitude} for n, w in ounces.items()]
    document = {"worksheet": 1, "formula": {"streams": [{"kind": "final", "name": "", "lines": lines}]},
                "batch": {"wanted": {"by": "dough", "dough_g": (32 * ounce).to("gram").magnitude},
                          "losses": {}, "pieces": 2,
                          "syrup_at_c": pint.UnitRegistry().Quantity(104, "degF").to("degC").magnitude}}
    [result] = ask([document])
    for answer, weight in zip(result["formula"]["lines"], ounces.values(), strict=True):
        near(answer["of_all_flour"], weight / 17.25)
    near(result["batch"]["scaled"]["needed_g"], 907.18474)  # two pounds, by definition
    near(result["batch"]["scaled"]["factor"], 32 / sum(ounces.values()))


def test_a_comparison_gives_old_new_and_difference(pairs):
    gone = 0
    for document, result in pairs:
        before, after = dough.figures(document["before"]), dough.figures(document["formula"])
        answer = result["formula"]["compared"]
        for figure, sides in answer["figures"].items():
            size = max(before["dough"], after["dough"], 1)
            near(sides["old_g"], before[figure], size)
            near(sides["new_g"], after[figure], size)
            near(sides["change_g"], after[figure] - before[figure], size)
            if before["flour"] > 0 and after["flour"] > 0:
                points = 100 * (after[figure] / after["flour"] - before[figure] / before["flour"])
                size = 100 * max(before["dough"] / before["flour"], after["dough"] / after["flour"])
                near(sides["change_points"], points, size)
            else:
                assert sides["change_points"] is None
        # Every line of either formula is in exactly one pair, and a pair has one ingredient.
        for key, formula in (("old_at", document["before"]), ("new_at", document["formula"])):
            there = [tuple(pair[key]) for pair in answer["lines"] if pair[key]]
            places = [(s, n) for s, one in enumerate(formula["streams"]) for n in range(len(one["lines"]))]
            assert sorted(there) == places
        for pair in answer["lines"]:
            if pair["old_at"] and pair["new_at"]:
                old, new = (formula["streams"][s]["lines"][n]["ingredient"] for formula, (s, n) in (
                    (document["before"], pair["old_at"]), (document["formula"], pair["new_at"])))
                assert old == new
            else:
                gone += 1
    assert gone > 100
