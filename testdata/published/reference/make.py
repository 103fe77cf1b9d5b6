#!/usr/bin/python3
"""Makes the tables of this folder with libraries that know nothing of this
project: GNU units, pint, fluids and scipy, as Debian 12 packages them.

    make.py FOLDER

Each table says in its head what made it and how near our figures must come.
Everything is seeded; figures have fewer digits than the solvers are good for, so
that another processor prints the same. Formulas of spec/workings are nowhere
used: statics are linear systems, least squares and linear programmes, shafts and
beams are finite elements, clutches and sections are integrals.
"""
import csv
import math
import random
import subprocess
import sys
from pathlib import Path

import fluids
import fluids.piping
import numpy as np
import pint
from scipy.integrate import quad
from scipy.linalg import eigh
from scipy.optimize import linprog, minimize, nnls
from scipy.spatial import ConvexHull
from scipy.spatial.transform import Rotation

FOLDER = Path(sys.argv[1])
PINT = pint.UnitRegistry()


def table(name, about, head, rows):
    """Writes one table. About is a line or more of comment."""
    with open(FOLDER / (name + ".csv"), "w", newline="") as f:
        for line in about.strip().splitlines():
            f.write("# " + line.strip() + "\n")
        out = csv.writer(f, lineterminator="\n")
        out.writerow(head)
        out.writerows(rows)


def figure(value, digits=9):
    return f"{value:.{digits}g}"


def figures(values, digits=7):
    """A list in one cell. What the solver leaves of a nought is nought."""
    largest = max(abs(v) for v in values)
    return ";".join(figure(0 if abs(v) < 1e-7 * largest else v, digits) for v in values)


def points(places):
    return ";".join(" ".join(figure(v, 6) for v in place) for place in places)


# ---- units ---------------------------------------------------------------

# dimension, our symbol, GNU units, pint; the SI unit in both after "SI".
# pint 0.19 has no water column at 4 °C.
UNITS = """
length            SI            m                 meter
                  mm            mm                millimeter
                  cm            cm                centimeter
                  m             m                 meter
                  in            inch              inch
                  ft            foot              foot
                  thou          mil               thou
                  km            km                kilometer
area              SI            m^2               meter**2
                  mm2           mm^2              millimeter**2
                  cm2           cm^2              centimeter**2
                  m2            m^2               meter**2
                  in2           inch^2            inch**2
                  ft2           foot^2            foot**2
volume            SI            m^3               meter**3
                  L             liter             liter
                  mL            milliliter        milliliter
                  cm3           cm^3              centimeter**3
                  m3            m^3               meter**3
                  in3           inch^3            inch**3
                  US_gal        gallon            gallon
                  imp_gal       brgallon          imperial_gallon
                  US_qt         quart             quart
                  imp_qt        brquart           imperial_quart
                  US_pt         pint              pint
                  imp_pt        brpint            imperial_pint
                  US_fl_oz      usfloz            fluid_ounce
                  imp_fl_oz     brfloz            imperial_fluid_ounce
second_moment     SI            m^4               meter**4
                  cm4           cm^4              centimeter**4
                  mm4           mm^4              millimeter**4
                  m4            m^4               meter**4
                  in4           inch^4            inch**4
mass              SI            kg                kilogram
                  kg            kg                kilogram
                  g             g                 gram
                  t             tonne             metric_ton
                  lb            pound             pound
                  oz            ounce             ounce
                  short_ton     ton               short_ton
                  long_ton      brton             long_ton
mass_per_length   SI            kg/m              kilogram/meter
                  kg/m          kg/m              kilogram/meter
                  g/m           g/m               gram/meter
                  lb/ft         pound/foot        pound/foot
force             SI            N                 newton
                  N             N                 newton
                  kN            kN                kilonewton
                  daN           daN               decanewton
                  lbf           lbf               force_pound
                  kgf           kgf               force_kilogram
pressure          SI            Pa                pascal
                  bar           bar               bar
                  kPa           kPa               kilopascal
                  MPa           MPa               megapascal
                  psi           psi               pound_force_per_square_inch
                  mbar          millibar          millibar
                  Pa            Pa                pascal
                  ksi           kilopound*force/inch^2  1000*pound_force_per_square_inch
                  kgf/cm2       kgf/cm^2          force_kilogram/centimeter**2
                  inHg          inHg              inch_Hg
                  inH2O         inH2O             None
absolute_pressure SI            Pa                pascal
                  bar_absolute  bar               bar
                  kPa_absolute  kPa               kilopascal
                  psi_absolute  psi               pound_force_per_square_inch
                  mbar_absolute millibar          millibar
                  MPa_absolute  MPa               megapascal
                  Pa_absolute   Pa                pascal
torque            SI            N*m               newton*meter
                  N_m           N*m               newton*meter
                  lbf_ft        lbf*foot          force_pound*foot
                  lbf_in        lbf*inch          force_pound*inch
                  kgf_m         kgf*m             force_kilogram*meter
                  kN_m          kN*m              kilonewton*meter
                  N_mm          N*mm              newton*millimeter
energy            SI            J                 joule
                  J             J                 joule
                  kJ            kJ                kilojoule
                  MJ            MJ                megajoule
                  Wh            W*hour            watt*hour
                  kWh           kW*hour           kilowatt*hour
                  Btu           btu_IT            Btu_it
specific_energy   SI            J/kg              joule/kilogram
                  MJ/kg         MJ/kg             megajoule/kilogram
                  kJ/kg         kJ/kg             kilojoule/kilogram
                  J/kg          J/kg              joule/kilogram
                  Btu/lb        btu_IT/pound      Btu_it/pound
specific_heat     SI            J/(kg*K)          joule/kilogram/kelvin
                  kJ/(kg_K)     kJ/(kg*K)         kilojoule/kilogram/kelvin
                  J/(kg_K)      J/(kg*K)          joule/kilogram/kelvin
power             SI            W                 watt
                  kW            kW                kilowatt
                  W             W                 watt
                  MW            MW                megawatt
                  PS            metrichorsepower  metric_horsepower
                  hp_imperial   horsepower        horsepower
                  Btu/h         btu_IT/hour       Btu_it/hour
temperature       SI            K                 kelvin
                  °C            tempC             degC
                  °F            tempF             degF
                  K             K                 kelvin
temperature_difference SI       K                 kelvin
                  K             K                 kelvin
                  °C            degC              delta_degC
                  °F            degF              delta_degF
angle             SI            radian            radian
                  deg           degree            degree
                  rad           radian            radian
rotational_speed  SI            radian/s          radian/second
                  rpm           revolution/minute revolution/minute
                  rad/s         radian/s          radian/second
speed             SI            m/s               meter/second
                  m/s           m/s               meter/second
                  km/h          km/hour           kilometer/hour
                  mph           mile/hour         mile/hour
                  ft/s          foot/s            foot/second
                  mm/s          mm/s              millimeter/second
                  m/min         m/minute          meter/minute
acceleration      SI            m/s^2             meter/second**2
                  m/s2          m/s^2             meter/second**2
                  g             gravity           standard_gravity
volume_flow       SI            m^3/s             meter**3/second
                  L/min         liter/minute      liter/minute
                  L/h           liter/hour        liter/hour
                  mL/min        milliliter/minute milliliter/minute
                  L/s           liter/s           liter/second
                  m3/h          m^3/hour          meter**3/hour
                  m3/s          m^3/s             meter**3/second
                  US_gal/min    gallon/minute     gallon/minute
                  imp_gal/min   brgallon/minute   imperial_gallon/minute
                  US_gal/h      gallon/hour       gallon/hour
                  imp_gal/h     brgallon/hour     imperial_gallon/hour
                  ft3/min       foot^3/minute     foot**3/minute
mass_flow         SI            kg/s              kilogram/second
                  kg/h          kg/hour           kilogram/hour
                  g/s           g/s               gram/second
                  kg/min        kg/minute         kilogram/minute
                  g/min         g/minute          gram/minute
                  kg/s          kg/s              kilogram/second
                  lb/h          pound/hour        pound/hour
                  lb/min        pound/minute      pound/minute
density           SI            kg/m^3            kilogram/meter**3
                  kg/m3         kg/m^3            kilogram/meter**3
                  kg/L          kg/liter          kilogram/liter
                  g/cm3         g/cm^3            gram/centimeter**3
                  lb/ft3        pound/foot^3      pound/foot**3
                  lb/US_gal     pound/gallon      pound/gallon
                  lb/imp_gal    pound/brgallon    pound/imperial_gallon
kinematic_viscosity SI          m^2/s             meter**2/second
                  mm2/s         mm^2/s            millimeter**2/second
                  cSt           centistokes       centistokes
                  m2/s          m^2/s             meter**2/second
dynamic_viscosity SI            Pa*s              pascal*second
                  mPa_s         mPa*s             millipascal*second
                  cP            centipoise        centipoise
                  Pa_s          Pa*s              pascal*second
current           SI            A                 ampere
                  A             A                 ampere
                  mA            mA                milliampere
voltage           SI            V                 volt
                  V             V                 volt
                  mV            mV                millivolt
                  kV            kV                kilovolt
resistance        SI            ohm               ohm
                  ohm           ohm               ohm
                  mohm          milliohm          milliohm
                  kohm          kiloohm           kiloohm
resistance_per_length SI        ohm/m             ohm/meter
                  mohm/m        milliohm/m        milliohm/meter
                  ohm/m         ohm/m             ohm/meter
                  ohm/km        ohm/km            ohm/kilometer
                  ohm/1000_ft   ohm/(1000*foot)   ohm/(1000*foot)
charge            SI            C                 coulomb
                  Ah            A*hour            ampere*hour
                  mAh           mA*hour           milliampere*hour
                  A_s           A*s               ampere*second
duration          SI            s                 second
                  h             hour              hour
                  min           minute            minute
                  s             s                 second
                  ms            ms                millisecond
                  d             day               day
ratio             SI            1                 dimensionless
                  %             percent           0.01
stiffness         SI            N/m               newton/meter
                  N/mm          N/mm              newton/millimeter
                  N/m           N/m               newton/meter
                  kN/m          kN/m              kilonewton/meter
                  lbf/in        lbf/inch          force_pound/inch
                  kgf/mm        kgf/mm            force_kilogram/millimeter
fuel_consumption  SI            kg/J              kilogram/joule
                  g/kWh         g/(kW*hour)       gram/kilowatt/hour
                  lb/(hp_h)     pound/(horsepower*hour) pound/horsepower/hour
"""


# Columns of water and mercury have no exact definition: ours have seven digits.
SEVEN_DIGITS = {"inHg", "inH2O"}


def gnu(expression, si, digits=10):
    """An expression in an SI unit, by GNU units."""
    done = subprocess.run(
        ["units", "--terse", "--output-format", "%.12g", expression, si], check=True, capture_output=True, text=True
    )
    return figure(float(done.stdout), digits)


def by_pint(value, expression, si):
    if expression == "None":
        return ""
    if expression.startswith("deg") and expression != "degree":
        quantity = PINT.Quantity(value, expression)
    else:
        quantity = PINT.Quantity(value, "dimensionless") * PINT.parse_expression(expression)
    return figure(quantity.to(si).magnitude, 10)


def units():
    rows, value = [], 7
    for line in UNITS.strip().splitlines():
        words = line.split()
        if words[-3] == "SI":
            dimension, si_gnu, si_pint = words[0], *words[-2:]
            continue
        symbol, with_gnu, with_pint = words[-3:]
        value = (value * 5 + 3) % 97 + 2  # no two alike in a row, so that rows cannot be swapped
        scale = with_gnu.startswith("temp")
        rows.append([
            dimension, symbol.replace("_", " "), value,
            gnu(f"{with_gnu}({value})" if scale else f"{value} ({with_gnu})", si_gnu),
            by_pint(value, with_pint, si_pint),
            "2e-7" if symbol in SEVEN_DIGITS else "1e-9",
        ])
    table("units", """
        A value of each unit in the SI unit of its dimension, by GNU units 2.22 and pint 0.19.
        The tolerance is relative. Calendar age and counts have no physical unit.
        """, ["dimension", "unit", "value", "gnu_units", "pint", "tolerance"], rows)


def wire():
    rows = []
    for n in range(-3, 41):
        # Two noughts and more are fractions in this library. The schedule has to
        # be named: the usual one there is that of iron wire.
        gauge = {-3: 0.25, -2: 0.33, -1: 0.5}.get(n, n)
        listed = fluids.piping.t_from_gauge(gauge, SI=True, schedule="AWG")
        rows.append([f"{1 - n}/0" if n < 1 else n, gnu(f"wiregauge({n})", "m", 9), figure(listed)])
    table("wire", """
        Diameter in m of American wire gauges, by the formula in GNU units 2.22 and by the list in fluids 1.0.22.
        Relative tolerance 1e-8; of the list, whose inches are rounded, 0.0013 mm.
        """, ["awg", "gnu_units", "fluids"], rows)


# ---- flow ----------------------------------------------------------------

def friction():
    rows = []
    for reynolds in [100, 640, 1500, 2000]:
        rows.append(["laminar", reynolds, 0, figure(fluids.friction.friction_laminar(reynolds))])
    for reynolds in [4000, 7500, 2e4, 1e5, 6.5e5, 1e7, 1e8]:
        for roughness in [0, 1e-6, 5e-5, 4e-4, 2e-3, 1e-2, 5e-2]:
            rows.append(["Colebrook", figure(reynolds), figure(roughness), figure(fluids.friction.Colebrook(reynolds, roughness))])
    table("friction", """
        Darcy friction factors by fluids 1.0.22: laminar, and Colebrook solved exactly. Relative tolerance 1e-8.
        """, ["formula", "reynolds", "roughness", "friction"], rows)


def drops():
    rng, rows = random.Random(11), []
    while len(rows) < 80:
        bore = rng.choice([4.8, 7.9, 10.3, 12.7, 22.2, 28.6, 38.1]) / 1000
        flow = rng.uniform(0.5, 150) / 60000
        length, rough, losses = rng.uniform(0.2, 4), rng.choice([0, 1.5e-6, 4.5e-5]), rng.choice([0, 0.9, 2.4, 6])
        density, viscosity = rng.choice([(745, 0.00045), (783, 0.0012), (1030, 0.0007), (869, 0.13), (860, 0.012)])
        rise = rng.choice([-0.6, 0, 0.4])
        flow, length = float(figure(flow, 5)), float(figure(length, 4))
        velocity = flow / (math.pi / 4 * bore**2)
        reynolds = fluids.Reynolds(V=velocity, D=bore, rho=density, mu=viscosity)
        if 2000 < reynolds < 4000 or velocity > 15:  # between the two, authors differ
            continue
        factor = fluids.friction_factor(reynolds, rough / bore, Method=None if reynolds < 2000 else "Colebrook")
        k = fluids.K_from_f(factor, length, bore) + losses
        drop = fluids.dP_from_K(k, density, velocity) + density * fluids.constants.g * rise
        rows.append([figure(x) for x in [flow, bore, length, rough, losses, rise, density, viscosity, reynolds, drop]])
    table("drops", """
        Pressure lost between the ends of lines, in SI, by fluids 1.0.22: friction (Colebrook where turbulent),
        fittings and height. Tolerance 1e-7 of the drop, or 0.001 Pa.
        """, ["flow", "bore", "length", "roughness", "losses", "rise", "density", "viscosity", "reynolds", "drop"], rows)


# ---- statics ---------------------------------------------------------------

STIFF = 1e4  # weight of equilibrium against elastic energy in the least squares


def share(directions, load, compliance):
    """Forces of members that only push (or only pull), all of one spring law.

    Of all forces that balance the load those with the least elastic energy.
    """
    directions, load = np.array(directions, float).T, np.array(load, float)
    scale = np.linalg.norm(load)
    root = np.diag(np.sqrt(np.array(compliance) / max(compliance)))
    rows = np.vstack([STIFF * directions, root])
    forces, _ = nnls(rows, np.concatenate([STIFF * load / scale, np.zeros(len(compliance))]))
    carry = forces > 1e-6  # which of them carry is settled; now without the weighting
    k = (directions[:, carry] / np.array(compliance)[carry]) @ directions[:, carry].T
    movement = np.linalg.lstsq(k, load, rcond=None)[0]
    out = np.zeros(len(forces))
    out[carry] = (directions[:, carry].T @ movement) / np.array(compliance)[carry]
    return out


def worst(directions, load):
    """The most that each member can be made to bear, whatever the floor."""
    directions = np.array(directions, float).T
    out = []
    for i in range(directions.shape[1]):
        cost = np.zeros(directions.shape[1])
        cost[i] = -1
        best = linprog(cost, A_eq=directions, b_eq=load, bounds=(0, None), method="highs")
        out.append(-best.fun)
    return out


def supports():
    rng, rows = random.Random(23), []
    while len(rows) < 60:
        count = [3, 4, 4, 4, 5, 6][len(rows) % 6]
        base, track = rng.uniform(0.9, 2.4), rng.uniform(0.7, 1.5)
        corners = [(0, track / 2), (0, -track / 2), (-base, track / 2), (-base, -track / 2), (-base / 2, track / 2), (-base / 3, -track / 2)]
        if count == 3:
            corners = [(0, 0), corners[2], corners[3]]
        places = [(round(x + rng.uniform(-0.15, 0.15), 3), round(y + rng.uniform(-0.15, 0.15), 3)) for x, y in corners[:count]]
        centre = (round(rng.uniform(-base, 0), 3), round(rng.uniform(-track / 3, track / 3), 3))
        edges = ConvexHull(places).equations  # outward normal and offset of each
        margin = -max(edges[:, :2] @ np.array(centre) + edges[:, 2])
        if margin < 0.03:
            continue
        weight = round(rng.uniform(2000, 14000))
        around = [(1, x - centre[0], y - centre[1]) for x, y in places]
        load = (weight, 0, 0)
        if count == 3:
            elastic = np.linalg.solve(np.array(around).T, load)
        else:
            elastic = share(around, load, [1] * count)
        rows.append([weight, points([centre]), points(places), figure(margin, 7), figures(elastic), figures(worst(around, load))])
    table("supports", """
        Loads on stands in N, places in m, by numpy 1.24 and scipy 1.10: three by the linear system; more on equal
        springs by least squares without pull; the worst by linear programmes; margin by the convex hull.
        Tolerance 2e-6 of the weight.
        """, ["weight", "centre", "supports", "margin", "elastic", "worst"], rows)


def slings():
    rng, rows = random.Random(37), []
    while len(rows) < 45:
        count = [2, 3, 4][len(rows) % 3]
        hook = np.array([0, 0, round(rng.uniform(0.3, 1.1), 3)])
        if count == 2:
            ahead, side = rng.uniform(0.1, 0.6), rng.uniform(-0.3, 0.3)
            behind = -ahead * rng.uniform(0.3, 2.5)
            eyes = [(ahead, ahead * side, rng.uniform(-0.1, 0.1)), (behind, behind * side, rng.uniform(-0.1, 0.1))]
            eyes = [tuple(round(v, 4) for v in eye) for eye in eyes]
        else:
            turns = [2 * math.pi * (i + rng.uniform(-0.25, 0.25)) / count for i in range(count)]
            eyes = [tuple(round(v, 3) for v in (r * math.cos(a), r * math.sin(a), rng.uniform(-0.12, 0.12))) for a in turns for r in [rng.uniform(0.2, 0.7)]]
        weight = round(rng.uniform(1200, 4000))
        legs = [hook - np.array(eye) for eye in eyes]
        length = [np.linalg.norm(leg) for leg in legs]
        pulls = [leg / l for leg, l in zip(legs, length)]
        load = (0, 0, weight)
        if count == 2:
            tension, rest, *_ = np.linalg.lstsq(np.array(pulls).T, load, rcond=None)
            most = tension
        elif ConvexHull([eye[:2] for eye in eyes]).equations[:, 2].max() > -0.03:
            continue
        else:
            tension = np.linalg.solve(np.array(pulls).T, load) if count == 3 else share(pulls, load, length)
            most = worst(pulls, load)
        if min(tension) < -1e-9:
            continue
        rows.append([weight, points([hook]), points(eyes), figures(tension, 6), figures(most, 6)])
    table("slings", """
        Tensions of sling legs in N, places in m, by numpy 1.24 and scipy 1.10: two legs by least squares, three by the
        linear system, four on legs that stretch with their length; the worst by linear programmes.
        Tolerance 1e-5 of the weight; of two legs 1e-4, whose eyes are rounded to 0.1 mm.
        """, ["weight", "hook", "eyes", "tensions", "worst"], rows)


def hanging():
    """A load on a sling comes to rest where its centre of mass is lowest."""
    rng, rows = random.Random(43), []
    while len(rows) < 24:
        count = 2 + len(rows) % 2
        centre = np.array([round(rng.uniform(-0.1, 0.1), 3) for _ in range(3)])
        if count == 2:
            places = [(rng.uniform(0.25, 0.5), rng.uniform(-0.05, 0.05)), (rng.uniform(-0.5, -0.25), rng.uniform(-0.05, 0.05))]
        else:
            places = [(r * math.cos(a), r * math.sin(a)) for r, a in [(rng.uniform(0.3, 0.5), 2 * math.pi * (i + rng.uniform(-0.1, 0.1)) / 3) for i in range(3)]]
        eyes = np.array([[round(x, 3), round(y, 3), round(rng.uniform(0.2, 0.5), 3)] for x, y in places])
        lengths = np.array([round(rng.uniform(0.6, 0.9), 3) for _ in eyes])

        def placed(at, points):
            return Rotation.from_rotvec(at[:3]).apply(points) + at[3:]

        rest = minimize(
            lambda at: placed(at, centre)[2],
            np.array([0, 0, 0, 0, 0, -0.9]),
            constraints={"type": "eq", "fun": lambda at: np.linalg.norm(placed(at, eyes), axis=1) - lengths},
            method="SLSQP", options={"ftol": 1e-15, "maxiter": 500},
        )
        up = Rotation.from_rotvec(rest.x[:3]).inv().apply([0, 0, 1])
        level = placed(rest.x, eyes)
        if abs(np.linalg.norm(level, axis=1) - lengths).max() > 1e-8 or np.hypot(*placed(rest.x, centre)[:2]) > 1e-5:
            continue  # not at rest
        pulls = -level / lengths[:, None]
        tension = np.linalg.lstsq(pulls.T, [0, 0, 1000], rcond=None)[0]
        if tension.min() < 20:
            continue
        rows.append([points([centre]), points(eyes), figures(lengths), figure(math.acos(up[2]), 4), figures(tension, 4)])
    table("hanging", """
        How a load hangs from slings of two and of three legs, places in m in its own axes: its centre of mass as low as
        the legs let it, by the constrained minimum of scipy 1.10; tilt in rad; tensions in N for 1000 N.
        Tolerance 0.0002 rad and 0.5 N.
        """, ["centre", "eyes", "lengths", "tilt", "tensions"], rows)


# ---- beams and shafts -------------------------------------------------------

ELEMENTS = 24


def beam(length):
    """Stiffness and mass of a uniform beam on simple supports, for E I = m' = 1:
    Euler-Bernoulli elements with cubic shape functions. Returns them with the
    degrees of freedom that are free."""
    l = length / ELEMENTS
    k = np.array([[12, 6 * l, -12, 6 * l], [6 * l, 4 * l**2, -6 * l, 2 * l**2],
                  [-12, -6 * l, 12, -6 * l], [6 * l, 2 * l**2, -6 * l, 4 * l**2]]) / l**3
    m = np.array([[156, 22 * l, 54, -13 * l], [22 * l, 4 * l**2, 13 * l, -3 * l**2],
                  [54, 13 * l, 156, -22 * l], [-13 * l, -3 * l**2, -22 * l, 4 * l**2]]) * l / 420
    size = 2 * (ELEMENTS + 1)
    stiff, mass = np.zeros((size, size)), np.zeros((size, size))
    for e in range(ELEMENTS):
        stiff[2 * e:2 * e + 4, 2 * e:2 * e + 4] += k
        mass[2 * e:2 * e + 4, 2 * e:2 * e + 4] += m
    free = [i for i in range(size) if i not in (0, size - 2)]
    return stiff, mass, free


def whirling():
    rng, rows = random.Random(41), []
    for _ in range(30):
        outer = rng.choice([19, 25, 38, 50.8, 63.5, 76.2, 89]) / 1000
        inner = rng.choice([0, outer - 0.003, outer - 0.0042, outer / 2])
        length = round(rng.uniform(0.4, 1.8), 3)
        modulus, density = rng.choice([(207e9, 7800), (71.7e9, 2710), (114e9, 4420)])
        outer, inner = float(figure(outer, 6)), float(figure(inner, 6))
        area = quad(lambda r: 2 * math.pi * r, inner / 2, outer / 2)[0]
        bend = quad(lambda r: math.pi * r**3, inner / 2, outer / 2)[0]
        stiff, mass, free = beam(length)
        least = eigh(stiff[np.ix_(free, free)], mass[np.ix_(free, free)], eigvals_only=True, subset_by_index=[0, 0])[0]
        speed = math.sqrt(least * modulus * bend / (density * area))
        rows.append([figure(x, 6) for x in [outer, inner, length, modulus, density]] + [figure(speed, 6)])
    table("whirling", """
        First whirling speed in rad/s of a uniform shaft on simple supports, in SI: the least eigenvalue of 24 beam
        elements, by scipy 1.10. Relative tolerance 5e-6, of which the elements take 4e-7.
        """, ["outer", "inner", "length", "modulus", "density", "speed"], rows)


def beams():
    rng, rows = random.Random(53), []
    for i in range(30):
        span, load = round(rng.uniform(0.4, 2.0), 3), round(rng.uniform(300, 6000))
        node = ELEMENTS // 2 if i % 2 else rng.randrange(2, ELEMENTS - 1)
        at = float(figure(span * node / ELEMENTS, 12))
        place_node = rng.randrange(1, ELEMENTS)
        stiff, _, free = beam(span)
        push = np.zeros(stiff.shape[0])
        push[2 * node] = load
        moved = np.zeros(stiff.shape[0])
        moved[free] = np.linalg.solve(stiff[np.ix_(free, free)], push[free])
        # The moment at a node is what one element there holds its end with.
        l, e = span / ELEMENTS, place_node - 1
        w1, t1, w2, t2 = moved[2 * e:2 * e + 4]
        moment = abs((6 * l * w1 + 2 * l**2 * t1 - 6 * l * w2 + 4 * l**2 * t2) / l**3)
        rows.append([span, load, figure(at, 12), figure(span * place_node / ELEMENTS, 12), figure(moment, 7)])
    table("beams", """
        A beam on two simple supports under one load, in SI: the moment at a place; 24 beam elements, by numpy 1.24.
        Relative tolerance 1e-6.
        """, ["span", "load", "at", "place", "moment"], rows)


# ---- integrals ----------------------------------------------------------------

def clutch():
    rng, rows = random.Random(61), []
    for _ in range(30):
        outer = round(rng.uniform(0.07, 0.14), 4)
        inner, clamp = round(outer * rng.uniform(0.5, 0.9), 4), round(rng.uniform(3000, 15000))
        friction, faces = round(rng.uniform(0.2, 0.5), 3), rng.choice([2, 4, 6])

        def over(moment):  # pressure as 1/r: wear alike all over
            return quad(lambda r: 1 / r * 2 * math.pi * r * moment(r), inner, outer, epsabs=0, epsrel=1e-11)[0]

        wear = faces * friction * clamp * over(lambda r: r) / over(lambda r: 1)
        rows.append([faces, friction, clamp, outer, inner, figure(wear)])
    table("clutch", """
        Torque in N m that a plate clutch carries, in SI: the integral of friction times pressure times radius over the
        faces, for wear alike all over; by the quadrature of scipy 1.10. Relative tolerance 1e-8.
        """, ["faces", "friction", "clamp", "outer", "inner", "wear"], rows)


def inset(distance, side, radius):
    """How far a side with round corners draws in at a distance from the middle line."""
    into = abs(distance) - (side / 2 - radius)
    return 0 if into <= 0 else radius - math.sqrt(max(radius**2 - into**2, 0))


def sections():
    rows = []
    corners = {"hot": lambda t: (1.5 * t, t), "cold": lambda t: (2 * t, t) if t <= 6 else (2.5 * t, 1.5 * t) if t <= 10 else (3 * t, 2 * t)}
    for kind, radii in corners.items():
        for side, wall in [(30, 2), (30, 3), (40, 2), (40, 2.6), (40, 4), (50, 2), (50, 3), (50, 4), (50, 5), (60, 3), (60, 4), (60, 5), (80, 5), (80, 6), (100, 8), (150, 12)]:
            outside, inside = radii(wall)

            def width(y):
                out = side - 2 * inset(y, side, outside)
                hole = side - 2 * wall
                return out - (hole - 2 * inset(y, hole, inside) if abs(y) < hole / 2 else 0)

            breaks = sorted({side / 2 - outside, side / 2 - wall, side / 2 - wall - inside})
            ends = [0, *breaks, side / 2]
            bend = 2 * sum(quad(lambda y: width(y) * y * y, a, b, epsabs=0, epsrel=1e-11)[0] for a, b in zip(ends, ends[1:]))
            rows.append([kind, side, wall, figure(bend, 8)])
    table("sections", """
        Second moment in mm4 of square hollow sections, side and wall in mm, corner radii of EN 10210-2 (hot) and
        EN 10219-2 (cold): the integral of the true outline, by scipy 1.10. Relative tolerance 2e-7.
        """, ["kind", "side", "wall", "second_moment"], rows)


def torsion():
    rng, rows = random.Random(71), []
    for _ in range(20):
        outer = round(rng.uniform(0.02, 0.09), 4)
        inner = round(outer * rng.choice([0, 0.5, 0.8, 0.92]), 5)
        torque = round(rng.uniform(50, 4000))
        polar = quad(lambda r: 2 * math.pi * r**3, inner / 2, outer / 2, epsabs=0, epsrel=1e-11)[0]
        rows.append([outer, inner, torque, figure(torque * outer / 2 / polar)])
    table("torsion", """
        Shear stress in Pa at the surface of a round shaft, in SI: the polar moment as an integral over rings, by
        scipy 1.10. Relative tolerance 1e-8.
        """, ["outer", "inner", "torque", "stress"], rows)


if __name__ == "__main__":
    for make in [units, wire, friction, drops, supports, slings, hanging, whirling, beams, clutch, sections, torsion]:
        make()
