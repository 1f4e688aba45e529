namespace Commission.Jobs.Model;

/// <summary>A clock time as written: the date may be missing.</summary>
internal readonly record struct WrittenTime(DateOnly? Date, TimeOnly Time);
