"""The same roots with scipy's brentq and the same water with iapws: name and
nanoseconds a call, the least of several runs."""
import math
import time

from iapws import IAPWS97
from iapws.iapws97 import _PSat_T, _TSat_P
from scipy.optimize import brentq

S = (
    (385.1761, 135.3705, 40.9299, -3.9643, 13.4853, -17.2890),
    (-46.2720, -7.1720, 1.1597, 5.1126, 17.5254, 0.0),
    (59.7712, 7.2491, 12.3630, -35.4791, 0.0, 0.0),
    (-47.2207, -21.6977, 27.6301, 0.0, 0.0, 0.0),
    (18.3184, 12.3081, 0.0, 0.0, 0.0, 0.0),
)


def density(w, t):
    u = (t - 20) / 100
    water = (999.83952 + t * (16.952577 + t * (-7.9905127e-3 + t * (-46.241757e-6 + t * (105.84601e-9 - t * 281.03006e-12))))) / (1 + 16.887236e-3 * t)
    total = 0.0
    for i in reversed(range(6)):
        a = 0.0
        for k in reversed(range(5)):
            a = a * u + S[k][i]
        total = (total + a) * w
    return water + total


def brix_of(d, t):
    return 100 * brentq(lambda w: density(w, t) - d, -0.02, 0.9)


def hydrometer(reading, t, t0):
    return brix_of(density(reading / 100, t0) / (1 + 25e-6 * (t - t0)), t)


def log_activity(x, k):
    return math.log1p(-x) - 17638 / (8.314462618 * k) * x * x * (1 - 1.0038 * x - 0.24653 * x * x)


def rise(brix, kPa):
    moles = brix / 342.3
    x = moles / (moles + (100 - brix) / 18.02)
    k0 = _TSat_P(kPa / 1000)
    return brentq(lambda k: log_activity(x, k) + math.log(_PSat_T(k) / (kPa / 1000)), k0 - 1, k0 + 60) - k0


def brix_of_rise(above, kPa):
    k = _TSat_P(kPa / 1000) + above
    want = math.log(kPa / 1000 / _PSat_T(k))
    x = brentq(lambda x: log_activity(x, k) - want, 0, 0.5)
    mass = x / (1 - x) * 342.3 / 18.02
    return 100 * mass / (mass + 1)


def latent(c):
    return IAPWS97(T=c + 273.15, x=1).h - IAPWS97(T=c + 273.15, x=0).h


def timed(name, calls, call):
    least = math.inf
    for _ in range(30):
        start = time.perf_counter()
        for _ in range(calls):
            call()
        least = min(least, (time.perf_counter() - start) / calls)
    print(name, 1e9 * least)


timed("brix_of", 30, lambda: brix_of(1290, 82.22222222222223))
timed("hydrometer", 30, lambda: hydrometer(60, 82.22222222222223, 15.555555555555555))
timed("rise", 10, lambda: rise(66.9, 98))
timed("brix_of_rise", 30, lambda: brix_of_rise(4.2, 98))
timed("saturation", 300, lambda: _TSat_P(0.098))
timed("vapor", 300, lambda: _PSat_T(372.2))
timed("latent", 3, lambda: latent(100))
