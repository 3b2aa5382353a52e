"""What stands on old sheets: fields, what they are called by six workshops, their units, formulas by hand. All invented."""

import unicodedata

WORDINGS = {
    "en": dict(
        title="Water boiling test", tester="Tester", date="Date", stove="Stove", altitude="Altitude", air="Air temperature",
        boiling="Boiling point", pot="Empty pot", before="Pot and water, start", after="Pot and water, end",
        start="Water temperature, start", end="Water temperature, end", laid="Wood laid out", left="Wood left",
        moisture="Moisture", char="Char", value="Calorific value", time="Time to boil", water="Water heated",
        steam="Water evaporated", heat="Useful heat", dry="Dry wood", efficiency="Efficiency", power="Firepower",
        normal="Boil time for 75 K", run="Run"),
    "en2": dict(
        title="Stove trial", tester="Done by", date="On the day", stove="Model", altitude="Height above sea",
        air="Room temp", boiling="Local boiling temp", pot="Pan alone", before="Pan + water before",
        after="Pan + water after", start="First temp", end="Last temp", laid="Fuel given", left="Fuel returned",
        moisture="Fuel wetness", char="Charcoal formed", value="Heating value", time="Minutes of fire",
        water="Mass of water", steam="Lost as vapour", heat="Heat to the water", dry="Equivalent fuel",
        efficiency="Thermal eff.", power="Rate of heat", normal="Corrected minutes", run="Trial"),
    "en3": dict(
        title="Bench sheet B", tester="Name", date="Day", stove="Stove no.", altitude="Site level", air="T room",
        boiling="T boil", pot="Tare", before="Gross first", after="Gross last", start="T first", end="T last",
        laid="Sticks out", left="Sticks back", moisture="Wetness", char="Embers", value="Energy of the fuel",
        time="Duration", water="Net water", steam="Net loss", heat="Heat gain", dry="Sticks when dry",
        efficiency="Share used", power="Fire", normal="Duration made even", run="No."),
    "fr": dict(
        title="Essai d’ébullition", tester="Testeur", date="Jour de l’essai", stove="Foyer", altitude="Altitude du lieu",
        air="Température de l’air", boiling="Point d’ébullition", pot="Marmite vide", before="Marmite et eau, début",
        after="Marmite et eau, fin", start="Température de l’eau, début", end="Température de l’eau, fin",
        laid="Bois préparé", left="Bois restant", moisture="Humidité", char="Charbon", value="Pouvoir calorifique",
        time="Temps d’ébullition", water="Eau chauffée", steam="Eau évaporée", heat="Chaleur utile", dry="Bois sec",
        efficiency="Rendement", power="Puissance du feu", normal="Temps pour 75 K", run="Essai"),
    "es": dict(
        title="Prueba de ebullición", tester="Técnica", date="Fecha", stove="Estufa", altitude="Altitud",
        air="Temperatura del aire", boiling="Punto de ebullición", pot="Olla vacía", before="Olla y agua, inicio",
        after="Olla y agua, fin", start="Temperatura del agua, inicio", end="Temperatura del agua, fin",
        laid="Leña preparada", left="Leña sobrante", moisture="Humedad", char="Carbón", value="Poder calorífico",
        time="Tiempo de ebullición", water="Agua calentada", steam="Agua evaporada", heat="Calor útil",
        dry="Leña seca", efficiency="Eficiencia", power="Potencia del fuego", normal="Tiempo para 75 K", run="Prueba"),
    "sw": dict(
        title="Jaribio la kuchemsha maji", tester="Mpimaji", date="Tarehe", stove="Jiko", altitude="Mwinuko",
        air="Joto la hewa", boiling="Joto la kuchemka", pot="Sufuria tupu", before="Sufuria na maji mwanzo",
        after="Sufuria na maji mwisho", start="Joto la maji mwanzo", end="Joto la maji mwisho", laid="Kuni zilizopimwa",
        left="Kuni zilizobaki", moisture="Unyevu", char="Mkaa", value="Thamani ya joto", time="Muda wa kuchemka",
        water="Maji yaliyopashwa", steam="Maji yaliyovukizwa", heat="Joto lililotumika", dry="Kuni kavu",
        efficiency="Ufanisi", power="Nguvu ya moto", normal="Muda kwa 75 K", run="Jaribio")}
MEANS = {"en": ["Mean", "Average", "Total", "s.d.", "Standard deviation"], "fr": ["Moyenne", "Total", "Écart-type"],
         "es": ["Media", "Promedio", "Total", "Desviación estándar"], "sw": ["Wastani", "Jumla"]}
FILLERS = ["Wind", "Lid on", "Scale used", "Batch", "Page of the log", "Thermometer", "Weather code", "Kindling pieces",
           "Shelf", "Door open", "Cups served", "Second helper"]
NAMES = ["Amina", "Jonas", "Rehema", "Petro", "Zuhura", "Mateo", "Lucie", "Odile", "Ramón", "Neema", "Kito", "Ines"]
STOVES = ["Round mouth", "Tall pipe", "Double wall", "Clay liner", "Low skirt", "Wide grate", "Two holes", "Brick base"]
NOTES = ["pot boiled over", "windy", "see page {0}", "door left open", "second try", "scale read {0} high", "?", "ok",
         "wood from lot {0}", "asked again on day {0}", "new lid", "smoke"]

# By hand, in kilograms and kJ/kg; {k} turns a mass of the sheet into kg, {v} a calorific value into kJ/kg.
BY_HAND = {
    "boiling": "=100-{altitude}/300", "water": "={before}-{pot}", "steam": "={before}-{after}",
    "heat": "=4.186*{water}{k}*({end}-{start})+2260*{steam}{k}",
    "dry": "=({laid}-{left})*(1-1.12*{moisture})-1.5*{char}", "efficiency": "={heat}/({dry}{k}*{value}{v})",
    "power": "={dry}{k}*{value}{v}/(60*{time})", "normal": "={time}*75/({end}-{start})"}
MASSES = {"pot", "before", "after", "laid", "left", "char", "water", "steam", "dry"}
UNITS = {"altitude": "m", "air": "°C", "boiling": "°C", "start": "°C", "end": "°C", "time": "min", "heat": "kJ",
         "power": "kW", "normal": "min"}
OTHER_UNITS = {"kg": "g", "g": "kg", "°C": "°F", "min": "h", "m": "ft", "kJ": "kcal", "kW": "W", "kJ/kg": "kcal/kg",
               "MJ/kg": "kcal/kg"}


def readings(chance, mass, value):
    """One run's, in the family's units."""
    pot, water, laid = chance.uniform(0.7, 1.1), chance.uniform(4.8, 5.2), chance.uniform(0.9, 1.3)
    kilograms = {"pot": pot, "before": pot + water, "after": pot + water * chance.uniform(0.9, 0.97), "laid": laid,
                 "left": laid * chance.uniform(0.2, 0.5), "char": chance.uniform(0.02, 0.06)}
    weighed = {key: round(amount, 3) if mass == "kg" else round(amount * 1000) for key, amount in kilograms.items()}
    return {**weighed, "tester": chance.choice(NAMES), "stove": chance.choice(STOVES), "altitude": chance.randint(900, 2200),
            "date": f"{chance.randint(1, 28)} March", "air": round(chance.uniform(16, 27), 1),
            "start": round(chance.uniform(17, 24), 1), "end": round(chance.uniform(92, 97), 1),
            "moisture": round(chance.uniform(0.09, 0.17), 3), "value": 18500 if value == "kJ/kg" else 18.5,
            "time": round(chance.uniform(18, 35), 1)}


def same_word(label):
    """As labels are compared: case, accents, colons and blanks do not count."""
    bare = unicodedata.normalize("NFD", label).replace(":", "")
    return "".join(letter for letter in bare if not unicodedata.combining(letter) and not letter.isspace()).casefold()
