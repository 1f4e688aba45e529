using System.Runtime.InteropServices;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;

namespace Commission.Checks.Functional;

/// <summary>One thing that was tried.</summary>
/// <param name="What">What it is, in the words of the job file.</param>
/// <param name="Result">How it ended; null when the job does not say.</param>
/// <param name="Needed">Whether the check stands on one leg without it.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Trial(string What, Given<TestResult>? Result, bool Needed = false)
{
    /// <summary>Whether it ended in a certain way.</summary>
    /// <param name="result">The way.</param>
    public bool Is(TestResult result) => Result?.Value == result;
}
