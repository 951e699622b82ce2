using Cablewright.Engine.Kits;
using Cablewright.Engine.Rulesets;
using Cablewright.Service.Answers;
using Cablewright.Service.Assessments;
using Cablewright.Service.Json;
using Cablewright.Service.Problems;
using Cablewright.Service.Validation;
using KitCheck = Cablewright.Contract.Kits.KitCheck;

namespace Cablewright.Service.Kits;

/// <summary><c>POST /v1/kit-checks</c>: a build and a kit in, whether the one serves the other out.</summary>
internal static class PostKitCheck
{
    /// <summary>Reads, checks and holds the kit against the build.</summary>
    public static Task<IResult> Answer(HttpRequest request, CancellationToken cancellation) =>
        JsonBody.Answer(request, AnswerJson.Shapes.KitCheck, Answer, cancellation);

    private static IResult Answer(KitCheck asked)
    {
        Engine.Builds.Build build = BuildMapping.ToEngine(asked.Build);
        Fault[] faults =
        [
            .. BuildFaults.Of(asked.Build, build).Select(fault => Below("/build", fault)),
            .. KitValidator.FaultsOf(asked.Kit).Select(fault => Below("/kit", fault)),
        ];
        if (faults.Length > 0) return FaultyRequest.Answer(ProblemKinds.Faulty, faults);
        Ruleset ruleset = RulesetCheck.Named(asked.Build.Ruleset);
        Engine.Kits.KitCheck check = new KitChecker(build, ruleset).Check(KitMapping.ToEngine(asked.Kit));
        return TaggedAnswer.Of(KitAnswerMapping.ToContract(check, ruleset), AnswerJson.Shapes.KitAnswer);
    }

    private static Fault Below(string member, Fault fault) => fault with { Pointer = member + fault.Pointer };
}
