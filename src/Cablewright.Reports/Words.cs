using System.Diagnostics;
using Cablewright.Vocabulary;

namespace Cablewright.Reports;

/// <summary>The words of the trade for members of enumerations whose type is known only when they come.</summary>
internal static class Words
{
    public static string Of(Enum value) => value switch
    {
        AmplifierClass word => word.Word(),
        Chemistry word => word.Word(),
        FuseFamilyName word => word.Word(),
        Material word => word.Word(),
        PowerSupply word => word.Word(),
        Programme word => word.Word(),
        Route word => word.Word(),
        _ => throw new UnreachableException($"{value.GetType().Name} has no words."),
    };
}
