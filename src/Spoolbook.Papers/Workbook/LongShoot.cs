using Spoolbook.Shoot.Accounts;

namespace Spoolbook.Papers.Workbook;

/// <summary>A shoot of so many rolls or takes that what is made of it counts by the megabyte.</summary>
static class LongShoot
{
    const int Rolls = 80;
    const int Takes = 2000;

    public static bool Is(ShootBook shoot) => shoot.Rolls.Length > Rolls || shoot.Rolls.Sum(r => r.Layers.Length) > Takes;

    /// <summary>Gives back what was left behind, before something large is made: of a long shoot that is a quarter of the memory.</summary>
    public static void GiveBack(ShootBook shoot)
    {
        if (Is(shoot))
        {
            GC.Collect(GC.MaxGeneration, GCCollectionMode.Aggressive, blocking: true, compacting: true);
        }
    }
}
