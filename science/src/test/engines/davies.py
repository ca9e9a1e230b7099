"""The acid-base model of stillroom.science.equilibrium in 40-digit arithmetic, written from its description alone.

Usage: python3 davies.py > ../resources/engines/davies.csv   (needs mpmath)
Each line: temperature, components (charge of the fully protonated form, pKa/dH/dCp of each step, mol/kg), strong ions
(charge, mol/kg), then pH and ionic strength. Nested bisection: pH inside ionic strength.
"""
import random
from mpmath import mp, mpf, log, log10, sqrt

mp.dps = 40
R, T0 = mpf("8.31446261815324"), mpf("298.15")


def pk(pk25, kj, cp, t):
    k = t + mpf("273.15")
    return pk25 + ((1000 * kj - T0 * cp) * (1 / k - 1 / T0) - cp * log(k / T0)) / (R * log(10))


def permittivity(t):
    return mpf("87.740") - mpf("0.40008") * t + mpf("9.398e-4") * t**2 - mpf("1.410e-6") * t**3


def density(t):
    top = (mpf("999.83952") + mpf("16.945176") * t - mpf("7.9870401e-3") * t**2 - mpf("46.170461e-6") * t**3
           + mpf("105.56302e-9") * t**4 - mpf("280.54253e-12") * t**5)
    return top / (1 + mpf("16.879850e-3") * t)


def slope(t):
    ratio = permittivity(mpf(25)) * T0 / (permittivity(t) * (t + mpf("273.15")))
    return mpf("0.509") * sqrt(density(t) / density(mpf(25))) * ratio ** mpf("1.5")


def sums(ph, strength, t, components, ions):
    f = slope(t) * (sqrt(strength) / (1 + sqrt(strength)) - mpf("0.3") * strength)
    gamma = lambda z: 10 ** (-f * z * z)
    h = 10 ** -ph / gamma(1)
    oh = 10 ** (ph - pk(mpf("13.995"), mpf("56.38"), mpf("-188.9"), t)) / gamma(1)
    charge, twice = h - oh, h + oh
    for z, m in ions:
        charge += z * m
        twice += z * z * m
    for top, steps, m in components:
        weights, w = [1 / gamma(top)], mpf(1)
        for j, step in enumerate(steps):
            w *= 10 ** (ph - pk(*step, t))
            weights.append(w / gamma(top - j - 1))
        for j, weight in enumerate(weights):
            amount = m * weight / sum(weights)
            charge += (top - j) * amount
            twice += (top - j) ** 2 * amount
    return charge, twice / 2


def solve(t, components, ions):
    def ph_at(strength):
        low, high = mpf(-1), mpf(16)
        for _ in range(70):
            middle = (low + high) / 2
            if sums(middle, strength, t, components, ions)[0] > 0:
                low = middle
            else:
                high = middle
        return (low + high) / 2

    low, high = mpf(0), mpf(1)
    for _ in range(60):
        middle = (low + high) / 2
        if sums(ph_at(middle), middle, t, components, ions)[1] > middle:
            low = middle
        else:
            high = middle
    return ph_at(low), low


def draw(rng):
    t = mpf(25) if rng.random() < 0.5 else mpf(str(round(rng.uniform(5, 60), 1)))
    components = []
    for _ in range(rng.randint(1, 5)):
        top = rng.randint(0, 2)
        steps, at = [], rng.uniform(-1, 6)
        for _ in range(rng.randint(1, top + 4)):
            steps.append((mpf(f"{at:.3f}"), mpf(f"{rng.uniform(-10, 55):.2f}"), mpf(f"{rng.uniform(-250, 50):.0f}")))
            at += rng.uniform(0.3, 4)
        components.append((top, steps, mpf(f"{10 ** rng.uniform(-4, -1.5):.6f}")))
    ions = [(rng.choice([-2, -1, 1, 2]), mpf(f"{10 ** rng.uniform(-4, -1.3):.6f}")) for _ in range(rng.randint(0, 3))]
    return t, components, ions


def main():
    rng = random.Random(20021)
    print("celsius;components;ions;pH;ionic_strength")
    for _ in range(35):
        t, components, ions = draw(rng)
        ph, strength = solve(t, components, ions)
        left = "|".join(f"{top} {','.join('/'.join(mp.nstr(x, 12) for x in s) for s in steps)} {mp.nstr(m, 12)}"
                        for top, steps, m in components)
        right = "|".join(f"{z} {mp.nstr(m, 12)}" for z, m in ions)
        print(f"{mp.nstr(t, 8)};{left};{right};{mp.nstr(ph, 16)};{mp.nstr(strength, 14)}")


main()
