using System.Text.Json.Nodes;

namespace Cablewright.Service.Tests.Support;

/// <summary>Requests to start from.</summary>
public static class Builds
{
    public const string Small = """
        {
          "vehicle": { "chargingVoltage": "13.8 V", "batteries": [ { "id": "starter" } ] },
          "amplifiers": [ { "id": "bass", "ratedOutput": "500 W", "efficiency": "80 %" } ],
          "runs": [
            { "id": "feed", "from": "starter", "to": "bass", "length": "12 ft",
              "conductor": { "size": "4 AWG", "material": "copper" }, "fuse": { "rating": "80 A", "family": "ANL" } },
            { "id": "ground", "from": "bass", "to": "body", "length": "3 ft", "conductor": { "size": "4 AWG" } }
          ]
        }
        """;

    /// <summary>The small build with one change.</summary>
    public static string With(Action<JsonNode> change)
    {
        JsonNode build = JsonNode.Parse(Small)!;
        change(build);
        return build.ToJsonString();
    }
}
