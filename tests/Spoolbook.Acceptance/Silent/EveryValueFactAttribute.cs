namespace Spoolbook.Acceptance.Silent;

/// <summary>A fact that takes minutes: run by scripts/silent-values, and skipped elsewhere.</summary>
[AttributeUsage(AttributeTargets.Method)]
sealed class EveryValueFactAttribute : FactAttribute
{
    public EveryValueFactAttribute()
    {
        if (Environment.GetEnvironmentVariable("SPOOLBOOK_EVERY_VALUE") != "1")
        {
            Skip = "scripts/silent-values runs it.";
        }
    }
}
