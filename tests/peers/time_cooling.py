"""Times scipy on the cooling that the worksheet times, and says how far the two are apart."""

import json
import os
import statistics
import subprocess
import time

from test_heat import follow

TURNS = 7


def main():
    worksheet = os.environ["SOFTCRUMB_WORKSHEET"]
    document = subprocess.run([worksheet, "--cooling"], check=True, stdout=subprocess.PIPE, text=True).stdout
    answer = subprocess.run([worksheet], input=document, check=True, stdout=subprocess.PIPE, text=True).stdout
    case = json.loads(document)["coolings"][0]
    ours = json.loads(answer)["heat"]["coolings"][0]["at"]
    took = []
    for _ in range(TURNS):
        begun = time.perf_counter()
        theirs = follow(case)
        took.append(time.perf_counter() - begun)
    apart = max(
        abs(one[place] - other)
        for one, row in zip(ours, theirs, strict=True)
        for place, other in zip(("centre_c", "mean_c", "surface_c"), row, strict=True)
    )
    print(f"the same cooling by scipy's solve_ivp: {1000 * statistics.median(took):.1f} ms, median of {TURNS}; "
          f"at {len(ours)} times and 3 places at most {apart:.3f} °C apart")


if __name__ == "__main__":
    main()
