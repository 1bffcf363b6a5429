using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Teaching;

/// <summary>How near an answer must be.</summary>
internal abstract record Tolerance
{
    /// <summary>Two honest digits: within 2 %, or what rounding the answer to two digits may take off, whichever is more. A temperature within 1 K.</summary>
    public static Tolerance TwoDigits { get; } = new Rounded();

    public abstract string Words { get; }

    /// <summary>Whether answers are spoken of in decibels.</summary>
    public virtual bool SpeaksDecibels => false;

    public static Tolerance Of(object within, QuantityKind kind) => within switch
    {
        Gain gain => new InDecibels(Math.Abs(gain.Decibels)),
        Ratio share => new Relative(share.DecimalFractions),
        _ when within.GetType() == kind.Type => new Absolute(kind.Style == FormatStyle.Celsius ? throw Celsius() : kind.ToSi(within), QuantityFormat.Short(within)),
        TemperatureDelta delta when kind.Style == FormatStyle.Celsius => new Absolute(delta.Kelvins, QuantityFormat.Short(delta)),
        _ => throw new ArgumentException($"A tolerance is a share (5.percent), decibels (0.5.dB) or the answer's own kind of quantity; {QuantityFormat.Short(within)} is neither.", nameof(within)),
    };

    public abstract bool Holds(QuantityKind kind, double given, double right);

    private static ArgumentException Celsius() => new("The tolerance of a temperature is a difference: 2.K.");

    private sealed record Rounded : Tolerance
    {
        private const double Share = 0.02;

        public override string Words => "two digits";

        public override bool Holds(QuantityKind kind, double given, double right)
        {
            if (kind.Style == FormatStyle.Celsius)
                return Math.Abs(given - right) <= 1;
            if (right == 0)
                return given == 0;
            // Half of the second digit: 1.04 may be written 1.0. The last bits are left to the decimal notation.
            var half = 0.05 * Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(right))));
            return Math.Abs(given - right) <= Math.Max(half, Share * Math.Abs(right)) * (1 + 1e-9);
        }
    }

    private sealed record Relative(double Share) : Tolerance
    {
        public override string Words => $"within {QuantityFormat.Short(Ratio.FromDecimalFractions(Share))}";

        public override bool Holds(QuantityKind kind, double given, double right) => Math.Abs(given - right) <= Share * Math.Abs(right) * (1 + 1e-9);
    }

    private sealed record InDecibels(double Decibels) : Tolerance
    {
        public override string Words => $"within {QuantityFormat.Short(Decibels)} dB";

        public override bool SpeaksDecibels => true;

        public override bool Holds(QuantityKind kind, double given, double right) =>
            given * right > 0 && Math.Abs(20 * Math.Log10(given / right)) <= Decibels * (1 + 1e-9);
    }

    private sealed record Absolute(double Si, string Text) : Tolerance
    {
        public override string Words => $"within {Text}";

        public override bool Holds(QuantityKind kind, double given, double right) => Math.Abs(given - right) <= Si * (1 + 1e-9);
    }
}
