using Cablewright.Contract.Builds;
using Cablewright.Service.Documents;
using Cablewright.Service.Json;
using Cablewright.Service.Problems;
using Cablewright.Service.Queries;
using Cablewright.Vocabulary;

namespace Cablewright.Service.Assessments;

/// <summary>Reads the query of the quick call: each parameter known, at most once, the required ones there.</summary>
internal static class QuickQuery
{
    public const string RatedOutput = "ratedOutput";
    public const string Length = "length";
    public const string Size = "size";
    public const string MaterialName = "material";
    public const string ChargingVoltage = "chargingVoltage";
    public const string Efficiency = "efficiency";
    public const string AmplifierClass = "amplifierClass";
    public const string AmplifierFuse = "amplifierFuse";
    public const string FuseRating = "fuse";
    public const string AlternatorCurrent = "alternatorCurrent";
    public const string Programme = "programme";
    public const string Units = "units";

    /// <summary>The parameters, and which member of the build each stands for.</summary>
    public static IReadOnlyList<QueryParameter> Parameters { get; } =
    [
        QueryParameter.Of<Amplifier>(RatedOutput, nameof(Amplifier.RatedOutput), "/amplifiers/0/ratedOutput"),
        QueryParameter.Of<Run>(Length, nameof(Run.Length), "/runs/0/length", isRequired: true),
        QueryParameter.Of<Conductor>(Size, nameof(Conductor.Size), "/runs/0/conductor/size"),
        QueryParameter.Of<Conductor>(MaterialName, nameof(Conductor.Material), "/runs/0/conductor/material"),
        QueryParameter.Of<Vehicle>(ChargingVoltage, nameof(Vehicle.ChargingVoltage), "/vehicle/chargingVoltage"),
        QueryParameter.Of<Amplifier>(Efficiency, nameof(Amplifier.Efficiency), "/amplifiers/0/efficiency"),
        QueryParameter.Of<Amplifier>(AmplifierClass, nameof(Amplifier.AmplifierClass), "/amplifiers/0/amplifierClass"),
        QueryParameter.Of<Amplifier>(AmplifierFuse, nameof(Amplifier.Fuse), "/amplifiers/0/fuse"),
        QueryParameter.Of<Fuse>(FuseRating, nameof(Fuse.Rating), "/runs/0/fuse/rating"),
        QueryParameter.Of<Alternator>(
            AlternatorCurrent, nameof(Alternator.RatedCurrent), "/vehicle/alternator/ratedCurrent"),
        QueryParameter.Of<Amplifier>(Programme, nameof(Amplifier.Programme), "/amplifiers/0/programme"),
        QueryParameter.Of<Build>(Units, nameof(Build.Units), "/units"),
    ];

    private static readonly string[] Names = [.. Parameters.Select(parameter => parameter.Name)];

    /// <summary>The values by name, and what is wrong with the query.</summary>
    public static (IReadOnlyDictionary<string, string> Values, IReadOnlyList<Fault> Faults) Read(QueryString query)
    {
        (Dictionary<string, string> values, List<Fault> faults) = QueryText.Read(query, Names);
        faults.AddRange(
            Parameters.Where(parameter => parameter.IsRequired && !values.ContainsKey(parameter.Name)).Select(Missing));
        if (!values.ContainsKey(RatedOutput) && !values.ContainsKey(AmplifierFuse)) faults.Add(NoAmplifier);
        CheckWord<Material>(MaterialName, values, faults);
        CheckWord<AmplifierClass>(AmplifierClass, values, faults);
        CheckWord<Programme>(Programme, values, faults);
        CheckWord<UnitSystem>(Units, values, faults);
        return (values, faults);
    }

    /// <summary>What the amplifier draws follows from its output, else from its own fuses.</summary>
    private static Fault NoAmplifier => new(
        QueryText.PointerOf(RatedOutput), QueryCodes.Missing, $"\"{RatedOutput}\" or \"{AmplifierFuse}\" must be given");

    private static Fault Missing(QueryParameter parameter) =>
        new(QueryText.PointerOf(parameter.Name), QueryCodes.Missing, $"\"{parameter.Name}\" must be given");

    private static void CheckWord<T>(string name, Dictionary<string, string> values, List<Fault> faults) where T : struct, Enum
    {
        if (!values.TryGetValue(name, out string? word) || TradeWords.TryParse(word, out T _)) return;
        IReadOnlyList<string> words = TradeWords.All<T>();
        faults.Add(new Fault(
            QueryText.PointerOf(name),
            ShapeCodes.UnknownWord,
            $"\"{Excerpt.Of(word)}\" is not one of the words accepted{Nearest.Hint(word, words)}",
            Excerpt.Of(word),
            string.Join(", ", words)));
    }
}
