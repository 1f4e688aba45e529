namespace Commission.Cli;

/// <summary>What the program tells the shell. Several jobs: the worst of them, the highest number.</summary>
internal static class ExitCode
{
    /// <summary>The job is accepted, or accepted with conditions.</summary>
    public const int Accepted = 0;

    /// <summary>The job is not accepted, or incomplete.</summary>
    public const int NotAccepted = 1;

    /// <summary>The file or the command line is wrong; nothing was written for it.</summary>
    public const int WrongInput = 2;

    /// <summary>Our fault.</summary>
    public const int OurFault = 3;
}
