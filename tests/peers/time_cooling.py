"""Times scipy on the cooling that the worksheet times, and prints the difference of the two."""

import json
import os
import statistics
import subprocess
import time

from test_heat import solve

RUNS = 7
PROBES = ("centre_c", "mean_c", "surface_c")
# From the fastest to the most accurate: cells, and the relative tolerance in time.
SETTINGS = [(cells, rtol) for cells in (10, 15, 20, 30, 40, 60) for rtol in (1e-2, 1e-3, 1e-4, 1e-5, 1e-6)]


def largest_difference(one, other):
    """The largest difference at any time and probe, °C."""
    return max(abs(a - b) for x, y in zip(one, other, strict=True) for a, b in zip(x, y, strict=True))


def timed(case, **settings):
    """The answer, and the median time it takes, ms."""
    took = []
    for _ in range(RUNS):
        started = time.perf_counter()
        answer = solve(case, **settings)
        took.append(time.perf_counter() - started)
    return answer, 1000 * statistics.median(took)


def main():
    worksheet = os.environ["SOFTCRUMB_WORKSHEET"]
    document = subprocess.run([worksheet, "--cooling"], check=True, stdout=subprocess.PIPE, text=True).stdout
    answer = subprocess.run([worksheet], input=document, check=True, stdout=subprocess.PIPE, text=True).stdout
    case = json.loads(document)["coolings"][0]
    ours = [[row[probe] for probe in PROBES] for row in json.loads(answer)["heat"]["coolings"][0]["at"]]
    fine = solve(case, cells=400, rtol=1e-9)
    error = largest_difference(ours, fine)
    print(f"12 h of cooling: the centre is at {ours[-1][0]:.6f} °C here, at {fine[-1][0]:.6f} °C by scipy with 400 cells; "
          f"the largest difference at {len(ours)} times and 3 probes is {error:.4f} °C")
    # The fastest settings of scipy that are at least as accurate as ours.
    found = [(took, cells, rtol) for cells, rtol in SETTINGS
             for answer, took in [timed(case, cells=cells, rtol=rtol)] if largest_difference(answer, fine) <= error]
    took, cells, rtol = min(found)
    print(f"equally accurate by scipy's solve_ivp: {took:.1f} ms, median of {RUNS} ({cells} cells, rtol {rtol:g}, the fastest of {len(found)} settings)")


if __name__ == "__main__":
    main()
