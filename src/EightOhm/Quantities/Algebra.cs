using UnitsNet;

namespace EightOhm.Quantities;

/// <summary>The algebra of the trade: what a designer writes on paper compiles and gives the right type.</summary>
/// <remarks>Only products and quotients that UnitsNet does not have; a dimension error is a compile error that names both quantities.
/// One block a left operand.</remarks>
public static partial class Algebra
{
    extension(ElectricPotential)
    {
        /// <summary>V · V = V².</summary>
        public static SquaredVoltage operator *(ElectricPotential a, ElectricPotential b) => new(a.Volts * b.Volts);

        /// <summary>V · R = V·Ω: over a resistance a divided voltage.</summary>
        public static VoltageResistance operator *(ElectricPotential v, ElectricResistance r) => new(v.Volts * r.Ohms);

        /// <summary>V · gain.</summary>
        public static ElectricPotential operator *(ElectricPotential v, Gain gain) => ElectricPotential.FromVolts(v.Volts * gain.Ratio);

        /// <summary>V / gain: referred to the input.</summary>
        public static ElectricPotential operator /(ElectricPotential v, Gain gain) => ElectricPotential.FromVolts(v.Volts / gain.Ratio);

        /// <summary>V / s.</summary>
        public static ElectricPotentialChangeRate operator /(ElectricPotential v, Duration time) => ElectricPotentialChangeRate.FromVoltsPerSeconds(v.Volts / time.Seconds);

        /// <summary>V / √Hz: a total noise over a bandwidth as a density.</summary>
        public static VoltageNoiseDensity operator /(ElectricPotential v, RootFrequency bandwidth) => VoltageNoiseDensity.FromSi(v.Volts / bandwidth.Si);

        /// <summary>V · f = V/s.</summary>
        public static ElectricPotentialChangeRate operator *(ElectricPotential v, Frequency f) => ElectricPotentialChangeRate.FromVoltsPerSeconds(v.Volts * f.Hertz);

        /// <summary>V · G = A.</summary>
        public static ElectricCurrent operator *(ElectricPotential v, ElectricConductance g) => ElectricCurrent.FromAmperes(v.Volts * g.Siemens);

        /// <summary>V / K: a temperature coefficient.</summary>
        public static VoltageDrift operator /(ElectricPotential v, TemperatureDelta t) => new(v.Volts / t.Kelvins);

        /// <summary>V / (V/K) = K.</summary>
        public static TemperatureDelta operator /(ElectricPotential v, VoltageDrift drift) => TemperatureDelta.FromKelvins(v.Volts / drift.Si);

        /// <summary>V over V/s = s: how long a slope takes.</summary>
        public static Duration operator /(ElectricPotential v, ElectricPotentialChangeRate rate) => Duration.FromSeconds(v.Volts / rate.VoltsPerSeconds);

        /// <summary>V · C = coulombs.</summary>
        public static ElectricCharge operator *(ElectricPotential v, ElectricCapacitance c) => ElectricCharge.FromCoulombs(v.Volts * c.Farads);
    }

    extension(ElectricCurrent)
    {
        /// <summary>A · A = A².</summary>
        public static SquaredCurrent operator *(ElectricCurrent a, ElectricCurrent b) => new(a.Amperes * b.Amperes);

        /// <summary>A / F = V/s: the slew rate a current gives a capacitor.</summary>
        public static ElectricPotentialChangeRate operator /(ElectricCurrent i, ElectricCapacitance c) => ElectricPotentialChangeRate.FromVoltsPerSeconds(i.Amperes / c.Farads);

        /// <summary>A / V = S.</summary>
        public static ElectricConductance operator /(ElectricCurrent i, ElectricPotential v) => ElectricConductance.FromSiemens(i.Amperes / v.Volts);

        /// <summary>A / S = V.</summary>
        public static ElectricPotential operator /(ElectricCurrent i, ElectricConductance g) => ElectricPotential.FromVolts(i.Amperes / g.Siemens);

        /// <summary>A over V/s = F: the capacitor that a current and a slope ask for.</summary>
        public static ElectricCapacitance operator /(ElectricCurrent i, ElectricPotentialChangeRate rate) => ElectricCapacitance.FromFarads(i.Amperes / rate.VoltsPerSeconds);

        /// <summary>A / √Hz: a total noise over a bandwidth as a density.</summary>
        public static CurrentNoiseDensity operator /(ElectricCurrent i, RootFrequency bandwidth) => CurrentNoiseDensity.FromSi(i.Amperes / bandwidth.Si);
    }

    extension(ElectricResistance)
    {
        /// <summary>R · V = V·Ω: over a resistance a divided voltage.</summary>
        public static VoltageResistance operator *(ElectricResistance r, ElectricPotential v) => new(r.Ohms * v.Volts);

        /// <summary>R · C = s.</summary>
        public static Duration operator *(ElectricResistance r, ElectricCapacitance c) => Duration.FromSeconds(r.Ohms * c.Farads);

        /// <summary>R / L = 1/s: over 2π the corner of an inductor and a resistor.</summary>
        public static Frequency operator /(ElectricResistance r, ElectricInductance l) => Frequency.FromHertz(r.Ohms / l.Henries);

        /// <summary>R / f = L: over 2π the inductance of a reactance.</summary>
        public static ElectricInductance operator /(ElectricResistance r, Frequency f) => ElectricInductance.FromHenries(r.Ohms / f.Hertz);

        /// <summary>R · W = V².</summary>
        public static SquaredVoltage operator *(ElectricResistance r, Power p) => new(r.Ohms * (double)p.Watts);

        /// <summary>R · A² = W.</summary>
        public static Power operator *(ElectricResistance r, SquaredCurrent i2) => OfWatts(r.Ohms * i2.Si);

        /// <summary>R · A/√Hz = V/√Hz.</summary>
        public static VoltageNoiseDensity operator *(ElectricResistance r, CurrentNoiseDensity i) => VoltageNoiseDensity.FromSi(r.Ohms * i.Si);

        /// <summary>R · R = R².</summary>
        public static SquaredResistance operator *(ElectricResistance a, ElectricResistance b) => new(a.Ohms * b.Ohms);

        /// <summary>R · S, a number: the gain of a transconductance into a resistor.</summary>
        public static double operator *(ElectricResistance r, ElectricConductance g) => r.Ohms * g.Siemens;

        /// <summary>1 / R = S.</summary>
        public static ElectricConductance operator /(double number, ElectricResistance r) => ElectricConductance.FromSiemens(number / r.Ohms);

        /// <summary>R · f = Ω/s: one over it, and over 2π, is the capacitor of a corner.</summary>
        public static ResistanceRate operator *(ElectricResistance r, Frequency f) => new(r.Ohms * f.Hertz);
    }

    extension(ElectricCapacitance)
    {
        /// <summary>C · R = s.</summary>
        public static Duration operator *(ElectricCapacitance c, ElectricResistance r) => Duration.FromSeconds(c.Farads * r.Ohms);

        /// <summary>C · V = coulombs.</summary>
        public static ElectricCharge operator *(ElectricCapacitance c, ElectricPotential v) => ElectricCharge.FromCoulombs(c.Farads * v.Volts);

        /// <summary>C · V² = J: half of it is what the capacitor holds.</summary>
        public static Energy operator *(ElectricCapacitance c, SquaredVoltage v2) => Energy.FromJoules(c.Farads * v2.Si);

        /// <summary>C · V/s = A.</summary>
        public static ElectricCurrent operator *(ElectricCapacitance c, ElectricPotentialChangeRate rate) => ElectricCurrent.FromAmperes(c.Farads * rate.VoltsPerSeconds);

        /// <summary>C · L = s².</summary>
        public static SquaredDuration operator *(ElectricCapacitance c, ElectricInductance l) => new(c.Farads * l.Henries);

        /// <summary>C · f = S: times 2π the susceptance.</summary>
        public static ElectricConductance operator *(ElectricCapacitance c, Frequency f) => ElectricConductance.FromSiemens(c.Farads * f.Hertz);

        /// <summary>C · f² = S/s: one over it, and over (2π)², is the inductor of a resonance.</summary>
        public static ConductanceRate operator *(ElectricCapacitance c, SquaredFrequency f2) => new(c.Farads * f2.Si);
    }

    extension(ElectricInductance)
    {
        /// <summary>L / R = s.</summary>
        public static Duration operator /(ElectricInductance l, ElectricResistance r) => Duration.FromSeconds(l.Henries / r.Ohms);

        /// <summary>L · C = s².</summary>
        public static SquaredDuration operator *(ElectricInductance l, ElectricCapacitance c) => new(l.Henries * c.Farads);

        /// <summary>L / C = R².</summary>
        public static SquaredResistance operator /(ElectricInductance l, ElectricCapacitance c) => new(l.Henries / c.Farads);

        /// <summary>L · f = R: times 2π the reactance.</summary>
        public static ElectricResistance operator *(ElectricInductance l, Frequency f) => ElectricResistance.FromOhms(l.Henries * f.Hertz);

        /// <summary>L · f² = Ω/s: one over it, and over (2π)², is the capacitor of a resonance.</summary>
        public static ResistanceRate operator *(ElectricInductance l, SquaredFrequency f2) => new(l.Henries * f2.Si);
    }

    extension(Power)
    {
        /// <summary>W · R = V².</summary>
        public static SquaredVoltage operator *(Power p, ElectricResistance r) => new((double)p.Watts * r.Ohms);

        /// <summary>W / R = A².</summary>
        public static SquaredCurrent operator /(Power p, ElectricResistance r) => new((double)p.Watts / r.Ohms);

        /// <summary>W · K/W = K: the rise of a heat flow over a thermal resistance.</summary>
        public static TemperatureDelta operator *(Power p, ThermalResistance r) => TemperatureDelta.FromKelvins((double)p.Watts * r.Si);

        /// <summary>A scaled power.</summary>
        public static Power operator *(double factor, Power p) => OfWatts(factor * (double)p.Watts);

        /// <summary>A scaled power.</summary>
        public static Power operator *(Power p, double factor) => OfWatts((double)p.Watts * factor);

        /// <summary>A divided power.</summary>
        public static Power operator /(Power p, double divisor) => OfWatts((double)p.Watts / divisor);
    }

    extension(ThermalResistance)
    {
        /// <summary>K/W · W = K.</summary>
        public static TemperatureDelta operator *(ThermalResistance r, Power p) => TemperatureDelta.FromKelvins(r.Si * (double)p.Watts);

        /// <summary>K/W · J/K = s.</summary>
        public static Duration operator *(ThermalResistance r, HeatCapacity c) => Duration.FromSeconds(r.Si * c.Si);
    }

    extension(Length)
    {
        /// <summary>m over W/(m·K): a layer's resistance for a unit of area.</summary>
        public static SurfaceThermalResistance operator /(Length thickness, ThermalConductivity k) => new(thickness.Meters / k.WattsPerMeterKelvin);
    }

    extension(SurfaceThermalResistance)
    {
        /// <summary>m²·K/W over m² = K/W.</summary>
        public static ThermalResistance operator /(SurfaceThermalResistance r, Area a) => ThermalResistance.FromSi(r.Si / a.SquareMeters);
    }

    extension(Acceleration)
    {
        /// <summary>m/s² · m = (m/s)².</summary>
        public static SpecificEnergy operator *(Acceleration a, Length l) => SpecificEnergy.FromJoulesPerKilogram(a.MetersPerSecondSquared * l.Meters);
    }

    extension(HeatTransferCoefficient)
    {
        /// <summary>W/(m²·K) · m = W/(m·K): what a surface gives off, to be compared with a conductivity.</summary>
        public static ThermalConductivity operator *(HeatTransferCoefficient h, Length l) => ThermalConductivity.FromWattsPerMeterKelvin(h.WattsPerSquareMeterKelvin * l.Meters);
    }

    extension(TemperatureDelta)
    {
        /// <summary>A rise over an absolute temperature.</summary>
        public static double operator /(TemperatureDelta rise, Temperature t) => rise.Kelvins / t.Kelvins;

        /// <summary>K / W: the thermal resistance that a rise allows.</summary>
        public static ThermalResistance operator /(TemperatureDelta rise, Power p) => ThermalResistance.FromSi(rise.Kelvins / (double)p.Watts);

        /// <summary>K / (K/W) = W: the heat that a rise drives.</summary>
        public static Power operator /(TemperatureDelta rise, ThermalResistance r) => OfWatts(rise.Kelvins / r.Si);

        /// <summary>K · V/K = V.</summary>
        public static ElectricPotential operator *(TemperatureDelta t, VoltageDrift drift) => ElectricPotential.FromVolts(t.Kelvins * drift.Si);
    }

    extension(Entropy)
    {
        /// <summary>k · T = J, with T absolute.</summary>
        public static Energy operator *(Entropy k, Temperature t) => Energy.FromJoules(k.JoulesPerKelvin * t.Kelvins);
    }

    extension(HeatCapacity)
    {
        /// <summary>J/K · K/W = s.</summary>
        public static Duration operator *(HeatCapacity c, ThermalResistance r) => Duration.FromSeconds(c.Si * r.Si);

        /// <summary>J/K · K = J.</summary>
        public static Energy operator *(HeatCapacity c, TemperatureDelta rise) => Energy.FromJoules(c.Si * rise.Kelvins);
    }

    extension(Energy)
    {
        /// <summary>J / (J/K) = K: how far a heat warms a thing.</summary>
        public static TemperatureDelta operator /(Energy heat, HeatCapacity c) => TemperatureDelta.FromKelvins(heat.Joules / c.Si);

        /// <summary>J · R = V²/Hz: thermal noise.</summary>
        public static SquaredVoltageDensity operator *(Energy kT, ElectricResistance r) => new(kT.Joules * r.Ohms);

        /// <summary>J / R = A²/Hz: thermal noise as a current.</summary>
        public static SquaredCurrentDensity operator /(Energy kT, ElectricResistance r) => new(kT.Joules / r.Ohms);
    }

    extension(ElectricCharge)
    {
        /// <summary>q · I = A²/Hz: shot noise.</summary>
        public static SquaredCurrentDensity operator *(ElectricCharge q, ElectricCurrent i) => new(q.Coulombs * i.Amperes);

        /// <summary>Q / F = V.</summary>
        public static ElectricPotential operator /(ElectricCharge charge, ElectricCapacitance c) => ElectricPotential.FromVolts(charge.Coulombs / c.Farads);

        /// <summary>Q · f = A.</summary>
        public static ElectricCurrent operator *(ElectricCharge charge, Frequency f) => ElectricCurrent.FromAmperes(charge.Coulombs * f.Hertz);
    }

    extension(Gain)
    {
        /// <summary>gain · V.</summary>
        public static ElectricPotential operator *(Gain gain, ElectricPotential v) => ElectricPotential.FromVolts(gain.Ratio * v.Volts);

        /// <summary>gain · density: referred to the output.</summary>
        public static VoltageNoiseDensity operator *(Gain gain, VoltageNoiseDensity e) => VoltageNoiseDensity.FromSi(gain.Ratio * e.Si);
    }

    extension(Frequency)
    {
        /// <summary>f · V = V/s.</summary>
        public static ElectricPotentialChangeRate operator *(Frequency f, ElectricPotential v) => ElectricPotentialChangeRate.FromVoltsPerSeconds(f.Hertz * v.Volts);

        /// <summary>f · s, a number of cycles.</summary>
        public static double operator *(Frequency f, Duration t) => f.Hertz * t.Seconds;

        /// <summary>1 / f = s.</summary>
        public static Duration operator /(double number, Frequency f) => Duration.FromSeconds(number / f.Hertz);

        /// <summary>f · L = R: times 2π the reactance.</summary>
        public static ElectricResistance operator *(Frequency f, ElectricInductance l) => ElectricResistance.FromOhms(f.Hertz * l.Henries);

        /// <summary>f · C = S: times 2π the susceptance.</summary>
        public static ElectricConductance operator *(Frequency f, ElectricCapacitance c) => ElectricConductance.FromSiemens(f.Hertz * c.Farads);

        /// <summary>f · f = f².</summary>
        public static SquaredFrequency operator *(Frequency a, Frequency b) => new(a.Hertz * b.Hertz);

        /// <summary>f · R = Ω/s.</summary>
        public static ResistanceRate operator *(Frequency f, ElectricResistance r) => new(f.Hertz * r.Ohms);
    }

    extension(Duration)
    {
        /// <summary>1 / s = Hz.</summary>
        public static Frequency operator /(double number, Duration t) => Frequency.FromHertz(number / t.Seconds);

        /// <summary>s · A², I²t.</summary>
        public static JouleIntegral operator *(Duration t, SquaredCurrent i2) => new(t.Seconds * i2.Si);

        /// <summary>s / F = R: the resistor that a time constant asks for.</summary>
        public static ElectricResistance operator /(Duration t, ElectricCapacitance c) => ElectricResistance.FromOhms(t.Seconds / c.Farads);

        /// <summary>s / R = F: the capacitor that a time constant asks for.</summary>
        public static ElectricCapacitance operator /(Duration t, ElectricResistance r) => ElectricCapacitance.FromFarads(t.Seconds / r.Ohms);
    }

    extension(ElectricPotentialChangeRate)
    {
        /// <summary>V/s over V = Hz.</summary>
        public static Frequency operator /(ElectricPotentialChangeRate rate, ElectricPotential v) => Frequency.FromHertz(rate.VoltsPerSeconds / v.Volts);

        /// <summary>V/s over Hz = V.</summary>
        public static ElectricPotential operator /(ElectricPotentialChangeRate rate, Frequency f) => ElectricPotential.FromVolts(rate.VoltsPerSeconds / f.Hertz);

        /// <summary>V/s · C = A: what a slope asks of a current.</summary>
        public static ElectricCurrent operator *(ElectricPotentialChangeRate rate, ElectricCapacitance c) => ElectricCurrent.FromAmperes(rate.VoltsPerSeconds * c.Farads);

        /// <summary>V/s · s = V.</summary>
        public static ElectricPotential operator *(ElectricPotentialChangeRate rate, Duration t) => ElectricPotential.FromVolts(rate.VoltsPerSeconds * t.Seconds);
    }

    extension(ElectricConductance)
    {
        /// <summary>S · R, a number.</summary>
        public static double operator *(ElectricConductance g, ElectricResistance r) => g.Siemens * r.Ohms;

        /// <summary>S · V = A.</summary>
        public static ElectricCurrent operator *(ElectricConductance g, ElectricPotential v) => ElectricCurrent.FromAmperes(g.Siemens * v.Volts);

        /// <summary>S / F = 1/s: over 2π the unity-gain frequency of a transconductance and a capacitor.</summary>
        public static Frequency operator /(ElectricConductance g, ElectricCapacitance c) => Frequency.FromHertz(g.Siemens / c.Farads);

        /// <summary>S / f = F: over 2π the capacitance of a susceptance.</summary>
        public static ElectricCapacitance operator /(ElectricConductance g, Frequency f) => ElectricCapacitance.FromFarads(g.Siemens / f.Hertz);

        /// <summary>1 / S = R.</summary>
        public static ElectricResistance operator /(double number, ElectricConductance g) => ElectricResistance.FromOhms(number / g.Siemens);
    }

    extension(VoltageDrift)
    {
        /// <summary>V/K · K = V.</summary>
        public static ElectricPotential operator *(VoltageDrift drift, TemperatureDelta t) => ElectricPotential.FromVolts(drift.Si * t.Kelvins);
    }

    extension(Ratio)
    {
        /// <summary>A number and a fraction: 1 + 10.percent is 1.1.</summary>
        public static double operator +(double number, Ratio part) => number + part.DecimalFractions;

        /// <summary>A number less a fraction: 1 − 10.percent is 0.9.</summary>
        public static double operator -(double number, Ratio part) => number - part.DecimalFractions;
    }

    // A power is kept as a decimal, which ends at 7.9×10²⁸ and says so in words of its own.
    private static Power OfWatts(double watts)
    {
        if (!(Math.Abs(watts) < 7e28))
            Guard.Refuse("the power", watts, "below 7×10²⁸ W", "One of the values that it comes from is far out: look at their units, and for a resistance near 0 Ω.");
        return Power.FromWatts(watts);
    }
}
