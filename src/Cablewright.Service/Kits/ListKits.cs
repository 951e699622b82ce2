using System.Globalization;
using Cablewright.Contract;
using Cablewright.Contract.Kits;
using Cablewright.Contract.Schema;
using Cablewright.Service.Answers;
using Cablewright.Service.Documents;
using Cablewright.Service.Json;
using Cablewright.Service.Problems;
using Cablewright.Service.Queries;
using Cablewright.Storage.Keys;
using Cablewright.Storage.Kits;

namespace Cablewright.Service.Kits;

/// <summary>
/// <c>GET /v1/shops/{shop}/kits</c>: a page at a time. The cursor names the last kit shown, so that kits which come and go
/// between two pages neither repeat nor hide another.
/// </summary>
internal static class ListKits
{
    private const string Limit = "limit";
    private const string After = "after";
    private const int UsualLimit = 50;

    private static readonly string[] Names = [Limit, After];

    public static Operation Operation => new(
        "listKits", Tag.Kits, "List a shop's kits",
        "Kits in brief, sorted by number, a page at a time: next of one page is after of the following one. The answer names the "
        + "revision of the catalogue that it shows. Kits that cannot be read are left out, and their numbers told.")
    {
        Scope = KeyScopes.KitsRead,
        Path = [KitAddress.Shop],
        Query =
        [
            QueryParameter.Plain<Page>(Limit, nameof(Page.Limit), $"Most kits on the page; {UsualLimit} where left out."),
            QueryParameter.Plain<Page>(After, nameof(Page.After), "Where the page starts: next of the page before."),
        ],
        Problems = [ProblemKinds.NotFound],
    };

    public static void Map(IEndpointRouteBuilder routes) =>
        routes.MapGet(KitAddress.OfAll, Answer).DescribedAs<KitPage>(Operation);

    private static IResult Answer(string shop, HttpContext context, ShopKits kits)
    {
        (IReadOnlyDictionary<string, string> values, List<Fault> faults) = QueryText.Read(context.Request.QueryString, Names);
        int limit = ReadLimit(values, faults);
        string? after = ReadCursor(values, faults);
        if (faults.Count > 0) return FaultyRequest.Answer(ProblemKinds.NotUnderstood, faults);

        KitPage page = PageOf(CatalogueState.Name(context), shop, limit, after, kits);
        return new JsonAnswer(AnswerJson.Write(page, AnswerJson.Shapes.KitPage), null, Caching.Private);
    }

    private static KitPage PageOf(Catalogue catalogue, string shop, int limit, string? after, ShopKits kits)
    {
        StoredKit[] found =
        [
            .. catalogue.KitsOf(shop).Values
                .SkipWhile(kit => after is not null && string.CompareOrdinal(kit.Sku, after) <= 0)
                .Take(limit + 1),
        ];
        var shown = found.Take(limit).Select(kept => (Kept: kept, Kit: kits.Read(kept))).ToArray();
        return new KitPage
        {
            Revision = catalogue.Revision,
            Kits = [.. shown.Where(one => one.Kit is not null).Select(one => Entry(one.Kept, one.Kit!))],
            Unreadable = [.. shown.Where(one => one.Kit is null).Select(one => one.Kept.Sku)],
            Next = found.Length > limit ? Cursor.Behind(found[limit - 1].Sku) : null,
        };
    }

    private static KitEntry Entry(StoredKit kept, Engine.Kits.Kit kit) => new()
    {
        Sku = kept.Sku,
        Name = kit.Name,
        Price = kit.Price,
        Currency = kit.Currency,
        Etag = $"\"{kept.Tag}\"",
    };

    private static int ReadLimit(IReadOnlyDictionary<string, string> values, List<Fault> faults)
    {
        if (!values.TryGetValue(Limit, out string? text)) return UsualLimit;
        bool isRight = int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int limit)
            && limit is >= 1 and <= ContractLimits.KitsOnPage;
        if (!isRight)
            faults.Add(new Fault(
                "/" + Limit, QueryCodes.Unreadable, "this is no number of kits", Excerpt.Of(text),
                $"1 to {ContractLimits.KitsOnPage}"));
        return limit;
    }

    private static string? ReadCursor(IReadOnlyDictionary<string, string> values, List<Fault> faults)
    {
        if (!values.TryGetValue(After, out string? text)) return null;
        if (Cursor.Read(text) is { } sku) return sku;
        faults.Add(new Fault(
            "/" + After, QueryCodes.Unreadable, "this is no cursor", Excerpt.Of(text), "\"next\" of the page before"));
        return null;
    }

    /// <summary>What the query says of the page.</summary>
    private sealed record Page
    {
        [Figure("1", 50, Smallest = 1, Largest = ContractLimits.KitsOnPage)]
        public int Limit { get; init; }

        [Text(ContractLimits.LongestCursor, "QUstNC0xMDA")]
        public string After { get; init; } = "";
    }
}
