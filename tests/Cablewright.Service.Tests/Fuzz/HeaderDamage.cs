namespace Cablewright.Service.Tests.Fuzz;

/// <summary>Headers, methods and addresses that few callers send.</summary>
internal static class HeaderDamage
{
    private static readonly (string Name, string[] Values)[] Odd =
    [
        ("Content-Encoding", ["gzip", "br", "identity", "gzip, gzip", "x", ""]),
        ("Content-Length", ["0", "1", "5", "99999999999999999999", "-1", "abc", "1000000"]),
        ("Content-Language", ["en", "\u00e9"]),
        ("Content-Disposition", ["attachment; filename=\"\u00e9", "form-data; name*=utf-8''%ff"]),
        ("Accept", [
            "*/*", "application/json;q=2", "application/json;q=-1", "*/*;q=", "q=1", ";;;", ",", ", ,",
            "application/*;q=0.0000001", "text/html;q=NaN", "application/json;q=0, */*;q=0", "application/x-ndjson",
            "text/plain", "application/problem+json", "application/json;q=0.1,application/x-ndjson;q=0.9",
            "application/json;charset=utf-16", "\u00e9", "*", "/", "a/b/c", "application/json;q=1;q=0"]),
        ("Accept-Encoding", ["gzip;q=x", "*;q=0", "\u00e9"]),
        ("Accept-Language", ["de;q=9", "**"]),
        ("If-None-Match", ["*", "\"", "\"\"", "W/\"a", "\"a\",\"b", "\"a\" \"b\"", "W/", "a", ",", "\"\u00e9\"", "*, \"a\""]),
        ("If-Match", ["*", "\"", "\"0\"", "W/\"1\"", "\"1\",\"2\"", "1", "\"999999999999999999999\""]),
        ("If-Modified-Since", ["yesterday", "Thu, 01 Jan 1970 00:00:00 GMT"]),
        ("Range", ["bytes=0-1", "bytes=-", "x=1"]),
        ("traceparent", ["00-0-0-0", "00-ffffffffffffffffffffffffffffffff-ffffffffffffffff-01", "\u00e9", "", "--"]),
        ("tracestate", ["=", "a=b,,c", "\u00e9"]),
        ("baggage", ["=", "a=%ff"]),
        ("X-Correlation-Id", ["", "a b", "\u00e9", "<script>", "0f8fad5bd9cb469fa16570867728950e", "\t"]),
        ("X-Forwarded-For", ["::1", "1.2.3.4:99999", "[", "unknown,,", "fe80::1%eth0", "256.1.1.1", "\u00e9", "1.2.3.4, ::"]),
        ("X-Forwarded-Proto", ["https", "javascript", ","]),
        ("X-Forwarded-Host", ["a b", "[::1", ""]),
        ("Forwarded", ["for=", "for=\"[::1\"", ";;"]),
        ("Origin", ["null", "http://", "javascript:1", "file:///", "\u00e9", "https://shop.example", "https://a b", ""]),
        ("Access-Control-Request-Method", ["POST", "FOO BAR", ""]),
        ("Access-Control-Request-Headers", ["content-type", "\u00e9,,", "*"]),
        ("Authorization", ["Bearer", "Bearer ", "bearer x", "Basic eA==", "Bearer \u00e9", "Bearer a b", "Bearer cw_x", ""]),
        ("Cookie", ["a=b; c", "=;=;"]),
        ("Expect", ["200-ok"]),
        ("X-HTTP-Method-Override", ["DELETE", "\u00e9"]),
        ("Prefer", ["return=minimal", ";"]),
    ];

    private static readonly string[] ContentTypes =
    [
        "", "application/json; charset=utf-8", "application/json;charset=utf-16", "application/json; charset=\"",
        "APPLICATION/JSON", "application/json;;;", "application/json; =", "application/json; a=b; a=c", "text/json", "*/*", "/",
        ";", "application/json, text/plain", "application/problem+json", "application/x-ndjson", "application/jsonl",
        "text/plain", "application/x-ndjson; charset=latin1", "multipart/form-data", "application/x-www-form-urlencoded",
        "application/json\u00e9", "json", "application/",
    ];

    private static readonly string[] Methods = ["GET", "HEAD", "POST", "PUT", "DELETE", "PATCH", "OPTIONS", "TRACE", "FOO"];

    private static readonly string[] Additions =
    [
        "?", "/", "?a=b", "?record=maybe", "&record=true", "?limit=-1", "?limit=99999999999", "&limit=5&limit=6", "?after=%00",
        "?after=%ff", "&after=AAAA", "?%", "?=", "?%zz=1", "&length=%ED%A0%80", "&units=%F0%9F%9A%97", "%2e%2e", "//",
        "%2f", "/..", ";a", "&&&", "&size=", "&length=1%20ft&length=2%20ft", "?ratedOutput=1%20W&length=1e3%20m",
        "&efficiency=%25", "&chargingVoltage=1e9%20V", "&programme=SINE",
    ];

    /// <summary>Adds, changes or takes away a few things around the body.</summary>
    public static void Apply(FuzzRequest request, Dice dice)
    {
        for (int count = dice.Between(1, 3); count > 0; count--) ApplyOne(request, dice);
    }

    private static void ApplyOne(FuzzRequest request, Dice dice)
    {
        switch (dice.Weighted(12, 4, 1, 3, 1))
        {
            case 0:
                (string name, string[] values) = dice.OneOf(Odd);
                request.Headers.Add((name, dice.Chance(0.03) ? new string('x', 5_000) : dice.OneOf(values)));
                break;
            case 1: request.ContentType = dice.OneOf(ContentTypes); break;
            case 2: request.Method = dice.OneOf(Methods); break;
            case 3: request.Address += dice.OneOf(Additions); break;
            default: request.Headers.RemoveAll(header => header.Name == "Authorization"); break;
        }
    }
}
