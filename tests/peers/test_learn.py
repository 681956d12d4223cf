"""What a log teaches of a kitchen against numpy's weighted averages, and the recovery of a known truth."""

import copy

import numpy as np
import pytest


def bake(number, kitchen, noted):
    return {"id": "bake" + "abcdefghij"[number], "kitchen": kitchen, "began_ms": 1_774_000_000_000 + number, "noted": noted}


def document(base, bakes):
    one = copy.deepcopy(base)
    kitchen = one.setdefault("kitchen", {})
    kitchen["name"] = "Evening class"
    kitchen.pop("mixer", None)
    one["day"] = {"now_s": 1_774_634_400, "log": {"bakes": bakes}}
    return one


def mean(values, deviations, usual, spread):
    """Of values within three deviations of each other: each by its precision, the usual one among them."""
    weights = 1 / np.append(deviations, spread) ** 2
    return np.average(np.append(values, usual), weights=weights)


@pytest.fixture(scope="module")
def learnt(pairs, ask):
    base = next(d for d, r in pairs if "error" not in r["batch"]["scaled"])
    rng = np.random.default_rng(7)
    asked, drawn = [], []
    for count in (1, 3, 10):
        times = rng.uniform(1.15, 1.25, count)
        within = rng.uniform(0.05, 0.1, count)
        expected, lost = rng.uniform(4, 9, count), []
        lost = expected * rng.uniform(1.05, 1.3, count)
        noted = [
            {
                "cooling": {"expected_c": 30, "found_c": 28, "times": t, "within_share": w},
                "steam": {"expected_g": e, "weighed": {"before_g": 150, "after_g": 150 - g}},
            }
            for t, w, e, g in zip(times, within, expected, lost)
        ]
        drawn.append((times, within, expected, lost))
        asked.append(document(base, [bake(n, "Evening class", one) for n, one in enumerate(noted)]))
    return list(zip(drawn, ask(asked), strict=True))


def test_heat_that_passes_is_the_weighted_geometric_mean(learnt):
    for (times, within, _, _), answer in learnt:
        deviations = np.hypot(0.7 * np.log1p(within), 0.10)
        found = np.exp(mean(np.log(times), deviations, 0.0, np.log(1.5) / 1.645))
        assert answer["day"]["learnt"]["transfer"]["times"] == pytest.approx(found, rel=1e-9)


def test_steam_is_the_weighted_mean(learnt):
    for (_, _, expected, lost), answer in learnt:
        deviations = np.hypot(1 / expected, 0.25)
        found = mean(lost / expected, deviations, 1.0, 1.0 / 1.645)
        assert answer["day"]["learnt"]["steam"]["times"] == pytest.approx(found, rel=1e-9)


def test_the_range_narrows_with_each_bake(learnt):
    spreads = [answer["day"]["learnt"]["transfer"]["spread_share"] for _, answer in learnt]
    assert spreads == sorted(spreads, reverse=True)
