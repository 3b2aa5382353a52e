"""Holds old-and-new.csv and read.csv against the truth."""

from comparison import same_number
from sheets import cell_name, place_of

ARGUMENTS = {
    "BENCHEFFICIENCY": ["pot empty", "pot and water at start", "water start", "wood laid out", "water end",
                        "pot and water at end", "wood left", "moisture", "net calorific value", "method", "net char"],
    "BOILINGPOINT": ["altitude"], "EFFICIENCY": ["useful heat", "fuel energy"], "FIREPOWER": ["fuel energy", "minutes"],
    "EQUIVALENTDRYFUEL": ["wood burned", "moisture", "net calorific value", "net char", "method"],
    "NORMALBOILTIME": ["minutes", "start", "end"], "USEFULHEAT": ["water mass", "start", "end", "method", "mass evaporated"]}


def written(truth, got):
    """Cells that hold what was carried into them."""
    for place in truth.read:
        cell = got.get(place)
        if cell and cell.content == truth.must.get(place, truth.may.get(place)):
            yield place, cell


def same_difference(new, old, difference, factor):
    """factor: 100 where the old result is in per cent beside a fraction."""
    old /= float(factor or 1)
    return difference != "" and abs(new - old - float(difference)) <= 1e-9 * max(abs(new), abs(old))


def compare_pairs(world, listed, carried, found):
    """carried: path, sheet's name, truth and cells of each."""
    expected = {}
    for path, sheet, truth, got in carried:
        cells = dict(written(truth, got))
        for (key, _), (place, old_place, old, new) in truth.results.items():
            if place in cells:
                expected[str(path), sheet, cell_name(place)] = old_place, old, cells[place].result, new
    for row in listed:
        where = row["workbook"], row["sheet"], row["new_cell"]
        if where not in expected:
            found.pairs.append(f"{world} {where}: nothing was carried there: {row}")
            continue
        old_place, old, new, _ = expected.pop(where)
        if row["old_cell"] != cell_name(old_place) or row["row"] != str(place_of(row["new_cell"])[0] + 1):
            found.pairs.append(f"{world} {where}: beside {cell_name(old_place)}, not {row['old_cell']}")
        if not isinstance(old, float):
            continue
        if not same_number(old, float(row["old"])):
            found.pairs.append(f"{world} {where}: the old result is {old}, not {row['old']}")
        if isinstance(new, float) and not (same_number(new, float(row["new"])) and
                                           same_difference(new, old, row["difference"], row["factor"])):
            found.pairs.append(f"{world} {where}: the new result is {new}, not {row['new']}, {row['difference']}")
    found.pairs += [f"{world} {where}: is not listed, {pair}" for where, pair in expected.items()
                    if isinstance(pair[1], float)]


def values_read(carried):
    """By function and argument, of each cell that was carried: path, value, and whether it is sure to be told. What an
    empty cell counts for is not, nor what a call without a result read, which may have been another such call."""
    values = {}
    for path, _, truth, got in carried:
        for place, cell in written(truth, got):
            function, read = truth.read[place]
            for argument, value in zip(ARGUMENTS[function], read):
                if value is not None:
                    one = str(path), value[0], value[1] and isinstance(cell.result, float)
                    values.setdefault((f"STOVE.{function}", argument), []).append(one)
    return values


def is_odd(value, middle, times):
    return value != 0 and not 1 / times < abs(value / middle) < times


def compare_read(world, listed, carried, found):
    rows = {(row["function"], row["argument"]): row for row in listed}
    for what, read in values_read(carried).items():
        numbers, sure, row = [value for _, value, _ in read], [value for _, value, has in read if has], rows.get(what)
        if row is None:
            found.read += [f"{world} {what}: is not listed"] * bool(sure)
            continue
        for name, end in (("lowest", min), ("highest", max)):
            said = float(row[name])
            if sure and end([said, end(sure)]) != said and not same_number(end(sure), said, 1e-5) or not any(
                    same_number(value, said, 1e-5) for value in numbers):  # six digits are shown
                found.read.append(f"{world} {what}: the {name} is {end(numbers)}, of results {sure and end(sure)}: {row}")
        middle = float(row["median"])
        if not min(numbers) <= middle * 1.00001 and middle * 0.99999 <= max(numbers):
            found.read.append(f"{world} {what}: the median is no value: {row}")
        if unsaid := {path for path, value, has in read if has and is_odd(value, middle, 10.1)} - named(row["odd"]):
            found.read.append(f"{world} {what}: {unsaid} are ten times off: {row}")
        if said := named(row["odd"]) - {path for path, value, _ in read if is_odd(value, middle, 9.9)}:
            found.read.append(f"{world} {what}: {said} are not ten times off: {row}")


def named(odd):
    return {one.rpartition(": ")[0] for one in odd.split("; ") if one}
