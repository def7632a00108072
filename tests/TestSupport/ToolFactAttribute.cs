namespace Spoolbook.TestSupport;

/// <summary>
/// A test that needs an outside program. Where the program is missing the test is skipped and says so; with
/// SPOOLBOOK_REQUIRE_TOOLS=1 it runs and fails.
/// </summary>
[AttributeUsage(AttributeTargets.Method)]
sealed class ToolFactAttribute : FactAttribute
{
    public ToolFactAttribute(string tool)
    {
        var required = Environment.GetEnvironmentVariable("SPOOLBOOK_REQUIRE_TOOLS") == "1";
        if (!required && !Tools.IsInstalled(tool))
        {
            Skip = $"'{tool}' is not installed; with SPOOLBOOK_REQUIRE_TOOLS=1 this test fails instead.";
        }
    }
}

/// <summary>The same for a theory.</summary>
[AttributeUsage(AttributeTargets.Method)]
sealed class ToolTheoryAttribute : TheoryAttribute
{
    public ToolTheoryAttribute(string tool) => Skip = new ToolFactAttribute(tool).Skip;
}
