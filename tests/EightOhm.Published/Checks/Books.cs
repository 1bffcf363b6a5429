using EightOhm.Published.Machine;

namespace EightOhm.Published.Checks;

/// <summary>The books that several checks cite, each seen through its FOSSEE textbook companion unless said otherwise.</summary>
internal static class Books
{
    public const string BoylestadTitle = "R. L. Boylestad & L. Nashelsky, Electronic Devices and Circuit Theory, 11th ed.";

    public static Source Franco(string place) => Source.Companion("S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed.", place);

    public static Source Sedra(string place) => Source.Companion("A. S. Sedra & K. C. Smith, Microelectronic Circuits, 5th ed.", place);

    public static Source Malvino(string place) => Source.Companion("A. Malvino & D. Bates, Electronic Principles, 7th ed.", place);

    public static Source Fiore(string place) => Source.Companion("J. Fiore, Op Amps and Linear Integrated Circuits", place);

    public static Source Boylestad(string place) => Source.Companion(BoylestadTitle, place);

    public static Source Neamen(string place) => Source.Companion("D. A. Neamen, Electronic Circuit Analysis and Design", place);

    public static Source Bird(string place) => Source.Companion("J. O. Bird, Electrical Circuit Theory and Technology", place);

    public static Source Blake(string place) => Source.Companion("R. Blake, Electronic Communication Systems", place);

    public static Source Roddy(string place) => Source.Companion("D. Roddy, Electronic Communication", place);

    public static Source Beasley(string place) => Source.Companion("J. S. Beasley & G. M. Miller, Modern Electronic Communication", place);

    public static Source Cengel(string place) => Source.Companion("Y. A. Çengel, Heat and Mass Transfer", place);

    public static Source Incropera(string place) => Source.Companion("F. P. Incropera & D. P. DeWitt, Fundamentals of Heat and Mass Transfer", place);

    public static Source Holman(string place) => Source.Companion("J. P. Holman, Heat Transfer", place);

    public static Source Lm3876 { get; } = Source.Datasheet("National Semiconductor, LM3876 datasheet", "application section, gain and input sensitivity");

    public static Source Sta540 { get; } = Source.Datasheet("STMicroelectronics, STA540 datasheet, Doc ID 13907 Rev 6", "sec. 5.1, p. 15-16");
}
