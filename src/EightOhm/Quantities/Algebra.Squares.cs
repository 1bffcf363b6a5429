using UnitsNet;

namespace EightOhm.Quantities;

/// <content>Squares and products that stand between: V², A², Ω², V·Ω, 1/s² and what they come to.</content>
public static partial class Algebra
{
    extension(SquaredVoltage)
    {
        /// <summary>V² / R = W.</summary>
        public static Power operator /(SquaredVoltage v2, ElectricResistance r) => OfWatts(v2.Si / r.Ohms);

        /// <summary>Power in a conductance.</summary>
        public static Power operator *(SquaredVoltage v2, ElectricConductance g) => OfWatts(v2.Si * g.Siemens);

        /// <summary>V² / W = R.</summary>
        public static ElectricResistance operator /(SquaredVoltage v2, Power p) => ElectricResistance.FromOhms(v2.Si / (double)p.Watts);

        /// <summary>V² / VA = Ω.</summary>
        public static ElectricResistance operator /(SquaredVoltage v2, ElectricApparentPower s) => ElectricResistance.FromOhms(v2.Si / s.Voltamperes);

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
        public static Power operator *(SquaredCurrent i2, ElectricResistance r) => OfWatts(i2.Si * r.Ohms);

        /// <summary>A² · s, I²t.</summary>
        public static JouleIntegral operator *(SquaredCurrent i2, Duration t) => new(i2.Si * t.Seconds);

        /// <summary>A² / A = A.</summary>
        public static ElectricCurrent operator /(SquaredCurrent i2, ElectricCurrent i) => ElectricCurrent.FromAmperes(i2.Si / i.Amperes);
    }

    extension(SquaredResistance)
    {
        /// <summary>R² / R = R.</summary>
        public static ElectricResistance operator /(SquaredResistance r2, ElectricResistance r) => ElectricResistance.FromOhms(r2.Si / r.Ohms);

        /// <summary>R² · C = L.</summary>
        public static ElectricInductance operator *(SquaredResistance r2, ElectricCapacitance c) => ElectricInductance.FromHenries(r2.Si * c.Farads);
    }

    extension(VoltageResistance)
    {
        /// <summary>V·Ω over Ω = V.</summary>
        public static ElectricPotential operator /(VoltageResistance vr, ElectricResistance r) => ElectricPotential.FromVolts(vr.Si / r.Ohms);

        /// <summary>V·Ω over V = Ω.</summary>
        public static ElectricResistance operator /(VoltageResistance vr, ElectricPotential v) => ElectricResistance.FromOhms(vr.Si / v.Volts);
    }

    extension(SquaredFrequency)
    {
        /// <summary>f² · L = Ω/s.</summary>
        public static ResistanceRate operator *(SquaredFrequency f2, ElectricInductance l) => new(f2.Si * l.Henries);

        /// <summary>f² · C = S/s.</summary>
        public static ConductanceRate operator *(SquaredFrequency f2, ElectricCapacitance c) => new(f2.Si * c.Farads);
    }

    extension(SquaredDuration)
    {
        /// <summary>1 / s² = Hz².</summary>
        public static SquaredFrequency operator /(double number, SquaredDuration t2) => new(number / t2.Si);
    }

    extension(ResistanceRate)
    {
        /// <summary>1 over Ω/s = F: the capacitor of a corner or a resonance.</summary>
        public static ElectricCapacitance operator /(double number, ResistanceRate r) => ElectricCapacitance.FromFarads(number / r.Si);
    }

    extension(ConductanceRate)
    {
        /// <summary>1 over S/s = H: the inductor of a resonance.</summary>
        public static ElectricInductance operator /(double number, ConductanceRate g) => ElectricInductance.FromHenries(number / g.Si);
    }

    extension(JouleIntegral)
    {
        /// <summary>A²s · R = J: the heat that a pulse leaves in a resistance.</summary>
        public static Energy operator *(JouleIntegral i2t, ElectricResistance r) => Energy.FromJoules(i2t.Si * r.Ohms);
    }
}
