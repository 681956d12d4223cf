"""Rises, plans and calendar files against Python's time zones, scipy's integrals and icalendar."""

import copy
import datetime as dt
import random
import zoneinfo

import icalendar
import numpy as np
import pytest
from scipy.integrate import cumulative_trapezoid

ZONES = ("Europe/London", "America/New_York", "Australia/Lord_Howe")
# Nights of 2026 on which clocks change in one of the zones, and one without a change.
NIGHTS = ("2026-03-28", "2026-10-24", "2026-03-07", "2026-10-31", "2026-04-04", "2026-10-03", "2026-06-13")
UTC = dt.timezone.utc


def offsets(zone, now):
    """The zone's offsets as a table, from Python's own rules."""
    table, before = [], None
    start = int(now.timestamp()) // 3600 * 3600 - 40 * 86400
    for seconds in range(start, start + 80 * 86400, 1800):
        ahead = dt.datetime.fromtimestamp(seconds, zone).utcoffset()
        if ahead != before:
            table.append({"from_s": seconds, "ahead_min": int(ahead.total_seconds() // 60)})
            before = ahead
    return table


def document(base, zone, now, **settings):
    one = copy.deepcopy(base)
    one["day"] = {"now_s": int(now.timestamp()), "offsets": offsets(zone, now), **settings}
    return one


@pytest.fixture(scope="module")
def asked_days(pairs, ask):
    """For each zone and night: a plan for the next afternoon, with its document and its whole answer."""
    rng = random.Random(4)
    bases = [d for d, r in pairs if "error" not in r["batch"]["scaled"]][:40]
    asked = []
    for name in ZONES:
        zone = zoneinfo.ZoneInfo(name)
        for night in NIGHTS:
            for base in rng.sample(bases, 4):
                evening = dt.datetime.fromisoformat(night).replace(hour=rng.randrange(12, 19), tzinfo=zone)
                table = evening + dt.timedelta(days=1)
                table = table.replace(hour=rng.randrange(11, 20), minute=rng.choice((0, 15, 30)))
                asked.append((zone, evening, document(base, zone, evening, table_ms=int(table.timestamp() * 1000))))
    answers = ask([d for _, _, d in asked])
    assert all("error" not in answer["day"] for answer in answers)
    return asked, answers


@pytest.fixture(scope="module")
def days(asked_days):
    return [(z, n, d, a["day"]) for (z, n, d), a in zip(*asked_days, strict=True)]


@pytest.fixture(scope="module")
def answers_of_days(asked_days):
    return asked_days[1]


def test_local_times_are_those_of_the_time_zone(days):
    checked = 0
    for zone, _, _, day in days:
        for step in day["steps"]:
            for side in ("begins", "ends"):
                wall = dt.datetime.fromtimestamp(step[side + "_s"], zone)
                assert step[side + "_local"] == wall.replace(tzinfo=None).isoformat()
                checked += 1
    assert checked > 2000


def test_no_work_at_night_and_nothing_before_its_inputs(days):
    without_conflict = 0
    for zone, now, document, day in days:
        assert day["table_s"] * 1000 == document["day"]["table_ms"]
        for step in day["steps"]:
            lasts = step["ends_s"] - step["begins_s"]
            assert lasts == pytest.approx(step["lasts_min"] * 60, abs=1)
            assert all(day["steps"][before]["ends_s"] <= step["begins_s"] for before in step["after"])
            assert step["least_min"] - 0.02 <= lasts / 60 <= step["most_min"] + 0.02
        if day["conflicts"]:
            assert day["conflicts"][0]["kind"] in ("AtNight", "TooLate", "HandsFull")
            continue
        without_conflict += 1
        assert day["begins_s"] >= now.timestamp()
        for step in day["steps"]:
            if step["hands_min"] == 0:
                continue
            for at in (step["begins_s"], step["begins_s"] + min(step["hands_min"] * 60, lasts) - 1):
                wall = dt.datetime.fromtimestamp(at, zone).time()
                assert dt.time(6, 30) <= wall < dt.time(23, 0), (step, wall)
    # Cold doughs rise long, so that many a drawn day does not work out.
    assert without_conflict > 20


def test_another_program_reads_the_calendar(days):
    for _, now, _, day in days:
        text = day["calendar"]
        assert all(len(line.encode()) <= 75 for line in text.split("\r\n"))
        calendar = icalendar.Calendar.from_ical(text)
        assert calendar["version"] == "2.0" and calendar["prodid"]
        events = [part for part in calendar.walk("VEVENT")]
        assert not any(event.errors for event in events) and not calendar.errors
        assert len({str(event["uid"]) for event in events}) == len(events) == len(day["steps"])
        for event, step in zip(events, day["steps"], strict=True):
            assert event.decoded("dtstart") == dt.datetime.fromtimestamp(step["begins_s"], UTC)
            if step["ends_s"] > step["begins_s"]:
                assert event.decoded("dtend") == dt.datetime.fromtimestamp(step["ends_s"], UTC)
            assert event.decoded("dtstamp") == now.astimezone(UTC).replace(microsecond=0)
            assert str(event["summary"]) == step["name"]
            assert len(event.walk("VALARM")) == (1 if step["hands_min"] > 0 else 0)


LEAST, BEST, MOST = 1.3, 36.0, 45.4


def rate(t):
    """Rosso, Lobry and Flandrois 1993, J. Theor. Biol. 162:447-463."""
    t = np.asarray(t, dtype=float)
    above = (t - MOST) * (t - LEAST) ** 2
    below = (BEST - LEAST) * ((BEST - LEAST) * (t - BEST) - (BEST - MOST) * (BEST + LEAST - 2 * t))
    return np.where((t > LEAST) & (t < MOST), above / below, 0.0)


def test_a_rise_is_the_integral_along_its_temperature(days):
    rises = 0
    for *_, day in days:
        for risen in (day["bulk"], day["proof"]):
            if "error" in risen:
                continue
            time, warm, done, volume = np.array(risen["min_c_done_volume"]).T
            needed = float(rate(risen["known_at_c"])) * risen["known_min"] / risen["times_as_fast"]
            # A finer sum, with temperature interpolated linearly between the samples.
            fine = np.linspace(time[0], time[-1], 20_001)
            work = cumulative_trapezoid(rate(np.interp(fine, time, warm)), fine, initial=0.0)
            wide = 1 + risen["spread_share"]
            for key, share in (("soonest_min", 1 / wide), ("due_min", 1.0), ("latest_min", wide)):
                if risen[key] is not None:
                    assert risen[key] == pytest.approx(np.interp(needed * share, work, fine), rel=2e-3)
            assert volume == pytest.approx(1 + done, rel=1e-9)
            rises += 1
    assert rises > 100


# Common practice: work by hand is done a tenth sooner at best, and a quarter later.
BY_HAND = {"sooner": 0.1, "later": 0.25}
HANDS = ("scald", "mix_preferment", "mix", "butter_in", "divide", "round", "shape", "tin", "melt", "drizzle", "brush")


def off(end, soonest, likely, latest):
    return max(0.0, likely - soonest if end == "sooner" else latest - likely)


def path_by_quadrature(end, day, stages, unmeasured):
    """JCGM 100:2008, 5.1.2, step after step; lateness waits, being early needs all that follows at once."""
    steps, ends = day["steps"], []
    bakes = [place for place, step in enumerate(steps) if step["work"] == "bake"]
    baked = sum(steps[place]["lasts_min"] for place in bakes)
    for place, step in enumerate(steps):
        work, lasts = step["work"], step["lasts_min"]
        before = [(ends[b], (step["begins_s"] - steps[b]["ends_s"]) / 60, not steps[b]["after"]) for b in step["after"]]
        if end == "later":
            start = max([max(0.0, minutes - wait) for minutes, wait, _ in before], default=0.0)
        else:
            any_waits = any(not first for *_, first in before)
            counted = [m for m, wait, first in before if wait <= 0 and not (any_waits and first)]
            start = min(counted, default=0.0)
        own = []
        if work in ("bulk", "proof"):
            risen = day[work]
            own.append(off(end, risen["soonest_min"], risen["due_min"], risen["latest_min"] or risen["due_min"]))
            own += [unmeasured] if work == "bulk" else []
        elif work == "bake" and place == bakes[-1]:
            soonest, likely, latest = stages["bake"]
            own.append(off(end, soonest, likely, latest) / likely * baked)
        elif work == "cool":
            soonest, likely, latest = stages["cool"]
            own.append(off(end, soonest, min(lasts, likely), latest))
        elif work in HANDS:
            own.append(step["hands_min"] * BY_HAND[end])
        total = (start**2 + sum(x**2 for x in own)) ** 0.5
        slack = 0.0
        if work.startswith("chill_"):
            slack = lasts - step["least_min"] if end == "later" else step["most_min"] - lasts
        ends.append(max(0.0, total - slack))
    return ends[max(range(len(steps)), key=lambda place: steps[place]["ends_s"])]


def test_the_range_of_ready_is_a_sum_in_quadrature(days, answers_of_days):
    checked = 0
    for (*_, day), answer in zip(days, answers_of_days, strict=True):
        ready = answer["run"]["ready"]
        stages = {s["kind"]: s["lasts_min"] for s in answer["run"]["stages"] if s["part"] is None}
        if ready is None or "error" in day["bulk"] or "error" in day["proof"] or "cool" not in stages:
            continue
        cool = next(step for step in day["steps"] if step["work"] == "cool")
        waits = max(0.0, cool["lasts_min"] - stages["cool"][1])
        assert ready["likely_s"] == pytest.approx(day["table_s"] - waits * 60, abs=2)
        for end in ("sooner", "later"):
            dough = sum(item["min"] for item in ready[end]["items"] if item["kind"] == "dough")
            expected = path_by_quadrature(end, day, stages, dough)
            assert ready[end]["min"] == pytest.approx(expected, abs=0.05)
        assert ready["latest_s"] == pytest.approx(ready["likely_s"] + ready["later"]["min"] * 60, abs=1)
        checked += 1
    assert checked > 20


UTC_ZONE = zoneinfo.ZoneInfo("UTC")


INVALID = [
    ({"now_s": -1}, "day.now_s"), ({}, "day.now_s"), ({"now_s": "x"}, "day.now_s"),
    ({"now_s": 1, "offsets": 5}, "day.offsets"), ({"now_s": 1, "offsets": [{}]}, "day.offsets[0].from_s"),
    ({"now_s": 1, "loads": 0}, "day.loads"), ({"now_s": 1, "x": 0}, "day.x"),
    ({"now_s": 1, "sleep": {"from_min": 1440, "until_min": 0}}, "day.sleep.from_min"),
]


def test_an_invalid_day_is_reported_with_its_path(pairs, ask):
    base = pairs[0][0]
    answers = ask([{**base, "day": day} for day, _ in INVALID])
    for (_, path), answer in zip(INVALID, answers, strict=True):
        assert answer["error"]["path"] == path, answer
