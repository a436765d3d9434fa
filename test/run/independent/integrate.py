#!/usr/bin/env python3
"""The rigs of cases.ts over eight hours, by an integrator of a general library that finds its own events.

The equations stand here a second time, from the physics; nothing of ours is read but the laws at rest (laws.json: current, volts,
hydrogen, heat and loss over the warmth of the lye, delivery of the compressor over the pressure of the store). The numbers of the
rigs are written down by hand from their text. Run by `npm run independent`, which exports the laws first.

A new state in a run is one entry of STATES with its slope here as well.
"""
import json
import math
import pathlib
import sys

import numpy
import scipy
from scipy.integrate import solve_ivp
from scipy.interpolate import CubicSpline
from scipy.optimize import brentq

HERE = pathlib.Path(__file__).parent
HOURS = 8
R = 8.314462618
G = 9.80665
M_H2 = 2.01588e-3
GAMMA = 1.405  # ratio of the heat capacities of hydrogen at room temperature
CLOSE = 1e-10
METHOD = "LSODA"
STATES = ["lye", "bag", "bag-oxygen", "cylinder", "cylinder-oxygen", "cylinder-warmth", "line", "line-oxygen", "room-above", "room-below", "oxygen", "water", "made", "relieved", "used", "escaped", "heat", "lost", "stack-energy", "compressor-energy", "compressor-hours"]
I = {name: i for i, name in enumerate(STATES)}
SMALL = numpy.array([1e-6 if s in ("lye", "cylinder-warmth") else 1e-3 if s in ("heat", "lost") or s.endswith("energy") else 1e-4 if s.endswith("hours") else 1e-9 for s in STATES])

# Numbers of the rigs, from their text.
BAG, DEAD, OWN, RATED = 70e-3, 2e-3, 100.0, 2000.0
POWER = 160.0
LOADED_AFTER, REST = 10.0, 300.0
# m³ between the compressor and its check valve, bore of the unloader, Pa at which its line counts as empty.
LINE, BORE, EMPTIED = 0.5e-3, 0.6e-3, 1e3
COLUMN = math.pi / 4 * 0.08 ** 2
SPACE = COLUMN * (0.420 - 0.270)
LEVEL = 0.270
RELIEF_SET, RELIEF_FLOW, RESEAT = 14e5, 9 / 3600, 0.9
ROOM, FAN = 24.0, 60 / 3600
# Two layers of air: an upper third, mixed with the rest by half a change an hour.
UPPER, MIXED = 1 / 3, 0.5 / 3600
# Steel with its gas: 550 kg for each m³, 470 J/kg/K, 10 W/m²/K to the air, four times as long as wide; 28.8 J/mol/K of the gas.
STEEL, STEEL_HEAT, TO_AIR, GAS_HEAT = 550, 470, 10, 28.8
HOLE, ROUNDED = math.pi / 4 * 1e-3 ** 2, 0.8

# Lemmon, Huber and Leachman, J. Res. NIST 113 (2008) 341: density of normal hydrogen, as z(T, p).
LEMMON = list(zip(
    (0.05888460, -0.06136111, -0.002650473, 0.002731125, 0.001802374, -0.001150707, 0.9588528e-4, -0.1109040e-6, 0.1264403e-9),
    (1.325, 1.87, 2.5, 2.8, 2.938, 3.14, 3.37, 3.75, 4.0), (1, 1, 2, 2, 2.42, 2.63, 3, 4, 5)))


def z(kelvin, pascal):
    return 1 + sum(a * (100 / kelvin) ** b * (pascal / 1e6) ** c for a, b, c in LEMMON)


def moles(volume, kelvin, pascal):
    return pascal * volume / (z(kelvin, pascal) * R * kelvin)


def nozzle(area, factor, p1, p2, kelvin):
    """mol/s of hydrogen through a hole: isentropic to the throat, at most at the speed of sound."""
    if p1 <= p2:
        return 0.0
    throat = max(p2 / p1, (2 / (GAMMA + 1)) ** (GAMMA / (GAMMA - 1)))
    sound = math.sqrt(GAMMA * R * kelvin / M_H2)
    mach = math.sqrt(2 / (GAMMA - 1) * (throat ** ((1 - GAMMA) / GAMMA) - 1))
    kelvin_there = kelvin * throat ** ((GAMMA - 1) / GAMMA)
    dense_there = p1 * throat / (R * kelvin_there)
    return factor * area * dense_there * mach * sound * math.sqrt(kelvin_there / kelvin)


class Rig:
    def __init__(self, case, laws):
        self.case, self.kelvin, self.air = case, case["weather"], laws["air"]
        self.store = 0.4 if "volume: 400 L" in case["text"] else 22e-3
        read = lambda x, y: CubicSpline(laws[x], laws[y])
        self.current, self.volts, self.hydrogen, self.heat, self.loss = (read("warmth", n) for n in ("current", "volts", "hydrogen", "heat", "loss"))
        self.delivered = read("pressure", "delivered")
        self.capacity, self.water_each, self.fall_each = laws["capacity"], laws["waterEach"], laws["fallEach"]
        self.lye_weight, self.oxygen_usual = laws["density"] * G, laws["oxygenHead"]
        self.crosses, self.holds, self.hydrogen_usual = laws["crosses"], laws["holds"], laws["hydrogenHead"]
        wide = (self.store / math.pi) ** (1 / 3)
        self.surface = math.pi * wide ** 2 * 4.5
        begins = case["begins"]
        self.y = numpy.zeros(len(STATES))
        self.y[I["lye"]] = begins.get("stack.temperature", self.kelvin)
        self.y[I["bag"]] = (self.air + OWN) * begins.get("store-bag.volume", DEAD) / (R * self.kelvin)
        self.y[I["cylinder"]] = moles(self.store, self.kelvin, self.air + begins.get("cylinder.pressure", 1e5))
        self.y[I["cylinder-warmth"]] = self.kelvin
        # What stands: contacts, latches, since when; what has failed.
        self.failed = {f["part"]: f["what"] for f in case["already"]}
        self.made = {"bag-full": False, "bag-empty": False, "cut-off": True, "bag-high": True, "o2-low": True, "suction-low": True, "high-high": True, "bag-draw": False, "main": False, "compressor": False, "unloader": True}
        self.made["bag-empty"] = self.bag_volume(self.y) > 16e-3
        self.made["cut-off"] = self.gauge(self.y) < 12e5
        if 10e-3 < self.bag_volume(self.y) <= 16e-3:
            raise SystemExit("begins between the points of a switch")
        self.contactor, self.pulled, self.dropped = False, None, None
        self.pressed = False
        # Flat, loose or stretched; it begins on the way up.
        self.bag_is = "loose"
        # Between compressor and check valve: empty while the unloader is open, filled up to the store, then one with it.
        self.line_is = "empty"
        self.y[I["line"]] = (self.air + self.bag_pressure(self.y)) * LINE / (R * self.kelvin)
        self.relief, self.draw, self.oxygen_shut, self.hole, self.through = False, 0.0, None, False, False
        self.switched = []

    # -- what a moment looks like
    def bag_pressure(self, y):
        if self.bag_is == "loose":
            return OWN
        return y[I["bag"]] * R * self.kelvin / (DEAD if self.bag_is == "flat" else BAG) - self.air

    def line_pressure(self, y):
        """Pa above vacuum."""
        if self.line_is == "joined":
            return self.gauge(y) + self.air
        ideal = p = y[I["line"]] * R * self.kelvin / LINE
        for _ in range(8):
            p = ideal * z(self.kelvin, p)
        return p

    def line_becomes(self):
        """Once the contacts have come to rest."""
        if self.made["unloader"]:
            over = self.line_pressure(self.y) - self.air - self.bag_pressure(self.y)
            self.line_is = "empty" if self.line_is == "empty" or over <= EMPTIED * (1 + 1e-6) else "emptying"
        elif self.made["compressor"]:
            if self.line_is != "joined":
                self.line_is = "joined" if self.line_pressure(self.y) >= (self.gauge(self.y) + self.air) * (1 - 1e-9) else "filling"
        elif self.line_is != "joined":
            self.line_is = "held"

    def bag_volume(self, y):
        return min(BAG, max(DEAD, y[I["bag"]] * R * self.kelvin / (self.air + OWN)))

    def gauge(self, y):
        ideal = y[I["cylinder"]] * R * y[I["cylinder-warmth"]] / self.store
        p = ideal
        for _ in range(8):
            p = ideal * z(y[I["cylinder-warmth"]], p)
        return p - self.air

    def below_oxygen(self, y):
        """Pa of the oxygen side over the hydrogen side."""
        return self.oxygen_head(y) - (self.hydrogen_usual - OWN + self.bag_pressure(y))

    def oxygen_head(self, y):
        """Pa over the oxygen lye while its outlet is shut: so much gas in a space whose lye gives way to the other column, half of it on each side."""
        if self.oxygen_shut is None:
            return self.oxygen_usual
        n = self.oxygen_shut + y[I["oxygen"]]
        space = lambda h: SPACE + COLUMN * (h - self.oxygen_usual) / self.lye_weight / 2
        return brentq(lambda h: (self.air + h) * space(h) - n * R * self.kelvin, 0, 5e5, xtol=1e-9)

    def oxygen_level(self, y):
        return LEVEL - self.fall_each * y[I["water"]] - (self.oxygen_head(y) - self.oxygen_usual) / self.lye_weight / 2

    # -- how it moves
    def slope(self, _t, y):
        d = numpy.zeros(len(STATES))
        T = y[I["lye"]]
        runs = self.made["main"]
        make = float(self.hydrogen(T)) if runs else 0.0
        heat = float(self.heat(T)) if runs else 0.0
        loss = float(self.loss(T))
        d[I["lye"]] = (heat - loss) / self.capacity
        d[I["heat"]], d[I["lost"]] = heat, loss
        d[I["made"]], d[I["water"]] = make, self.water_each * make
        d[I["stack-energy"]] = float(self.current(T) * self.volts(T)) if runs else 0.0
        if self.oxygen_shut is not None:
            d[I["oxygen"]] = make / 2
        taken = 0.0
        if self.made["compressor"]:
            d[I["compressor-energy"]], d[I["compressor-hours"]] = POWER, 1
            if not self.made["unloader"]:
                # A stroke takes in the same volume of whatever density stands before it.
                against = self.line_pressure(y) if self.line_is == "filling" else self.gauge(y) + self.air
                taken = float(self.delivered(against)) * (self.air + self.bag_pressure(y)) / self.air
        blown = RELIEF_FLOW * (101325 / (R * 293.15)) * (self.gauge(y) + self.air) / (1.1 * RELIEF_SET + self.air) if self.relief else 0.0
        gauge, warm = self.gauge(y), y[I["cylinder-warmth"]]
        leak = nozzle(HOLE, ROUNDED, gauge + self.air, self.air, warm) if self.hole else 0.0
        in_bag, in_store = y[I["bag-oxygen"]] / y[I["bag"]], y[I["cylinder-oxygen"]] / y[I["cylinder"]]
        crossing = self.crosses if make > 0 else 0.0
        net = make + crossing - taken
        # Drawn below what the wet sheets hold, the oxygen of the stack comes through as far as it is wanted.
        pulled = min(-net, make / 2) if self.through and net < 0 else 0.0
        # What the unloader lets back.
        bled = nozzle(math.pi / 4 * BORE ** 2, ROUNDED, self.line_pressure(y), self.air + self.bag_pressure(y), self.kelvin) if self.line_is == "emptying" else 0.0
        in_line = y[I["line-oxygen"]] / y[I["line"]]
        d[I["bag"]] = net + pulled + bled
        d[I["bag-oxygen"]] = crossing + pulled - taken * in_bag + bled * in_line
        leaves = blown + self.draw + leak
        d[I["line"]], d[I["line-oxygen"]] = -bled, -bled * in_line
        d[I["line"]] += taken
        d[I["line-oxygen"]] += taken * in_bag
        # One vessel: what is pressed goes through the line, and as much goes on as keeps both at one pressure.
        on = 0.0
        if self.line_is == "joined":
            part = y[I["line"]] / (y[I["line"]] + y[I["cylinder"]])
            on = taken - part * (taken - leaves)
        gas = in_line if on > 0 else in_store
        d[I["line"]] -= on
        d[I["line-oxygen"]] -= on * gas
        d[I["cylinder"]] = on - leaves
        d[I["cylinder-oxygen"]] = on * gas - leaves * in_store
        d[I["relieved"]], d[I["used"]], d[I["escaped"]] = (x * (1 - in_store) for x in (blown, self.draw, leak))
        flow = on - leaves
        work = flow * R * warm + max(0.0, flow) * GAS_HEAT * (self.kelvin - warm)
        d[I["cylinder-warmth"]] = (work + TO_AIR * self.surface * (self.kelvin - warm)) / (STEEL * self.store * STEEL_HEAT + y[I["cylinder"]] * (GAS_HEAT - R))
        fan = FAN if "fan {" in self.case["text"] else 0.0
        above, below = y[I["room-above"]] / (UPPER * ROOM), y[I["room-below"]] / ((1 - UPPER) * ROOM)
        d[I["room-above"]] = leak * (1 - in_store) - MIXED * ROOM * (above - below) + fan * (below - above)
        d[I["room-below"]] = MIXED * ROOM * (above - below) - fan * below
        return d

    # -- the control lines, as the text has them
    def contacts(self, t):
        """Lets them come to rest."""
        m, stuck = self.made, lambda name: self.failed.get(name)
        for _ in range(20):
            was = dict(m), self.contactor
            if stuck("bag-empty") == "sticks made":
                m["bag-empty"] = True
            if stuck("cut-off") == "sticks made":
                m["cut-off"] = True
            free = m["bag-high"] and m["o2-low"] and m["high-high"]
            m["main"] = free and (m["main"] or self.pressed)
            m["bag-draw"] = m["bag-empty"] and (m["bag-draw"] or m["bag-full"])
            rested = self.contactor or self.dropped is None or t >= self.dropped + REST - 1e-6
            wants = m["main"] and m["bag-draw"] and m["cut-off"] and rested
            if wants and not self.contactor:
                self.pulled = t
            if self.contactor and not wants:
                self.dropped = t
            self.contactor = wants
            m["compressor"] = wants
            m["unloader"] = not (wants and t >= self.pulled + LOADED_AFTER - 1e-6)
            if (dict(m), self.contactor) == was:
                return
        raise SystemExit("the control lines do not come to rest")

    def watched(self):
        """What may happen next: (number that rises through zero, what it does)."""
        m, out = self.made, []
        def on(value, name, to):
            if m[name] != to and self.failed.get(name) is None:
                out.append((value, lambda: m.__setitem__(name, to)))
        volume = lambda y: y[I["bag"]] * R * self.kelvin / (self.air + OWN)
        on(lambda y: volume(y) - 55e-3, "bag-full", True)
        on(lambda y: 48e-3 - volume(y), "bag-full", False)
        on(lambda y: volume(y) - 16e-3, "bag-empty", True)
        on(lambda y: 10e-3 - volume(y), "bag-empty", False)
        on(lambda y: self.gauge(y) - 12e5, "cut-off", False)
        on(lambda y: 10e5 - self.gauge(y), "cut-off", True)
        on(lambda y: volume(y) - 64e-3, "bag-high", False)
        on(lambda y: self.gauge(y) - 13e5, "high-high", False)
        if "o2-low" in self.case["text"]:
            on(lambda y: 0.240 - self.oxygen_level(y), "o2-low", False)
        out.append((lambda y: RESEAT * RELIEF_SET - self.gauge(y), lambda: setattr(self, "relief", False)) if self.relief else (lambda y: self.gauge(y) - RELIEF_SET, lambda: setattr(self, "relief", True)))
        # Where a bag lies flat or stretches, its pressure has a corner: the integrator begins anew there.
        become = lambda how: (lambda: setattr(self, "bag_is", how))
        up, down = (lambda at, how: (lambda y: volume(y) - at * (1 + 1e-9), become(how))), (lambda at, how: (lambda y: at * (1 - 1e-9) - volume(y), become(how)))
        out += {"flat": [up(DEAD, "loose")], "loose": [down(DEAD, "flat"), up(BAG, "stretched")], "stretched": [down(BAG, "loose")]}[self.bag_is]
        out.append((lambda y: self.holds - self.below_oxygen(y), lambda: setattr(self, "through", False)) if self.through else (lambda y: self.below_oxygen(y) - self.holds, lambda: setattr(self, "through", True)))
        if self.line_is == "emptying":
            out.append((lambda y: EMPTIED - (self.line_pressure(y) - self.air - self.bag_pressure(y)), lambda: None))
        if self.line_is == "filling":
            out.append((lambda y: self.line_pressure(y) - self.air - self.gauge(y), lambda: None))
        if self.draw > 0:
            out.append((lambda y: 500 - self.gauge(y), lambda: setattr(self, "draw", 0.0)))
        return out

    def hazards(self):
        share = lambda y: (y[I["room-above"]] + y[I["room-below"]]) * R * self.kelvin / self.air / ROOM - 0.01
        ceiling = lambda y: y[I["room-above"]] * R * self.kelvin / self.air / (UPPER * ROOM) - 0.01
        return {"drawn-empty": lambda y: -200 - self.bag_pressure(y), "room-hydrogen": share, "ceiling-hydrogen": ceiling, "oxygen-in-hydrogen": lambda y: y[I["bag-oxygen"]] / y[I["bag"]] - 0.04}

    def act(self, part, what, t):
        if part == "start-button":
            self.pressed = what == "pressed"
        elif part == "burner":
            litres = 400 if what == "lit" else float(what.split()[1])
            self.draw = litres / 1000 / 3600 * self.air / (R * self.kelvin)
        elif part == "cylinder":
            self.hole = True
        elif part == "o2-vent":
            self.oxygen_shut = (self.air + self.oxygen_usual) * SPACE / (R * self.kelvin) - self.y[I["oxygen"]]
        else:
            self.failed[part] = what

    def go(self):
        acts = sorted([(a["t"], a["part"], a["what"]) for a in self.case["acts"]] + [(a["t"] + 1, a["part"], "released") for a in self.case["acts"] if a["what"] == "pressed"], key=lambda a: a[0])
        hours, found, t, end = [], {}, 0.0, HOURS * 3600.0
        marks = [3600.0 * (h + 1) for h in range(HOURS)]
        while True:
            while acts and acts[0][0] <= t:
                self.act(acts[0][1], acts[0][2], t)
                acts.pop(0)
            before = dict(self.made)
            self.contacts(t)
            self.line_becomes()
            for name, is_on in self.made.items():
                if before[name] != is_on or t in self.pending.get(name, ()):
                    self.switched.append([t, name, is_on])
            if t >= end:
                break
            timers = [x for x in ((self.pulled or -1e9) + LOADED_AFTER, (self.dropped or -1e9) + REST) if x > t + 1e-9]
            to = min([marks[len(hours)]] + [a[0] for a in acts] + timers)
            watched = self.watched()
            events = []
            for value, _ in watched:
                f = lambda _t, y, value=value: value(y)
                f.terminal, f.direction = True, 1
                events.append(f)
            risks = [(name, f) for name, f in self.hazards().items() if name not in found]
            for _, value in risks:
                f = lambda _t, y, value=value: value(y)
                f.terminal, f.direction = False, 1
                events.append(f)
            s = solve_ivp(self.slope, (t, to), self.y, method=METHOD, rtol=CLOSE, atol=SMALL, max_step=60, first_step=min(1e-3, to - t), events=events)
            if s.status < 0:
                raise SystemExit(f"{self.case['name']}: {s.message}")
            for (name, _), times in zip(risks, s.t_events[len(watched):]):
                if len(times):
                    found[name] = float(times[0])
            t, self.y = float(s.t[-1]), s.y[:, -1]
            if s.status == 1:
                self.pending = {}
                before = dict(self.made)
                for (_, then), times in zip(watched, s.t_events):
                    if len(times):
                        then()
                for name, is_on in self.made.items():
                    if before[name] != is_on:
                        self.switched.append([t, name, is_on])
            elif abs(t - marks[len(hours)]) < 1e-9:
                hours.append(self.told())
        return {"switched": self.switched, "hazards": found, "hours": hours}

    pending = {}

    def told(self):
        out = {name: float(self.y[i]) for name, i in I.items() if name != "oxygen"}
        out["oxygen-head"] = float(self.oxygen_head(self.y))
        return out


def main():
    exported = json.loads((HERE / "laws.json").read_text())
    results = []
    for case in exported:
        print(case["name"], file=sys.stderr)
        results.append({"name": case["name"], "of": case["of"], **Rig(case, case["laws"]).go()})
    by = {"scipy": scipy.__version__, "numpy": numpy.__version__, "python": sys.version.split()[0], "method": METHOD, "relative": CLOSE}
    (HERE / "results.json").write_text(json.dumps({"by": by, "cases": results}, separators=(",", ":")).replace('{"name"', '\n{"name"') + "\n")


main()
