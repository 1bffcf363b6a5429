using UnitsNet;

namespace EightOhm.Quantities;

// The algebra of noise: densities, their squares, and what they become over a bandwidth or through a gain.
public static partial class Algebra
{
    extension(SquaredVoltageDensity)
    {
        /// <summary>V²/Hz · Hz = V².</summary>
        public static SquaredVoltage operator *(SquaredVoltageDensity e2, Frequency f) => new(e2.Si * f.Hertz);

        /// <summary>V²/Hz over V²·s⁻¹ per ohm … : the resistance whose thermal noise this is, e² / kT.</summary>
        public static ElectricResistance operator /(SquaredVoltageDensity e2, Energy kT) => ElectricResistance.FromOhms(e2.Si / kT.Joules);
    }

    extension(SquaredCurrentDensity)
    {
        /// <summary>A²/Hz · R = J: once more by R it is a noise voltage squared.</summary>
        public static Energy operator *(SquaredCurrentDensity i2, ElectricResistance r) => Energy.FromJoules(i2.Si * r.Ohms);

        /// <summary>A²/Hz · R² = V²/Hz.</summary>
        public static SquaredVoltageDensity operator *(SquaredCurrentDensity i2, SquaredResistance r2) => new(i2.Si * r2.Si);

        /// <summary>A²/Hz · Hz = A².</summary>
        public static SquaredCurrent operator *(SquaredCurrentDensity i2, Frequency f) => new(i2.Si * f.Hertz);
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

        /// <summary>V/√Hz over A/√Hz = R: the source at which both weigh the same.</summary>
        public static ElectricResistance operator /(VoltageNoiseDensity e, CurrentNoiseDensity i) => ElectricResistance.FromOhms(e.Si / i.Si);

        /// <summary>Density / gain: referred to the input.</summary>
        public static VoltageNoiseDensity operator /(VoltageNoiseDensity e, Gain gain) => VoltageNoiseDensity.FromSi(e.Si / gain.Ratio);
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
}
