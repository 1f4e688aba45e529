using Commission.Fluids.Helmholtz;
using Commission.Messages;
using Xunit;

namespace Commission.Fluids.Tests;

/// <summary>Results and citations.</summary>
public sealed class ResultTests
{
    [Fact]
    public void A_result_has_a_value_or_a_reason()
    {
        FluidResult<double> value = FluidResult<double>.Of(3), none = FluidResult<double>.None("too cold".Plain()), empty = default;
        Assert.True(value.Ok && value.Reason is null && value.Value == 3);
        Assert.Equal("too cold", none.Reason.Words());
        Assert.False(none.Ok);
        Assert.False(empty.Ok);
        Assert.NotNull(empty.Reason);
        Assert.Contains("too cold", Assert.Throws<InvalidOperationException>(() => none.Value).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_citation_is_one_line()
    {
        var paper = Assert.Single(Fluids.Get("R-32").Papers);
        Assert.Equal(
            "R. Tillner-Roth; A. Yokozeki: An international standard equation of state for difluoromethane (R-32) for temperatures from the triple point at 136.34 K to 435 K and pressures up to 70 MPa. J. Phys. Chem. Ref. Data 26 (1997), 1273–1328",
            paper.Citation);
    }
}
