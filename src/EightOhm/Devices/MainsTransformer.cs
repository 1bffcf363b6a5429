using EightOhm.Explaining;
using EightOhm.Json;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Devices.CardMembers;

namespace EightOhm.Devices;

/// <summary>A mains transformer with two equal secondary windings, by its card.</summary>
/// <example><code>var transformer = design.Part&lt;MainsTransformer&gt;("transformer", "cards/transformer.json"); new DualWinding(transformer)</code></example>
[RecordName("mains-transformer")]
public sealed class MainsTransformer : DeviceCard
{
    internal MainsTransformer(JsonPart card)
        : base(card.With("S", "V_pri", "f", "V_sec", "regulation", "R_pri", "I_inrush"))
    {
        Rating = card["S"].Positive<ElectricApparentPower>();
        Primary = card["V_pri"].Positive<ElectricPotential>();
        Mains = card["f"].Positive<Frequency>();
        Secondary = card["V_sec"].Positive<ElectricPotential>();
        Regulation = card["regulation"].Share();
        if (!(Regulation > Ratio.Zero))
            throw card["regulation"].Fault("must be greater than 0 %: every winding has resistance. Small transformers have 10 % and more, large ones 5 %.");
        PrimaryResistance = card["R_pri"].Positive<ElectricResistance>();
        Inrush = card["I_inrush"].Positive<ElectricCurrent>();
        Refuse(card);
    }

    /// <summary>Rating of the whole transformer.</summary>
    [Symbol("S")]
    [RecordName("mains-transformer.rating")]
    public ElectricApparentPower Rating { get; }

    /// <summary>Rated primary voltage, rms.</summary>
    [Symbol("V_pri")]
    [RecordName("mains-transformer.primary")]
    public ElectricPotential Primary { get; }

    /// <summary>The lowest mains frequency that it is made for.</summary>
    [Symbol("f_mains")]
    [RecordName("mains-transformer.mains")]
    public Frequency Mains { get; }

    /// <summary>Voltage of each of the two secondaries at full load, rms.</summary>
    [Symbol("V_sec")]
    [RecordName("mains-transformer.secondary")]
    public ElectricPotential Secondary { get; }

    /// <summary>(No load − full load)/full load.</summary>
    [Symbol("reg")]
    [RecordName("mains-transformer.regulation")]
    public Ratio Regulation { get; }

    /// <summary>Dc resistance of the primary.</summary>
    [Symbol("R_pri")]
    [RecordName("mains-transformer.primary-resistance")]
    public ElectricResistance PrimaryResistance { get; }

    /// <summary>Greatest peak of the primary's current when switched on without load at rated voltage, from mains without resistance.</summary>
    [Symbol("I_inrush")]
    [RecordName("mains-transformer.inrush")]
    public ElectricCurrent Inrush { get; }

    /// <inheritdoc/>
    public override string ToString() => $"{Name}{(Invented ? " (invented)" : "")}, mains transformer, {Text(Rating)}, {Text(Primary)} to 2 × {Text(Secondary)}: {Source}";

    // All of the copper, seen from the primary, is regulation times the rated voltage over the rated current.
    private void Refuse(JsonPart card)
    {
        var whole = Regulation.DecimalFractions * Primary.Volts * Primary.Volts / Rating.Voltamperes;
        if (PrimaryResistance.Ohms > whole * (1 + Rounded))
            throw card["R_pri"].Fault($"must be at most what the regulation tells of all windings, {Text(ElectricResistance.FromOhms(whole))} (was {Text(PrimaryResistance)}). Look for a misread one of S, V_pri, regulation and R_pri.");
        var bound = ElectricCurrent.FromAmperes(Math.Sqrt(2) * Primary.Volts / PrimaryResistance.Ohms);
        if (Inrush.Amperes > bound.Amperes * (1 + Rounded))
            throw card["I_inrush"].Fault($"must be at most what R_pri lets through at the mains' peak, {Text(bound)} (was {Text(Inrush)}).");
        var rated = ElectricCurrent.FromAmperes(Math.Sqrt(2) * Rating.Voltamperes / Primary.Volts);
        if (Inrush < rated)
            throw card["I_inrush"].Fault($"must be at least the peak of the rated current, {Text(rated)} (was {Text(Inrush)}).");
    }
}
