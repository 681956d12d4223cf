"""Documents drawn at random from a fixed seed: plausible doughs, and some that are not."""

import copy
import random

from ingredients import ROLES

TARGETS = {
    "true_water": ("water", "liquid", "egg"), "salt": ("salt",), "sugar": ("sugar",),
    "fat": ("fat",), "liquids": ("water", "liquid"), "total_water": ("water",),
}


def grams(draw, most):
    """A weight as people write it: whole, with one or two places, or an ounce's worth."""
    kind = draw.randrange(4)
    if kind == 0:
        return draw.randrange(1, int(most) + 2)
    if kind == 1:
        return round(draw.uniform(0, most), 1)
    if kind == 2:
        return round(draw.uniform(0, most), 2)
    return draw.uniform(0.01, most)


def line(draw, role, most, usual=None):
    known = usual[role] if usual and draw.random() < 0.85 else draw.choice(ROLES[role])
    one = {"ingredient": known, "mass_g": grams(draw, most)}
    if draw.random() < 0.08:
        one["poured_g"] = grams(draw, most)
    if draw.random() < 0.04:
        one["counts_as_flour"] = draw.random() < 0.5
    return one


def stream(draw, kind, usual):
    roles = {
        "paste": [("flour", 90), ("water", 200)],
        "preferment": [("flour", 200), ("water", 110), ("yeast", 2)],
        "final": [("flour", 400), ("water", 150), ("liquid", 150), ("egg", 80), ("sugar", 70),
                  ("fat", 90), ("dairy", 30), ("salt", 11), ("yeast", 8), ("inclusion", 60)],
        "filling": [("chocolate", 120)],
        "topping": [("chocolate", 90), ("water", 45)],
        "wash": [("egg", 30), ("liquid", 10)],
    }[kind]
    lines = [line(draw, role, most, usual) for role, most in roles if draw.random() < 0.93]
    if kind == "topping" and draw.random() < 0.3:
        lines.append(line(draw, draw.choice(["liquid", "sugar", "fat"]), 25))
    one = {"kind": kind, "name": kind, "lines": lines}
    if kind == "paste" and draw.random() < 0.6:
        one["steam_g"] = grams(draw, 8)
    return one


def wanted(draw, streams):
    ways = [
        {"by": "times", "times": round(draw.uniform(0.2, 9), 3)},
        {"by": "dough", "dough_g": grams(draw, 9000)},
        {"by": "pieces", "count": draw.randrange(1, 80), "each_g": round(draw.uniform(30, 900), 1)},
        {"by": "flour_on_hand", "flour_g": grams(draw, 5000)},
        {"by": "class", "students": draw.randrange(1, 20), "loaves": draw.randrange(1, 4),
         "loaf_g": round(draw.uniform(300, 1000), 1)},
    ]
    places = [(s, n) for s, one in enumerate(streams) for n in range(len(one["lines"]))]
    if places:
        at, number = draw.choice(places)
        ways.append({"by": "on_hand", "stream": at, "line": number, "mass_g": grams(draw, 600)})
    return draw.choice(ways)


def document(draw):
    kinds = draw.choice([["final"], ["paste", "final"], ["preferment", "final"],
                         ["paste", "preferment", "final"], ["paste", "paste", "preferment", "final"]])
    kinds = kinds + [k for k in ("filling", "topping", "wash") if draw.random() < 0.6]
    usual = {role: draw.choice(numbers) for role, numbers in ROLES.items()}
    streams = [stream(draw, kind, usual) for kind in kinds]
    places = [(s, n) for s, one in enumerate(streams) if one["kind"] in ("paste", "preferment", "final")
              for n in range(len(one["lines"]))]
    targets = []
    for figure, roles in TARGETS.items():
        fitting = [p for p in places if any(
            streams[p[0]]["lines"][p[1]]["ingredient"] in ROLES[role] for role in roles)]
        if fitting:
            at, number = draw.choice(fitting)
            targets.append({"figure": figure, "share": round(draw.uniform(0.001, 0.9), 4),
                            "stream": at, "line": number})
    before = copy.deepcopy(streams)
    for one in before:
        for a_line in one["lines"]:
            if draw.random() < 0.3:
                a_line["mass_g"] = grams(draw, 300)
        if one["lines"] and draw.random() < 0.3:
            del one["lines"][draw.randrange(len(one["lines"]))]
    ahead = [s for s, kind in enumerate(kinds) if kind in ("paste", "preferment")]
    return {
        "worksheet": 1,
        "bread": draw.choice(["soft_tin", "sweet_bun", "rich_egg", "plain_tin", "rye"]),
        "formula": {"streams": streams},
        "batch": {
            "wanted": wanted(draw, streams),
            "losses": {"residue_g": grams(draw, 12), "residue_share": round(draw.uniform(0, 0.02), 4),
                       "dividing_share": round(draw.uniform(0, 0.02), 4),
                       "bake_share": round(draw.uniform(0, 0.15), 3),
                       "topping_share": round(draw.uniform(0, 0.15), 3)},
            "pieces": draw.randrange(1, 24),
            "syrup_at_c": round(draw.uniform(20, 70), 1),
        },
        "kitchen": {"scales": draw.choice([
            {"main_g": 1}, {"main_g": 5}, {"main_g": 1, "pocket_g": 0.01},
            {"main_g": 0.1, "pocket_g": 0.1}, {"main_g": 2, "pocket_g": 0.05}])},
        "before": {"streams": before},
        "targets": targets,
        "stream_shares": [{"stream": s, "share": round(draw.uniform(0.02, 0.4), 3)} for s in ahead],
        "divide": [{"dough_g": round(draw.uniform(50, 6000), 2), "pieces": draw.randrange(1, 60),
                    "division_g": draw.choice([0.1, 0.5, 1, 2, 5])}],
        "thickness_pa_s": [0.1, 0.5, round(draw.uniform(0.05, 20), 3)],
    }


def documents(count, seed=20261125):
    draw = random.Random(seed)
    return [document(draw) for _ in range(count)]
