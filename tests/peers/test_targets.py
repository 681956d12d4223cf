"""Targets against a root finder, stream shares against the conservation of each ingredient."""

import copy
from collections import defaultdict
from fractions import Fraction

import pytest
from scipy.optimize import brentq

import dough

MOST = 1_000_000.0


def missing(document, target):
    """The distance of the figure from its target, as a function of the adjusted weight."""
    formula = copy.deepcopy(document["formula"])
    line = formula["streams"][target["stream"]]["lines"][target["line"]]

    def difference(grams):
        line["mass_g"] = Fraction(grams)
        sums = dough.figures(formula)
        return float(sums[target["figure"]] - Fraction(target["share"]) * sums["flour"])

    return difference


def test_targets_agree_with_a_root_finder(pairs):
    reached = refused = 0
    for document, result in pairs[:200]:
        for target, answer in zip(document["targets"], result["formula"]["targets"], strict=True):
            difference = missing(document, target)
            low, high = difference(0.0), difference(MOST)
            if "error" in answer:
                assert answer["error"]["kind"] in ("BelowZero", "CannotMove", "NoFlour", "OffScale")
                assert low * high >= 0, (target, answer)
                refused += 1
                continue
            root = 0.0 if low == 0 else brentq(difference, 0.0, MOST, xtol=1e-12, rtol=1e-14)
            assert answer["after_g"] == pytest.approx(root, rel=1e-9, abs=1e-9)
            reached += 1
    assert reached > 250 and refused > 10, (reached, refused)


def overall(streams, weights):
    """The weight of each ingredient over the whole dough."""
    sums = defaultdict(float)
    for stream, lines in zip(streams, weights, strict=True):
        if stream["kind"] in dough.IN_DOUGH:
            for line, grams in zip(stream["lines"], lines, strict=False):
                sums[line["ingredient"], dough.is_flour(line)] += grams
    return sums


def test_a_streams_share_changes_and_the_whole_dough_does_not(pairs):
    compared = refused = 0
    for document, result in pairs:
        streams = document["formula"]["streams"]
        before = [[line["mass_g"] for line in stream["lines"]] for stream in streams]
        answer = result["formula"]["stream_shares"]
        for wanted, one in zip(document["stream_shares"], answer, strict=True):
            if "error" in one:
                refused += 1
                continue
            after = one["lines_g"]
            if any(len(a) != len(b) for a, b in zip(after, before, strict=True)):
                # A line was added to the final dough: what it is, the weights alone do not say.
                total = lambda w: sum(sum(l) for s, l in zip(streams, w) if s["kind"] in dough.IN_DOUGH)
                assert total(after) == pytest.approx(total(before), rel=1e-12)
                continue
            assert overall(streams, after) == pytest.approx(overall(streams, before), rel=1e-9, abs=1e-9)
            own = streams[wanted["stream"]]
            flour = sum(g for l, g in zip(own["lines"], after[wanted["stream"]]) if dough.is_flour(l))
            everything = float(dough.figures(document["formula"])["flour"])
            assert flour / everything == pytest.approx(wanted["share"], rel=1e-9)
            compared += 1
    assert compared > 50, (compared, refused)
