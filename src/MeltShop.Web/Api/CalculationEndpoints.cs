using MeltShop.Charging;
using MeltShop.Metallurgy;
using MeltShop.Metallurgy.Treatment;
using MeltShop.Web.Api.Answering;
using MeltShop.Web.Api.Burns;
using MeltShop.Web.Api.Charge;
using MeltShop.Web.Api.Correction;
using MeltShop.Web.Api.DerivedQuantities;
using MeltShop.Web.Api.Description;
using MeltShop.Web.Api.Parts;
using MeltShop.Web.Api.Reading;
using MeltShop.Web.Api.Treatment;
using MeltShop.Web.SignIn;

namespace MeltShop.Web.Api;

/// <summary>The five calculations of the contract. They are stateless: what they answer depends on the body alone, never on the shop's settings.</summary>
internal static class CalculationEndpoints
{
    public static void MapCalculations(this IEndpointRouteBuilder routes)
    {
        var calculations = routes.MapGroup("/api/v1/calculations")
            .RequireAuthorization(ApiKeyAuthentication.Policy)
            .WithTags("Calculations");
        calculations.WithRequestTimeout(CalculationBounds.Policy);

        calculations.MapQuestion("/charge", ChargeRequestReader.Read, (problem, stop) => new PlanAnswer(ChargeOptimiser.Plan(problem, stop)), (problem, answer) => answer.Without("materials", problem.Materials))
            .Describe<ChargeRequest>("The cheapest furnace charge that meets the limits", Examples.Charge);

        calculations.MapQuestion("/correction", CorrectionRequestReader.Read, (problem, stop) => new CorrectionAnswer(CorrectionOptimiser.Plan(problem, stop)), (problem, answer) => answer.Without("additions", problem.Additions))
            .Describe<CorrectionRequest>("The cheapest addition that brings a molten bath into its limits", Examples.Correction);

        calculations.MapQuestion("/treatment", TreatmentRequestReader.Read, (problem, _) => new TreatmentAnswer(problem, MagnesiumTreatment.Solve(problem)))
            .Describe<TreatmentRequest>("The treatment-alloy mass for a ladle of ductile iron", Examples.Treatment);

        calculations.MapQuestion("/analysis", AnalysisQuestion.Read, (question, _) => new AnalysisAnswer(question))
            .Describe<AnalysisRequest>("The derived quantities of an analysis", Examples.Analysis);

        calculations.MapQuestion("/burns", BurnsQuestion.Read, (question, _) => new BurnsAnswer(question))
            .Describe<BurnsRequest>("Mean, spread and suspects of the replicate burns of one sample", Examples.Burns);
    }

    private static RouteHandlerBuilder MapQuestion<TQuestion, TAnswer>(
        this IEndpointRouteBuilder routes, string path, Func<ObjectReader, TQuestion> read, Func<TQuestion, CancellationToken, TAnswer> calculate,
        Func<TQuestion, TAnswer, IEnumerable<Finding>>? wrong = null)
        where TQuestion : class =>
        routes.MapPost(path, (Delegate)((HttpContext http) => Calculation.AnswerAsync(http, read, calculate, wrong)));
}
