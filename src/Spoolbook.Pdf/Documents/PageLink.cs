using Spoolbook.Pdf.Structure;

namespace Spoolbook.Pdf.Documents;

sealed record PageLink(double Left, double Bottom, double Right, double Top, string Address, StructureElement Element);
