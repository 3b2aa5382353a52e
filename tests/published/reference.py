#!/usr/bin/env python3
"""Writes reference.csv: what other people's libraries say, as `quantity;input;value` rows.

Debian's python3-iapws (IAPWS-IF97, IAPWS-95, SR6-08), python3-fluids (US Standard Atmosphere 1976) and python3-scipy.
"""
import sys

from fluids.atmosphere import ATMOSPHERE_1976
from iapws import IAPWS95
from iapws._iapws import _Liquid
from iapws.iapws97 import _PSat_T, _Region1, _Region2, _TSat_P
from scipy.integrate import solve_ivp


def rows():
    for pressure in range(300, 1101, 2):  # hPa
        yield "boiling point, IF97", pressure, _TSat_P(pressure / 1e4) - 273.15
    for tenths in range(1, 1051, 5):  # 0.1 to 104.6 °C; SR6-08 describes the metastable liquid, too
        liquid = _Liquid(tenths / 10 + 273.15)
        yield "enthalpy, SR6-08", tenths / 10, liquid["h"]
        yield "density, SR6-08", tenths / 10, liquid["rho"]
    for temperature in range(1, 99, 4):  # IAPWS-95 iterates: a few points, all liquid at 0.1 MPa
        water = IAPWS95(T=temperature + 273.15, P=0.1)
        yield "enthalpy, IAPWS-95", temperature, water.h
        yield "density, IAPWS-95", temperature, water.rho
    for tenths in range(600, 1051, 5):
        kelvin = tenths / 10 + 273.15
        pressure = _PSat_T(kelvin)
        yield "latent heat, IF97", tenths / 10, _Region2(kelvin, pressure)["h"] - _Region1(kelvin, pressure)["h"]
    for altitude in range(-400, 8901, 25):
        pressure = ATMOSPHERE_1976(altitude).P / 100
        yield "air pressure, US Standard Atmosphere", altitude, pressure
        yield "boiling point at an altitude", altitude, _TSat_P(pressure / 1e4) - 273.15
    # A room of 27 m³ with 1.3 mg/m³, into which 8.4 mg/min are emitted for 40 min; its integral is a state of its own.
    for tenths in range(0, 400, 4):
        changes = tenths / 10 / 60  # 1/min
        solved = solve_ivp(lambda _, y: [8.4 / 27 - changes * (y[0] - 1.3), y[0]], (0, 40), [1.3, 0],
                           method="DOP853", rtol=1e-12, atol=1e-12)
        yield "room at the end", tenths / 10, solved.y[0][-1]
        yield "mean of a room", tenths / 10, solved.y[1][-1] / 40


def main():
    with open(sys.argv[1], "w", encoding="utf-8") as file:
        for quantity, at, value in rows():
            file.write(f"{quantity};{at!r};{float(value)!r}\n")


main()
