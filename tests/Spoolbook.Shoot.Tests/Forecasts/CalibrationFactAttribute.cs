namespace Spoolbook.Shoot.Tests.Forecasts;

/// <summary>A fact that takes minutes: run by scripts/calibrate-forecast, and skipped elsewhere.</summary>
[AttributeUsage(AttributeTargets.Method)]
sealed class CalibrationFactAttribute : FactAttribute
{
    public CalibrationFactAttribute()
    {
        if (Environment.GetEnvironmentVariable("SPOOLBOOK_CALIBRATE") != "1")
        {
            Skip = "scripts/calibrate-forecast runs it.";
        }
    }
}
