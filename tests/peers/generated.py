"""Generates random documents from a fixed seed: plausible doughs, and implausible ones."""

import copy
import random

from ingredients import ROLES

TARGETS = {
    "true_water": ("water", "liquid", "egg"), "salt": ("salt",), "sugar": ("sugar",),
    "fat": ("fat",), "liquids": ("water", "liquid"), "total_water": ("water",),
}


def grams(rng, most):
    """A weight as people write it: whole, with one or two decimals, or with all digits."""
    kind = rng.randrange(4)
    if kind == 0:
        return rng.randrange(1, int(most) + 2)
    if kind == 1:
        return round(rng.uniform(0, most), 1)
    if kind == 2:
        return round(rng.uniform(0, most), 2)
    return rng.uniform(0.01, most)


def line(rng, role, most, usual=None):
    known = usual[role] if usual and rng.random() < 0.85 else rng.choice(ROLES[role])
    one = {"ingredient": known, "mass_g": grams(rng, most)}
    if rng.random() < 0.08:
        one["poured_g"] = grams(rng, most)
    if rng.random() < 0.04:
        one["counts_as_flour"] = rng.random() < 0.5
    return one


def stream(rng, kind, usual):
    roles = {
        "paste": [("flour", 90), ("water", 200)],
        "preferment": [("flour", 200), ("water", 110), ("yeast", 2)],
        "final": [("flour", 400), ("water", 150), ("liquid", 150), ("egg", 80), ("sugar", 70),
                  ("fat", 90), ("dairy", 30), ("salt", 11), ("yeast", 8), ("inclusion", 60)],
        "filling": [("chocolate", 120)],
        "topping": [("chocolate", 90), ("water", 45)],
        "wash": [("egg", 30), ("liquid", 10)],
    }[kind]
    lines = [line(rng, role, most, usual) for role, most in roles if rng.random() < 0.93]
    if kind == "topping" and rng.random() < 0.3:
        lines.append(line(rng, rng.choice(["liquid", "sugar", "fat"]), 25))
    one = {"kind": kind, "name": kind, "lines": lines}
    if kind == "paste" and rng.random() < 0.6:
        one["steam_g"] = grams(rng, 8)
    return one


def wanted(rng, streams):
    ways = [
        {"by": "times", "times": round(rng.uniform(0.2, 9), 3)},
        {"by": "dough", "dough_g": grams(rng, 9000)},
        {"by": "pieces", "count": rng.randrange(1, 80), "each_g": round(rng.uniform(30, 900), 1)},
        {"by": "flour_on_hand", "flour_g": grams(rng, 5000)},
        {"by": "class", "students": rng.randrange(1, 20), "loaves": rng.randrange(1, 4),
         "loaf_g": round(rng.uniform(300, 1000), 1)},
    ]
    places = [(s, n) for s, one in enumerate(streams) for n in range(len(one["lines"]))]
    if places:
        at, number = rng.choice(places)
        ways.append({"by": "on_hand", "stream": at, "line": number, "mass_g": grams(rng, 600)})
    return rng.choice(ways)


def document(rng):
    kinds = rng.choice([["final"], ["paste", "final"], ["preferment", "final"],
                         ["paste", "preferment", "final"], ["paste", "paste", "preferment", "final"]])
    kinds = kinds + [k for k in ("filling", "topping", "wash") if rng.random() < 0.6]
    usual = {role: rng.choice(numbers) for role, numbers in ROLES.items()}
    streams = [stream(rng, kind, usual) for kind in kinds]
    places = [(s, n) for s, one in enumerate(streams) if one["kind"] in ("paste", "preferment", "final")
              for n in range(len(one["lines"]))]
    targets = []
    for figure, roles in TARGETS.items():
        fitting = [p for p in places if any(
            streams[p[0]]["lines"][p[1]]["ingredient"] in ROLES[role] for role in roles)]
        if fitting:
            at, number = rng.choice(fitting)
            targets.append({"figure": figure, "share": round(rng.uniform(0.001, 0.9), 4),
                            "stream": at, "line": number})
    before = copy.deepcopy(streams)
    for one in before:
        for a_line in one["lines"]:
            if rng.random() < 0.3:
                a_line["mass_g"] = grams(rng, 300)
        if one["lines"] and rng.random() < 0.3:
            del one["lines"][rng.randrange(len(one["lines"]))]
    ahead = [s for s, kind in enumerate(kinds) if kind in ("paste", "preferment")]
    return {
        "worksheet": 1,
        "bread": rng.choice(["soft_tin", "sweet_bun", "rich_egg", "plain_tin", "rye"]),
        "formula": {"streams": streams},
        "batch": {
            "wanted": wanted(rng, streams),
            "losses": {"residue_g": grams(rng, 12), "residue_share": round(rng.uniform(0, 0.02), 4),
                       "dividing_share": round(rng.uniform(0, 0.02), 4),
                       "bake_share": round(rng.uniform(0, 0.15), 3),
                       "topping_share": round(rng.uniform(0, 0.15), 3)},
            "pieces": rng.randrange(1, 24),
            "syrup_at_c": round(rng.uniform(20, 70), 1),
        },
        "kitchen": {"scales": rng.choice([
            {"main_g": 1}, {"main_g": 5}, {"main_g": 1, "pocket_g": 0.01},
            {"main_g": 0.1, "pocket_g": 0.1}, {"main_g": 2, "pocket_g": 0.05}])},
        "before": {"streams": before},
        "targets": targets,
        "stream_shares": [{"stream": s, "share": round(rng.uniform(0.02, 0.4), 3)} for s in ahead],
        "divide": [{"dough_g": round(rng.uniform(50, 6000), 2), "pieces": rng.randrange(1, 60),
                    "division_g": rng.choice([0.1, 0.5, 1, 2, 5])}],
        "thickness_pa_s": [0.1, 0.5, round(rng.uniform(0.05, 20), 3)],
    }


def documents(count, seed=20261125):
    rng = random.Random(seed)
    return [document(rng) for _ in range(count)]
