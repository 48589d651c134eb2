using CsCheck;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Treatment;

namespace MeltShop.Metallurgy.Tests.Treatment;

internal static class TreatmentCases
{
    /// <summary>1000 kg, sulphur 0.015 to 0.010, 0.045 % wanted after 5 minutes, an alloy of 6 % magnesium at 50 %: the case of the printed formula.</summary>
    public static TreatmentProblem Printed(double temperatureC = 1450) => new()
    {
        IronKg = 1000,
        TemperatureC = temperatureC,
        BaseAnalysis = Analysis.Of((Element.C, 3.6), (Element.Si, 1.5), (Element.S, 0.015)),
        TargetMgPercent = 0.045,
        AtMinutes = 5,
        Recipe = new()
        {
            Alloy = new() { Analysis = Analysis.Of((Element.Mg, 6), (Element.Si, 45)) },
            MgRecoveryPercent = 50,
            RecoveryTemperatureC = 1450,
            Fade = new Fade.Linear(0.001),
            SulphurLeftPercent = 0.010,
        },
    };

    private static readonly Gen<Fade> Fades = Gen.OneOf(
        Gen.Double[0, 0.05].Select(k => (Fade)new Fade.Exponential(k)),
        Gen.Double[0, 0.003].Select(a => (Fade)new Fade.Linear(a)));

    /// <summary>Ladles of all kinds, those whose base sulphur lies under the sulphur left included.</summary>
    public static readonly Gen<TreatmentProblem> Any =
        from iron in Gen.Double[50, 20_000]
        from temperature in Gen.Double[1380, 1550]
        from sulphur in Gen.Double[0, 0.05]
        from left in Gen.Double[0, 0.02]
        from target in Gen.Double[0.005, 0.08]
        from minutes in Gen.Double[0, 30]
        from alloyMg in Gen.Double[2, 30]
        from alloyS in Gen.Double[0, 0.05]
        from recovery in Gen.Double[20, 90]
        from siliconRecovery in Gen.Double[80, 100]
        from quoted in Gen.Bool
        from fade in Fades
        select new TreatmentProblem
        {
            IronKg = iron,
            TemperatureC = temperature,
            BaseAnalysis = Analysis.Of((Element.C, 3.6), (Element.Si, 1.5), (Element.S, sulphur)),
            TargetMgPercent = target,
            AtMinutes = minutes,
            Recipe = new()
            {
                Alloy = new()
                {
                    Analysis = Analysis.Of((Element.Mg, alloyMg), (Element.Si, 45), (Element.S, alloyS)),
                    RecoveryPercent = new Dictionary<Element, double> { [Element.Si] = siliconRecovery },
                },
                MgRecoveryPercent = recovery,
                RecoveryTemperatureC = quoted ? 1450 : null,
                Fade = fade,
                SulphurLeftPercent = left,
            },
        };
}
