using UnitsNet;

namespace EightOhm.Quantities;

/// <summary>The algebra of the trade: what a designer writes on paper compiles and gives the right type.</summary>
/// <remarks>Only products and quotients that UnitsNet does not have; a dimension error is a compile error that names both quantities.
/// One block a left operand.</remarks>
public static class Algebra
{
    extension(ElectricPotential)
    {
        /// <summary>V · V = V².</summary>
        public static SquaredVoltage operator *(ElectricPotential a, ElectricPotential b) => new(a.Volts * b.Volts);

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
    }

    extension(ElectricCurrent)
    {
        /// <summary>A · A = A².</summary>
        public static SquaredCurrent operator *(ElectricCurrent a, ElectricCurrent b) => new(a.Amperes * b.Amperes);

        /// <summary>A / F = V/s: the slew rate a current gives a capacitor.</summary>
        public static ElectricPotentialChangeRate operator /(ElectricCurrent i, ElectricCapacitance c) => ElectricPotentialChangeRate.FromVoltsPerSeconds(i.Amperes / c.Farads);

        /// <summary>A / V = S.</summary>
        public static ElectricConductance operator /(ElectricCurrent i, ElectricPotential v) => ElectricConductance.FromSiemens(i.Amperes / v.Volts);
    }

    extension(ElectricResistance)
    {
        /// <summary>R · C = s.</summary>
        public static Duration operator *(ElectricResistance r, ElectricCapacitance c) => Duration.FromSeconds(r.Ohms * c.Farads);

        /// <summary>R / L = 1/s: over 2π the corner of an inductor and a resistor.</summary>
        public static Frequency operator /(ElectricResistance r, ElectricInductance l) => Frequency.FromHertz(r.Ohms / l.Henries);

        /// <summary>R · W = V².</summary>
        public static SquaredVoltage operator *(ElectricResistance r, Power p) => new(r.Ohms * (double)p.Watts);

        /// <summary>R · A² = W.</summary>
        public static Power operator *(ElectricResistance r, SquaredCurrent i2) => Power.FromWatts(r.Ohms * i2.Si);

        /// <summary>R · A/√Hz = V/√Hz.</summary>
        public static VoltageNoiseDensity operator *(ElectricResistance r, CurrentNoiseDensity i) => VoltageNoiseDensity.FromSi(r.Ohms * i.Si);
    }

    extension(ElectricCapacitance)
    {
        /// <summary>C · R = s.</summary>
        public static Duration operator *(ElectricCapacitance c, ElectricResistance r) => Duration.FromSeconds(c.Farads * r.Ohms);

        /// <summary>C · V = coulombs.</summary>
        public static ElectricCharge operator *(ElectricCapacitance c, ElectricPotential v) => ElectricCharge.FromCoulombs(c.Farads * v.Volts);

        /// <summary>C · V/s = A.</summary>
        public static ElectricCurrent operator *(ElectricCapacitance c, ElectricPotentialChangeRate rate) => ElectricCurrent.FromAmperes(c.Farads * rate.VoltsPerSeconds);
    }

    extension(ElectricInductance)
    {
        /// <summary>L / R = s.</summary>
        public static Duration operator /(ElectricInductance l, ElectricResistance r) => Duration.FromSeconds(l.Henries / r.Ohms);
    }

    extension(Power)
    {
        /// <summary>W · R = V².</summary>
        public static SquaredVoltage operator *(Power p, ElectricResistance r) => new((double)p.Watts * r.Ohms);

        /// <summary>W / R = A².</summary>
        public static SquaredCurrent operator /(Power p, ElectricResistance r) => new((double)p.Watts / r.Ohms);

        /// <summary>W · K/W = K: the rise of a heat flow over a thermal resistance.</summary>
        public static TemperatureDelta operator *(Power p, HeatResistance r) => TemperatureDelta.FromKelvins((double)p.Watts * r.Si);

        /// <summary>A scaled power.</summary>
        public static Power operator *(double factor, Power p) => Power.FromWatts(factor * (double)p.Watts);

        /// <summary>A scaled power.</summary>
        public static Power operator *(Power p, double factor) => Power.FromWatts((double)p.Watts * factor);

        /// <summary>A divided power.</summary>
        public static Power operator /(Power p, double divisor) => Power.FromWatts((double)p.Watts / divisor);
    }

    extension(HeatResistance)
    {
        /// <summary>K/W · W = K.</summary>
        public static TemperatureDelta operator *(HeatResistance r, Power p) => TemperatureDelta.FromKelvins(r.Si * (double)p.Watts);
    }

    extension(TemperatureDelta)
    {
        /// <summary>K / W: the thermal resistance that a rise allows.</summary>
        public static HeatResistance operator /(TemperatureDelta rise, Power p) => HeatResistance.FromSi(rise.Kelvins / (double)p.Watts);

        /// <summary>K / (K/W) = W: the heat that a rise drives.</summary>
        public static Power operator /(TemperatureDelta rise, HeatResistance r) => Power.FromWatts(rise.Kelvins / r.Si);
    }

    extension(Entropy)
    {
        /// <summary>k · T = J, with T absolute.</summary>
        public static Energy operator *(Entropy k, Temperature t) => Energy.FromJoules(k.JoulesPerKelvin * t.Kelvins);
    }

    extension(Energy)
    {
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
    }

    extension(SquaredVoltage)
    {
        /// <summary>V² / R = W.</summary>
        public static Power operator /(SquaredVoltage v2, ElectricResistance r) => Power.FromWatts(v2.Si / r.Ohms);

        /// <summary>V² / W = R.</summary>
        public static ElectricResistance operator /(SquaredVoltage v2, Power p) => ElectricResistance.FromOhms(v2.Si / (double)p.Watts);

        /// <summary>V² / V = V.</summary>
        public static ElectricPotential operator /(SquaredVoltage v2, ElectricPotential v) => ElectricPotential.FromVolts(v2.Si / v.Volts);

        /// <summary>V² / Hz.</summary>
        public static SquaredVoltageDensity operator /(SquaredVoltage v2, Frequency f) => new(v2.Si / f.Hertz);

        /// <summary>V² over V²/Hz = Hz: the noise bandwidth that a density fills to a total.</summary>
        public static Frequency operator /(SquaredVoltage v2, SquaredVoltageDensity e2) => Frequency.FromHertz(v2.Si / e2.Si);
    }

    extension(SquaredCurrent)
    {
        /// <summary>A² · R = W.</summary>
        public static Power operator *(SquaredCurrent i2, ElectricResistance r) => Power.FromWatts(i2.Si * r.Ohms);
    }

    extension(SquaredVoltageDensity)
    {
        /// <summary>V²/Hz · Hz = V².</summary>
        public static SquaredVoltage operator *(SquaredVoltageDensity e2, Frequency f) => new(e2.Si * f.Hertz);

        /// <summary>V²/Hz over V²·s⁻¹ per ohm … : the resistance whose thermal noise this is, e² / kT.</summary>
        public static ElectricResistance operator /(SquaredVoltageDensity e2, Energy kT) => ElectricResistance.FromOhms(e2.Si / kT.Joules);
    }

    extension(VoltageNoiseDensity)
    {
        /// <summary>Density squared.</summary>
        public static SquaredVoltageDensity operator *(VoltageNoiseDensity a, VoltageNoiseDensity b) => new(a.Si * b.Si);

        /// <summary>V/√Hz · √Hz = V (rms).</summary>
        public static ElectricPotential operator *(VoltageNoiseDensity e, RootFrequency bandwidth) => ElectricPotential.FromVolts(e.Si * bandwidth.Si);

        /// <summary>Density · gain: referred to the output.</summary>
        public static VoltageNoiseDensity operator *(VoltageNoiseDensity e, Gain gain) => VoltageNoiseDensity.FromSi(e.Si * gain.Ratio);

        /// <summary>Density / R = current density.</summary>
        public static CurrentNoiseDensity operator /(VoltageNoiseDensity e, ElectricResistance r) => CurrentNoiseDensity.FromSi(e.Si / r.Ohms);
    }

    extension(CurrentNoiseDensity)
    {
        /// <summary>Density squared.</summary>
        public static SquaredCurrentDensity operator *(CurrentNoiseDensity a, CurrentNoiseDensity b) => new(a.Si * b.Si);

        /// <summary>A/√Hz · R = V/√Hz.</summary>
        public static VoltageNoiseDensity operator *(CurrentNoiseDensity i, ElectricResistance r) => VoltageNoiseDensity.FromSi(i.Si * r.Ohms);

        /// <summary>A/√Hz · √Hz = A (rms).</summary>
        public static ElectricCurrent operator *(CurrentNoiseDensity i, RootFrequency bandwidth) => ElectricCurrent.FromAmperes(i.Si * bandwidth.Si);
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
    }

    extension(Duration)
    {
        /// <summary>1 / s = Hz.</summary>
        public static Frequency operator /(double number, Duration t) => Frequency.FromHertz(number / t.Seconds);
    }

    extension(ElectricPotentialChangeRate)
    {
        /// <summary>V/s over V = Hz.</summary>
        public static Frequency operator /(ElectricPotentialChangeRate rate, ElectricPotential v) => Frequency.FromHertz(rate.VoltsPerSeconds / v.Volts);

        /// <summary>V/s over Hz = V.</summary>
        public static ElectricPotential operator /(ElectricPotentialChangeRate rate, Frequency f) => ElectricPotential.FromVolts(rate.VoltsPerSeconds / f.Hertz);
    }
}
