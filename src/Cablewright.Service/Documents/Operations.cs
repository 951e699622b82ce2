using System.Text.Json;
using Cablewright.Contract;
using Cablewright.Contract.Audits;
using Cablewright.Contract.Builds;
using Cablewright.Contract.Comparisons;
using Cablewright.Contract.Kits;
using Cablewright.Service.Answers;
using Cablewright.Service.Assessments;
using Cablewright.Service.Audits;
using Cablewright.Service.Json;
using Cablewright.Service.Kits;
using Cablewright.Service.Problems;
using Cablewright.Service.Records;
using Cablewright.Storage.Keys;

namespace Cablewright.Service.Documents;

/// <summary>The operations of the contract.</summary>
internal static class Operations
{
    private const string Assessments = "assessments";
    private const string Audits = "audits";
    private const string Reference = "reference";
    private const string Rulesets = "rulesets";
    private const string Kits = "kits";

    /// <summary>What is asked of every instance, at any rate.</summary>
    public const string Health = "health";

    /// <summary>The tags, with what stands under them.</summary>
    public static IReadOnlyList<(string Name, string Description)> Tags { get; } =
    [
        (Assessments, "A build in, an assessment with its reasons out."),
        (Audits, "Measurements of a cable in, what it truly is out."),
        (Reference, "The tables behind the answers, each figure with its source."),
        (Rulesets, "The limits that verdicts rest on, versioned and never changed once published."),
        (Kits, "Wiring kits: held against builds, and kept for a shop."),
        (Health, "How the service is."),
    ];

    public static readonly Operation Assess = new(
        "assessBuild", Assessments, "Assess a build",
        "Checks every conductor and fuse that is given and chooses every one that is left out. A failing build is answered with "
        + "200: the question was answered. Quantities are text with a unit; "
        + "an answer's numbers carry their unit in the member's name. "
        + "The same build, ruleset and release always give the same bytes. All faults of a request are listed at once. "
        + "With record=true and a shop's key that may write records the answer, and the build with it, is kept unchanged until "
        + "the shop deletes it: 201 where it is new, 200 where the shop has it already. A shop may have so many records, of so "
        + "many bytes together; beyond that 409 says how many.")
    {
        Computes = true,
        Statuses = [StatusCodes.Status200OK, StatusCodes.Status201Created],
        Scope = KeyScopes.RecordsWrite,
        IsKeyOptional = true,
        Query =
        [
            QueryParameter.Plain<AnswerQuery>(
                RecordAnswers.Record, nameof(AnswerQuery.Record), "Whether to keep the assessment; not where left out."),
        ],
        Body = typeof(Build),
        Example = () => JsonSerializer.SerializeToNode(QuickBuild.Example, AnswerJson.Shapes.Build),
        Problems = [ProblemKinds.TimedOut, ProblemKinds.TooLarge,
            ProblemKinds.UnsupportedMediaType, ProblemKinds.FaultyBuild, ProblemKinds.RecordsFull],
    };

    public static readonly Operation Compare = new(
        "compareBuilds", Assessments, "Put builds side by side",
        "Assesses two to six builds and says where they differ, run by run and amplifier by amplifier, matched by id. What a "
        + "build could `include` by itself has no place here and is refused.")
    {
        Computes = true,
        Body = typeof(ComparisonRequest),
        Example = () => JsonSerializer.SerializeToNode(
            new ComparisonRequest { Builds = [QuickBuild.Example, QuickBuild.Example with { Name = "another" }] },
            AnswerJson.Shapes.ComparisonRequest),
        Problems = [ProblemKinds.TimedOut, ProblemKinds.TooLarge,
            ProblemKinds.UnsupportedMediaType, ProblemKinds.FaultyBuild],
    };

    public static readonly Operation AssessBatch = new(
        "assessBatch", Assessments, "Assess many builds",
        "Each build is answered as it would be by itself, with the status that it would get; a bad one fails alone. Answers come "
        + "in the order of the builds and are sent as soon as they are known. An array of builds "
        + $"(at most {ContractLimits.BatchBuilds}, {ContractLimits.BatchBytes / 1024 / 1024} MB) is read whole before the first "
        + $"answer. Lines of builds (`{JsonMediaType.Lines}`, at most {ContractLimits.BodyBytes / 1024} KB a line, any number of "
        + "lines, blank ones left out) are read as they come and no faster than they are answered: read answers "
        + "while you still send, or, where a client cannot, send arrays. Give up the connection and the work stops. "
        + "A build that the service has no place for yet waits; one that takes too long is answered with 503 by itself. "
        + "The answer has the form of the request, unless `Accept` prefers the other. Pointers and columns count from the start "
        + "of the build.")
    {
        Computes = true,
        Body = typeof(IReadOnlyList<Build>),
        IsBatch = true,
        Example = () => JsonSerializer.SerializeToNode(QuickBuild.Example, AnswerJson.Shapes.Build),
        Problems = [ProblemKinds.TimedOut, ProblemKinds.TooLarge, ProblemKinds.UnsupportedMediaType],
    };

    public static readonly Operation AssessQuick = new(
        "assessQuick", Assessments, "Assess one amplifier at one distance",
        "The same computation for one amplifier, fed from one battery over one run. The answer also carries the full build "
        + "that it stood for, ready to edit and post.")
    {
        Computes = true,
        IsCacheable = true,
        Query = QuickQuery.Parameters,
        Problems = [ProblemKinds.FaultyBuild],
    };

    /// <summary>The bench audit of a cable.</summary>
    public static readonly Operation AuditConductor = new(
        "auditConductor", Audits, "Find a cable's true size and metal",
        "From strands, resistance or mass, each with how far off it may be: area and gauge with their bounds, the metals that "
        + "the measurements allow, the shortfall against the label, and what the cable is truly rated for. "
        + "A verdict is given only "
        + "where the whole interval supports it.")
    {
        Body = typeof(BenchReport),
        Example = AuditExample.Json,
        Problems = [ProblemKinds.TimedOut, ProblemKinds.TooLarge,
            ProblemKinds.UnsupportedMediaType, ProblemKinds.Faulty],
    };

    /// <summary>A kit against a build.</summary>
    public static readonly Operation CheckKit = new(
        "checkKit", Kits, "Check a kit against a build",
        "What the job needs against what the kit holds. The kit's cables and fuses are tried in the build by the full "
        + "assessment: a cable is too thin where the build fails with it. Each part that is missing, short, thin or wrongly "
        + "fused is a finding with its remedy. The kit stands in the request, or is one that a shop keeps here, which its key "
        + "must be sent for.")
    {
        Computes = true,
        Scope = KeyScopes.KitsRead,
        IsKeyOptional = true,
        Body = typeof(KitCheck),
        Example = ExampleKit.CheckJson,
        Problems = [ProblemKinds.NotFound, ProblemKinds.TimedOut, ProblemKinds.TooLarge,
            ProblemKinds.UnsupportedMediaType, ProblemKinds.Faulty, ProblemKinds.KitUnreadable],
    };

    public static readonly Operation MatchKits = new(
        "matchKits", Kits, "Find which of a shop's kits serve a build",
        "Every kit of the shop held against the build: those that serve first, the cheapest of them before the others, and what "
        + "each of the others lacks. Kits that cannot be read are left out, and their numbers told.")
    {
        Computes = true,
        Scope = KeyScopes.KitsRead,
        Body = typeof(KitMatchRequest),
        Example = ExampleKit.MatchJson,
        Problems = [ProblemKinds.NotFound, ProblemKinds.TimedOut, ProblemKinds.TooLarge,
            ProblemKinds.UnsupportedMediaType, ProblemKinds.Faulty],
    };

    public static readonly Operation ReadRecord = new(
        "readRecord", Assessments, "Read a recorded assessment",
        "The very bytes that were answered when it was recorded, whatever rulesets and releases came since.")
    {
        IsCacheable = true,
        Scope = KeyScopes.RecordsRead,
        Path = [PathParameter.Record],
        Problems = [ProblemKinds.NotFound, ProblemKinds.RecordUnreadable],
    };

    public static readonly Operation DeleteRecord = new(
        "deleteRecord", Assessments, "Delete a recorded assessment", "Deletes it for good.")
    {
        Statuses = [StatusCodes.Status204NoContent],
        Scope = KeyScopes.RecordsWrite,
        Path = [PathParameter.Record],
        Problems = [ProblemKinds.NotFound],
    };

    public static readonly Operation ListOwnKits = new(
        "listKits", Kits, "List a shop's kits",
        "Kits in brief, sorted by number, a page at a time: next of one page is after of the following one. The answer names the "
        + "revision of the catalogue that it shows. Kits that cannot be read are left out, and their numbers told.")
    {
        Scope = KeyScopes.KitsRead,
        Path = [PathParameter.Shop],
        Query =
        [
            QueryParameter.Plain<AnswerQuery>(
                ListKits.Limit, nameof(AnswerQuery.Limit), $"Most kits on the page; {ListKits.UsualLimit} where left out."),
            QueryParameter.Plain<AnswerQuery>(
                ListKits.After, nameof(AnswerQuery.After), "Where the page starts: next of the page before."),
        ],
        Problems = [ProblemKinds.NotFound],
    };

    public static readonly Operation PutKit = new(
        "putKit", Kits, "Put a kit",
        "Makes a kit (201) or replaces one (200). To replace one, send If-Match with the ETag of the state that you have seen: "
        + "without it 428, with another state's 412. If-None-Match: * makes a kit only where there is none. Putting what is "
        + "there already changes nothing and is answered with 200, whatever If-Match says, so that a write whose answer was lost "
        + "can be repeated as it was. A shop's kits may be so many, of so many bytes together; beyond that 409 says how many.")
    {
        Body = typeof(Kit),
        Example = ExampleKit.Json,
        Statuses = [StatusCodes.Status200OK, StatusCodes.Status201Created],
        IsConditional = true,
        Scope = KeyScopes.KitsWrite,
        Path = [PathParameter.Shop, PathParameter.Sku],
        Problems = [ProblemKinds.NotFound, ProblemKinds.TimedOut, ProblemKinds.CatalogueFull,
            ProblemKinds.ConditionFailed, ProblemKinds.TooLarge, ProblemKinds.UnsupportedMediaType, ProblemKinds.Faulty,
            ProblemKinds.ConditionMissing],
    };

    public static readonly Operation ReadKit = new(
        "readKit", Kits, "Read a kit", "The kit as it was put, with its ETag and the revision of the catalogue.")
    {
        IsCacheable = true,
        Scope = KeyScopes.KitsRead,
        Path = [PathParameter.Shop, PathParameter.Sku],
        Problems = [ProblemKinds.NotFound, ProblemKinds.KitUnreadable],
    };

    public static readonly Operation DeleteKit = new(
        "deleteKit", Kits, "Delete a kit", "Deletes it; with If-Match only if it is in that state.")
    {
        Statuses = [StatusCodes.Status204NoContent],
        IsConditional = true,
        Scope = KeyScopes.KitsWrite,
        Path = [PathParameter.Shop, PathParameter.Sku],
        Problems = [ProblemKinds.NotFound, ProblemKinds.ConditionFailed],
    };

    public static readonly Operation ReadConductors = Table(
        "readConductors", "Read the conductor tables", "Sizes, metals, ampacity, with sources.");

    public static readonly Operation ReadFuses = Table(
        "readFuses", "Read the fuse tables", "Fuse families with their ratings and figures, with sources.");

    /// <summary>The batteries' tables.</summary>
    public static readonly Operation ReadBatteries = Table(
        "readBatteries", "Read the battery tables", "Rest voltages by chemistry and state of charge, with sources.");

    public static readonly Operation ReadSources = Table(
        "readSources", "Read the sources", "Every source, and which figures rest on it.");

    public static readonly Operation ListRulesets = new(
        "listRulesets", Rulesets, "List the rulesets", "All rulesets of this release, the newest first.")
    {
        IsCacheable = true,
    };

    public static readonly Operation ReadRuleset = new(
        "readRuleset", Rulesets, "Read one ruleset",
        "Every limit and default that a verdict rests on, with its source, and every finding code.")
    {
        IsCacheable = true,
        Path = [PathParameter.Ruleset],
        Problems = [ProblemKinds.NotFound],
    };

    public static readonly Operation AskLive = new(
        "askLive", Health, "Ask whether the process answers",
        "Answers as long as the process runs, whatever else it does. It is not logged.");

    public static readonly Operation AskReady = new(
        "askReady", Health, "Ask whether the service computes correctly",
        "Answers 200 if a built-in reference build gave its known answer when the process started, and the catalogue was read "
        + "once. The database is not asked again for it. 503 as soon as the service was told to stop.")
    {
        Problems = [ProblemKinds.NotReady],
    };

    private static Operation Table(string id, string summary, string description) =>
        new(id, Reference, summary, description) { IsCacheable = true };
}
