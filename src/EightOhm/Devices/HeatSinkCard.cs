using EightOhm.Explaining;
using EightOhm.Json;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Devices.CardMembers;

namespace EightOhm.Devices;

/// <summary>A heat sink of plate fins in still air, by its card: what its maker rates, and its size.</summary>
/// <example><code>var sink = design.Part&lt;HeatSinkCard&gt;("sink", "cards/sink.json"); PlateFinSink.Of(sink).At(100.W, 35.degC)</code></example>
[Called("heat sink")]
[RecordName("heat-sink")]
public sealed class HeatSinkCard : DeviceCard
{
    // W/(m²·K), with radiation.
    private const double MostPerArea = 32;

    internal HeatSinkCard(JsonPart card)
        : base(card.With("theta_SA", "rise", "width", "height", "base", "fins", "finLength", "finThickness", "emissivity", "conductivity"))
    {
        ToAir = card["theta_SA"].Positive<ThermalResistance>();
        RatedRise = card["rise"].Positive<TemperatureDelta>();
        Width = card["width"].Positive<Length>();
        Height = card["height"].Positive<Length>();
        BaseThickness = card["base"].Positive<Length>();
        Fins = card["fins"].Value<int>() is >= 2 and <= 10_000 and var n ? n : throw card["fins"].Fault($"must be from 2 to 10 000 (was {card["fins"].Text}).");
        FinLength = card["finLength"].Positive<Length>();
        FinThickness = card["finThickness"].Positive<Length>();
        Emissivity = card["emissivity"].Checked(() => Guard.Between(card["emissivity"].Value<double>(), 0.0, 1.0, "emissivity"));
        Conductivity = card["conductivity"].Positive<ThermalConductivity>();
        Refuse(card);
    }

    /// <summary>Sink to air at <see cref="RatedRise"/>. At a smaller heat it is more: still air moves less.</summary>
    [Symbol("theta_SA")]
    [RecordName("heat-sink.to-air")]
    public ThermalResistance ToAir { get; }

    /// <summary>The rise over the air at which it is rated.</summary>
    [Symbol("dT_SA")]
    [RecordName("heat-sink.rated-rise")]
    public TemperatureDelta RatedRise { get; }

    /// <summary>Of the base, across the fins.</summary>
    [Symbol("b_s")]
    [RecordName("heat-sink.width")]
    public Length Width { get; }

    /// <summary>Of base and fins, along the rising air.</summary>
    [Symbol("h_s")]
    [RecordName("heat-sink.height")]
    public Length Height { get; }

    /// <summary>Of the base.</summary>
    [Symbol("t_b")]
    [RecordName("heat-sink.base-thickness")]
    public Length BaseThickness { get; }

    /// <summary>How many fins.</summary>
    [Symbol("n_f")]
    [RecordName("heat-sink.fins")]
    public int Fins { get; }

    /// <summary>From the base to the tip of a fin.</summary>
    [Symbol("l_f")]
    [RecordName("heat-sink.fin-length")]
    public Length FinLength { get; }

    /// <summary>Of a fin.</summary>
    [Symbol("t_f")]
    [RecordName("heat-sink.fin-thickness")]
    public Length FinThickness { get; }

    /// <summary>Of the surface, from 0 to 1.</summary>
    [Symbol("ε")]
    [RecordName("heat-sink.emissivity")]
    public double Emissivity { get; }

    /// <summary>Of the metal.</summary>
    [Symbol("k_s")]
    [RecordName("heat-sink.conductivity")]
    public ThermalConductivity Conductivity { get; }

    /// <summary>The heat at which it is rated.</summary>
    [Symbol("P_SA")]
    [RecordName("heat-sink.rated-heat")]
    public Power RatedHeat => Power.FromWatts(RatedRise.Kelvins / ToAir.Si);

    /// <inheritdoc/>
    public override string ToString() => $"{Name}{(Invented ? " (invented)" : "")}, heat sink, {Text(ToAir)} at {Text(RatedRise)}, {Text(Width)} × {Text(Height)}: {Source}";

    // Still air takes 1 to 25 W/(m²·K) of a surface, radiation at most some 7 near a room's temperature.
    private void Refuse(JsonPart card)
    {
        if (!(Width.Meters > Fins * FinThickness.Meters))
            throw card["width"].Fault($"must be more than the {Fins} fins together, {Text(Length.FromMeters(Fins * FinThickness.Meters))} (was {Text(Width)}).");
        var area = Height.Meters * ((2 * Width.Meters) + (2 * Fins * FinLength.Meters));
        var least = ThermalResistance.FromSi(1 / (MostPerArea * area));
        if (ToAir < least)
            throw card["theta_SA"].Fault($"must be {Text(least)} or more: its {Text(Area.FromSquareMeters(area))} give no more to still air (was {Text(ToAir)}). A figure for a fan is none for still air.");
    }
}
