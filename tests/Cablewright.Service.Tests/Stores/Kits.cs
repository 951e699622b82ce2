namespace Cablewright.Service.Tests.Stores;

/// <summary>Kits to start from, of shops that do not exist.</summary>
public static class SomeKit
{
    public static string Named(string name) => $$"""
        {
          "name": "{{name}}", "price": 79.9, "currency": "EUR",
          "parts": [
            { "kind": "power-wire", "size": "4 AWG", "material": "copper", "length": "17 ft", "strandCount": 1862 },
            { "kind": "fuse", "rating": "100 A", "family": "ANL" },
            { "kind": "ties", "count": 20 }
          ]
        }
        """;
}
