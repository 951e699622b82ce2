namespace Cablewright.Engine.Tests.Published;

public class OutsideProgramTests
{
    [Fact]
    public void A_missing_program_fails_the_test_and_says_what_to_install()
    {
        var failure = Assert.Throws<InvalidOperationException>(
            () => OutsideProgram.Run("no-such-simulator", "no-such-package", ""));
        Assert.Contains("install with: apt-get install no-such-package", failure.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_program_that_fails_gives_no_result()
    {
        var failure = Assert.Throws<InvalidOperationException>(
            () => OutsideProgram.Run("units", "units", "", "-q", "-t", "no-such-unit", "m"));
        Assert.Contains("units gave no result", failure.Message, StringComparison.Ordinal);
    }
}
