using Cablewright.Contract.Kits;
using Cablewright.Engine.Rulesets;
using Cablewright.Reports.Kits;
using Cablewright.Service.Answers;
using Cablewright.Service.Assessments;
using Cablewright.Service.Computing;
using Cablewright.Service.Json;
using Cablewright.Service.Keys;
using Cablewright.Service.Problems;
using Cablewright.Service.Validation;
using Cablewright.Storage.Keys;
using Cablewright.Storage.Kits;

namespace Cablewright.Service.Kits;

/// <summary><c>POST /v1/kit-checks</c>: a build and a kit in, whether the one serves the other out.</summary>
internal static class PostKitCheck
{
    /// <summary>Reads, checks and holds the kit against the build.</summary>
    public static Task<IResult> Answer(
        HttpContext context, ShopKits kits, Computations computations, CancellationToken cancellation) =>
        JsonBody.Answer(
            context.Request,
            AnswerJson.Shapes.KitCheck,
            asked => computations.Run(context, computation => Answer(asked, context, kits, computation), cancellation),
            cancellation);

    private static IResult Answer(KitCheck asked, HttpContext context, ShopKits kits, Computation computation)
    {
        if (asked.Shop is not null && ApiKeyAuthentication.Refusal(context, asked.Shop, KeyScopes.KitsRead) is { } refusal)
            return new ProblemAnswer(refusal);
        Catalogue? catalogue = asked.Shop is null ? null : KitAnswers.NameState(context);
        StoredKit? kept = asked.Sku is null ? null : catalogue?.KitsOf(asked.Shop!).GetValueOrDefault(asked.Sku);
        Engine.Builds.Build build = BuildMapping.ToEngine(asked.Build);
        Fault[] faults =
        [
            .. BuildFaults.Of(asked.Build, build, computation.HasKey).Select(fault => fault.Below("/build")),
            .. KitCheckValidator.FaultsOf(asked, kept is not null),
        ];
        if (faults.Length > 0) return FaultyRequest.Answer(ProblemKinds.Faulty, faults);

        Engine.Kits.Kit? kit = kept is null ? KitMapping.ToEngine(asked.Kit!) : kits.Read(kept);
        if (kit is null) return new UnreadableKit(kept!);

        Ruleset ruleset = RulesetCheck.Named(asked.Build.Ruleset);
        KitAnswer answer = new KitChecker(build, ruleset, computation.MeterFor(build)).Check(kit, catalogue?.Revision);
        return TaggedAnswer.Of(answer, AnswerJson.Shapes.KitAnswer);
    }
}
