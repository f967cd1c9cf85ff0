"""pandas (or numpy alone) reads the file, scipy takes the velocity. Arguments: pandas|numpy, file."""
import json
import sys

import numpy
from scipy.signal import savgol_filter

reader, path = sys.argv[1:3]
if reader == "pandas":
    import pandas
    frame = pandas.read_csv(path)
    fork, shock = frame["Fork"].to_numpy(), frame["Shock"].to_numpy()
else:
    fork, shock = numpy.loadtxt(path, delimiter=",", skiprows=1, usecols=(1, 2), unpack=True)
found = {"rows": len(fork)}
for end, values, limit in (("front", fork, 118), ("rear", shock, 128)):
    percentiles = numpy.percentile(values, [1, 5, 10, 25, 50, 75, 90, 95, 99])
    velocity = savgol_filter(values, 15, 2, deriv=1, delta=0.001)
    numpy.histogram(velocity, bins=numpy.arange(-1500, 1501, 50))
    state = numpy.where(values >= limit, 1, numpy.where(values < limit - 5, 0, -1))
    state = state[state >= 0]
    bottomed = int(numpy.sum((state[1:] == 1) & (state[:-1] == 0)) + (state[0] == 1))
    found[end] = {"median": float(percentiles[4]), "high": float(100 * numpy.mean(velocity >= 150)), "bottomed": bottomed}
print(json.dumps(found))
