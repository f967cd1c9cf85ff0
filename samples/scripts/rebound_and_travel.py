#!/usr/bin/env python3
"""Tabulates travel used against rebound clicks over a season, from the exported notebook.

    detent export tern-650.setup.yaml > tern.json
    detent log logs/fa-3.csv --notebook tern-650.setup.yaml --format json > fa-3.json
    python3 scripts/rebound_and_travel.py tern.json fa-3.json

Takes the notebook's export first, then statistics of any of its logs, which are matched by their file's name. Needs
nothing but Python 3.
"""
import json
import sys
from pathlib import PurePosixPath

ENDS = [("front", "fork_rebound"), ("rear", "shock_rebound")]


def load(path):
    with open(path, encoding="utf-8") as file:
        return json.load(file)


def clicks(settings, adjuster):
    """Clicks out of one leg or, where they differ, of both."""
    position = settings.get(adjuster)
    if position is None:
        return "-"
    legs = [position] if "value" in position else position.values()
    return "/".join(dict.fromkeys(f"{leg['value']:g}" for leg in legs))


def millimetres(value):
    return "-" if value is None else f"{value:.1f}"


def rows(notebook, logs):
    by_name = {PurePosixPath(log["file"].replace("\\", "/")).name: log for log in logs}
    for entry in notebook["entries"]:
        ride = entry.get("ride")
        if ride is None:
            continue
        log = by_name.get(PurePosixPath(ride.get("log", "")).name, {})
        for end, adjuster in ENDS:
            tie = ride.get(f"{end}_travel_used_mm")
            position = log.get(end, {}).get("position", {})
            if tie is None and not position:
                continue
            yield [end, clicks(entry["settings"], adjuster), entry["id"], entry.get("date", "-"), millimetres(tie),
                   millimetres(position.get("deepest_mm")), millimetres(position.get("median_mm"))]


def main(notebook, *logs):
    table = [["end", "clicks out", "entry", "date", "tie mm", "log mm", "median mm"]]
    table += sorted(rows(load(notebook), [load(log) for log in logs]), key=lambda row: (row[0], float(row[1].split("/")[0]) if row[1] != "-" else -1))
    widths = [max(len(row[at]) for row in table) for at in range(len(table[0]))]
    for row in table:
        print("  ".join(cell.ljust(width) for cell, width in zip(row, widths)).rstrip())


if __name__ == "__main__":
    if len(sys.argv) < 2:
        sys.exit(__doc__)
    main(*sys.argv[1:])
