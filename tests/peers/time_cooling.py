"""Times scipy on the cooling that the worksheet times, and says how far the two are apart."""

import json
import os
import statistics
import subprocess
import time

from test_heat import follow

TURNS = 7
PLACES = ("centre_c", "mean_c", "surface_c")
# From the quickest to the finest: cells, and the relative tolerance in time.
WAYS = [(cells, rtol) for cells in (10, 15, 20, 30, 40, 60) for rtol in (1e-2, 1e-3, 1e-4, 1e-5, 1e-6)]


def apart(one, other):
    """The largest difference at any time and place, °C."""
    return max(abs(a - b) for x, y in zip(one, other, strict=True) for a, b in zip(x, y, strict=True))


def timed(case, **how):
    """The answer, and how long it takes, ms."""
    took = []
    for _ in range(TURNS):
        begun = time.perf_counter()
        answer = follow(case, **how)
        took.append(time.perf_counter() - begun)
    return answer, 1000 * statistics.median(took)


def main():
    worksheet = os.environ["SOFTCRUMB_WORKSHEET"]
    document = subprocess.run([worksheet, "--cooling"], check=True, stdout=subprocess.PIPE, text=True).stdout
    answer = subprocess.run([worksheet], input=document, check=True, stdout=subprocess.PIPE, text=True).stdout
    case = json.loads(document)["coolings"][0]
    ours = [[row[place] for place in PLACES] for row in json.loads(answer)["heat"]["coolings"][0]["at"]]
    fine = follow(case, cells=400, rtol=1e-9)
    error = apart(ours, fine)
    print(f"12 h of cooling: the middle is at {ours[-1][0]:.6f} °C here, at {fine[-1][0]:.6f} °C by scipy with 400 cells; "
          f"at {len(ours)} times and 3 places at most {error:.4f} °C apart")
    # scipy need be no finer than we are: the quickest way that is.
    found = [(took, cells, rtol) for cells, rtol in WAYS
             for answer, took in [timed(case, cells=cells, rtol=rtol)] if apart(answer, fine) <= error]
    took, cells, rtol = min(found)
    print(f"as near by scipy's solve_ivp: {took:.1f} ms, median of {TURNS} ({cells} cells, rtol {rtol:g}, the quickest of {len(found)} ways that are)")


if __name__ == "__main__":
    main()
