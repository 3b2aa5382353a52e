#!/usr/bin/env python3
"""Makes an archive as people have it: the old sheets of two workshops, with formulas written by hand. All is invented.

make_workshops.py OUTPUT [OFFICE]    OFFICE: the program soffice

Hillside keeps a form for each run, in kg; from 2014 on it has a row more; and a table of each season, which grew: notes
beside results, a mean below, a result typed over, a number that is a text, an error; in 2015 two columns changed places.
The Atelier has the same form in French, three tests side by side below merged titles, and workbooks with a tab a day.
"""

import argparse
import random
import sys
from pathlib import Path

sys.dont_write_bytecode = True  # no folder beside this program
from flat_sheets import Merged, save  # noqa: E402

TESTERS = ["Amina", "Jonas", "Rehema", "Petro"]
STOVES = ["Round mouth", "Tall pipe", "Double wall", "Clay liner"]
ENGLISH = {
    "title": "Water boiling test", "tester": "Tester", "date": "Date", "stove": "Stove", "altitude": "Altitude",
    "air": "Air temperature", "boiling": "Boiling point", "pot": "Empty pot", "before": "Pot and water, start",
    "after": "Pot and water, end", "start": "Water temperature, start", "end": "Water temperature, end",
    "laid": "Wood laid out", "left": "Wood left", "moisture": "Moisture", "char": "Char", "value": "Calorific value",
    "time": "Time to boil", "water": "Water heated", "steam": "Water evaporated", "heat": "Useful heat",
    "dry": "Dry wood", "efficiency": "Efficiency", "power": "Firepower", "normal": "Boil time for 75 K"}
FRENCH = {
    "title": "Essai d’ébullition", "tester": "Testeur", "date": "Date", "stove": "Foyer", "altitude": "Altitude",
    "air": "Température de l’air", "boiling": "Point d’ébullition", "pot": "Marmite vide",
    "before": "Marmite et eau, début", "after": "Marmite et eau, fin", "start": "Température de l’eau, début",
    "end": "Température de l’eau, fin", "laid": "Bois préparé", "left": "Bois restant", "moisture": "Humidité",
    "char": "Charbon", "value": "Pouvoir calorifique", "time": "Temps d’ébullition", "water": "Eau chauffée",
    "steam": "Eau évaporée", "heat": "Chaleur utile", "dry": "Bois sec", "efficiency": "Rendement",
    "power": "Puissance du feu", "normal": "Temps pour 75 K"}
UNITS = {"altitude": "m", "air": "°C", "boiling": "°C", "pot": "kg", "before": "kg", "after": "kg", "start": "°C",
         "end": "°C", "laid": "kg", "left": "kg", "char": "kg", "value": "kJ/kg", "time": "min", "water": "kg",
         "steam": "kg", "heat": "kJ", "dry": "kg", "power": "kW", "normal": "min"}
FORMULAS = {
    "boiling": "=100-{altitude}/300", "water": "={before}-{pot}", "steam": "={before}-{after}",
    "heat": "=4.186*{water}*({end}-{start})+2260*{steam}",
    "dry": "=({laid}-{left})*(1-1.12*{moisture})-1.5*{char}", "efficiency": "={heat}/({dry}*{value})",
    "power": "={dry}*{value}/(60*{time})", "normal": "={time}*75/({end}-{start})"}
SHORT = ["title", "stove", "pot", "before", "start", "end", "laid", "moisture", "value", "water", "heat"]
SHORT_HEAT = "=4.18*{water}*({end}-{start})"

chance = random.Random(1912)


def readings(altitude):
    pot, water, laid = chance.uniform(0.7, 1.1), chance.uniform(4.8, 5.2), chance.uniform(0.9, 1.3)
    return {"tester": chance.choice(TESTERS), "stove": chance.choice(STOVES), "altitude": altitude,
            "date": f"{chance.randint(1, 28)} March", "air": round(chance.uniform(16, 27), 1), "pot": round(pot, 3),
            "before": round(pot + water, 3), "after": round(pot + water * chance.uniform(0.9, 0.97), 3),
            "start": round(chance.uniform(17, 24), 1), "end": round(100 - altitude / 300 + chance.uniform(-0.4, 0.2), 1),
            "laid": round(laid, 3), "left": round(laid * chance.uniform(0.2, 0.5), 3),
            "moisture": round(chance.uniform(0.09, 0.17), 3), "char": round(chance.uniform(0.02, 0.06), 3),
            "value": 18500, "time": round(chance.uniform(18, 35), 1)}


def form(words, altitude, fields, column="B", formulas=None):
    """A run in a column: labels, values, units."""
    rows, values = {field: number + 1 for number, field in enumerate(fields)}, readings(altitude)
    cells = {field: f"{column}{row}" for field, row in rows.items()}
    written = {**FORMULAS, **(formulas or {})}
    return [[words[field], None if field == "title" else written[field].format(**cells) if field in written
             else values[field], UNITS.get(field)] for field in fields]


def forms(folder, years, words, altitude, fields, ending, number):
    for at in range(number):
        year = years[at % len(years)]
        yield Path(folder) / str(year) / f"run-{at + 1:02}.{ending}", [("Run", form(words, altitude, fields))]


def season(year, runs):
    """A table with a run a row; constants above it, a mean below."""
    late = year == 2015
    share, char = ("I", "H") if late else ("H", "I")
    head = ["Run", "Stove", "Water, kg", "Start, °C", "End, °C", "Steam, kg", "Wood, kg",
            *(["Char, kg", "Moisture"] if late else ["Moisture", "Char, kg"]), "Heat, kJ", "Dry wood, kg", "Efficiency",
            "Remarks"]
    rows = [[f"Season {year}"], ["Specific heat", 4.186, "Steam", 2260, "Wood", 18500], [], head]
    for run in range(runs):
        row, one = len(rows) + 1, readings(1640)
        pair = [one["char"], one["moisture"]] if late else [one["moisture"], one["char"]]
        rows.append([run + 1, one["stove"], round(one["before"] - one["pot"], 3), one["start"], one["end"],
                     round(one["before"] - one["after"], 3), round(one["laid"] - one["left"], 3), *pair,
                     f"=$B$2*C{row}*(E{row}-D{row})+$D$2*F{row}", f"=G{row}*(1-1.12*{share}{row})-1.5*{char}{row}",
                     f"=J{row}/(K{row}*$F$2)", "windy" if run % 5 == 3 else None])
    rows[6][11] = 0.244                            # typed over
    rows[5][6] = f"{rows[5][6]:.2f}".replace(".", ",")  # a number that is a text, of which errors come
    rows.append(["Mean", *[None] * 8, *(f"=AVERAGE({column}5:{column}{len(rows)})" for column in "JKL")])
    return rows


def side_by_side():
    """Three tests below merged titles."""
    fields = [field for field in SHORT if field != "title"]
    rows = [["Trois essais"], [None, *(Merged(text, 2) for text in ("Départ à froid", "Départ à chaud", "Mijotage"))],
            *[[FRENCH[field]] for field in fields]]
    for column in "BDF":
        cells = {field: f"{column}{row + 3}" for row, field in enumerate(fields)}
        values, written = readings(380), {**FORMULAS, "heat": SHORT_HEAT}
        for row, field in enumerate(fields):
            content = written[field].format(**cells) if field in written else values[field]
            rows[row + 2] += [content, UNITS.get(field)]
    return rows


def workbooks():
    fields = [field for field in ENGLISH if field != "air"]
    yield from forms("hillside", (2012, 2013), ENGLISH, 1640, fields, "xls", 8)
    yield from forms("hillside", (2014, 2015), ENGLISH, 1640, list(ENGLISH), "ods", 8)
    for year, runs in zip(range(2011, 2016), (6, 9, 14, 18, 25)):
        yield Path("hillside/seasons") / f"season-{year}.{'xls' if year < 2013 else 'ods'}", [("Runs", season(year, runs))]
    yield from forms("atelier", (2013, 2014), FRENCH, 380, fields, "ods", 6)
    for number in range(8):
        yield Path("atelier/comparaisons") / f"foyer-{number + 1}.xlsx", [("Essais", side_by_side())]
    days = ["Lundi", "Mardi", "Mercredi", "Jeudi", "Vendredi"]
    for week in range(4):
        yield Path("atelier/semaines") / f"semaine-{week + 20}.xlsx", [
            (day, form(FRENCH, 380, SHORT, formulas={"heat": SHORT_HEAT})) for day in days]


if __name__ == "__main__":
    options = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    options.add_argument("output", type=Path)
    options.add_argument("office", nargs="?", default="soffice")
    given = options.parse_args()
    save(list(workbooks()), given.output, given.office)
