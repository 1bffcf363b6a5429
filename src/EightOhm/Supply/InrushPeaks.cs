using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Supply;

/// <summary>Both worst moments of a switch-on, with and without its limiter, and which governs the fuse.</summary>
public sealed record InrushPeaks
{
    private InrushPeaks(SwitchOn on)
    {
        var reflected = Inrush.ReflectedHalves(on.HalfResistance, on.Turns);
        var limiter = ElectricResistance.FromOhms(on.Limiter.Cold);
        Capacitors = Inrush.CapacitorPeak(on.Line, on.Diode, on.Turns, on.Primary + reflected);
        Core = Inrush.CoreBound(on.Line, on.Primary);
        CapacitorsLimited = Inrush.CapacitorPeak(on.Line, on.Diode, on.Turns, on.Primary + reflected + limiter);
        CoreLimited = Inrush.CoreBound(on.Line, on.Primary + limiter);
        HalfPeriodPulse = Fuse.HalfSine(CoreLimited, 1 / (2 * on.Mains));
    }

    /// <summary>Into empty capacitors at the peak of the mains, without the limiter, peak.</summary>
    public ElectricCurrent Capacitors { get; }

    /// <summary>Bound of the saturated core from zero, without the limiter, peak.</summary>
    public ElectricCurrent Core { get; }

    /// <summary>Into empty capacitors at the peak of the mains, with the limiter cold, peak.</summary>
    public ElectricCurrent CapacitorsLimited { get; }

    /// <summary>Bound of the saturated core, with the limiter cold, peak.</summary>
    public ElectricCurrent CoreLimited { get; }

    /// <summary>I²t of a half sine of <see cref="CoreLimited"/> that lasts half a mains period: an upper bound of the core's first surge.</summary>
    public JouleIntegral HalfPeriodPulse { get; }

    /// <summary>The larger with the limiter, peak: it governs the fuse.</summary>
    public ElectricCurrent Governing => CoreLimited > CapacitorsLimited ? CoreLimited : CapacitorsLimited;

    /// <summary>Which one that is, in words.</summary>
    public string Governs => CoreLimited > CapacitorsLimited ? "the core, switched on at zero" : "the capacitors, switched on at the peak of the mains";

    /// <summary>Bounds a switch-on.</summary>
    /// <param name="on">What is switched on.</param>
    public static InrushPeaks Of(SwitchOn on)
    {
        ArgumentNullException.ThrowIfNull(on);
        return new InrushPeaks(on);
    }
}
