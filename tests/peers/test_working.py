"""Every line of working, evaluated by Python."""

import math

import pytest

KNOWN = {"sqrt": math.sqrt, "exp": math.exp, "ln": math.log, "log10": math.log10,
         "min": min, "max": max, "round": lambda x: math.floor(x + 0.5), "__builtins__": {}}


def test_every_line_of_working_adds_up(pairs):
    lines = 0
    answers = set()
    for _, result in pairs:
        for line in result["working"]:
            rule = line["rule"].replace("×", "*").replace("−", "-").replace("^", "**").replace("·", "*")
            letters = {given["letter"]: given["value"] for given in line["with"]}
            got = eval(rule, KNOWN, letters)  # the rules are our own and hold arithmetic only
            # A difference of nearly equal numbers has the rounding error of the larger.
            size = max([abs(value) for value in letters.values()], default=1.0)
            assert line["result"]["value"] == pytest.approx(got, rel=1e-9, abs=1e-11 * size), line
            assert line["source"], line
            answers.add(line["answer"])
            lines += 1
    assert lines > 50_000
    assert answers >= {"percentage", "water", "stream", "target", "batch", "rounding", "dividing",
                       "filling", "syrup", "liquid"}, answers
