using Cablewright.Contract.Kits;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Rulesets;
using Cablewright.Reports.Kits;
using Cablewright.Vocabulary;
using static Cablewright.Engine.Tests.SampleBuilds;
using Kit = Cablewright.Engine.Kits.Kit;
using KitPart = Cablewright.Engine.Kits.KitPart;

namespace Cablewright.Engine.Tests.Kits;

/// <summary>A job for a kit, a kit that serves it, and ways to change one part.</summary>
internal static class SampleKits
{
    /// <summary>500 W at 80 % over 5 m from the engine bay: 46 A.</summary>
    public static Build Job(double watts = 500, double metres = 5) => OneAmplifier() with
    {
        Amplifiers = [OneAmplifier().Amplifiers[0] with { RatedOutputWatts = watts }],
        Runs =
        [
            new Run { Id = "main", From = "starter", To = "bass", LengthMetres = metres, Route = Route.Cabin },
            new Run { Id = "return", From = "bass", To = "body", LengthMetres = 0.6, Route = Route.Cabin },
            Run("strap", "body", "starter", 0.4, "1/0 AWG") with { Route = Route.EngineBay, JointOhms = 0.0001 },
        ],
    };

    /// <summary>The same with the battery's cable beside the engine, so that it passes the bulkhead.</summary>
    public static Build JobThroughBulkhead() =>
        Job() with { Runs = [Job().Runs[0] with { Route = Route.EngineBay }, .. Job().Runs.Skip(1)] };

    /// <summary>What a product page knows: the power and the way.</summary>
    public static Build Bare(double watts, double metres = 5) => new()
    {
        Amplifiers = [new Amplifier { Id = "bass", RatedOutputWatts = watts }],
        Runs = [new Run { Id = "main", From = PlaceNames.AssumedBattery, To = "bass", LengthMetres = metres }],
    };

    /// <summary>Everything that the job needs, in 4 AWG copper.</summary>
    public static Kit Full() => new("K4", "Kit of 4 AWG", 80, "EUR",
    [
        Wire(KitPartKind.PowerWire, "4 AWG", 6) with { Colour = "red" },
        Wire(KitPartKind.GroundWire, "4 AWG", 1) with { Colour = "black" },
        new KitPart { Kind = KitPartKind.Fuse, RatingAmps = 80, Family = FuseFamilyName.Anl },
        new KitPart { Kind = KitPartKind.RingTerminal, Count = 2 },
        new KitPart { Kind = KitPartKind.Grommet },
        new KitPart { Kind = KitPartKind.Loom, LengthMetres = 2 },
        new KitPart { Kind = KitPartKind.TurnOnLead, LengthMetres = 5 },
        new KitPart { Kind = KitPartKind.SignalInterconnect, LengthMetres = 5 },
        new KitPart { Kind = KitPartKind.HeatShrink },
        new KitPart { Kind = KitPartKind.Ties },
    ]);

    /// <summary>The same of another size.</summary>
    public static Kit Sized(string size) => Full()
        .With(KitPartKind.PowerWire, wire => wire with { Size = ConductorSize.Of(size) })
        .With(KitPartKind.GroundWire, wire => wire with { Size = ConductorSize.Of(size) });

    public static KitPart Wire(KitPartKind kind, string size, double metres) => new()
    {
        Kind = kind,
        Size = ConductorSize.Of(size),
        Material = Material.Copper,
        LengthMetres = metres,
    };

    /// <summary>The kit with one kind of part changed.</summary>
    public static Kit With(this Kit kit, KitPartKind kind, Func<KitPart, KitPart> change) =>
        kit with { Parts = [.. kit.Parts.Select(part => part.Kind == kind ? change(part) : part)] };

    /// <summary>The kit without one kind of part.</summary>
    public static Kit Without(this Kit kit, KitPartKind kind) =>
        kit with { Parts = [.. kit.Parts.Where(part => part.Kind != kind)] };

    public static KitAnswer Check(this Kit kit, Build build) =>
        new KitChecker(build, RulesetLibrary.Newest, WorkBudgets.MeterFor(build)).Check(kit);

    public static string[] Codes(this KitAnswer check) => [.. check.Findings.Select(finding => finding.Code)];
}
