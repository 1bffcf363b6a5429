using UnitsNet;

namespace EightOhm.Quantities;

/// <summary>Numbers with units in the trade's own symbols: <c>100.W</c>, <c>8.Ohm</c>, <c>4.7.kOhm</c>, <c>3.3.nV_rtHz</c>.</summary>
/// <remarks>Values are kept in the SI unit, by one rounded operation, so that 1.kV and 1000.V are the same value.
/// Inside an expression tree the compiler refuses extension properties (CS9296); write <c>Literals.get_W(100)</c> there, or, in a notebook,
/// write the literal: the kernel extension does that for you.</remarks>
// On whole numbers the build writes the same: Alike.targets.
public static partial class Literals
{
    extension(double x)
    {
        /// <summary>So many kilovolts.</summary>
        public ElectricPotential kV => ElectricPotential.FromVolts(x * 1e3);

        /// <summary>So many volts.</summary>
        public ElectricPotential V => ElectricPotential.FromVolts(x);

        /// <summary>So many millivolts.</summary>
        public ElectricPotential mV => ElectricPotential.FromVolts(x / 1e3);

        /// <summary>So many microvolts.</summary>
        public ElectricPotential uV => ElectricPotential.FromVolts(x / 1e6);

        /// <summary>So many nanovolts.</summary>
        public ElectricPotential nV => ElectricPotential.FromVolts(x / 1e9);

        /// <summary>So many amperes.</summary>
        public ElectricCurrent A => ElectricCurrent.FromAmperes(x);

        /// <summary>So many milliamperes.</summary>
        public ElectricCurrent mA => ElectricCurrent.FromAmperes(x / 1e3);

        /// <summary>So many microamperes.</summary>
        public ElectricCurrent uA => ElectricCurrent.FromAmperes(x / 1e6);

        /// <summary>So many nanoamperes.</summary>
        public ElectricCurrent nA => ElectricCurrent.FromAmperes(x / 1e9);

        /// <summary>So many picoamperes.</summary>
        public ElectricCurrent pA => ElectricCurrent.FromAmperes(x / 1e12);

        /// <summary>So many femtoamperes.</summary>
        public ElectricCurrent fA => ElectricCurrent.FromAmperes(x / 1e15);

        /// <summary>So many milliohms.</summary>
        public ElectricResistance mOhm => ElectricResistance.FromOhms(x / 1e3);

        /// <summary>So many milliohms.</summary>
        public ElectricResistance mΩ => ElectricResistance.FromOhms(x / 1e3);

        /// <summary>So many ohms.</summary>
        public ElectricResistance Ohm => ElectricResistance.FromOhms(x);

        /// <summary>So many ohms.</summary>
        public ElectricResistance Ω => ElectricResistance.FromOhms(x);

        /// <summary>So many kilohms.</summary>
        public ElectricResistance kOhm => ElectricResistance.FromOhms(x * 1e3);

        /// <summary>So many kilohms.</summary>
        public ElectricResistance kΩ => ElectricResistance.FromOhms(x * 1e3);

        /// <summary>So many megohms.</summary>
        public ElectricResistance MOhm => ElectricResistance.FromOhms(x * 1e6);

        /// <summary>So many megohms.</summary>
        public ElectricResistance MΩ => ElectricResistance.FromOhms(x * 1e6);

        /// <summary>So many watts.</summary>
        public Power W => Power.FromWatts(x);

        /// <summary>So many microwatts.</summary>
        public Power uW => Power.FromWatts(x / 1e6);

        /// <summary>So many milliwatts.</summary>
        public Power mW => Power.FromWatts(x / 1e3);

        /// <summary>So many kilowatts.</summary>
        public Power kW => Power.FromWatts(x * 1e3);

        /// <summary>So many volt-amperes: a transformer's rating.</summary>
        public ElectricApparentPower VA => ElectricApparentPower.FromVoltamperes(x);

        /// <summary>So many millifarads.</summary>
        public ElectricCapacitance mF => ElectricCapacitance.FromFarads(x / 1e3);

        /// <summary>So many microfarads.</summary>
        public ElectricCapacitance uF => ElectricCapacitance.FromFarads(x / 1e6);

        /// <summary>So many nanofarads.</summary>
        public ElectricCapacitance nF => ElectricCapacitance.FromFarads(x / 1e9);

        /// <summary>So many picofarads.</summary>
        public ElectricCapacitance pF => ElectricCapacitance.FromFarads(x / 1e12);

        /// <summary>So many henries.</summary>
        public ElectricInductance H => ElectricInductance.FromHenries(x);

        /// <summary>So many millihenries.</summary>
        public ElectricInductance mH => ElectricInductance.FromHenries(x / 1e3);

        /// <summary>So many microhenries.</summary>
        public ElectricInductance uH => ElectricInductance.FromHenries(x / 1e6);

        /// <summary>So many nanohenries.</summary>
        public ElectricInductance nH => ElectricInductance.FromHenries(x / 1e9);

        /// <summary>So many picohenries.</summary>
        public ElectricInductance pH => ElectricInductance.FromHenries(x / 1e12);

        /// <summary>So many hertz.</summary>
        public Frequency Hz => Frequency.FromHertz(x);

        /// <summary>So many kilohertz.</summary>
        public Frequency kHz => Frequency.FromHertz(x * 1e3);

        /// <summary>So many megahertz.</summary>
        public Frequency MHz => Frequency.FromHertz(x * 1e6);

        /// <summary>So many gigahertz.</summary>
        public Frequency GHz => Frequency.FromHertz(x * 1e9);

        /// <summary>So many seconds.</summary>
        public Duration s => Duration.FromSeconds(x);

        /// <summary>So many hours.</summary>
        public Duration h => Duration.FromHours(x);

        /// <summary>So many milliseconds.</summary>
        public Duration ms => Duration.FromSeconds(x / 1e3);

        /// <summary>So many microseconds.</summary>
        public Duration us => Duration.FromSeconds(x / 1e6);

        /// <summary>So many nanoseconds.</summary>
        public Duration ns => Duration.FromSeconds(x / 1e9);

        /// <summary>So many siemens.</summary>
        public ElectricConductance S => ElectricConductance.FromSiemens(x);

        /// <summary>So many millisiemens.</summary>
        public ElectricConductance mS => ElectricConductance.FromSiemens(x / 1e3);

        /// <summary>So many microsiemens.</summary>
        public ElectricConductance uS => ElectricConductance.FromSiemens(x / 1e6);

        /// <summary>So many joules.</summary>
        public Energy J => Energy.FromJoules(x);

        /// <summary>So many millijoules.</summary>
        public Energy mJ => Energy.FromJoules(x / 1e3);

        /// <summary>So many joules per kelvin: a heat capacity.</summary>
        public HeatCapacity J_per_K => HeatCapacity.FromSi(x);

        /// <summary>So many microcoulombs.</summary>
        public ElectricCharge uC => ElectricCharge.FromCoulombs(x / 1e6);

        /// <summary>So many metres.</summary>
        public Length m => Length.FromMeters(x);

        /// <summary>So many centimetres.</summary>
        public Length cm => Length.FromMeters(x / 1e2);

        /// <summary>So many millimetres.</summary>
        public Length mm => Length.FromMeters(x / 1e3);

        /// <summary>So many micrometres.</summary>
        public Length um => Length.FromMeters(x / 1e6);

        /// <summary>So many square centimetres.</summary>
        public Area cm2 => Area.FromSquareMeters(x / 1e4);

        /// <summary>So many square millimetres.</summary>
        public Area mm2 => Area.FromSquareMeters(x / 1e6);

        /// <summary>So many degrees of angle.</summary>
        public Angle deg => Angle.FromDegrees(x);

        /// <summary>So many degrees Celsius.</summary>
        public Temperature degC => Temperature.FromKelvins(x + Constants.ZeroCelsius);

        /// <summary>So many kelvins of difference.</summary>
        public TemperatureDelta K => TemperatureDelta.FromKelvins(x);

        /// <summary>So many kelvins per watt.</summary>
        public ThermalResistance K_per_W => ThermalResistance.FromSi(x);

        /// <summary>So many millikelvins per watt.</summary>
        public ThermalResistance mK_per_W => ThermalResistance.FromSi(x / 1e3);

        /// <summary>So many volts per microsecond.</summary>
        public ElectricPotentialChangeRate V_per_us => ElectricPotentialChangeRate.FromVoltsPerSeconds(x * 1e6);

        /// <summary>So many millivolts per kelvin: a temperature coefficient.</summary>
        public VoltageDrift mV_per_K => new(x / 1e3);

        /// <summary>So many microvolts per kelvin.</summary>
        public VoltageDrift uV_per_K => new(x / 1e6);

        /// <summary>So many nanovolts per root hertz.</summary>
        public VoltageNoiseDensity nV_rtHz => VoltageNoiseDensity.FromSi(x / 1e9);

        /// <summary>So many picovolts per root hertz.</summary>
        public VoltageNoiseDensity pV_rtHz => VoltageNoiseDensity.FromSi(x / 1e12);

        /// <summary>So many microvolts per root hertz.</summary>
        public VoltageNoiseDensity uV_rtHz => VoltageNoiseDensity.FromSi(x / 1e6);

        /// <summary>So many picoamperes per root hertz.</summary>
        public CurrentNoiseDensity pA_rtHz => CurrentNoiseDensity.FromSi(x / 1e12);

        /// <summary>So many femtoamperes per root hertz.</summary>
        public CurrentNoiseDensity fA_rtHz => CurrentNoiseDensity.FromSi(x / 1e15);

        /// <summary>So many decibels of voltage gain.</summary>
        public Gain dB => Gain.FromDecibels(x);

        /// <summary>So many a linear gain.</summary>
        public Gain ratio => Gain.FromRatio(x);

        /// <summary>So many percent.</summary>
        public Ratio percent => Ratio.FromDecimalFractions(x / 1e2);

        /// <summary>So many parts per million.</summary>
        public Ratio ppm => Ratio.FromDecimalFractions(x / 1e6);

        /// <summary>So many pascals of sound pressure.</summary>
        public Pressure Pa => Pressure.FromPascals(x);

        /// <summary>So many millipascals.</summary>
        public Pressure mPa => Pressure.FromPascals(x / 1e3);

        /// <summary>So many micropascals.</summary>
        public Pressure uPa => Pressure.FromPascals(x / 1e6);

        /// <summary>A level of so many decibels over √0.6 V, rms.</summary>
        public DbuLevel dBu => new(x);

        /// <summary>A level of so many decibels over 1 V, rms.</summary>
        public DbvLevel dBV => new(x);

        /// <summary>A level of so many decibels over 1 W.</summary>
        public DbwLevel dBW => new(x);

        /// <summary>A level of so many decibels over 1 mW.</summary>
        public DbmLevel dBm => new(x);

        /// <summary>A sound pressure level of so many decibels over 20 µPa, rms.</summary>
        public SoundPressureLevel dB_SPL => new(x);
    }
}
