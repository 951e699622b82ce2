using System.Text;
using Cablewright.Service.Json;
using Cablewright.Service.Problems;

namespace Cablewright.Service.Tests.Json;

/// <summary>The grammar is RFC 8259's.</summary>
public sealed class JsonSyntaxTests
{
    [Theory]
    [InlineData("", ShapeCodes.Empty, "the body is empty; expected JSON")]
    [InlineData(" \r\n\t", ShapeCodes.Empty, "the body is empty; expected JSON")]
    [InlineData(
        "{", ShapeCodes.Malformed,
        "line 1, column 2: expected a member name in double quotes, or '}', found the end of the text")]
    [InlineData(
        "{ lenght: 1 }", ShapeCodes.Malformed, "line 1, column 3: expected a member name in double quotes, or '}', found 'l'")]
    [InlineData(
        "{ 'a': 1 }", ShapeCodes.Malformed, "line 1, column 3: expected a member name in double quotes, or '}', found '''")]
    [InlineData("{ \"a\" 1 }", ShapeCodes.Malformed, "line 1, column 7: expected ':', found '1'")]
    [InlineData("{ \"a\"", ShapeCodes.Malformed, "line 1, column 6: expected ':', found the end of the text")]
    [InlineData(
        "{ \"a\": }", ShapeCodes.Malformed,
        "line 1, column 8: expected a value: an object, an array, text in double quotes, a number, true or false, found '}'")]
    [InlineData("{ \"a\": 1,\n  }", ShapeCodes.Malformed, "line 2, column 3: expected a member name in double quotes, found '}'")]
    [InlineData("{ \"a\": 1\n  \"b\": 2 }", ShapeCodes.Malformed, "line 2, column 3: expected ',' or '}', found '\"'")]
    [InlineData("{ \"a\": 4,9 }", ShapeCodes.Malformed, "line 1, column 10: expected a member name in double quotes, found '9'")]
    [InlineData("{ \"a\": 16 ft }", ShapeCodes.Malformed, "line 1, column 11: expected ',' or '}', found 'f'")]
    [InlineData("{ \"a\": 16ft }", ShapeCodes.Malformed, "line 1, column 10: expected a plain number like 12 or 0.5, found 'f'")]
    [InlineData("{ \"a\": 012 }", ShapeCodes.Malformed, "expected a plain number like 12 or 0.5")]
    [InlineData("{ \"a\": 1. }", ShapeCodes.Malformed, "line 1, column 10: expected a plain number like 12 or 0.5, found ' '")]
    [InlineData("{ \"a\": -", ShapeCodes.Malformed, "expected a plain number like 12 or 0.5, found the end of the text")]
    [InlineData("{ \"a\": NaN }", ShapeCodes.Malformed, "line 1, column 8: expected a value")]
    [InlineData("{ \"a\": True }", ShapeCodes.Malformed, "line 1, column 8: expected a value")]
    [InlineData("{ \"a\": tru }", ShapeCodes.Malformed, "line 1, column 8: expected a value")]
    [InlineData("[1, 2", ShapeCodes.Malformed, "line 1, column 6: expected ',' or ']', found the end of the text")]
    [InlineData("[1, 2}", ShapeCodes.Malformed, "line 1, column 6: expected ',' or ']', found '}'")]
    [InlineData("[1,]", ShapeCodes.Malformed, "line 1, column 4: expected a value")]
    [InlineData("[,1]", ShapeCodes.Malformed, "line 1, column 2: expected a value")]
    [InlineData("[1] // note", ShapeCodes.Malformed, "line 1, column 5: expected the end of the text, found '/'")]
    [InlineData("{} {}", ShapeCodes.Malformed, "line 1, column 4: expected the end of the text, found '{'")]
    [InlineData(
        "[\"abc", ShapeCodes.Malformed,
        "line 1, column 6: expected the closing double quote of a text, found the end of the text")]
    [InlineData(
        "[\"ab\nc\"]", ShapeCodes.Malformed,
        "line 1, column 5: expected text without line breaks and tabs: write \\n and \\t, found the control character 0A")]
    [InlineData(
        "[\"a\\x\"]", ShapeCodes.Malformed, "line 1, column 5: expected an escape such as \\n, \\\" or \\u00b0, found 'x'")]
    [InlineData(
        "[\"a\\u00g0\"]", ShapeCodes.Malformed, "line 1, column 5: expected an escape such as \\n, \\\" or \\u00b0, found 'u'")]
    [InlineData("[\"a\\", ShapeCodes.Malformed, "expected the closing double quote of a text")]
    [InlineData("[\"°°°\", x]", ShapeCodes.Malformed, "line 1, column 9: expected a value")]
    [InlineData("<xml/>", ShapeCodes.Malformed, "line 1, column 1: expected a value")]
    [InlineData("\0", ShapeCodes.Malformed, "found the control character 00")]
    [InlineData(
        "[[[[[[[[[[[[[[[[[1]]]]]]]]]]]]]]]]]", ShapeCodes.TooDeep,
        "line 1, column 17: more than 16 arrays and objects within one another")]
    [InlineData("[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[", ShapeCodes.TooDeep, "line 1, column 17: more than 16")]
    public void What_is_not_JSON_is_shown_by_line_and_column(string body, string code, string detail)
    {
        Shaped<Sample> shaped = ShapeReader.Read(Encoding.UTF8.GetBytes(body), SampleJson.Default.Sample);

        Assert.Equal(ShapeOutcome.NotJson, shaped.Outcome);
        Fault fault = Assert.Single(shaped.Faults);
        Assert.Equal(("", code), (fault.Pointer, fault.Code));
        Assert.Contains(detail, fault.Detail, StringComparison.Ordinal);
    }

    [Fact]
    public void Sixteen_levels_are_not_too_deep() =>
        Assert.Equal(
            ShapeOutcome.WrongShape,
            ShapeReader.Read("[[[[[[[[[[[[[[[[1]]]]]]]]]]]]]]]]"u8.ToArray(), SampleJson.Default.Sample).Outcome);

    [Theory]
    [InlineData(new byte[] { 0x7B, 0x0A, 0x22, 0xFF, 0x22 }, "line 2, column 2: a byte that is not UTF-8")]
    [InlineData(new byte[] { 0x22, 0xED, 0xA0, 0x80, 0x22 }, "line 1, column 2: a byte that is not UTF-8")]
    [InlineData(new byte[] { 0xFF, 0xFE, 0x7B, 0x00 }, "line 1, column 1: a byte that is not UTF-8")]
    public void Bytes_that_are_not_UTF8_are_refused(byte[] body, string detail)
    {
        Fault fault = Assert.Single(ShapeReader.Read(body, SampleJson.Default.Sample).Faults);
        Assert.Equal((ShapeCodes.NotUtf8, detail), (fault.Code, fault.Detail));
    }
}
