"""Heat computed independently: scipy solves conduction as a system of equations, IAPWS gives boiling points."""

import math
import random

import numpy
import pytest
from iapws import IAPWS97
from scipy.integrate import solve_ivp
from scipy.optimize import brentq
from scipy.sparse import diags

from ingredients import INGREDIENTS

CASES = 220
POWER = {"slab": 0, "cylinder": 1, "sphere": 2}


def random_cooling(rng):
    half = 10 ** rng.uniform(-2.3, -1.2)
    conductivity = rng.uniform(0.2, 0.6)
    density = rng.uniform(900, 1300)
    specific = rng.uniform(1800, 4100)
    start = rng.uniform(2, 95)
    stays = [{"minutes": rng.uniform(10, 240), "air_c": rng.uniform(0, 30),
              "coefficient_w_per_m2_k": 10 ** rng.uniform(0.7, 2.2)} for _ in range(rng.randrange(1, 4))]
    whole = sum(stay["minutes"] for stay in stays)
    return {"shape": rng.choice(list(POWER)), "half_m": half, "mass_g": 300,
            "specific_heat_j_per_kg_k": specific, "conductivity_w_per_m_k": conductivity,
            "density_kg_per_m3": density, "start_c": start, "stays": stays,
            "times_min": [whole * part for part in (0.15, 0.4, 0.7, 1.0)]}


def solve(case, cells=60, rtol=1e-8):
    """Finite volumes in space, scipy's BDF in time; centre, mean and surface at the given times."""
    power, half = POWER[case["shape"]], case["half_m"]
    k, rho, c = (case[key] for key in ("conductivity_w_per_m_k", "density_kg_per_m3", "specific_heat_j_per_kg_k"))
    edges = numpy.linspace(0, half, cells + 1)
    area, volume = edges ** power, numpy.diff(edges ** (power + 1)) / (power + 1)
    step = half / cells
    warm, now, found = numpy.full(cells, case["start_c"]), 0.0, {}
    for stay in case["stays"]:
        air, h = stay["air_c"], stay["coefficient_w_per_m2_k"]
        outer = 1 / (1 / h + step / 2 / k)

        def slope(_time, t, air=air, outer=outer):
            flux = numpy.zeros(cells + 1)
            flux[1:-1] = k * (t[1:] - t[:-1]) / step * area[1:-1]
            flux[-1] = outer * (air - t[-1]) * area[-1]
            return numpy.diff(flux) / volume / rho / c

        seconds = stay["minutes"] * 60
        ends = now + stay["minutes"]
        wanted = [time for time in case["times_min"] if now < time <= ends + 1e-9]
        grid = sorted({min((time - now) * 60, seconds) for time in wanted} | {seconds})
        run = solve_ivp(slope, (0, seconds), warm, method="BDF", t_eval=grid, rtol=rtol, atol=10 * rtol)
        for time in wanted:
            at = run.y[:, grid.index(min((time - now) * 60, seconds))]
            surface = at[-1] + (air - at[-1]) * outer * step / 2 / k
            centre = at[0] + (at[0] - at[1]) / 8
            found[time] = (centre, float(at @ volume / volume.sum()), surface)
        warm, now = run.y[:, -1], ends
    return [found[time] for time in case["times_min"]]


def test_cooling_agrees_with_a_general_solver(ask):
    """Within half a per cent of the largest difference of temperature there is, at every time."""
    rng = random.Random(61)
    cases = [random_cooling(rng) for _ in range(CASES)]
    document = {"worksheet": 1, "formula": {"streams": []}, "coolings": cases}
    results = ask([document])[0]["heat"]["coolings"]
    worst = 0.0
    for case, result in zip(cases, results, strict=True):
        airs = [stay["air_c"] for stay in case["stays"]]
        span = max(*airs, case["start_c"]) - min(*airs, case["start_c"])
        for ours, theirs in zip(result["at"], solve(case), strict=True):
            pairs = zip((ours["centre_c"], ours["mean_c"], ours["surface_c"]), theirs, strict=True)
            worst = max(worst, *(abs(one - other) / max(span, 1.0) for one, other in pairs))
    print(f"{CASES} coolings, worst difference {100 * worst:.3f} % of the span")
    assert worst < 0.005


def random_vessel(rng):
    """A food in a round vessel, with stays under a lid or surrounded."""
    stays = [{"minutes": rng.uniform(10, 240), "around_c": rng.uniform(0, 30), "coefficient_w_per_m2_k": 10 ** rng.uniform(0.5, 2.2),
              "cover": rng.choice(["closed", "surrounded"])} for _ in range(rng.randrange(1, 4))]
    whole = sum(stay["minutes"] for stay in stays)
    return {"across_m": rng.uniform(0.06, 0.35), "deep_m": rng.uniform(0.008, 0.08), "mass_g": 300,
            "specific_heat_j_per_kg_k": rng.uniform(1800, 4100), "conductivity_w_per_m_k": rng.uniform(0.2, 0.6),
            "density_kg_per_m3": rng.uniform(900, 1300), "start_c": rng.uniform(40, 95), "stays": stays,
            "times_min": [whole * part for part in (0.15, 0.4, 0.7, 1.0)]}


def solve_in_vessel(case, layers=28, rings=20, rtol=1e-7):
    """Finite volumes in radius and height, scipy's BDF in time; the mean at the given times."""
    k, rho, c = (case[key] for key in ("conductivity_w_per_m_k", "density_kg_per_m3", "specific_heat_j_per_kg_k"))
    radius, deep = case["across_m"] / 2, case["deep_m"]
    edges = numpy.linspace(0, radius, rings + 1)
    floor = math.pi * numpy.diff(edges ** 2)
    wide, high = radius / rings, deep / layers
    volume = numpy.tile(floor * high, (layers, 1))
    warm, now, found = numpy.full((layers, rings), case["start_c"]), 0.0, {}
    for stay in case["stays"]:
        around, h = stay["around_c"], stay["coefficient_w_per_m2_k"]
        over = min(6, 0.75 * h) if stay["cover"] == "closed" else h
        top, under, side = (1 / (1 / one + size / 2 / k) for one, size in ((over, high), (h, high), (h, wide)))

        def slope(_time, flat, around=around, top=top, under=under, side=side):
            t = flat.reshape(layers, rings)
            down = numpy.zeros((layers + 1, rings))
            down[1:-1] = k * (t[:-1] - t[1:]) / high
            down[0], down[-1] = top * (around - t[0]), under * (t[-1] - around)
            out = numpy.zeros((layers, rings + 1))
            out[:, 1:-1] = k * (t[:, :-1] - t[:, 1:]) / wide
            out[:, -1] = side * (t[:, -1] - around)
            out *= 2 * math.pi * edges * high
            gained = (down[:-1] - down[1:]) * floor + out[:, :-1] - out[:, 1:]
            return (gained / volume / rho / c).ravel()

        seconds, ends = stay["minutes"] * 60, now + stay["minutes"]
        wanted = [time for time in case["times_min"] if now < time <= ends + 1e-9]
        grid = sorted({min((time - now) * 60, seconds) for time in wanted} | {seconds})
        band = diags([1.0] * 5, [-rings, -1, 0, 1, rings], shape=(layers * rings, layers * rings))
        run = solve_ivp(slope, (0, seconds), warm.ravel(), method="BDF", t_eval=grid, rtol=rtol, atol=10 * rtol, jac_sparsity=band)
        for time in wanted:
            at = run.y[:, grid.index(min((time - now) * 60, seconds))].reshape(layers, rings)
            found[time] = float((at * volume).sum() / volume.sum())
        warm, now = run.y[:, -1].reshape(layers, rings), ends
    return [found[time] for time in case["times_min"]]


def test_cooling_in_a_vessel_agrees_with_a_general_solver(ask):
    """On the same grid within 0.3 per cent of the largest difference of temperature there is, at every time; a fine
    grid lies at most 3 per cent below it (wide deep vessels under a strong draught), never above: it errs warm."""
    rng = random.Random(63)
    cases = [random_vessel(rng) for _ in range(CASES // 5)]
    document = {"worksheet": 1, "formula": {"streams": []}, "vessel_coolings": cases}
    results = ask([document])[0]["heat"]["vessel_coolings"]
    same, warm, cold = 0.0, 0.0, 0.0
    for case, result in zip(cases, results, strict=True):
        span = case["start_c"] - min(stay["around_c"] for stay in case["stays"])
        ours = [one["mean_c"] for one in result["at"]]
        for one, coarse, fine in zip(ours, solve_in_vessel(case, 10, 6), solve_in_vessel(case), strict=True):
            same = max(same, abs(one - coarse) / span)
            warm, cold = max(warm, (one - fine) / span), max(cold, (fine - one) / span)
    print(f"{len(cases)} coolings in vessels, worst difference {100 * same:.3f} % of the span; {100 * warm:.1f} % from a fine grid")
    assert same < 0.003
    assert warm < 0.03 and cold < 0.003


def test_water_boils_as_iapws_says(ask):
    """Within 0.02 °C of IAPWS-IF97 by pressure, and by altitude through ISO 2533:1975."""
    rng = random.Random(62)
    pressures = [rng.uniform(500, 1080) for _ in range(CASES)]
    altitudes = [rng.uniform(-400, 5000) for _ in range(CASES)]
    asked = [{"pressure_hpa": p} for p in pressures] + [{"altitude_m": z} for z in altitudes]
    document = {"worksheet": 1, "formula": {"streams": []}, "boilings": asked}
    boils = [one["boils_c"] for one in ask([document])[0]["heat"]["boilings"]]

    def standard(z):
        height = 6356766 * z / (6356766 + z)
        return 1013.25 * (1 - 0.0065 * height / 288.15) ** (9.80665 * 0.0289644 / (8.31432 * 0.0065))

    hectopascals = pressures + [standard(z) for z in altitudes]
    for ours, p in zip(boils, hectopascals, strict=True):
        assert abs(ours - (IAPWS97(P=p / 10000, x=0).T - 273.15)) < 0.02


# Choi and Okos (1986), J/(kg·K): a + b·t + c·t².
HEATS = {
    "water": (4176.2, -0.090864, 5.4731e-3), "protein": (2008.2, 1.2089, -1.3129e-3),
    "fat": (1984.2, 1.4733, -4.8008e-3), "carbohydrate": (1548.8, 1.9625, -5.9399e-3),
    "fibre": (1845.9, 1.8306, -4.6509e-3), "ash": (1092.6, 1.8896, -3.6817e-3)}


def enthalpy(food, t):
    """Enthalpy of a kilogram of moist food above 0 °C, J."""
    shares = {part: float(food[part]) for part in HEATS}
    shares["carbohydrate"] = max(shares["carbohydrate"] - shares["fibre"], 0.0)
    whole = sum(shares.values())
    return sum(share / whole * (a * t + b * t * t / 2 + c * t**3 / 3)
               for (a, b, c), share in zip(HEATS.values(), shares.values(), strict=True))


# Choi and Okos (1986), kg/m³: a + b·t + c·t².
DENSITIES = {
    "water": (997.18, 3.1439e-3, -3.7574e-3), "protein": (1329.9, -0.51840, 0), "fat": (925.59, -0.41757, 0),
    "carbohydrate": (1599.1, -0.31046, 0), "fibre": (1311.5, -0.36589, 0), "ash": (2423.8, -0.28063, 0)}


def volume(food, t):
    """Volume of a kilogram of moist food without air, m³."""
    shares = {part: float(food[part]) for part in DENSITIES}
    shares["carbohydrate"] = max(shares["carbohydrate"] - shares["fibre"], 0.0)
    whole = sum(shares.values())
    return sum(share / whole / (a + b * t + c * t * t)
               for (a, b, c), share in zip(DENSITIES.values(), shares.values(), strict=True))


def melting(kilograms, t):
    """Heat that turns ice into water at 0 °C, J: 333.4 kJ/kg, ice by Choi and Okos."""
    return kilograms * (333_430 - 1000 * (2.0623 * t + 6.0769e-3 * t * t / 2))


def test_the_bowl_temperature_agrees_with_a_general_solver(ask):
    """Flour, water, milk and ice in a bowl, each at its own temperature, settled by a root finder; then friction
    and room by scipy's solve_ivp: the same to 0.01 °C."""
    rng = random.Random(63)
    documents, truths = [], []
    for _ in range(CASES):
        lines = [(1, rng.uniform(300, 900)), (200, rng.uniform(100, 500)), (300, rng.uniform(20, 500)),
                 (201, rng.choice([0, rng.uniform(5, 60)]))]
        warm = [rng.uniform(15, 40) for _ in lines[:3]] + [rng.uniform(-25, 0)]
        friction, minutes, bowl_g = rng.uniform(0, 2), rng.uniform(0, 15), rng.uniform(0, 2000)
        room = rng.uniform(5, 35)
        documents.append({
            "worksheet": 1,
            "formula": {"streams": [{"kind": "final", "name": "", "lines": [
                {"ingredient": number, "mass_g": grams, "at_c": at}
                for (number, grams), at in zip(lines, warm, strict=True)]}]},
            "kitchen": {"room_c": room, "bowls": [{"material": "steel", "mass_g": bowl_g}], "mixing_bowl": 0,
                        "mixer": {"friction_k_per_min": friction, "mixing_min": minutes}},
        })
        parts = [(grams / 1000, INGREDIENTS[number], at)
                 for (number, grams), at in zip(lines[:3], warm[:3], strict=True)]
        ice, frozen = lines[3][1] / 1000, warm[3]
        # Half of the bowl warms up, 477 J/(kg·K); flour gives 15.1 J/g as it takes up water.
        steel, gained = bowl_g / 2000 * 477, 15.1 * lines[0][1]
        water = INGREDIENTS[200]

        def missing_heat(t, parts=parts, steel=steel, gained=gained, room=room, ice=ice, frozen=frozen, water=water):
            foods = sum(mass * (enthalpy(food, t) - enthalpy(food, at)) for mass, food, at in parts)
            return foods + ice * enthalpy(water, t) + melting(ice, frozen) + steel * (t - room) - gained

        settled = brentq(missing_heat, -20, 90)
        melted = [*parts, (ice, water, 0)]
        capacity = steel + sum(mass * (enthalpy(food, 25.01) - enthalpy(food, 24.99)) / 0.02 for mass, food, _ in melted)
        room_taken = sum(mass * volume(food, 25) for mass, food, _ in melted)
        # Still air takes 9 W/(m²·K) from the surface of a ball of the dough's volume.
        per_minute = 60 * 9 * (36 * math.pi * room_taken**2) ** (1 / 3) / capacity

        def slope(_time, t, friction=friction, per_minute=per_minute, room=room):
            return friction - per_minute * (t - room)

        run = solve_ivp(slope, (0, minutes), [settled], rtol=1e-9, atol=1e-9)
        truths.append(float(run.y[0, -1]))
    for result, truth in zip(ask(documents), truths, strict=True):
        bowl = result["heat"]["bowl"]
        assert math.isclose(bowl["dough_c"], truth, abs_tol=0.01)
        assert bowl["low_c"] < truth < bowl["high_c"]


@pytest.mark.parametrize("room,worse", [(15, True), (22, False)])
def test_four_to_one_chocolate_keeps_lumps_in_a_cold_kitchen(ask, room, worse):
    """Common practice: clear lumps at 15 °C, few or none at 22 °C; near-boiling water, no bowl."""
    document = {"worksheet": 1,
                "formula": {"streams": [{"kind": "topping", "name": "", "lines": [
                    {"ingredient": 1000, "mass_g": 80}, {"ingredient": 200, "mass_g": 20}]}]},
                "kitchen": {"room_c": room, "bowls": []}, "heat": {"melt": {"liquid_c": 96}}}
    answer = ask([document])[0]["heat"]["melts"][0]["answer"]
    assert (answer["lumps"] == "clear") is worse
