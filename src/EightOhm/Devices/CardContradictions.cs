using EightOhm.Json;
using EightOhm.Numerics;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Devices;

/// <summary>A card whose figures contradict each other is refused, with the place where one of them stands.</summary>
/// <remarks>Figures read off a printed chart are good to a few percent, printed ratings are rounded: only what no reading explains is refused.</remarks>
internal static class CardContradictions
{
    // Ratings printed to two digits: 0.83 K/W for 125 K and 150 W is 0.8333.
    private const double Rounded = 0.05;

    /// <summary>Refuses what cannot hold together.</summary>
    /// <param name="read">The card as read.</param>
    /// <param name="card">Its JSON, for the places.</param>
    public static void Refuse(Transistor read, JsonPart card)
    {
        if (!(read.MaxJunctionTemperature > read.ReferenceTemperature))
            throw card["T_J"].Fault($"must be above T_ref, {Text(read.ReferenceTemperature)} (was {Text(read.MaxJunctionTemperature)}).");
        Ratings(read, card);
        Gains(read, card);
        var lines = card["safeArea"]["lines"].Items;
        for (var k = 0; k < lines.Count; k++)
            Corners(read, read.SafeAreaLines[k], lines[k]["points"].Items);
        for (var k = 1; k < lines.Count; k++)
            Order(read.SafeAreaLines[k - 1], read.SafeAreaLines[k], lines[k]);
    }

    private static void Ratings(Transistor read, JsonPart card)
    {
        if (read.MaxPeakCollectorCurrent < read.MaxCollectorCurrent)
            throw card["I_CM"].Fault($"must be at least I_C, {Text(read.MaxCollectorCurrent)} (was {Text(read.MaxPeakCollectorCurrent)}): a peak is no less than what may last. Repeat I_C where the sheet tells no peak.");
        var implied = Derating.Resistance(read.MaxPowerDissipation, read.MaxJunctionTemperature, read.ReferenceTemperature);
        if (Math.Abs((read.JunctionToCase / implied) - 1) > Rounded)
            throw card["theta_JC"].Fault($"must agree with P, T_J and T_ref within {Rounded:0%}: (T_J − T_ref)/P is {Text(implied)} (was {Text(read.JunctionToCase)}). Look for a misread one of the four, or give as T_ref the case temperature up to which P holds.");
        if (read.BaseEmitterCurrent > read.MaxPeakCollectorCurrent)
            throw card["V_BE"]["I_C"].Fault($"must be at most I_CM, {Text(read.MaxPeakCollectorCurrent)} (was {Text(read.BaseEmitterCurrent)}).");
        if (!(read.BaseEmitterVoltage > read.BaseEmitterDrift * (read.MaxJunctionTemperature - read.ReferenceTemperature)))
            throw card["V_BE"]["tc"].Fault($"must leave something of V_BE at T_J, {Text(read.MaxJunctionTemperature)}: {Text(read.BaseEmitterVoltage)} falls by {Text(read.BaseEmitterDrift * (read.MaxJunctionTemperature - read.ReferenceTemperature))} on the way (was {Text(read.BaseEmitterDrift)}). About 2 mV/K is usual.");
    }

    private static void Gains(Transistor read, JsonPart card)
    {
        var items = card["h_FE"].Items;
        for (var i = 0; i < items.Count; i++)
        {
            if (read.GainTable[i].Current > read.MaxPeakCollectorCurrent)
                throw items[i]["I_C"].Fault($"must be at most I_CM, {Text(read.MaxPeakCollectorCurrent)} (was {Text(read.GainTable[i].Current)}).");
            if (!(read.GainTable[i].Gain >= 1))
                throw items[i]["h_FE"].Fault($"must be 1 or more (was {Text(read.GainTable[i].Gain)}): below, it amplifies no current.");
        }
    }

    private static void Corners(Transistor read, SafeAreaLine line, IReadOnlyList<JsonPart> places)
    {
        var most = line.Pulse is null ? read.MaxCollectorCurrent : read.MaxPeakCollectorCurrent;
        for (var i = 0; i < places.Count; i++)
        {
            var (voltage, current) = line.Points[i];
            if (voltage > read.MaxCollectorEmitterVoltage)
                throw places[i]["V_CE"].Fault($"must be at most V_CEO, {Text(read.MaxCollectorEmitterVoltage)} (was {Text(voltage)}).");
            if (current > most)
                throw places[i]["I_C"].Fault($"must be at most {(line.Pulse is null ? "I_C" : "I_CM")}, {Text(most)} (was {Text(current)}).");
            var power = voltage.Volts * current.Amperes;
            if (line.Pulse is null && power > (double)read.MaxPowerDissipation.Watts * (1 + SafeAreaLine.ReadingTolerance))
                throw places[i].Fault($"a corner of the dc line must not pass P, {Text(read.MaxPowerDissipation)}, by more than {SafeAreaLine.ReadingTolerance:0%} ({Text(voltage)} × {Text(current)} is {Text(Power.FromWatts(power))}). Look for a misread corner or rating.");
        }
    }

    // Both lines are straight between their corners on log-log paper: where the shorter pulse is nowhere below at a corner of either, it is nowhere below.
    private static void Order(SafeAreaLine longer, SafeAreaLine shorter, JsonPart place)
    {
        double[] volts = [.. longer.Points.Concat(shorter.Points).Select(p => p.Voltage.Volts)];
        var to = Math.Min(longer.Points[^1].Voltage.Volts, shorter.Points[^1].Voltage.Volts);
        foreach (var v in volts.Where(v => v <= to))
        {
            double below = Current(shorter, v), above = Current(longer, v);
            if (below < above * (1 - SafeAreaLine.ReadingTolerance))
                throw place.Fault($"a line must not lie below that of a longer pulse: at {Text(ElectricPotential.FromVolts(v))} {Text(ElectricCurrent.FromAmperes(below))} for {Text(shorter.Pulse!.Value)}, and {Text(ElectricCurrent.FromAmperes(above))} for {(longer.Pulse is { } t ? Text(t) : "dc")}. Look for a misread corner, or for lines that changed places.");
        }
    }

    // Below its first corner a line is cut off at that corner's current.
    private static double Current(SafeAreaLine line, double volts) => volts <= line.Points[0].Voltage.Volts ? line.Points[0].Current.Amperes : Math.Exp(Interpolation.Linear(
        [.. line.Points.Select(p => Math.Log(p.Voltage.Volts))], [.. line.Points.Select(p => Math.Log(p.Current.Amperes))], Math.Log(volts)));

    private static string Text(object value) => QuantityFormat.Short(value);
}
