using Cablewright.Contract.Assessments;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Reports.Messages;
using Cablewright.Vocabulary;
using Assumption = Cablewright.Contract.Assessments.Assumption;
using Noted = Cablewright.Engine.Completion.Assumption;

namespace Cablewright.Reports.Assessments;

/// <summary>Writes what was assumed.</summary>
internal sealed class AssumptionWriter(UnitSystem units)
{
    /// <summary>The usual vehicle's nominal voltage, as its driver calls it.</summary>
    private const double UsualVolts = 12;

    private readonly Speech speech = new(units);

    /// <summary>Every value that was not stated, in the order of the build.</summary>
    public IReadOnlyList<Assumption> Write(IReadOnlyList<Noted> noted) => [.. noted.Select(Write)];

    /// <summary>What is taken for a member, as it is shown; <c>null</c> where nothing is.</summary>
    public string? ValueAt(Target at, IReadOnlyList<Noted> noted) =>
        at.Member is not Member.Whole && noted.FirstOrDefault(each => each.At == at) is { } taken ? Write(taken).Value : null;

    private Assumption Write(Noted noted)
    {
        string key = "assumption." + Keys.Of(noted.Kind);
        (string name, Params values) = ValuesOf(noted);
        return new Assumption
        {
            Pointer = Pointers.Of(noted.At),
            Value = speech.Knows(key + ".value") ? speech.Text(key + ".value", values) : speech.Value(name, values),
            Reason = speech.Text(key + ".reason", values),
            Params = values,
            Source = SourceOf(noted) ?? speech.Text(key + ".source", []),
        };
    }

    private static string? SourceOf(Noted noted) =>
        noted is AssumedDropLimits drop ? $"{drop.Target.Citation}; {drop.Limit.Citation}" : noted.Basis?.Citation;

    /// <summary>What an assumption's sentences are made of, and the name of the value itself among it.</summary>
    private static (string Name, Params Values) ValuesOf(Noted noted) => noted switch
    {
        AssumedFigure figure => ValuesOf(figure),
        AssumedWord word => One(Pointers.NameOf(word.At.Member), Words.Of(word.Word)),
        AssumedSize size => One("size", size.Size.Label),
        AssumedRoute { Kind: AssumptionKind.Route } route => One("route", route.Route.Word()),
        AssumedRoute route => ("route", new Params { ["route"] = route.Route.Word(), ["bayMetres"] = route.BayMetres }),
        AssumedChargingCurrent current => ("amps", new Params
        {
            ["amps"] = current.Amps,
            ["timesCapacity"] = current.Rate.Value,
            ["ampHours"] = current.AmpHours,
        }),
        AssumedStrap strap => ("ohms", new Params
        {
            ["ohms"] = strap.Resistance.Value,
            ["battery"] = strap.Battery,
            ["batteryNumber"] = strap.Index + 1,
        }),
        AssumedReturn back => ("metres", new Params
        {
            ["run"] = back.Run,
            ["amplifier"] = back.Amplifier,
            ["metres"] = back.Length.Value,
        }),
        AssumedDropLimits drop => ("limitShare", new Params
        {
            ["targetShare"] = drop.Target.Value,
            ["limitShare"] = drop.Limit.Value,
        }),
        _ => One("battery", PlaceNames.AssumedBattery),
    };

    private static (string Name, Params Values) ValuesOf(AssumedFigure figure)
    {
        string name = NameOf(figure);
        Params values = new() { [name] = figure.Value };
        if (figure.Kind is AssumptionKind.ChargingVoltage) values["nominalVolts"] = UsualVolts;
        if (figure.Kind is AssumptionKind.ResistanceFromCapacity) values["ampHours"] = figure.AmpHours;
        if (figure.Most is { } most) values["mostOhms"] = most.Value;
        if (figure.Kind is AssumptionKind.LayFactor) values["layFactor"] = figure.Around;
        return (name, values);
    }

    /// <summary>The name of a figure, which says its unit.</summary>
    private static string NameOf(AssumedFigure figure) => figure.Unit switch
    {
        "1" => figure.Value <= 1 ? "share" : "factor",
        "A" => "amps",
        "Ah" => "ampHours",
        "C" => "celsius",
        "K" => "kelvin",
        "m" => "metres",
        "min" => "minutes",
        "ohm" => "ohms",
        "rpm" => "rpm",
        "V" => "volts",
        _ => throw new ArgumentException($"No name for a figure in {figure.Unit}.", nameof(figure)),
    };

    private static (string Name, Params Values) One(string name, Param value) => (name, new Params { [name] = value });
}
