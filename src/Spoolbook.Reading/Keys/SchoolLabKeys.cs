using Spoolbook.Shoot.Findings;

namespace Spoolbook.Reading.Keys;

/// <summary>The keys of a lab that the school works with: those that hold for all productions, its rates and its days.</summary>
static class SchoolLabKeys
{
    public static readonly MapKey Rates = new("rates", RatesKeys.Table, "What it charges.");

    public static readonly KeyTable Table = new(
        Sentence.Of("common.owner.school-lab"),
        [
            LabKeys.Name,
            LabKeys.Address,
            LabKeys.Contact,
            LabKeys.Processes,
            LabKeys.PushMost,
            LabKeys.Services,
            LabKeys.ReturnTo,
            LabKeys.BillTo,
            LabKeys.InDoubt,
            LabKeys.Agreed,
            LabKeys.Deliver,
            Rates,
            LabKeys.TakesInOn,
        ]
    );
}
