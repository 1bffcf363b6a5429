using System.Reflection;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Tests.Quantities;

/// <summary>Every operator of the algebra and of our own types, found by reflection: right number, right dimension.</summary>
public class OperatorTests
{
    // Powers of volt, ampere, second and kelvin; metre stands for itself.
    private static readonly Dictionary<Type, (double V, double A, double S, double K)> Dimensions = new()
    {
        [typeof(double)] = default,
        [typeof(Gain)] = default,
        [typeof(Ratio)] = default,
        [typeof(int)] = default,
        [typeof(ElectricPotential)] = (1, 0, 0, 0),
        [typeof(ElectricCurrent)] = (0, 1, 0, 0),
        [typeof(ElectricResistance)] = (1, -1, 0, 0),
        [typeof(ElectricConductance)] = (-1, 1, 0, 0),
        [typeof(Power)] = (1, 1, 0, 0),
        [typeof(ElectricApparentPower)] = (1, 1, 0, 0),
        [typeof(ElectricCapacitance)] = (-1, 1, 1, 0),
        [typeof(ElectricInductance)] = (1, -1, 1, 0),
        [typeof(Frequency)] = (0, 0, -1, 0),
        [typeof(Duration)] = (0, 0, 1, 0),
        [typeof(ElectricCharge)] = (0, 1, 1, 0),
        [typeof(Energy)] = (1, 1, 1, 0),
        [typeof(Entropy)] = (1, 1, 1, -1),
        [typeof(HeatCapacity)] = (1, 1, 1, -1),
        [typeof(Temperature)] = (0, 0, 0, 1),
        [typeof(TemperatureDelta)] = (0, 0, 0, 1),
        [typeof(ElectricPotentialChangeRate)] = (1, 0, -1, 0),
        [typeof(ThermalResistance)] = (-1, -1, 0, 1),
        [typeof(VoltageNoiseDensity)] = (1, 0, 0.5, 0),
        [typeof(CurrentNoiseDensity)] = (0, 1, 0.5, 0),
        [typeof(SquaredVoltage)] = (2, 0, 0, 0),
        [typeof(SquaredCurrent)] = (0, 2, 0, 0),
        [typeof(SquaredVoltageDensity)] = (2, 0, 1, 0),
        [typeof(SquaredCurrentDensity)] = (0, 2, 1, 0),
        [typeof(RootFrequency)] = (0, 0, -0.5, 0),
        [typeof(SquaredDuration)] = (0, 0, 2, 0),
        [typeof(SquaredResistance)] = (2, -2, 0, 0),
        [typeof(VoltageResistance)] = (2, -1, 0, 0),
        [typeof(SquaredFrequency)] = (0, 0, -2, 0),
        [typeof(ResistanceRate)] = (1, -1, -1, 0),
        [typeof(ConductanceRate)] = (-1, 1, -1, 0),
        [typeof(JouleIntegral)] = (0, 2, 1, 0),
        [typeof(VoltageDrift)] = (1, 0, 0, -1),
        // Lengths are not counted.
        [typeof(Length)] = (0, 0, 0, 0),
        [typeof(Area)] = (0, 0, 0, 0),
        [typeof(Acceleration)] = (0, 0, -2, 0),
        [typeof(SpecificEnergy)] = (0, 0, -2, 0),
        [typeof(HeatTransferCoefficient)] = (1, 1, 0, -1),
        [typeof(ThermalConductivity)] = (1, 1, 0, -1),
        [typeof(SurfaceThermalResistance)] = (-1, -1, 0, 1),
    };

    private static readonly Type[] Ours = [typeof(Gain), typeof(ThermalResistance), typeof(HeatCapacity), typeof(VoltageNoiseDensity), typeof(CurrentNoiseDensity),
        typeof(SquaredVoltage), typeof(SquaredCurrent), typeof(SquaredVoltageDensity), typeof(SquaredCurrentDensity), typeof(RootFrequency),
        typeof(SquaredDuration), typeof(SquaredResistance), typeof(JouleIntegral), typeof(VoltageResistance), typeof(SquaredFrequency), typeof(ResistanceRate), typeof(ConductanceRate), typeof(VoltageDrift), typeof(SurfaceThermalResistance),
        typeof(DbuLevel), typeof(DbvLevel), typeof(DbwLevel), typeof(DbmLevel), typeof(SoundPressureLevel)];

    public static TheoryData<string> Operators
    {
        get
        {
            var data = new TheoryData<string>();
            foreach (var m in All())
                data.Add(Name(m));
            return data;
        }
    }

    [Fact]
    public void There_are_operators_to_test() => Assert.True(All().Count() > 100, $"only {All().Count()} operators were found");

    [Theory]
    [MemberData(nameof(Operators))]
    public void An_operator_gives_the_number_and_the_dimension_of_its_name(string name)
    {
        var op = All().Single(m => Name(m) == name);
        var types = op.GetParameters().Select(p => p.ParameterType).ToArray();
        double a = 2.5, b = 4;
        if (op.ReturnType == typeof(bool))
        {
            foreach (var (left, right) in new[] { (a, b), (b, a), (a, a) })
                Assert.Equal(Compared(op.Name, left, right), op.Invoke(null, [Make(types[0], left), Make(types[1], right)]));
            return;
        }

        object[] values = types.Length == 1 ? [Make(types[0], a)] : [Make(types[0], a), Make(types[1], b)];
        var result = op.Invoke(null, values)!;

        var expected = op.Name switch { "op_Multiply" => a * b, "op_Division" => a / b, "op_Addition" => a + b, "op_Subtraction" => a - b, "op_UnaryNegation" => -a, _ => double.NaN };
        Assert.Equal(expected, Absolute(result), 1e-12);
        var (x, y) = (Dimensions[types[0]], Dimensions[types[^1]]);
        var sign = op.Name switch { "op_Multiply" => 1, "op_Division" => -1, _ => 0 };
        Assert.Equal((x.V + (sign * y.V), x.A + (sign * y.A), x.S + (sign * y.S), x.K + (sign * y.K)), Dimensions[op.ReturnType]);
        if (sign == 0)
            Assert.Equal(x, y);
    }

    private static IEnumerable<MethodInfo> All() => Ours.Append(typeof(Algebra))
        .SelectMany(t => t.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly))
        .Where(m => m.Name.StartsWith("op_", StringComparison.Ordinal) && m.GetCustomAttribute<ObsoleteAttribute>() is null);

    private static string Name(MethodInfo m) => $"{m.DeclaringType!.Name}.{m.Name}({string.Join(", ", m.GetParameters().Select(p => p.ParameterType.Name))})";

    private static bool Compared(string name, double left, double right) => name switch
    {
        "op_Equality" => left == right,
        "op_Inequality" => left != right,
        "op_LessThan" => left < right,
        "op_LessThanOrEqual" => left <= right,
        "op_GreaterThan" => left > right,
        "op_GreaterThanOrEqual" => left >= right,
        _ => throw new NotSupportedException(name),
    };

    private static object Make(Type type, double number) => type == typeof(Temperature) ? Temperature.FromKelvins(number) : QuantityKinds.Of(type).FromSi(number);

    private static double Absolute(object value) => value is Temperature t ? t.Kelvins : QuantityKinds.Of(value.GetType()).ToSi(value);
}
