namespace Commission.Jobs.Model;

/// <summary>Who did the work and for whom.</summary>
public sealed record People : JobPart
{
    /// <summary>A kit file that holds the company's people; keys written here win.</summary>
    public Given<string>? Kit { get; init; }

    /// <summary>The company.</summary>
    public Given<string>? Installer { get; init; }

    /// <summary>The company's certificate number.</summary>
    public Given<string>? CompanyCertificate { get; init; }

    /// <summary>Who did the work.</summary>
    public Given<string>? Technician { get; init; }

    /// <summary>The technician's certificate number.</summary>
    public Given<string>? PersonCertificate { get; init; }

    /// <summary>The certificate's category.</summary>
    public Given<string>? Category { get; init; }

    /// <summary>The owner or operator.</summary>
    public Given<string>? Owner { get; init; }

    /// <summary>Who watched the job.</summary>
    public Given<string>? Witness { get; init; }
}
