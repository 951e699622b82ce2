using Cablewright.Contract.Assessments;
using Cablewright.Engine.Changes;
using Cablewright.Reports.Messages;
using Cablewright.Vocabulary;

namespace Cablewright.Reports.Assessments;

/// <summary>Words for what is to be done to a build.</summary>
internal sealed class StepWording(Speech speech)
{
    /// <summary>The steps of a change in one sentence.</summary>
    /// <param name="steps">The steps.</param>
    /// <param name="isNewDesign">Whether they are so many that they are a design of their own.</param>
    public Message Of(IReadOnlyList<Step> steps, bool isNewDesign)
    {
        Message[] each = [.. steps.Select(Of)];
        string clauses = string.Join(speech.Text("change.and", []), each.Select(step => step.Text));
        Params clause = new() { ["steps"] = isNewDesign ? clauses : char.ToUpperInvariant(clauses[0]) + clauses[1..] };
        return new Message(
            speech.Text(isNewDesign ? "change.new-design" : "change.sentence", clause),
            each is [var only] ? only.Params : new Params { ["steps"] = Param.Of(each.Select(step => step.Params)) });
    }

    private Message Of(Step step) => step switch
    {
        Step.OfferSize offered => Say("offer-size", new Params
        {
            ["size"] = offered.Size.Label,
            ["largestNow"] = offered.LargestNow.Label,
        }),
        Step.OfferCopper => Say("offer-copper", []),
        Step.UseConductor use => Say("use-conductor", new Params
        {
            ["run"] = use.Run,
            ["conductor"] = use.Choice.ToString(),
            ["nowConductor"] = use.Now.ToString(),
        }),
        Step.UseMaterial use => Say("use-material", new Params
        {
            ["run"] = use.Run,
            ["material"] = use.Material.InText(),
            ["nowMaterial"] = use.Now.InText(),
        }),
        Step.UseCopperEverywhere => Say("use-copper-everywhere", []),
        Step.LayInParallel lay => Say("lay-in-parallel", new Params
        {
            ["run"] = lay.Run,
            ["count"] = lay.Count,
            ["nowCount"] = lay.Now,
        }),
        Step.UseInsulation use => Say("use-insulation", new Params
        {
            ["run"] = use.Run,
            ["celsius"] = use.Celsius,
            ["nowCelsius"] = use.NowCelsius,
        }),
        Step.UseIsolator use => Say("use-isolator", new Params
        {
            ["run"] = use.Run,
            ["amps"] = use.Rating.Value,
            ["nowAmps"] = use.Now.Value,
        }),
        Step.UseBattery use => Say("use-battery", new Params
        {
            ["battery"] = use.Battery,
            ["ampHours"] = use.Capacity.Value,
            ["nowAmpHours"] = use.NowAmpHours,
        }),
        Step.Shorten shorten => Say("shorten", new Params
        {
            ["run"] = shorten.Run,
            ["metres"] = shorten.Length.Value,
            ["nowMetres"] = shorten.Now.Value,
        }),
        Step.ShortenAll all => Say("shorten-all", new Params { ["percent"] = all.Percent }),
        Step.LimitAmplifier limit => OfPower(limit),
        Step.LimitAll all => Say("limit-all", new Params { ["percent"] = all.Percent }),
        Step.FitFuse fit => OfFuse(fit),
        Step.MoveFuse move => Say("move-fuse", new Params
        {
            ["run"] = move.Run,
            ["metres"] = move.Within.Value,
        }),
        _ => throw new ArgumentOutOfRangeException(nameof(step)),
    };

    /// <summary>A step's sentence; its values say which step it is.</summary>
    private Message Say(string step, Params values) =>
        speech.Say("change." + step, new Params { ["step"] = step.Split('.')[0] }.And(values));

    private Message OfPower(Step.LimitAmplifier limit) => Say("limit-" + Keys.Of(limit.Of), new Params
    {
        ["amplifier"] = limit.Amplifier,
        [limit.Of is PowerFigure.Output ? "watts" : "amps"] = limit.To.Value,
        [limit.Of is PowerFigure.Output ? "nowWatts" : "nowAmps"] = limit.Now.Value,
    });

    private Message OfFuse(Step.FitFuse fit)
    {
        Params values = new()
        {
            ["run"] = fit.Run,
            ["amps"] = fit.Fuse.RatingAmps,
            ["family"] = fit.Fuse.Family.Name.Word(),
            ["place"] = fit.Place,
        };
        if (fit.NowAmps is { } now) values["nowAmps"] = now;
        string each = fit.ForEachConductor ? ".each" : "", instead = fit.NowAmps is null ? "" : ".instead";
        return Say("fit-fuse" + each + instead, values);
    }
}
