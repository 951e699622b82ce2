namespace Cablewright.Service.Documents;

/// <summary>A part of a path that a caller fills in.</summary>
/// <param name="Name">Its name in the route.</param>
/// <param name="Description">What it is.</param>
/// <param name="Example">A right value.</param>
internal sealed record PathParameter(string Name, string Description, string Example)
{
    public const string ShopName = "shop";

    public static readonly PathParameter Shop = new(ShopName, "The shop's id; the key must be one of its keys.", "demo");

    public static readonly PathParameter Sku = new("sku", "The shop's number for the kit.", "AK-150");

    public static readonly PathParameter Record = new(
        "id", "The id of a recorded assessment.", "asm_2c26b46b68ffc68ff99b453c1d30413413422d706483bfa0f98a5e886266e7ae");

    public static readonly PathParameter Ruleset = new(
        "id", "The id of a ruleset, as GET /v1/rulesets lists it.", Engine.Rulesets.RulesetLibrary.Newest.Id);
}
