using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Thermal;

/// <summary>The heat that a plate-fin sink loses at a rise, in plain SI numbers.</summary>
/// <param name="Channels">By the channels, W.</param>
/// <param name="Faces">By the outer faces, W.</param>
/// <param name="Radiated">By radiation, W.</param>
/// <param name="Channel">Channel number.</param>
/// <param name="Coefficient">Heat transfer coefficient in the channels, W/(m²·K).</param>
/// <param name="Efficiency">Of the fins.</param>
internal readonly record struct SinkLoss(double Channels, double Faces, double Radiated, double Channel, double Coefficient, double Efficiency)
{
    public const double LeastChannel = 0.1, MostChannel = 1e5;

    public double Total => Channels + Faces + Radiated;

    /// <summary>The loss at a rise; the channel number may be out of range, the film temperature must not.</summary>
    /// <param name="sink">The sink.</param>
    /// <param name="air">Air, °C.</param>
    /// <param name="rise">Base less air, K.</param>
    public static SinkLoss At(PlateFinSink sink, double air, double rise)
    {
        double width = sink.Width.Meters, height = sink.Height.Meters, fin = sink.FinLength.Meters, thickness = sink.Thickness.Meters, space = sink.Spacing.Meters;
        var film = air + (rise / 2);
        var (k, nu, prandtl) = Air.AtCelsius(film);
        var rayleigh = NaturalConvection.Rayleigh(TemperatureDelta.FromKelvins(rise), Temperature.FromKelvins(film + Constants.ZeroCelsius), sink.Height, nu, prandtl);
        var channel = rayleigh * Math.Pow(space / height, 4);
        var h = NaturalConvection.BetweenPlates(Math.Clamp(channel, LeastChannel, MostChannel)) * k.WattsPerMeterKelvin / space;
        var length = fin + (thickness / 2);
        double Efficiency(double coefficient) => Fin.Efficiency(Fin.Reach(HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(coefficient), sink.Thickness, sink.Conductivity, Length.FromMeters(length)));
        var efficiency = Efficiency(h);
        var channels = (sink.Fins - 1) * height * ((2 * length * efficiency) + space) * h * rise;

        var plate = NaturalConvection.VerticalPlate(rayleigh, prandtl) * k.WattsPerMeterKelvin / height;
        var back = sink.BackIsFree ? width * height : 0;
        var faces = ((2 * height * length * Efficiency(plate)) + back) * plate * rise;

        var envelope = (width * height) + (2 * fin * height) + (2 * width * fin) + back;
        var kelvin = air + Constants.ZeroCelsius;
        return new(channels, faces, envelope * Radiation.Flux(sink.Emissivity, kelvin + rise, kelvin), channel, h, efficiency);
    }
}
