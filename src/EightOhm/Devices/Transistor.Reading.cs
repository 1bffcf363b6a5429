using EightOhm.Json;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Devices;

/// <content>Reading a card.</content>
public sealed partial class Transistor
{
    /// <summary>Reads a card from a file.</summary>
    /// <param name="path">The file, from the working directory: "cards/…json" beside a notebook.</param>
    /// <exception cref="CardException">The file is missing or is not such a card; the message says where and what is allowed.</exception>
    public static Transistor Load(string path) => Load<Transistor>(path);

    /// <summary>Reads a card from its text.</summary>
    /// <param name="json">The card.</param>
    /// <param name="name">What to call it in messages.</param>
    /// <exception cref="CardException">The text is not such a card; the message says where and what is allowed.</exception>
    public static Transistor Parse(string json, string name = "card") => Parse<Transistor>(json, name);

    /// <exception cref="JsonFault">It is not such a card.</exception>
    internal static Transistor Read(JsonPart card)
    {
        card.With("polarity", "V_CEO", "I_C", "I_CM", "P", "T_ref", "T_J", "theta_JC", "f_T", "C_ob", "r_int", "V_BE", "h_FE", "safeArea");
        card["V_BE"].Exactly("I_C", "V_BE", "tc");
        card["safeArea"].Exactly("secondBreakdownLeft", "lines");
        var read = new Transistor(card)
        {
            Polarity = card["polarity"].Text switch
            {
                "npn" => Polarity.Npn,
                "pnp" => Polarity.Pnp,
                var other => throw card["polarity"].Fault($"must be npn or pnp (was {other})."),
            },
            MaxCollectorEmitterVoltage = card["V_CEO"].Positive<ElectricPotential>(),
            MaxCollectorCurrent = card["I_C"].Positive<ElectricCurrent>(),
            MaxPeakCollectorCurrent = card["I_CM"].Positive<ElectricCurrent>(),
            MaxPowerDissipation = card["P"].Positive<Power>(),
            ReferenceTemperature = card["T_ref"].Value<Temperature>(),
            MaxJunctionTemperature = card["T_J"].Value<Temperature>(),
            JunctionToCase = card["theta_JC"].Positive<ThermalResistance>(),
            TransitionFrequency = card["f_T"].Positive<Frequency>(),
            OutputCapacitance = card["C_ob"].Positive<ElectricCapacitance>(),
            InternalEmitterResistance = card["r_int"].Checked(() => Guard.NotNegative(card["r_int"].Value<ElectricResistance>(), "r_int")),
            BaseEmitterVoltage = card["V_BE"]["V_BE"].Positive<ElectricPotential>(),
            BaseEmitterCurrent = card["V_BE"]["I_C"].Positive<ElectricCurrent>(),
            BaseEmitterDrift = card["V_BE"]["tc"].Positive<VoltageDrift>(),
            SecondBreakdownLeft = card["safeArea"]["secondBreakdownLeft"] is var left
                ? left.Checked(() => Guard.Between(left.Value<Ratio>(), Ratio.Zero, Ratio.FromDecimalFractions(1), "secondBreakdownLeft"))
                : default,
            GainTable = Gains(card["h_FE"]),
            SafeAreaLines = Lines(card["safeArea"]["lines"]),
        };
        CardContradictions.Refuse(read, card);
        return read;
    }

    private static List<GainPoint> Gains(JsonPart table)
    {
        var points = table.Items.Select(item =>
        {
            item.Exactly("I_C", "h_FE");
            return new GainPoint(item["I_C"].Positive<ElectricCurrent>(), item["h_FE"].Positive<double>());
        }).ToList();
        return points.Count >= 2 && points.Zip(points.Skip(1)).All(p => p.Second.Current > p.First.Current)
            ? points
            : throw table.Fault("two points or more are expected, in the order of their currents.");
    }

    private static List<SafeAreaLine> Lines(JsonPart list)
    {
        var lines = list.Items.Select(item =>
        {
            item.Exactly("pulse", "secondBreakdownFrom", "points");
            Duration? pulse = item["pulse"].Text == "dc" ? null : item["pulse"].Positive<Duration>();
            var points = item["points"].Items.Select(p =>
            {
                p.Exactly("V_CE", "I_C");
                return new SafeAreaPoint(p["V_CE"].Positive<ElectricPotential>(), p["I_C"].Positive<ElectricCurrent>());
            }).ToList();
            return item.Checked(() => new SafeAreaLine(pulse, item["secondBreakdownFrom"].Positive<ElectricPotential>(), points));
        }).ToList();
        return lines.Count > 0 && lines[0].Pulse is null && lines.Skip(1).Zip(lines.Skip(2)).All(p => p.Second.Pulse < p.First.Pulse) && lines.Skip(1).All(l => l.Pulse is not null)
            ? lines
            : throw list.Fault("the dc line is expected first (\"pulse\": \"dc\"), then the pulse lines from the longest pulse to the shortest.");
    }
}
