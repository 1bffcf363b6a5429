using EightOhm.Devices;

namespace EightOhm.Tests.Devices;

/// <summary>Where a card begins to contradict itself: the last figure that a reading explains is taken, the next is refused. The limits are worked by hand from the other figures of the card.</summary>
public class CardLimitTests
{
    [Theory]
    // The half-sines of 25 A on average peak at 25 A·π/2 = 39.27 A.
    [InlineData("bridge", "\"300 A\"", "\"39.3 A\"", "\"39.2 A\"", "I_FSM: must be at least the peak")]
    [InlineData("bridge", "\"0.6 V\"", "\"0.9 V\"", "\"0.91 V\"", "V_D0: must be at most V_F0")]
    // Their rms is 27.77 A: 2·(0.9 V·25 A + 10 mΩ·(27.77 A)²) = 60.42 W, for which 90 K leave 1.490 K/W, and 5 % for the printing.
    [InlineData("bridge", "\"1.4 K/W\"", "\"1.56 K/W\"", "\"1.57 K/W\"", "theta_JC: must keep the junction at T_J")]
    [InlineData("bridge", "\"10 mΩ\"", "\"14.5 mΩ\"", "\"14.7 mΩ\"", "theta_JC: must keep the junction at T_J")]
    // 1/(2π·200 Hz·10 mF) = 79.6 mΩ.
    [InlineData("reservoir", "\"100 Hz\",\n  \"ESR\": \"25 mΩ\"", "\"200 Hz\",\n  \"ESR\": \"79 mΩ\"", "\"200 Hz\",\n  \"ESR\": \"80 mΩ\"", "ESR: must be at most the reactance")]
    // √(30 K/(8 K/W·25 mΩ)) = 12.25 A.
    [InlineData("reservoir", "\"6 A\"", "\"12.2 A\"", "\"12.3 A\"", "I_ripple: must heat the inside")]
    // 6 %·(230 V)²/800 VA = 3.968 Ω, and 5 %: 4.166 Ω.
    [InlineData("transformer", "\"1.98 Ω\",\n  \"I_inrush\": \"120 A\"", "\"4.16 Ω\",\n  \"I_inrush\": \"80 A\"", "\"4.17 Ω\",\n  \"I_inrush\": \"80 A\"", "R_pri: must be at most")]
    // √2·230 V/1.98 Ω = 164.3 A, and 5 %: 172.5 A; √2·800 VA/230 V = 4.919 A.
    [InlineData("transformer", "\"120 A\"", "\"172 A\"", "\"173 A\"", "I_inrush: must be at most")]
    [InlineData("transformer", "\"120 A\"", "\"4.92 A\"", "\"4.91 A\"", "I_inrush: must be at least")]
    [InlineData("sink", "\"300 mm\"", "\"73 mm\"", "\"72 mm\"", "width: must be more than the 24 fins")]
    // Both sides of the plate and of 24 fins: 150 mm·(2·300 mm + 48·50 mm) = 0.45 m², of which 32 W/(m²·K) leave 69.44 mK/W.
    [InlineData("sink", "\"0.36 K/W\"", "\"69.5 mK/W\"", "\"69.4 mK/W\"", "theta_SA: must be")]
    [InlineData("sink", "\"24\"", "\"2\"", "\"1\"", "fins: must be from 2")]
    [InlineData("sink", "\"24\",\n  \"finLength\": \"50 mm\",\n  \"finThickness\": \"3 mm\"", "\"10000\",\n  \"finLength\": \"50 mm\",\n  \"finThickness\": \"0.02 mm\"", "\"10001\",\n  \"finLength\": \"50 mm\",\n  \"finThickness\": \"0.02 mm\"", "fins: must be from 2 to 10 000")]
    // 250 V·16 A, and 5 %, over 10 A is 420 V; 16 A/1.05 = 15.24 A; 16 A·1.05 = 16.8 A.
    [InlineData("relay", "\"60 V\"", "\"419 V\"", "\"421 V\"", "Were dc and ac exchanged?")]
    [InlineData("relay", "\"I_carry\": \"16 A\"", "\"I_carry\": \"15.3 A\"", "\"I_carry\": \"15.2 A\"", "I_ac: must be at most I_carry")]
    [InlineData("relay", "\"10 A\"", "\"16.7 A\"", "\"16.9 A\"", "I_dc: must be at most I_carry")]
    public void The_last_figure_that_a_reading_explains_is_taken(string card, string from, string at, string beyond, string says) =>
        Holds(File.ReadAllText(Path.Combine(Cards.Design, card + ".json")), from, at, beyond, says);

    [Theory]
    // 125 K over 150 W is 0.8333 K/W, within 5 %.
    [InlineData("\"0.83 K/W\"", "\"0.87 K/W\"", "\"0.88 K/W\"", "theta_JC: must agree")]
    [InlineData("\"0.83 K/W\"", "\"0.80 K/W\"", "\"0.79 K/W\"", "theta_JC: must agree")]
    // A corner may pass 150 W by a tenth, as it is read off a chart: 165 W.
    [InlineData("\"10 V\", \"I_C\": \"15 A\"", "\"10.9 V\", \"I_C\": \"15 A\"", "\"11.1 V\", \"I_C\": \"15 A\"", "a corner of the dc line must not pass P")]
    // Corners of one heat: from 135 W.
    [InlineData("\"50 V\", \"I_C\": \"3.0 A\"", "\"50 V\", \"I_C\": \"2.71 A\"", "\"50 V\", \"I_C\": \"2.69 A\"", "must lie on one heat")]
    // Second breakdown falls faster than the heat of 150 W.
    [InlineData("\"100 V\", \"I_C\": \"0.9 A\"", "\"100 V\", \"I_C\": \"1.49 A\"", "\"100 V\", \"I_C\": \"1.5 A\"", "must fall faster")]
    // A tenth below the dc line's 0.2 A.
    [InlineData("\"200 V\", \"I_C\": \"0.35 A\"", "\"200 V\", \"I_C\": \"0.181 A\"", "\"200 V\", \"I_C\": \"0.179 A\"", "must not lie below that of a longer pulse")]
    // 0.62 V over 125 K is 4.96 mV/K.
    [InlineData("\"2.1 mV/K\"", "\"4.95 mV/K\"", "\"4.97 mV/K\"", "must leave something of V_BE")]
    [InlineData("\"V_BE\": { \"I_C\": \"0.1 A\"", "\"V_BE\": { \"I_C\": \"15 A\"", "\"V_BE\": { \"I_C\": \"15.1 A\"", "V_BE.I_C: must be at most I_CM")]
    [InlineData("\"h_FE\": \"12\"", "\"h_FE\": \"1\"", "\"h_FE\": \"0.99\"", "h_FE: must be 1 or more")]
    public void So_it_is_with_a_transistor_s(string from, string at, string beyond, string says) =>
        Holds(File.ReadAllText(Cards.Output), from, at, beyond, says);

    // 1/(50 %·6 %) is 33.33 times the rated peak.
    [Theory]
    [InlineData("\"33.3\"", "\"33.4\"")]
    [InlineData("\"1\"", "\"0.99\"")]
    public void And_with_the_inrush_of_a_transformer_s_size(string at, string beyond)
    {
        var size = DeviceSet.Shipped.Of<TransformerSize>().First(s => s.Rating.Voltamperes == 800);
        var text = DeviceSet.Shipped.TextOf(size);
        Assert.Contains("\"regulation\": \"6 %\"", text, StringComparison.Ordinal);
        Holds(text, text.Split('\n').First(line => line.Contains("\"inrush\"", StringComparison.Ordinal)).Split(": ")[1], at, beyond, "inrush: must be from 1");
    }

    private static void Holds(string text, string from, string at, string beyond, string says)
    {
        Assert.Contains(from, text, StringComparison.Ordinal);
        Assert.NotNull(DeviceCard.Parse<DeviceCard>(First(text, from, at)));
        Assert.Contains(says, Assert.Throws<CardException>(() => DeviceCard.Parse<DeviceCard>(First(text, from, beyond))).Message, StringComparison.Ordinal);
    }

    private static string First(string text, string from, string to) =>
        text.IndexOf(from, StringComparison.Ordinal) is var at ? text[..at] + to + text[(at + from.Length)..] : text;
}
