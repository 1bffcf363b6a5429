using EightOhm.Devices;
using EightOhm.Quantities;
using EightOhm.Record;
using EightOhm.Sizing;
using UnitsNet;

namespace EightOhm.Cli.Making;

/// <summary>What was asked with --set, read by the kinds of the design's own inputs.</summary>
internal sealed class AskedValues
{
    private readonly Dictionary<string, object> values = new(StringComparer.Ordinal);
    private readonly DesignTemplate template;

    private AskedValues(DesignTemplate template) => this.template = template;

    /// <summary>The values by the names of inputs; of a part its card's text.</summary>
    public IReadOnlyDictionary<string, object> Values => values;

    /// <exception cref="RunFailure">One is not of the form, unknown, twice there or of another unit.</exception>
    public static AskedValues Read(IReadOnlyList<string> settings, DesignTemplate template)
    {
        var read = new AskedValues(template);
        foreach (var setting in settings)
            read.Add(setting);
        return read;
    }

    /// <summary>The targets that a sizing needs: as asked, else as the design has them; what others imply is left to follow.</summary>
    public AmplifierTargets Targets() => new()
    {
        Power = Get<Power>("P"),
        Load = Get<ElectricResistance>("R_L"),
        MinimumLoad = Asked<ElectricResistance>("R_Lmin"),
        MinimumLoadPower = Asked<Power>("P_Lmin"),
        Channels = Get<int>("n_ch"),
        Sensitivity = Get<ElectricPotential>("V_in"),
        Line = Get<ElectricPotential>("V_line"),
        Mains = Get<Frequency>("f_mains"),
        MainsTolerance = Get<Ratio>("m_tol"),
        Air = Get<Temperature>("T_a"),
        Phase = Get<Angle>("phi_L"),
        Lowest = Get<Frequency>("f_min"),
        Highest = Get<Frequency>("f_max"),
    };

    /// <summary>What the design takes for granted, and pairs and idle heat where they were asked for: its own inputs, as asked or as they stand.</summary>
    public SizingBasis Basis()
    {
        var usual = new SizingBasis();
        return usual with
        {
            Pairs = Asked<int>("n"),
            IdleHeat = Asked<Power>("P_idlemax"),
            Case = Get("T_case", usual.Case),
            Junction = Get("T_jmax", usual.Junction),
            Idle = Get("T_out", usual.Idle),
            Insulator = Get("theta_CS", usual.Insulator),
            Tab = Get("A_tab", usual.Tab),
            FinError = Get("m_fin", usual.FinError),
            CutTolerance = Get("dT_cut", usual.CutTolerance),
            Collector = Get("R_C", usual.Collector),
            SecondStage = Get("V_2nd", usual.SecondStage),
            Wiring = Get("R_wire", usual.Wiring),
            LineResistance = Get("R_line", usual.LineResistance),
            VoltageUse = Get("k_dev", usual.VoltageUse),
            CapacitorUse = Get("k_cap", usual.CapacitorUse),
            InsideRise = Get("dT_in", usual.InsideRise),
            BridgeToAir = Get("theta_br", usual.BridgeToAir),
            JunctionRoom = Get("dT_br", usual.JunctionRoom),
            SafeVoltage = Get("V_safe", usual.SafeVoltage),
            SafeTime = Get("t_safe", usual.SafeTime),
            Distortion = Get("D_max", usual.Distortion),
            LeastDistortion = Get("D_maxmin", usual.LeastDistortion),
            SignalToNoise = Get("SNR_min", usual.SignalToNoise),
            PhaseMargin = Get("PM_min", usual.PhaseMargin),
            Distance = Get("d_min", usual.Distance),
            InnerMargin = Get("PM_in", usual.InnerMargin),
            OutputPole = Get("f_p1", usual.OutputPole),
            DriverPole = Get("f_p2", usual.DriverPole),
            PoleSpread = Get("m_p", usual.PoleSpread),
            Delay = Get("t_dmax", usual.Delay),
            Pair = Get("T_pair", usual.Pair),
            Cold = Get("T_cold", usual.Cold),
        };
    }

    private T Get<T>(string name, T usual)
        where T : struct => Asked<T>(name) ?? (template.Inputs.FirstOrDefault(i => i.Name == name)?.Value is T own ? own : usual);

    private T? Asked<T>(string name)
        where T : struct => values.TryGetValue(name, out var value) ? (T)value : null;

    private T Get<T>(string name)
        where T : struct => Asked<T>(name) ?? (template.Inputs.FirstOrDefault(i => i.Name == name)?.Value is T own
            ? own
            : throw new InvalidOperationException($"The design that comes with the program has no target {name}."));

    private void Add(string setting)
    {
        var parts = setting.Split('=', 2, StringSplitOptions.TrimEntries);
        if (parts is not [{ Length: > 0 } typed, { Length: > 0 } text])
            throw RunFailure.BadInput($"--set '{setting}' must be \"name=value with unit\", for example --set \"P=60 W\".");
        var name = typed.Normalize();
        var input = template.Inputs.FirstOrDefault(i => Entry(i) == name) ?? throw Unknown(setting, name);
        if (!values.TryAdd(Entry(input), Value(setting, input, text)))
            throw RunFailure.BadInput($"--set '{setting}': {name} is set twice. Give it one value.");
    }

    // A card is read before anything is sized: what cannot be is said at once.
    private static string OwnCard(string setting, DesignInput input, string path)
    {
        try
        {
            var card = DeviceCard.Load<DeviceCard>(path);
            var type = input.CardType ?? nameof(Transistor);
            return card.GetType().Name == type
                ? System.Text.Encoding.UTF8.GetString(OrdinaryFile.Read(path)).TrimStart('\uFEFF')
                : throw RunFailure.BadInput($"--set '{setting}': it is the card of a {card.Kind}; the role takes another kind ({type}).");
        }
        catch (CardException e)
        {
            throw RunFailure.BadInput($"--set '{setting}': {e.Message}");
        }
    }

    private static object Value(string setting, DesignInput input, string text)
    {
        if (input.IsPart)
            return OwnCard(setting, input, text);
        // A record of no file reads and refuses as the design's own will.
        var record = DesignRecord.Scratch();
        try
        {
            _ = typeof(DesignRecord).GetMethod(nameof(DesignRecord.Target))!.MakeGenericMethod(input.Code!.Kind.Type)
                .Invoke(record, System.Reflection.BindingFlags.DoNotWrapExceptions, null, [input.Name, input.Value, null], null);
            record.Set(input.Name, text);
            return record.EntryOf(input.Name).Value!;
        }
        catch (RecordException e)
        {
            throw RunFailure.BadInput($"--set '{setting}': {e.Message}");
        }
    }

    private RunFailure Unknown(string setting, string name)
    {
        string[] names = [.. template.Inputs.Select(Entry).Distinct()];
        var nearest = NearestName.Of(name, names) is { } near ? $" Did you mean {near}?" : "";
        return RunFailure.BadInput($"--set '{setting}': the design has no {name}.{nearest} What can be set: {string.Join(", ", names)}.");
    }

    /// <summary>The name of an input's entry: a part's is its role, with _ for a blank.</summary>
    public static string Entry(DesignInput input) => input.IsPart ? input.Name.Trim().Replace(' ', '_') : input.Name;
}
