using System.Reflection;
using System.Text.Json;
using Cablewright.Contract.Assessments;
using Cablewright.Contract.Quantities;
using Cablewright.Engine.Builds;
using Cablewright.Vocabulary;

namespace Cablewright.Reports.Questions;

/// <summary>What may be answered at a place of a build, as the contract's own members say.</summary>
internal static class ExpectedAnswers
{
    /// <summary>The answers at a place.</summary>
    /// <param name="at">The place.</param>
    /// <param name="assumed">What is taken there now, if anything.</param>
    public static ExpectedAnswer At(Target at, string? assumed)
    {
        PropertyInfo? member = at.Member is Member.Whole
            ? null
            : ShapeOf(at.Part).GetProperty(
                Pointers.NameOf(at.Member), BindingFlags.Public | BindingFlags.Instance | BindingFlags.IgnoreCase)!;
        if (member?.GetCustomAttribute<QuantityAttribute>() is { } quantity)
        {
            return new ExpectedAnswer
            {
                Kind = AnswerKind.Quantity,
                Smallest = quantity.Smallest,
                Largest = quantity.Largest,
                Example = quantity.Example,
                Assumed = assumed,
            };
        }

        return member is not null && Nullable.GetUnderlyingType(member.PropertyType) is { IsEnum: true } words
            ? new ExpectedAnswer { Kind = AnswerKind.Word, Choices = WordsOf(words), Assumed = assumed }
            : new ExpectedAnswer { Kind = AnswerKind.Part, Assumed = assumed };
    }

    private static Type ShapeOf(Part part) => part switch
    {
        Part.Amplifier => typeof(Contract.Builds.Amplifier),
        Part.Alternator => typeof(Contract.Builds.Alternator),
        Part.Conductor => typeof(Contract.Builds.Conductor),
        Part.Fuse or Part.FarFuse => typeof(Contract.Builds.Fuse),
        Part.Run => typeof(Contract.Builds.Run),
        Part.Vehicle => typeof(Contract.Builds.Vehicle),
        _ => throw new ArgumentOutOfRangeException(nameof(part), part, "No question is asked of it."),
    };

    private static string[] WordsOf(Type words) =>
        [.. Enum.GetValues(words).Cast<object>().Select(word => JsonSerializer.SerializeToElement(word, words).GetString()!)];
}
