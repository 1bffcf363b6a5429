using System.Text.Json;
using System.Text.Json.Nodes;
using EightOhm.Explaining;
using EightOhm.Json;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Devices.CardMembers;

namespace EightOhm.Devices;

/// <summary>A size of mains transformer that is wound to order: rating and what goes with it; the voltages are asked for.</summary>
/// <example><code>size.Wound(230.V, 35.V, 50.Hz).PrimaryResistance</code></example>
public sealed class TransformerSize : DeviceCard
{
    internal TransformerSize(JsonPart card)
        : base(card.With("S", "regulation", "primaryShare", "inrush"))
    {
        Rating = card["S"].Positive<ElectricApparentPower>();
        Regulation = card["regulation"].Share();
        if (!(Regulation > Ratio.Zero))
            throw card["regulation"].Fault("must be greater than 0 %: every winding has resistance.");
        PrimaryShare = card["primaryShare"].Share();
        if (!(PrimaryShare > Ratio.Zero))
            throw card["primaryShare"].Fault("must be greater than 0 %: a primary has resistance. About half of it all is usual.");
        InrushOverRated = card["inrush"].Positive<double>();
        var most = 1 / (PrimaryShare.DecimalFractions * Regulation.DecimalFractions);
        if (InrushOverRated < 1 || InrushOverRated > most)
            throw card["inrush"].Fault($"must be from 1 to what the primary's resistance lets through, {Text(most)} times the rated peak (was {Text(InrushOverRated)}).");
    }

    /// <summary>Rating of the whole transformer.</summary>
    [Symbol("S")]
    public ElectricApparentPower Rating { get; }

    /// <summary>(No load − full load)/full load.</summary>
    [Symbol("reg")]
    public Ratio Regulation { get; }

    /// <summary>The primary's share of the loss in all windings.</summary>
    [Symbol("k_pri")]
    public Ratio PrimaryShare { get; }

    /// <summary>Greatest peak of the inrush without load over the peak of the rated current.</summary>
    [Symbol("k_in")]
    public double InrushOverRated { get; }

    /// <summary>The transformer of this size with two equal secondaries.</summary>
    /// <param name="primary">Mains, rms; greater than 0 V.</param>
    /// <param name="secondary">Of each of two at full load, rms; greater than 0 V.</param>
    /// <param name="mains">Mains frequency; greater than 0 Hz.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Worked("the rating, regulation and inrush of the size at these voltages")]
    public MainsTransformer Wound(ElectricPotential primary, ElectricPotential secondary, Frequency mains) =>
        Parse<MainsTransformer>(CardOf(primary, secondary, mains), Name);

    /// <inheritdoc/>
    public override string ToString() => $"{Name}{(Invented ? " (invented)" : "")}, transformer size, {Text(Rating)}, wound to order: {Source}";

    /// <summary>Its card, as text.</summary>
    internal string CardOf(ElectricPotential primary, ElectricPotential secondary, Frequency mains)
    {
        Guard.Positive(primary);
        Guard.Positive(secondary);
        Guard.Positive(mains);
        var rated = Math.Sqrt(2) * Rating.Voltamperes / primary.Volts;
        var resistance = PrimaryShare.DecimalFractions * Regulation.DecimalFractions * primary.Volts * primary.Volts / Rating.Voltamperes;
        var card = new JsonObject
        {
            ["format"] = Format,
            ["version"] = 1,
            ["kind"] = CardKinds.Of(typeof(MainsTransformer)).Name,
            ["name"] = $"{Name} 2 × {Text(secondary)}",
            ["invented"] = Invented,
            ["source"] = Source,
            ["S"] = Text(Rating),
            ["V_pri"] = Text(primary),
            ["f"] = Text(mains),
            ["V_sec"] = Text(secondary),
            ["regulation"] = Text(Regulation),
            ["R_pri"] = Text(ElectricResistance.FromOhms(resistance)),
            ["I_inrush"] = Text(ElectricCurrent.FromAmperes(InrushOverRated * rated)),
        };
        return card.ToJsonString(Written) + "\n";
    }

    private static readonly JsonSerializerOptions Written = new() { WriteIndented = true, Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
}
